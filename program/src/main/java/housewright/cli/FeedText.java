package housewright.cli;

import housewright.app.FeedWords;
import housewright.finding.Exempted;
import housewright.model.change.Change;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Mend;
import housewright.signal.PairProof;
import housewright.study.Study;
import java.util.List;
import java.util.Map;

/** A feed and its mends in words. */
final class FeedText {
    private static final int MOST_STEPS = 3;

    private FeedText() {}

    static Ink ink(FeedState state) {
        return switch (state) {
            case PROVEN -> Ink.GOOD;
            case LATE -> Ink.FIX;
            case CROSSED, BROKEN, ARRIVES -> Ink.STOP;
        };
    }

    /** A tick; a triangle for what is to be settled; a square for what stops the job. */
    static String mark(FeedState state) {
        return switch (state) {
            case PROVEN -> "✓ ";
            case LATE -> "▲ ";
            case CROSSED, BROKEN, ARRIVES -> "■ ";
        };
    }

    /**
     * A feed that is not proven, in a few lines.
     *
     * @param said mends told already, by the feed they were told with; added to
     */
    static void trouble(Page page, Study study, FeedProof proof, String file, Map<List<Change>, String> said) {
        page.hanging(ink(proof.state()), mark(proof.state()), FeedWords.trouble(proof) + ".");
        String reason = FeedWords.reason(FeedWords.firstFailing(proof));
        if (!reason.isEmpty()) {
            page.hanging("  ", reason);
        }
        if (proof.state() == FeedState.ARRIVES) {
            page.hanging("  ", "By way of " + way(FeedWords.firstFailing(proof)) + ".");
        }
        study.findExemption(proof)
                .map(Exempted::by)
                .ifPresent(by -> page.hanging("  ", "Accepted in the project: " + by.why() + "."));
        if (study.comesWithTheWork(proof)) {
            return;
        }
        List<Mend> mends = study.mends(proof);
        if (mends.isEmpty()) {
            page.hanging("  ", FeedWords.noMend(study));
        }
        for (Mend mend : mends) {
            String earlier = said.putIfAbsent(mend.changes(), proof.feed().id());
            if (earlier != null) {
                page.line("  Mended with " + earlier + ", above.");
            } else {
                mend(
                        page,
                        study,
                        mend.equals(mends.getFirst()) ? "Mend" : "Or",
                        mend,
                        MOST_STEPS,
                        file + " " + proof.feed().id());
            }
        }
    }

    /** The things a path passes. */
    private static String way(PairProof pair) {
        StringBuilder way = new StringBuilder();
        String last = "";
        for (var hop : pair.hops()) {
            String thing = housewright.model.Words.said(hop.from().thing());
            if (!thing.equals(last)) {
                way.append(way.isEmpty() ? "" : ", ").append(thing);
                last = thing;
            }
        }
        return way.toString();
    }

    /** @param arguments file and feed, for the command that shows the rest of a long mend */
    static void mend(Page page, Study study, String word, Mend mend, int most, String arguments) {
        int also = mend.alsoMends().size();
        String others = also == 0
                ? ""
                : also == 1
                        ? ", mends " + mend.alsoMends().getFirst() + ", too"
                        : ", mends " + also + " other feeds, too";
        page.line("  " + word + " (" + FeedWords.cost(study, mend) + others + "):");
        List<String> steps = mend.steps();
        boolean all = steps.size() <= most;
        for (int i = 0; i < (all ? steps.size() : most); i++) {
            page.hanging("    " + (i + 1) + ". ", steps.get(i));
        }
        if (!all) {
            page.line("    … and " + (steps.size() - most) + " more: housewright mend " + arguments);
        }
    }
}
