package housewright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pattern and the reader say the same in two ways, so each checks the other. */
class QuantityPatternTest {
    private static final int TEXTS = 5_000;

    static Stream<Class<? extends Quantity>> kinds() {
        return Quantities.listKinds().stream();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyUnitIsTakenByReaderAndPatternAlike(Class<? extends Quantity> kind) {
        var pattern = Pattern.compile(Quantities.pattern(kind));
        for (Unit unit : Unit.values()) {
            var spellings = new ArrayList<>(unit.aliases());
            spellings.add(unit.symbol());
            for (String spelling : spellings) {
                boolean due = Dimension.getByKind(kind).takes(unit);

                assertThat(RandomText.reads(text -> Quantities.parse(kind, text), "7 " + spelling))
                        .isEqualTo(due);
                assertThat(pattern.matcher("7 " + spelling).matches()).isEqualTo(due);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theExampleIsGoodAndPrintedAsItIs(Class<? extends Quantity> kind) {
        String example = Quantities.example(kind);

        assertThat(Quantities.parse(kind, example).text()).isEqualTo(example);
        assertThat(example).matches(Quantities.pattern(kind));
        assertThat(Quantities.dimension(kind)).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void readerAndPatternAgreeOnRandomText(Class<? extends Quantity> kind) {
        var random = new Random(7);
        var pattern = Pattern.compile(Quantities.pattern(kind));
        String[] good = goodTexts(kind);
        int read = 0;
        for (int i = 0; i < TEXTS; i++) {
            String text = RandomText.like(random, good);
            boolean reads = RandomText.reads(candidate -> Quantities.parse(kind, candidate), text);
            read += reads ? 1 : 0;

            if (pattern.matcher(text).matches() != reads) {
                fail("reader says %s to \"%s\", the pattern does not", reads, text);
            }
        }
        assertThat(read).isBetween(TEXTS / 5, TEXTS * 4 / 5);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void rubbishIsRefusedAndNothingElseHappens(Class<? extends Quantity> kind) {
        var random = new Random(11);
        var pattern = Pattern.compile(Quantities.pattern(kind));
        for (int i = 0; i < TEXTS; i++) {
            String text = RandomText.rubbish(random);

            boolean reads = RandomText.reads(candidate -> Quantities.parse(kind, candidate), text);
            if (pattern.matcher(text).matches() != reads) {
                fail("reader says %s to \"%s\", the pattern does not", reads, text);
            }
        }
    }

    /** The limits of a temperature are spelled out digit by digit in the pattern. */
    @Test
    void readerAndPatternAgreeAboutAbsoluteZero() {
        var pattern = Pattern.compile(Quantities.pattern(Temperature.class));
        for (String unit : List.of("degC", "degF")) {
            for (int hundredths = 0; hundredths < 50_000; hundredths++) {
                String text = "-" + new BigDecimal(hundredths).movePointLeft(2).toPlainString() + " " + unit;
                boolean reads = RandomText.reads(Temperature::parse, text);

                assertThat(reads).as(text).isEqualTo(hundredths <= (unit.equals("degC") ? 27_315 : 45_967));
                assertThat(pattern.matcher(text).matches()).as(text).isEqualTo(reads);
            }
        }
    }

    /** Numbers are read as the decimal arithmetic of the JDK reads them, to the last bit. */
    @Test
    void numbersAreReadToTheNearestDouble() {
        var random = new Random(13);
        for (int i = 0; i < 200_000; i++) {
            String number = random.nextLong(1_000_000_000_000L) % (long) Math.pow(10, 1 + random.nextInt(12))
                    + "."
                    + Math.abs(random.nextLong()) % (long) Math.pow(10, 1 + random.nextInt(18));

            assertThat(Length.parse(number + " m").value()).isEqualTo(new BigDecimal(number).doubleValue());
        }
    }

    private static String[] goodTexts(Class<? extends Quantity> kind) {
        var texts = new ArrayList<String>();
        texts.add(Quantities.example(kind));
        for (String unit : Quantities.units(kind)) {
            texts.add("12 " + unit);
            texts.add("3.5" + unit);
            texts.add("-6 " + unit);
        }
        if (kind == Length.class) {
            texts.addAll(List.of("6 ft 3 in", "12ft11.5in"));
        } else if (kind == TimeSpan.class) {
            texts.addAll(List.of("2 h 30 min", "1 d 2 h 3 min 4.5 s", "1 h 5 s", "10 min 59 s", "1 d 23 h", "1 d 4 s"));
        } else if (kind == Mass.class) {
            texts.addAll(List.of("5 lb 4 oz", "5 lb 15.9 oz"));
        } else if (kind == CrossSection.class) {
            texts.addAll(List.of("4/0 AWG", "1/0AWG", "56 AWG"));
        } else if (kind == Delay.class) {
            texts.addAll(List.of("1 frame", "2 frames"));
        }
        return texts.toArray(String[]::new);
    }
}
