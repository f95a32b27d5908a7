package housewright.cli;

import housewright.app.Server;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How to serve. */
final class ServeOptions {
    private static final int LAST_PORT = 65535;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Listen on this port. Otherwise on " + Server.USUAL_PORT + ", or the next that is free.")
    @Nullable
    Integer port;

    @Option(
            names = "--share",
            description = "Let others on the local network in: prints a link for helpers, and its QR code.")
    boolean share;

    @Option(names = "--no-browser", description = "Only print the link.")
    boolean noBrowser;

    /** What is wrong with them, or null. */
    @Nullable
    String wrong() {
        return port == null || (port >= 1 && port <= LAST_PORT)
                ? null
                : "A port is a number from 1 to " + LAST_PORT + ", not " + port + ".";
    }
}
