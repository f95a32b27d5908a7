package housewright.web.page;

import housewright.app.Now;
import housewright.app.plan.Standing;
import housewright.model.Equipment;
import housewright.model.LogEntry;
import housewright.model.SiteState;
import housewright.plan.Job;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Slot;
import housewright.plan.Window;
import housewright.work.WorkTask;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Daily call: when one person is needed on one day, what they bring, and what comes first.
 *
 * @param people those with work in the plan
 * @param days those on which the person has work
 * @param person whose; empty where no plan is accepted
 * @param calendar where their calendar is
 * @param bring what they should have with them
 */
public record CallPage(
        String answer,
        String under,
        List<Choice> people,
        List<Choice> days,
        String person,
        String calendar,
        List<String> bring,
        List<Row> rows,
        List<String> cautions) {
    public CallPage {
        people = List.copyOf(people);
        days = List.copyOf(days);
        bring = List.copyOf(bring);
        rows = List.copyOf(rows);
        cautions = List.copyOf(cautions);
    }

    /**
     * @param first what must be done before, by others or on another day, with when it is
     * @param uses things and cables it is about
     */
    public record Row(
            String task,
            String href,
            String title,
            String time,
            String where,
            String with,
            String hire,
            List<String> first,
            List<String> uses,
            String slack,
            String mark,
            String state,
            boolean begun,
            boolean done) {
        public Row {
            first = List.copyOf(first);
            uses = List.copyOf(uses);
        }
    }

    /**
     * @param person asked for; null for the first
     * @param day asked for; null for today, or the first day after it on which there is work
     */
    public static CallPage of(
            Now now, Standing standing, @Nullable String person, @Nullable LocalDate day, String home) {
        Plan plan = standing.plan();
        Job job = standing.basis().job();
        if (plan == null) {
            return new CallPage(
                    "No plan is accepted yet, so nobody is called",
                    "",
                    List.of(),
                    List.of(),
                    "",
                    "",
                    List.of(),
                    List.of(),
                    List.of());
        }
        Set<String> busy = new LinkedHashSet<>();
        job.people().stream()
                .map(each -> each.id())
                .filter(id -> plan.tasks().stream()
                        .anyMatch(task -> task.slot().people().contains(id)))
                .forEach(busy::add);
        String who = person != null && busy.contains(person)
                ? person
                : busy.stream().findFirst().orElse("");
        TreeSet<LocalDate> days = new TreeSet<>();
        plan.tasks().stream()
                .filter(task -> task.slot().people().contains(who))
                .forEach(task -> task.slot()
                        .pieces()
                        .forEach(piece -> days.add(job.firstDay().plusDays(piece.from() / Job.DAY))));
        LocalDate on = on(days, day, standing.now().toLocalDate());
        String address = home + "/call?person=" + TaskWords.encoded(who);
        List<Choice> choices = busy.stream()
                .map(id -> new Choice(id, home + "/call?person=" + TaskWords.encoded(id), id.equals(who)))
                .toList();
        List<Choice> dates = days.stream()
                .map(each -> new Choice(Dates.day(each), address + "&day=" + each, each.equals(on)))
                .toList();
        if (on == null) {
            return new CallPage(
                    "Nobody has work in the plan", "", choices, dates, who, "", List.of(), List.of(), List.of());
        }
        return day(now, standing, plan, job, who, on, home, choices, dates);
    }

    private static @Nullable LocalDate on(TreeSet<LocalDate> days, @Nullable LocalDate asked, LocalDate today) {
        if (asked != null && days.contains(asked)) {
            return asked;
        }
        LocalDate next = days.ceiling(today);
        return next != null ? next : days.isEmpty() ? null : days.last();
    }

    private static CallPage day(
            Now now,
            Standing standing,
            Plan plan,
            Job job,
            String who,
            LocalDate on,
            String home,
            List<Choice> people,
            List<Choice> days) {
        List<Row> rows = new ArrayList<>();
        Set<String> bring = new LinkedHashSet<>();
        Set<String> cautions = new LinkedHashSet<>();
        double highest = 0;
        int from = Integer.MAX_VALUE;
        int to = 0;
        int number = (int) java.time.temporal.ChronoUnit.DAYS.between(job.firstDay(), on);
        for (Planned task : plan.tasks()) {
            for (Window piece : task.slot().pieces()) {
                if (piece.from() / Job.DAY != number || !task.slot().people().contains(who)) {
                    continue;
                }
                from = Math.min(from, piece.from());
                to = Math.max(to, piece.to());
                WorkTask work = now.study().work().find(task.slot().task()).orElse(null);
                List<String> uses = work == null ? List.of() : uses(work);
                bring.addAll(brought(now, uses));
                if (work != null) {
                    cautions.addAll(work.cautions());
                    highest = Math.max(highest, work.heightM() == null ? 0 : work.heightM());
                }
                rows.add(row(now, job, plan, task, piece, who, number, uses, home));
            }
        }
        rows.sort(java.util.Comparator.comparing(Row::time));
        double reach = now.study().types().practice().reach() == null
                ? 2
                : now.study().types().practice().reach().metres();
        if (highest > reach) {
            bring.add(String.format(Locale.ROOT, "steps, a tower or a lift: the highest point is at %.1f m", highest));
        }
        return new CallPage(
                who + ", " + Dates.day(on) + ": needed " + TaskWords.time(job, from) + " to " + TaskWords.time(job, to),
                standing.holds() ? "" : "The plan does not hold any more; ask the lead before you set out.",
                people,
                days,
                who,
                home + "/calendar/" + TaskWords.encoded(who),
                List.copyOf(bring),
                rows,
                List.copyOf(cautions));
    }

    private static Row row(
            Now now,
            Job job,
            Plan plan,
            Planned task,
            Window piece,
            String who,
            int day,
            List<String> uses,
            String home) {
        Slot slot = task.slot();
        LogEntry entry = TaskWords.entry(now.project(), slot.task());
        List<String> first = new ArrayList<>();
        for (String before : task.after()) {
            Slot is = plan.schedule().byTask().get(before);
            LogEntry done = TaskWords.entry(now.project(), before);
            boolean ended = done != null && done.state() == SiteState.DONE;
            boolean mine = is != null && is.people().contains(who) && is.start() / Job.DAY == day;
            if (is != null && !ended && !mine) {
                first.add(job.task(before).title() + ", " + TaskWords.people(is.people()) + ", by "
                        + TaskWords.moment(job.at(is.end())));
            }
        }
        String place = task.place() == null ? "" : task.place();
        String spot = job.task(slot.task()).site().spot();
        return new Row(
                slot.task(),
                TaskPage.href(home, slot.task()),
                task.title(),
                TaskWords.time(job, piece.from()) + "–" + TaskWords.time(job, piece.to()),
                spot.isEmpty() || spot.equals(place) ? place : place.isEmpty() ? spot : place + ", " + spot,
                String.join(
                        ", ",
                        slot.people().stream().filter(each -> !each.equals(who)).toList()),
                task.hire() == null ? "" : task.hire(),
                first,
                uses,
                entry != null
                        ? ""
                        : task.slackMinutes() == 0
                                ? "cannot slip"
                                : "may slip " + TaskWords.minutes(task.slackMinutes()),
                TaskWords.mark(entry),
                TaskWords.said(entry),
                entry != null && entry.state() == SiteState.BEGUN,
                entry != null && entry.state() == SiteState.DONE);
    }

    private static List<String> uses(WorkTask work) {
        return work.about().stream()
                .filter(each -> each.startsWith("equipment.") || each.startsWith("cables."))
                .map(each -> each.substring(each.indexOf('.') + 1))
                .distinct()
                .toList();
    }

    /** What is new and goes to where it is used; what is there already is not carried. */
    private static List<String> brought(Now now, List<String> uses) {
        return uses.stream()
                .filter(id -> {
                    Equipment thing = now.project().equipment().get(id);
                    var cable = now.project().cables().get(id);
                    return (thing != null && thing.life() == housewright.model.Life.NEW)
                            || (cable != null && cable.life() == housewright.model.Life.NEW);
                })
                .toList();
    }
}
