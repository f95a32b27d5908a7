package housewright.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SightlinesTest {
    private static final double MM = 0.5;

    /** C = D (N + R) / (D + T) - R and its inverse, from a University of Bath worksheet (2012); worked out by hand, in mm. */
    @ParameterizedTest
    @CsvSource({
        "8000, 1200, 850, 120, 260.25",
        "6000, 600, 900, 90, 193.5",
        "10000, 3000, 760, 90, 324.84",
        "6000, 600, 900, -78.3, 0"
    })
    void theRiserForACValueAndBack(double distance, double eye, double depth, double over, double riser) {
        assertThat(Sightlines.riser(distance, over, eye, depth)).isCloseTo(riser, within(MM));
        assertThat(Sightlines.over(distance, riser, eye, depth)).isCloseTo(over, within(MM));
    }

    /**
     * A booth on a riser of 0.2 m, a seated eye 1.20 m above it, looking at 0.90 m high 16 m away: a screen, the heads of
     * a seated row and of a standing one in the way. Similar triangles, worked out by hand.
     */
    @ParameterizedTest
    @CsvSource({"1.30, 0.7, 0.078", "1.30, 3, 0.006", "1.75, 3, -0.444"})
    void theLineOverAnObstacle(double top, double away, double clear) {
        assertThat(Sightlines.height(1.40, 0.90, away, 16) - top).isCloseTo(clear, within(0.0005));
    }

    @Test
    void theEyeThatSeesOverAStandingRowIsOnTheLine() {
        double eye = Sightlines.eyeOver(1.75, 0.90, 3, 16);
        assertThat(eye).isCloseTo(1.946, within(0.0005));
        assertThat(Sightlines.height(eye, 0.90, 3, 16)).isCloseTo(1.75, within(1e-9));
        assertThat(eye - Body.LOW_STANDING_EYE).isCloseTo(0.445, within(0.0005));
    }

    /** NUREG-0700 Rev. 3, table 11.4: standing eyes 1501 and 1756 mm; seat 376 mm and eye over it 724 mm, both 5th percentile. */
    @Test
    void theBodiesAreThoseOfTheTable() {
        assertThat(Body.LOW_STANDING_EYE).isEqualTo(1.501);
        assertThat(Body.HIGH_STANDING_EYE).isEqualTo(1.756);
        assertThat(Body.LOW_SEATED_EYE).isCloseTo(0.376 + 0.724, within(1e-9));
    }
}
