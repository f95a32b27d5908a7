package housewright.web.page;

import housewright.app.Now;
import housewright.app.plan.Standing;
import housewright.finding.Subject;
import housewright.model.LogEntry;
import housewright.model.Pin;
import housewright.model.Task;
import housewright.plan.Job;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.work.WorkTask;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One task: why it is there, what it takes, when it is done and by whom, and how far it is.
 *
 * @param facts what is known of it, label and words
 * @param planned when and by whom in the accepted plan; empty where it is in none
 * @param whyThen why it is not earlier
 * @param cells what the project says of it beside what is worked out
 * @param people who may be chosen
 */
public record TaskPage(
        String id,
        String title,
        String why,
        boolean own,
        boolean changed,
        List<Fact> facts,
        List<LinkTo> about,
        List<LinkTo> before,
        List<LinkTo> after,
        List<String> cautions,
        List<String> assumed,
        String planned,
        String whyThen,
        String mark,
        String state,
        @Nullable String pinAt,
        String pinPeople,
        boolean pinned,
        Cells cells,
        List<String> people) {
    public TaskPage {
        facts = List.copyOf(facts);
        about = List.copyOf(about);
        before = List.copyOf(before);
        after = List.copyOf(after);
        cautions = List.copyOf(cautions);
        assumed = List.copyOf(assumed);
        people = List.copyOf(people);
    }

    /** One thing known. */
    public record Fact(String label, String words) {}

    /** @param href null where it has no page */
    public record LinkTo(String words, @Nullable String href) {}

    /** What the lead may change, as it is written. */
    public record Cells(String who, String takes, String least, String most, String crew, String note, boolean skip) {}

    /** The page of a task. */
    public static String href(String home, String task) {
        return home + "/work/" + TaskWords.encoded(task);
    }

    public static TaskPage of(Now now, Standing standing, WorkTask task, Links links, String home) {
        Job job = standing.basis().job();
        Task own = now.project().tasks().get(task.id());
        LogEntry entry = TaskWords.entry(now.project(), task.id());
        Pin pin = now.project().plan() == null
                ? null
                : now.project().plan().pins().get(task.id());
        Planned planned = planned(standing.plan(), task.id());
        List<String> waiting = now.study().work().downstream(List.of(task.id()));
        return new TaskPage(
                task.id(),
                task.title(),
                task.why(),
                task.own(),
                task.changed(),
                facts(task, waiting.size()),
                task.about().stream().map(each -> about(each, links)).toList(),
                task.after().stream().map(each -> other(now, each, home)).toList(),
                waiting.stream().limit(12).map(each -> other(now, each, home)).toList(),
                task.cautions(),
                task.assumed(),
                planned == null
                        ? ""
                        : TaskWords.when(job, planned.slot()) + " to "
                                + TaskWords.moment(job.at(planned.slot().end()))
                                + ", " + TaskWords.people(planned.slot().people())
                                + (entry != null
                                        ? ""
                                        : planned.slackMinutes() == 0
                                                ? "; it cannot slip"
                                                : "; it may slip by " + TaskWords.minutes(planned.slackMinutes())),
                planned == null ? "" : planned.why(),
                TaskWords.mark(entry),
                TaskWords.said(entry),
                pin == null || pin.from() == null ? null : pin.from().toString(),
                pin == null ? "" : String.join(", ", pin.people()),
                pin != null,
                cells(own),
                List.copyOf(now.project().people().keySet()));
    }

    private static @Nullable Planned planned(@Nullable Plan plan, String id) {
        return plan == null
                ? null
                : plan.tasks().stream()
                        .filter(each -> each.slot().task().equals(id))
                        .findFirst()
                        .orElse(null);
    }

    static Cells cells(@Nullable Task own) {
        return own == null
                ? new Cells("", "", "", "", "", "", false)
                : new Cells(
                        String.join(", ", own.who()),
                        own.takes() == null ? "" : own.takes().toString(),
                        own.least() == null ? "" : own.least().toString(),
                        own.most() == null ? "" : own.most().toString(),
                        own.crew() == null ? "" : own.crew().toString(),
                        own.remarks().note() == null ? "" : own.remarks().note(),
                        own.skip());
    }

    private static LinkTo about(String path, Links links) {
        int dot = path.indexOf('.');
        String section = dot < 0 ? path : path.substring(0, dot);
        String id = path.substring(dot + 1);
        String kind = section.equals("equipment") || section.equals("radio")
                ? section
                : section.endsWith("s") ? section.substring(0, section.length() - 1) : section;
        return new LinkTo(id, links.of(new Subject(kind, id)));
    }

    private static LinkTo other(Now now, String id, String home) {
        String title = now.study().work().find(id).map(WorkTask::title).orElse(id);
        LogEntry entry = TaskWords.entry(now.project(), id);
        return new LinkTo(title + (entry == null ? "" : " (" + TaskWords.said(entry) + ")"), href(home, id));
    }

    private static List<Fact> facts(WorkTask task, int waiting) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Kind", task.kind().word().replace('-', ' ')));
        facts.add(new Fact(
                "Takes",
                TaskWords.minutes(task.takes().likely()) + " most often, "
                        + TaskWords.minutes(task.takes().least()) + " to "
                        + TaskWords.minutes(task.takes().most())));
        if (!task.reckoned().isEmpty()) {
            facts.add(new Fact(
                    "Worked out from",
                    String.join(
                            ", ",
                            task.reckoned().stream()
                                    .map(each -> each.unit() + ": " + figure(each.count()) + " " + each.per())
                                    .toList())));
        }
        facts.add(new Fact(
                "People",
                (task.crew() == 1 ? "one" : Integer.toString(task.crew()))
                        + (task.skills().isEmpty() ? "" : ", able to do " + String.join(", ", task.skills()))));
        if (!task.who().isEmpty()) {
            facts.add(new Fact("Done by", String.join(", ", task.who())));
        }
        String where = String.join(", ", task.places().isEmpty() ? task.rooms() : task.places());
        facts.add(
                new Fact("Where", task.remote() ? "from afar" : where.isEmpty() ? "anywhere in the building" : where));
        if (task.heightM() != null) {
            facts.add(new Fact("Highest point", String.format(Locale.ROOT, "%.1f m above the floor", task.heightM())));
        }
        add(facts, "Hired", task.hires());
        add(
                facts,
                "The room",
                task.conditions().stream().map(each -> each.word()).toList());
        add(facts, "Waits for", task.deliveries());
        add(facts, "In no order yet", task.unordered());
        add(facts, "Takes apart", task.takesApart());
        add(facts, "Proves", task.proves());
        if (waiting > 0) {
            facts.add(new Fact("Others wait for it", waiting + (waiting == 1 ? " task" : " tasks")));
        }
        return facts;
    }

    private static void add(List<Fact> facts, String label, List<String> words) {
        if (!words.isEmpty()) {
            facts.add(new Fact(label, String.join(", ", words)));
        }
    }

    private static String figure(double count) {
        return count == Math.rint(count) ? Long.toString((long) count) : String.format(Locale.ROOT, "%.1f", count);
    }
}
