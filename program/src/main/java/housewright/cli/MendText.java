package housewright.cli;

import housewright.app.FeedWords;
import housewright.app.Mending;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Mend;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A mend as instructions, what it does to the file, and what becomes of the feeds. */
final class MendText {
    private final Page page;
    private final Study study;
    private final FeedProof proof;
    private final @Nullable Mending mending;

    /** @param mending the mend that is taken, tried out; null where there is none */
    MendText(Page page, Study study, FeedProof proof, @Nullable Mending mending) {
        this.page = page;
        this.study = study;
        this.proof = proof;
        this.mending = mending;
    }

    /** @param arguments file, feed and options, for the command that applies the mend */
    Page write(boolean applied, String arguments) {
        if (proof.pairs().isEmpty()) {
            String missing = proof.feed().from().isEmpty() ? "where it begins" : "where it must arrive";
            return page.wrapped(proof.feed().id() + " is not finished; enter " + missing + ".");
        }
        if (proof.proven()) {
            return page.wrapped(
                    proof.feed().id() + " is proven " + study.moment().inWords() + "; there is nothing to mend.");
        }
        page.hanging(FeedText.ink(proof.state()), FeedText.mark(proof.state()), FeedWords.trouble(proof) + ".");
        String reason = FeedWords.reason(FeedWords.firstFailing(proof));
        if (!reason.isEmpty()) {
            page.hanging("  ", reason);
        }
        page.blank();
        if (mending == null) {
            return page.wrapped(
                    study.comesWithTheWork(proof)
                            ? "It is proven in the target: the work brings it."
                            : FeedWords.noMend(study));
        }
        FeedText.mend(page, study, "Mend", mending.mend(), Integer.MAX_VALUE, "");
        if (!mending.mend().assumed().isEmpty()) {
            page.hanging(
                    "  Taken for granted: ", String.join("; ", mending.mend().assumed()) + ".");
        }
        page.blank().line(applied ? "Changed in the file:" : "In the file:");
        for (String line : mending.difference()) {
            page.line(line.startsWith("+") ? Ink.GOOD : line.startsWith("-") ? Ink.STOP : Ink.FAINT, "  " + line);
        }
        page.blank().wrapped(outcome(mending, applied));
        if (!applied) {
            page.line("Apply it: housewright mend " + arguments + " --apply");
            List<Mend> mends = study.mends(proof);
            if (mends.size() > 1 && mending.mend().equals(mends.getFirst())) {
                page.blank();
                FeedText.mend(page, study, "Or", mends.get(1), Integer.MAX_VALUE, "");
                page.line("Look at it: housewright mend " + arguments + " --take 2");
            }
        }
        return page;
    }

    private static String outcome(Mending mending, boolean applied) {
        String id = mending.feed().feed().id();
        String is = applied ? " is now " : " is then ";
        FeedState state = mending.state();
        StringBuilder words = new StringBuilder(id).append(is).append(word(mending.feed(), state));
        List<String> others = new ArrayList<>();
        for (FeedProof other : mending.others()) {
            others.add(other.feed().id() + is + word(other, other.state()));
        }
        words.append(others.isEmpty() ? "; no other feed changes." : ", and " + String.join(", ", others) + ".");
        return words.toString();
    }

    private static String word(FeedProof proof, FeedState state) {
        return switch (state) {
            case PROVEN -> "proven";
            case LATE -> "late";
            case CROSSED -> "crossed";
            case BROKEN -> proof.feed().never() ? "not shown to hold" : "broken";
            case ARRIVES -> "arriving where it must not";
        };
    }
}
