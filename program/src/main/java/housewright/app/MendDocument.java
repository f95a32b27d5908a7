package housewright.app;

import housewright.app.Parts.MendPart;
import housewright.app.Parts.ProjectPart;
import housewright.model.Doc;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.study.Study;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code mend --json} prints. */
public record MendDocument(
        ProjectPart project,
        String feed,

        @Doc("State before the mend") FeedState state,

        @Doc("The cheapest first; after it, where that is another, the one thing that mends more feeds with it")
        List<MendPart> mends,

        @Doc("Which of them is taken: tried out, and applied on request; counted from 1, 0 where there is none")
        int taken,

        @Doc("State with the mend that is taken; null where there is none") @Nullable
        FeedState stateAfter,

        @Doc("Other feeds that are in another state with it; none is in a worse one")
        List<OtherFeed> others,

        @Doc("What changes in the file, in the lines of a unified diff")
        List<String> difference,

        @Doc("The file was written") boolean applied) {

    /** Another feed that the mend changes. */
    public record OtherFeed(String id, FeedState stateAfter) {}

    /** @param mending the mend that is taken, tried out; null where there is none */
    public static MendDocument of(Study study, FeedProof proof, @Nullable Mending mending, boolean applied) {
        return new MendDocument(
                Parts.project(study),
                proof.feed().id(),
                proof.state(),
                study.mends(proof).stream().map(Parts::mend).toList(),
                mending == null ? 0 : study.mends(proof).indexOf(mending.mend()) + 1,
                mending == null ? null : mending.state(),
                mending == null
                        ? List.of()
                        : mending.others().stream()
                                .map(other -> new OtherFeed(other.feed().id(), other.state()))
                                .toList(),
                mending == null ? List.of() : mending.difference(),
                applied);
    }
}
