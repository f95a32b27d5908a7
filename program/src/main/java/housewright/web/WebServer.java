package housewright.web;

import gg.jte.html.HtmlTemplateOutput;
import housewright.app.Projects;
import housewright.app.Server.Shared;
import housewright.app.StoreException;
import housewright.app.plan.SolverProcess;
import housewright.app.plan.Solves;
import housewright.signal.Moment;
import housewright.study.Study;
import housewright.web.page.Frame;
import housewright.web.page.QuestionsPage;
import housewright.web.view.JtetoldGenerated;
import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The server: one process, one store, the pages of its projects. */
public final class WebServer implements AutoCloseable {
    static final int MOST_UPLOAD_MB = QuestionsPage.MOST_MB;

    private static final long MOST_READ_OUT = 1024 * 1024;
    private static final int PORTS_TRIED = 50;
    private static final int LAST_PORT = 65535;

    private final Javalin javalin;
    private final Common common;
    private final Addresses addresses;
    private final BackupClock backups;

    private WebServer(Javalin javalin, Common common, Addresses addresses, BackupClock backups) {
        this.backups = backups;
        this.javalin = javalin;
        this.common = common;
        this.addresses = addresses;
    }

    /**
     * Starts it; it serves until it is closed.
     *
     * @param err is told of faults of the program
     * @throws IOException where no port can be had; its message is a sentence
     */
    public static WebServer start(Projects projects, Serving serving, PrintStream err)
            throws IOException, StoreException {
        Addresses addresses = Addresses.of(serving.share(), freePort(serving));
        SharedLinks links = new SharedLinks(projects.store());
        Door door = new Door(serving.owner(), links, projects.store(), projects.clock());
        Guard guard = new Guard(door, addresses);
        Common common = new Common(
                projects,
                new Assets(),
                door,
                guard,
                links,
                new Live(door),
                ZoneId.systemDefault(),
                addresses,
                serving,
                new Sheets(),
                new Standings(),
                new Solves(SolverProcess::new, projects.clock()),
                new Press());
        Javalin javalin = Javalin.create(config -> configure(config, common, err));
        Thread.ofVirtual().name("warm").start(() -> warm(common));
        javalin.start(serving.share() ? "0.0.0.0" : "127.0.0.1", addresses.port());
        BackupClock backups = BackupClock.start(projects.store(), projects.clock(), BackupClock.EVERY, err);
        return new WebServer(javalin, common, addresses, backups);
    }

    /** Works out what the first page says, while the server starts and a browser opens. */
    private static void warm(Common common) {
        String start = common.serving().start();
        if (start == null) {
            return;
        }
        try {
            common.projects().find(start).ifPresent(job -> {
                Study study = job.now().study();
                study.verdict();
                study.at(Moment.today()).verdict();
                study.work();
            });
        } catch (StoreException e) {
            // the page says it
        }
    }

    private static int freePort(Serving serving) throws IOException {
        InetAddress address =
                serving.share() ? new InetSocketAddress(0).getAddress() : InetAddress.getLoopbackAddress();
        int last = serving.exact() ? serving.port() : Math.min(LAST_PORT, serving.port() + PORTS_TRIED);
        for (int port = serving.port(); port <= last; port++) {
            try (ServerSocket socket = new ServerSocket()) {
                socket.setReuseAddress(true);
                socket.bind(new InetSocketAddress(address, port));
                return socket.getLocalPort();
            } catch (IOException e) {
                // taken: the next one
            }
        }
        throw new IOException(
                serving.exact()
                        ? "Port " + serving.port() + " cannot be had: another program listens there, or it is reserved."
                                + " Name another with --port, or leave it out."
                        : "None of the ports " + serving.port() + " to " + last + " is free; name one with --port.");
    }

    /** On a request that was refused in words of ours. */
    private static final String SAID_WHY = "said-why";

    private static void configure(JavalinConfig config, Common common, PrintStream err) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.compressionStrategy = CompressionStrategy.GZIP;
        config.http.maxRequestSize = MOST_UPLOAD_MB * 1024L * 1024;
        config.jetty.multipartConfig.maxFileSize(MOST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(MOST_UPLOAD_MB + 1, SizeUnit.MB);
        config.jetty.multipartConfig.maxInMemoryFileSize(MOST_UPLOAD_MB, SizeUnit.MB);
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendDateHeader(true);
        });
        config.jetty.modifyServer(
                server -> server.setStopTimeout(0)); // what is kept is kept; windows stay open for ever
        config.routes.before(common.guard()::before);
        for (Route route : Routes.all()) {
            Handler handler =
                    ctx -> route.action().answer(new Visit(ctx, common.guard().admit(ctx, route), common));
            if (route.changes()) {
                config.routes.post(route.path(), handler);
            } else {
                config.routes.get(route.path(), handler);
            }
        }
        config.routes.exception(HttpResponseException.class, (e, ctx) -> {
            ctx.attribute(SAID_WHY, e instanceof Refused);
            tell(ctx, common, e.getStatus(), message(e));
        });
        config.routes.exception(
                StoreException.class,
                (e, ctx) -> tell(ctx, common, 503, e.whyFor(common.guard().role(ctx))));
        config.routes.exception(Exception.class, (e, ctx) -> {
            synchronized (err) {
                err.println("A fault in Housewright, at " + ctx.method() + " " + ctx.path() + ":");
                e.printStackTrace(err);
            }
            tell(
                    ctx,
                    common,
                    500,
                    "This is a fault in Housewright. What was kept before is kept; please report what the terminal"
                            + " shows.");
        });
        config.routes.error(HttpStatus.NOT_FOUND, ctx -> {
            if (!Boolean.TRUE.equals(ctx.attribute(SAID_WHY))) {
                tell(ctx, common, 404, "There is no such page.");
            }
        });
    }

    private static String message(HttpResponseException e) {
        return e.getMessage() == null ? "" : e.getMessage();
    }

    /**
     * Reads what is left of a refused request: the server would close the connection otherwise, under a browser that has
     * begun its next request on it. What is large is not worth reading; then the browser is told.
     */
    private static void readOut(Context ctx) {
        if (ctx.req().getContentLengthLong() > MOST_READ_OUT) {
            ctx.header("Connection", "close");
            return;
        }
        try {
            InputStream in = ctx.req().getInputStream();
            in.skipNBytes(MOST_READ_OUT); // however long it goes on: in pieces it has no length
            ctx.header("Connection", "close");
        } catch (EOFException e) {
            // that was all of it
        } catch (IOException | RuntimeException e) {
            ctx.header("Connection", "close"); // cut short, or read in another way before
        }
    }

    private static void tell(Context ctx, Common common, int status, String why) {
        readOut(ctx);
        Frame frame = new Frame(
                "Housewright",
                Theme.of(ctx),
                common.assets().base(),
                "",
                null,
                null,
                List.of(),
                null,
                ctx.path(),
                List.of(),
                Map.of());
        ctx.status(status);
        Visit.write(
                ctx, (HtmlTemplateOutput output) -> JtetoldGenerated.render(output, null, frame, title(status), why));
    }

    private static String title(int status) {
        return switch (status) {
            case 400 -> "That cannot be read";
            case 401 -> "Who is there?";
            case 403 -> "Not for you to do";
            case 404 -> "There is nothing here";
            case 413 -> "That is too large";
            case 503 -> "That cannot be done now";
            default -> status >= 500 ? "Something went wrong" : "That cannot be done";
        };
    }

    /** The address at which this machine's own browser comes in, once. */
    public String openOnce() {
        String secret = common.door().openOnce();
        return addresses.local() + "/in/" + secret;
    }

    Common common() {
        return common;
    }

    /** Projects, by their ids, whose found plan would be lost by {@link #close}. */
    public List<String> unaccepted() {
        return common.solves().unaccepted();
    }

    public int port() {
        return addresses.port();
    }

    /** For others on the network; null where it is not shared. */
    public @Nullable Shared shared() {
        if (!common.serving().share()) {
            return null;
        }
        String secret = common.door().siteSecret();
        List<String> links = addresses.shared().stream()
                .map(address -> address + "/in/" + secret)
                .toList();
        return new Shared(links, links.isEmpty() ? List.of() : QrCode.blocks(links.getFirst()));
    }

    @Override
    public void close() {
        backups.close();
        common.solves().close();
        common.live().close();
        javalin.stop();
    }
}
