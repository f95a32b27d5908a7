package housewright.main;

import housewright.app.ProjectFiles;
import housewright.app.TypeSearch;
import housewright.cli.Cli;
import housewright.cli.Screen;
import housewright.library.BuiltInLibrary;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Starts Housewright. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        System.exit(cli().run(List.of(args)));
    }

    private static Cli cli() {
        BuiltInLibrary library = BuiltInLibrary.of(BuiltInLibrary.LATEST);
        ProjectFiles files = new ProjectFiles(library, System.in);
        PrintStream err = utf8(FileDescriptor.err);
        LocalServer server = new LocalServer(library, files, err);
        return new Cli(
                library,
                files,
                new TypeSearch(library),
                server,
                server::own,
                utf8(FileDescriptor.out),
                err,
                screen(),
                version());
    }

    private static PrintStream utf8(FileDescriptor stream) {
        return new PrintStream(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
    }

    /** The command's script knows what the streams are; Java has told it differently from version to version. */
    private static Screen screen() {
        boolean colour = Boolean.getBoolean("housewright.terminal.out")
                && noneOf("NO_COLOR")
                && !"dumb".equals(System.getenv("TERM"));
        int columns = Integer.getInteger("housewright.terminal.columns", 0);
        boolean watched = Boolean.getBoolean("housewright.terminal.err");
        return columns > 0 ? new Screen(colour, watched, columns) : new Screen(colour, watched);
    }

    private static boolean noneOf(String variable) {
        String value = System.getenv(variable);
        return value == null || value.isEmpty();
    }

    private static String version() {
        String version = Main.class.getPackage().getImplementationVersion();
        return "Housewright " + (version == null ? "unpacked" : version) + ", library " + BuiltInLibrary.LATEST;
    }
}
