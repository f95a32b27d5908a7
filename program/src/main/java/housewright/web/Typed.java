package housewright.web;

import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.table.CellError;
import housewright.app.table.Edit;
import housewright.web.page.TablePage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Forms beside a drawing: what was typed comes back where it could not be done. */
final class Typed {
    private static final String BEFORE = "t-";
    private static final int MOST = 4;
    private static final int LONGEST = 200;

    private Typed() {}

    /** What the page before this one could not do, by field. */
    static Map<String, String> of(Visit visit) {
        Map<String, String> typed = new LinkedHashMap<>();
        visit.ctx.queryParamMap().forEach((name, values) -> {
            if (name.startsWith(BEFORE) && !values.isEmpty()) {
                typed.put(name.substring(BEFORE.length()), values.getFirst());
            }
        });
        return typed;
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
        StringBuilder address = new StringBuilder(withoutTyped(back));
        if (!done) {
            char next = address.indexOf("?") < 0 ? '?' : '&';
            address.append(next).append(BEFORE).append("form=").append(form);
            visit.ctx.formParamMap().forEach((name, values) -> {
                String value = values.isEmpty() ? "" : values.getFirst();
                if (!List.of("token", "back", "base").contains(name) && !value.isEmpty() && value.length() < LONGEST) {
                    address.append('&')
                            .append(BEFORE)
                            .append(TablePage.encoded(name))
                            .append('=')
                            .append(TablePage.encoded(value));
                }
            });
        }
        boolean plain = address.chars().allMatch(c -> c > 0x20 && c < 0x7f) && address.indexOf("\\") < 0;
        visit.goOn(plain ? address.toString() : page, notice);
    }

    private static String withoutTyped(String address) {
        int query = address.indexOf('?');
        if (query < 0) {
            return address;
        }
        String kept = String.join(
                "&",
                List.of(address.substring(query + 1).split("&", -1)).stream()
                        .filter(each -> !each.startsWith(BEFORE))
                        .toList());
        return address.substring(0, query) + (kept.isEmpty() ? "" : "?" + kept);
    }
}
