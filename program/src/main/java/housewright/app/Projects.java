package housewright.app;

import housewright.app.ProjectStore.Kept;
import housewright.app.ProjectStore.NewRevision;
import housewright.app.ProjectStore.Step;
import housewright.file.ProjectReader;
import housewright.file.ProjectText;
import housewright.file.ProjectWriter;
import housewright.file.ReadResult;
import housewright.model.Library;
import housewright.model.Project;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The projects of a store, each open once however many people look at it. Safe for several threads. */
public final class Projects {
    private final ProjectStore store;
    private final Library library;
    private final ProjectFiles files;
    private final InstantSource clock;
    private final Map<String, OpenProject> open = new ConcurrentHashMap<>();

    public Projects(ProjectStore store, Library library, ProjectFiles files, InstantSource clock) {
        this.store = store;
        this.library = library;
        this.files = files;
        this.clock = clock;
    }

    public ProjectStore store() {
        return store;
    }

    public Library library() {
        return library;
    }

    public InstantSource clock() {
        return clock;
    }

    /** The project changed last in front. */
    public List<Kept> list() throws StoreException {
        return store.listProjects();
    }

    /** The project of that id, opened; empty where there is none. */
    public Optional<OpenProject> find(String id) throws StoreException {
        OpenProject known = open.get(id);
        if (known != null) {
            return Optional.of(known);
        }
        if (store.findNewest(id).isEmpty()) {
            return Optional.empty();
        }
        OpenProject opened = new OpenProject(id, store, library, clock);
        OpenProject first = open.putIfAbsent(id, opened);
        return Optional.of(first == null ? opened : first);
    }

    /**
     * A new project with nothing in it but its name.
     *
     * @throws IllegalArgumentException where the name is blank
     */
    public OpenProject begin(String name, Author author) throws StoreException {
        String clean = name.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
        if (clean.isEmpty()) {
            throw new IllegalArgumentException("A project needs a name.");
        }
        String text = "housewright: " + ProjectReader.FORMAT + "\nproject:\n  name: " + quoted(clean) + "\n  library: "
                + library.version() + "\n";
        ReadResult read = ProjectReader.read("new.yaml", text.getBytes(StandardCharsets.UTF_8), library);
        if (!(read instanceof ReadResult.Loaded loaded)) {
            throw new IllegalStateException("A project with nothing in it does not read: " + read);
        }
        return begin(clean, null, loaded.project(), "Begun", author);
    }

    private static String quoted(String name) {
        return "'" + name.replace("'", "''") + "'";
    }

    /** A new project with what a file has. */
    public OpenProject begin(ProjectFile file, Author author) throws StoreException {
        Project project = file.project();
        return begin(project.about().name(), file.name(), project, "Taken over from " + file.name(), author);
    }

    private OpenProject begin(String name, @Nullable String origin, Project project, String says, Author author)
            throws StoreException {
        NewRevision first = new NewRevision(author.person(), clock.instant(), Step.BEGIN, 0, says, "[]", "[]");
        Kept kept = store.create(name, origin, first, ProjectWriter.json(project));
        return find(kept.id()).orElseThrow(() -> new StoreException("The new project is not there."));
    }

    public void remove(String id) throws StoreException {
        store.remove(id, clock.instant());
        open.remove(id);
    }

    /** Reads a file that somebody sent. */
    public Opening read(String name, byte[] bytes) {
        return files.read(name, bytes);
    }

    /** The project begun from a file of that name, the one changed last. */
    public Optional<Kept> findFrom(String origin) throws StoreException {
        return list().stream().filter(kept -> origin.equals(kept.origin())).findFirst();
    }

    /** The project as a file, in YAML. */
    public static String text(Project project) {
        return ProjectWriter.yaml(project);
    }

    /** Writes the project over the file it was begun from; comments and order of the file stay. */
    public Saving writeBack(String fileName, Project project) {
        return switch (files.open(fileName)) {
            case Opening.Opened opened -> {
                ProjectFile file = opened.file();
                yield files.replace(file, ProjectText.edit(file.text(), file.name(), file.project(), project));
            }
            case Opening.Refused refused ->
                new Saving.NotSaved(fileName + " is no project file any more: "
                        + refused.errors().getFirst().text() + ". It was left as it is.");
            case Opening.Unreadable unreadable -> new Saving.NotSaved(unreadable.why());
        };
    }

    /** No person has this name: names have no blanks around them. */
    private static final String THE_FILE = " file ";

    /** Remembers that the file a project was begun from and the project were the same at a revision. */
    public void noteSame(String project, long revision) throws StoreException {
        store.see(project, THE_FILE, revision);
    }

    /** The revision at which the file was last written or taken over; 0 where it was neither. */
    public long lastSame(String project) throws StoreException {
        return store.lastSeen(project, THE_FILE);
    }

    /** The file a project was begun from, as it is now. */
    public Opening openFile(String fileName) {
        return files.open(fileName);
    }
}
