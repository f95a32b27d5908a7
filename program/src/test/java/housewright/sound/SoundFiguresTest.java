package housewright.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.unit.Level;
import housewright.unit.Sensitivity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SoundFiguresTest {
    /**
     * Output of a microphone. The first two: a training exercise of a trade body, 72 dB SPL at the microphone (recomputed:
     * -76.5 and -57.0 dBV). 28 mV/Pa at 117 dB SPL: a published example, 390 mV stated, 395.5 mV = -8.06 dBV by the formula.
     */
    @ParameterizedTest
    @CsvSource({"-54.5 dBV/Pa, 72, -74.28", "-35.0 dBV/Pa, 72, -54.78", "28 mV/Pa, 117, -5.84", "2 mV/Pa, 104, -41.76"})
    void microphoneGivesItsSensitivityAndThePressureOverOnePascal(String sensitivity, double spl, double dbu) {
        Level output = Sound.output(Sensitivity.parse(sensitivity), Level.parse(spl + " dB SPL"));
        assertThat(output.value()).isCloseTo(dbu, within(0.01));
    }

    /** Physics handbooks: 331.3 m/s at 0 degC; 343.2 at 20. */
    @ParameterizedTest
    @CsvSource({"0, 331.30", "10, 337.31", "20, 343.21", "25, 346.13", "30, 349.02"})
    void soundIsFasterInWarmAir(double celsius, double metresPerSecond) {
        assertThat(Sound.speed(celsius)).isCloseTo(metresPerSecond, within(0.01));
    }
}
