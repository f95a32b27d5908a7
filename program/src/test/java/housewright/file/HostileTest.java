package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that no person writes: each is refused in words, and none holds the program up. */
@Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class HostileTest {
    private static final String HEAD = "housewright: 1\nproject: {name: A}\n";
    private static final int FULL = Documents.LARGEST_BYTES - HEAD.length() - 1000;
    private static final int MANY = 3 * 1024 * 1024;

    /** The text of an entry, again and again. */
    private static String fill(String before, IntFunction<String> entry) {
        StringBuilder text = new StringBuilder(MANY).append(HEAD).append(before);
        for (int i = 0; text.length() < MANY; i++) {
            text.append(entry.apply(i));
        }
        return text.toString();
    }

    private static List<FileError> refused(byte[] bytes) {
        return refused("hall.yaml", bytes);
    }

    private static List<FileError> refused(String fileName, byte[] bytes) {
        ReadResult result = ProjectReader.read(fileName, bytes, new NoLibrary());
        assertThat(result).isInstanceOf(ReadResult.Refused.class);
        List<FileError> errors = ((ReadResult.Refused) result).errors();
        assertThat(errors).hasSizeBetween(1, Errors.MOST_LISTED + 1);
        return errors;
    }

    private static List<FileError> refused(String text) {
        return refused(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String only(List<FileError> errors) {
        assertThat(errors).hasSize(1);
        return errors.getFirst().text();
    }

    @Test
    void anchorsThatDoubleAndDoubleAreRefusedAtTheFirst() {
        StringBuilder laughs = new StringBuilder(HEAD).append("a: &a [x, x, x, x, x, x, x, x, x, x]\n");
        for (char c = 'b'; c <= 'j'; c++) {
            laughs.append(c).append(": &").append(c).append(" [");
            laughs.append(("*" + (char) (c - 1) + ", ").repeat(10)).append("]\n");
        }
        assertThat(only(refused(laughs.toString())))
                .startsWith("hall.yaml:3:4  found the anchor &a, expected the value");
    }

    @Test
    void whatIsNestedTooDeepIsRefused() {
        int depth = 100_000;
        for (String text : List.of(
                HEAD + "aims: " + "[".repeat(depth),
                HEAD + "aims: " + "[".repeat(depth) + "]".repeat(depth),
                HEAD + "aims: " + "{a: ".repeat(depth) + "}".repeat(depth),
                HEAD + "aims:\n" + "- ".repeat(depth) + "x",
                HEAD
                        + IntStream.range(0, 3000)
                                .mapToObj(i -> " ".repeat(i) + "a:\n")
                                .collect(Collectors.joining()))) {
            assertThat(only(refused(text))).contains("more than 40 deep");
        }
        assertThat(only(refused("hall.json", ("{\"a\":" + "[".repeat(depth)).getBytes(StandardCharsets.UTF_8))))
                .contains("more than 40 deep");
    }

    @Test
    void aFileBeyondTheLimitIsRefusedUnread() throws IOException {
        byte[] large = new byte[50 * 1024 * 1024];
        assertThat(only(refused(large)))
                .isEqualTo("hall.yaml  found more than 16 MB, expected a project, which is far smaller");

        class Endless extends InputStream {
            private long read;

            @Override
            public int read() {
                read++;
                return 'a';
            }
        }
        Endless endless = new Endless();
        assertThat(ProjectReader.read("hall.yaml", endless, new NoLibrary())).isInstanceOf(ReadResult.Refused.class);
        assertThat(endless.read).isLessThanOrEqualTo(Documents.LARGEST_BYTES + 1L);
    }

    @Test
    void aStreamReadsAsItsBytes() throws IOException {
        byte[] bytes = (HEAD + "equipment: {a: {}}").getBytes(StandardCharsets.UTF_8);

        ReadResult result = ProjectReader.read("hall.yaml", new java.io.ByteArrayInputStream(bytes), new NoLibrary());
        assertThat(result).isInstanceOf(ReadResult.Loaded.class);
    }

    @Test
    @Tag("slow")
    void oneScalarOfAlmostTheWholeFileIsReadOrRefusedWithoutShowingItAll() {
        String scalar = "x".repeat(FULL);

        assertThat(Files.load("hall.yaml", HEAD + "equipment: {a: {label: " + scalar + "}}")
                        .equipment())
                .hasSize(1);
        assertThat(only(refused(HEAD + "equipment: {a: {life: " + scalar + "}}")))
                .hasSizeLessThan(300);
        assertThat(only(refused(HEAD + "equipment:\n  ? " + scalar + "\n  : {}")))
                .hasSizeLessThan(400);
        assertThat(only(refused(HEAD + "models: {a: {price: " + "1".repeat(FULL) + "}}")))
                .hasSizeLessThan(300);
        assertThat(only(refused(HEAD + "models: {a: {weight: " + "1".repeat(FULL) + " kg}}")))
                .hasSizeLessThan(400);
        assertThat(only(refused(HEAD + "cables: {a: {length: \"" + scalar + "\"}}")))
                .hasSizeLessThan(400);
        assertThat(only(refused(HEAD + "cables: {a: {from: " + scalar + "." + scalar.substring(FULL / 2) + "}}")))
                .hasSizeLessThan(400);
    }

    @Test
    @Tag("slow")
    void aFileFullOfErrorsListsTheFirstOnes() {
        for (String text : List.of(
                fill("equipment:\n", i -> "  a" + i + ": {label: [], colour: red}\n"),
                fill("equipment:\n", i -> "  a" + i + ": {model: b" + i + "}\n"),
                fill("equipment:\n", i -> "  a" + i + ": {gang: b" + i + "}\n"),
                fill("equipment:\n", i -> "  a: {}\n"),
                fill("orders: {o: {for: [\n", i -> "  a" + i + ",\n") + "]}}",
                fill("equipment: {a: {label: x,\n", i -> "  b" + i + ": 1,\n") + "label: y}}",
                fill("equipment: {a: {\n", i -> i < 150_000 ? "b" + i + ": 1,\n" : "label: x,\n") + "}}",
                fill("", i -> "a" + i + ": 1\n"))) {
            List<FileError> errors = refused(text);
            assertThat(errors).hasSize(Errors.MOST_LISTED + 1);
            assertThat(errors.getLast().text()).matches("hall.yaml  found \\d{6,7} more errors");
            assertThat(errors.subList(0, Errors.MOST_LISTED))
                    .isSortedAccordingTo(
                            (a, b) -> a.line() == b.line() ? a.column() - b.column() : a.line() - b.line());
        }
    }

    @Test
    @Tag("slow")
    void rangesThatStandForTooMuchAreRefused() {
        String model = "models: {m: {points: [\"a-{1..4096}\"], patch: free}}\nequipment: {d: {model: m}, e: {}}\n";
        String many = IntStream.range(0, 200_000).mapToObj(i -> "a-1").collect(Collectors.joining(", "));
        String names = IntStream.range(0, 200_000).mapToObj(i -> "x" + i).collect(Collectors.joining(","));
        for (String text : List.of(
                fill(model + "patch:\n  d:\n", i -> "  - \"a-{1..4096} -> a-{1..4096}\"\n"),
                fill(model + "patch:\n  d:\n", i -> "  - {from: \"a-{1..4096}\", to: [a-1, a-2, a-3, a-4]}\n"),
                fill(model + "feeds:\n", i -> "  f" + i + ": {from: \"d.a-{1..4096}\"}\n"),
                fill("models:\n", i -> "  m" + i + ": {ports: {\"p-{1..4096}\": {in: usb-audio, channels: 4096}}}\n"),
                fill(
                        "models:\n",
                        i -> "  m" + i + ": {points: [\"p-{1..4096}\"], switches: {s: {gates: [\"p-{1..4096}\"]}}}\n"),
                fill(
                                "models: {m: {ports: {p: {both: usb-audio, channels: 4096}, q: {both: usb-audio, channels: 4096}}, routes: [\n",
                                i -> "p -> q,\n")
                        + "]}}",
                HEAD + model + "patch: {d: [\"a-{1..4096} -> " + many + "\"]}",
                HEAD + "models: {m: {points: [\"p-{" + names + "}\"]}}",
                HEAD + "cables: {c: {ways: [\"e.{" + names + "} -> e.{" + names + "}\"]}}")) {
            assertThat(refused(text)).allMatch(error -> error.text().length() < 600);
        }
        assertThat(refused(HEAD + "models: {m: {ports: {p: {in: usb-audio, channels: {in: 2000000000, out: 1}}}}}"))
                .isNotEmpty();
    }

    @Test
    @Tag("slow")
    void keysWithOneHashCodeTakeNoLongerThanOthers() {
        List<String> keys = List.of("AaAa", "AaBB", "BBAa", "BBBB");
        String text = fill("equipment:\n", i -> {
            StringBuilder key = new StringBuilder("  ");
            for (int j = i; key.length() < 42; j /= 4) {
                key.append(keys.get(j % 4));
            }
            return key + ": {}\n";
        });
        assertThat(Files.read("hall.yaml", text)).isNotNull();
    }

    @Test
    void anythingButUtf8IsRefusedWithItsPlace() {
        byte[] latin = (HEAD + "people: {a: {role: caf\u00e9}}").getBytes(StandardCharsets.ISO_8859_1);
        assertThat(only(refused(latin)))
                .isEqualTo(
                        "hall.yaml:3:23  found the byte 0xE9 at byte 57, expected text in UTF-8: save it with that encoding");
        assertThat(only(refused(HEAD.getBytes(StandardCharsets.UTF_16))))
                .isEqualTo("hall.yaml:1:1  found a file in UTF-16, expected UTF-8: save it with that encoding");
        assertThat(only(refused(HEAD.getBytes(StandardCharsets.UTF_16LE)))).contains("the character U+0000");
        assertThat(only(refused(new byte[] {'a', ':', ' ', (byte) 0xC0, (byte) 0x80})))
                .contains("0xC0 at byte 4");
        assertThat(only(refused(HEAD + "people: {a: {role: \"\u0000\"}}")))
                .contains("3:21  found the character U+0000");
        assertThat(only(refused(HEAD + "people: {a: {role: \"\\ud83d\"}}"))).contains("half of one");
        assertThat(only(refused("hall.json", "{\"a\": \"\u0000\"}".getBytes(StandardCharsets.UTF_8))))
                .contains("no JSON");
    }

    @Test
    void aByteOrderMarkIsPassedOver() {
        assertThat(Files.load("hall.yaml", "\uFEFF" + HEAD).about().name()).isEqualTo("A");
        assertThat(Files.load("hall", "\uFEFF{\"housewright\": 1, \"project\": {\"name\": \"\uFFFD\"}}")
                        .about()
                        .name())
                .isEqualTo("\uFFFD");
    }

    @Test
    void jsonIsHeldToItsOwnRules() {
        assertThat(Files.errors(
                        "hall.json", "{\n  \"housewright\": 1,\n  \"project\": {\"name\": \"A\" \"stage\": 1}\n}"))
                .singleElement()
                .asString()
                .startsWith("hall.json:3:27  found what is no JSON: ");
        assertThat(Files.errors("hall.json", ""))
                .containsExactly(
                        "hall.json:1:1  found an empty file, expected a project, which begins with housewright: 1");
        assertThat(Files.errors("hall.json", "{\"housewright\": 1, \"project\": {\"name\": \"A\"}} {}"))
                .singleElement()
                .asString()
                .contains("after the end");
        assertThat(Files.errors("hall.json", "{\"housewright\": 1, \"project\": {\"name\": \"A\", \"name\": \"B\"}}"))
                .containsExactly(
                        "hall.json:1:45  project.name: found \"name\" a second time, expected it once; the first is on line 1");
        assertThat(Files.errors("hall.json", "{\"housewright\": 1, \"project\": {\"name\": null}}"))
                .containsExactly("hall.json:1:40  project.name: found nothing, expected text, or the key left out");
        assertThat(Files.errors("hall.txt", "{\"housewright\": 1, project: {name: A}, equipment: {a: []}}"))
                .containsExactly(
                        "hall.txt:1:55  equipment.a: found an empty list, expected a piece of equipment as a mapping: {model, at, life, circuit …}");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void randomBytesAreRefusedInWords(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            byte[] bytes = new byte[random.nextInt(400)];
            random.nextBytes(bytes);
            if (random.nextBoolean()) {
                for (int j = 0; j < bytes.length; j++) {
                    bytes[j] = (byte) "ab1:-,.{}[]\"'#&*!|>%@ \n\t\\?".charAt(Math.floorMod(bytes[j], 26));
                }
            }
            assertThat(refused(random.nextBoolean() ? "a.yaml" : "a.json", bytes))
                    .allMatch(error -> error.text().length() < 2000);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aSpoiltFileIsReadOrRefusedInWords(long seed) {
        Random random = new Random(seed);
        String yaml = Files.resource("example.yaml");
        String json = ProjectWriter.json(Files.load("example.yaml", yaml));
        for (int i = 0; i < 40; i++) {
            boolean asJson = random.nextInt(3) == 0;
            byte[] spoilt = spoil((asJson ? json : yaml).getBytes(StandardCharsets.UTF_8), random);
            ReadResult result = ProjectReader.read(asJson ? "a.json" : "a.yaml", spoilt, new NoLibrary());
            if (result instanceof ReadResult.Refused refused) {
                assertThat(refused.errors())
                        .isNotEmpty()
                        .allMatch(error -> error.text().length() < 2000);
            }
        }
    }

    /** Some bytes changed, taken out, put in, or a stretch of the file put elsewhere. */
    private static byte[] spoil(byte[] bytes, Random random) {
        byte[] spoilt = bytes;
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            int at = random.nextInt(spoilt.length);
            int length = random.nextInt(Math.min(40, spoilt.length - at));
            byte[] with = switch (random.nextInt(4)) {
                case 0 -> new byte[] {(byte) random.nextInt(256)};
                case 1 -> new byte[0];
                case 2 -> java.util.Arrays.copyOfRange(bytes, at / 2, at / 2 + random.nextInt(60));
                default -> new byte[] {(byte) ":-{}[],\"'#&*\n\t ".charAt(random.nextInt(15))};
            };
            byte[] next = new byte[spoilt.length - length + with.length];
            System.arraycopy(spoilt, 0, next, 0, at);
            System.arraycopy(with, 0, next, at, with.length);
            System.arraycopy(spoilt, at + length, next, at + with.length, spoilt.length - at - length);
            spoilt = next;
        }
        return spoilt;
    }
}
