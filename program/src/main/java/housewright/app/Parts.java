package housewright.app;

import housewright.finding.Exempted;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Doc;
import housewright.model.Stage;
import housewright.model.change.Change;
import housewright.signal.Hop;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Stop;
import housewright.study.Study;
import housewright.study.Verdict;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the documents have in common. Places are written as in a project file, such as {@code desk.ch-1}. */
public final class Parts {
    private Parts() {}

    /** What the document is about, and the answer. */
    public record ProjectPart(
            String name,

            @Doc("How far the job is") Stage stage,

            @Doc("Which state of the hall was asked about") Asked moment,

            @Doc("The answer in a line") String verdict,
            @Doc("Feeds that are proven") int proven,

            @Doc("Feeds that say where they begin and must arrive; of these alone can anything be proven")
            int asked,

            @Doc("Feeds that do not say it yet") int unfinished,

            @Doc("Findings that matter from a later stage of the job on; they are counted and not listed")
            int findingsNotYetDue,

            @Doc("Findings that the project has switched off")
            List<ExemptedPart> exempted,

            @Doc("Rules that failed by a fault of the program; what they would have found is not known")
            List<FailurePart> failures) {}

    /** A finding that the project has switched off. */
    public record ExemptedPart(
            String rule,
            List<SubjectPart> subjects,
            String message,
            @Doc("The project's reason") String why) {}

    /** A rule that failed. */
    public record FailurePart(String rule, String what) {}

    /** An entity of the project. */
    public record SubjectPart(
            @Doc("What it is, such as feed, cable, equipment")
            String kind,

            String id) {}

    /** One step of a path. */
    public record HopPart(
            @Doc("What makes the step: section and id, such as cables.C014")
            String by,

            String from,
            String to,

            @Doc("The step by what a person can touch") String text,

            @Doc("Delay of this step, in ms") double delayMs,
            @Doc("Gain of this step, in dB") double gainDb) {}

    /** The cheapest set of changes that makes a feed true, breaks no other and lets no never-feed through. */
    public record MendPart(
            @Doc("Instructions, one sentence each") List<String> steps,

            @Doc("In the project's currency, from typical prices where the types' are")
            BigDecimal price,

            @Doc("Of work, roughly") int minutes,
            List<ChangePart> changes,

            @Doc("What the price or the lengths take for granted")
            List<String> assumed,

            @Doc("Ids of other feeds that it proves as well")
            List<String> alsoMends) {}

    /** One change of the project file. */
    public record ChangePart(
            @Doc(
                    "put: the entity is there with new content; drop: it is gone; patch and unpatch: an entry of a device's patch")
            Does does,

            @Doc("Section and id, such as cables.C014 or patch.desk")
            String at,

            @Doc("The patch entry, such as link:1 -> ch-1; null for entities") @Nullable
            String entry) {}

    /** States of the hall. */
    public enum Asked {
        TARGET,
        TODAY,
        BETWEEN
    }

    /** What a change does. */
    public enum Does {
        PUT,
        DROP,
        PATCH,
        UNPATCH
    }

    static ProjectPart project(Study study) {
        Verdict verdict = study.verdict();
        Findings findings = study.findings();
        return new ProjectPart(
                study.project().about().name(),
                study.project().about().stage(),
                moment(study.moment()),
                verdict.sentence(),
                verdict.proven(),
                verdict.asked(),
                verdict.unfinished(),
                findings.notYetDue().size(),
                findings.exempted().stream().map(Parts::exempted).toList(),
                findings.failures().stream()
                        .map(failure -> new FailurePart(failure.rule(), failure.what()))
                        .toList());
    }

    private static Asked moment(Moment moment) {
        return switch (moment) {
            case Moment.Today today -> Asked.TODAY;
            case Moment.Target target -> Asked.TARGET;
            case Moment.Partly partly -> Asked.BETWEEN;
        };
    }

    private static ExemptedPart exempted(Exempted exempted) {
        Finding finding = exempted.finding();
        return new ExemptedPart(
                finding.rule(),
                subjects(finding.subjects()),
                finding.message(),
                exempted.by().why());
    }

    static List<SubjectPart> subjects(List<Subject> subjects) {
        return subjects.stream()
                .map(subject -> new SubjectPart(subject.kind(), subject.id()))
                .toList();
    }

    static List<HopPart> hops(List<Hop> hops) {
        return hops.stream()
                .map(hop -> new HopPart(
                        hop.cause().entity(),
                        hop.from().toString(),
                        hop.to().toString(),
                        hop.text(),
                        milliseconds(hop.delayNanos()),
                        decibels(hop.gainDb())))
                .toList();
    }

    static MendPart mend(Mend mend) {
        return new MendPart(
                mend.steps(), mend.price(), mend.minutes(), changes(mend.changes()), mend.assumed(), mend.alsoMends());
    }

    static List<ChangePart> changes(List<Change> changes) {
        return changes.stream().map(Parts::change).toList();
    }

    private static ChangePart change(Change change) {
        return switch (change) {
            case Change.Put put -> new ChangePart(Does.PUT, put.section().path() + "." + put.id(), null);
            case Change.Drop drop -> new ChangePart(Does.DROP, drop.section().path() + "." + drop.id(), null);
            case Change.Patch patch ->
                new ChangePart(
                        Does.PATCH,
                        "patch." + patch.device(),
                        patch.entry().join().text());
            case Change.Unpatch unpatch ->
                new ChangePart(Does.UNPATCH, "patch." + unpatch.device(), unpatch.from() + " -> " + unpatch.to());
            case Change.Repatch repatch -> new ChangePart(Does.PUT, "patch." + repatch.device(), null);
            case Change.Pair pair ->
                new ChangePart(pair.channels().isEmpty() ? Does.DROP : Does.PUT, "pairs." + pair.id(), null);
            case Change.Describe describe -> new ChangePart(Does.PUT, "project", null);
            case Change.Reckon reckon -> new ChangePart(Does.PUT, "budget and practice", null);
            case Change.Exempt exempt -> new ChangePart(Does.PUT, "exempt", null);
            case Change.Accept accept ->
                new ChangePart(accept.plan().times().isEmpty() ? Does.DROP : Does.PUT, "plan", null);
            case Change.Arrange arrange ->
                new ChangePart(Does.PUT, arrange.section().path(), null);
        };
    }

    static List<FindingPart> findings(List<Finding> findings) {
        return findings.stream()
                .map(finding -> new FindingPart(
                        finding.rule(),
                        finding.severity(),
                        subjects(finding.subjects()),
                        finding.message(),
                        finding.evidence().stream().map(Parts::value).toList(),
                        finding.source().text(),
                        finding.fixes().stream().map(Parts::fix).toList()))
                .toList();
    }

    private static ValuePart value(Value value) {
        Double limit = value.limit();
        return new ValuePart(value.what(), rounded(value.found()), limit == null ? null : rounded(limit), value.unit());
    }

    private static FixPart fix(Fix fix) {
        return new FixPart(fix.words(), changes(fix.changes()));
    }

    /** One thing that is wrong. */
    public record FindingPart(
            @Doc("The rule that found it; a project can exempt it by this id")
            String rule,

            @Doc(
                    "stop: somebody could be hurt, something would be damaged, or the job fails on the day; fix: settle it before the visit; note")
            Severity severity,

            @Doc("What it is about, the one to look at first in front")
            List<SubjectPart> subjects,

            String message,
            @Doc("The figures it rests on") List<ValuePart> evidence,
            @Doc("What says that it is a fault") String source,
            @Doc("Ways to put it right, the best first") List<FixPart> fixes) {}

    /** One figure a finding rests on. */
    public record ValuePart(
            @Doc("What it is a figure of") String what,
            double found,

            @Doc("The limit it breaks; null where there is none") @Nullable
            Double limit,

            @Doc("Unit of both; empty for a plain count") String unit) {}

    /** A way to put a finding right. */
    public record FixPart(
            String words,

            @Doc("Changes that do it; empty where only a person can")
            List<ChangePart> changes) {}

    static @Nullable String stopsAt(PairProof pair) {
        Stop stop = pair.stop();
        return stop == null || stop.at() == null ? null : stop.at().toString();
    }

    static @Nullable String why(PairProof pair) {
        Stop stop = pair.stop();
        return stop == null ? null : stop.why();
    }

    static double milliseconds(long nanos) {
        return rounded(nanos / 1e6);
    }

    static double decibels(double gain) {
        return rounded(gain);
    }

    /** To a thousandth: what is beyond is left over from the arithmetic. */
    static double rounded(double value) {
        return Math.round(value * 1000) / 1000.0;
    }
}
