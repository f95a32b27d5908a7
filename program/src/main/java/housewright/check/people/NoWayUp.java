package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Work overhead, and nothing on the job that gets anybody up there. */
public final class NoWayUp implements Rule {
    static final Limit HIGH = Limit.most("height of work from the floor or from steps", 3.5, "m");

    private static final Card CARD = new Card(
            "no-way-up",
            "Is there a way up to everything that is to be hung, moved or taken down?",
            Set.of(Severity.FIX),
            new Source.Published(
                    "TRBS 2121 part 2 (Germany), as quoted on public pages",
                    "standing on steps up to 2 m high without a limit of time; that hands are 1.5 m over the feet is common practice"),
            Stage.ORDER,
            List.of(HIGH));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        if (evidence.project().hires().values().stream().anyMatch(Overhead::isWayUp)) {
            return Stream.empty();
        }
        double limit = evidence.limit(CARD, HIGH);
        Map<String, Double> places = new LinkedHashMap<>();
        int things = 0;
        for (Overhead.Work work : Overhead.work(evidence)) {
            if (work.height() > limit) {
                things++;
                places.put(work.place().id(), work.height());
            }
        }
        if (places.isEmpty()) {
            return Stream.empty();
        }
        double highest =
                places.values().stream().mapToDouble(each -> each).max().orElseThrow();
        List<Subject> subjects = new ArrayList<>();
        places.keySet().forEach(place -> subjects.add(new Subject("place", place)));
        return Stream.of(CARD.finding(
                Severity.FIX,
                subjects,
                Wording.counted(things, "thing is", "things are") + " to be hung, moved or taken down up to "
                        + Wording.length(evidence, highest) + " above the floor, at "
                        + Wording.things(places.keySet(), 4)
                        + ", and nothing is entered that gets anybody up there.",
                List.of(new Value("height", highest, limit, "m")),
                List.of(Fix.of("Enter the lift or tower under hires, with the skill its user needs, the hall's own at"
                        + " per-day: 0. A ladder is no place for work with both hands; local law decides."))));
    }
}
