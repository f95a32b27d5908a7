package housewright.cli;

import housewright.app.ProjectFile;
import housewright.app.TraceDocument;
import housewright.signal.FeedProof;
import housewright.study.Study;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** One feed step by step. */
@Command(
        name = "trace",
        header = "Shows the way of one feed, step by step, or where it stops.",
        description = {
            "Names every step by what a person can touch, with the delay, gain, level and headroom after it; what the proof takes for granted, and which figures it lacks. Where the feed stops: why, and the cheapest mend.",
            "Exit status: 0 it is proven, 1 it is not, 2 there is no such file or feed."
        })
final class TraceCommand extends ProofCommand {
    @Parameters(index = "1", paramLabel = "FEED", description = "Id of the feed.")
    String feed = "";

    TraceCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        Study study = desk.study(project, today);
        @Nullable FeedProof proof = desk.during("Proving the feeds", () -> desk.find(study, project, feed));
        if (proof == null) {
            return Status.CANNOT;
        }
        if (json) {
            desk.print(desk.during("Tracing " + feed, () -> TraceDocument.of(study, proof)));
        } else {
            desk.print(desk.during("Tracing " + feed, () -> new TraceText(desk.page(), study, proof).write()));
        }
        return status(proof);
    }

    /** Of one feed that is asked for: fine is only what is proven. */
    static int status(FeedProof proof) {
        return proof.proven() ? Status.FINE : Status.STOPS;
    }
}
