package housewright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelTest {
    private static final double PRINTED_DIGITS = 0.0005;

    /**
     * 0 dBu is the square root of 0.6 V (practice of IEC 60268; handbooks print 0.775 V), and +4 dBu 1.228 V. The full
     * scales of EBU R 68 and SMPTE RP 155 are +18 dBu (6.153 V) and +24 dBu (12.277 V); -10 dBV is 0.3162 V.
     */
    @ParameterizedTest(name = "{0} is {1} V")
    @CsvSource({
        "0 dBu, 0.7746",
        "4 dBu, 1.2277",
        "18 dBu, 6.153",
        "22 dBu, 9.752",
        "24 dBu, 12.277",
        "0 dBV, 1",
        "-10 dBV, 0.3162"
    })
    void electricalLevelsHaveThePublishedVoltages(String level, double volts) {
        assertThat(Level.parse(level).toVoltage().volts()).isCloseTo(volts, within(PRINTED_DIGITS));
        assertThat(Level.ofVoltage(Voltage.ofVolts(volts))
                        .minus(Level.parse(level))
                        .decibels())
                .isCloseTo(0, within(0.001));
    }

    /** dBV = dBu - 2.218, from 20 log of the square root of 0.6; -10 dBV is -7.78 dBu. */
    @ParameterizedTest(name = "{0} is {1} {2}")
    @CsvSource({"0 dBu, -2.218, DBV", "0 dBV, 2.218, DBU", "4 dBu, 1.782, DBV", "-10 dBV, -7.782, DBU"})
    void dbuAndDbvConvert(String level, double expected, Unit unit) {
        Level converted = Level.parse(level).to(unit);

        assertThat(converted.unit()).isEqualTo(unit);
        assertThat(converted.value()).isCloseTo(expected, within(PRINTED_DIGITS));
    }

    /** The gap of 11.78 dB between professional (+4 dBu) and consumer (-10 dBV) line level. */
    @Test
    void theDifferenceOfTwoLevelsIsAGain() {
        Gain gap = Level.parse("4 dBu").minus(Level.parse("-10 dBV"));

        assertThat(gap.decibels()).isCloseTo(11.78, within(0.005));
        assertThat(Level.parse("-10 dBV").plus(gap).in(Unit.DBU)).isCloseTo(4, within(1e-9));
    }

    @Test
    void aGainKeepsTheReference() {
        assertThat(Level.parse("-50 dBu").plus(Gain.parse("54 dB"))).isEqualTo(Level.parse("4 dBu"));
        assertThat(Level.parse("-18 dBFS").plus(Gain.ofDecibels(-2))).isEqualTo(Level.parse("-20 dBFS"));
        assertThat(Level.parse("94 dB SPL").plus(Gain.parse("-6 dB").negated())).isEqualTo(Level.parse("100 dB SPL"));
    }

    @ParameterizedTest(name = "{0} against {1}")
    @CsvSource({"4 dBu, 0 dBFS", "0 dBFS, 4 dBV", "94 dB SPL, 94 dBA", "85 dBA, 4 dBu", "94 dB SPL, 0 dBFS"})
    void levelsOverOtherReferencesDoNotMix(String one, String other) {
        Level first = Level.parse(one);
        Level second = Level.parse(other);

        assertThat(first.comparesWith(second)).isFalse();
        for (Runnable mix :
                new Runnable[] {() -> first.minus(second), () -> first.compareTo(second), () -> first.to(second.unit())
                }) {
            assertThatIllegalArgumentException()
                    .isThrownBy(mix::run)
                    .withMessageContaining(first.unit().symbol())
                    .withMessageContaining(second.unit().symbol());
        }
    }

    @Test
    void levelsOverOneReferenceCompareByWhatTheyAre() {
        assertThat(Level.parse("0 dBV")).isGreaterThan(Level.parse("2 dBu")).isLessThan(Level.parse("3 dBu"));
        assertThat(Level.parse("-1 dBFS")).isLessThan(Level.parse("0 dBFS"));
    }

    /** EBU R 68-2000: -18 dBFS is 0 dBu. SMPTE RP 155: -20 dBFS is +4 dBu. Between the two lie 6 dB. */
    @Test
    void fullScalesLineUpAsTheirStandardsSay() {
        assertThat(FullScale.EBU_R68.toDigital(Level.parse("0 dBu"))).isEqualTo(Level.parse("-18 dBFS"));
        assertThat(FullScale.EBU_R68.toAnalogue(Level.parse("0 dBFS"))).isEqualTo(Level.parse("18 dBu"));
        assertThat(FullScale.SMPTE_RP155.toDigital(Level.parse("4 dBu"))).isEqualTo(Level.parse("-20 dBFS"));
        assertThat(FullScale.SMPTE_RP155.toAnalogue(Level.parse("-20 dBFS"))).isEqualTo(Level.parse("4 dBu"));
        assertThat(FullScale.SMPTE_RP155.atZero().minus(FullScale.EBU_R68.atZero()))
                .isEqualTo(Gain.ofDecibels(6));
    }

    @Test
    void aFullScaleInDbvTakesLevelsInDbu() {
        var scale = new FullScale(Level.parse("6 dBV"));

        assertThat(scale.toDigital(Level.parse("0 dBu")).value()).isCloseTo(-8.218, within(PRINTED_DIGITS));
        assertThat(scale.toAnalogue(Level.parse("-6 dBFS"))).isEqualTo(Level.parse("0 dBV"));
    }

    @Test
    void aFullScaleTakesOnlyItsOwnSides() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FullScale(Level.parse("0 dBFS")))
                .withMessage("dBFS cannot be converted to dBu");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FullScale.EBU_R68.toDigital(Level.parse("-3 dBFS")))
                .withMessage("dBu cannot be converted to dBFS");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FullScale.EBU_R68.toAnalogue(Level.parse("94 dB SPL")))
                .withMessage("dB SPL cannot be converted to dBFS");
    }

    /** A training exercise of a trade body: -54.5 dBV/Pa is 1.884 mV/Pa, -35 dBV/Pa is 17.78 mV/Pa. */
    @ParameterizedTest(name = "{0} is {1} mV/Pa")
    @CsvSource({"-54.5 dBV/Pa, 1.884", "-35.0 dBV/Pa, 17.78", "2 mV/Pa, 2"})
    void sensitivitiesConvert(String text, double millivolts) {
        Sensitivity sensitivity = Sensitivity.parse(text);

        assertThat(sensitivity.millivoltsPerPascal()).isCloseTo(millivolts, within(millivolts * 3e-4));
        assertThat(Sensitivity.ofMillivoltsPerPascal(sensitivity.millivoltsPerPascal())
                        .in(sensitivity.unit()))
                .isCloseTo(sensitivity.value(), within(1e-9));
    }
}
