package housewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The command {@code ./housewright} in a checkout of its own, with a Java and a Maven that only say how they were called:
 * what is tested is the script, not what it starts.
 */
class CommandTest {

    private static final Path REPOSITORY = Path.of("..").toAbsolutePath().normalize();

    /** Says its folder and arguments; makes the archive it is asked for, and proves it whole unless told that it is bad. */
    private static final String JAVA = """
            #!/bin/sh
            for argument in "$@"; do
                case $argument in
                    -XX:ArchiveClassesAtExit=*) echo archive >"${argument#*=}"; exit ;;
                    -version) [ ! -f "${0%/*}/archives-are-bad" ]; exit ;;
                esac
            done
            while [ "$1" != -jar ]; do shift; done
            shift 2
            echo "java ${0%/bin/java} in $(pwd):"
            for argument in "$@"; do echo "<$argument>"; done
            exit 7
            """;

    /** Builds an empty jar, slowly enough for two to meet; counts its calls; fails when told to. */
    private static final String MAVEN = """
            #!/bin/sh
            echo "mvn with $JAVA_HOME" >>mvn-calls
            sleep 0.3
            if [ -f fail ]; then echo "[ERROR] no such symbol"; exit 1; fi
            mkdir -p program/target/lib
            : >program/target/housewright.jar
            """;

    @TempDir
    private Path temp;

    private Path checkout;
    private Path tools;
    private Path home;

    @BeforeEach
    void makeCheckout() throws IOException {
        // Spaces, since folders have them.
        checkout = Files.createDirectories(temp.resolve("my check out")).toRealPath();
        home = Files.createDirectories(temp.resolve("home"));
        for (String file : List.of("housewright", "scripts/find-jdk.sh", "pom.xml", "program/pom.xml")) {
            Files.createDirectories(checkout.resolve(file).getParent());
            Files.copy(REPOSITORY.resolve(file), checkout.resolve(file));
        }
        executable(checkout.resolve("housewright"), Files.readString(REPOSITORY.resolve("housewright")));
        Files.createDirectories(checkout.resolve("program/src/main"));
        tools = temp.resolve("tools");
        // A PATH of its own keeps the machine's java and mvn out.
        for (String tool :
                List.of("cat", "dirname", "find", "ln", "mkdir", "mktemp", "mv", "readlink", "rm", "sleep")) {
            executable(tools.resolve(tool), "#!/bin/sh\nexec %s \"$@\"\n".formatted(whereIs(tool)));
        }
        executable(tools.resolve("mvn"), MAVEN);
    }

    @Test
    void buildsOnceThenRunsWithItsArguments() throws Exception {
        Path jdk = jdk(temp.resolve("jdk"), "21.0.2");
        Ran first = run(temp, jdk, checkout.resolve("housewright"), "check", "two words.yaml", "", "*");
        assertThat(first.out())
                .isEqualTo("java %s in %s:%n<check>%n<two words.yaml>%n<>%n<*>%n".formatted(jdk, temp.toRealPath()));
        assertThat(first.err()).startsWith("Building Housewright").hasLineCount(1);
        assertThat(first.status()).isEqualTo(7);

        Ran second = run(temp, jdk, checkout.resolve("housewright"));
        assertThat(second.err()).isEmpty();
        assertThat(builds()).isEqualTo(1);
        assertThat(checkout.resolve("program/target/housewright-21.0.2.jsa")).hasContent("archive");
    }

    @Test
    void archiveThatIsNotWholeIsEmptiedAndNotTriedAgain() throws Exception {
        Path jdk = jdk(temp.resolve("jdk"), "21.0.2");
        Files.createFile(jdk.resolve("bin/archives-are-bad"));
        assertThat(run(temp, jdk, checkout.resolve("housewright"), "x").out()).contains("<x>");
        Path archive = checkout.resolve("program/target/housewright-21.0.2.jsa");
        assertThat(archive).isEmptyFile();

        Files.delete(jdk.resolve("bin/archives-are-bad"));
        assertThat(run(temp, jdk, checkout.resolve("housewright"), "x").out()).contains("<x>");
        assertThat(archive).isEmptyFile();
    }

    private int builds() throws IOException {
        Path calls = checkout.resolve("mvn-calls");
        return Files.exists(calls) ? Files.readAllLines(calls).size() : 0;
    }

    @Test
    void buildsAgainWhenTheSourceIsNewer() throws Exception {
        Path jdk = jdk(temp.resolve("jdk"), "21");
        run(temp, jdk, checkout.resolve("housewright"));
        Path source = Files.writeString(checkout.resolve("program/src/main/New.java"), "");
        Files.setLastModifiedTime(source, FileTime.from(Instant.now().plusSeconds(1)));
        assertThat(run(temp, jdk, checkout.resolve("housewright")).err()).contains("Building");
        assertThat(builds()).isEqualTo(2);
    }

    @Test
    void worksThroughLinksFromAnyFolder() throws Exception {
        Path jdk = jdk(temp.resolve("jdk"), "25.0.1");
        Path bin = Files.createDirectories(temp.resolve("bin"));
        Files.createSymbolicLink(checkout.resolve("absolute"), checkout.resolve("housewright"));
        Files.createSymbolicLink(bin.resolve("hw"), Path.of("../my check out/absolute"));
        Ran ran = run(bin, jdk, Path.of("./hw"), "trace");
        assertThat(ran.out()).isEqualTo("java %s in %s:%n<trace>%n".formatted(jdk, bin.toRealPath()));
    }

    @Test
    void twoAtOnceBuildOnce() throws Exception {
        Path jdk = jdk(temp.resolve("jdk"), "21");
        Process one = start(temp, jdk, checkout.resolve("housewright"), "one");
        Process two = start(temp, jdk, checkout.resolve("housewright"), "two");
        assertThat(finish(one).out()).contains("<one>");
        assertThat(finish(two).out()).contains("<two>");
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void lockOfABuildThatDiedIsTaken() throws Exception {
        Path jdk = jdk(temp.resolve("jdk"), "21");
        Process dead = new ProcessBuilder("true").start();
        dead.waitFor();
        Files.createDirectories(checkout.resolve("program/target"));
        Files.createSymbolicLink(checkout.resolve("program/target/build-lock"), Path.of(Long.toString(dead.pid())));
        assertThat(run(temp, jdk, checkout.resolve("housewright"), "x").out()).contains("<x>");
    }

    @Test
    void brokenBuildShowsWhyAndExitsTwo() throws Exception {
        Path jdk = jdk(temp.resolve("jdk"), "21");
        Files.createFile(checkout.resolve("fail"));
        Ran ran = run(temp, jdk, checkout.resolve("housewright"));
        assertThat(ran.err()).contains("[ERROR] no such symbol", "could not be built");
        assertThat(ran.out()).isEmpty();
        assertThat(ran.status()).isEqualTo(2);
        assertThat(checkout.resolve("program/target/build-lock")).doesNotExist();
    }

    @Test
    void missingMavenIsNamed() throws Exception {
        Files.delete(tools.resolve("mvn"));
        Ran ran = run(temp, jdk(temp.resolve("jdk"), "21"), checkout.resolve("housewright"));
        assertThat(ran.err()).contains("no mvn on the PATH", "apt install maven");
        assertThat(ran.status()).isEqualTo(2);
    }

    @Test
    void javaHomeTooOldFallsBackToTheNewestInTheUsualFolders() throws Exception {
        Path old = jdk(temp.resolve("old"), "17.0.15");
        jdk(home.resolve(".jdks/a"), "99.0.9");
        Path newest = jdk(home.resolve(".jdks/b"), "99.0.10");
        jdk(home.resolve(".jdks/c"), "99");
        withoutTools(jdk(home.resolve(".jdks/d"), "100"));
        assertThat(run(temp, old, checkout.resolve("housewright")).out()).startsWith("java " + newest + " in");
    }

    @Test
    void javaOnThePathComesBeforeTheUsualFolders() throws Exception {
        Path onPath = jdk(temp.resolve("jdk"), "21.0.1");
        jdk(home.resolve(".jdks/b"), "99");
        for (String tool : List.of("java", "javac")) {
            link(
                    temp.resolve("alternatives").resolve(tool),
                    onPath.resolve("bin").resolve(tool));
            link(tools.resolve(tool), temp.resolve("alternatives").resolve(tool));
        }
        assertThat(run(temp, null, checkout.resolve("housewright")).out()).startsWith("java " + onPath + " in");
    }

    @Test
    void builtProgramNeedsNoCompiler() throws Exception {
        run(temp, jdk(temp.resolve("jdk"), "99"), checkout.resolve("housewright"));
        Path runtime = jdk(temp.resolve("runtime"), "99");
        Files.delete(runtime.resolve("bin/javac"));
        assertThat(run(temp, runtime, checkout.resolve("housewright")).out()).startsWith("java " + runtime + " in");
    }

    @Test
    void searchSaysWhatItFoundAndWhatToInstall() throws Exception {
        // The real machine may well have a JDK in the usual folders, so ask the search for one that nobody has.
        Path old = jdk(temp.resolve("old"), "17.0.15");
        Path script = executable(temp.resolve("search"), """
                #!/bin/sh
                set -eu
                . '%s/scripts/find-jdk.sh'
                wanted_major=1000
                find_jdk javac || { say_no_jdk; exit 2; }
                """.formatted(checkout));
        Ran ran = run(temp, old, script);
        assertThat(ran.err())
                .contains("needs a JDK 1000 or later", "Java 17.0.15 in " + old, "apt install", "JAVA_HOME");
        assertThat(ran.status()).isEqualTo(2);
    }

    private static Path jdk(Path folder, String version) throws IOException {
        executable(folder.resolve("bin/java"), JAVA);
        executable(folder.resolve("bin/javac"), "#!/bin/sh\n");
        Files.writeString(
                folder.resolve("release"),
                "IMPLEMENTOR=\"Some\"\nJAVA_VERSION=\"%s\"\nLIBC=\"gnu\"\n".formatted(version));
        return folder;
    }

    private static void withoutTools(Path jdk) throws IOException {
        Files.delete(jdk.resolve("bin/java"));
        Files.delete(jdk.resolve("bin/javac"));
    }

    private static Path executable(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static void link(Path link, Path target) throws IOException {
        Files.createDirectories(link.getParent());
        Files.createSymbolicLink(link, target);
    }

    private static Path whereIs(String tool) {
        for (String folder : System.getenv("PATH").split(":")) {
            if (Files.isExecutable(Path.of(folder, tool))) {
                return Path.of(folder, tool);
            }
        }
        throw new AssertionError("no " + tool + " on the PATH");
    }

    private record Ran(String out, String err, int status) {}

    private Ran run(Path folder, Path javaHome, Path command, String... arguments) throws Exception {
        return finish(start(folder, javaHome, command, arguments));
    }

    private Process start(Path folder, Path javaHome, Path command, String... arguments) throws IOException {
        List<String> line = new ArrayList<>(List.of(command.toString()));
        line.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(line).directory(folder.toFile());
        builder.environment().clear();
        builder.environment().put("PATH", tools.toString());
        builder.environment().put("HOME", home.toString());
        builder.environment().put("TMPDIR", temp.toString());
        if (javaHome != null) {
            builder.environment().put("JAVA_HOME", javaHome.toString());
        }
        return builder.start();
    }

    private static Ran finish(Process process) throws Exception {
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).as("ends").isTrue();
        return new Ran(out, err, process.exitValue());
    }
}
