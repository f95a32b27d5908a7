package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.Hop;
import housewright.signal.Loop;
import housewright.signal.Media;
import housewright.signal.Signals;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Sound that comes round to where it began without losing level: it rings, or the far end of a call hears itself. A
 * path on paper has its faders open, so the loop may be kept down by hand on the day; that is no way to leave it, hence
 * a fix and not a stop. A picture that comes round (a picture in a picture) and control data harm nobody.
 */
public final class LoopAtUnity implements Rule {
    private static final int NAMED_STEPS = 6;

    private static final Card CARD = new Card(
            "loop-at-unity",
            "Does any sound come round to where it began, as loud as before or louder?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Signals signals = evidence.signals();
        return signals.loops().stream().map(loop -> finding(loop, isSound(signals, loop)));
    }

    private static Finding finding(Loop loop, boolean sound) {
        Set<Subject> subjects = new LinkedHashSet<>();
        Set<String> things = new LinkedHashSet<>();
        for (Hop hop : loop.hops()) {
            subjects.add(Subject.equipment(hop.from().thing()));
            things.add(Words.said(hop.from().thing()));
        }
        for (Hop hop : loop.hops()) {
            subjects.add(Subject.at(hop.cause().entity()));
        }
        String gain = loop.gainDb() == 0 ? "without losing level" : "louder than before";
        String message = things.size() == 1
                ? "A signal in " + things.iterator().next() + " comes round to where it began " + gain + ": "
                        + steps(loop) + "."
                : "A signal comes round through " + Words.and(List.copyOf(things)) + " to where it began " + gain + ": "
                        + steps(loop) + ".";
        Fix fix = Fix.of("Send each a mix that leaves out what came from there, or take away one of these joins.");
        return CARD.finding(
                sound ? Severity.FIX : Severity.NOTE,
                List.copyOf(subjects),
                message,
                List.of(new Value("gain of one turn", loop.gainDb(), 0.0, "dB")),
                List.of(fix));
    }

    private static String steps(Loop loop) {
        List<String> steps = new ArrayList<>();
        for (Hop hop : loop.hops()) {
            if (steps.size() == NAMED_STEPS) {
                int more = loop.hops().size() - NAMED_STEPS;
                steps.add("and " + more + (more == 1 ? " more step" : " more steps"));
                break;
            }
            steps.add(hop.text());
        }
        return String.join("; ", steps);
    }

    private static boolean isSound(Signals signals, Loop loop) {
        return loop.hops().stream()
                .flatMap(hop -> signals.findMedia(hop.to()).stream())
                .allMatch(media -> media == Media.AUDIO);
    }
}
