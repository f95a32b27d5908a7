package housewright.signal;

import housewright.model.Life;
import java.util.Set;

/** Which state of the hall is asked about. */
public sealed interface Moment {
    /** Before any work: what keeps, moves and is to be struck, each as its {@code was} says. */
    static Moment today() {
        return new Today();
    }

    /** When the work is done. */
    static Moment target() {
        return new Target();
    }

    /** See {@link Moment#today}. */
    record Today() implements Moment {}

    /** See {@link Moment#target}. */
    record Target() implements Moment {}

    /**
     * Between the two: what is named is done, all else is as today.
     *
     * @param done section and id, such as {@code equipment.desk}, {@code cables.C014}, {@code patch.desk}
     */
    record Partly(Set<String> done) implements Moment {
        public Partly {
            done = Set.copyOf(done);
        }
    }

    /** The work on this entity is done. */
    default boolean isDone(String section, String id) {
        return switch (this) {
            case Today today -> false;
            case Target target -> true;
            case Partly partly -> partly.done().contains(section + "." + id);
        };
    }

    /** An entity of this life is there. */
    default boolean isThere(String section, String id, Life life) {
        return isDone(section, id) ? life.target() : life.today();
    }

    /** As a person would say it. */
    default String inWords() {
        return switch (this) {
            case Today today -> "today";
            case Target target -> "in the target";
            case Partly partly -> "at this point of the work";
        };
    }
}
