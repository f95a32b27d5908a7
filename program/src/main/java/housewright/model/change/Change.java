package housewright.model.change;

import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Project;
import java.util.List;

/** One edit of a project. A list of changes is applied in order, as one batch. */
public sealed interface Change {
    /** The entity is there with this content, at the end of its section where it is new. */
    record Put(Section section, String id, Record entity) implements Change {
        public Put {
            if (!section.type().isInstance(entity)) {
                throw new IllegalArgumentException(
                        section.path() + " holds " + section.type().getSimpleName() + ", not " + entity);
            }
        }
    }

    /** The entity is gone. */
    record Drop(Section section, String id) implements Change {}

    /** The entry is set in the device, after the others; nothing happens where its join is set already. */
    record Patch(String device, PatchEntry entry) implements Change {}

    /** The join from one place to one other is not set in the device; what a longer entry also joins stays. */
    record Unpatch(String device, Spot from, Spot to) implements Change {}

    /** Gives the project with the changes made, in order. */
    static Project apply(Project project, List<Change> changes) {
        Project changed = project;
        for (Change change : changes) {
            changed = Edit.apply(changed, change);
        }
        return changed;
    }
}
