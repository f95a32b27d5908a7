package housewright.model;

import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;

/**
 * Kinds of work that the change from TODAY to TARGET implies. The id of such a task is the kind's word, a hyphen and the
 * id of what it is about, so that it stays the same whatever else changes: {@code pull-C501}, {@code prove-lectern-to-hall}.
 * Like tasks that are done in one go at one place have the id of the place: {@code mount-at-rack-stage}; what tells them
 * from others of the kind there comes behind it: {@code mount-at-rack-stage-later}.
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
    /** A hired thing fetched, and looked over. */
    FETCH("equipment"),
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
    /** A hired thing taken back. */
    RETURN("equipment"),
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

    /**
     * @param place a place, or a room
     * @param which what tells it from others of the kind there; may be empty
     */
    public String idAt(String place, String which) {
        return id(AT + place + (which.isEmpty() ? "" : "-" + which));
    }

    /** The task of the end of a cable that is made off overhead, where the other is made off from the floor. */
    public static String idUp(String cable) {
        return TERMINATE.id(cable) + UP;
    }

    private static final String AT = "at-";
    private static final String UP = "-up";

    /** What a worked-out task of an id is about. */
    public record Named(TaskKind kind, String about) {
        /**
         * What else it may be about: a place or room, or the cable whose end is up there.
         *
         * @param exists whether a section has an id
         */
        public Optional<Where> where(BiPredicate<String, String> exists) {
            if (kind == TERMINATE && about.endsWith(UP)) {
                String cable = about.substring(0, about.length() - UP.length());
                if (exists.test("cables", cable)) {
                    return Optional.of(new Where("cables", cable, UP));
                }
            }
            if (!about.startsWith(AT)) {
                return Optional.empty();
            }
            String rest = about.substring(AT.length());
            for (int end = rest.length(); end > 0; end = rest.lastIndexOf('-', end - 1)) {
                for (String section : List.of("places", "rooms")) {
                    if (exists.test(section, rest.substring(0, end))) {
                        return Optional.of(new Where(section, rest.substring(0, end), rest.substring(end)));
                    }
                }
            }
            return Optional.empty();
        }

        /** The same kind of task with the place, room or cable of another id. */
        public String renamed(Where where, String id) {
            return kind.id((where.section().equals("cables") ? "" : AT) + id + where.rest());
        }
    }

    /**
     * What an id that is not of one thing names.
     *
     * @param rest what follows it in the task's id
     */
    public record Where(String section, String id, String rest) {}

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
