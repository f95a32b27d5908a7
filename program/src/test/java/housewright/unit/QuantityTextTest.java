package housewright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityTextTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest(name = "{0} is printed {1}")
    @CsvSource({
        "31 m, 31 m",
        "31m, 31 m",
        "+4 m, 4 m",
        "-0 m, 0 m",
        "'  31  m ', 31 m",
        "31\u00a0m, 31 m",
        "\u22126 m, -6 m",
        ".5 m, 0.5 m",
        "007 m, 7 m",
        "606.500 m, 606.5 m",
        "0.000000001 m, 0.000000001 m",
        "6 ft, 6 ft",
        "6 ft 3 in, 6 ft 3 in",
        "6ft3in, 6 ft 3 in",
        "6.25 ft, 6 ft 3 in",
        "-6 ft 3 in, -6 ft 3 in",
        "6 ft 0 in, 6 ft",
        "6 ft 3.5 in, 6.291666666666667 ft",
        "0.25 ft, 0.25 ft",
        "75 in, 75 in",
        "6.3333333 ft, 6.3333333 ft",
    })
    void lengthsAreReadAndPrinted(String written, String printed) {
        assertThat(Length.parse(written).text()).isEqualTo(printed);
    }

    @ParameterizedTest(name = "{0} is printed {1}")
    @CsvSource({
        "2 h 30 min, 2 h 30 min",
        "2 h 05 min, 2 h 5 min",
        "2.5 h, 2 h 30 min",
        "1 min 30 s, 1 min 30 s",
        "1 h 15 s, 1 h 15 s",
        "1 h 2 min 3 s, 1 h 2 min 3 s",
        "1 d 12 h, 1 d 12 h",
        "1 d 30 min, 1 d 30 min",
        "1 d 23 h 59 min 59 s, 1 d 23 h 59 min 59 s",
        "45 min, 45 min",
        "90 min, 90 min",
        "21 d, 21 d",
        "5 \u00b5s, 5 us",
        "5 \u03bcs, 5 us",
    })
    void timesAreReadAndPrinted(String written, String printed) {
        assertThat(TimeSpan.parse(written).text()).isEqualTo(printed);
    }

    @Test
    void compoundFormsAmountToTheirSum() {
        assertThat(Length.parse("6 ft 3 in").value()).isEqualTo(6.25);
        assertThat(Length.parse("6 ft 3 in").metres()).isEqualTo(1.905);
        assertThat(TimeSpan.parse("2 h 30 min").seconds()).isEqualTo(9000);
        assertThat(TimeSpan.parse("1 d 2 h 3 min 4 s").toDuration()).isEqualTo(Duration.ofSeconds(93_784));
        assertThat(Mass.parse("5 lb 4 oz").in(Unit.OUNCE)).isEqualTo(84);
    }

    @Test
    void typographicSignsMeanTheirPlainForms() {
        assertThat(Resistance.parse("8 \u03a9"))
                .isEqualTo(Resistance.parse("8 \u2126"))
                .hasToString("8 ohm");
        assertThat(Temperature.parse("20 \u00b0C")).hasToString("20 degC");
        assertThat(Angle.parse("26\u00b0")).hasToString("26 deg");
        assertThat(CrossSection.parse("2.5 mm\u00b2")).hasToString("2.5 mm2");
        assertThat(Luminance.parse("300 cd/m\u00b2")).hasToString("300 cd/m2");
    }

    @Test
    void heavyGaugesAreWrittenWithTheirNoughts() {
        assertThat(CrossSection.parse("4/0 AWG"))
                .isEqualTo(new CrossSection(-3, Unit.AWG))
                .hasToString("4/0 AWG");
        assertThat(CrossSection.parse("0 AWG")).hasToString("1/0 AWG");
        assertThat(CrossSection.parse("14AWG")).hasToString("14 AWG");
    }

    @Test
    void apparentPowerStaysApparentPower() {
        assertThat(Power.parse("3 kVA")).hasToString("3 kVA");
    }

    @Test
    void equalityIsAsWrittenAndOrderIsByAmount() {
        Length metre = Length.parse("1 m");
        Length millimetres = Length.parse("1000 mm");

        assertThat(metre).isNotEqualTo(millimetres).isEqualByComparingTo(millimetres);
        assertThat(Length.parse("3 ft")).isLessThan(metre);
        assertThat(CrossSection.parse("14 AWG")).isLessThan(CrossSection.parse("12 AWG"));
    }

    @Test
    void sumsKeepTheUnitOfTheFirst() {
        assertThat(Length.parse("6 ft").plus(Length.parse("3 in"))).isEqualTo(Length.parse("6 ft 3 in"));
        assertThat(Length.parse("2 m").minus(Length.parse("50 cm"))).isEqualTo(Length.parse("1.5 m"));
        assertThat(TimeSpan.parse("1 h").plus(TimeSpan.parse("15 min"))).hasToString("1 h 15 min");
        assertThat(Gain.parse("3 dB").plus(Gain.parse("-9 dB"))).isEqualTo(Gain.parse("-6 dB"));
    }

    @Test
    void rackHeightsAreWholeOrHalf() {
        assertThat(RackUnits.parse("1.5 U").units()).isEqualTo(1.5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RackUnits(1.25, Unit.RACK_UNIT))
                .withMessage("1.25 U is neither whole nor half rack units");
    }

    @Test
    void recordsThatNoTextCanGiveCannotBeMade() {
        assertThatIllegalArgumentException().isThrownBy(() -> Length.ofMetres(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Length.ofMetres(Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> Length.ofMetres(1e12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mass.ofKilograms(-1))
                .withMessage("-1.0 kg is negative, which a weight cannot be");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Length(1, Unit.KILOGRAM))
                .withMessage("a length has no unit kg");
        assertThatIllegalArgumentException().isThrownBy(() -> Temperature.ofCelsius(-273.16));
        assertThatIllegalArgumentException().isThrownBy(() -> new CrossSection(1.5, Unit.AWG));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.ofMetres(1).in(Unit.KILOGRAM))
                .withMessage("m cannot be converted to kg");
    }

    /** Dust left over by sums, and the zero that computers call negative, are nothing. */
    @Test
    void zeroIsZero() {
        assertThat(Length.ofMetres(-0.0)).isEqualTo(Length.ofMetres(0)).hasToString("0 m");
        assertThat(Length.ofMetres(1e-19)).isEqualTo(Length.ofMetres(0));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatIsPrintedReadsAsTheSameRecord(long seed) {
        var random = new Random(seed);
        for (Quantity quantity : randomQuantities(random)) {
            assertThat(Quantities.parse(quantity.getClass(), quantity.text()))
                    .as("%s, seed %d", quantity.text(), seed)
                    .isEqualTo(quantity);
            assertThat(quantity.text()).matches(Quantities.pattern(quantity.getClass()));
        }
    }

    /** Thirds and sevenths of a foot, hour, pound: whether they have a compound form or not, nothing is lost. */
    @Test
    void fractionsOfCompoundUnitsLoseNothing() {
        for (Unit unit : List.of(Unit.FOOT, Unit.MINUTE, Unit.HOUR, Unit.DAY, Unit.POUND)) {
            for (int parts = 1; parts <= 64; parts++) {
                for (int count = 0; count <= 4 * parts; count++) {
                    Quantity quantity = unit.dimension().of((double) count / parts, unit);

                    assertThat(Quantities.parse(quantity.getClass(), quantity.text()))
                            .isEqualTo(quantity);
                }
            }
        }
    }

    /** However an amount was come by: by a division, by a sum, from metres. */
    @Test
    void everyWholeInchIsPrintedEvenAfterArithmetic() {
        for (int inches = 13; inches < 12_000; inches++) {
            Length expected = new Length(inches / 12.0, Unit.FOOT);
            Length feet = new Length(Math.floorDiv(inches, 12), Unit.FOOT);

            assertThat(feet.plus(new Length(inches % 12, Unit.INCH))).isEqualTo(expected);
            assertThat(new Length(Length.ofMetres(inches * 0.0254).in(Unit.FOOT), Unit.FOOT))
                    .isEqualTo(expected);
        }
    }

    @Test
    void everyWholeInchIsPrintedInFeetAndInches() {
        for (int inches = 12; inches < 12_000; inches++) {
            String expected = inches / 12 + " ft" + (inches % 12 == 0 ? "" : " " + inches % 12 + " in");

            assertThat(new Length(inches / 12.0, Unit.FOOT).text()).isEqualTo(expected);
        }
    }

    @Test
    void everySecondOfADayIsPrintedInHoursMinutesAndSeconds() {
        for (int seconds = 3600; seconds < 86_400; seconds++) {
            int minutes = seconds / 60 % 60;
            String expected = seconds / 3600 + " h"
                    + (minutes == 0 ? "" : " " + minutes + " min")
                    + (seconds % 60 == 0 ? "" : " " + seconds % 60 + " s");
            TimeSpan read = TimeSpan.parse(expected);

            assertThat(read.text()).isEqualTo(expected);
            assertThat(read.toDuration()).isEqualTo(Duration.ofSeconds(seconds));
        }
    }

    private static List<Quantity> randomQuantities(Random random) {
        var quantities = new ArrayList<Quantity>();
        for (Class<? extends Quantity> kind : Quantities.listKinds()) {
            Dimension dimension = Dimension.getByKind(kind);
            for (Unit unit : dimension.units()) {
                for (int i = 0; i < 50; i++) {
                    double value = randomValue(random, unit);
                    if (dimension.findTrouble(value, unit) == null) {
                        quantities.add(dimension.of(value, unit));
                    }
                }
            }
        }
        return quantities;
    }

    private static double randomValue(Random random, Unit unit) {
        if (unit == Unit.AWG) {
            return random.nextInt(60) - 3;
        }
        if (unit == Unit.RACK_UNIT) {
            return random.nextInt(100) / 2.0;
        }
        double size = switch (random.nextInt(6)) {
            case 0 -> random.nextInt(1000);
            case 1 -> random.nextInt(100_000) / 1000.0;
            case 2 -> random.nextInt(1000) / 12.0;
            case 3 -> random.nextInt(100_000) / 3600.0;
            case 4 -> random.nextDouble() * Math.pow(10, random.nextInt(30) - 18);
            default -> random.nextDouble() * 400;
        };
        return random.nextInt(4) == 0 ? -size : size;
    }
}
