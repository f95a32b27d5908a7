package housewright.paper;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Kind;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.PatchEntry;
import housewright.model.Setting;
import housewright.model.Words;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.sound.Patched;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** For each device what is in its sockets, what is patched in it and how it is set. */
final class PatchSheets extends Titled {
    /** Which have a sheet even where nothing is patched or set in them. */
    private static final Set<Kind> ALWAYS = EnumSet.of(
            Kind.STAGE_BOX,
            Kind.MIXER,
            Kind.PROCESSOR,
            Kind.MATRIX,
            Kind.VISION_MIXER,
            Kind.SWITCH,
            Kind.PANEL,
            Kind.SPLITTER,
            Kind.DMX_SPLITTER,
            Kind.DMX_NODE);

    PatchSheets() {
        super(
                "patch-sheets",
                "Patch sheets",
                "Who plugs and sets each device",
                "What goes into which socket, what is routed to what inside, and how is it set?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Study target = study.at(Moment.target());
        Map<String, List<Patched>> patches = new LinkedHashMap<>();
        target.sound()
                .patched()
                .forEach(each -> patches.computeIfAbsent(each.device(), id -> new ArrayList<>())
                        .add(each));
        Map<String, List<Row>> sockets = sockets(target);
        List<Sheet> sheets = new ArrayList<>();
        for (Present thing : target.supplies().things().values()) {
            Model model = thing.model();
            List<Row> plugged = sockets.getOrDefault(thing.id(), List.of());
            List<Row> patch = patch(patches.getOrDefault(thing.id(), List.of()));
            List<Row> set = set(thing);
            boolean always = model != null && ALWAYS.contains(model.kind()) && !plugged.isEmpty();
            if (always || !patch.isEmpty() || !set.isEmpty()) {
                sheets.add(sheet(thing, plugged, patch, set));
            }
        }
        return sheets;
    }

    private Sheet sheet(Present thing, List<Row> plugged, List<Row> patch, List<Row> set) {
        Model model = thing.model();
        List<Block> blocks = new ArrayList<>();
        String at = thing.equipment().at();
        blocks.add(new Block.Text((model == null ? "Type ________" : Say.type(model)) + ", at "
                + (at == null ? "________" : Words.said(at))
                + (thing.equipment().unit() == null
                        ? ""
                        : ", unit " + thing.equipment().unit()) + "."));
        if (model != null && (model.kind() == Kind.MIXER || model.kind() == Kind.STAGE_BOX)) {
            blocks.add(Cautions.HEARING);
        }
        add(
                blocks,
                "Sockets",
                "sockets",
                plugged,
                Column.text("Socket", 16),
                Column.id("Cable", 12),
                Column.text("Label", 18),
                Column.text("Plug", 10),
                Column.text("Far end", 32),
                Column.text("In", 6));
        add(
                blocks,
                "Patched inside",
                "patch",
                patch,
                Column.text("From", 18),
                Column.text("To", 22),
                Column.text("Taken", 14),
                Column.text("Gain", 10),
                Column.text("Delay", 10),
                Column.text("Note", 40),
                Column.text("Set", 6));
        add(
                blocks,
                "Set",
                "settings",
                set,
                Column.text("Where", 24),
                Column.text("Setting", 40),
                Column.text("Note", 30),
                Column.text("Set", 6));
        return Sheet.upright("patch-" + thing.id(), Words.said(thing.id()), recipient(), blocks);
    }

    private static void add(List<Block> blocks, String heading, String name, List<Row> rows, Column... columns) {
        if (!rows.isEmpty()) {
            blocks.add(new Block.Heading(heading));
            blocks.add(new Block.Table(name, List.of(columns), rows));
        }
    }

    private static Map<String, List<Row>> sockets(Study study) {
        Map<String, List<Row>> sockets = new LinkedHashMap<>();
        for (Lead lead : study.cabling().leads()) {
            int way = 0;
            for (Joint joint : lead.joints()) {
                way++;
                String id = lead.joints().size() > 1 ? lead.id() + " way " + way : lead.id();
                add(sockets, joint.from(), joint.to(), lead, id);
                add(sockets, joint.to(), joint.from(), lead, id);
            }
        }
        return sockets;
    }

    private static void add(
            Map<String, List<Row>> sockets,
            @org.jspecify.annotations.Nullable Plug near,
            @org.jspecify.annotations.Nullable Plug far,
            Lead lead,
            String id) {
        if (near == null) {
            return;
        }
        List<Row> rows = sockets.computeIfAbsent(near.at().thing(), thing -> new ArrayList<>());
        String socket = near.at().spot().name();
        boolean again = rows.stream().anyMatch(row -> row.key().equals(socket + " " + id));
        rows.add(new Row(
                again ? socket + " " + id + " again" : socket + " " + id,
                List.of(
                        Cell.of(Words.said(socket)),
                        Cell.of(id),
                        Cell.orNone(lead.cable().label()),
                        Say.connector(near),
                        Say.socket(far),
                        Cell.BOX)));
    }

    private static List<Row> patch(List<Patched> patched) {
        Map<String, Row> rows = new LinkedHashMap<>();
        for (Patched each : patched) {
            PatchEntry entry = each.entry();
            rows.putIfAbsent(
                    each.from() + " " + each.to(),
                    new Row(
                            each.from() + " " + each.to(),
                            List.of(
                                    Cell.of(said(each.from())),
                                    Cell.of(said(each.to())),
                                    Cell.orNone(
                                            entry.tap() == null
                                                    ? null
                                                    : entry.tap().word().replace('-', ' ')),
                                    Cell.orNone(entry.gain()),
                                    Cell.orNone(entry.delay()),
                                    Cell.orNone(entry.note()),
                                    Cell.BOX)));
        }
        return List.copyOf(rows.values());
    }

    private static String said(LocalRef.Spot spot) {
        String channel = spot.channel();
        return Words.said(spot.name())
                + (channel == null ? "" : channel.equals("v") ? ", picture" : ", channel " + channel);
    }

    private static List<Row> set(Present thing) {
        List<Row> rows = new ArrayList<>();
        thing.equipment()
                .set()
                .forEach((where, setting) -> rows.add(new Row(
                        where.text(),
                        List.of(
                                Cell.of(where.text()),
                                Cell.of(said(setting)),
                                Cell.orNone(setting.note()),
                                Cell.BOX))));
        return rows;
    }

    private static String said(Setting setting) {
        List<String> said = new ArrayList<>();
        if (setting.on() != null) {
            said.add(setting.on() ? "on" : "off");
        }
        if (setting.gain() != null) {
            said.add("gain " + setting.gain());
        }
        if (setting.phantom() != null) {
            said.add("phantom " + (setting.phantom() ? "on" : "off"));
        }
        if (setting.delay() != null) {
            said.add("delay " + setting.delay());
        }
        if (setting.mute()) {
            said.add("muted");
        }
        if (setting.level() != null) {
            said.add("usual level " + setting.level());
        }
        if (setting.clock() != null) {
            said.add("clock " + setting.clock().word());
        }
        if (setting.sampleRate() != null) {
            said.add("sample rate " + setting.sampleRate());
        }
        return String.join(", ", said);
    }
}
