package housewright.app;

import housewright.model.About;
import housewright.model.Feed;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Stop;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a proof and a mend say to people. */
public final class FeedWords {
    private FeedWords() {}

    /** Whether a feed is proven, as one sentence. */
    public static String answer(FeedProof proof, Moment moment) {
        Feed feed = proof.feed();
        if (proof.pairs().isEmpty()) {
            String missing = feed.from().isEmpty() ? "where it begins" : "where it must arrive";
            return feed.id() + " does not say yet " + missing + ", so there is nothing to prove.";
        }
        if (!proof.proven()) {
            return trouble(proof) + ".";
        }
        if (feed.never()) {
            return feed.id() + " holds " + moment.inWords() + ": nothing arrives where it must not.";
        }
        String within =
                feed.within() == null ? "" : ", within the " + feed.within().text() + " that it is allowed";
        return feed.id() + " is proven " + moment.inWords() + within + ".";
    }

    /** The pairs, those together that stop at one place for one reason. */
    public static Collection<List<PairProof>> alike(FeedProof proof) {
        Map<List<Object>, List<PairProof>> groups = new LinkedHashMap<>();
        for (PairProof pair : proof.pairs()) {
            Stop stop = pair.stop();
            boolean stops = stop != null && pair.hops().isEmpty();
            groups.computeIfAbsent(
                            stops ? List.of(pair.from(), stop) : List.of(pair.from(), pair.to()),
                            same -> new ArrayList<>())
                    .add(pair);
        }
        return groups.values();
    }

    /** What is wrong with a feed that is not proven, without a full stop. */
    public static String trouble(FeedProof proof) {
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

    public static PairProof firstFailing(FeedProof proof) {
        for (PairProof pair : proof.pairs()) {
            if (pair.state() == proof.state()) {
                return pair;
            }
        }
        return proof.pairs().getFirst();
    }

    /** Where it stops and why, as sentences; empty where the proof has nothing to say. */
    public static String reason(PairProof pair) {
        Stop stop = pair.stop();
        if (stop == null) {
            return "";
        }
        String place = stop.at() == null ? "" : stop.at().said();
        boolean told = place.isEmpty() || stop.why().contains(place) || pair.state() != FeedState.BROKEN;
        return (told ? "" : "It gets as far as " + place + ". ") + capital(stop.why()) + ".";
    }

    /** As a sentence begins; an id keeps its letters. */
    public static String capital(String words) {
        int end = 0;
        while (end < words.length() && words.charAt(end) >= 'a' && words.charAt(end) <= 'z') {
            end++;
        }
        boolean word = end > 0 && (end == words.length() || words.charAt(end) == ' ');
        return word ? (char) (words.charAt(0) - 'a' + 'A') + words.substring(1) : words;
    }

    /** What every proof takes for granted. */
    public static final List<String> ALWAYS_TAKEN = List.of(
            "faders open",
            "switches as set",
            "everything has power",
            "vision mixers cut to it",
            "lamps addressed and in a look that lights them");

    /** What is said where there is no mend. */
    public static String noMend(Study study) {
        return study.moment().equals(Moment.target())
                ? "No mend was found: something on the way is missing or not known yet, or it is a loudspeaker line or mains, which are left to people."
                : "Mends are looked for in the target; this is the hall as it is today.";
    }

    public static String cost(Study study, Mend mend) {
        About about = study.project().about();
        String minutes = "about " + Figures.minutes(mend.minutes());
        return mend.price().signum() == 0
                ? "costs nothing, " + minutes
                : "about " + Figures.money(mend.price(), about.currency()) + ", " + minutes;
    }
}
