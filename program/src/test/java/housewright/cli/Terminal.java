package housewright.cli;

import housewright.app.ProjectFiles;
import housewright.app.Projects;
import housewright.app.Server;
import housewright.app.StoreException;
import housewright.app.TypeSearch;
import housewright.library.BuiltInLibrary;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Runs commands as a person would, without a process. */
final class Terminal {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);

    private final String input;
    private final Screen screen;

    private Terminal(String input, Screen screen) {
        this.input = input;
        this.screen = screen;
    }

    static Terminal plain() {
        return new Terminal("", new Screen(false, false));
    }

    static Terminal typing(String input) {
        return new Terminal(input, new Screen(false, false));
    }

    static Terminal coloured() {
        return new Terminal("", new Screen(true, false));
    }

    /** One of so many columns, with that at its standard input. */
    static Terminal narrow(String input, int columns) {
        return new Terminal(input, new Screen(false, false, columns));
    }

    record Ran(String out, String err, int status) {
        /** All of it, as golden files hold it. */
        String all() {
            return out + (err.isEmpty() ? "" : "--- on standard error:\n" + err) + "--- exit status " + status + "\n";
        }
    }

    Ran run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = cli(stream(out), stream(err)).run(List.of(arguments));
        return new Ran(out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8), status);
    }

    Cli cli(PrintStream out, PrintStream err) {
        ProjectFiles files =
                new ProjectFiles(LIBRARY, new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
        return new Cli(
                LIBRARY,
                files,
                new TypeSearch(LIBRARY),
                Terminal::noServer,
                Terminal::noProjects,
                out,
                err,
                screen,
                "Housewright of a test");
    }

    /** A machine on which no server can be started. */
    private static Server.Start noServer(Server.Wish wish) {
        return new Server.Start.NotStarted(List.of("No server here for " + wish + "."));
    }

    private static Projects noProjects() throws StoreException {
        throw new StoreException("No projects here.");
    }

    static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }
}
