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
import housewright.model.Practice;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Work overhead, and nothing on the job that gets anybody up there. */
public final class NoWayUp implements Rule {
    static final Limit HIGH = Limit.most("height of work from the floor or from steps", 3.5, "m");

    private static final Card CARD = new Card(
            "no-way-up",
            "Is there a way up to everything that is to be hung, moved, secured, taken down or set up there?",
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
        if (evidence.project().hires().values().stream().anyMatch(hire -> hire.isLift() || hire.isTower())) {
            return Stream.empty();
        }
        double limit = Math.min(evidence.limit(CARD, HIGH), ownSteps(evidence));
        List<Finding> findings = new ArrayList<>();
        List<Overhead.Work> hung = high(Overhead.work(evidence), limit);
        if (!hung.isEmpty()) {
            Set<String> things = new LinkedHashSet<>();
            hung.forEach(each -> things.add(each.thing().id()));
            findings.add(finding(
                    evidence,
                    hung,
                    limit,
                    Wording.counted(things.size(), "thing is", "things are")
                            + " to be hung, moved, secured or taken down",
                    "",
                    ""));
        }
        List<Overhead.Work> set = high(Overhead.readdressed(evidence), limit);
        if (!set.isEmpty()) {
            List<String> lamps =
                    set.stream().map(each -> each.thing().id()).distinct().toList();
            findings.add(finding(
                    evidence,
                    set,
                    limit,
                    Wording.things(lamps, 4) + (lamps.size() == 1 ? " gets" : " get") + " another address",
                    "nobody has said that it can be set from the floor",
                    "Where the type takes it over the cable, say `rdm: yes` under its light; or enter"));
        }
        return findings.stream();
    }

    /** How high the company itself goes on its steps, in m; as high as one likes where it does not say. */
    private static double ownSteps(Evidence evidence) {
        Practice own = evidence.project().practice();
        return own == null || own.steps() == null
                ? Double.MAX_VALUE
                : own.steps().metres();
    }

    private static List<Overhead.Work> high(List<Overhead.Work> all, double limit) {
        return all.stream().filter(each -> each.height() > limit).toList();
    }

    private static Finding finding(
            Evidence evidence, List<Overhead.Work> all, double limit, String what, String unsaid, String first) {
        Set<String> places = new LinkedHashSet<>();
        double highest = 0;
        for (Overhead.Work each : all) {
            places.add(each.place().id());
            highest = Math.max(highest, each.height());
        }
        return CARD.finding(
                Severity.FIX,
                places.stream().map(place -> new Subject("place", place)).toList(),
                what + (places.size() == 1 ? " " : " up to ") + Wording.length(evidence, highest)
                        + " above the floor, at " + Wording.things(places, 4)
                        + (unsaid.isEmpty() ? ", and" : "; " + unsaid + ", and")
                        + " nothing is entered that gets anybody up there.",
                List.of(new Value("height", highest, limit, "m")),
                List.of(Fix.of((first.isEmpty() ? "Enter" : first)
                        + " the lift or tower under hires, with the skill its user needs, the hall's own at"
                        + " per-day: 0. A ladder is no place for work with both hands; local law decides.")));
    }
}
