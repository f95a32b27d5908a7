package housewright.card;

import housewright.cable.Lead;
import housewright.card.Card.Lookup;
import housewright.card.Card.Step;
import housewright.card.Ways.OneWay;
import housewright.model.Battery;
import housewright.model.Control;
import housewright.model.Kind;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.model.Words;
import housewright.signal.Hop;
import housewright.signal.Present;
import housewright.study.Study;
import housewright.unit.TimeSpan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** While it runs: one card for each desk that wants hands, and one for the light. */
final class RunCards {
    private final Study study;
    private final Names names;
    private final Map<Trouble, Ways> ways = new EnumMap<>(Trouble.class);

    RunCards(Study study, Names names) {
        this.study = study;
        this.names = names;
    }

    private Ways ways(Trouble trouble) {
        return ways.computeIfAbsent(trouble, key -> new Ways(study, names, trouble));
    }

    List<Card> cards() {
        List<Card> cards = new ArrayList<>();
        for (String desk : study.operation().desks()) {
            cards.addAll(names.kind(desk) == Kind.MIXER ? sound(desk) : picture(desk));
        }
        cards.addAll(light());
        return cards;
    }

    /** The title of the card on which a desk's channels or inputs stand. */
    static String title(String desk) {
        return "Run: " + Names.thing(desk);
    }

    private List<Card> sound(String desk) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        for (OneWay way : ways(Trouble.SOUND).all()) {
            List<Address> inside = Ways.inside(way);
            if (desk.equals(way.desk()) && !inside.isEmpty()) {
                String channel = Words.said(inside.getFirst().spot().name());
                rows.putIfAbsent(
                        channel + " " + way.source(),
                        List.of(channel, Names.thing(way.source()), where(way.source()), link(way.before())));
            }
        }
        noFeedAsksFor(desk, rows);
        List<List<String>> sorted = rows.values().stream()
                .sorted((a, b) -> natural(a.getFirst(), b.getFirst()))
                .toList();
        List<Step> steps = List.of(
                new Step(
                        where(desk),
                        "Ask each person to talk or play. Look at the meter of that channel.",
                        "The meter moves.",
                        null),
                new Step(null, "Bring up one fader at a time. Go slowly.", "You hear it well in the last row.", null),
                new Step(null, "Mute what nobody uses.", "Its mute light is on.", null),
                new Step(null, "Does it howl? Pull down the last fader you moved, at once.", "The howl stops.", null),
                new Step(null, "Is it too loud for you? Then it is too loud for others. Turn it down.", null, null));
        List<String> heads = List.of("Channel", "What", "Where", "Plug or batteries");
        List<String> first = List.of("One of you stays at " + names.told(desk) + " all the time.");
        return withTable(
                desk, first, steps, "What is on which channel", heads, sorted, List.of(Texts.EARS), Trouble.SOUND);
    }

    /** Channels to which something comes that no feed begins at, such as a second microphone of the drums. */
    private void noFeedAsksFor(String desk, Map<String, List<String>> rows) {
        Set<String> channels = new LinkedHashSet<>();
        study.sound().patched().stream()
                .filter(each -> each.device().equals(desk))
                .filter(each -> study.sound()
                        .findShape(desk)
                        .orElseThrow()
                        .points()
                        .contains(each.to().name()))
                .filter(each -> !study.sound()
                        .findShape(desk)
                        .orElseThrow()
                        .points()
                        .contains(each.from().name()))
                .forEach(each -> channels.add(each.to().name()));
        channels.removeIf(
                channel -> rows.values().stream().anyMatch(row -> row.getFirst().equals(Words.said(channel))));
        for (Present thing : study.supplies().things().values()) {
            if (channels.isEmpty() || !isSource(thing)) {
                continue;
            }
            for (String point : Objects.requireNonNull(thing.shape()).points()) {
                Address from = new Address(thing.id(), new LocalRef.Spot(point, null));
                for (String channel : List.copyOf(channels)) {
                    Address to = new Address(desk, new LocalRef.Spot(channel, null));
                    study.signals().findWay(from, to).ifPresent(way -> {
                        channels.remove(channel);
                        String said = Words.said(channel);
                        rows.put(
                                said + " " + thing.id(),
                                List.of(said, Names.thing(thing.id()), where(thing.id()), link(way.hops())));
                    });
                }
            }
        }
    }

    /** It gives and takes nothing. */
    private static boolean isSource(Present thing) {
        return thing.shape() != null
                && thing.model() != null
                && !thing.shape().points().isEmpty()
                && thing.model().ports().values().stream()
                        .noneMatch(port -> port.both() != null || (port.in() != null && port.in() != Signal.MAINS));
    }

    private List<Card> picture(String desk) {
        Map<String, List<String>> inputs = new LinkedHashMap<>();
        Map<String, Set<String>> outputs = new LinkedHashMap<>();
        for (OneWay way : ways(Trouble.PICTURE).all()) {
            if (!desk.equals(way.desk()) || way.before().isEmpty()) {
                continue;
            }
            String input = Words.said(way.before().getLast().to().spot().name());
            inputs.putIfAbsent(
                    input + " " + way.source(),
                    List.of(input, Names.thing(way.source()), where(way.source()), link(way.before())));
            List<Address> inside = Ways.inside(way);
            if (!inside.isEmpty()) {
                outputs.computeIfAbsent(Words.said(inside.getFirst().spot().name()), key -> new LinkedHashSet<>())
                        .add(Names.thing(way.end()));
            }
        }
        List<List<String>> sorted = inputs.values().stream()
                .sorted((a, b) -> natural(a.getFirst(), b.getFirst()))
                .toList();
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                where(desk),
                "Look at each picture once before you start. The table says where it comes in.",
                "All pictures are there.",
                null));
        outputs.forEach((bus, ends) -> steps.add(new Step(
                null,
                "Choose a picture for " + bus + ". It goes to " + Words.and(ends) + ".",
                "The picture is there.",
                "Its buttons")));
        steps.add(new Step(null, "Show nobody who does not want to be seen. Ask first.", null, null));
        List<String> heads = List.of("Input", "What", "Where", "Plug");
        List<String> first = List.of("One of you stays at " + names.told(desk) + " all the time.");
        return withTable(
                desk, first, steps, "What comes in where", heads, sorted, List.of(Texts.HIGH), Trouble.PICTURE);
    }

    private List<Card> withTable(
            String desk,
            List<String> first,
            List<Step> steps,
            String table,
            List<String> heads,
            List<List<String>> rows,
            List<String> cautions,
            Trouble trouble) {
        List<String> toFillIn = steps.stream().anyMatch(step -> step.blank() != null)
                ? List.of("which buttons of " + Names.thing(desk) + " choose what")
                : List.of();
        List<Lookup> tables = rows.isEmpty() ? List.of() : List.of(Lookup.of(table, heads, rows));
        return Dealing.cards(List.of(new Card(
                "run-" + desk,
                title(desk),
                null,
                first,
                steps,
                tables,
                cautions,
                names.calls(trouble.skill, trouble.about),
                toFillIn)));
    }

    /** The first plug that a person handles, else the batteries of what sends by radio; empty where neither is. */
    private String link(List<Hop> before) {
        List<String> said = new ArrayList<>();
        for (Lead lead : ways(Trouble.SOUND).plugs(before)) {
            said.add(plug(lead));
            break;
        }
        before.stream()
                .map(hop -> hop.from().thing())
                .distinct()
                .map(this::battery)
                .filter(text -> !text.isEmpty())
                .limit(1)
                .forEach(said::add);
        return String.join("; ", said);
    }

    /** "C101 in floor left, front 1": the end away from where it begins. */
    static String plug(Lead lead) {
        return lead.id() + " in "
                + lead.joints().getFirst().plugs().getLast().at().saidPort();
    }

    private String battery(String thing) {
        Model model = study.types().findModel(study.getEquipment(thing).model()).orElse(null);
        Battery battery = model == null || model.kind() != Kind.RADIO_TRANSMITTER ? null : model.battery();
        if (battery == null) {
            return "";
        }
        TimeSpan runs = battery.runs();
        return (battery.count() == null ? "" : battery.count() + " ")
                + (battery.type() == null ? "batteries" : battery.type())
                + (runs == null ? "" : ", about " + runs)
                + (Names.thing(thing).isEmpty() ? "" : " in " + Names.thing(thing));
    }

    private List<Card> light() {
        Map<String, Map<String, String>> byLook = new LinkedHashMap<>();
        Set<String> panels = new LinkedHashSet<>();
        List<String> byItself = new ArrayList<>();
        for (Control control : study.project().controls().values()) {
            Ref press = control.press();
            String what = control.calls() != null
                    ? "The light “" + Words.said(control.calls()) + "” comes on"
                    : control.does() == null
                            ? null
                            : Words.said(control.does().thing()) + " starts "
                                    + Words.said(control.does()
                                            .addresses()
                                            .getFirst()
                                            .spot()
                                            .name());
            if (control.calls() != null && press != null) {
                panels.add(press.thing());
                byLook.computeIfAbsent(Words.said(control.calls()), key -> new LinkedHashMap<>())
                        .merge(press.thing(), PowerCards.said(press), (a, b) -> a + " or " + b);
            } else if (what != null && control.at() != null) {
                byItself.add(what + " by itself"
                        + (control.before() == null ? "" : " " + control.before() + " before")
                        + (control.before() == null ? " at " : " ") + Words.said(control.at()) + ".");
            }
        }
        if (panels.isEmpty()) {
            return List.of();
        }
        List<String> heads = new ArrayList<>(List.of("Light"));
        panels.forEach(
                panel -> heads.add(Names.thing(panel) + (where(panel).isEmpty() ? "" : " (" + where(panel) + ")")));
        List<List<String>> rows = new ArrayList<>();
        byLook.forEach((look, buttons) -> {
            List<String> row = new ArrayList<>(List.of(look));
            panels.forEach(panel -> row.add(buttons.getOrDefault(panel, "")));
            rows.add(row);
        });
        List<Step> steps = List.of(
                new Step(
                        null,
                        "Find the light you want in the table. Press its button once.",
                        "The light fades over.",
                        null),
                new Step(null, "Wait until it has come. Do not press twice.", null, null));
        List<String> first = new ArrayList<>(byItself);
        return Dealing.cards(List.of(new Card(
                "run-light",
                "Run: light",
                null,
                first,
                steps,
                List.of(Lookup.of("Which button", heads, rows)),
                List.of("The lamps are hot and bright. Do not look into them. Do not touch them. Do not climb."),
                names.calls("lighting", "light"),
                List.of())));
    }

    private String where(String thing) {
        String where = names.where(thing);
        return where == null ? "" : where;
    }

    /** Names with their numbers by value: ch 2 before ch 10. */
    private static int natural(@Nullable String one, @Nullable String other) {
        return padded(one).compareTo(padded(other));
    }

    private static String padded(@Nullable String name) {
        StringBuilder padded = new StringBuilder();
        for (String piece : String.valueOf(name).split("(?<=\\D)(?=\\d)|(?<=\\d)(?=\\D)", -1)) {
            padded.append(
                    piece.isEmpty() || !Character.isDigit(piece.charAt(0))
                            ? piece
                            : "0".repeat(Math.max(0, 6 - piece.length())) + piece);
        }
        return padded.toString();
    }
}
