package housewright.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a key of the project file names: what may be chosen there, and what follows when the named is renamed. */
public enum Naming {
    ROOM("rooms"),
    PLACE("places"),
    PATHWAY("pathways"),
    CIRCUIT("circuits"),
    /** A type of equipment. */
    MODEL("models"),
    CABLE_TYPE("cable-types"),
    ADAPTER("adapters"),
    EQUIPMENT("equipment"),
    FEED("feeds"),
    LOOK("looks"),
    EVENT("events"),
    PERSON("people"),
    HIRE("hires"),
    /** A task of the project, or one that is worked out from what it has: its kind and the id of what it is about. */
    TASK("tasks"),
    /** Of the log: a task as in {@link #TASK}, or an order. */
    TASK_OR_ORDER("tasks", "orders"),
    /** A port, without a channel, that a cable is plugged into. */
    SOCKET("equipment"),
    /** A place where a signal leaves. */
    SOURCE("equipment"),
    /** A place where a signal arrives. */
    DESTINATION("equipment"),
    /** Any port, point or channel of a thing. */
    SPOT("equipment"),
    ROOM_OR_PLACE("rooms", "places"),
    /** What a task waits for. */
    NEEDED("equipment", "cables", "hires", "files"),
    /** What is ordered. */
    ORDERED("equipment", "cables", "hires", "models", "cable-types", "adapters"),
    /** A section and an id, such as {@code equipment.desk}. */
    SUBJECT;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> sections;

    Naming(String... sections) {
        this.sections = List.of(sections);
    }

    /** The sections whose ids stand there, by their last key; none for {@link #SUBJECT}, which says it itself. */
    public List<String> sections() {
        return sections;
    }

    /** A thing, a dot, and a port or point of it. */
    public boolean isWithinAThing() {
        return this == SOCKET || this == SOURCE || this == DESTINATION || this == SPOT;
    }

    /** For any id or key, and any item of a list. */
    static final String ANY = "*";

    /** Ways through the document; where the last step is {@link #ANY} in a mapping, its keys are names. */
    static final Map<String, Naming> PATHS = new LinkedHashMap<>();

    static {
        PATHS.put("venue.places.*.room", ROOM);
        PATHS.put("venue.pathways.*.from", PLACE);
        PATHS.put("venue.pathways.*.to", PLACE);
        PATHS.put("venue.circuits.*.places", PLACE);
        for (String state : List.of("equipment.*.", "equipment.*.was.")) {
            PATHS.put(state + "model", MODEL);
            PATHS.put(state + "at", PLACE);
            PATHS.put(state + "circuit", CIRCUIT);
            PATHS.put(state + "powered-by", SPOT);
        }
        PATHS.put("equipment.*.gang", EQUIPMENT);
        PATHS.put("equipment.*.part-of", EQUIPMENT);
        PATHS.put("equipment.*.runs-on", EQUIPMENT);
        for (String state : List.of("cables.*.", "cables.*.was.")) {
            PATHS.put(state + "type", CABLE_TYPE);
            PATHS.put(state + "from", SOCKET);
            PATHS.put(state + "to", SOCKET);
            PATHS.put(state + "ways", SOCKET);
            PATHS.put(state + "via", PATHWAY);
            PATHS.put(state + "adapters", ADAPTER);
        }
        PATHS.put("patch.*", EQUIPMENT);
        for (String link : List.of("network-sends.*.", "radio.*.", "feeds.*.")) {
            PATHS.put(link + "from", SOURCE);
            PATHS.put(link + "to", DESTINATION);
        }
        PATHS.put("feeds.*.through", SPOT);
        PATHS.put("pairs.*", SPOT);
        PATHS.put("lighting.looks.*.levels.*", EQUIPMENT);
        PATHS.put("lighting.looks.*.colours.*", EQUIPMENT);
        PATHS.put("controls.*.press", SPOT);
        PATHS.put("controls.*.does", SPOT);
        PATHS.put("controls.*.calls", LOOK);
        PATHS.put("controls.*.at", EVENT);
        PATHS.put("events.*.at", ROOM_OR_PLACE);
        PATHS.put("events.*.needs", FEED);
        PATHS.put("files.*.for", EQUIPMENT);
        PATHS.put("files.*.made-by", PERSON);
        PATHS.put("tasks.*.who", PERSON);
        PATHS.put("tasks.*.needs", NEEDED);
        PATHS.put("tasks.*.after", TASK);
        PATHS.put("tasks.*.covers", TASK);
        PATHS.put("tasks.*", TASK);
        PATHS.put("questions.*.to", PERSON);
        PATHS.put("questions.*.about", SUBJECT);
        PATHS.put("orders.*.for", ORDERED);
        PATHS.put("plan.times.*", TASK);
        PATHS.put("plan.times.*.people", PERSON);
        PATHS.put("plan.times.*.hires", HIRE);
        PATHS.put("plan.pins.*", TASK);
        PATHS.put("plan.pins.*.people", PERSON);
        PATHS.put("log.*", TASK_OR_ORDER);
        PATHS.put("log.*.people", PERSON);
        PATHS.put("practice.drums.*.for", CABLE_TYPE);
        PATHS.put("exempt.*.subject", SUBJECT);
    }

    /**
     * What a column of a section names; null where it names nothing.
     *
     * @param section its keys with dots between, such as {@code venue.places}
     * @param column as {@link EntityCells} has it
     */
    public static @Nullable Naming find(String section, String column) {
        return PATHS.get(section + ".*." + column);
    }
}
