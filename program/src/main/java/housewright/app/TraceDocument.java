package housewright.app;

import housewright.app.Parts.HopPart;
import housewright.app.Parts.MendPart;
import housewright.app.Parts.ProjectPart;
import housewright.model.Doc;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Hop;
import housewright.signal.LevelAt;
import housewright.signal.OtherPath;
import housewright.signal.PairProof;
import housewright.study.Study;
import housewright.unit.Gain;
import housewright.unit.Level;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code trace --json} prints. */
public record TraceDocument(ProjectPart project, TracedFeed feed) {

    /** A feed, with everything that is known of its paths. */
    public record TracedFeed(
            String id,
            @Doc("Nothing may arrive") boolean never,
            FeedState state,
            List<TracedPair> pairs,
            @Doc("The cheapest first") List<MendPart> mends) {}

    /** One source and one destination. */
    public record TracedPair(
            String from,
            String to,
            boolean proven,

            @Doc("Delay of the whole path, in ms; null where there is none") @Nullable
            Double delayMs,

            @Doc("Gain of the whole path, in dB; null where there is none") @Nullable
            Double gainDb,

            @Doc("The path; empty where there is none") List<TracedHop> hops,

            @Doc("Other ways by which the same source arrives")
            List<OtherWay> others,

            @Doc("The furthest place reached; null where it arrives, or does not even begin") @Nullable
            String stopsAt,

            @Doc("Why it stops there, is late or crossed; null where it is proven") @Nullable
            String why,

            @Doc("What the proof takes for granted beyond open faders and switches as set")
            List<String> assumed,

            @Doc("Figures the proof would have needed") List<String> lacking) {}

    /** One step of a path, and how things stand after it. */
    public record TracedHop(
            @Doc("What makes the step: section and id, such as cables.C014")
            String by,

            String from,
            String to,

            @Doc("The step by what a person can touch") String text,

            @Doc("Delay of this step, in ms") double delayMs,
            @Doc("Gain of this step, in dB") double gainDb,
            @Doc("Delay since the source, in ms") double totalDelayMs,
            @Doc("Gain since the source, in dB") double totalGainDb,

            @Doc("Level after the step, such as 4 dBu; null where it cannot be known") @Nullable
            String level,

            @Doc("Headroom in dB up to where the port clips; null where it is not known") @Nullable
            Double headroomDb) {}

    /** Another way by which the same source arrives. */
    public record OtherWay(
            @Doc("Where it meets the first") String meetsAt,
            @Doc("How much later it arrives there, in ms") double laterMs,
            @Doc("Its gain less that of the first, in dB") double louderDb,
            List<HopPart> hops) {}

    public static TraceDocument of(Study study, FeedProof proof) {
        return new TraceDocument(
                Parts.project(study),
                new TracedFeed(
                        proof.feed().id(),
                        proof.feed().never(),
                        proof.state(),
                        proof.pairs().stream().map(pair -> pair(study, pair)).toList(),
                        study.mends(proof).stream().map(Parts::mend).toList()));
    }

    private static TracedPair pair(Study study, PairProof pair) {
        boolean path = !pair.hops().isEmpty();
        return new TracedPair(
                pair.from().toString(),
                pair.to().toString(),
                pair.proven(),
                path ? Parts.milliseconds(pair.delayNanos()) : null,
                path ? Parts.decibels(pair.gainDb()) : null,
                hops(study, pair),
                pair.others().stream().map(TraceDocument::other).toList(),
                Parts.stopsAt(pair),
                Parts.why(pair),
                pair.assumed(),
                pair.lacking());
    }

    private static List<TracedHop> hops(Study study, PairProof pair) {
        List<LevelAt> levels = study.signals().levels(pair);
        List<TracedHop> hops = new ArrayList<>(pair.hops().size());
        long delay = pair.delayNanos();
        for (Hop hop : pair.hops()) {
            delay -= hop.delayNanos(); // what is left is the delay before the first step
        }
        double gain = 0;
        for (int i = 0; i < pair.hops().size(); i++) {
            Hop hop = pair.hops().get(i);
            delay += hop.delayNanos();
            gain += hop.gainDb();
            Level level = levels.get(i).level();
            Gain headroom = levels.get(i).headroom();
            hops.add(new TracedHop(
                    hop.cause().entity(),
                    hop.from().toString(),
                    hop.to().toString(),
                    hop.text(),
                    Parts.milliseconds(hop.delayNanos()),
                    Parts.decibels(hop.gainDb()),
                    Parts.milliseconds(delay),
                    Parts.decibels(gain),
                    level == null ? null : level.text(),
                    headroom == null ? null : Parts.decibels(headroom.decibels())));
        }
        return hops;
    }

    private static OtherWay other(OtherPath other) {
        return new OtherWay(
                other.meetsAt().toString(),
                Parts.milliseconds(other.laterNanos()),
                Parts.decibels(other.louderDb()),
                Parts.hops(other.hops()));
    }
}
