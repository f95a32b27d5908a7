package housewright.app.table;

import housewright.file.EntityCells;
import housewright.file.EntityCells.Reading;
import housewright.model.Equipment;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Task;
import housewright.model.TaskKind;
import housewright.model.WordingException;
import housewright.model.change.Change;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Copies of rows, each behind what it was copied from, numbered up: ids, numbers in labels, ports to the next free ones, addresses to the next that nobody
 * has. What belongs to one thing alone (its serial number, how it is today) is not copied.
 */
final class Copies {
    private static final int MOST = 500;
    private static final int UNIVERSE = 512;

    private final Study study;
    private final Table table;
    private final Set<String> notes = new LinkedHashSet<>();
    private final Set<String> plugged = new HashSet<>();
    private Project project;

    Copies(Study study, Table table) {
        this.study = study;
        this.table = table;
        this.project = study.project();
    }

    Edit make(Collection<String> rows, int times) {
        if (times < 1 || (long) times * rows.size() > MOST) {
            return new Edit.Wrong(List.of(
                    new CellError("", "", times + " copies of " + rows.size(), "1 to " + MOST + " copies", null)));
        }
        List<String> made = new ArrayList<>();
        List<String> order = new ArrayList<>(Rows.of(project, table).keySet());
        for (String id : rows) {
            Record last = Rows.of(project, table).get(id);
            String lastId = id;
            for (int n = 0; last != null && n < times; n++) {
                Set<String> taken = Rows.of(project, table).keySet();
                String copyId = table == Table.PATCH ? "copy" : Numbering.next(lastId, taken::contains);
                Record copy = copy(lastId, last, copyId);
                if (copy == null) {
                    break;
                }
                if (copy instanceof PatchRow patch && patch.device() != null && patch.entry() != null) {
                    copyId = PatchRow.id(patch.device(), patch.entry());
                }
                project = Change.apply(project, Rows.put(project, table, null, copyId, copy));
                made.add(copyId);
                order.add(order.indexOf(lastId) + 1, copyId);
                last = copy;
                lastId = copyId;
            }
        }
        if (table.section() != null) {
            project = Change.apply(project, List.of(new Change.Arrange(table.section(), order)));
        }
        String of = rows.size() == 1 ? rows.iterator().next() : rows.size() + " rows of " + table.title();
        return new Edit.Made(
                Change.between(study.project(), project),
                "Copied " + of + (times == 1 ? "" : " " + times + " times"),
                made,
                List.copyOf(notes));
    }

    private @Nullable Record copy(String id, Record row, String copyId) {
        Map<String, String> cells = new LinkedHashMap<>(EntityCells.of(row));
        cells.keySet().removeIf(key -> key.startsWith("was."));
        cells.remove("key");
        leaveEmpty(cells, "serial", "tested");
        up(cells, id, copyId);
        switch (table) {
            case EQUIPMENT -> equipment(cells, (Equipment) row);
            case CABLES -> {
                end(cells, "from");
                end(cells, "to");
                ways(cells);
            }
            case RADIO -> {
                leaveEmpty(cells, "frequency");
                whole(cells, "from");
                whole(cells, "to");
            }
            case NETWORK_SENDS -> {
                whole(cells, "from");
                whole(cells, "to");
            }
            case TASKS -> {
                if (row instanceof Task task
                        && task.name() == null
                        && TaskKind.find(id).isPresent()) {
                    notes.add(id + " says what differs of one task that is worked out; there is no second of it.");
                    return null;
                }
            }
            case PATCH -> {
                if (!patch(cells)) {
                    notes.add("There is no next place for " + id + ".");
                    return null;
                }
            }
            default -> {}
        }
        return switch (Rows.read(table, copyId, null, cells)) {
            case Reading.Read read -> read.entity();
            case Reading.Refused refused -> {
                notes.add(id + " was not copied: "
                        + refused.errors().getFirst().text().strip());
                yield null;
            }
        };
    }

    private void leaveEmpty(Map<String, String> cells, String... keys) {
        for (String key : keys) {
            if (cells.remove(key) != null) {
                notes.add("Left empty: " + key + ", which is each one's own.");
            }
        }
    }

    /** A label that is the id becomes the new id; one with a number counts up with it. */
    private static void up(Map<String, String> cells, String id, String copyId) {
        String label = cells.get("label");
        if (label != null) {
            String next = Numbering.up(label, 1);
            cells.put("label", label.equals(id) ? copyId : next == null ? label : next);
        }
        String name = cells.get("name");
        String next = name == null ? null : Numbering.up(name, 1);
        if (next != null) {
            cells.put("name", next);
        }
    }

    private void equipment(Map<String, String> cells, Equipment row) {
        String ip = cells.get("ip");
        if (ip != null) {
            Set<String> taken = new HashSet<>();
            project.equipment().values().forEach(each -> taken.add(Objects.requireNonNullElse(each.ip(), "")));
            String next = ip;
            do {
                next = next == null ? null : Numbering.up(next, 1);
            } while (next != null && taken.contains(next));
            boolean within = next != null && Integer.parseInt(next.replaceFirst("^.*\\D", "")) < 255;
            put(cells, "ip", within ? next : null, "IP address");
        }
        if (cells.containsKey("light.address")) {
            address(cells, row);
        }
        if (row.unit() != null) {
            Model model = study.types().findModel(row.model()).orElse(null);
            Integer units = model == null || model.rack() == null
                    ? null
                    : (int) Math.round(model.rack().units());
            put(cells, "unit", units == null ? null : Integer.toString(row.unit() + units), "rack unit");
        }
        if (cells.containsKey("powered-by")) {
            end(cells, "powered-by");
        }
    }

    private void put(Map<String, String> cells, String key, @Nullable String text, String what) {
        if (text == null) {
            cells.remove(key);
            notes.add("Left empty: the " + what + ", for there is no next one.");
        } else {
            cells.put(key, text);
            notes.add("Counted up: the " + what + ".");
        }
    }

    /** The next address of the universe whose channels no other fixture has; the next universe where it is full. */
    private void address(Map<String, String> cells, Equipment row) {
        int channels = channels(row);
        if (channels == 0 || row.light() == null || row.light().address() == null) {
            cells.remove("light.address");
            notes.add("Left empty: the address, for how many channels the fixture takes is not known.");
            return;
        }
        int universe = row.light().universe() == null ? 0 : row.light().universe();
        int address = row.light().address() + channels;
        while (true) {
            if (address + channels - 1 > UNIVERSE) {
                universe++;
                address = 1;
            }
            int end = lastTaken(universe, address, channels);
            if (end == 0) {
                break;
            }
            address = end + 1;
        }
        cells.put("light.address", Integer.toString(address));
        if (universe > 0) {
            cells.put("light.universe", Integer.toString(universe));
        }
        notes.add("Counted up: addresses, by " + channels + " channels each.");
    }

    /** The last channel of a fixture that has one of these; 0 where none does. */
    private int lastTaken(int universe, int address, int channels) {
        int last = 0;
        for (Equipment each : project.equipment().values()) {
            if (each.light() == null
                    || each.light().address() == null
                    || (each.light().universe() == null ? 0 : each.light().universe()) != universe) {
                continue;
            }
            int first = each.light().address();
            int end = first + Math.max(1, channels(each)) - 1;
            if (first < address + channels && end >= address) {
                last = Math.max(last, end);
            }
        }
        return last;
    }

    private int channels(Equipment fixture) {
        Model model = study.types().findModel(fixture.model()).orElse(null);
        if (model == null || model.light() == null || fixture.light() == null) {
            return 0;
        }
        Map<String, Integer> modes = model.light().modes();
        String mode = fixture.light().mode();
        return mode != null
                ? modes.getOrDefault(mode, 0)
                : modes.size() == 1 ? modes.values().iterator().next() : 0;
    }

    /** The next free port, else the same port of the next thing; where neither is, it is left open. */
    private void end(Map<String, String> cells, String key) {
        String text = cells.get(key);
        if (text == null || text.equals("unknown")) {
            return;
        }
        String next = nextFree(text);
        if (next == null) {
            cells.remove(key);
            notes.add("Left open: " + key + ", for there is no free port after " + text + ".");
        } else {
            cells.put(key, next);
            plugged.add(next);
            notes.add("Counted up: " + key + ", to the next free port.");
        }
    }

    private @Nullable String nextFree(String text) {
        for (String at = next(text); at != null; at = next(at)) {
            Address address = new Ref(at).addresses().getFirst();
            if (!plugged.contains(at) && study.signals().listCables(address).isEmpty()) {
                return at;
            }
        }
        return null;
    }

    /** The next port by number that is there, else the same port of the next thing. */
    private @Nullable String next(String text) {
        Ref ref;
        try {
            ref = new Ref(text);
        } catch (WordingException e) {
            return null;
        }
        if (ref.addresses().size() != 1) {
            return null;
        }
        Address at = ref.addresses().getFirst();
        String port = Numbering.up(at.spot().name(), 1);
        if (port != null && has(at.thing(), port)) {
            return at.thing() + "." + new Spot(port, at.spot().channel());
        }
        String thing = Numbering.up(at.thing(), 1);
        return port == null && thing != null && has(thing, at.spot().name()) ? thing + "." + at.spot() : null;
    }

    private boolean has(String thing, String port) {
        Equipment equipment = project.equipment().get(thing);
        Model model = equipment == null
                ? null
                : study.types().findModel(equipment.model()).orElse(null);
        if (model == null) {
            return false;
        }
        Shape shape = Shape.of(model);
        return shape.findSocket(port).isPresent() || shape.points().contains(port);
    }

    private void ways(Map<String, String> cells) {
        if (cells.remove("ways") != null) {
            notes.add("Left open: the ways, for each pair of ports takes one cable.");
        }
    }

    /** The same place of the next thing, for a link that must have both its ends. */
    private void whole(Map<String, String> cells, String key) {
        String text = cells.getOrDefault(key, "");
        Ref ref = new Ref(text);
        String thing = Numbering.up(ref.thing(), 1);
        boolean there = thing != null
                && !ref.isRange()
                && has(thing, ref.addresses().getFirst().spot().name());
        if (there) {
            cells.put(key, thing + text.substring(ref.thing().length()));
            notes.add("Counted up: " + key + ", to the next thing.");
        } else {
            notes.add("Still the same: " + key + ", for there is no next thing like it.");
        }
    }

    private boolean patch(Map<String, String> cells) {
        String device = cells.getOrDefault("device", "");
        String from = cells.getOrDefault("from", "");
        String to = cells.getOrDefault("to", "");
        if (from.indexOf('{') >= 0 || to.indexOf('{') >= 0) {
            return false;
        }
        String nextFrom = nextSpot(device, from);
        List<String> nextTo = new ArrayList<>();
        boolean moved = nextFrom != null;
        for (String each : to.split(",\\s*")) {
            String next = nextSpot(device, each);
            moved |= next != null;
            nextTo.add(next == null ? each : next);
        }
        cells.put("from", nextFrom == null ? from : nextFrom);
        cells.put("to", String.join(", ", nextTo));
        String id = device + ": " + cells.get("from") + " -> " + cells.get("to");
        return moved && !Rows.of(project, table).containsKey(id);
    }

    private @Nullable String nextSpot(String device, String spot) {
        String next = Numbering.up(spot, 1);
        if (next == null) {
            return null;
        }
        String name = next.replaceFirst(":.*$", "");
        return has(device, name) && hasChannel(device, next) ? next : null;
    }

    private boolean hasChannel(String device, String spot) {
        int colon = spot.indexOf(':');
        Equipment equipment = project.equipment().get(device);
        Model model = equipment == null
                ? null
                : study.types().findModel(equipment.model()).orElse(null);
        if (colon < 0 || model == null) {
            return true;
        }
        Shape.Socket socket =
                Shape.of(model).findSocket(spot.substring(0, colon)).orElse(null);
        String channel = spot.substring(colon + 1);
        return socket != null
                && (socket.open()
                        || socket.arriving().contains(channel)
                        || socket.leaving().contains(channel));
    }
}
