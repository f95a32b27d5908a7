package housewright.paper;

import housewright.model.Event;
import housewright.model.Person;
import housewright.model.Words;
import housewright.study.Study;
import housewright.work.WorkTask;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** For each person, day by day, when to be there and what to do, by the accepted plan. */
final class DailyCalls extends Titled {
    DailyCalls() {
        super(
                "daily-calls",
                "Daily calls",
                "Each person on the job",
                "When am I needed, where, for what, with whom, and what do I bring?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        List<Planned> all = Planned.all(study);
        List<Sheet> sheets = new ArrayList<>();
        for (Person person : study.project().people().values()) {
            List<Planned> own = all.stream()
                    .filter(each -> each.plan().people().contains(person.id()))
                    .toList();
            if (!own.isEmpty()) {
                sheets.add(sheet(study, person, own));
            }
        }
        return sheets;
    }

    private Sheet sheet(Study study, Person person, List<Planned> own) {
        List<Block> blocks = new ArrayList<>();
        Planned.byDay(own).forEach((day, tasks) -> {
            blocks.add(new Block.Heading(
                    Planned.said(day) + ", from " + tasks.getFirst().time().split("–", 2)[0]));
            String events = events(study, day);
            if (!events.isEmpty()) {
                blocks.add(new Block.Text("That day in the room: " + events + "."));
            }
            cautions(tasks)
                    .forEach((caution, times) ->
                            blocks.add(new Block.Caution(String.join(", ", times) + ": " + caution)));
            List<Row> rows = new ArrayList<>();
            tasks.forEach(each -> rows.add(row(each, person)));
            blocks.add(new Block.Table(
                    "calls",
                    List.of(
                            Column.text("Day", 11),
                            Column.text("Time", 12),
                            Column.text("What", 40),
                            Column.text("Where", 20),
                            Column.text("With", 14),
                            Column.text("Needs", 22),
                            Column.text("Done", 6)),
                    rows));
        });
        String role = person.role() == null ? "" : ", " + person.role();
        return Sheet.lying("call-" + person.id(), Words.said(person.id()) + role, recipient(), blocks);
    }

    /** What to mind that day, with when the tasks begin that it is of. */
    private static Map<String, Set<String>> cautions(List<Planned> tasks) {
        Map<String, Set<String>> times = new LinkedHashMap<>();
        for (Planned each : tasks) {
            if (each.task() != null) {
                each.task()
                        .cautions()
                        .forEach(caution -> times.computeIfAbsent(caution, what -> new LinkedHashSet<>())
                                .add(each.time().split("–", 2)[0]));
            }
        }
        return times;
    }

    private static Row row(Planned each, Person person) {
        List<String> others = each.plan().people().stream()
                .filter(id -> !id.equals(person.id()))
                .toList();
        WorkTask task = each.task();
        List<String> needs = new ArrayList<>();
        if (!each.plan().hires().isEmpty()) {
            needs.add(Planned.said(each.plan().hires()));
        }
        if (task != null) {
            task.conditions()
                    .forEach(condition -> needs.add("room " + condition.word().replace('-', ' ')));
            task.deliveries().forEach(order -> needs.add("delivery " + order));
        }
        return new Row(
                each.key(),
                List.of(
                        Cell.of(each.day().toString()),
                        Cell.of(each.time()),
                        Cell.of(each.title()),
                        Cell.of(task != null && task.remote() ? "from afar" : each.places()),
                        Cell.of(Planned.said(others)),
                        Cell.of(String.join("; ", needs)),
                        Cell.BOX));
    }

    private static String events(Study study, LocalDate day) {
        List<String> here = new ArrayList<>();
        for (Event event : study.project().events().values()) {
            if (event.from() != null && event.from().toLocalDate().equals(day) && !"elsewhere".equals(event.at())) {
                here.add(Words.said(event.id()) + " at " + event.from().toLocalTime());
            }
        }
        return String.join(", ", here);
    }
}
