package housewright.app.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What people write over the columns of their own lists, by our column; common practice of the trade. */
final class HeadWords {
    private static final Map<String, List<String>> ALL = new LinkedHashMap<>();

    static {
        ALL.put("id", List.of("id", "tag", "item", "ref", "reference", "no", "number", "name", "code"));
        ALL.put("note", List.of("note", "notes", "comment", "comments", "remark", "remarks", "description"));
        ALL.put("life", List.of("life", "status", "keep or new", "action"));
        ALL.put("label", List.of("label", "marking", "marked", "ident"));
    }

    private static final Map<Table, Map<String, List<String>>> OWN = new LinkedHashMap<>();

    static {
        own(Table.EQUIPMENT, "id", "device", "unit name", "device name", "equipment", "fixture", "channel name");
        own(Table.EQUIPMENT, "model", "type", "model", "product", "kind", "device type", "fixture type", "what");
        own(Table.EQUIPMENT, "at", "place", "location", "position", "where", "rack", "room");
        own(Table.EQUIPMENT, "circuit", "breaker", "mcb", "supply", "power circuit");
        own(Table.EQUIPMENT, "unit", "u", "ru", "rack unit", "rack u", "rack position");
        own(Table.EQUIPMENT, "ip", "ip address", "ip", "address ip", "network address");
        own(Table.EQUIPMENT, "light.address", "address", "dmx", "dmx address", "start address", "dmx start");
        own(Table.EQUIPMENT, "light.universe", "universe", "dmx universe", "univ");
        own(Table.EQUIPMENT, "light.mode", "mode", "dmx mode", "personality");
        own(Table.EQUIPMENT, "light.colour", "colour", "color", "gel", "filter");
        own(Table.EQUIPMENT, "serial", "serial number", "serial no", "s/n", "sn");
        own(Table.CABLES, "id", "cable", "cable no", "cable number", "cable id", "line", "line no");
        own(Table.CABLES, "type", "cable type", "kind", "type of cable");
        own(Table.CABLES, "from", "source", "origin", "start", "from port", "a end", "end a", "output");
        own(Table.CABLES, "to", "destination", "dest", "target", "to port", "b end", "end b", "input");
        own(Table.CABLES, "via", "route", "path", "pathway", "pathways", "way", "containment");
        own(Table.CABLES, "length", "length", "len", "run", "run length", "cable length");
        own(Table.CABLES, "tested", "test", "tested by", "test result");
        own(Table.PATCH, "device", "device", "desk", "console", "mixer", "matrix");
        own(Table.PATCH, "from", "source", "input", "in", "socket");
        own(Table.PATCH, "to", "destination", "channel", "ch", "output", "out", "bus");
        own(Table.PATCH, "gain", "level", "gain", "trim");
        own(Table.PLACES, "room", "room", "space", "area");
        own(Table.PLACES, "at", "position", "coordinates", "xyz", "where");
        own(Table.PATHWAYS, "from", "start", "a end");
        own(Table.PATHWAYS, "to", "end", "b end");
        own(Table.PATHWAYS, "bore", "inside diameter", "diameter", "bore", "size");
        own(Table.CIRCUITS, "rating", "rating", "amps", "breaker", "current");
        own(Table.CIRCUITS, "places", "serves", "feeds", "location", "outlets");
        own(Table.FEEDS, "from", "source", "sources");
        own(Table.FEEDS, "to", "destination", "destinations");
        own(Table.FEEDS, "within", "delay", "max delay", "latency");
        own(Table.RADIO, "from", "transmitter", "tx");
        own(Table.RADIO, "to", "receiver", "rx");
        own(Table.RADIO, "frequency", "freq", "frequency");
        own(Table.PEOPLE, "role", "role", "job", "function", "does");
        own(Table.PEOPLE, "skills", "skills", "can do", "trained in");
        own(Table.HIRES, "kind", "item", "what");
        own(Table.HIRES, "per-day", "rate", "day rate", "price", "cost per day", "per day");
        own(Table.EVENTS, "from", "start", "begins", "from");
        own(Table.EVENTS, "to", "end", "ends", "until");
        own(Table.TASKS, "takes", "duration", "time", "hours", "how long");
        own(Table.TASKS, "who", "who", "person", "people", "by");
        own(Table.TASKS, "name", "task", "name", "what", "job");
        own(Table.QUESTIONS, "asks", "question", "query");
        own(Table.QUESTIONS, "to", "to", "who", "person", "asked");
        own(Table.QUESTIONS, "due", "due", "by when", "needed by");
        own(Table.ORDERS, "supplier", "supplier", "vendor", "dealer", "shop", "from");
        own(Table.ORDERS, "placed", "ordered", "order date", "placed");
        own(Table.ORDERS, "promised", "eta", "due", "delivery", "delivery date");
        own(Table.ORDERS, "lead", "lead time");
        own(Table.ORDERS, "for", "items", "item", "goods");
    }

    private HeadWords() {}

    private static void own(Table table, String column, String... words) {
        OWN.computeIfAbsent(table, key -> new LinkedHashMap<>()).put(column, List.of(words));
    }

    /** How well a head names a column: 3 its own name, 2 what the trade calls it in this table, 1 in any; 0 not. */
    static int fit(Table table, Tables.Column column, String head) {
        String plain = plain(head);
        if (plain.isEmpty()) {
            return 0;
        }
        if (plain.equals(plain(column.key())) || plain.equals(plain(column.title()))) {
            return 3;
        }
        if (OWN.getOrDefault(table, Map.of())
                .getOrDefault(column.key(), List.of())
                .contains(plain)) {
            return 2;
        }
        return ALL.getOrDefault(column.key(), List.of()).contains(plain)
                        || (plain.equals(plain(table.one())) && column.key().equals(Tables.ID))
                ? 1
                : 0;
    }

    /**
     * Whether a head has a word of the trade for the column among others: {@code Make & model}, {@code Where is it}. What
     * looks like an id or a figure is no head.
     */
    static boolean hints(Table table, Tables.Column column, String head) {
        if (!head.matches("[^\\d.:_-]+")) {
            return false;
        }
        List<String> said = List.of(plain(head).split(" "));
        return said.contains(plain(column.title()))
                || OWN.getOrDefault(table, Map.of()).getOrDefault(column.key(), List.of()).stream()
                        .anyMatch(said::contains);
    }

    /** Small letters, no unit in brackets, no marks. */
    private static String plain(String head) {
        return head.toLowerCase(Locale.ROOT)
                .replaceAll("[\\[(][^)\\]]*[)\\]]", " ")
                .replaceAll("[^a-z0-9/]+", " ")
                .strip();
    }

    /** The unit that a head has in brackets, or after a slash: {@code Length (m)}; empty where it has none. */
    static String unit(String head) {
        java.util.regex.Matcher brackets = java.util.regex.Pattern.compile("[\\[(]\\s*([^)\\]\\s]+)\\s*[)\\]]")
                .matcher(head);
        return brackets.find() ? brackets.group(1) : "";
    }
}
