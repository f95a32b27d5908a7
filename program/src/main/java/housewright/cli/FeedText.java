package housewright.cli;

import housewright.finding.Exempted;
import housewright.model.About;
import housewright.model.change.Change;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Stop;
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

    /** What is wrong with a feed that is not proven, without a full stop. */
    static String trouble(FeedProof proof) {
        String id = proof.feed().id();
        PairProof first = firstFailing(proof);
        String what = switch (proof.state()) {
            case PROVEN -> id + " is proven";
            case LATE -> id + " arrives late at " + first.to().said();
            case CROSSED -> id + " is crossed on the way to " + first.to().said();
            case BROKEN ->
                proof.feed().never()
                        ? id + " is not shown to hold: " + first.from().said() + " to "
                                + first.to().said()
                        : id + " does not arrive at " + first.to().said();
            case ARRIVES ->
                id + ": " + first.from().said() + " arrives at " + first.to().said() + ", where it must not";
        };
        return what + extent(proof);
    }

    private static String extent(FeedProof proof) {
        int all = proof.pairs().size();
        long failing = proof.pairs().stream().filter(pair -> !pair.proven()).count();
        if (all == 1) {
            return "";
        }
        return failing == all
                ? all == 2 ? " (both of its ways)" : " (all " + all + " of its ways)"
                : " (" + failing + " of its " + all + " ways)";
    }

    static PairProof firstFailing(FeedProof proof) {
        for (PairProof pair : proof.pairs()) {
            if (pair.state() == proof.state()) {
                return pair;
            }
        }
        return proof.pairs().getFirst();
    }

    /** Where it stops and why, as sentences; empty where the proof has nothing to say. */
    static String reason(PairProof pair) {
        Stop stop = pair.stop();
        if (stop == null) {
            return "";
        }
        String place = stop.at() == null ? "" : stop.at().said();
        boolean told = place.isEmpty() || stop.why().contains(place) || pair.state() != FeedState.BROKEN;
        return (told ? "" : "It gets as far as " + place + ". ") + capital(stop.why()) + ".";
    }

    /** As a sentence begins; an id keeps its letters. */
    static String capital(String words) {
        int end = 0;
        while (end < words.length() && words.charAt(end) >= 'a' && words.charAt(end) <= 'z') {
            end++;
        }
        boolean word = end > 0 && (end == words.length() || words.charAt(end) == ' ');
        return word ? (char) (words.charAt(0) - 'a' + 'A') + words.substring(1) : words;
    }

    /**
     * A feed that is not proven, in a few lines.
     *
     * @param said mends told already, by the feed they were told with; added to
     */
    static void trouble(Page page, Study study, FeedProof proof, String file, Map<List<Change>, String> said) {
        page.hanging(ink(proof.state()), mark(proof.state()), trouble(proof) + ".");
        String reason = reason(firstFailing(proof));
        if (!reason.isEmpty()) {
            page.hanging("  ", reason);
        }
        if (proof.state() == FeedState.ARRIVES) {
            page.hanging("  ", "By way of " + way(firstFailing(proof)) + ".");
        }
        study.findExemption(proof)
                .map(Exempted::by)
                .ifPresent(by -> page.hanging("  ", "Accepted in the project: " + by.why() + "."));
        if (study.comesWithTheWork(proof)) {
            return;
        }
        List<Mend> mends = study.mends(proof);
        if (mends.isEmpty()) {
            page.hanging("  ", noMend(study));
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

    /** What every proof takes for granted. */
    static final List<String> ALWAYS_TAKEN = List.of(
            "faders open",
            "switches as set",
            "everything has power",
            "vision mixers cut to it",
            "lamps addressed and in a look that lights them");

    /** What is said where there is no mend. */
    static String noMend(Study study) {
        return study.moment().equals(Moment.target())
                ? "No mend was found: something on the way is missing or not known yet, or it is a loudspeaker line or mains, which are left to people."
                : "Mends are looked for in the target; this is the hall as it is today.";
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
        page.line("  " + word + " (" + cost(study, mend) + others + "):");
        List<String> steps = mend.steps();
        boolean all = steps.size() <= most;
        for (int i = 0; i < (all ? steps.size() : most); i++) {
            page.hanging("    " + (i + 1) + ". ", steps.get(i));
        }
        if (!all) {
            page.line("    … and " + (steps.size() - most) + " more: housewright mend " + arguments);
        }
    }

    static String cost(Study study, Mend mend) {
        About about = study.project().about();
        String minutes = "about " + Figures.minutes(mend.minutes());
        return mend.price().signum() == 0
                ? "costs nothing, " + minutes
                : "about " + Figures.money(mend.price(), about.currency()) + ", " + minutes;
    }
}
