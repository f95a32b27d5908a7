package housewright.web.page;

import housewright.app.Figures;
import housewright.app.Now;
import housewright.finding.Exempted;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.finding.Fix;
import housewright.finding.RuleFailure;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the rules find, worst first.
 *
 * @param answer in a sentence
 * @param about only findings about this subject are shown; null where all are
 * @param groups by severity; those without findings are left out
 * @param later due at a later stage, by stage
 * @param off switched off by the project
 * @param failures rules that failed by a fault of the program
 */
public record FindingsPage(
        String answer,
        @Nullable String about,
        List<Group> groups,
        List<Group> later,
        List<Off> off,
        List<String> failures) {
    private static final int MOST_THINGS = 4;

    public FindingsPage {
        groups = List.copyOf(groups);
        later = List.copyOf(later);
        off = List.copyOf(off);
        failures = List.copyOf(failures);
    }

    /** @param anchor by which it is reached */
    public record Group(String anchor, String title, List<Row> rows) {
        public Group {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A finding.
     *
     * @param key by which a form names it
     * @param first the subject to look at first
     * @param more subjects beyond the others
     * @param figures what it rests on, with limits
     * @param source what says that it is a fault; empty where the project itself does
     */
    public record Row(
            String key,
            String state,
            Thing first,
            List<Thing> others,
            int more,
            String message,
            String rule,
            List<String> figures,
            String source,
            List<Way> ways) {
        public Row {
            others = List.copyOf(others);
            figures = List.copyOf(figures);
            ways = List.copyOf(ways);
        }
    }

    /** @param href null where it has no page */
    public record Thing(String id, String kind, @Nullable String href) {}

    /**
     * A way to put it right.
     *
     * @param number which of the finding's
     * @param changes it can be applied as it is
     */
    public record Way(int number, String words, boolean changes) {}

    /** @param number which of the project's entries */
    public record Off(int number, String message, String rule, String subject, String why) {}

    /** @param about the path of a subject, such as {@code cables.C014}; null for all */
    public static FindingsPage of(Now now, @Nullable String about, Links links) {
        Findings findings = now.study().findings();
        List<Group> groups = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<Row> rows = findings.due().stream()
                    .filter(finding -> finding.severity() == severity)
                    .filter(finding -> concerns(finding, about))
                    .map(finding -> row(finding, links))
                    .toList();
            if (!rows.isEmpty()) {
                groups.add(new Group(severity.word(), title(severity, rows.size()), rows));
            }
        }
        Map<Stage, List<Row>> stages = new EnumMap<>(Stage.class);
        findings.notYetDue().stream()
                .filter(finding -> concerns(finding, about))
                .forEach(finding -> stages.computeIfAbsent(finding.due(), stage -> new ArrayList<>())
                        .add(row(finding, links)));
        List<Group> later = new ArrayList<>();
        stages.forEach((stage, rows) -> later.add(
                new Group("later-" + stage.word(), rows.size() + " from the stage " + stage.word() + " on", rows)));
        return new FindingsPage(
                answer(findings, about),
                about,
                groups,
                later,
                off(now),
                findings.failures().stream().map(FindingsPage::failure).toList());
    }

    private static boolean concerns(Finding finding, @Nullable String about) {
        return about == null || finding.subjects().stream().map(Subject::path).anyMatch(about::equals);
    }

    private static String answer(Findings findings, @Nullable String about) {
        long stop = count(findings, Severity.STOP, about);
        long fix = count(findings, Severity.FIX, about);
        long notes = count(findings, Severity.NOTE, about);
        String of = about == null ? "" : " about " + about.substring(about.indexOf('.') + 1);
        if (stop + fix + notes == 0) {
            return "Nothing is found" + of + " that matters at this stage.";
        }
        String stops = stop == 0
                ? "Nothing" + of + " stops the job"
                : stop == 1 ? "One finding" + of + " stops the job" : stop + " findings" + of + " stop the job";
        String fixes = fix == 0 ? "nothing is left to fix before the visit" : fix + " to fix before the visit";
        return stops + "; " + fixes + (notes == 0 ? "." : "; " + notes + (notes == 1 ? " note." : " notes."));
    }

    private static long count(Findings findings, Severity severity, @Nullable String about) {
        return findings.due().stream()
                .filter(finding -> finding.severity() == severity && concerns(finding, about))
                .count();
    }

    private static String title(Severity severity, int count) {
        return switch (severity) {
            case STOP -> count == 1 ? "One stops the job" : count + " stop the job";
            case FIX -> count + " to fix before the visit";
            case NOTE -> count == 1 ? "One note" : count + " notes";
        };
    }

    static Row row(Finding finding, Links links) {
        List<Thing> things = finding.subjects().stream()
                .map(subject -> thing(subject, links))
                .toList();
        List<Way> ways = new ArrayList<>();
        for (Fix fix : finding.fixes()) {
            ways.add(new Way(ways.size(), fix.words(), !fix.changes().isEmpty()));
        }
        return new Row(
                Keys.of(finding),
                finding.severity().word(),
                things.getFirst(),
                things.subList(1, Math.min(things.size(), MOST_THINGS)),
                Math.max(0, things.size() - MOST_THINGS),
                finding.message(),
                finding.rule(),
                finding.evidence().stream().map(FindingsPage::figure).toList(),
                finding.source() instanceof Source.TheProject
                        ? ""
                        : finding.source().text(),
                ways);
    }

    private static Thing thing(Subject subject, Links links) {
        return new Thing(subject.id(), subject.kind(), links.of(subject));
    }

    private static String figure(Value value) {
        Double limit = value.limit();
        return value.what() + " " + number(value.found(), value.unit())
                + (limit == null ? "" : ", limit " + number(limit, value.unit()));
    }

    private static String number(double number, String unit) {
        return Figures.trimmed(number, 2) + (unit.isEmpty() ? "" : "\u00A0" + unit);
    }

    private static List<Off> off(Now now) {
        List<Off> off = new ArrayList<>();
        for (int i = 0; i < now.project().exempt().size(); i++) {
            var entry = now.project().exempt().get(i);
            List<String> messages = now.study().findings().exempted().stream()
                    .filter(each -> each.by().equals(entry))
                    .map(Exempted::finding)
                    .map(Finding::message)
                    .toList();
            String message = messages.isEmpty()
                    ? "Nothing is found any more that this switches off."
                    : messages.getFirst() + (messages.size() == 1 ? "" : " (and " + (messages.size() - 1) + " more)");
            off.add(new Off(
                    i, message, entry.rule(), entry.subject() == null ? "everything" : entry.subject(), entry.why()));
        }
        return off;
    }

    private static String failure(RuleFailure failure) {
        return "The rule " + failure.rule() + " failed by a fault in Housewright (" + failure.what()
                + "); what it would have found is not known.";
    }
}
