package housewright.cli;

import housewright.app.Demo;
import housewright.app.OwnProjects;
import housewright.app.ProjectFiles;
import housewright.app.Server;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.CookieHandler;
import java.net.CookieManager;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

    private static final List<String> PAGES = List.of("", "/feeds", "/feeds/" + Demo.FEED, "/findings");

    /** Where the page of the first link goes on to. */
    private static final Pattern LEADS_TO = Pattern.compile("url=([^\"]*)");

    private final Desk desk;

    private final OwnProjects own;

    RehearseCommand(Desk desk, OwnProjects own) {
        this.desk = desk;
        this.own = own;
    }

    @Override
    public Integer call() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        for (List<String> command : COMMANDS) {
            ProjectFiles files = new ProjectFiles(desk.library, new ByteArrayInputStream(Demo.bytes()));
            int status = new Cli(
                            desk.library,
                            files,
                            desk.types,
                            desk.server,
                            own,
                            nowhere,
                            nowhere,
                            new Screen(true, false),
                            "")
                    .run(command);
            if (status == Status.CANNOT) {
                return status;
            }
        }
        return rehearseServing();
    }

    /** Serves the demo to itself. A machine where that cannot be done starts the server a little later, that is all. */
    private int rehearseServing() {
        if (!(desk.server.start(new Server.Wish(null, true, null, false)) instanceof Server.Start.Running running)) {
            return Status.FINE;
        }
        CookieHandler.setDefault(new CookieManager());
        try {
            String home = running.link().substring(0, running.link().indexOf("/in/"));
            Matcher leadsTo = LEADS_TO.matcher(read(running.link()));
            if (leadsTo.find()) {
                for (String page : PAGES) {
                    read(home + leadsTo.group(1) + page);
                }
            }
            return Status.FINE;
        } catch (IOException e) {
            return Status.CANNOT;
        } finally {
            running.stop().run();
        }
    }

    private static String read(String address) throws IOException {
        try (InputStream in = URI.create(address).toURL().openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
