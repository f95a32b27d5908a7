package housewright.web.page;

import housewright.app.Now;
import housewright.app.plan.Standing;
import housewright.model.LogEntry;
import housewright.model.Pin;
import housewright.model.Task;
import housewright.plan.Job;
import housewright.plan.Slot;
import housewright.work.WorkTask;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Every task that the change implies, and the project's own.
 *
 * @param answer in a sentence
 * @param filter what is shown
 * @param kinds that may be chosen
 * @param rows those that fit the filter
 * @param foot how many, and how long they take
 */
public record WorkPage(
        String answer,
        String under,
        Filter filter,
        List<String> kinds,
        List<String> places,
        List<String> people,
        List<Row> rows,
        String foot) {
    public WorkPage {
        kinds = List.copyOf(kinds);
        places = List.copyOf(places);
        people = List.copyOf(people);
        rows = List.copyOf(rows);
    }

    /**
     * What is asked for; each empty for all.
     *
     * @param edit the row that is being edited
     */
    public record Filter(String kind, String place, String person, String words, String edit) {
        boolean isNothing() {
            return kind.isEmpty() && place.isEmpty() && person.isEmpty() && words.isEmpty();
        }

        /** The address of the page with this filter and one row to edit. */
        public String address(String home, String row) {
            return home + "/work?kind=" + TaskWords.encoded(kind) + "&place=" + TaskWords.encoded(place) + "&person="
                    + TaskWords.encoded(person) + "&words=" + TaskWords.encoded(words)
                    + (row.isEmpty() ? "" : "&edit=" + TaskWords.encoded(row) + "#" + TaskWords.encoded(row));
        }
    }

    /** One task. */
    public record Row(
            String id,
            String href,
            String title,
            String why,
            String kind,
            String where,
            String takes,
            String range,
            String people,
            String planned,
            String mark,
            String state,
            String pin,
            boolean changed,
            boolean own,
            boolean edited,
            TaskPage.Cells cells,
            @Nullable String pinAt,
            String pinPeople) {}

    public static WorkPage of(Now now, Standing standing, Filter filter, String home) {
        List<WorkTask> all = now.study().work().tasks();
        Map<String, Slot> slots = new LinkedHashMap<>(
                standing.plan() == null
                        ? standing.basis().accepted().byTask()
                        : standing.plan().schedule().byTask());
        TreeSet<String> kinds = new TreeSet<>();
        TreeSet<String> places = new TreeSet<>();
        all.forEach(task -> {
            kinds.add(task.kind().word());
            places.addAll(task.rooms());
            places.addAll(task.places());
        });
        List<WorkTask> shown =
                all.stream().filter(task -> fits(task, filter, slots)).toList();
        int minutes = shown.stream()
                .mapToInt(task -> (int) Math.round(task.takes().mean() * Math.max(1, task.crew())))
                .sum();
        long own = all.stream().filter(WorkTask::own).count();
        long changed = all.stream().filter(WorkTask::changed).count();
        long done = all.stream().filter(task -> isDone(now, task)).count();
        return new WorkPage(
                answer(all, done),
                all.isEmpty()
                        ? ""
                        : (own == 0 ? "None is" : own == 1 ? "One is" : own + " are") + " the project's own; "
                                + (changed == 0 ? "none was" : changed == 1 ? "one was" : changed + " were")
                                + " changed by hand.",
                filter,
                List.copyOf(kinds),
                List.copyOf(places),
                List.copyOf(now.project().people().keySet()),
                shown.stream()
                        .map(task -> row(now, standing, task, slots, filter, home))
                        .toList(),
                shown.size() + (shown.size() == 1 ? " task, " : " tasks, ") + TaskWords.minutes(minutes)
                        + " of one person's work"
                        + (filter.isNothing() ? "" : "; " + all.size() + " in all"));
    }

    private static boolean isDone(Now now, WorkTask task) {
        LogEntry entry = TaskWords.entry(now.project(), task.id());
        return entry != null && entry.state() == housewright.model.SiteState.DONE;
    }

    private static String answer(List<WorkTask> all, long done) {
        if (all.isEmpty()) {
            return "There is nothing to do: today and the target are the same";
        }
        return all.size() + (all.size() == 1 ? " task" : " tasks") + " lead from today to the target"
                + (done == 0 ? "" : ", " + done + " of them done");
    }

    private static boolean fits(WorkTask task, Filter filter, Map<String, Slot> slots) {
        Slot slot = slots.get(task.id());
        boolean person = filter.person().isEmpty()
                || task.who().contains(filter.person())
                || (slot != null && slot.people().contains(filter.person()));
        String text = (task.id() + " " + task.title() + " " + task.why()).toLowerCase(Locale.ROOT);
        return (filter.kind().isEmpty() || task.kind().word().equals(filter.kind()))
                && (filter.place().isEmpty()
                        || task.rooms().contains(filter.place())
                        || task.places().contains(filter.place()))
                && person
                && (filter.words().isEmpty() || text.contains(filter.words().toLowerCase(Locale.ROOT)));
    }

    private static Row row(
            Now now, Standing standing, WorkTask task, Map<String, Slot> slots, Filter filter, String home) {
        Job job = standing.basis().job();
        Slot slot = slots.get(task.id());
        Task own = now.project().tasks().get(task.id());
        LogEntry entry = TaskWords.entry(now.project(), task.id());
        Pin pin = now.project().plan() == null
                ? null
                : now.project().plan().pins().get(task.id());
        List<String> held = new ArrayList<>();
        if (pin != null && pin.from() != null) {
            held.add(TaskWords.moment(pin.from()));
        }
        if (pin != null) {
            held.addAll(pin.people());
        }
        String who = !task.who().isEmpty()
                ? String.join(", ", task.who())
                : (task.crew() == 1 ? "one" : Integer.toString(task.crew()))
                        + (task.skills().isEmpty() ? "" : " with " + String.join(", ", task.skills()));
        return new Row(
                task.id(),
                TaskPage.href(home, task.id()),
                task.title(),
                task.why(),
                task.kind().word().replace('-', ' '),
                task.remote() ? "from afar" : String.join(", ", task.places().isEmpty() ? task.rooms() : task.places()),
                TaskWords.minutes(task.takes().likely()),
                TaskWords.minutes(task.takes().least()) + " to "
                        + TaskWords.minutes(task.takes().most()),
                who,
                slot == null ? "" : TaskWords.when(job, slot) + ", " + TaskWords.people(slot.people()),
                TaskWords.mark(entry),
                TaskWords.said(entry),
                String.join(", ", held),
                task.changed(),
                task.own(),
                task.id().equals(filter.edit()),
                TaskPage.cells(own),
                pin == null || pin.from() == null ? null : pin.from().toString(),
                pin == null ? "" : String.join(", ", pin.people()));
    }
}
