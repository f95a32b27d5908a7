package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.cable.Span;
import housewright.cable.Span.Basis;
import housewright.finding.Subject;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How cables, lengths and lists are said here. */
final class Said {
    private static final int NAMED = 4;

    private Said() {}

    /** With one decimal where it needs one: "62 m", "7.5 m". */
    static String metres(double metres) {
        return number(metres) + " m";
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** "C1 is 3 m too long for ", "C1 and C2 are 3 m too long for ". */
    static String tooLong(Line line, double overMetres) {
        return are(line) + metres(overMetres) + " too long for ";
    }

    /** "C1 is ", "C1 and C2 are ". */
    static String are(Line line) {
        return all(line.ids()) + (line.leads().size() == 1 ? " is " : " are ");
    }

    /** "62 m as stated", or how it was worked out. */
    static String length(Span span) {
        return metres(span.metres()) + (span.basis() == Basis.STATED ? " as stated" : workedOut());
    }

    /** The same of a whole run. */
    static String length(Line line) {
        Double metres = line.metres();
        return length(metres == null ? 0 : metres, line.leads());
    }

    /** The same of several cables together. */
    static String length(double metres, List<Lead> leads) {
        boolean stated = leads.stream().allMatch(lead -> isOf(lead, Basis.STATED));
        boolean along = leads.stream().allMatch(lead -> isOf(lead, Basis.ALONG_PATHWAYS));
        return metres(metres)
                + (stated ? " as stated" : along ? workedOut() : ", in part stated and in part worked out");
    }

    private static String workedOut() {
        return ", worked out with " + metres(Span.SLACK_M) + " of slack at each end";
    }

    private static boolean isOf(Lead lead, Basis basis) {
        return lead.span() != null && lead.span().basis() == basis;
    }

    /** "C1, C2 and C3". */
    static String all(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** As many as one reads: "C1, C2, C3, C4 and 7 more". */
    static String some(Collection<String> names) {
        List<String> each = List.copyOf(names);
        return each.size() <= NAMED + 1
                ? all(each)
                : String.join(", ", each.subList(0, NAMED)) + " and " + (each.size() - NAMED) + " more";
    }

    /** "one cable", "3 cables". */
    static String count(int count, String thing) {
        return count == 1 ? "one " + thing : count + " " + thing + "s";
    }

    /** The kinds of cable of a run, each once. */
    static String types(Line line) {
        List<String> types = new ArrayList<>();
        for (Lead lead : line.leads()) {
            if (lead.type() != null && !types.contains(lead.type().id())) {
                types.add(lead.type().id());
            }
        }
        return all(types);
    }

    static List<Subject> subjects(Collection<String> cables) {
        return cables.stream().map(Subject::cable).toList();
    }

    static Subject pathway(String id) {
        return new Subject("pathway", id);
    }

    static String end(@Nullable Plug plug) {
        return plug == null ? "its loose end" : plug.at().saidPort();
    }

    static String place(String id) {
        return Words.said(id);
    }
}
