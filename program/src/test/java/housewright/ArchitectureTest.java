package housewright;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArchitectureTest {

    static {
        // The rules ask only for the names of what is used, and reading the JDK's classes takes most of the time.
        ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
    }

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("housewright");

    @Test
    void programKeepsToTheLadder() {
        assertThat(PROGRAM).as("classes found").isNotEmpty();
        assertThat(Ladder.broken(PROGRAM)).isEmpty();
    }

    @Test
    void packagesHaveNoCycles() {
        SlicesRuleDefinition.slices()
                .matching("housewright.(**)")
                .should()
                .beFreeOfCycles()
                .check(PROGRAM);
    }

    @ParameterizedTest(name = "{0} may not use {1}")
    @CsvSource({
        "model, housewright.app.Other, model use housewright.app",
        "unit, housewright.model.Other, unit use housewright.model",
        "model, housewright.model.change.Other, model use housewright.model.change",
        "signal, housewright.file.Other, signal use housewright.file",
        "cli, housewright.main.Other, cli use housewright.main",
        "cli, housewright.web.Other, cli use housewright.web",
        "web, housewright.cli.Other, web use housewright.cli",
        "web, housewright.store.sqlite.Other, web use housewright.store.sqlite",
        "signal, java.io.InputStream, signal use java.io",
        "file, java.nio.file.Path, file use java.nio.file",
        "file, java.io.FileReader, only app",
        "library, java.io.File, only app",
        "model, java.net.URI, model use java.net",
        "app, java.sql.Connection, app use java.sql",
        "app, picocli.CommandLine, app use picocli",
    })
    void packageOutsideTheListIsRefused(String from, String used, String complaint, @TempDir Path folder) {
        String field = "package housewright.%s; public class Some { %s used; }".formatted(from, used);
        assertThat(broken(folder, field, other(used)))
                .singleElement()
                .asString()
                .contains(complaint);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
                    System.currentTimeMillis()               | System.currentTimeMillis
                    System.nanoTime()                        | System.nanoTime
                    System.getenv()                          | System.getenv
                    System.out                               | System.out
                    java.time.Instant.now()                  | Instant.now
                    java.time.LocalDate.now()                | LocalDate.now
                    java.time.Clock.systemUTC()              | Clock.systemUTC
                    Math.random()                            | Math.random
                    new java.util.Random()                   | Random.<init>
                    java.util.UUID.randomUUID()              | UUID.randomUUID
                    java.util.Locale.getDefault()            | Locale.getDefault
                    Object.class.getResource("x")            | Class.getResource
                    (java.util.function.LongSupplier) System::nanoTime | System.nanoTime
                    """)
    void clockChanceAndSurroundingsAreRefusedBelowTheLine(String expression, String complaint, @TempDir Path folder) {
        String uses = "class Some { Object used() { return %s; } }".formatted(expression);
        assertThat(broken(folder.resolve("below"), "package housewright.unit; " + uses))
                .anyMatch(line -> line.contains(complaint));
        assertThat(broken(folder.resolve("above"), "package housewright.app; " + uses))
                .as("above the line")
                .noneMatch(line -> line.contains(complaint));
    }

    @Test
    void seededChanceIsAllowed(@TempDir Path folder) {
        assertThat(broken(folder, "package housewright.unit; class Some { Object used = new java.util.Random(7L); }"))
                .isEmpty();
    }

    @Test
    void newPackageMustBePutOnTheLadder(@TempDir Path folder) {
        assertThat(broken(folder, "package housewright.shed; class Some {}"))
                .singleElement()
                .asString()
                .contains("housewright.shed", "must be put on the ladder");
    }

    @Test
    void engineHasOnePublicEntryClass(@TempDir Path folder) {
        String entry = "package housewright.signal; public class Some {}";
        String result = "package housewright.signal; public record Result(int value) {}";
        String hidden = "package housewright.signal; class Hidden {}";
        assertThat(broken(folder, entry, result, hidden)).isEmpty();
        assertThat(broken(folder, entry, "package housewright.signal; public class Second {}"))
                .singleElement()
                .asString()
                .contains("Second, Some");
    }

    /** The class that a case names, where it is one of ours or of a library that this test does not depend on. */
    private static String other(String used) {
        int dot = used.lastIndexOf('.');
        return used.startsWith("java.")
                ? "package housewright.unit; class Unused {}"
                : "package %s; public class %s {}".formatted(used.substring(0, dot), used.substring(dot + 1));
    }

    private static List<String> broken(Path folder, String... sources) {
        compile(folder, List.of(sources));
        return Ladder.broken(new ClassFileImporter().importPath(folder.resolve("housewright")));
    }

    private static void compile(Path folder, List<String> sources) {
        var compiler = ToolProvider.getSystemJavaCompiler();
        List<JavaFileObject> files = new ArrayList<>();
        for (String source : sources) {
            String name = source.replaceFirst("(?s).*?\\b(?:class|record) (\\w+).*", "$1");
            String folderOfPackage =
                    source.replaceFirst("(?s)package ([\\w.]+);.*", "$1").replace('.', '/');
            files.add(
                    new SimpleJavaFileObject(
                            URI.create("string:///" + folderOfPackage + "/" + name + ".java"),
                            JavaFileObject.Kind.SOURCE) {
                        @Override
                        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                            return source;
                        }
                    });
        }
        try (var manager = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            Files.createDirectories(folder);
            manager.setLocationFromPaths(StandardLocation.CLASS_OUTPUT, List.of(folder));
            manager.setLocationFromPaths(StandardLocation.CLASS_PATH, List.of(folder));
            assertThat(compiler.getTask(null, manager, null, List.of("-proc:none"), null, files)
                            .call())
                    .as("compiles: %s", sources)
                    .isTrue();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
