package housewright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DelayTest {

    /** Frame periods follow from the rates: 25 frames a second last 40 ms each, 60000/1001 a second 16.683 ms. */
    @ParameterizedTest(name = "{0} of {1} is {2} ns")
    @CsvSource({
        "1 frame, 1080p50, 20000000",
        "2 frames, 1080p50, 40000000",
        "1 frame, 1080i50, 40000000",
        "1.5 frames, 1080p25, 60000000",
        "1 frame, 720p59.94, 16683333",
        "3 frames, 720p59.94, 50050000",
        "0.7 ms, 1080p50, 700000",
        "0.7 ms, 1080p25, 700000",
        "3 s, 1080p25, 3000000000",
        "21 us, 1080p25, 21000",
        "0 frames, 1080p25, 0",
    })
    void framesTakeTheTimeOfTheirFormat(String delay, String format, long nanos) {
        assertThat(Delay.parse(delay).nanos(VideoFormat.parse(format))).isEqualTo(nanos);
    }

    @Test
    void framesAndTimesAreToldApart() {
        assertThat(Delay.parse("2 frames").inFrames()).isTrue();
        assertThat(Delay.parse("2 ms").inFrames()).isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Delay.ofFrames(2).in(Unit.MILLISECOND))
                .withMessage("frame cannot be converted to ms");
    }

    @Test
    void oneFrameIsSingularAndAllOthersPlural() {
        assertThat(Delay.parse("1 frames")).isEqualTo(Delay.ofFrames(1)).hasToString("1 frame");
        assertThat(Delay.parse("2 frame")).isEqualTo(Delay.ofFrames(2)).hasToString("2 frames");
        assertThat(Delay.ofFrames(0.5)).hasToString("0.5 frames");
        assertThat(Delay.ofFrames(0)).hasToString("0 frames");
    }
}
