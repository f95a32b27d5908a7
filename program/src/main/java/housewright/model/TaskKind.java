package housewright.model;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Kinds of work that the change from TODAY to TARGET implies. The id of such a task is the kind's word, a hyphen and the
 * id of what it is about, so that it stays the same whatever else changes: {@code pull-C501}, {@code prove-lectern-to-hall}.
 */
public enum TaskKind implements Word {
    /** A file made beforehand. */
    PREPARE("files"),
    /** Addresses and networks on paper; one a job. */
    PLAN_NETWORK(null),
    /** One a job. */
    PRINT_LABELS(null),
    /** A delivery unpacked and checked. */
    RECEIVE("orders"),
    /** What a device holds is kept before it goes or is set otherwise. */
    COPY("equipment"),
    /** A cable that goes. */
    TAKE_OUT("cables"),
    /** A thing that goes. */
    STRIKE("equipment"),
    /** A thing that hangs or stands elsewhere afterwards. */
    MOVE("equipment"),
    MOUNT("equipment"),
    /** A safety attachment that was missing. */
    SECURE("equipment"),
    /** Fixed mains wiring, by a licensed electrician. */
    WIRE("equipment"),
    PULL("cables"),
    TERMINATE("cables"),
    /** Loose leads for one place, labelled and tried on the bench. */
    LEADS("places"),
    /** Labels at both ends; always within another task. */
    LABEL(null),
    TEST("cables"),
    /** A cable that stays, in another socket. */
    REPLUG("cables"),
    CONNECT("equipment"),
    /** A mains plug into another outlet. */
    POWER("equipment"),
    ADDRESS("equipment"),
    /** An end-of-line terminator. */
    TERMINATOR("equipment"),
    CONFIGURE("equipment"),
    /** A file made beforehand, loaded. */
    LOAD("files"),
    /** A radio link. */
    TUNE("radio"),
    /** A fixture aimed. */
    FOCUS("equipment"),
    /** A look set and saved. */
    LOOK("looks"),
    /** Loudspeakers of a room measured and set. */
    ALIGN("rooms"),
    /** A feed tried from end to end. */
    PROVE("feeds"),
    TRAIN("equipment"),
    REHEARSE("events"),
    /** The project's own. */
    OWN(null);

    private final @Nullable String section;
    private final String word;

    TaskKind(@Nullable String section) {
        this.section = section;
        this.word = Word.super.word(); // asked for at every turn
    }

    @Override
    public String word() {
        return word;
    }

    /** The section of what it is about; null where it is about the whole job. */
    public @Nullable String section() {
        return section;
    }

    public String id(String about) {
        return word() + "-" + about;
    }

    /** What a worked-out task of an id is about. */
    public record Named(TaskKind kind, String about) {}

    /** The kind of task that an id would be worked out for, and of what; empty where it is nobody's but the project's. */
    public static Optional<Named> find(String id) {
        for (TaskKind kind : values()) {
            if (kind.section == null) {
                if ((kind == PLAN_NETWORK || kind == PRINT_LABELS) && id.equals(kind.word())) {
                    return Optional.of(new Named(kind, ""));
                }
            } else if (id.startsWith(kind.word() + "-")) {
                return Optional.of(new Named(kind, id.substring(kind.word().length() + 1)));
            }
        }
        return Optional.empty();
    }
}
