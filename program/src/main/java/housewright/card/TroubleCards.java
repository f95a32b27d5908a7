package housewright.card;

import housewright.cable.Lead;
import housewright.card.Card.Lookup;
import housewright.card.Card.Step;
import housewright.card.Ways.OneWay;
import housewright.model.Kind;
import housewright.model.Ref.Address;
import housewright.model.Words;
import housewright.signal.Hop;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** For each room in which feeds end: what to look at, in which order, when nothing is heard or seen there. */
final class TroubleCards {
    private static final Set<Kind> IN_THE_OPEN = Set.of(Kind.LOUDSPEAKER, Kind.DISPLAY, Kind.PROJECTOR);
    private static final Set<Kind> COMPUTERS = Set.of(Kind.COMPUTER, Kind.PROGRAM);

    private final Study study;
    private final Names names;
    private final Trouble trouble;
    private final Ways ways;

    TroubleCards(Study study, Names names, Trouble trouble) {
        this.study = study;
        this.names = names;
        this.trouble = trouble;
        this.ways = new Ways(study, names, trouble);
    }

    List<Card> cards() {
        List<Card> cards = new ArrayList<>();
        ways.byRoom().forEach((room, all) -> {
            List<OneWay> open = all.stream()
                    .filter(way -> IN_THE_OPEN.contains(names.kind(way.end())))
                    .toList();
            List<OneWay> others =
                    all.stream().filter(way -> !open.contains(way)).toList();
            String title = trouble.title + Words.said(room);
            String id = trouble.id + "-" + room;
            if (!open.isEmpty()) {
                cards.addAll(of(id, title, room, open));
            }
            if (!others.isEmpty()) {
                cards.addAll(of(
                        open.isEmpty() ? id : id + "-listening",
                        open.isEmpty() ? title : title + ": phones and loop",
                        room,
                        others));
            }
        });
        return cards;
    }

    /** What stands before an amplifier thumps as it comes on, and no fader is in between. */
    private static String wake(boolean isOpen, boolean hasFader) {
        String down = hasFader ? "Pull the fader down." : "Turn the sound down.";
        return isOpen
                ? "Is one off? " + down
                        + " Switch off the amps and speakers. Switch it on, and them last. Go up slowly."
                : "Is one off? Take off the phones. " + down + " Switch it on. Go up slowly.";
    }

    /** What stands in one row of the table. */
    private record Fed(String input, String bus, List<String> lights, List<String> plugs) {}

    private List<Card> of(String id, String title, String room, List<OneWay> all) {
        Map<String, List<OneWay>> byEnd = new LinkedHashMap<>();
        all.forEach(way ->
                byEnd.computeIfAbsent(way.end(), key -> new ArrayList<>()).add(way));
        Set<String> common = new LinkedHashSet<>();
        if (byEnd.size() > 1) {
            common.addAll(lights(all));
            byEnd.values().forEach(some -> common.retainAll(lights(some)));
        }
        Map<Fed, List<String>> rows = new LinkedHashMap<>();
        byEnd.forEach((end, some) -> {
            Set<String> lights = lights(some);
            lights.removeAll(common);
            Fed fed = new Fed(
                    joined(some, TroubleCards::input),
                    joined(some, this::bus),
                    lights.stream().map(this::thing).toList(),
                    plugs(some));
            rows.computeIfAbsent(fed, key -> new ArrayList<>()).add(Names.thing(end));
        });
        String desk = all.stream()
                .map(OneWay::desk)
                .filter(each -> each != null)
                .findFirst()
                .orElse("");
        boolean sound = trouble == Trouble.SOUND;
        boolean isOpen = IN_THE_OPEN.contains(names.kind(all.getFirst().end()));
        List<String> heads = new ArrayList<>(List.of(sound ? "Silent" : "Dark"));
        if (!sound) {
            heads.add("Its input");
        }
        if (!desk.isEmpty()) {
            heads.add("On " + Names.thing(desk));
        }
        heads.add("Are these on?");
        heads.add("Push in");
        List<List<String>> table = new ArrayList<>();
        if (!common.isEmpty()) {
            List<String> row = new ArrayList<>(List.of("all of them"));
            heads.subList(1, heads.size() - 2).forEach(head -> row.add(""));
            row.add(String.join("; ", common.stream().map(this::thing).toList()));
            row.add("");
            table.add(row);
        }
        rows.forEach((fed, ends) -> {
            List<String> row = new ArrayList<>(List.of(Words.and(ends)));
            if (!sound) {
                row.add(fed.input());
            }
            if (!desk.isEmpty()) {
                row.add(fed.bus());
            }
            row.add(String.join("; ", fed.lights()));
            row.add(String.join("; ", fed.plugs()));
            table.add(row);
        });
        List<String> toFillIn = new ArrayList<>();
        List<Step> steps = sound ? soundSteps(desk, room, all) : pictureSteps(desk, room, all, toFillIn);
        boolean anyPlugs = rows.keySet().stream().anyMatch(fed -> !fed.plugs().isEmpty());
        steps.add(new Step(
                null,
                "Find what is " + (sound ? "silent" : "dark")
                        + " in the table. Look at the lights of all that feeds it. "
                        + (sound ? wake(isOpen, !desk.isEmpty()) : "Switch on what is off."),
                "All lights are on.",
                null));
        if (anyPlugs) {
            steps.add(new Step(null, "Push in the plugs that stand in its row.", "They sit tight.", null));
        }
        Set<String> circuits = circuits(all);
        if (!circuits.isEmpty()) {
            steps.add(new Step(
                    null,
                    "Is a whole rack or room dark? A fuse or breaker may be off. Leave it. Call. Its name is "
                            + Words.or(circuits) + ".",
                    null,
                    "The fuse box"));
            toFillIn.add("where the fuse box is");
        }
        steps.add(new Step(null, "Still " + (sound ? "no sound" : "no picture") + "? Call.", null, null));
        List<String> cautions = new ArrayList<>();
        if (sound) {
            cautions.add(Texts.EARS);
        }
        if (all.stream().anyMatch(way -> names.isHigh(way.end()))) {
            cautions.add(Texts.HIGH);
        }
        cautions.add(Texts.MAINS);
        List<Card.Call> calls = names.callsAndMains(names.calls(trouble.skill, trouble.about));
        List<String> first = List.of("Do the steps in this order. Stop as soon as it works.");
        return Dealing.cards(List.of(new Card(
                id,
                title,
                null,
                first,
                steps,
                List.of(Lookup.of("What feeds what", heads, table)),
                cautions,
                calls,
                toFillIn)));
    }

    private List<Step> soundSteps(String desk, String room, List<OneWay> all) {
        List<Step> steps = new ArrayList<>();
        boolean voices = all.stream().anyMatch(way -> names.kind(way.source()) == Kind.MICROPHONE);
        String play = voices ? "Let someone talk into a mic." : "Play something on " + Words.or(sources(all)) + ".";
        if (desk.isEmpty()) {
            steps.add(new Step(null, play + " Is it on? Is it turned up?", "Its light is on.", null));
        } else {
            steps.add(new Step(
                    where(desk),
                    play + " Look at its meter on " + names.told(desk) + ". Its channel is on the card “"
                            + RunCards.title(desk) + "”.",
                    "If the meter moves, go to step " + (voices ? 4 : 3) + ".",
                    null));
            if (voices) {
                steps.add(new Step(
                        null,
                        "Is the mic on? Put fresh batteries in a radio mic. Push in both ends of the lead of any"
                                + " other.",
                        "The meter moves.",
                        null));
                steps.add(new Step(null, "Try one more mic. If that one works, use it.", "The meter moves.", null));
            } else {
                steps.add(new Step(null, "Is it on? Is it turned up? Push in its plugs.", "The meter moves.", null));
            }
            steps.add(new Step(
                    where(desk),
                    "Is its fader up? Is its mute off? Turn up what the table says too.",
                    "You hear it in the " + Words.said(room) + ".",
                    null));
        }
        return steps;
    }

    private List<Step> pictureSteps(String desk, String room, List<OneWay> all, List<String> toFillIn) {
        List<Step> steps = new ArrayList<>();
        List<String> ends = all.stream()
                .map(way -> "“" + Names.thing(way.end()) + "”")
                .distinct()
                .toList();
        steps.add(new Step(
                Words.said(room),
                "Is " + Words.or(ends) + " on? Press its input button until it shows the input in the table.",
                "It is lit.",
                "Its remote"));
        toFillIn.add("where the remote or the buttons of " + Words.and(ends) + " are");
        List<String> computers = all.stream()
                .map(OneWay::source)
                .filter(source -> COMPUTERS.contains(names.kind(source)))
                .distinct()
                .map(each -> "“" + Names.thing(each) + "”")
                .toList();
        if (!computers.isEmpty()) {
            steps.add(new Step(
                    null,
                    "Do you want to show what is on " + Words.or(computers) + "? Is it on? Press a key to wake it.",
                    "Its own screen is lit.",
                    null));
        }
        if (!desk.isEmpty()) {
            steps.add(new Step(
                    where(desk),
                    "Choose the picture once more on " + names.told(desk)
                            + ". Then try one more. If that one comes, look" + " up the first on the card “"
                            + RunCards.title(desk) + "” and push in its plug.",
                    "The picture is there.",
                    null));
        }
        return steps;
    }

    /** What shows a light on the ways, from the end back. */
    private Set<String> lights(List<OneWay> some) {
        Set<String> lights = new LinkedHashSet<>();
        for (OneWay way : some) {
            lights.addAll(new ArrayList<>(ways.lights(way)).reversed());
        }
        return lights;
    }

    private List<String> plugs(List<OneWay> some) {
        Set<Lead> plugs = new LinkedHashSet<>();
        some.forEach(way -> plugs.addAll(ways.plugs(way.after())));
        return plugs.stream().map(RunCards::plug).toList();
    }

    private static String joined(List<OneWay> some, Function<OneWay, String> text) {
        Set<String> all = new LinkedHashSet<>();
        some.stream().map(text).filter(each -> !each.isEmpty()).forEach(all::add);
        return String.join(", ", all);
    }

    private static String input(OneWay way) {
        List<Hop> hops = way.after();
        String input = "";
        for (Hop hop : hops) {
            if (hop.to().thing().equals(way.end()) && !hop.from().thing().equals(way.end())) {
                input = Words.said(hop.to().spot().name());
            }
        }
        return input;
    }

    /** What can be turned up or chosen between channel and output. */
    private String bus(OneWay way) {
        List<Address> inside = Ways.inside(way);
        List<Address> buses = trouble == Trouble.SOUND && !inside.isEmpty() ? inside.subList(1, inside.size()) : inside;
        return String.join(
                " and ",
                buses.stream().map(each -> Words.said(each.spot().name())).toList());
    }

    private Set<String> circuits(List<OneWay> all) {
        Set<String> circuits = new TreeSet<>();
        for (OneWay way : all) {
            Set<String> things = new LinkedHashSet<>(ways.lights(way));
            if (way.desk() != null) {
                things.add(way.desk());
            }
            for (String thing : things) {
                study.supplies().find(thing).ifPresent(supply -> {
                    if (supply.circuit() != null) {
                        circuits.add(supply.circuit());
                    }
                });
            }
        }
        return circuits;
    }

    private String thing(String id) {
        List<String> said = new ArrayList<>();
        String where = names.where(id);
        if (where != null) {
            said.add(where);
        }
        if (names.isHigh(id)) {
            said.add("up high");
        }
        if (names.kind(id) == Kind.PERSONAL_MIXER) {
            said.add("turn it up");
        } else if (ways.isOnBattery(id)) {
            said.add("fresh batteries");
        }
        return Names.thing(id) + (said.isEmpty() ? "" : " (" + String.join(", ", said) + ")");
    }

    private static List<String> sources(List<OneWay> all) {
        return all.stream().map(way -> Names.thing(way.source())).distinct().toList();
    }

    private String where(String thing) {
        String where = names.where(thing);
        return where == null ? "" : where;
    }
}
