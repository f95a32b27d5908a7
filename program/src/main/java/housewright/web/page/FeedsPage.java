package housewright.web.page;

import housewright.app.FeedWords;
import housewright.app.Figures;
import housewright.app.Now;
import housewright.finding.Exempted;
import housewright.model.Feed;
import housewright.model.Ref;
import housewright.signal.FeedProof;
import housewright.signal.PairProof;
import housewright.study.Study;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Every feed, the worst first.
 *
 * @param answer in a sentence
 * @param lacking figures that proofs would have needed, with the feeds that want them
 */
public record FeedsPage(String answer, List<Row> rows, List<Lacking> lacking) {
    private static final int MOST_PLACES = 3;

    public FeedsPage {
        rows = List.copyOf(rows);
        lacking = List.copyOf(lacking);
    }

    /**
     * @param state key of its mark
     * @param word its state as people say it
     * @param told where it stops, what excuses it, or what it is for
     */
    public record Row(
            String id, String href, String state, String word, String from, String to, String delay, String told) {}

    public record Lacking(String figure, String feeds) {}

    /** @param feeds where a feed's pages begin */
    public static FeedsPage of(Now now, String feeds) {
        Study study = now.study();
        List<Row> rows = study.proofs().stream()
                .sorted(Comparator.comparingInt((FeedProof proof) -> rank(study, proof)))
                .map(proof -> row(study, proof, feeds))
                .toList();
        Map<String, List<String>> lacking = new LinkedHashMap<>();
        for (FeedProof proof : study.proofs()) {
            proof.pairs().stream()
                    .flatMap(pair -> pair.lacking().stream())
                    .distinct()
                    .forEach(figure -> lacking.merge(
                            figure,
                            List.of(proof.feed().id()),
                            (one, other) ->
                                    Stream.concat(one.stream(), other.stream()).toList()));
        }
        return new FeedsPage(
                study.verdict().sentence() + ".",
                rows,
                lacking.entrySet().stream()
                        .map(each -> new Lacking(each.getKey(), String.join(", ", each.getValue())))
                        .toList());
    }

    private static int rank(Study study, FeedProof proof) {
        if (proof.pairs().isEmpty()) {
            return 6;
        }
        return switch (proof.state()) {
            case PROVEN -> 7;
            case ARRIVES -> late(study, proof, 0);
            case BROKEN -> late(study, proof, 1);
            case CROSSED -> late(study, proof, 2);
            case LATE -> late(study, proof, 3);
        };
    }

    private static int late(Study study, FeedProof proof, int rank) {
        return study.isNotYetDue(proof) ? 5 : rank;
    }

    private static Row row(Study study, FeedProof proof, String feeds) {
        Feed feed = proof.feed();
        return new Row(
                feed.id(),
                feeds + "/" + feed.id(),
                state(proof),
                word(study, proof),
                places(feed.from()),
                places(feed.to()),
                delay(proof),
                told(study, proof));
    }

    static String state(FeedProof proof) {
        return proof.pairs().isEmpty() ? "unfinished" : proof.state().word();
    }

    static String word(Study study, FeedProof proof) {
        if (proof.pairs().isEmpty()) {
            return "not finished";
        }
        boolean never = proof.feed().never();
        String word = switch (proof.state()) {
            case PROVEN -> never ? "kept out" : "proven";
            case LATE -> "late";
            case CROSSED -> "crossed";
            case BROKEN -> never ? "not shown to hold" : "broken";
            case ARRIVES -> "arrives, and must not";
        };
        return study.isNotYetDue(proof) ? word + ", not due yet" : word;
    }

    private static String places(List<Ref> refs) {
        List<String> said = refs.stream().map(Ref::text).toList();
        return said.size() <= MOST_PLACES
                ? String.join(", ", said)
                : String.join(", ", said.subList(0, MOST_PLACES)) + " and " + (said.size() - MOST_PLACES) + " more";
    }

    private static String delay(FeedProof proof) {
        long longest =
                proof.pairs().stream().mapToLong(PairProof::delayNanos).max().orElse(0);
        return proof.feed().never() || longest == 0 ? "" : Figures.milliseconds(longest);
    }

    private static String told(Study study, FeedProof proof) {
        @Nullable String note = proof.feed().remarks().note();
        if (proof.pairs().isEmpty()) {
            return proof.feed().from().isEmpty() ? "Say where it begins." : "Say where it must arrive.";
        }
        if (proof.proven()) {
            return note == null ? "" : note;
        }
        String accepted = study.findExemption(proof)
                .map(Exempted::by)
                .map(by -> "Accepted: " + by.why() + ". ")
                .orElse("");
        return accepted + FeedWords.reason(FeedWords.firstFailing(proof));
    }

    /** The ids with commas. */
    static String ids(List<String> ids) {
        return String.join(", ", ids);
    }
}
