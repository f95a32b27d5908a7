package housewright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedFactorsTest {

    /** NIST SP 811 (2008), appendix B.8, printed to seven figures; those of foot, inch, yard and the times are exact. */
    @ParameterizedTest(name = "1 {0} is {1} {2}")
    @CsvSource({
        "INCH, 2.54e-2, METRE",
        "FOOT, 3.048e-1, METRE",
        "YARD, 9.144e-1, METRE",
        "MINUTE, 6.0e1, SECOND",
        "HOUR, 3.6e3, SECOND",
        "DAY, 8.64e4, SECOND",
        "POUND, 4.535924e-1, KILOGRAM",
        "OUNCE, 2.834952e-2, KILOGRAM",
        "POUND, 453.5924, GRAM",
        "TONNE, 1.0e3, KILOGRAM",
        "FOOTCANDLE, 1.076391e1, LUX",
        "POUND_FORCE, 4.448222, NEWTON",
    })
    void agreesWithTheTableOfNist(Unit unit, double factor, Unit base) {
        Quantity one = unit.dimension().of(1, unit);

        assertThat(one.in(base)).isCloseTo(factor, within(factor * 2e-7));
        assertThat(unit.dimension().of(factor, base).in(unit)).isCloseTo(1, within(2e-7));
    }

    /** NIST SP 811 (2008), table 5 (SI prefixes): n, u, m, k, M, G are 1e-9 to 1e9. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "7 ns, 7e-9",
        "7 us, 7e-6",
        "7 ms, 7e-3",
        "9 mm, 0.009",
        "3 cm, 0.03",
        "2 km, 2000",
        "9 g, 0.009",
        "3 mW, 0.003",
        "1.5 kW, 1500",
        "3 kVA, 3000",
        "9 mV, 0.009",
        "3 kV, 3000",
        "900 mA, 0.9",
        "9 mohm, 0.009",
        "4.7 kohm, 4700",
        "48 kHz, 48000",
        "606.500 MHz, 606.5e6",
        "5.8 GHz, 5.8e9",
        "31.25 kbit/s, 31250",
        "125 Mbit/s, 125e6",
        "1.485 Gbit/s, 1.485e9",
        "12 kcd, 12000",
        "2 kWh, 2000",
        "22 kN, 22000",
        "60 %, 0.6",
    })
    void prefixesMeanTheirPowersOfTenExactly(String text, double base) {
        assertThat(anyKind(text).base()).isEqualTo(base);
    }

    /** NIST SP 811 (2008), appendix B.8: t/degC = (t/degF - 32)/1.8. The points are those of ice, steam and body heat. */
    @ParameterizedTest(name = "{0} degF is {1} degC")
    @CsvSource({"32, 0", "212, 100", "98.6, 37", "-40, -40", "-459.67, -273.15"})
    void fahrenheitTurnsIntoCelsius(double fahrenheit, double celsius) {
        assertThat(new Temperature(fahrenheit, Unit.DEGREE_FAHRENHEIT).celsius())
                .isCloseTo(celsius, within(1e-9));
        assertThat(Temperature.ofCelsius(celsius).in(Unit.DEGREE_FAHRENHEIT)).isCloseTo(fahrenheit, within(1e-9));
    }

    /**
     * ASTM B258: areas of solid wires as tables print them, those of 4/0 and 1/0 from memory. The geometry is defined by
     * the diameters of 4/0 (0.4600 in) and 36 AWG (0.0050 in); 0.1019 in of 10 AWG is from memory.
     */
    @ParameterizedTest(name = "{0} is {1} mm2")
    @CsvSource({
        "10 AWG, 5.26",
        "12 AWG, 3.31",
        "14 AWG, 2.08",
        "16 AWG, 1.31",
        "18 AWG, 0.823",
        "22 AWG, 0.326",
        "24 AWG, 0.205",
        "4/0 AWG, 107.2",
        "1/0 AWG, 53.5",
    })
    void wireGaugesHaveThePublishedAreas(String gauge, double squareMillimetres) {
        double area = CrossSection.parse(gauge).squareMillimetres();

        assertThat(area).isCloseTo(squareMillimetres, within(squareMillimetres * 0.003));
        assertThat(CrossSection.ofSquareMillimetres(area).in(Unit.AWG))
                .isCloseTo(CrossSection.parse(gauge).value(), within(1e-9));
    }

    @ParameterizedTest(name = "{0} is {1} in across")
    @CsvSource({"4/0 AWG, 0.4600", "36 AWG, 0.0050", "10 AWG, 0.1019"})
    void wireGaugesHaveThePublishedDiameters(String gauge, double inches) {
        double diameterMm = Math.sqrt(CrossSection.parse(gauge).squareMillimetres() * 4 / Math.PI);

        assertThat(diameterMm / 25.4).isCloseTo(inches, within(0.00005));
    }

    /** From the definitions: a foot is 0.3048 m, so a metre has 3.28084 of them. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({"30.48 pF/ft, 100", "3.048 ohm/1000ft, 10"})
    void valuesPerFootTurnIntoValuesPerMetre(String text, double base) {
        assertThat(anyKind(text).base()).isCloseTo(base, within(1e-12));
    }

    private static Quantity anyKind(String text) {
        for (Class<? extends Quantity> kind : Quantities.listKinds()) {
            try {
                return Quantities.parse(kind, text);
            } catch (UnitException otherKind) {
                continue;
            }
        }
        throw new AssertionError("no kind takes " + text);
    }
}
