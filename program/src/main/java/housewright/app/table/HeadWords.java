package housewright.app.table;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What people write over the columns of their own lists, by our column; common practice of the trade. */
final class HeadWords {
    private static final Pattern BRACKETS = Pattern.compile("[\\[(][^)\\]]*[)\\]]");
    private static final Pattern MARKS = Pattern.compile("[^a-z0-9/]+");

    /** Units that people write behind a head without brackets, and that are no word of another meaning. */
    private static final Pattern UNIT_BEHIND =
            Pattern.compile("(?i).*[\\s/,]\\s*(mm|cm|m|ft|kg|g|lb|kw|db|ms|mhz)\\s*$");

    private static final Pattern UNIT_IN_BRACKETS = Pattern.compile("[\\[(]\\s*([^)\\]\\s]+)\\s*[)\\]]");

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
        own(Table.CABLES, "id", "cable", "cable no", "cable number", "cable id", "cable ref", "line", "line no");
        own(Table.CABLES, "type", "cable type", "kind", "type of cable");
        own(
                Table.CABLES,
                "from",
                "source",
                "origin",
                "start",
                "a end",
                "end a",
                "output",
                "from device",
                "source device",
                "from equipment",
                "from end",
                "side a",
                "from unit",
                "from thing");
        own(
                Table.CABLES,
                "to",
                "destination",
                "dest",
                "target",
                "b end",
                "end b",
                "input",
                "to device",
                "destination device",
                "to equipment",
                "to end",
                "side b",
                "to unit",
                "to thing");
        own(
                Table.CABLES,
                ColumnGuess.FROM_PORT,
                "from port",
                "source port",
                "from socket",
                "source socket",
                "from connector",
                "from connection",
                "from output",
                "port a",
                "from jack");
        own(
                Table.CABLES,
                ColumnGuess.TO_PORT,
                "to port",
                "destination port",
                "to socket",
                "destination socket",
                "to connector",
                "to connection",
                "to input",
                "port b",
                "to jack");
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

    /** By table, then by the plain head, the columns that it names and how well. */
    private static final Map<Table, Map<String, Map<String, Integer>>> INDEX = new EnumMap<>(Table.class);

    static {
        for (Table table : Table.values()) {
            Map<String, Map<String, Integer>> heads = new HashMap<>();
            for (Tables.Column column : ColumnGuess.columns(table)) {
                String key = column.key();
                put(heads, plain(key), key, 3);
                put(heads, plain(column.title()), key, 3);
                OWN.getOrDefault(table, Map.of())
                        .getOrDefault(key, List.of())
                        .forEach(word -> put(heads, word, key, 2));
                ALL.getOrDefault(key, List.of()).forEach(word -> put(heads, word, key, 1));
            }
            put(heads, plain(table.one()), Tables.ID, 1);
            INDEX.put(table, heads);
        }
    }

    private static void put(Map<String, Map<String, Integer>> heads, String head, String key, int fit) {
        heads.computeIfAbsent(head, each -> new HashMap<>()).merge(key, fit, Math::max);
    }

    /** The columns that a head names: 3 by their own name, 2 by what the trade calls them in this table, 1 in any. */
    static Map<String, Integer> fits(Table table, String head) {
        Map<String, Map<String, Integer>> heads = INDEX.getOrDefault(table, Map.of());
        return heads.getOrDefault(plain(head), Map.of());
    }

    /** How well a head names a column; 0 not. */
    static int fit(Table table, Tables.Column column, String head) {
        return fits(table, head).getOrDefault(column.key(), 0);
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

    /** Small letters, no unit, no marks. */
    static String plain(String head) {
        Matcher behind = UNIT_BEHIND.matcher(head);
        String without = behind.matches() ? head.substring(0, behind.start(1)) : head;
        String small = BRACKETS.matcher(without.toLowerCase(Locale.ROOT)).replaceAll(" ");
        String plain = MARKS.matcher(small).replaceAll(" ").strip();
        return plain.endsWith("/") ? plain.substring(0, plain.length() - 1).strip() : plain;
    }

    /** The unit that a head has in brackets or behind it: {@code Length (m)}; empty where it has none. */
    static String unit(String head) {
        Matcher brackets = UNIT_IN_BRACKETS.matcher(head);
        if (brackets.find()) {
            return brackets.group(1);
        }
        Matcher behind = UNIT_BEHIND.matcher(head);
        return behind.matches() ? behind.group(1) : "";
    }
}
