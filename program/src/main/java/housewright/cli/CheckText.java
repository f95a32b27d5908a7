package housewright.cli;

import housewright.app.FeedWords;
import housewright.app.Figures;
import housewright.finding.Exempted;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.RuleFailure;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.model.Feed;
import housewright.model.Question;
import housewright.model.Stage;
import housewright.model.change.Change;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Stop;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The answer of {@code check}, the most important first. */
final class CheckText {
    private static final int MOST_FEEDS = 8;
    private static final int MOST_FIXES = 8;
    private static final int MOST_NOTES = 4;
    private static final int MOST_ASSUMED = 3;
    private static final int MOST_REASONS = 5;
    private static final int MOST_QUESTIONS = 5;

    private final Page page;
    private final Study study;
    private final String file;
    private final boolean all;

    /**
     * @param file as the user named it, for the commands that are suggested
     * @param all leave nothing out
     */
    CheckText(Page page, Study study, String file, boolean all) {
        this.page = page;
        this.study = study;
        this.file = file;
        this.all = all;
    }

    Page write() {
        page.wrapped(Ink.STRONG, study.verdict().sentence() + ".");
        List<FeedProof> failing = new ArrayList<>();
        List<FeedProof> early = new ArrayList<>();
        List<String> coming = new ArrayList<>();
        List<FeedProof> proven = new ArrayList<>();
        for (FeedProof proof : study.proofs()) {
            if (proof.pairs().isEmpty()) {
                continue; // not finished: a rule says so
            }
            if (proof.proven()) {
                proven.add(proof);
            } else if (study.comesWithTheWork(proof)) {
                coming.add(proof.feed().id());
            } else if (study.isNotYetDue(proof)) {
                early.add(proof);
            } else {
                failing.add(proof);
            }
        }
        failing.sort(Comparator.comparing(FeedProof::state).reversed());
        failing(failing);
        early(early);
        list("With the work come", coming);
        findings();
        questions();
        proven(proven);
        apart(basis());
        next(failing, early, proven, coming);
        return page;
    }

    private void failing(List<FeedProof> failing) {
        int shown = all ? failing.size() : Math.min(MOST_FEEDS, failing.size());
        Map<List<Change>, String> said = new HashMap<>();
        for (FeedProof proof : failing.subList(0, shown)) {
            page.blank();
            FeedText.trouble(page, study, proof, file, said);
        }
        more(failing.size() - shown, "feed", "feeds");
    }

    /** Feeds that nobody expects to be proven at this stage: in a survey much is not known yet. */
    private void early(List<FeedProof> early) {
        if (early.isEmpty()) {
            return;
        }
        if (all) {
            failing(early);
            return;
        }
        Map<String, List<String>> feeds = new LinkedHashMap<>();
        for (FeedProof proof : early) {
            Stop stop = FeedWords.firstFailing(proof).stop();
            String why = stop == null ? FeedWords.trouble(proof) : stop.why();
            feeds.computeIfAbsent(why, each -> new ArrayList<>())
                    .add(proof.feed().id());
        }
        page.blank().line(Ink.STRONG, "Not proven yet");
        feeds.entrySet().stream()
                .limit(MOST_REASONS)
                .forEach(each -> page.hanging("  ", String.join(", ", each.getValue()) + ": " + each.getKey() + "."));
        if (feeds.size() > MOST_REASONS) {
            page.line("  … and " + (feeds.size() - MOST_REASONS) + " more; --all shows them.");
        }
    }

    /** What somebody still has to answer, the most urgent first. */
    private void questions() {
        List<Question> open = study.project().questions().values().stream()
                .filter(each -> each.answer() == null || each.answer().isBlank())
                .sorted(Comparator.comparing(Question::due, Comparator.nullsLast(Comparator.naturalOrder())))
                .toList();
        if (open.isEmpty()) {
            return;
        }
        page.blank().line(Ink.STRONG, open.size() == 1 ? "One question is open" : open.size() + " questions are open");
        int shown = all ? open.size() : Math.min(MOST_QUESTIONS, open.size());
        for (Question each : open.subList(0, shown)) {
            String to = each.to() == null ? "" : " to " + each.to();
            String due = each.due() == null ? "" : ", due " + each.due();
            String about = each.about() == null ? "" : " [" + each.about() + "]";
            page.hanging("  ", each.id() + to + due + ": " + (each.asks() == null ? "" : each.asks()) + about);
        }
        if (open.size() > shown) {
            page.line("  … and " + (open.size() - shown) + " more; --all shows them.");
        }
    }

    private void more(int left, String one, String many) {
        if (left > 0) {
            page.blank().line("… and " + left + " more " + (left == 1 ? one : many) + "; --all shows them.");
        }
    }

    private void list(String label, List<String> ids) {
        if (!ids.isEmpty()) {
            page.blank().hanging(label + ": ", String.join(", ", ids) + ".");
        }
    }

    private void findings() {
        List<Finding> findings = study.findingsBeyondFeeds();
        if (findings.isEmpty()) {
            return;
        }
        page.blank().line(Ink.STRONG, counts(findings));
        for (Severity severity : Severity.values()) {
            List<Finding> these = findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .toList();
            int most = severity == Severity.STOP ? these.size() : severity == Severity.FIX ? MOST_FIXES : MOST_NOTES;
            int shown = all ? these.size() : Math.min(most, these.size());
            for (Finding finding : these.subList(0, shown)) {
                finding(finding);
            }
            if (these.size() > shown) {
                page.line("  … and " + (these.size() - shown) + " more "
                        + (severity == Severity.FIX ? "to fix" : "notes") + "; --all shows them.");
            }
        }
    }

    private static String counts(List<Finding> findings) {
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long count = findings.stream()
                    .filter(finding -> finding.severity() == severity)
                    .count();
            if (count > 0) {
                counts.add(
                        switch (severity) {
                            case STOP -> count + (count == 1 ? " that stops the job" : " that stop the job");
                            case FIX -> count + " to fix before the visit";
                            case NOTE -> count + (count == 1 ? " note" : " notes");
                        });
            }
        }
        return "Findings: " + String.join(", ", counts);
    }

    private void finding(Finding finding) {
        String source = finding.source() instanceof Source.TheProject
                ? ""
                : "; " + finding.source().text();
        page.hanging(
                ink(finding.severity()),
                mark(finding.severity()),
                finding.message() + " [" + finding.rule() + source + "]");
        if (!finding.fixes().isEmpty()) {
            page.hanging("        ", finding.fixes().getFirst().words());
        }
    }

    private static Ink ink(Severity severity) {
        return switch (severity) {
            case STOP -> Ink.STOP;
            case FIX -> Ink.FIX;
            case NOTE -> Ink.FAINT;
        };
    }

    private static String mark(Severity severity) {
        return switch (severity) {
            case STOP -> "■ stop  ";
            case FIX -> "▲ fix   ";
            case NOTE -> "○ note  ";
        };
    }

    private void proven(List<FeedProof> proven) {
        if (proven.isEmpty()) {
            return;
        }
        List<String> arrive = new ArrayList<>();
        List<String> held = new ArrayList<>();
        for (FeedProof proof : proven) {
            (proof.feed().never() ? held : arrive).add(proven(proof));
        }
        page.blank();
        if (!arrive.isEmpty()) {
            page.hanging(Ink.GOOD, "✓ Arrive: ", String.join(", ", arrive) + ".");
        }
        if (!held.isEmpty()) {
            page.hanging(Ink.GOOD, "✓ Kept out: ", String.join(", ", held) + ".");
        }
    }

    private static String proven(FeedProof proof) {
        Feed feed = proof.feed();
        long longest = 0;
        for (PairProof pair : proof.pairs()) {
            longest = Math.max(longest, pair.delayNanos());
        }
        if (feed.never()) {
            return feed.id() + keptOutBy(proof);
        }
        return longest == 0 ? feed.id() : feed.id() + "\u00A0(" + Figures.trimmed(longest / 1e6, 1) + "\u00A0ms)";
    }

    /** A never-feed that holds only by a switch or a mute says so: somebody may press it. */
    private static String keptOutBy(FeedProof proof) {
        return proof.pairs().stream()
                .flatMap(pair -> pair.assumed().stream())
                .filter(word -> word.endsWith(" stays off") || word.endsWith(" stays muted"))
                .findFirst()
                .map(word -> " (only while " + word + ")")
                .orElse("");
    }

    /** What the proofs rest on; false where there are none to speak of. */
    private boolean basis() {
        Set<String> assumed = new LinkedHashSet<>();
        Set<String> lacking = new LinkedHashSet<>();
        boolean paths = false;
        for (FeedProof proof : study.proofs()) {
            for (PairProof pair : proof.pairs()) {
                assumed.addAll(pair.assumed());
                lacking.addAll(pair.lacking());
                paths |= !pair.hops().isEmpty();
            }
        }
        if (!paths) {
            return false;
        }
        List<String> taken = new ArrayList<>(FeedWords.ALWAYS_TAKEN);
        int shown = all ? assumed.size() : Math.min(MOST_ASSUMED, assumed.size());
        taken.addAll(List.copyOf(assumed).subList(0, shown));
        if (assumed.size() > shown) {
            taken.add("and " + (assumed.size() - shown) + " more");
        }
        page.blank().hanging("Taken for granted: ", String.join("; ", taken) + ".");
        List<String> figures = new ArrayList<>();
        int typical = study.typicalModels().size();
        if (typical > 0) {
            figures.add(typical + (typical == 1 ? " type in use has" : " types in use have")
                    + " typical figures, to be replaced by the data sheet's");
        }
        if (!lacking.isEmpty()) {
            figures.add(lacking.size() + (lacking.size() == 1 ? " figure is" : " figures are") + " missing");
        }
        if (!figures.isEmpty()) {
            page.hanging("Figures: ", String.join("; ", figures) + ".");
        }
        return true;
    }

    /**
     * What is left out on purpose, and what went wrong.
     *
     * @param below follows on lines of the same kind
     */
    private void apart(boolean below) {
        Findings findings = study.findings();
        List<Finding> later = study.laterBeyondFeeds();
        boolean any = !later.isEmpty()
                || !findings.exempted().isEmpty()
                || !findings.failures().isEmpty();
        if (any && !below) {
            page.blank();
        }
        if (!later.isEmpty()) {
            Map<Stage, Integer> counts = new EnumMap<>(Stage.class);
            later.forEach(finding -> counts.merge(finding.due(), 1, Integer::sum));
            List<String> stages = new ArrayList<>();
            counts.forEach((stage, count) -> stages.add(count + " from " + stage.word() + " on"));
            page.hanging(
                    "Not yet due: ",
                    String.join(", ", stages)
                            + (all ? ":" : later.size() == 1 ? "; --all shows it." : "; --all lists them."));
            if (all) {
                later.forEach(this::finding);
            }
        }
        for (Exempted exempted : findings.exempted()) {
            Finding finding = exempted.finding();
            page.hanging(
                    "Switched off: ",
                    finding.message() + " [" + finding.rule() + "] Because: "
                            + exempted.by().why() + ".");
        }
        for (RuleFailure failure : findings.failures()) {
            page.hanging(
                    "Not checked: ",
                    "the rule " + failure.rule() + " failed by a fault in Housewright (" + failure.what() + ").");
        }
    }

    private void next(List<FeedProof> failing, List<FeedProof> early, List<FeedProof> proven, List<String> coming) {
        String today = study.moment().equals(Moment.today()) ? " --today" : "";
        page.blank();
        if (study.proofs().isEmpty()) {
            page.wrapped("Next: say under feeds: what must arrive where, and what must never; for example");
            page.line("  feeds:");
            page.line("    speech: {from: pulpit-mic.pickup, to: [speaker-left.sound, speaker-right.sound]}");
        } else if (!failing.isEmpty()) {
            FeedProof first = failing.getFirst();
            String command = study.mends(first).isEmpty() || first.state() == FeedState.LATE ? "trace" : "mend";
            page.line("Next: housewright " + command + " " + file + " "
                    + first.feed().id() + today);
        } else if (!early.isEmpty()) {
            page.line("Next: housewright trace " + file + " "
                    + early.getFirst().feed().id() + today + "   shows how far it is known");
        } else if (!proven.isEmpty()) {
            page.line("Next: housewright trace " + file + " "
                    + proven.getFirst().feed().id() + today + "   shows a feed step by step");
        } else if (!coming.isEmpty()) {
            page.line("Next: housewright check " + file + "   shows the target");
        } else {
            page.line("Next: enter where each feed begins and where it must arrive.");
        }
    }
}
