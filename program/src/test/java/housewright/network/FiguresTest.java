package housewright.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of the network against published ones. */
class FiguresTest {
    private static final double PRINTED_DIGITS = 0.0005e6;

    /** IEEE 802.3af, at and bt: three public pages print the same table (class, at the port, at the device). */
    @ParameterizedTest(name = "class {0} gives {1} W for {2} W")
    @CsvSource({
        "1, 4, 3.84",
        "2, 7, 6.49",
        "3, 15.4, 12.95",
        "4, 30, 25.5",
        "5, 45, 40",
        "6, 60, 51",
        "7, 75, 62",
        "8, 90, 71.3"
    })
    void powerClassesAreThoseOfTheStandard(int number, double atPort, double atDevice) {
        assertThat(PowerClass.of(atDevice)).isEqualTo(new PowerClass(number, atDevice, atPort));
        assertThat(PowerClass.of(atDevice + 0.01).number()).isEqualTo(Math.min(8, number + 1));
    }

    /** The table's classes summed: four of class 3, two of class 4 and one of class 6 ask 181.6 W of a switch. */
    @Test
    void powerClassesAddUp() {
        double sum = DoubleStream.of(12.95, 12.95, 12.95, 12.95, 25.5, 25.5, 51)
                .map(watts -> PowerClass.of(watts).atPort())
                .sum();
        assertThat(sum).isEqualTo(181.6, within(1e-9));
    }

    /** ANSI E1.31 packets of 638 bytes (its packet layout), 44 a second, with all that Ethernet puts around them. */
    @Test
    void lightingDataTakesAQuarterOfAMegabitAUniverse() {
        assertThat(Streams.lighting(1)).isEqualTo(0.2478e6, within(PRINTED_DIGITS));
        assertThat(Streams.lighting(8)).isEqualTo(1.98e6, within(0.005e6));
    }

    /** AES67: 48 kHz, 24 bit, 1 ms; header sizes as public pages print them (RTP 12, UDP 8, IPv4 20, Ethernet 18 and 20). */
    @Test
    void networkAudioTakesWhatItsPacketsTake() {
        assertThat(Streams.audio(8)).isEqualTo(9.840e6, within(PRINTED_DIGITS));
        assertThat(Streams.audio(2)).isEqualTo(2.928e6, within(PRINTED_DIGITS));
        assertThat(Streams.audio(10)).isEqualTo(9.840e6 + 2.928e6, within(PRINTED_DIGITS));
        assertThat(Streams.audio(0)).isZero();
    }
}
