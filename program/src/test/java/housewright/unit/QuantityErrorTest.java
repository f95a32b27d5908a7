package housewright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.LinkedHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityErrorTest {

    @Test
    void aBareNumberIsToldTheUnitsItCouldHaveHad() {
        var error = catchThrowableOfType(UnitException.class, () -> Length.parse("31"));

        assertThat(error)
                .hasMessage(
                        "\"31\" has no unit; a length is written with mm, cm, m, km, in, ft, yd (for example 31 m)");
        assertThat(error.found()).isEqualTo("31");
        assertThat(error.expectedUnits()).containsExactly("mm", "cm", "m", "km", "in", "ft", "yd");
        assertThat(error.example()).isEqualTo("31 m");
        assertThat(error.findNearest()).isEmpty();
    }

    @Test
    void theUnitOfAnotherKindIsNamedAsThat() {
        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> Length.parse("31 kg"))
                .withMessageStartingWith("\"31 kg\" is a weight; a length is written with mm, ");
    }

    @Test
    void aSlipIsToldTheNearestUnit() {
        var error = catchThrowableOfType(UnitException.class, () -> Length.parse("31 mtr"));

        assertThat(error)
                .hasMessageStartingWith("\"31 mtr\" has the unknown unit mtr, nearest is m; a length is written");
        assertThat(error.findNearest()).contains("m");
    }

    @ParameterizedTest(name = "{0} as a length: {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | is empty",
                "` ` | is empty",
                "m | has no number where one is due",
                "abc | has no number where one is due",
                "- 6 m | has no number where one is due",
                "--6 m | has no number where one is due",
                "NaN m | has no number where one is due",
                "Infinity m | has no number where one is due",
                "-31 | has no unit",
                "6 ft 3 | has no unit",
                "3 1 m | has no unit",
                "1,5 m | has a comma; decimals take a point and thousands no mark",
                "1.500,5 m | has a comma; decimals take a point and thousands no mark",
                "1.2.3 m | has two points in one number",
                "6. m | has no digit after the point",
                ". m | has no digit after the point",
                "1e3 m | has an exponent; write the number in full",
                "1E+3 m | has an exponent; write the number in full",
                "3/4 in | has a fraction; write it as a decimal, 3/4 as 0.75",
                "1234567890123 m | has too many digits",
                "6 ft 12 in | has too many in after ft",
                "6 ft 3 ft | has too many ft after ft",
                "1 h 3 min | is a time",
                "6 ft -3 in | goes on after its unit",
                "6 ft 123 in | has too many digits",
                "6.5 ft 3 in | has a decimal before its last unit",
                "6 ft 3 m | has its units in the wrong order; the larger one goes first",
                "6 ft 3 in 2 | goes on after its unit",
                "3 in 6 ft | goes on after its unit",
                "31 m 5 cm | goes on after its unit",
                "31 m/s | has the unknown unit m/s",
                "31 m!! | has the unknown unit m!!",
                "31 xyz | has the unknown unit xyz",
                "31 Q | has the unknown unit Q",
                "6 ft 3 kg | is a weight",
                "20 dBu | is a level",
                "20 dB | is a gain",
                "20 kelvin | is a colour temperature",
                "31 lbs | is a weight",
                "5 min | is a time",
            })
    void badLengthsAreRefusedWithTheReason(String text, String reason) {
        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> Length.parse(text))
                .withMessageStartingWith("\"" + text + "\" " + reason)
                .withMessageEndingWith("(for example 31 m)");
    }

    @ParameterizedTest(name = "{0}: {1} is nearest {2}")
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "Length, 31 metres, m",
                "Length, 31 Meters, m",
                "Length, 31 M, m",
                "Length, 6 feet, ft",
                "Length, 6', ft",
                "Length, 6\", in",
                "Length, 6 inchs, in",
                "TimeSpan, 3 hrs, h",
                "TimeSpan, 3 minuts, min",
                "Frequency, 48 khz, kHz",
                "DataRate, 125 Mbps, Mbit/s",
                "DataRate, 125 mbit/s, Mbit/s",
                "Level, 4 dbu, dBu",
                "Level, 94 dB spl, dB SPL",
                "Level, 94 dBSPL, dB SPL",
                "Level, 94 dB(A), dBA",
                "Temperature, 20 C, degC",
                "Illuminance, 700 lux, lx",
                "CrossSection, 14 awg, AWG",
                "Delay, 2 frams, frame",
                "Resistance, 8 Ohms, ohm",
            })
    void theNearestUnitIsFound(String kind, String text, String nearest) throws ClassNotFoundException {
        var type = Class.forName("housewright.unit." + kind).asSubclass(Quantity.class);

        var error = catchThrowableOfType(UnitException.class, () -> Quantities.parse(type, text));

        assertThat(error).isNotNull();
        assertThat(error.findNearest()).as(error.getMessage()).contains(nearest);
    }

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvSource({
        "Mass, -1 kg, 'is negative, which a weight cannot be'",
        "Mass, -0 kg, 'is negative, which a weight cannot be'",
        "Power, -1 W, 'is negative, which a power cannot be'",
        "Illuminance, -1 lx, 'is negative, which an illuminance cannot be'",
        "Sensitivity, -1 mV/Pa, 'is negative, which a sensitivity cannot be'",
        "Temperature, -274 degC, is below absolute zero",
        "Temperature, -459.68 degF, is below absolute zero",
        "RackUnits, 1.3 U, is neither whole nor half rack units",
        "CrossSection, 57 AWG, 'is no gauge; they are 4/0 to 1/0, then 1 to 56'",
        "CrossSection, 5/0 AWG, is no gauge",
        "CrossSection, 00 AWG, is no gauge",
        "CrossSection, 14.5 AWG, is no gauge",
        "CrossSection, -3 AWG, is no gauge",
        "CrossSection, AWG, is no gauge",
        "Delay, 1 min, is a time",
        "Level, 4 dB, is a gain",
        "Gain, 4 dBu, is a level",
        "Temperature, 293 K, is a colour temperature",
        "Mass, 5 lbf, is a force",
    })
    void whatCannotBeIsRefusedWithTheReason(String kind, String text, String reason) throws ClassNotFoundException {
        var type = Class.forName("housewright.unit." + kind).asSubclass(Quantity.class);

        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> Quantities.parse(type, text))
                .withMessageContaining(reason);
    }

    @Test
    void hugeTextIsRefusedAtOnceAndQuotedInPart() {
        for (String huge : new String[] {
            "1".repeat(10_000_000),
            "1 " + "m".repeat(10_000_000),
            "1 m" + " ".repeat(10_000_000) + "x",
            "1 ft " + "1 in".repeat(1_000_000),
            "0." + "1".repeat(41) + " m"
        }) {
            assertThatExceptionOfType(UnitException.class)
                    .isThrownBy(() -> Length.parse(huge))
                    .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(250));
        }
    }

    @Test
    void messagesCarryNothingThatUpsetsATerminal() {
        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> Length.parse("\u001b[31mred\n\u0007"))
                .satisfies(e -> assertThat(e.getMessage()).doesNotContainPattern("\\p{Cntrl}"));
        assertThatExceptionOfType(UnitException.class)
                .isThrownBy(() -> Length.parse("1 \u001b[31m"))
                .satisfies(e -> assertThat(e.getMessage()).doesNotContainPattern("\\p{Cntrl}"));
    }

    @Test
    void onlyKindsOfQuantityCanBeAskedFor() {
        assertThat(Quantities.listKinds()).contains(Length.class, Delay.class);
        var error = catchThrowableOfType(IllegalArgumentException.class, () -> Quantities.units(String.class));
        assertThat(error).hasMessage("java.lang.String is not a kind of quantity");
    }

    @Test
    void noSymbolMeansTwoUnits() {
        var seen = new LinkedHashMap<String, Unit>();
        for (Unit unit : Unit.values()) {
            assertThat(seen.put(unit.symbol(), unit)).isNull();
            for (String alias : unit.aliases()) {
                assertThat(seen.put(alias, unit)).isNull();
            }
            assertThat(unit.dimension().takes(unit)).isTrue();
        }
    }
}
