package housewright.app;

import housewright.app.ProjectStore.Revision;
import housewright.app.ProjectStore.StepTaken;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What each person can take back of a project, and do again: two stacks of revisions, read from the journal once and then
 * only what has come since. Safe for several threads.
 */
final class History {
    private final ProjectStore store;
    private final String project;
    private final Map<String, Stacks> byPerson = new HashMap<>();
    private long read;

    private static final class Stacks {
        /** Steps that stand, the newest on top. */
        final Deque<Long> done = new ArrayDeque<>();
        /** Undos that were not done again, the newest on top; gone as soon as something else is done. */
        final Deque<Long> undos = new ArrayDeque<>();
    }

    History(ProjectStore store, String project) {
        this.store = store;
        this.project = project;
    }

    /** The newest step of this person that is not taken back. */
    Optional<Revision> findToUndo(String person) throws StoreException {
        return get(top(person, true));
    }

    /** The undo of the step that this person took back last, if they have done nothing else since. */
    Optional<Revision> findToRedo(String person) throws StoreException {
        return get(top(person, false));
    }

    private synchronized Optional<Long> top(String person, boolean done) throws StoreException {
        for (StepTaken each : store.listSteps(project, read)) {
            take(byPerson.computeIfAbsent(each.author(), author -> new Stacks()), each);
            read = each.number();
        }
        Stacks stacks = byPerson.get(person);
        return stacks == null ? Optional.empty() : Optional.ofNullable((done ? stacks.done : stacks.undos).peek());
    }

    private static void take(Stacks stacks, StepTaken step) {
        switch (step.step()) {
            case UNDO -> {
                stacks.done.remove(step.of());
                stacks.undos.push(step.number());
            }
            case REDO -> {
                stacks.done.push(step.of());
                stacks.undos.poll();
            }
            case EDIT, RESTORE, IMPORT -> {
                stacks.done.push(step.number());
                stacks.undos.clear();
            }
            case BEGIN -> stacks.undos.clear();
        }
    }

    private Optional<Revision> get(Optional<Long> number) throws StoreException {
        if (number.isEmpty()) {
            return Optional.empty();
        }
        List<Revision> found = store.listRevisions(project, number.get() + 1, 1);
        return found.stream().filter(each -> each.number() == number.get()).findFirst();
    }
}
