package housewright.main;

import housewright.app.Author;
import housewright.app.Demo;
import housewright.app.OpenProject;
import housewright.app.Opening;
import housewright.app.ProjectFiles;
import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Kept;
import housewright.app.Projects;
import housewright.app.Role;
import housewright.app.Server;
import housewright.app.StoreException;
import housewright.file.FileError;
import housewright.model.Library;
import housewright.store.sqlite.SqliteStore;
import housewright.web.Serving;
import housewright.web.WebServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Opens the store wished for, and serves its projects. */
final class LocalServer implements Server {
    private static final String STORE_FILE_BEGINS = "SQLite format 3";
    private static final String STORE_FILE = "projects.housewright";

    private final Library library;
    private final ProjectFiles files;
    private final PrintStream err;
    private final Author owner;

    LocalServer(Library library, ProjectFiles files, PrintStream err) {
        this.library = library;
        this.files = files;
        this.err = err;
        this.owner = new Author(System.getProperty("user.name", "lead"), Role.LEAD);
    }

    @Override
    public Start start(Wish wish) {
        try {
            return open(wish);
        } catch (StoreException e) {
            return new Start.NotStarted(List.of(e.why()));
        } catch (IOException | InvalidPathException e) {
            return new Start.NotStarted(List.of(String.valueOf(e.getMessage())));
        }
    }

    private Start open(Wish wish) throws StoreException, IOException {
        if (wish.demo()) {
            // read while the store is made: a second saved before the first page is there
            CompletableFuture<Opening> demo =
                    CompletableFuture.supplyAsync(() -> files.read(Demo.FILE_NAME, Demo.bytes()));
            Path folder = Files.createTempDirectory("housewright-demo-");
            Projects projects = projects(store(folder.resolve(STORE_FILE)));
            return serve(projects, wish, null, begin(projects, demo.join()), () -> delete(folder));
        }
        String file = wish.file();
        if (file != null && isStore(file)) {
            Path path = Path.of(file).toAbsolutePath();
            return serve(projects(store(path)), wish, path, null, () -> {});
        }
        Opening opening = file == null ? null : files.open(absolute(file));
        if (opening instanceof Opening.Unreadable unreadable) {
            return new Start.NotStarted(List.of(unreadable.why()));
        }
        if (opening instanceof Opening.Refused refused) {
            return new Start.NotStarted(
                    refused.errors().stream().map(FileError::text).toList());
        }
        Path path = DataFolder.find().resolve(STORE_FILE);
        Projects projects = own();
        return serve(projects, wish, path, opening == null ? null : begin(projects, opening), () -> {});
    }

    /** The projects in the user's data folder. */
    Projects own() throws StoreException {
        Path folder = DataFolder.find();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new StoreException(
                    "The folder " + folder + " for your projects cannot be made: " + e.getMessage() + ".", e);
        }
        return projects(store(folder.resolve(STORE_FILE)));
    }

    private Projects projects(ProjectStore store) {
        return new Projects(store, library, files, Clock.systemUTC());
    }

    private static ProjectStore store(Path path) throws StoreException {
        return SqliteStore.open(path, Clock.systemUTC().instant());
    }

    /** Takes the demo's store away, which is nobody's work; what cannot be deleted is left to the system. */
    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(path -> path.toFile().delete());
        } catch (IOException e) {
            // the folder for temporary files is cleared by the system
        }
    }

    /** The id of the project that the file was taken into before, or is now. */
    private String begin(Projects projects, Opening opening) throws StoreException {
        if (!(opening instanceof Opening.Opened opened)) {
            throw new IllegalStateException("The demo does not read: " + opening);
        }
        Optional<Kept> known = projects.findFrom(opened.file().name());
        if (known.isPresent()) {
            return known.get().id();
        }
        OpenProject begun = projects.begin(opened.file(), owner);
        return begun.id();
    }

    private Start serve(Projects projects, Wish wish, @Nullable Path keptIn, @Nullable String first, Runnable after)
            throws IOException, StoreException {
        Integer port = wish.port();
        Serving serving = new Serving(
                port == null ? USUAL_PORT : port, port != null, wish.share(), owner.person(), first, keptIn);
        WebServer server = WebServer.start(projects, serving, err);
        return new Start.Running(server.openOnce(), server.shared(), keptIn == null ? null : keptIn.toString(), () -> {
            List<String> lost = server.unaccepted();
            server.close();
            lost.forEach(each -> err.println("The plan found for " + each + " was not accepted, and is gone."));
            err.flush();
            projects.store().close();
            after.run();
        });
    }

    private static boolean isStore(String file) {
        try (InputStream in = Files.newInputStream(Path.of(file))) {
            byte[] begins = in.readNBytes(STORE_FILE_BEGINS.length());
            return new String(begins, StandardCharsets.US_ASCII).equals(STORE_FILE_BEGINS);
        } catch (IOException | InvalidPathException e) {
            return false; // opening it as a project file says why it cannot be read
        }
    }

    private static String absolute(String file) {
        return file.equals(ProjectFiles.STANDARD_INPUT)
                ? file
                : Path.of(file).toAbsolutePath().normalize().toString();
    }
}
