package housewright.paper;

import housewright.model.AcceptedPlan;
import housewright.model.PlannedTask;
import housewright.model.Stretch;
import housewright.model.Words;
import housewright.study.Study;
import housewright.work.WorkTask;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * One stretch of a task of the accepted plan.
 *
 * @param again it was laid down before and is taken up again
 * @param task null where the work has no such task any more
 */
record Planned(
        PlannedTask plan,
        Stretch when,
        boolean again,
        @Nullable WorkTask task) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** In order of time; none where no plan is accepted. */
    static List<Planned> all(Study study) {
        AcceptedPlan plan = study.project().plan();
        List<Planned> all = new ArrayList<>();
        if (plan != null) {
            for (PlannedTask each : plan.times().values()) {
                WorkTask task = study.work().find(each.id()).orElse(null);
                for (Stretch stretch : each.stretches()) {
                    all.add(new Planned(each, stretch, !stretch.from().equals(each.from()), task));
                }
            }
        }
        all.sort(Comparator.comparing((Planned each) -> each.when().from())
                .thenComparing(each -> each.plan().id()));
        return all;
    }

    static Map<LocalDate, List<Planned>> byDay(List<Planned> all) {
        Map<LocalDate, List<Planned>> days = new TreeMap<>();
        all.forEach(each ->
                days.computeIfAbsent(each.day(), day -> new ArrayList<>()).add(each));
        return days;
    }

    /** Tells it from the other stretches of all tasks. */
    String key() {
        return plan.id() + (again ? " " + when.from() : "");
    }

    LocalDate day() {
        return when.from().toLocalDate();
    }

    String time() {
        return TIME.format(when.from()) + "–" + TIME.format(when.to());
    }

    /** What is done; of a task that the work does not have any more, its id. */
    String title() {
        String title = task == null ? plan.id() + ": no longer among the tasks; ask before you do it" : task.title();
        return title + (again ? " (taken up again)" : "");
    }

    String places() {
        return task == null ? "" : said(task.places());
    }

    static String said(List<String> ids) {
        return String.join(", ", ids.stream().map(Words::said).toList());
    }

    static String said(LocalDate day) {
        return DAY.format(day);
    }
}
