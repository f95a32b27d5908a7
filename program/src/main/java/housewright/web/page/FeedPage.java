package housewright.web.page;

import housewright.app.FeedWords;
import housewright.app.Figures;
import housewright.app.Now;
import housewright.finding.Exempted;
import housewright.finding.Finding;
import housewright.finding.Subject;
import housewright.model.Feed;
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.LevelAt;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.OtherPath;
import housewright.signal.PairProof;
import housewright.study.Study;
import housewright.unit.Gain;
import housewright.unit.Level;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One feed, step by step, or where it stops and what mends it.
 *
 * @param note what the project says of it
 * @param accepted why the project lets it be, though it is not proven
 * @param ways its sources and destinations
 * @param kept for a never-feed that holds: what does not arrive where
 * @param mends the cheapest first
 * @param noMend what is said where there is none; null where there are some, or none is wanted
 * @param searching whether mends are wanted and not at hand yet
 * @param taken what the proof takes for granted
 * @param lacking figures that are missing
 * @param findings others about this feed
 */
public record FeedPage(
        String id,
        String state,
        String word,
        String answer,
        @Nullable String note,
        @Nullable String accepted,
        List<Way> ways,
        List<String> kept,
        List<Mending> mends,
        @Nullable String noMend,
        boolean searching,
        List<String> taken,
        List<String> lacking,
        List<FindingsPage.Row> findings) {
    public FeedPage {
        ways = List.copyOf(ways);
        kept = List.copyOf(kept);
        mends = List.copyOf(mends);
        taken = List.copyOf(taken);
        lacking = List.copyOf(lacking);
        findings = List.copyOf(findings);
    }

    /**
     * From one source to where it must arrive, or as far as it gets.
     *
     * @param sum delay, gain and least headroom; empty where it does not arrive
     * @param reason why it stops; empty where it does not
     * @param others other ways by which the same source arrives
     * @param lost for want of what the level is lost on the way; empty where it is not
     */
    public record Way(
            String from,
            String to,
            String state,
            String sum,
            List<Step> steps,
            String reason,
            List<String> others,
            String lost) {
        public Way {
            steps = List.copyOf(steps);
            others = List.copyOf(others);
        }

        public boolean anyDelay() {
            return steps.stream().anyMatch(step -> !step.after().isEmpty());
        }

        public boolean anyGain() {
            return steps.stream()
                    .anyMatch(step -> !step.gain().isEmpty() && !step.gain().startsWith("0"));
        }

        public boolean anyLevel() {
            return steps.stream().anyMatch(step -> !step.level().isEmpty());
        }

        public boolean anyHeadroom() {
            return steps.stream().anyMatch(step -> !step.headroom().isEmpty());
        }
    }

    /**
     * A step of a path; figures are sums up to its end.
     *
     * @param subject what makes it, as drawings name it: {@code cable:C101}
     */
    public record Step(
            int number, String after, String gain, String level, String headroom, String text, String subject) {}

    /**
     * @param key by which a form names it
     * @param cost money and time
     * @param also other feeds that it mends
     * @param taken what its price and lengths take for granted
     */
    public record Mending(String key, String cost, List<String> steps, String also, List<String> taken) {
        public Mending {
            steps = List.copyOf(steps);
            taken = List.copyOf(taken);
        }
    }

    public static FeedPage of(Now now, FeedProof proof, Links links) {
        return of(now.study(), proof, links);
    }

    /** At the moment of the study; mends are for the target only, and are not looked for here. */
    public static FeedPage of(Study study, FeedProof proof, Links links) {
        boolean mendable = study.moment().equals(Moment.target());
        Feed feed = proof.feed();
        boolean held = feed.never() && proof.proven();
        boolean searching = mendable && !study.knowsMends(proof);
        List<Mending> mends = mendable && !searching
                ? study.mends(proof).stream().map(mend -> mending(study, mend)).toList()
                : List.of();
        boolean wantsMend = mendable && !proof.proven() && !proof.pairs().isEmpty();
        Set<String> lacking = new LinkedHashSet<>();
        proof.pairs().forEach(pair -> lacking.addAll(pair.lacking()));
        return new FeedPage(
                feed.id(),
                FeedsPage.state(proof),
                FeedsPage.word(study, proof),
                FeedWords.answer(proof, study.moment()),
                feed.remarks().note(),
                study.findExemption(proof).map(Exempted::by).map(by -> by.why()).orElse(null),
                held ? List.of() : ways(study, proof),
                held ? kept(proof) : List.of(),
                mends,
                wantsMend && !searching && mends.isEmpty() ? FeedWords.noMend(study) : null,
                searching,
                taken(proof),
                List.copyOf(lacking),
                findings(study, feed, links));
    }

    private static List<String> kept(FeedProof proof) {
        Map<String, List<String>> from = new LinkedHashMap<>();
        for (PairProof pair : proof.pairs()) {
            from.computeIfAbsent(pair.from().toString(), source -> new ArrayList<>())
                    .add(pair.to().toString());
        }
        List<String> kept = new ArrayList<>();
        from.forEach((source, places) -> kept.add(source + " does not arrive at " + FeedsPage.ids(places) + "."));
        return kept;
    }

    /** What is taken for granted of every path, then what these take besides. */
    private static List<String> taken(FeedProof proof) {
        Set<String> taken = new LinkedHashSet<>();
        if (proof.pairs().stream().anyMatch(pair -> !pair.hops().isEmpty())) {
            taken.addAll(FeedWords.ALWAYS_TAKEN);
        }
        proof.pairs().forEach(pair -> taken.addAll(pair.assumed()));
        return List.copyOf(taken);
    }

    private static List<Way> ways(Study study, FeedProof proof) {
        List<Way> ways = new ArrayList<>();
        for (List<PairProof> group : FeedWords.alike(proof)) {
            PairProof first = group.getFirst();
            String to = FeedsPage.ids(
                    group.stream().map(pair -> pair.to().toString()).toList());
            ways.add(way(study, first, to));
        }
        return ways;
    }

    private static Way way(Study study, PairProof pair, String to) {
        boolean arrives = !pair.hops().isEmpty();
        List<LevelAt> levels = arrives ? study.signals().levels(pair) : List.of();
        List<Step> steps = arrives ? steps(pair, levels) : reached(study, pair);
        String lost = levels.stream()
                .map(LevelAt::lacking)
                .filter(lacking -> lacking != null)
                .findFirst()
                .orElse("");
        return new Way(
                pair.from().toString(),
                to,
                pair.state().word(),
                arrives ? sum(pair, levels) : "",
                steps,
                FeedWords.reason(pair),
                pair.others().stream().map(other -> other(pair, other)).toList(),
                lost);
    }

    private static List<Step> reached(Study study, PairProof pair) {
        if (pair.proven()) {
            return List.of();
        }
        List<Step> steps = new ArrayList<>();
        for (Hop hop : study.signals().reached(pair)) {
            steps.add(new Step(steps.size() + 1, "", "", "", "", hop.text(), subject(hop)));
        }
        return steps;
    }

    private static List<Step> steps(PairProof pair, List<LevelAt> levels) {
        long delay = pair.delayNanos();
        for (Hop hop : pair.hops()) {
            delay -= hop.delayNanos();
        }
        double gain = 0;
        List<Step> steps = new ArrayList<>();
        for (Hop hop : pair.hops()) {
            LevelAt at = levels.get(steps.size());
            delay += hop.delayNanos();
            gain += hop.gainDb();
            Level level = at.level();
            Gain headroom = at.headroom();
            steps.add(new Step(
                    steps.size() + 1,
                    Figures.milliseconds(delay),
                    Figures.decibels(gain),
                    level == null
                            ? ""
                            : Figures.trimmed(level.value(), 1) + "\u00A0"
                                    + level.unit().symbol(),
                    headroom == null ? "" : Figures.headroom(headroom.decibels()),
                    hop.text(),
                    subject(hop)));
        }
        return steps;
    }

    private static String subject(Hop hop) {
        return switch (hop.cause()) {
            case Cause.ByCable cable -> "cable:" + cable.id();
            case Cause.BySend send -> "network-send:" + send.id();
            case Cause.ByRadio radio -> "radio:" + radio.id();
            case Cause.ByRoute route -> "equipment:" + route.equipment();
            case Cause.ByTie tie -> "equipment:" + tie.equipment();
            case Cause.ByPatch patch -> "equipment:" + patch.equipment();
        };
    }

    private static String sum(PairProof pair, List<LevelAt> levels) {
        StringBuilder sum = new StringBuilder();
        sum.append(Figures.milliseconds(pair.delayNanos())).append(", ").append(Figures.decibels(pair.gainDb()));
        LevelAt tightest = null;
        double least = Double.MAX_VALUE;
        for (LevelAt level : levels) {
            Gain headroom = level.headroom();
            if (headroom != null && headroom.decibels() < least) {
                least = headroom.decibels();
                tightest = level;
            }
        }
        if (tightest != null) {
            sum.append(", headroom ")
                    .append(Figures.headroom(least))
                    .append(" at the least, at ")
                    .append(tightest.at().said());
        }
        return sum.append('.').toString();
    }

    /** From where it leaves the first way; what the two share need not be read twice. */
    private static String other(PairProof pair, OtherPath other) {
        int shared = 0;
        while (shared < other.hops().size() - 1
                && shared < pair.hops().size()
                && other.hops().get(shared).equals(pair.hops().get(shared))) {
            shared++;
        }
        List<String> steps = other.hops().subList(shared, other.hops().size()).stream()
                .map(Hop::text)
                .toList();
        String when =
                other.laterNanos() == 0 ? "at the same time" : Figures.milliseconds(other.laterNanos()) + " later";
        return String.join("; ", steps) + "; they meet at " + other.meetsAt().said() + " " + when + ", "
                + Figures.decibels(other.louderDb()) + " against the first.";
    }

    private static Mending mending(Study study, Mend mend) {
        int also = mend.alsoMends().size();
        return new Mending(
                Keys.of(mend.changes()),
                FeedWords.cost(study, mend),
                mend.steps(),
                also == 0 ? "" : "It mends " + FeedsPage.ids(mend.alsoMends()) + ", too.",
                mend.assumed());
    }

    private static List<FindingsPage.Row> findings(Study study, Feed feed, Links links) {
        Subject subject = Subject.feed(feed.id());
        List<Finding> about = study.findingsBeyondFeeds().stream()
                .filter(finding -> finding.subjects().contains(subject))
                .toList();
        return about.stream().map(finding -> FindingsPage.row(finding, links)).toList();
    }
}
