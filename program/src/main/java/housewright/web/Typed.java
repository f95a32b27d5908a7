package housewright.web;

import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.table.CellError;
import housewright.app.table.Edit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Forms whose edit was refused: what was typed comes back with the page. It is kept with whoever typed it, however long it
 * is; the address names it.
 */
final class Typed {
    private static final String NAME = "typed";
    private static final Set<String> OURS = Set.of("token", "back", "base", "revision");
    private static final int MOST = 4;

    private Typed() {}

    /** What the page before this one could not do, by field, with the form's name under {@code form}. */
    static Map<String, String> of(Visit visit) {
        return visit.session.typed(visit.ctx.queryParam(NAME));
    }

    /** Makes an edit that is worked out, or says why it is none, and goes back to where it was asked for. */
    static void settle(Visit visit, OpenProject job, Edit edit, String says, String page, String form) {
        long base = visit.number("base");
        switch (edit) {
            case Edit.Made made -> {
                Outcome outcome = job.edit(visit.author(), base, says, made.changes());
                back(visit, page, form, Said.of(outcome, says), outcome instanceof Outcome.Accepted);
            }
            case Edit.Wrong wrong -> refuse(visit, page, form, words(wrong.errors()));
            case Edit.Held held -> refuse(visit, page, form, "Others name it.");
        }
    }

    /** Nothing was done. */
    static void refuse(Visit visit, String page, String form, String why) {
        back(visit, page, form, new Session.Notice("Nothing was changed. " + why, true, false), false);
    }

    private static String words(List<CellError> errors) {
        return String.join(
                "\n",
                errors.stream()
                        .limit(MOST)
                        .map(error -> (error.column().isEmpty() ? "" : error.column() + ": ") + error.text())
                        .toList());
    }

    private static void back(Visit visit, String page, String form, Session.Notice notice, boolean done) {
        String asked = visit.field("back");
        String back = asked.startsWith(page) ? asked : page;
        visit.goOn(done ? without(back) : with(visit, form, back), notice);
    }

    /** The address of a page that shows what was typed into a form of it. */
    static String with(Visit visit, String form, String page) {
        Map<String, String> fields = new LinkedHashMap<>();
        visit.ctx.formParamMap().forEach((name, values) -> {
            if (!OURS.contains(name) && !values.isEmpty()) {
                fields.put(name, values.getFirst());
            }
        });
        fields.put("form", form);
        String bare = without(page);
        int fragment = bare.indexOf('#');
        String address = fragment < 0 ? bare : bare.substring(0, fragment);
        return address + (address.indexOf('?') < 0 ? '?' : '&') + NAME + "=" + visit.session.keep(fields)
                + (fragment < 0 ? "" : bare.substring(fragment));
    }

    /** The address of a page as it is for whoever has typed nothing. */
    static String without(String page) {
        return page.replaceFirst("\\?" + NAME + "=\\d*$", "")
                .replaceFirst("\\?" + NAME + "=\\d*#", "#")
                .replaceFirst("\\?" + NAME + "=\\d*&", "?")
                .replaceFirst("&" + NAME + "=\\d*", "");
    }
}
