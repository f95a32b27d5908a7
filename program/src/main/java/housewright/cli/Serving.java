package housewright.cli;

import housewright.app.Server;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;

/** Starts the server, says where it is, opens the browser, and waits until somebody stops it. */
final class Serving {
    private Serving() {}

    static int serve(Desk desk, Server.Wish wish, boolean browser) {
        return switch (desk.server.start(wish)) {
            case Server.Start.NotStarted not -> {
                not.why().forEach(desk.err::println);
                yield Status.CANNOT;
            }
            case Server.Start.Running running -> {
                say(desk, running, wish.demo());
                if (browser) {
                    open(running.link());
                }
                yield await(desk, running);
            }
        };
    }

    private static void say(Desk desk, Server.Start.Running running, boolean demo) {
        Page page = desk.page();
        page.line(Ink.STRONG, demo ? "The demo hall is open at" : "Housewright is open at")
                .line("  " + running.link());
        page.line("The link lets one browser in, once.");
        if (demo) {
            page.line("Change whatever you like: nothing of it is kept when you stop it.");
        } else if (running.keptIn() != null) {
            page.line("Every change is kept in " + running.keptIn() + ".");
        }
        Server.@Nullable Shared shared = running.shared();
        if (shared != null && shared.links().isEmpty()) {
            page.blank().wrapped("This machine is on no network, so there is no link for others.");
        } else if (shared != null) {
            page.blank().line("For others on this network, as helpers on site:");
            shared.links().forEach(link -> page.line("  " + link));
            page.blank();
            shared.code().forEach(page::line);
            page.blank()
                    .wrapped(
                            "Anybody who sees this link can come in. Links for one person, and for viewers, are made on the page Sharing.");
        }
        page.blank().line("Stop it with Ctrl+C.");
        desk.print(page);
    }

    /** Quietly nothing where the machine has no browser. */
    private static void open(String link) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> command = system.contains("mac")
                ? List.of("open", link)
                : system.contains("win")
                        ? List.of("rundll32", "url.dll,FileProtocolHandler", link)
                        : List.of("xdg-open", link);
        if (command.getFirst().equals("xdg-open")
                && System.getenv("DISPLAY") == null
                && System.getenv("WAYLAND_DISPLAY") == null) {
            return; // it would open a browser in the terminal
        }
        try {
            new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // the link is printed
        }
    }

    private static int await(Desk desk, Server.Start.Running running) {
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            running.stop().run();
                            desk.out.println();
                            desk.out.flush();
                            stopped.countDown();
                        },
                        "stop"));
        try {
            stopped.await();
        } catch (InterruptedException e) {
            running.stop().run();
        }
        return Status.FINE;
    }
}
