package housewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CliTest {
    private static final Path EXAMPLES = Path.of("../examples");

    @TempDir
    Path folder;

    private Path copy(String example) throws IOException {
        return Files.copy(EXAMPLES.resolve(example), folder.resolve(example));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void applyingAMendProvesTheFeedAndChangesNothingElseInTheFile() throws IOException {
        Path file = copy("broken-wrong-pair.yaml");
        String before = Files.readString(file);
        Terminal.Ran ran = Terminal.plain().run("mend", file.toString(), "sound-to-stream", "--apply");
        assertThat(ran.all()).contains("sound-to-stream is now proven; no other feed changes.");
        assertThat(ran.status()).isZero();
        assertThat(Terminal.plain().run("check", file.toString()).status()).isZero();
        List<String> lines = Files.readAllLines(file);
        List<String> kept =
                before.lines().filter(line -> !line.startsWith("  encoder: [")).toList();
        assertThat(lines).containsAll(kept);
        assertThat(lines.size()).isBetween(kept.size(), kept.size() + 5);
        assertThat(names()).as("nothing is left beside it").containsExactly("broken-wrong-pair.yaml");
    }

    @Test
    void showingAMendWritesNothing() throws IOException {
        Path file = copy("broken-converter.yaml");
        String before = Files.readString(file);
        assertThat(Terminal.plain()
                        .run("mend", file.toString(), "camera-to-foyer")
                        .status())
                .isOne();
        assertThat(file).hasContent(before);
        assertThat(names()).containsExactly("broken-converter.yaml");
    }

    @Test
    void applyingKeepsPermissionsLineEndingsByteOrderMarkAndLinks() throws IOException {
        Path file = copy("broken-wrong-pair.yaml");
        String windows = "\uFEFF" + Files.readString(file).replace("\n", "\r\n");
        Files.writeString(file, windows);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file.getFileName());
        assertThat(Terminal.plain()
                        .run("mend", link.toString(), "sound-to-stream", "--apply")
                        .status())
                .isZero();
        assertThat(Files.isSymbolicLink(link)).isTrue();
        String after = Files.readString(file);
        assertThat(after).startsWith("\uFEFF# BROKEN").isNotEqualTo(windows);
        assertThat(after.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw-r--");
    }

    @Test
    void aFolderThatMayNotBeWrittenLosesNothing() throws IOException {
        Path file = copy("broken-wrong-pair.yaml");
        String before = Files.readString(file);
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assumeThat(Files.isWritable(folder)).as("root may write anywhere").isFalse();
            Terminal.Ran ran = Terminal.plain().run("mend", file.toString(), "sound-to-stream", "--apply");
            assertThat(ran.status()).isEqualTo(2);
            assertThat(ran.err()).contains("may not be written", "Nothing was changed");
            assertThat(file).hasContent(before);
        } finally {
            Files.setPosixFilePermissions(folder, java.util.EnumSet.allOf(PosixFilePermission.class));
        }
    }

    @Test
    void standardInputIsReadAndCannotBeWrittenBack() throws IOException {
        String text = Files.readString(EXAMPLES.resolve("broken-wrong-pair.yaml"));
        assertThat(Terminal.typing(text).run("check", "-").out()).startsWith("1 of 2 feeds proven in the target");
        Terminal.Ran ran = Terminal.typing(text).run("mend", "-", "sound-to-stream", "--apply");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("cannot be written back");
    }

    @Test
    void aFileWithErrorsNamesThemAllAndChecksNothing() {
        Terminal.Ran ran = Terminal.typing("""
                housewright: 1
                project: {name: A, stage: desing}
                equipment: {a: {model: no-such-type}}
                """).run("check", "-");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("standard input:2:27", "design", "no-such-type", "has 2 errors; nothing was checked");
    }

    @Test
    void anEmptyProjectIsToldWhatComesNext() {
        Terminal.Ran ran =
                Terminal.typing("housewright: 1\nproject: {name: Empty}\n").run("check", "-");
        assertThat(ran.status()).isZero();
        assertThat(ran.out())
                .startsWith("No feeds are entered yet, so there is nothing to prove.")
                .contains("feeds:");
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo --check", "demo --today", "check - --json", "library switch", "help", "--version"})
    void coloursOnlyOnAScreenThatHasThem(String command) throws IOException {
        String text = Files.readString(EXAMPLES.resolve("broken-wrong-pair.yaml"));
        assertThat(Terminal.typing(text).run(command.split(" ")).all()).doesNotContain("\u001B");
    }

    @Test
    void coloursSupportTheWordsAndNeverReplaceThem() {
        String plain = Terminal.plain()
                .run("check", "../examples/broken-never-feed.yaml")
                .out();
        String coloured = Terminal.coloured()
                .run("check", "../examples/broken-never-feed.yaml")
                .out();
        assertThat(coloured).contains("\u001B[");
        assertThat(coloured.replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(plain);
    }

    @Test
    void theDemoIsProvenWholeAndCanBeTakenHome() throws IOException {
        assertThat(Terminal.plain().run("demo", "--check").out())
                .startsWith("All ")
                .contains("feeds are proven in the target");
        Path file = folder.resolve("hall.yaml");
        assertThat(Terminal.plain().run("demo", "--write", file.toString()).status())
                .isZero();
        Terminal.Ran checked = Terminal.plain().run("check", file.toString());
        assertThat(checked.status()).isZero();
        Terminal.Ran again = Terminal.plain().run("demo", "--write", file.toString());
        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("is there already");
    }

    /** The demo names a feed to begin with; it must be there. */
    @Test
    void commandsThatAreSuggestedWork() throws IOException {
        Path file = folder.resolve("hall.yaml");
        String out = Terminal.plain().run("demo", "--write", file.toString()).out();
        List<String> commands = out.lines()
                .map(String::strip)
                .filter(line -> line.startsWith("housewright "))
                .toList();
        assertThat(commands).hasSize(2);
        for (String command : commands) {
            assertThat(Terminal.plain()
                            .run(command.substring("housewright ".length()).split(" "))
                            .status())
                    .as(command)
                    .isZero();
        }
    }

    @Test
    void theRehearsalPrintsNothing() {
        Terminal.Ran ran = Terminal.plain().run("rehearse");
        assertThat(ran.all()).isEqualTo("--- exit status 0\n");
    }

    @Test
    void aTypeIsWrittenAsAStartThatCheckReads() {
        for (String id : List.of("analog-8", "mic-cable", "rca-to-xlr-3m")) {
            Path file = folder.resolve(id + ".yaml");
            assertThat(Terminal.plain()
                            .run("library", id, "--write", file.toString())
                            .all())
                    .contains("status 0");
            assertThat(Terminal.plain().run("check", file.toString()).err()).isEmpty();
        }
        Terminal.Ran again = Terminal.plain()
                .run(
                        "library",
                        "analog-8",
                        "--write",
                        folder.resolve("analog-8.yaml").toString());
        assertThat(again.status()).isEqualTo(2);
        assertThat(again.err()).contains("left as it is");
    }

    @Test
    void wordsFindEveryTypeThatHasThemAll() throws IOException {
        JsonNode types = new ObjectMapper()
                .readTree(Terminal.plain()
                        .run("library", "CONVERTER", "hdmi", "--json")
                        .out())
                .get("types");
        assertThat(types).isNotEmpty();
        for (JsonNode type : types) {
            assertThat(type.toString().toLowerCase(java.util.Locale.ROOT)).contains("converter", "hdmi");
        }
        assertThat(types.get(0).get("kind").asText())
                .as("the kind asked for comes first")
                .isEqualTo("converter");
    }

    @Test
    void nothingIsSaidOfWorkThatIsQuick() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String done = Progress.during(Terminal.stream(err), true, "Proving", Duration.ofMinutes(1), () -> "done");
        assertThat(done).isEqualTo("done");
        assertThat(err.size()).isZero();
    }

    @Test
    void longWorkSaysWhatItDoesAndWipesTheLine() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        String done = Progress.during(Terminal.stream(err), true, "Proving", Duration.ZERO, () -> {
            while (!err.toString(StandardCharsets.UTF_8).contains("Proving…")) {
                Thread.onSpinWait();
            }
            return "done";
        });
        assertThat(done).isEqualTo("done");
        assertThat(err.toString(StandardCharsets.UTF_8)).isEqualTo("Proving…\r        \r");
    }

    @Test
    void nobodyWatchingNobodyIsTold() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Progress.during(Terminal.stream(err), false, "Proving", Duration.ZERO, () -> "done");
        assertThat(err.size()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"plain.yaml", "hall/plan-2.yaml", "it's here.yaml", "a b.yaml", "über.yaml", "$HOME.yaml"})
    void namesAreQuotedForAShell(String name) throws Exception {
        Process shell = new ProcessBuilder("sh", "-c", "printf %s " + FileCommand.quoted(name)).start();
        assertThat(new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8))
                .isEqualTo(name);
    }
}
