package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Stop;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A rule that asks for one state of one kind of feed: what the feed asks for is the limit, its mends are the fixes. What
 * fails today and holds in the target is what the job is for, and no finding.
 */
abstract class FeedRule implements Rule {
    private final boolean never;
    private final FeedState state;

    FeedRule(boolean never, FeedState state) {
        this.never = never;
        this.state = state;
    }

    /** What is wrong with this pair, the worst of the feed's, as a sentence without its full stop. */
    abstract String message(FeedProof proof, PairProof pair);

    /** What to do where no mend is known. */
    abstract String advice(FeedProof proof, PairProof pair);

    List<Value> evidence(FeedProof proof, PairProof pair) {
        return List.of();
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        return evidence.signals().proofs().stream()
                .filter(proof -> proof.feed().never() == never && proof.state() == state)
                .filter(proof -> !proof.pairs().isEmpty() && !comesWithTheWork(evidence, proof))
                .map(proof -> finding(evidence, proof));
    }

    private Finding finding(Evidence evidence, FeedProof proof) {
        List<PairProof> failing =
                proof.pairs().stream().filter(pair -> pair.state() == state).toList();
        PairProof first = failing.getFirst();
        String extent = failing.size() == 1 && proof.pairs().size() == 1
                ? "."
                : " (" + failing.size() + " of its " + proof.pairs().size() + " ways).";
        List<Value> values = new ArrayList<>(evidence(proof, first));
        if (proof.pairs().size() > 1) {
            values.add(new Value("ways that fail", failing.size(), 0.0, ""));
        }
        List<Fix> fixes = new ArrayList<>();
        for (Mend mend : evidence.mends(proof)) {
            fixes.add(new Fix(String.join(" ", mend.steps()), mend.changes()));
        }
        if (fixes.isEmpty()) {
            fixes.add(Fix.of(advice(proof, first)));
        }
        Severity severity = card().severities().iterator().next();
        List<Subject> subjects = List.of(Subject.feed(proof.feed().id()));
        return card().finding(severity, subjects, message(proof, first) + extent, values, fixes);
    }

    private static boolean comesWithTheWork(Evidence evidence, FeedProof proof) {
        return evidence.moment().equals(Moment.today())
                && evidence.at(Moment.target())
                        .signals()
                        .findProof(proof.feed().id())
                        .filter(FeedProof::proven)
                        .isPresent();
    }

    static String because(PairProof pair) {
        Stop stop = pair.stop();
        return stop == null ? "" : ": " + stop.why();
    }

    /** Signal rules matter once the target is being designed. */
    static final Stage DUE = Stage.DESIGN;
}
