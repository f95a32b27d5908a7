package housewright.model.change;

import housewright.model.About;
import housewright.model.AcceptedPlan;
import housewright.model.Budget;
import housewright.model.Exemption;
import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Practice;
import housewright.model.Project;
import housewright.model.Ref;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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

    /** These are all the entries of the device, in this order; none takes its patch away. */
    record Repatch(String device, List<PatchEntry> entries) implements Change {
        public Repatch {
            entries = List.copyOf(entries);
        }
    }

    /** The channels belong together under this name, left first; none takes the name away. */
    record Pair(String id, List<Ref> channels) implements Change {
        public Pair {
            channels = List.copyOf(channels);
        }
    }

    /** What the job is, and what holds throughout, is this. */
    record Describe(About about) implements Change {}

    /** What the job may cost, and how long its work takes where that is said; null where it is not. */
    record Reckon(@Nullable Budget budget, @Nullable Practice practice) implements Change {}

    /** These are all the rules switched off, in this order. */
    record Exempt(List<Exemption> exemptions) implements Change {
        public Exempt {
            exemptions = List.copyOf(exemptions);
        }
    }

    /** This plan holds from now on, but for its pins, which are entities of their own; {@link AcceptedPlan#NONE} for none. */
    record Accept(AcceptedPlan plan) implements Change {
        public Accept {
            plan = plan.withPins(Map.of());
        }
    }

    /** The entities of a section stand in this order; those not named stay behind the others, as they were. */
    record Arrange(Section section, List<String> ids) implements Change {
        public Arrange {
            ids = List.copyOf(ids);
        }
    }

    /** Gives the project with the changes made, in order. */
    static Project apply(Project project, List<Change> changes) {
        return Edit.apply(project, changes);
    }

    /** What makes the second project of the first, in the order of the sections; none where they are the same. */
    static List<Change> between(Project before, Project after) {
        return Difference.between(before, after);
    }

    /**
     * What the change touches, finely enough that two changes which share no subject can both be kept, whichever comes
     * first: {@code equipment.desk-1}, {@code patch.desk-1.ch-3} (the place patched into), {@code project}.
     */
    default Set<String> subjects() {
        return Touched.by(this);
    }
}
