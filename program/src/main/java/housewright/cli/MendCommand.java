package housewright.cli;

import housewright.app.MendDocument;
import housewright.app.Mending;
import housewright.app.ProjectFile;
import housewright.app.Saving;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Mend;
import housewright.study.Study;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A mend of a feed, shown or made. */
@Command(
        name = "mend",
        header = "Finds the cheapest change that makes a feed true, and makes it on request.",
        description = {
            "Joins what is not joined, cuts what must never arrive, or replaces what is crossed or late; breaks no other feed and lets no never-feed through. Shows the work as instructions with its price, and what changes in the file.",
            "Exit status: 0 the feed is proven, or is so now, 1 it is not, 2 there is no such file or feed, or it cannot be written."
        })
final class MendCommand extends ProofCommand {
    @Parameters(index = "1", paramLabel = "FEED", description = "Id of the feed.")
    String feed = "";

    @Option(names = "--apply", description = "Write the change into FILE; everything else in it stays as it is.")
    boolean apply;

    @Option(
            names = "--take",
            paramLabel = "N",
            description = "Which mend, where there are two: 1, the cheapest, or 2, the one that mends more feeds.",
            defaultValue = "1")
    int take;

    MendCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        Study study = desk.study(project, today);
        @Nullable FeedProof proof = desk.during("Proving the feeds", () -> desk.find(study, project, feed));
        if (proof == null) {
            return Status.CANNOT;
        }
        List<Mend> mends = desk.during("Looking for mends of " + feed, () -> study.mends(proof));
        if (take < 1 || (take > 1 && take > mends.size())) {
            return desk.refuse("there is no mend " + take + " of " + feed + "; " + there(mends) + ".");
        }
        Mending mending = mends.isEmpty() ? null : Mending.of(project, study, proof, mends.get(take - 1));
        boolean applied = false;
        if (apply && mending != null) {
            if (desk.files.replace(project, mending.text()) instanceof Saving.NotSaved not) {
                return desk.refuse(not.why());
            }
            applied = true;
        }
        if (json) {
            desk.print(MendDocument.of(study, proof, mending, applied));
        } else {
            String arguments = quoted() + " " + feed + (today ? " --today" : "") + (take > 1 ? " --take " + take : "");
            desk.print(new MendText(desk.page(), study, proof, mending).write(applied, arguments));
        }
        return applied && mending != null && mending.state() == FeedState.PROVEN
                ? Status.FINE
                : TraceCommand.status(proof);
    }

    private static String there(List<Mend> mends) {
        return mends.isEmpty() ? "there is none" : mends.size() == 1 ? "there is one" : "there are " + mends.size();
    }
}
