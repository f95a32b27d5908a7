package housewright.web.page;

import housewright.app.Figures;
import housewright.app.Now;
import housewright.drawing.Sheet;
import housewright.drawing.State;
import housewright.finding.Finding;
import housewright.finding.Subject;
import housewright.model.Circuit;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.SpacePoint;
import housewright.power.CircuitLoad;
import housewright.power.Supply;
import housewright.signal.Moment;
import housewright.unit.RackUnits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Racks to scale, and the circuits with what hangs on them.
 *
 * @param rack the one that is drawn; empty where there is none
 * @param units how many it has
 * @param loose what can be put into it: things for a rack, those without a unit first
 * @param other on no circuit that is known, though they take mains
 * @param findings about circuits, racks and what is in them
 */
public record RacksPage(
        String answer,
        List<Choice> racks,
        List<Choice> states,
        String rack,
        int units,
        DrawnPart drawn,
        List<Loose> loose,
        List<CircuitRow> circuits,
        List<String> other,
        List<FindingsPage.Row> findings,
        long base,
        Map<String, String> typed,
        @Nullable ThingPart thing) {
    public RacksPage {
        racks = List.copyOf(racks);
        states = List.copyOf(states);
        loose = List.copyOf(loose);
        circuits = List.copyOf(circuits);
        other = List.copyOf(other);
        findings = List.copyOf(findings);
        typed = Map.copyOf(typed);
    }

    /** Something that goes into a rack. */
    public record Loose(String id, String words, boolean waiting) {}

    /**
     * A circuit.
     *
     * @param stated the sum of what is stated, and the current it makes, such as "410 W, 1.9 A"; empty where nothing is
     * @param things on it, each with its watts
     * @param unstated what has no figure, so that the sum is too low by it
     */
    public record CircuitRow(
            String id,
            String href,
            String rating,
            String places,
            String things,
            String stated,
            String unstated,
            List<ThingPart.Told> told) {
        public CircuitRow {
            told = List.copyOf(told);
        }
    }

    /** @param rack null where there is none */
    public record Asked(
            State state, @Nullable String rack, @Nullable String thing) {}

    /** What was typed into a field before; empty where nothing was. */
    public String was(String field) {
        return typed.getOrDefault(field, "");
    }

    public static RacksPage of(
            Now now, Asked asked, List<String> racks, Sheet sheet, Links links, String job, Map<String, String> typed) {
        Project project = now.project();
        Query here = Query.of(job + "/racks")
                .with("rack", asked.rack())
                .with(
                        "state",
                        asked.state() == State.TARGET ? "" : asked.state().word());
        Query kept = here.with("thing", asked.thing());
        List<Choice> choices = racks.stream()
                .map(rack -> new Choice(rack, kept.with("rack", rack).href(), rack.equals(asked.rack())))
                .toList();
        List<Choice> states = new ArrayList<>();
        for (State each : State.values()) {
            String label = each.title().substring(0, 1).toUpperCase(Locale.ROOT)
                    + each.title().substring(1);
            states.add(new Choice(label, kept.with("state", each.word()).href(), each == asked.state()));
        }
        Place place = asked.rack() == null ? null : project.venue().places().get(asked.rack());
        List<Loose> loose = loose(now, asked.rack());
        List<CircuitRow> circuits = circuits(now, links);
        return new RacksPage(
                answer(racks, loose, circuits),
                choices,
                states,
                asked.rack() == null ? "" : asked.rack(),
                place == null || place.rack() == null ? 0 : place.rack().units(),
                DrawnPart.of(sheet, here, "racks", asked.thing()),
                loose,
                circuits,
                other(now),
                findings(now, racks, links),
                now.revision(),
                typed,
                asked.thing() == null
                        ? null
                        : ThingPart.of(now, links, job, asked.thing(), false).orElse(null));
    }

    private static String answer(List<String> racks, List<Loose> loose, List<CircuitRow> circuits) {
        long waiting = loose.stream().filter(Loose::waiting).count();
        long untold =
                circuits.stream().filter(each -> !each.unstated().isEmpty()).count();
        return count(racks.size(), "rack")
                + (waiting == 0
                        ? ""
                        : ", " + waiting + (waiting == 1 ? " thing" : " things") + " for a rack without a unit yet")
                + "; " + count(circuits.size(), "circuit")
                + (untold == 0 ? "." : ", " + untold + " of them with loads that nobody has stated.");
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static boolean isThere(Equipment thing) {
        return Moment.target().isThere("equipment", thing.id(), thing.life());
    }

    /** What is at this rack in front, then what has no place yet, then the nearest; of each what waits for a unit first. */
    private static List<Loose> loose(Now now, @Nullable String rack) {
        record Far(double metres, Loose loose) {}
        List<Far> all = new ArrayList<>();
        for (Equipment thing : now.project().equipment().values()) {
            RackUnits high = now.study()
                    .types()
                    .findModel(thing.model())
                    .map(Model::rack)
                    .orElse(null);
            if (high == null || !isThere(thing) || thing.partOf() != null) {
                continue;
            }
            boolean waits = thing.unit() == null;
            String where = thing.at() == null ? "no place yet" : thing.at() + (waits ? "" : ", unit " + thing.unit());
            all.add(new Far(
                    thing.at() == null ? Double.MIN_VALUE : far(now, thing.at(), rack),
                    new Loose(thing.id(), thing.id() + ", " + high.text() + ", " + where, waits)));
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(Far::metres)
                        .thenComparing(each -> !each.loose().waiting()))
                .map(Far::loose)
                .toList();
    }

    /** Metres straight from place to place; 0 for the same, and no end where one has no position. */
    private static double far(Now now, String place, @Nullable String rack) {
        if (place.equals(rack)) {
            return 0;
        }
        SpacePoint one = at(now, place);
        SpacePoint other = rack == null ? null : at(now, rack);
        return one == null || other == null
                ? Double.POSITIVE_INFINITY
                : Math.hypot(
                        Math.hypot(
                                one.x().metres() - other.x().metres(),
                                one.y().metres() - other.y().metres()),
                        one.z().metres() - other.z().metres());
    }

    private static @Nullable SpacePoint at(Now now, String id) {
        Place place = now.project().venue().places().get(id);
        return place == null ? null : place.at();
    }

    private static List<CircuitRow> circuits(Now now, Links links) {
        return now.study().supplies().circuits().stream()
                .map(load -> row(now, load, links))
                .toList();
    }

    private static CircuitRow row(Now now, CircuitLoad load, Links links) {
        Circuit circuit = load.circuit();
        List<String> said = load.on().stream()
                .map(each -> each.id() + (each.own() > 0 ? " " + Figures.trimmed(each.own(), 1) + "\u00A0W" : ""))
                .toList();
        Double amperes = load.amperes();
        String sum = load.watts() == 0
                ? ""
                : Figures.trimmed(load.watts(), 1) + "\u00A0W"
                        + (amperes == null ? "" : ", " + Figures.trimmed(amperes, 1) + "\u00A0A");
        Subject subject = new Subject("circuit", circuit.id());
        String rating = Stream.of(circuit.rating(), circuit.voltage())
                .filter(each -> each != null)
                .map(each -> each.text())
                .reduce((one, other) -> one + ", " + other)
                .orElse("not stated");
        List<ThingPart.Told> told = Stream.concat(
                        now.study().findingsBeyondFeeds().stream(), now.study().laterBeyondFeeds().stream())
                .filter(finding -> isAbout(finding, subject.kind(), circuit.id()))
                .map(finding -> new ThingPart.Told(finding.severity().word(), finding.message(), ""))
                .toList();
        String href = links.of(subject);
        return new CircuitRow(
                circuit.id(),
                href == null ? "" : href,
                rating + (circuit.dimmed() ? ", dimmed" : ""),
                String.join(", ", circuit.places()),
                String.join(", ", said),
                sum,
                String.join(", ", load.unknown()),
                told);
    }

    private static boolean isAbout(Finding finding, String kind, String id) {
        return finding.subjects().stream()
                .anyMatch(each -> each.id().equals(id)
                        && (each.kind().equals(kind) || each.kind().equals("venue." + kind)));
    }

    /** What takes power, and no circuit leads to it. */
    private static List<String> other(Now now) {
        return now.study().supplies().supplies().stream()
                .filter(each -> each.circuit() == null && each.own() > 0)
                .map(Supply::id)
                .toList();
    }

    private static List<FindingsPage.Row> findings(Now now, List<String> racks, Links links) {
        Set<String> rackPlaces = new TreeSet<>(racks);
        return now.study().findingsBeyondFeeds().stream()
                .filter(finding -> finding.subjects().stream()
                        .anyMatch(each -> (each.kind().endsWith("place") && rackPlaces.contains(each.id()))
                                || finding.rule().contains("rack")))
                .map(finding -> FindingsPage.row(finding, links))
                .toList();
    }
}
