package housewright.app;

import housewright.app.ProjectStore.Revision;
import housewright.app.ProjectStore.Step;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Reads from a journal what a person can take back, and do again. */
final class History {
    private static final int PAGE = 200;

    private final ProjectStore store;
    private final String project;

    History(ProjectStore store, String project) {
        this.store = store;
        this.project = project;
    }

    /** The newest step of this person that is not taken back. */
    Optional<Revision> findToUndo(String person) throws StoreException {
        Map<Long, Boolean> takenBack = new HashMap<>();
        return find(person, revision -> switch (revision.what().step()) {
            case UNDO -> {
                takenBack.putIfAbsent(revision.what().of(), true);
                yield false;
            }
            case REDO -> {
                takenBack.putIfAbsent(revision.what().of(), false);
                yield false;
            }
            case EDIT, RESTORE, IMPORT -> !takenBack.getOrDefault(revision.number(), false);
            case BEGIN -> false;
        });
    }

    /** The step that this person took back last, if they have done nothing else since. */
    Optional<Revision> findToRedo(String person) throws StoreException {
        Set<Long> again = new HashSet<>();
        Optional<Revision> last =
                find(person, revision -> switch (revision.what().step()) {
                    case UNDO -> !again.remove(revision.what().of());
                    case REDO -> {
                        again.add(revision.what().of());
                        yield false;
                    }
                    case EDIT, RESTORE, IMPORT, BEGIN -> true;
                });
        return last.filter(revision -> revision.what().step() == Step.UNDO);
    }

    private Optional<Revision> find(String person, Predicate<Revision> wanted) throws StoreException {
        long before = Long.MAX_VALUE;
        while (true) {
            List<Revision> page = store.listRevisions(project, before, PAGE);
            for (Revision revision : page) {
                if (revision.what().author().equals(person) && wanted.test(revision)) {
                    return Optional.of(revision);
                }
            }
            if (page.size() < PAGE) {
                return Optional.empty();
            }
            before = page.getLast().number();
        }
    }
}
