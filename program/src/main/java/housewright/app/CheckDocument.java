package housewright.app;

import housewright.app.Parts.FindingPart;
import housewright.app.Parts.HopPart;
import housewright.app.Parts.MendPart;
import housewright.app.Parts.ProjectPart;
import housewright.model.Doc;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.PairProof;
import housewright.study.Study;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code check --json} prints. */
public record CheckDocument(
        ProjectPart project,
        @Doc("In the order of the file") List<FeedPart> feeds,
        @Doc("Worst first") List<FindingPart> findings) {

    /** A feed, and what is shown of it. */
    public record FeedPart(
            String id,

            @Doc(
                    "proven: what the feed asks for holds, for a never-feed that nothing arrives; broken: it does not arrive, or it cannot be shown that a never-feed holds, or it is not finished and has no pairs; late; crossed; arrives: a never-feed that does. The worst of its pairs applies")
            FeedState state,

            @Doc("Each source with each destination, or in order where both lists are equally long")
            List<PairPart> pairs,

            @Doc("The cheapest first; empty where it is proven or none is known")
            List<MendPart> mends) {}

    /** One source and one destination. */
    public record PairPart(
            String from,
            String to,
            boolean proven,

            @Doc("Delay of the whole path, in ms; null where there is none") @Nullable
            Double delayMs,

            @Doc("Gain of the whole path, in dB; null where there is none") @Nullable
            Double gainDb,

            @Doc("The path; empty where there is none") List<HopPart> hops,

            @Doc("The furthest place reached; null where it arrives, or does not even begin") @Nullable
            String stopsAt,

            @Doc("Why it stops there, is late or crossed; null where it is proven") @Nullable
            String why) {}

    public static CheckDocument of(Study study) {
        return new CheckDocument(
                Parts.project(study),
                study.proofs().stream().map(proof -> feed(study, proof)).toList(),
                Parts.findings(study.findings().due()));
    }

    private static FeedPart feed(Study study, FeedProof proof) {
        return new FeedPart(
                proof.feed().id(),
                proof.state(),
                proof.pairs().stream().map(CheckDocument::pair).toList(),
                study.mends(proof).stream().map(Parts::mend).toList());
    }

    private static PairPart pair(PairProof pair) {
        boolean path = !pair.hops().isEmpty();
        return new PairPart(
                pair.from().toString(),
                pair.to().toString(),
                pair.proven(),
                path ? Parts.milliseconds(pair.delayNanos()) : null,
                path ? Parts.decibels(pair.gainDb()) : null,
                Parts.hops(pair.hops()),
                Parts.stopsAt(pair),
                Parts.why(pair));
    }
}
