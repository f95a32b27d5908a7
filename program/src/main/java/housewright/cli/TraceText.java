package housewright.cli;

import housewright.app.FeedWords;
import housewright.app.Figures;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.LevelAt;
import housewright.signal.Mend;
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

/** One feed step by step. */
final class TraceText {
    private static final int DELAY = 10;
    private static final int GAIN = 10;
    private static final int LEVEL = 12;
    private static final int HEADROOM = 10;

    private final Page page;
    private final Study study;
    private final FeedProof proof;

    TraceText(Page page, Study study, FeedProof proof) {
        this.page = page;
        this.study = study;
        this.proof = proof;
    }

    Page write() {
        page.hanging(
                FeedText.ink(proof.state()), FeedText.mark(proof.state()), FeedWords.answer(proof, study.moment()));
        if (proof.feed().remarks().note() != null) {
            page.hanging("  ", proof.feed().remarks().note());
        }
        if (proof.feed().never() && proof.proven()) {
            held();
        } else {
            pairs();
        }
        if (!proof.proven() && !proof.pairs().isEmpty()) {
            mends();
        }
        return page;
    }

    /** What is kept out, from each source. */
    private void held() {
        Map<String, List<String>> from = new LinkedHashMap<>();
        Set<String> assumed = new LinkedHashSet<>();
        for (PairProof pair : proof.pairs()) {
            from.computeIfAbsent(pair.from().toString(), source -> new ArrayList<>())
                    .add(pair.to().toString());
            assumed.addAll(pair.assumed());
        }
        from.forEach((source, places) ->
                page.blank().hanging("  ", source + " does not arrive at " + String.join(", ", places) + "."));
        if (!assumed.isEmpty()) {
            page.hanging("  Taken for granted: ", String.join("; ", assumed) + ".");
        }
    }

    private void pairs() {
        for (List<PairProof> group : FeedWords.alike(proof)) {
            String to = String.join(
                    ", ", group.stream().map(pair -> pair.to().toString()).toList());
            page.blank();
            page.hanging(Ink.STRONG, group.getFirst().from() + " → ", to);
            pair(group.getFirst());
        }
    }

    private void pair(PairProof pair) {
        if (!pair.hops().isEmpty()) {
            page.line("  " + sum(pair));
            page.blank();
            hops(pair);
        } else if (pair.proven()) {
            page.line("  Nothing arrives.");
        } else {
            reached(study.signals().reached(pair));
        }
        String reason = FeedWords.reason(pair);
        if (!reason.isEmpty()) {
            page.hanging("  ", reason);
        }
        for (OtherPath other : pair.others()) {
            other(pair, other);
        }
        if (!pair.hops().isEmpty()) {
            String more = pair.assumed().isEmpty() ? "" : "; " + String.join("; ", pair.assumed());
            page.hanging("  Taken for granted: ", String.join("; ", FeedWords.ALWAYS_TAKEN) + more + ".");
        } else if (!pair.assumed().isEmpty()) {
            page.hanging("  Taken for granted: ", String.join("; ", pair.assumed()) + ".");
        }
        if (!pair.lacking().isEmpty()) {
            page.hanging("  Not known, so left out: ", String.join("; ", pair.lacking()) + ".");
        }
    }

    private void reached(List<Hop> hops) {
        for (int i = 0; i < hops.size(); i++) {
            String number = Integer.toString(i + 1);
            page.hanging(
                    " ".repeat(Math.max(1, 4 - number.length())) + number + "   ",
                    hops.get(i).text());
        }
    }

    private String sum(PairProof pair) {
        StringBuilder sum = new StringBuilder();
        sum.append(Figures.milliseconds(pair.delayNanos())).append(", ").append(Figures.decibels(pair.gainDb()));
        LevelAt tightest = null;
        double least = Double.MAX_VALUE;
        for (LevelAt level : study.signals().levels(pair)) {
            Gain headroom = level.headroom();
            if (headroom != null && headroom.decibels() < least) {
                least = headroom.decibels();
                tightest = level;
            }
        }
        if (tightest != null) {
            sum.append(", headroom ")
                    .append(Figures.headroom(least))
                    .append(" at the least (")
                    .append(tightest.at().said())
                    .append(')');
        }
        return sum.append('.').toString();
    }

    /** Figures first, in columns as wide as they must be, then what can be touched. */
    private void hops(PairProof pair) {
        List<Hop> hops = pair.hops();
        List<LevelAt> levels = study.signals().levels(pair);
        boolean anyLevel = levels.stream().anyMatch(level -> level.level() != null);
        boolean anyHeadroom = levels.stream().anyMatch(level -> level.headroom() != null);
        boolean anyGain = hops.stream().anyMatch(hop -> hop.gainDb() != 0);
        page.line(Ink.FAINT, columns("", "after", anyGain, "gain", anyLevel, "nominal", anyHeadroom, "headroom"));
        long delay = pair.delayNanos();
        for (Hop hop : hops) {
            delay -= hop.delayNanos();
        }
        double gain = 0;
        String lost = null;
        for (int i = 0; i < hops.size(); i++) {
            Hop hop = hops.get(i);
            delay += hop.delayNanos();
            gain += hop.gainDb();
            Level level = levels.get(i).level();
            Gain headroom = levels.get(i).headroom();
            String label = columns(
                    Integer.toString(i + 1),
                    Figures.milliseconds(delay),
                    anyGain,
                    Figures.decibels(gain),
                    anyLevel,
                    level == null
                            ? ""
                            : Figures.trimmed(level.value(), 1) + " "
                                    + level.unit().symbol(),
                    anyHeadroom,
                    headroom == null ? "" : Figures.headroom(headroom.decibels()));
            page.hanging(label + "   ", hop.text());
            lost = lost == null ? levels.get(i).lacking() : lost;
        }
        if (lost != null) {
            page.hanging("  The level is lost on the way for want of ", lost + ".");
        }
    }

    private static String columns(
            String number,
            String delay,
            boolean anyGain,
            String gain,
            boolean anyLevel,
            String level,
            boolean anyHeadroom,
            String headroom) {
        StringBuilder line = new StringBuilder();
        right(line, number, 4);
        right(line, delay, DELAY);
        if (anyGain) {
            right(line, gain, GAIN);
        }
        if (anyLevel) {
            right(line, level, LEVEL);
        }
        if (anyHeadroom) {
            right(line, headroom, HEADROOM);
        }
        return line.toString();
    }

    private static void right(StringBuilder line, String text, int width) {
        line.repeat(' ', Math.max(1, width - text.length())).append(text);
    }

    /** From where it leaves the first way; what the two share need not be read twice. */
    private void other(PairProof pair, OtherPath other) {
        int shared = 0;
        while (shared < other.hops().size() - 1
                && shared < pair.hops().size()
                && other.hops().get(shared).equals(pair.hops().get(shared))) {
            shared++;
        }
        String when =
                other.laterNanos() == 0 ? "at the same time" : Figures.milliseconds(other.laterNanos()) + " later";
        page.hanging(
                "  Also by another way: ",
                steps(other.hops().subList(shared, other.hops().size())) + "; they meet at "
                        + other.meetsAt().said() + " " + when + ", "
                        + Figures.decibels(other.louderDb()) + " against the first.");
    }

    private static String steps(List<Hop> hops) {
        StringBuilder steps = new StringBuilder();
        for (Hop hop : hops) {
            steps.append(steps.isEmpty() ? "" : "; ").append(hop.text());
        }
        return steps.toString();
    }

    private void mends() {
        page.blank();
        if (study.comesWithTheWork(proof)) {
            page.wrapped("It is proven in the target: the work brings it.");
            return;
        }
        List<Mend> mends = study.mends(proof);
        if (mends.isEmpty()) {
            page.wrapped(FeedWords.noMend(study));
        }
        for (Mend mend : mends) {
            FeedText.mend(page, study, mend.equals(mends.getFirst()) ? "Mend" : "Or", mend, Integer.MAX_VALUE, "");
        }
    }
}
