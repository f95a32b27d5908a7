package housewright.study;

import housewright.check.Checks;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Findings;
import housewright.model.Library;
import housewright.model.Project;
import housewright.model.Types;
import housewright.signal.FeedProof;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.Signals;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One project at one moment, and everything that follows from it. Safe to ask from several threads; every answer is
 * worked out once. Equal projects give equal answers.
 */
public final class Study implements Evidence {
    private final Types types;
    private final Moment moment;
    private final List<Rule> rules;
    private final Map<Moment, Study> byMoment;
    private final Once<Signals> signals;
    private final Once<Findings> findings;
    private final Once<Verdict> verdict;
    private final Map<String, Once<List<Mend>>> mends = new ConcurrentHashMap<>();

    private Study(Types types, Moment moment, List<Rule> rules, Map<Moment, Study> byMoment) {
        this.types = types;
        this.moment = moment;
        this.rules = rules;
        this.byMoment = byMoment;
        this.signals = new Once<>(() -> Signals.of(types.project(), types.library(), moment));
        this.findings = new Once<>(() -> Checks.run(rules, this));
        this.verdict = new Once<>(() -> Verdict.of(this));
    }

    /** The project when the work is done. */
    public static Study of(Project project, Library library) {
        return of(project, library, RuleCatalogue.all());
    }

    static Study of(Project project, Library library, List<Rule> rules) {
        Map<Moment, Study> byMoment = new ConcurrentHashMap<>();
        Study target = new Study(new Types(project, library), Moment.target(), rules, byMoment);
        byMoment.put(target.moment, target);
        return target;
    }

    /** The same project at another moment. */
    public Study at(Moment other) {
        return byMoment.computeIfAbsent(other, each -> new Study(types, each, rules, byMoment));
    }

    /** What becomes of it with another content of the project, at the same moment. */
    public Study with(Project changed) {
        return of(changed, types.library(), rules).at(moment);
    }

    @Override
    public Project project() {
        return types.project();
    }

    @Override
    public Types types() {
        return types;
    }

    @Override
    public Moment moment() {
        return moment;
    }

    @Override
    public Signals signals() {
        return signals.get();
    }

    /** Every feed's proof, in the order of the file. */
    public List<FeedProof> proofs() {
        return signals().proofs();
    }

    public Optional<FeedProof> findProof(String feed) {
        return signals().findProof(feed);
    }

    @Override
    public List<Mend> mends(FeedProof proof) {
        if (proof.proven() || proof.pairs().isEmpty()) {
            return List.of();
        }
        return mends.computeIfAbsent(
                        proof.feed().id(),
                        feed -> new Once<>(() -> List.copyOf(signals().mends(proof))))
                .get();
    }

    /** What the rules find. */
    public Findings findings() {
        return findings.get();
    }

    /** The answer in a line. */
    public Verdict verdict() {
        return verdict.get();
    }
}
