package housewright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class VideoFormatTest {

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1080p50, 1920, 1080, false, 50",
        "1080i50, 1920, 1080, true, 25",
        "720p60, 1280, 720, false, 60",
        "2160p25, 3840, 2160, false, 25",
        "4320p50, 7680, 4320, false, 50",
        "576i50, 720, 576, true, 25",
        "480p60, 720, 480, false, 60",
        "1920x1200p60, 1920, 1200, false, 60",
        "4096x2160p24, 4096, 2160, false, 24",
    })
    void isReadAndPrinted(String text, int width, int height, boolean interlaced, double frames) {
        VideoFormat format = VideoFormat.parse(text);

        assertThat(format.width()).isEqualTo(width);
        assertThat(format.height()).isEqualTo(height);
        assertThat(format.interlaced()).isEqualTo(interlaced);
        assertThat(format.framesPerSecond()).isEqualTo(frames);
        assertThat(format.text()).isEqualTo(text).hasToString(format.toString());
    }

    /** SMPTE ST 274 and ST 296 give the short rates as their whole ones divided by 1.001. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1080p23.98, 24",
        "1080p29.97, 30",
        "1080p47.95, 48",
        "720p59.94, 60",
        "1080i59.94, 30",
        "480i59.94, 30",
        "1280x720p119.88, 120"
    })
    void shortRatesAreWholeOnesOver1001(String text, double whole) {
        assertThat(VideoFormat.parse(text).framesPerSecond()).isCloseTo(whole / 1.001, within(1e-12));
    }

    /** Frame periods to a hundredth of a millisecond, as tables print them; they follow from the rates. */
    @ParameterizedTest(name = "{0} has a frame every {1} ms")
    @CsvSource({
        "1080p24, 41.67",
        "1080p25, 40.00",
        "1080p29.97, 33.37",
        "1080p30, 33.33",
        "1080p50, 20.00",
        "720p59.94, 16.68",
        "1080p60, 16.67",
        "1080i50, 40.00",
        "1080i59.94, 33.37",
    })
    void framesLastAsLongAsTablesSay(String text, double milliseconds) {
        assertThat(VideoFormat.parse(text).frameNanos() / 1e6).isCloseTo(milliseconds, within(0.005));
    }

    @Test
    void anotherSpellingOfAFormatIsTheSameFormat() {
        assertThat(VideoFormat.parse("1920x1080p23.976")).isEqualTo(VideoFormat.parse("1080p23.98"));
        assertThat(VideoFormat.parse("1920x1080p50").text()).isEqualTo("1080p50");
    }

    /**
     * SMPTE ST 259 (270 Mbit/s), ST 292-1 (1.485 Gbit/s), ST 424 (2.97), ST 2081-1 (5.94) and ST 2082-1 (11.88); which
     * format belongs to which is from memory, and held to the size of the picture below.
     */
    @ParameterizedTest(name = "{0} takes {1}")
    @CsvSource({
        "576i50, 270 Mbit/s",
        "480i59.94, 270 Mbit/s",
        "720p50, 1.485 Gbit/s",
        "720p59.94, 1.485 Gbit/s",
        "1080i50, 1.485 Gbit/s",
        "1080i59.94, 1.485 Gbit/s",
        "1080p23.98, 1.485 Gbit/s",
        "1080p25, 1.485 Gbit/s",
        "1080p30, 1.485 Gbit/s",
        "1080p50, 2.97 Gbit/s",
        "1080p59.94, 2.97 Gbit/s",
        "2160p25, 5.94 Gbit/s",
        "2160p50, 11.88 Gbit/s",
        "4096x2160p59.94, 11.88 Gbit/s",
    })
    void theSerialLinkHasThePublishedRate(String format, String rate) {
        assertThat(VideoFormat.parse(format).findSdiRate()).contains(DataRate.parse(rate));
    }

    /**
     * The active samples must fit: 4:2:2 at 10 bit takes 20 bits a pixel, whichever standard carries it. The blanking of
     * the raster takes the rest, never more than a third of the link (SMPTE ST 274: 2200 x 1125 for 1920 x 1080 at 60).
     */
    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "576i50",
                "480i59.94",
                "720p60",
                "1080i60",
                "1080p30",
                "1080p60",
                "2160p30",
                "2160p60",
                "4096x2160p60"
            })
    void theSerialLinkHoldsThePicture(String text) {
        VideoFormat format = VideoFormat.parse(text);
        double active = 20.0 * format.width() * format.height() * format.framesPerSecond();

        assertThat(active / format.findSdiRate().orElseThrow().bitsPerSecond()).isBetween(2 / 3.0, 1.0);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"1920x1200p60", "1024x768p60", "4320p50", "1080p120", "2160p100", "1080i48", "720p75"})
    void noSerialLinkIsClaimedForWhatNoneCarries(String format) {
        assertThat(VideoFormat.parse(format).findSdiRate()).isEmpty();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | is no picture format",
                "1080 | is no picture format",
                "1080P50 | is no picture format",
                "p50 | no broadcast number of lines",
                "1079p50 | no broadcast number of lines",
                "x1080p50 | a size that no picture has",
                "1920xp50 | a size that no picture has",
                "999999x10p50 | a size that no picture has",
                "1080p | a rate that no picture has",
                "1080p0 | a rate that no picture has",
                "1080p301 | a rate that no picture has",
                "1080p59.9 | a rate that no picture has",
                "1080p50.0 | a rate that no picture has",
                "1080p-50 | a rate that no picture has",
                "1080p50 | ",
                "1080i25 | after i stand fields a second",
                "1080i29.97 | after i stand fields a second",
            })
    void badFormatsAreRefusedWithTheReason(String text, String reason) {
        if (reason == null) {
            assertThat(VideoFormat.parse(text).text()).isEqualTo(text);
            return;
        }
        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> VideoFormat.parse(text))
                .withMessageContaining(reason)
                .withMessageContaining("1080p50")
                .satisfies(e -> assertThat(e.found()).isEqualTo(text));
        assertThat(text).doesNotMatch(Quantities.pattern(VideoFormat.class));
    }

    @Test
    void aRecordThatNoTextCanGiveCannotBeMade() {
        assertThatIllegalArgumentException().isThrownBy(() -> new VideoFormat(1920, 1080, false, 59.9));
        assertThatIllegalArgumentException().isThrownBy(() -> new VideoFormat(1920, 1080, true, 25));
        assertThatIllegalArgumentException().isThrownBy(() -> new VideoFormat(1920, 1080, false, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new VideoFormat(5, 1080, false, 50));
    }

    @Test
    void whatIsReadAgreesWithThePatternOnRandomText() {
        var random = new Random(20);
        int good = 0;
        for (int i = 0; i < 50_000; i++) {
            String text = RandomText.like(random, "1080p50", "1920x1080i59.94", "576i50", "2160p23.976", "720p120");
            boolean read = RandomText.reads(VideoFormat::parse, text);
            good += read ? 1 : 0;

            assertThat(text.matches(Quantities.pattern(VideoFormat.class)))
                    .as("pattern on \"%s\"", text)
                    .isEqualTo(read);
            if (read) {
                VideoFormat format = VideoFormat.parse(text);
                assertThat(VideoFormat.parse(format.text())).isEqualTo(format);
            }
        }
        assertThat(good).isGreaterThan(5_000);
    }
}
