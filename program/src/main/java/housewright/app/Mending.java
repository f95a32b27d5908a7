package housewright.app;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import com.github.difflib.patch.Patch;
import housewright.file.ProjectText;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Mend;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;

/**
 * A mend tried out on a project: what becomes of the feeds, and of the file.
 *
 * @param after everything that follows from the project with the mend in it
 * @param text of the file with the mend in it, all else as it was
 */
public record Mending(ProjectFile file, Study before, FeedProof feed, Mend mend, Study after, String text) {
    private static final int LINES_AROUND = 1;

    public static Mending of(ProjectFile file, Study before, FeedProof feed, Mend mend) {
        Project mended = Change.apply(file.project(), mend.changes());
        String text = ProjectText.edit(file.text(), file.name(), file.project(), mended);
        return new Mending(file, before, feed, mend, before.with(mended), text);
    }

    /** What the feed is with the mend in it. */
    public FeedState state() {
        return after.findProof(feed.feed().id()).map(FeedProof::state).orElse(FeedState.BROKEN);
    }

    /** Other feeds that are in another state with the mend, in the order of the file. */
    public List<FeedProof> others() {
        List<FeedProof> others = new ArrayList<>();
        for (FeedProof now : after.proofs()) {
            String id = now.feed().id();
            boolean same = before.findProof(id)
                    .filter(was -> was.state() == now.state())
                    .isPresent();
            if (!same && !id.equals(feed.feed().id())) {
                others.add(now);
            }
        }
        return others;
    }

    /** What changes in the file, as a unified diff without its head. */
    public List<String> difference() {
        List<String> old = file.text().lines().toList();
        Patch<String> patch = DiffUtils.diff(old, text.lines().toList());
        List<String> diff = UnifiedDiffUtils.generateUnifiedDiff(file.name(), file.name(), old, patch, LINES_AROUND);
        return diff.size() > 2 ? List.copyOf(diff.subList(2, diff.size())) : List.of();
    }
}
