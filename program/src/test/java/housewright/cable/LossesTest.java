package housewright.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.model.Attenuation;
import housewright.unit.CrossSection;
import housewright.unit.VideoFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Losses against published figures, and worked examples of handbook formulas (W- in the reference values). */
class LossesTest {
    /** Of 18 AWG RG-6 type video cable, solved from its published reach; see below. */
    private static final Attenuation RG_6 = new Attenuation(0.61, 0.0013);

    private static final Attenuation RG_59 = new Attenuation(0.78, 0.0014);

    /** Reach at the loss allowed at half the clock: the worked table W-2, to 0.1 m. */
    @ParameterizedTest
    @CsvSource({
        "SD, 30, 413.1, 324.3",
        "SD, 20, 275.4, 216.2",
        "HD, 20, 113.7, 89.7",
        "THREE, 20, 78.6, 62.2",
        "SIX, 40, 107.8, 85.7",
        "TWELVE, 40, 73.1, 58.5"
    })
    void reachOfCoaxAtHalfTheClock(SdiRate rate, double limitDb, double rg6Metres, double rg59Metres) {
        double f = rate.halfClockMegahertz();
        assertThat(100 * limitDb / Losses.coaxDb(RG_6, f, 100)).isCloseTo(rg6Metres, within(0.1));
        assertThat(100 * limitDb / Losses.coaxDb(RG_59, f, 100)).isCloseTo(rg59Metres, within(0.1));
    }

    /** Published for 18 AWG RG-6 type cable: 113 m (370 ft) at HD, 78 m at 3G: tvyvideo.com, "Starting with 12G-SDI (I)". */
    @Test
    void reachAgreesWithThePublishedOne() {
        assertThat(100 * 20 / Losses.coaxDb(RG_6, 742.5, 100)).isCloseTo(113, within(1.0));
        assertThat(100 * 20 / Losses.coaxDb(RG_6, 1485, 100)).isCloseTo(78, within(1.0));
    }

    /** W-3: 40 m at 12G and at 3G. */
    @Test
    void fortyMetres() {
        assertThat(Losses.coaxDb(RG_6, 5940, 40)).isCloseTo(21.89, within(0.01));
        assertThat(Losses.coaxDb(RG_6, 1485, 40)).isCloseTo(10.17, within(0.01));
    }

    /** SMPTE ST 292-1, ST 424, ST 2082-1 and ST 259: which link carries which format. */
    @ParameterizedTest
    @CsvSource({
        "576i50, SD",
        "1080i50, HD",
        "720p59.94, HD",
        "1080p25, HD",
        "1080p50, THREE",
        "2160p25, SIX",
        "2160p60, TWELVE"
    })
    void linkForAFormat(String format, SdiRate rate) {
        assertThat(SdiRate.of(VideoFormat.parse(format))).contains(rate);
    }

    @Test
    void noLinkCarriesAComputersFormat() {
        assertThat(SdiRate.of(VideoFormat.parse("1920x1200p60"))).isEmpty();
    }

    /** Gauges by ASTM B258, copper of 0.017241 ohm mm2/m: worked examples W-8. */
    @ParameterizedTest
    @CsvSource({
        "12 AWG, 30, 8, 0.3127, 0.333, 3.76",
        "14 AWG, 30, 8, 0.4972, 0.524, 5.85",
        "16 AWG, 20, 4, 0.5268, 1.075, 11.6",
        "12 AWG, 30, 4, 0.3127, 0.654, 7.25",
        "1.5 mm2, 100, 50, 2.299, 0.390, 4.40"
    })
    void loudspeakerCable(String gauge, double metres, double load, double ohms, double drop, double percent) {
        double loop = Losses.loopOhms(CrossSection.parse(gauge), metres);
        assertThat(loop).isCloseTo(ohms, within(0.001));
        assertThat(Losses.dropDb(load, loop)).isCloseTo(drop, within(0.01));
        assertThat(100 * Losses.lostShare(Losses.dropDb(load, loop))).isCloseTo(percent, within(0.1));
    }

    /** The longest cable for half a decibel at 8 ohm, W-8. */
    @ParameterizedTest
    @CsvSource({"10 AWG, 72.3", "12 AWG, 45.5", "14 AWG, 28.6", "16 AWG, 18.0", "18 AWG, 11.3"})
    void longestForHalfADecibel(String gauge, double metres) {
        assertThat(Losses.dropDb(8, Losses.loopOhms(CrossSection.parse(gauge), metres)))
                .isCloseTo(0.5, within(0.002));
    }

    /** W-1: 150 ohm on 100 m of 100 pF/m, and 600 ohm on 200 m. */
    @Test
    void cornerOfCapacitance() {
        assertThat(Losses.cornerHertz(150, 10_000)).isCloseTo(106_100, within(50.0));
        assertThat(Losses.cornerHertz(600, 20_000)).isCloseTo(13_260, within(10.0));
    }
}
