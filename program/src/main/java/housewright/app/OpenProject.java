package housewright.app;

import housewright.app.ProjectStore.Appended;
import housewright.app.ProjectStore.NewRevision;
import housewright.app.ProjectStore.Revision;
import housewright.app.ProjectStore.Saved;
import housewright.app.ProjectStore.Step;
import housewright.file.ChangeText;
import housewright.file.FileError;
import housewright.file.ProjectReader;
import housewright.file.ProjectWriter;
import housewright.file.ReadResult;
import housewright.model.Library;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.study.Study;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * A project that people work on. Each edit is held against the whole project, kept in the store and only then seen.
 * Edits of different things made at once are both kept; of two edits of the same thing the second is given back with
 * what the first has left. Safe for several threads.
 */
public final class OpenProject {
    private static final int MOST_TRIES = 5;

    /** Hears of each revision that is kept, on the thread that kept it; must be quick and must not fail. */
    public interface Watcher {
        void kept(Now before, Now now, NewRevision step);
    }

    private final String id;
    private final ProjectStore store;
    private final Library library;
    private final InstantSource clock;
    private final History history;
    private final List<Watcher> watchers = new CopyOnWriteArrayList<>();
    private volatile Now now;

    OpenProject(String id, ProjectStore store, Library library, InstantSource clock) throws StoreException {
        this.id = id;
        this.store = store;
        this.library = library;
        this.clock = clock;
        this.history = new History(store, id);
        this.now = newest();
    }

    public String id() {
        return id;
    }

    /** As it is now. */
    public Now now() {
        return now;
    }

    /** As it was at a revision; empty where there is none of that number. */
    public Optional<Now> findAt(long revision) throws StoreException {
        Optional<Saved> saved = store.findAt(id, revision);
        return saved.isEmpty() ? Optional.empty() : Optional.of(replay(saved.get()));
    }

    /** Tells the watcher of each revision from now on, until the answer is run. */
    public Runnable watch(Watcher watcher) {
        watchers.add(watcher);
        return () -> watchers.remove(watcher);
    }

    /**
     * Makes an edit.
     *
     * @param base the revision that its author had before them
     * @param says what it does, in a few words, for the history
     */
    public Outcome edit(Author author, long base, String says, List<Change> changes) {
        return take(author, Step.EDIT, 0, says, base, changes);
    }

    /**
     * Takes over another state of the whole project, such as a file's.
     *
     * @param base the revision that its author looked at before; what others have edited since is not taken from them
     */
    public Outcome takeOver(Author author, long base, String says, Project other) {
        Now known = now;
        return take(
                author, Step.IMPORT, 0, says, Math.min(base, known.revision()), Change.between(known.project(), other));
    }

    /**
     * Makes the project what it was at an earlier revision; that, too, can be taken back.
     *
     * @param base the revision that its author looked at before; what others have edited since is not taken from them
     */
    public Outcome restore(Author author, long base, long revision) {
        try {
            Optional<Now> then = findAt(revision);
            if (then.isEmpty()) {
                return new Outcome.NotDone("There is no revision " + revision + " of this project.");
            }
            Now known = now;
            return take(
                    author,
                    Step.RESTORE,
                    revision,
                    "Restored revision " + revision,
                    Math.min(base, known.revision()),
                    Change.between(known.project(), then.get().project()));
        } catch (StoreException e) {
            return new Outcome.NotDone(e.whyFor(author.role()));
        }
    }

    /** What {@link #undo} would take back. */
    public Optional<Revision> findToUndo(Author author) throws StoreException {
        return history.findToUndo(author.person());
    }

    /** What {@link #redo} would do again. */
    public Optional<Revision> findToRedo(Author author) throws StoreException {
        return history.findToRedo(author.person());
    }

    /** Takes back the author's own last step, if nobody has edited the same since. */
    public Outcome undo(Author author) {
        try {
            Optional<Revision> last = findToUndo(author);
            return last.isEmpty()
                    ? new Outcome.NotDone("There is nothing of yours to undo.")
                    : turn(
                            author,
                            Step.UNDO,
                            last.get(),
                            last.get().what().changes(),
                            last.get().what().back());
        } catch (StoreException e) {
            return new Outcome.NotDone(e.whyFor(author.role()));
        }
    }

    /** Does again what the author took back last, if they and others have left it so. */
    public Outcome redo(Author author) {
        try {
            Optional<Revision> last = findToRedo(author);
            if (last.isEmpty()) {
                return new Outcome.NotDone("There is nothing of yours to do again.");
            }
            Revision undone = get(last.get().what().of());
            return turn(
                    author,
                    Step.REDO,
                    undone,
                    undone.what().back(),
                    undone.what().changes());
        } catch (StoreException e) {
            return new Outcome.NotDone(e.whyFor(author.role()));
        }
    }

    private Revision get(long number) throws StoreException {
        List<Revision> found = store.listRevisions(id, number + 1, 1);
        if (found.isEmpty() || found.getFirst().number() != number) {
            throw new StoreException("The history lacks revision " + number + ".");
        }
        return found.getFirst();
    }

    /** What must still be so is so exactly where making it so again changes nothing. */
    private Outcome turn(Author author, Step step, Revision revision, String standing, String turned)
            throws StoreException {
        List<Change> still = ChangeText.read(standing);
        List<Change> changes = ChangeText.read(turned);
        Now known = now;
        Project asItWas = Change.apply(known.project(), still);
        if (!Change.between(known.project(), asItWas).isEmpty()) {
            List<Clash> clashes =
                    Clashes.of(known.project(), asItWas, Change.apply(known.project(), changes), subjects(changes));
            return new Outcome.Conflict(known, clashes);
        }
        String says = (step == Step.UNDO ? "Undone: " : "Done again: ")
                + revision.what().says();
        return take(author, step, revision.number(), says, known.revision(), changes);
    }

    private synchronized Outcome take(Author author, Step step, long of, String says, long base, List<Change> changes) {
        try {
            for (int tries = 0; tries < MOST_TRIES; tries++) {
                Now before = now;
                Project after = Change.apply(before.project(), changes);
                List<Change> made = Change.between(before.project(), after);
                if (made.isEmpty()) {
                    return new Outcome.Accepted(before, before, 0);
                }
                List<Clash> clashes = clashes(before, base, after, changes);
                if (!clashes.isEmpty()) {
                    return new Outcome.Conflict(before, clashes);
                }
                List<FileError> errors = ProjectReader.check("edit", after, library);
                if (!errors.isEmpty()) {
                    return new Outcome.Refused(errors);
                }
                NewRevision revision = new NewRevision(
                        author.person(),
                        clock.instant(),
                        step,
                        of,
                        says,
                        ChangeText.write(made),
                        ChangeText.write(Change.between(after, before.project())));
                switch (store.append(id, before.revision(), revision, () -> ProjectWriter.json(after))) {
                    case Appended.Done done -> {
                        Now kept =
                                new Now(done.revision(), after, before.study().after(after));
                        now = kept;
                        watchers.forEach(watcher -> watcher.kept(before, kept, revision));
                        return new Outcome.Accepted(before, kept, done.revision());
                    }
                    case Appended.Moved moved -> now = newest();
                }
            }
            return new Outcome.NotDone(
                    "Somebody else is editing this project all the time. Nothing was changed; try again.");
        } catch (StoreException e) {
            return new Outcome.NotDone(e.whyFor(author.role()));
        }
    }

    private List<Clash> clashes(Now before, long base, Project after, List<Change> changes) throws StoreException {
        if (base >= before.revision()) {
            return List.of();
        }
        Set<String> mine = subjects(changes);
        Set<String> both = new LinkedHashSet<>();
        for (Revision other : store.listSince(id, base)) {
            for (String theirs : subjects(ChangeText.read(other.what().changes()))) {
                mine.stream().filter(own -> isSame(own, theirs)).forEach(both::add);
            }
        }
        if (both.isEmpty()) {
            return List.of();
        }
        Project was = findAt(base).map(Now::project).orElse(before.project());
        return Clashes.of(was, before.project(), after, both);
    }

    /** A whole patch holds each entry of it. */
    private static boolean isSame(String one, String other) {
        return one.equals(other) || one.startsWith(other + ".") || other.startsWith(one + ".");
    }

    private static Set<String> subjects(List<Change> changes) {
        Set<String> subjects = new LinkedHashSet<>();
        changes.forEach(change -> subjects.addAll(change.subjects()));
        return subjects;
    }

    /** Newest first. */
    public List<Revision> history(long before, int most) throws StoreException {
        return store.listRevisions(id, before, most);
    }

    /** Sees what other processes have kept since; tells the watchers if they have. */
    public void refresh() throws StoreException {
        if (!store.listSince(id, now.revision()).isEmpty()) { // asked without holding up who edits
            seeOthers();
        }
    }

    private synchronized void seeOthers() throws StoreException {
        List<Revision> since = store.listSince(id, now.revision());
        if (!since.isEmpty()) {
            Now before = now;
            Now kept = newest();
            now = kept;
            watchers.forEach(
                    watcher -> watcher.kept(before, kept, since.getLast().what()));
        }
    }

    private Now newest() throws StoreException {
        Saved saved =
                store.findNewest(id).orElseThrow(() -> new StoreException("There is no project " + id + " any more."));
        return replay(saved);
    }

    private Now replay(Saved saved) throws StoreException {
        Project project = read(saved.document());
        long revision = saved.revision();
        for (Revision each : saved.since()) {
            project = Change.apply(project, ChangeText.read(each.what().changes()));
            revision = each.number();
        }
        return new Now(revision, project, Study.of(project, library));
    }

    private Project read(String document) throws StoreException {
        return switch (ProjectReader.read("project.json", document.getBytes(StandardCharsets.UTF_8), library)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused ->
                throw new StoreException("The project cannot be opened with this version of Housewright: "
                        + refused.errors().getFirst().text());
        };
    }
}
