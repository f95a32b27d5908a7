package housewright.app.table;

import housewright.app.table.ColumnGuess.Guess;
import housewright.app.table.SheetImport.Does;
import housewright.app.table.SheetImport.Row;
import housewright.file.FileError;
import housewright.file.Naming;
import housewright.model.Cable;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Feed;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.PatchEntry;
import housewright.model.Phantom;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Remarks;
import housewright.model.Shape;
import housewright.model.Signal;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.sheet.Sheet;
import housewright.study.Study;
import housewright.unit.Gain;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * An input list taken into a project: for each row the source with its microphone, the cable to the stage box's socket,
 * the desk's channel, and a feed that begins there. What the model has no field for, and what is not plain, is said and
 * kept as a note; nothing is guessed.
 */
final class InputList {
    private static final Map<String, List<String>> WORDS = new LinkedHashMap<>();

    static {
        WORDS.put(
                "channel",
                List.of("ch", "chan", "channel", "input", "no", "desk channel", "console channel", "desk ch", "in"));
        WORDS.put(
                "source",
                List.of(
                        "source",
                        "instrument",
                        "name",
                        "who",
                        "what",
                        "input name",
                        "description",
                        "input source",
                        "channel name",
                        "performer"));
        WORDS.put(
                "microphone",
                List.of("mic", "microphone", "mic/di", "mic / di", "mic or di", "mic type", "transducer", "mic di"));
        WORDS.put("stand", List.of("stand", "mic stand", "stand type"));
        WORDS.put("phantom", List.of("phantom", "48v", "48 v", "p48", "phantom power", "48"));
        WORDS.put("position", List.of("position", "place", "where", "location", "stage position"));
        WORDS.put(
                "socket",
                List.of(
                        "socket",
                        "stage box",
                        "stagebox",
                        "box",
                        "multi",
                        "stage box socket",
                        "stage box input",
                        "multicore",
                        "patch",
                        "line",
                        "stage input",
                        "box socket",
                        "stage socket"));
        WORDS.put(
                "sends",
                List.of(
                        "sends",
                        "monitor",
                        "monitors",
                        "in ear",
                        "in ears",
                        "in ear sends",
                        "mix",
                        "mixes",
                        "monitor sends",
                        "wedge",
                        "foldback"));
        WORDS.put("note", List.of("note", "notes", "comment", "comments", "remark", "remarks"));
    }

    static final List<Tables.Column> COLUMNS = WORDS.keySet().stream()
            .map(key -> new Tables.Column(
                    key,
                    key.equals("socket")
                            ? "Stage-box socket"
                            : key.equals("channel")
                                    ? "Desk channel"
                                    : key.substring(0, 1).toUpperCase(Locale.ROOT) + key.substring(1),
                    null,
                    true,
                    false,
                    key.equals("source"),
                    false,
                    List.of(),
                    null))
            .toList();

    private final Study study;
    private final FoundTable found;
    private final SocketWords sockets;
    private final Map<String, String> models;
    private final Map<String, String> places;
    private final Map<String, String> labelled = new HashMap<>();
    private final Set<String> usedSockets = new HashSet<>();
    private Project project;

    private InputList(Study study, FoundTable found) {
        this.study = study;
        this.found = found;
        this.project = study.project();
        this.sockets = new SocketWords(study);
        this.models = ColumnGuess.Words.byWord(study, Naming.MODEL);
        this.places = ColumnGuess.Words.byWord(study, Naming.PLACE);
        for (Equipment each : project.equipment().values()) {
            if (each.label() != null) {
                labelled.merge(Edits.slug(each.label()), each.id(), (one, other) -> "");
            }
        }
        for (Cable cable : project.cables().values()) {
            if (cable.life() != Life.STRIKE) {
                usedSockets.add(text(cable.to()));
            }
        }
    }

    /** As {@link ColumnGuess#headFit}. */
    static int[] headFit(List<String> head) {
        Set<String> named = new HashSet<>();
        int sum = 0;
        for (String cell : head) {
            String key = key(cell);
            if (!key.isEmpty() && named.add(key)) {
                sum += 3;
            }
        }
        boolean source = named.contains("source") && (named.contains("channel") || named.contains("microphone"));
        return new int[] {source ? sum : 0, source ? named.size() : 0};
    }

    private static String key(String head) {
        String plain = HeadWords.plain(head);
        return WORDS.entrySet().stream()
                .filter(entry ->
                        entry.getKey().equals(plain) || entry.getValue().contains(plain))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }

    static Guess guess(List<String> head, List<List<String>> rows) {
        int width =
                Math.max(head.size(), rows.stream().mapToInt(List::size).max().orElse(0));
        List<String> columns = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            String key = i < head.size() ? key(head.get(i)) : "";
            columns.add(columns.contains(key) ? "" : key);
        }
        List<String> heads = new ArrayList<>(head);
        while (!head.isEmpty() && heads.size() < width) {
            heads.add("");
        }
        return new Guess(heads, columns, rows);
    }

    /** The changes; what becomes of each row is added to the rows. */
    static List<Change> read(Study study, FoundTable found, List<Row> rows) {
        InputList list = new InputList(study, found);
        found.rows().forEach(row -> rows.add(list.row(row)));
        return Change.between(study.project(), list.project);
    }

    private Row row(Sheet.Row row) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < found.guess().columns().size(); i++) {
            String key = found.guess().columns().get(i);
            if (!key.isEmpty() && !row.cell(i).isEmpty()) {
                cells.put(key, row.cell(i));
            }
        }
        List<String> troubles = SheetImport.troubles(found, row);
        String source = cells.getOrDefault("source", "");
        if (!troubles.isEmpty()) {
            return new Row(row.number(), "", Does.REFUSE, cells, troubles, List.of());
        }
        if (source.isEmpty() || source.matches("(?i)spare|-+|n/?a|empty|free")) {
            return new Row(row.number(), "", Does.LEAVE, cells, List.of("no source stands in it"), List.of());
        }
        String slug = Edits.slug(source);
        String id = project.equipment().containsKey(slug) ? slug : labelled.getOrDefault(slug, "");
        id = id.isEmpty() ? slug : id;
        if (id.isEmpty()) {
            return new Row(row.number(), "", Does.REFUSE, cells, List.of("source: no id can be made of it"), List.of());
        }
        List<String> notes = new ArrayList<>();
        Project before = project;
        List<Change> changes = new ArrayList<>();
        Equipment was = project.equipment().get(id);
        Equipment thing = thing(id, source, was, cells, notes);
        Model model = study.types().findModel(thing.model()).orElse(null);
        List<String> wired = new ArrayList<>();
        boolean sent = model != null && rest(id, model, cells, changes, wired);
        if (sent) { // they are patched, and need no note
            Map<String, String> without = new LinkedHashMap<>(cells);
            without.remove("sends");
            notes.clear();
            thing = thing(id, source, was, without, notes);
        }
        notes.addAll(wired);
        if (!thing.equals(was)) {
            changes.addFirst(new Change.Put(Section.EQUIPMENT, id, thing));
        }
        if (model == null && (cells.containsKey("socket") || cells.containsKey("channel"))) {
            notes.add("No cable, channel or feed is made: it is not known what type " + id + " is.");
        }
        Project after = Change.apply(project, changes);
        List<FileError> errors = Edits.check(study, after);
        if (!errors.isEmpty()) {
            List<String> why = errors.stream()
                    .limit(3)
                    .map(error -> error.path() + ": found " + error.found())
                    .toList();
            return new Row(row.number(), id, Does.REFUSE, cells, why, notes);
        }
        project = after;
        Does does = after.equals(before) ? Does.SAME : was == null ? Does.ADD : Does.CHANGE;
        return new Row(row.number(), id, does, cells, List.of(), notes);
    }

    private Equipment thing(
            String id, String source, @Nullable Equipment was, Map<String, String> cells, List<String> notes) {
        List<String> kept = new ArrayList<>();
        String mic = cells.getOrDefault("microphone", "");
        String model = mic.isEmpty() ? null : models.get(Edits.slug(mic));
        if (!mic.isEmpty() && model == null) {
            kept.add("Microphone: " + mic);
            notes.add("\"" + mic
                    + "\" is no type of this project or the library; it is kept as a note. Choose the type.");
        }
        String position = cells.getOrDefault("position", "");
        String at = position.isEmpty() ? null : places.get(Edits.slug(position));
        if (!position.isEmpty() && at == null) {
            kept.add("Position: " + position);
            notes.add("\"" + position + "\" is no place of this project; it is kept as a note.");
        }
        keep("stand", "Stand: ", cells, kept);
        keep("sends", "Sends: ", cells, kept);
        keep("note", "", cells, kept);
        if (cells.containsKey("sends")) {
            notes.add(
                    "What goes to whose ears is kept as a note, for it names no channel and mixes of a desk plainly, such"
                            + " as mix 1, mix 2: enter it under Patch.");
        }
        Remarks old = was == null ? Remarks.NONE : was.remarks();
        String note = kept.isEmpty() ? old.note() : String.join(". ", kept);
        Remarks remarks = new Remarks(old.key(), note, old.photo(), old.known(), old.by());
        if (was == null) {
            boolean named = !id.equals(source);
            return new Equipment(
                    id,
                    model,
                    at,
                    Life.NEW,
                    null,
                    null,
                    Map.of(),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    Map.of(),
                    null,
                    null,
                    null,
                    named ? source : null,
                    null,
                    null,
                    remarks);
        }
        if (model != null && was.model() != null && !model.equals(was.model())) {
            notes.add("The list has the type " + model + "; the project's " + was.model() + " is left.");
        }
        return new Equipment(
                id,
                was.model() == null ? model : was.model(),
                was.at() == null ? at : was.at(),
                was.life(),
                was.circuit(),
                was.poweredBy(),
                was.set(),
                was.unit(),
                was.secondary(),
                was.light(),
                was.gang(),
                was.terminator(),
                was.ip(),
                was.vlans(),
                was.partOf(),
                was.runsOn(),
                was.serial(),
                was.label(),
                was.handover(),
                was.was(),
                remarks);
    }

    private static void keep(String key, String before, Map<String, String> cells, List<String> kept) {
        String text = cells.getOrDefault(key, "");
        if (!text.isEmpty()) {
            kept.add(before + text);
        }
    }

    /**
     * Cable, channel, sends and feed of a source whose type is known.
     *
     * @return whether all sends of the row are patched
     */
    private boolean rest(String id, Model model, Map<String, String> cells, List<Change> changes, List<String> notes) {
        Shape shape = Shape.of(model);
        phantom(model, cells.getOrDefault("phantom", ""), notes);
        List<String> outs = shape.sockets().values().stream()
                .filter(socket -> socket.port().leaves() && socket.port().signal() == Signal.ANALOG_AUDIO)
                .map(Shape.Socket::name)
                .toList();
        String said = cells.getOrDefault("socket", "");
        String socket = said.isEmpty() ? null : socket(said, notes);
        String joined = joinedTo(id);
        if (joined != null && socket != null && !joined.equals(socket)) {
            notes.add("It is plugged into " + joined + " already; the list's " + socket + " is left.");
            socket = joined;
        } else if (joined != null) {
            socket = joined;
        } else if (socket != null && outs.size() != 1) {
            notes.add("No cable is made: " + model.id() + " has " + (outs.isEmpty() ? "no" : "several")
                    + " analogue outputs.");
        } else if (socket != null && !usedSockets.add(socket)) {
            notes.add("No cable is made: something is plugged into " + socket + " already.");
            socket = null;
        } else if (socket != null) {
            String cable = Numbering.inStyle(project.cables().keySet(), "C001");
            changes.add(new Change.Put(
                    Section.CABLES, cable, cable(cable, new Ref(id + "." + outs.getFirst()), new Ref(socket))));
        }
        Strip strip = channel(cells.getOrDefault("channel", ""), socket, changes, notes);
        boolean sent = strip != null && sends(cells.getOrDefault("sends", ""), strip, changes, notes);
        boolean begins = project.feeds().values().stream()
                .anyMatch(
                        feed -> feed.from().stream().anyMatch(ref -> ref.text().startsWith(id + ".")));
        if (!begins && shape.points().contains("pickup") && !project.feeds().containsKey(id)) {
            changes.add(new Change.Put(
                    Section.FEEDS,
                    id,
                    new Feed(
                            id,
                            false,
                            List.of(new Ref(id + ".pickup")),
                            List.of(),
                            null,
                            null,
                            List.of(),
                            null,
                            Remarks.NONE)));
            notes.add("The feed " + id + " begins there; say where it must arrive.");
        }
        return sent;
    }

    private static void phantom(Model model, String said, List<String> notes) {
        if (said.isEmpty()) {
            return;
        }
        boolean wanted = said.matches("(?i)y(es)?|x|on|48 ?v?|✓|true|1");
        boolean needs = model.ports().values().stream().anyMatch(port -> port.phantom() == Phantom.NEEDS);
        boolean harmed = model.ports().values().stream().anyMatch(port -> port.phantom() == Phantom.HARMED);
        if (wanted && harmed) {
            notes.add("The list wants phantom power, and it harms " + model.id()
                    + ": look at it before anything is switched on.");
        } else if (wanted != needs) {
            notes.add("The list says phantom power " + (wanted ? "on" : "off") + ", and " + model.id()
                    + (needs ? " needs it" : " does not need it") + "; the project goes by the type.");
        }
    }

    /** The socket of a stage box or desk that is meant; null, with the reason among the notes, where none plainly is. */
    private @Nullable String socket(String said, List<String> notes) {
        String whole = sockets.find(said);
        if (whole != null) {
            return whole;
        }
        List<Equipment> boxes = project.equipment().values().stream()
                .filter(each -> each.life() != Life.STRIKE)
                .filter(each -> study.types()
                        .findModel(each.model())
                        .filter(model -> model.kind() == Kind.STAGE_BOX)
                        .isPresent())
                .toList();
        if (boxes.size() == 1) {
            String port = sockets.port(boxes.getFirst().id(), Edits.slug(said));
            if (port != null) {
                return boxes.getFirst().id() + "." + port;
            }
        }
        notes.add("No cable is made: \"" + said + "\" names no socket"
                + (boxes.size() > 1
                        ? "; say of which stage box, such as "
                                + boxes.getFirst().id() + " 1."
                        : " of this project."));
        return null;
    }

    private @Nullable String joinedTo(String id) {
        for (Cable cable : project.cables().values()) {
            if (cable.life() != Life.STRIKE
                    && text(cable.from()).startsWith(id + ".")
                    && !text(cable.to()).isEmpty()) {
                return text(cable.to());
            }
        }
        return null;
    }

    private static Cable cable(String id, Ref from, Ref to) {
        return new Cable(
                id,
                "mic-cable",
                new End(from),
                new End(to),
                List.of(),
                List.of(),
                Life.NEW,
                null,
                List.of(),
                List.of(),
                null,
                null,
                null,
                null,
                Remarks.NONE);
    }

    /** Patches the socket into the desk's channel: directly on the desk, or by the stage box's link where it is joined to it. */
    private @Nullable Strip channel(String said, @Nullable String socket, List<Change> changes, List<String> notes) {
        String digits = said.replaceFirst("(?i)^(ch(annel)?|in(put)?)?[ .#-]*", "");
        if (socket == null || !digits.matches("\\d{1,4}")) {
            return null;
        }
        String channel = "ch-" + Integer.parseInt(digits);
        String thing = socket.substring(0, socket.indexOf('.'));
        String port = socket.substring(socket.indexOf('.') + 1);
        if (hasPoint(thing, channel)) {
            return patch(thing, port, channel, changes, notes);
        }
        String link = linked(thing, port);
        for (Cable cable : project.cables().values()) {
            String other = link == null ? null : other(cable, thing + "." + link.substring(0, link.indexOf(':')));
            if (other != null && cable.life() != Life.STRIKE && link != null) {
                String desk = other.substring(0, other.indexOf('.'));
                if (hasPoint(desk, channel)) {
                    return patch(
                            desk,
                            other.substring(other.indexOf('.') + 1) + link.substring(link.indexOf(':')),
                            channel,
                            changes,
                            notes);
                }
            }
        }
        notes.add("Channel " + said + " is not set: no desk was found that " + socket
                + " leads to directly. Enter it under Patch.");
        return null;
    }

    /** A channel of a desk. */
    private record Strip(String desk, String channel) {}

    /** The channel that the source comes in on; null where something else does. */
    private @Nullable Strip patch(String desk, String from, String channel, List<Change> changes, List<String> notes) {
        PatchEntry entry =
                new PatchEntry(new LocalRef(from), List.of(new LocalRef(channel)), null, null, null, null, null);
        List<PatchEntry> entries = project.patch().getOrDefault(desk, List.of());
        boolean there = entries.stream()
                .flatMap(each -> each.join().pairs().stream())
                .anyMatch(pair -> pair.to().toString().equals(channel));
        boolean same = entries.stream()
                .flatMap(each -> each.join().pairs().stream())
                .anyMatch(pair -> pair.to().toString().equals(channel)
                        && pair.from().toString().equals(from));
        if (there && !same) {
            notes.add("Something else is patched into " + desk + ", " + channel + " already; the list's is left.");
            return null;
        }
        if (!same) {
            changes.add(new Change.Patch(desk, entry));
        }
        return new Strip(desk, channel);
    }

    /** One of several sends: a mix by name or, after one with a name, by number alone; with a gain or without. */
    private static final Pattern SEND = Pattern.compile("(?i)(?:(mix|aux)(?:es)?[ .#-]*)?(\\d{1,2})"
            + "(?:(?: +| *(?=[(+-]))\\(? *([+-]?\\d{1,2}(?:[.,]\\d+)?) *dB *\\)?)?");

    /**
     * Patches the channel into the mixes that the cell names.
     *
     * @return whether it names nothing else
     */
    private boolean sends(String said, Strip strip, List<Change> changes, List<String> notes) {
        List<PatchEntry> entries = new ArrayList<>();
        String word = "";
        for (String each : said.replace('\u2212', '-').split(" *[,;/+&] *(?![\\d.,]* *dB)")) {
            Matcher send = SEND.matcher(each.strip());
            if (!send.matches() || (send.group(1) == null && word.isEmpty())) {
                return false;
            }
            word = send.group(1) == null ? word : send.group(1).toLowerCase(Locale.ROOT);
            String other = word.equals("mix") ? "aux" : "mix";
            String number = "-" + Integer.parseInt(send.group(2));
            String mix = hasPoint(strip.desk(), word + number) ? word + number : other + number;
            if (!hasPoint(strip.desk(), mix)) {
                return false;
            }
            String gain = send.group(3);
            entries.add(new PatchEntry(
                    new LocalRef(strip.channel()),
                    List.of(new LocalRef(mix)),
                    null,
                    gain == null ? null : Gain.parse(gain.replace("+", "").replace(',', '.') + " dB"),
                    null,
                    null,
                    null));
        }
        List<String> there = new ArrayList<>();
        List<String> made = new ArrayList<>();
        for (PatchEntry entry : entries) {
            String mix = entry.to().getFirst().toString();
            if (isPatched(strip, mix)) {
                there.add(mix);
            } else if (!made.contains(mix)) {
                made.add(mix);
                changes.add(new Change.Patch(strip.desk(), entry));
            }
        }
        if (!made.isEmpty()) {
            notes.add(strip.channel() + " goes to " + String.join(", ", made) + " of " + strip.desk()
                    + "; the list does not say whether before the fader: set that under Patch.");
        }
        if (!there.isEmpty()) {
            notes.add(strip.channel() + " goes to " + String.join(", ", there) + " already, and is left as it is.");
        }
        return true;
    }

    private boolean isPatched(Strip strip, String mix) {
        return project.patch().getOrDefault(strip.desk(), List.of()).stream()
                .flatMap(each -> each.join().pairs().stream())
                .anyMatch(pair -> pair.from().toString().equals(strip.channel())
                        && pair.to().toString().equals(mix));
    }

    private boolean hasPoint(String thing, String point) {
        return shape(thing).filter(shape -> shape.points().contains(point)).isPresent();
    }

    private Optional<Shape> shape(String thing) {
        Equipment each = project.equipment().get(thing);
        return each == null
                ? Optional.empty()
                : study.types().findModel(each.model()).map(Shape::of);
    }

    /** The channel of its link on which a stage box sends a socket on: {@code link:3}. */
    private @Nullable String linked(String thing, String port) {
        return shape(thing).stream()
                .flatMap(shape -> shape.model().routes().stream())
                .flatMap(route -> route.join().pairs().stream())
                .filter(pair -> pair.from().toString().equals(port) && pair.to().channel() != null)
                .map(pair -> pair.to().toString())
                .findFirst()
                .orElse(null);
    }

    private static @Nullable String other(Cable cable, String end) {
        String from = text(cable.from());
        String to = text(cable.to());
        return from.equals(end) && !to.isEmpty() ? to : to.equals(end) && !from.isEmpty() ? from : null;
    }

    /** Empty where it is not known. */
    private static String text(@Nullable End end) {
        return end == null || end.ref() == null ? "" : end.text();
    }
}
