package housewright.cli;

import housewright.app.Figures;
import housewright.model.TaskKind;
import housewright.study.Study;
import housewright.work.Portion;
import housewright.work.Work;
import housewright.work.WorkTask;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The answer of {@code work}: how much there is, then the tasks kind by kind. */
final class WorkText {
    private static final int MOST_TASKS = 3;
    private static final int MOST_NOTES = 6;
    private static final int MOST_FIRST = 6;

    private final Page page;
    private final Work work;
    private final String name;
    private final String file;
    private final boolean all;

    /** @param file as the user named it, for the commands that are suggested */
    WorkText(Page page, Study study, String file, boolean all) {
        this.page = page;
        this.work = study.work();
        this.name = study.project().about().name();
        this.file = file;
        this.all = all;
    }

    Page write() {
        List<WorkTask> tasks = work.tasks();
        if (tasks.isEmpty()) {
            return page.wrapped(Ink.STRONG, name + ": nothing to do.")
                    .wrapped(
                            "Nothing differs between today and the target. Say what becomes of things with life:, and what differs today with was:.");
        }
        page.wrapped(
                Ink.STRONG,
                name + ": " + tasks.size() + (tasks.size() == 1 ? " task" : " tasks") + ", "
                        + hours(personMinutes(tasks)) + " of work for one person.");
        summary(tasks);
        Map<TaskKind, List<WorkTask>> kinds = new EnumMap<>(TaskKind.class);
        tasks.forEach(task ->
                kinds.computeIfAbsent(task.kind(), each -> new ArrayList<>()).add(task));
        kinds.forEach(this::kind);
        notes();
        if (!all) {
            page.blank().hanging("All of them: ", "housewright work " + file + " --all");
            page.hanging(
                    "One of them: ",
                    "housewright work " + file + " " + tasks.getFirst().id());
        }
        return page;
    }

    private static double personMinutes(List<WorkTask> tasks) {
        return tasks.stream()
                .mapToDouble(task -> task.takes().mean() * task.crew())
                .sum();
    }

    private static String hours(double minutes) {
        return minutes < 57.5
                ? Figures.minutes((int) Math.max(5, 5 * Math.round(minutes / 5)))
                : Math.round(minutes / 60) + "\u00A0h";
    }

    private void summary(List<WorkTask> tasks) {
        List<WorkTask> before = tasks.stream().filter(WorkTask::beforehand).toList();
        List<WorkTask> up = tasks.stream().filter(WorkTask::overhead).toList();
        List<WorkTask> hired =
                tasks.stream().filter(task -> !task.hires().isEmpty()).toList();
        Set<String> apart = new LinkedHashSet<>();
        tasks.forEach(task -> apart.addAll(task.takesApart()));
        if (!before.isEmpty()) {
            page.hanging(
                    "  Before the visit: ",
                    before.size() + (before.size() == 1 ? " task, " : " tasks, ") + hours(personMinutes(before)) + ".");
        }
        if (!up.isEmpty()) {
            page.hanging(
                    "  Overhead: ",
                    up.size() + (up.size() == 1 ? " task, " : " tasks, ") + hours(personMinutes(up))
                            + (hired.isEmpty() ? ", and nothing hired that gets anybody up" : "") + ".");
        }
        if (!apart.isEmpty()) {
            page.hanging("  Stop working on the way: ", String.join(", ", apart) + ".");
        }
    }

    private void kind(TaskKind kind, List<WorkTask> tasks) {
        page.blank().wrapped(Ink.STRONG, heading(kind) + ": " + tasks.size() + ", " + hours(personMinutes(tasks)));
        int shown = all ? tasks.size() : Math.min(MOST_TASKS, tasks.size());
        for (WorkTask task : tasks.subList(0, shown)) {
            page.hanging("  ", task.title() + ". " + figures(task) + " [" + task.id() + "]");
        }
        if (tasks.size() > shown) {
            page.line("  … and " + (tasks.size() - shown) + " more; --all shows them.");
        }
    }

    private static String figures(WorkTask task) {
        List<String> figures =
                new ArrayList<>(List.of(Figures.minutes(task.takes().likely())));
        if (task.crew() > 1) {
            figures.add(task.crew() + "\u00A0people");
        }
        figures.addAll(task.skills());
        figures.addAll(task.hires());
        task.conditions().forEach(each -> figures.add("room " + each.word()));
        figures.addAll(task.who());
        return String.join(", ", new LinkedHashSet<>(figures));
    }

    private static String heading(TaskKind kind) {
        return switch (kind) {
            case PREPARE -> "Files made beforehand";
            case PLAN_NETWORK -> "Network plan";
            case PRINT_LABELS -> "Labels";
            case RECEIVE -> "Deliveries";
            case FETCH -> "Hired things fetched";
            case COPY -> "Copies of the old";
            case TAKE_OUT -> "Cables out";
            case STRIKE -> "Things out";
            case MOVE -> "Moved";
            case MOUNT -> "Mounted";
            case SECURE -> "Safety attachments";
            case WIRE -> "Mains wiring";
            case PULL -> "Pulled";
            case TERMINATE -> "Made off";
            case LEADS -> "Loose leads";
            case LABEL -> "Labelled";
            case TEST -> "Tested";
            case REPLUG -> "Plugged elsewhere";
            case CONNECT -> "Plugged in";
            case POWER -> "Mains plugs";
            case ADDRESS -> "Addresses of fixtures";
            case TERMINATOR -> "Terminators";
            case CONFIGURE -> "Set up";
            case LOAD -> "Files loaded";
            case TUNE -> "Radio";
            case FOCUS -> "Focus";
            case LOOK -> "Looks";
            case ALIGN -> "Loudspeakers set";
            case PROVE -> "Feeds proven";
            case TRAIN -> "Training";
            case RETURN -> "Hired things taken back";
            case REHEARSE -> "Rehearsal";
            case OWN -> "The project's own tasks";
        };
    }

    private void notes() {
        List<String> notes = work.notes();
        if (notes.isEmpty()) {
            return;
        }
        page.blank();
        int shown = all ? notes.size() : Math.min(MOST_NOTES, notes.size());
        notes.subList(0, shown).forEach(note -> page.hanging(Ink.FIX, "▲ ", note));
        if (notes.size() > shown) {
            page.line("  … and " + (notes.size() - shown) + " more; --all shows them.");
        }
    }

    /** Everything that is known of one task. */
    Page one(WorkTask task) {
        page.wrapped(Ink.STRONG, task.title() + ".");
        task.parts().forEach(each -> page.hanging("  - ", each + "."));
        page.hanging("  Why: ", task.why());
        page.hanging(
                "  Takes: ",
                Figures.minutes(task.takes().likely()) + ", at best "
                        + Figures.minutes(task.takes().least())
                        + ", at worst " + Figures.minutes(task.takes().most())
                        + (task.crew() > 1 ? "; " + task.crew() + " people" : "") + reckoned(task) + ".");
        list("Needs: ", needs(task));
        list("Where: ", task.places());
        list("Comes after: ", shortened(task.after()));
        list("Then: ", shortened(then(task)));
        list("Stops on the way: ", task.takesApart());
        list(
                "Uses: ",
                task.deliveries().stream().map(each -> "the delivery " + each).toList());
        list("In no order: ", task.unordered());
        list("Taken for granted: ", task.assumed());
        task.cautions().forEach(each -> page.hanging(Ink.STOP, "  ! ", each));
        if (task.mayWait()) {
            page.hanging("  ", "Nothing new waits for it: it can stay until the first service has passed.");
        }
        page.blank()
                .hanging(
                        "  ",
                        "Change it in the project under tasks: " + task.id()
                                + ": {takes: …, who: […], after: […]}, or leave it out with skip: yes.");
        return page;
    }

    private static String reckoned(WorkTask task) {
        List<String> parts = new ArrayList<>();
        for (Portion part : task.reckoned()) {
            parts.add(Figures.trimmed(part.count(), 2) + "\u00A0" + part.unit());
        }
        return parts.isEmpty() ? ", as the project says" : " (" + String.join(", ", parts) + ")";
    }

    private static List<String> needs(WorkTask task) {
        List<String> needs = new ArrayList<>(task.who());
        needs.addAll(task.skills());
        needs.addAll(task.hires());
        task.conditions().forEach(each -> needs.add("the room " + each.word()));
        if (task.event() != null) {
            needs.add("the event " + task.event());
        }
        return List.copyOf(new LinkedHashSet<>(needs));
    }

    private List<String> then(WorkTask task) {
        return work.tasks().stream()
                .filter(each -> each.after().contains(task.id()))
                .map(WorkTask::id)
                .toList();
    }

    private List<String> shortened(List<String> ids) {
        if (all || ids.size() <= MOST_FIRST) {
            return ids;
        }
        List<String> shown = new ArrayList<>(ids.subList(0, MOST_FIRST));
        shown.add("and " + (ids.size() - MOST_FIRST) + " more");
        return shown;
    }

    private void list(String label, List<String> words) {
        if (!words.isEmpty()) {
            page.hanging("  " + label, String.join(", ", words) + ".");
        }
    }
}
