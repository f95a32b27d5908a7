package housewright.cli;

import housewright.app.Demo;
import housewright.app.ProjectFiles;
import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Runs what people run, on the demo and without a word, so that Java's class-data archive holds all it needs. */
@Command(
        name = "rehearse",
        header = "For the class-data archive: runs the other commands on the demo, and prints nothing.",
        hidden = true)
final class RehearseCommand implements Callable<Integer> {
    private static final List<List<String>> COMMANDS = List.of(
            List.of("check", "-"),
            List.of("check", "-", "--today"),
            List.of("check", "-", "--json"),
            List.of("trace", "-", Demo.FEED),
            List.of("trace", "-", Demo.FEED, "--json"),
            List.of("mend", "-", Demo.FEED, "--today"),
            List.of("library", "mixer"),
            List.of("help", "check"),
            List.of("--version"));

    private final Desk desk;

    RehearseCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        for (List<String> command : COMMANDS) {
            ProjectFiles files = new ProjectFiles(desk.library, new ByteArrayInputStream(Demo.bytes()));
            int status = new Cli(
                            desk.library, files, desk.types, desk.server, nowhere, nowhere, new Screen(true, false), "")
                    .run(command);
            if (status == Status.CANNOT) {
                return status;
            }
        }
        return Status.FINE;
    }
}
