package housewright.app.table;

import housewright.model.change.Section;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The parts of a project that are edited as tables. */
public enum Table {
    ROOMS(
            Section.ROOMS,
            "Rooms",
            "room",
            List.of("outline", "floor", "ceiling", "note"),
            "The rooms of the building: an outline on the floor plan, and the heights of floor and ceiling."),
    PLACES(
            Section.PLACES,
            "Places",
            "place",
            List.of("room", "at", "rack.units", "hang.limit", "hang.stated-by", "note"),
            "Named points where things stand, hang or are racked."),
    PATHWAYS(
            Section.PATHWAYS,
            "Pathways",
            "pathway",
            List.of("from", "to", "kind", "length", "bore", "height", "beside", "note"),
            "Where cable can run between two places: cable lengths are worked out from them."),
    CIRCUITS(
            Section.CIRCUITS,
            "Circuits",
            "circuit",
            List.of("rating", "voltage", "places", "dimmed", "note"),
            "The mains circuits, and the places each one reaches."),
    EQUIPMENT(
            Section.EQUIPMENT,
            "Equipment",
            "piece of equipment",
            List.of("model", "at", "life", "circuit", "label", "note"),
            "Every thing that stays, goes or comes. A desk is one row: its ports come with its model."),
    CABLES(
            Section.CABLES,
            "Cables",
            "cable",
            List.of("type", "from", "to", "via", "length", "life", "label", "note"),
            "Every cable, from which port to which. A free port of a thing offers what can be joined to it."),
    PATCH(
            null,
            "Patch",
            "patch entry",
            List.of("device", "from", "to", "tap", "gain", "delay", "note"),
            "What is set inside desks and matrices, not wired: which input goes to which channel, bus and output."),
    NETWORK_SENDS(
            Section.NETWORK_SENDS,
            "Network sends",
            "network send",
            List.of("from", "to", "as", "rate", "vlan", "life", "note"),
            "Channels that a network carries, from one port to another."),
    RADIO(
            Section.RADIO,
            "Radio links",
            "radio link",
            List.of("from", "to", "frequency", "bandwidth", "life", "note"),
            "Radio microphones and the like: from which transmitter to which receiver, and on what frequency."),
    FEEDS(
            Section.FEEDS,
            "Feeds",
            "feed",
            List.of("from", "to", "carries", "within", "through", "never", "note"),
            "What must arrive where, and what must never. Each is proven on paper, or shown where it stops."),
    PAIRS(
            null,
            "Pairs",
            "pair",
            List.of("channels"),
            "Channels that belong together, such as left and right of the programme."),
    PEOPLE(
            Section.PEOPLE,
            "People",
            "person",
            List.of("role", "skills", "free", "remote", "visits", "note"),
            "Who works on the job, what each can do, and when each is free."),
    HIRES(
            Section.HIRES,
            "Hires",
            "hire",
            List.of("kind", "per-day", "offered", "skill", "note"),
            "What is hired by the day, such as a lift."),
    EVENTS(
            Section.EVENTS,
            "Events",
            "event",
            List.of("from", "to", "at", "needs", "deadline", "note"),
            "Services, rehearsals and whatever else the room is needed for, and which feeds each needs."),
    FILES(
            Section.FILES,
            "Files",
            "file",
            List.of("for", "made-by", "where", "takes", "note"),
            "What is made beforehand and loaded on the day, such as the desk's file."),
    TASKS(
            Section.TASKS,
            "Tasks",
            "task",
            List.of("name", "takes", "who", "needs", "where", "after", "covers", "note"),
            "Work that no drawing implies; the rest is worked out from what changes."),
    QUESTIONS(
            Section.QUESTIONS,
            "Questions",
            "question",
            List.of("to", "about", "asks", "due", "answer"),
            "What somebody on site is asked, and what they answered."),
    ORDERS(
            Section.ORDERS,
            "Orders",
            "order",
            List.of("for", "supplier", "placed", "lead", "promised", "arrived", "note"),
            "What is ordered where, and when it comes.");

    private final @Nullable Section section;
    private final String title;
    private final String one;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> first;

    private final String holds;

    Table(@Nullable Section section, String title, String one, List<String> first, String holds) {
        this.section = section;
        this.title = title;
        this.one = one;
        this.first = first;
        this.holds = holds;
    }

    /** Null for patch and pairs, whose rows are no entities. */
    public @Nullable Section section() {
        return section;
    }

    /** Its keys in the file with a dot between: {@code venue.places}, {@code patch}. */
    public String path() {
        return section == null ? key() : section.path();
    }

    /** Its own key in the file, as in an address: {@code places}, {@code network-sends}. */
    public String key() {
        String path = section == null ? name().toLowerCase(java.util.Locale.ROOT) : section.path();
        return path.substring(path.lastIndexOf('.') + 1);
    }

    public String title() {
        return title;
    }

    /** One row, in words. */
    public String one() {
        return one;
    }

    /** Columns worth showing before others; the id stands in front of them. */
    public List<String> first() {
        return first;
    }

    /** What belongs in it, as a sentence. */
    public String holds() {
        return holds;
    }

    /** Whether people name its rows, such as rooms; others get a number, or the word for what they are. */
    public boolean isNamed() {
        return switch (this) {
            case EQUIPMENT, CABLES, PATCH, PATHWAYS, NETWORK_SENDS, RADIO, QUESTIONS, ORDERS -> false;
            case ROOMS, PLACES, CIRCUITS, FEEDS, PAIRS, PEOPLE, HIRES, EVENTS, FILES, TASKS -> true;
        };
    }

    Class<? extends Record> rowType() {
        return section != null ? section.type() : this == PATCH ? PatchRow.class : PairRow.class;
    }

    public static Optional<Table> find(String key) {
        return Stream.of(values()).filter(table -> table.key().equals(key)).findFirst();
    }
}
