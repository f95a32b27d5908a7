package housewright.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HireTest {
    /** What is no way up must not pass for one. */
    @ParameterizedTest
    @CsvSource({
        "lift, aerial-lift, true, false",
        "h1, scissor lift, true, false",
        "up, mobile elevating work platform, true, false",
        "aerial-platform, , true, false",
        "tower, access-tower, false, true",
        "scaffold, , false, true",
        "boom-stand, microphone stand, false, false",
        "aerial, radio, false, false",
        "forklift, , false, false",
        "fork-lift, , false, false",
        "facelift, paint, false, false",
        "platform, stage, false, false"
    })
    void aLiftAndATowerAreKnownByWholeWords(String id, String kind, boolean lift, boolean tower) {
        Hire hire = new Hire(id, kind, null, List.of(), null, Remarks.NONE);
        assertThat(hire.isLift()).isEqualTo(lift);
        assertThat(hire.isTower()).isEqualTo(tower);
    }
}
