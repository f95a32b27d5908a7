package housewright.check.power;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Hanging;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Something hangs over people, and what has to be known first is not: who stands for what the point carries, what each
 * thing weighs, whether it has a secondary attachment. One finding for a point; nothing is guessed.
 */
public final class HangingDataMissing implements Rule {
    private static final Card CARD = new Card(
            "hanging-data-missing",
            "Is everything known of every point overhead: who states its limit, each weight, each secondary attachment?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Overhead.Point point : Overhead.points(evidence)) {
            List<String> missing = new ArrayList<>();
            List<String> write = new ArrayList<>();
            Hanging hang = point.place().hang();
            if (hang == null || hang.limit() == null) {
                missing.add("what it carries");
                write.add("`hang: {limit: …, stated-by: …}` at the place");
            } else if (point.limit() == null) {
                missing.add("who states its limit");
                write.add("`stated-by`, with name and date");
            }
            List<String> weight = point.things().stream()
                    .filter(each -> each.model() == null || each.model().weight() == null)
                    .map(Present::id)
                    .toList();
            if (!weight.isEmpty()) {
                missing.add("what " + Said.things(weight) + (weight.size() == 1 ? " weighs" : " weigh"));
                write.add("`weight` in the type");
            }
            List<String> secondary = point.things().stream()
                    .filter(each -> each.equipment().secondary() == null)
                    .map(Present::id)
                    .toList();
            if (!secondary.isEmpty()) {
                missing.add("whether " + Said.things(secondary) + (secondary.size() == 1 ? " has" : " have")
                        + " a secondary attachment");
                write.add("`secondary: fitted` or `missing`");
            }
            if (!missing.isEmpty()) {
                findings.add(finding(evidence, point, missing, write));
            }
        }
        Overhead.ofUnknownHeight(evidence).forEach((place, things) -> findings.add(unknownHeight(place, things)));
        List<String> nowhere = Overhead.nowhere(evidence);
        if (!nowhere.isEmpty()) {
            findings.add(nowhere(nowhere));
        }
        return findings.stream();
    }

    private static Finding unknownHeight(String place, List<String> things) {
        String said = Words.said(place);
        return CARD.finding(
                Severity.STOP,
                Said.subjects(Said.place(place), things),
                "Nobody has said how high " + said + " is, so it is not known whether " + Said.things(things)
                        + (things.size() == 1 ? " hangs" : " hang") + " over people. It blocks any work there.",
                List.of(new Value("facts missing", 1, 0.0, "")),
                List.of(Fix.of("Measure it, and write `at: [along, across, up]` at the place; `hang: {limit: …,"
                        + " stated-by: …}` too, where things hang there. " + Said.RIGGING)));
    }

    private static Finding nowhere(List<String> things) {
        return CARD.finding(
                Severity.STOP,
                Said.equipment(things),
                Said.things(things) + (things.size() == 1 ? " hangs" : " hang")
                        + " somewhere, and nobody has said where: what "
                        + (things.size() == 1 ? "it weighs" : "they weigh") + " is in the sum of no point.",
                List.of(new Value("facts missing", 1, 0.0, "")),
                List.of(Fix.of("Say under at: where it hangs. " + Said.RIGGING)));
    }

    private static Finding finding(Evidence evidence, Overhead.Point point, List<String> missing, List<String> write) {
        return CARD.finding(
                Severity.STOP,
                Said.subjects(Said.place(point.place().id()), point.ids()),
                "At " + point.said() + " " + Said.things(point.ids())
                        + (point.things().size() == 1 ? " hangs" : " hang") + " over people, and it is not known "
                        + Said.some(missing) + ". It blocks "
                        + Overhead.blocked(evidence, point.place().id()) + ".",
                List.of(new Value("facts missing", missing.size(), 0.0, "")),
                List.of(Fix.of("Find out, and write " + Said.some(write) + ". " + Said.RIGGING)));
    }
}
