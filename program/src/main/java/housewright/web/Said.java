package housewright.web;

import housewright.app.Clash;
import housewright.app.Effect;
import housewright.app.Outcome;
import housewright.finding.Finding;
import housewright.finding.Severity;
import housewright.signal.FeedState;
import java.util.ArrayList;
import java.util.List;

/** What came of an edit, in words. */
final class Said {
    private static final int MOST = 4;

    private Said() {}

    static Session.Notice of(Outcome outcome, String says) {
        return switch (outcome) {
            case Outcome.Accepted accepted
            when accepted.revision() == 0 -> new Session.Notice("It is so already; nothing was changed.", false, false);
            case Outcome.Accepted accepted -> new Session.Notice(says + ". " + effect(accepted.effect()), false, true);
            case Outcome.Refused refused ->
                new Session.Notice(
                        "Nothing was changed: "
                                + String.join(
                                        "\n",
                                        refused.errors().stream()
                                                .limit(MOST)
                                                .map(error -> error.text())
                                                .toList()),
                        true,
                        false);
            case Outcome.Conflict conflict -> new Session.Notice(clash(conflict.clashes()), true, false);
            case Outcome.NotDone not -> new Session.Notice(not.why(), true, false);
        };
    }

    private static String clash(List<Clash> clashes) {
        StringBuilder words = new StringBuilder("Nothing was changed: somebody else has edited the same meanwhile.");
        for (Clash clash : clashes.subList(0, Math.min(MOST, clashes.size()))) {
            words.append('\n')
                    .append(clash.subject())
                    .append(" is now ")
                    .append(clash.kept() == null ? "gone" : clash.kept().isEmpty() ? "empty" : clash.kept())
                    .append("; yours was ")
                    .append(
                            clash.yours() == null
                                    ? "to take it away"
                                    : clash.yours().isEmpty() ? "empty" : clash.yours());
        }
        return words.toString();
    }

    /** Feeds first; findings as counts. */
    static String effect(Effect effect) {
        List<String> words = new ArrayList<>();
        for (Effect.Feed feed :
                effect.feeds().subList(0, Math.min(MOST, effect.feeds().size()))) {
            words.add(feed.id() + (feed.now() == null ? " is gone" : " is now " + word(feed.now())));
        }
        if (effect.feeds().size() > MOST) {
            words.add((effect.feeds().size() - MOST) + " more feeds change");
        }
        count(words, effect.settled(), "settled");
        count(words, effect.found(), "new");
        if (words.isEmpty()) {
            return effect.settled().isEmpty() && effect.found().isEmpty()
                    ? "No feed and no finding changes."
                    : "No feed changes, and of the findings only notes.";
        }
        return String.join("; ", words) + ".";
    }

    private static void count(List<String> words, List<Finding> findings, String what) {
        long telling = findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .count();
        if (telling > 0) {
            words.add(telling + (telling == 1 ? " finding " : " findings ") + what);
        }
    }

    private static String word(FeedState state) {
        return state == FeedState.ARRIVES ? "arriving where it must not" : state.word();
    }
}
