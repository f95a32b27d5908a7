package housewright.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Conduit fill against worked examples; inside diameters of EMT from NEC chapter 9, table 4. */
class FillTest {
    private static final double INCH = 25.4;
    private static final double EMT_1_2 = 0.622 * INCH;
    private static final double EMT_3_4 = 0.824 * INCH;
    private static final double EMT_1 = 1.049 * INCH;
    private static final double EMT_1_1_4 = 1.380 * INCH;

    /** W-14, MIL-HDBK-1012/3 example 3: six 4-pair cables of 0.24 in want 1 in conduit and do not go into 3/4 in. */
    @Test
    void sixNetworkCables() {
        List<Double> cables = Collections.nCopies(6, 0.24 * INCH);
        assertThat(Fill.of(EMT_1, cables).cables()).isEqualTo(6);
        assertThat(Fill.of(EMT_1, cables).share())
                .isCloseTo(0.314, within(0.001))
                .isLessThan(0.40);
        assertThat(Fill.of(EMT_3_4, cables).share())
                .isCloseTo(0.509, within(0.001))
                .isGreaterThan(0.40);
    }

    /** W-13, Steel Tube Institute: 3 of 0.0133, 4 of 0.0211 and 8 of 0.0366 in2 do not go into 1 in, and into 1-1/4 in. */
    @Test
    void fifteenConductors() {
        List<Double> conductors = new ArrayList<>(Collections.nCopies(3, diameter(0.0133)));
        conductors.addAll(Collections.nCopies(4, diameter(0.0211)));
        conductors.addAll(Collections.nCopies(8, diameter(0.0366)));
        assertThat(Fill.of(EMT_1, conductors).share() * 0.864).isCloseTo(0.4171, within(0.001));
        assertThat(Fill.of(EMT_1, conductors).share()).isGreaterThan(0.40);
        assertThat(Fill.of(EMT_1_1_4, conductors).share()).isLessThan(0.40);
    }

    private static double diameter(double squareInches) {
        return Math.sqrt(squareInches * 4 / Math.PI) * INCH;
    }

    /** W-15. */
    @Test
    void networkAndCoax() {
        List<Double> cables = List.of(6.1, 6.1, 6.1, 6.1, 6.99, 6.99);
        assertThat(Fill.of(EMT_3_4, cables).share()).isCloseTo(0.563, within(0.001));
        assertThat(Fill.of(EMT_1, cables).share()).isCloseTo(0.347, within(0.001));
        assertThat(Fill.of(EMT_3_4, List.of(6.99, 6.99)).share()).isCloseTo(0.223, within(0.001));
        assertThat(Fill.of(EMT_1_2, List.of(10.3)).share()).isCloseTo(0.425, within(0.001));
    }

    @Test
    void emptyConduit() {
        assertThat(Fill.of(25, List.of())).isEqualTo(new Fill(0, 0));
    }
}
