package housewright.cli;

import housewright.plan.Clash;
import housewright.plan.Goal;
import housewright.plan.Job;
import housewright.plan.Level;
import housewright.plan.Log;
import housewright.plan.Move;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Readiness;
import housewright.plan.Ready;
import housewright.plan.Slot;
import housewright.plan.Solved;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.chance.Chance;
import housewright.study.PlanBasis;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The answer of {@code plan}: what comes of it, then day by day and person by person. */
final class PlanText {
    private static final int MOST_LINES = 8;
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final Page page;
    private final String name;
    private final Job job;
    private final Plan plan;
    private final List<Chance> chances;
    private final List<String> assumed;
    private final @Nullable String person;

    /** @param person whose work alone is shown; null for everybody's */
    PlanText(
            Page page,
            String name,
            Job job,
            Plan plan,
            List<Chance> chances,
            List<String> assumed,
            @Nullable String person) {
        this.page = page;
        this.name = name;
        this.job = job;
        this.plan = plan;
        this.chances = chances;
        this.assumed = assumed;
        this.person = person;
    }

    /** @param written what came of it beside this text, as sentences */
    Page write(List<String> written) {
        page.wrapped(Ink.STRONG, name + ": " + answer());
        bounds();
        written.forEach(each -> page.hanging("  ", each));
        missed();
        events();
        moved();
        days();
        assumed();
        page.blank()
                .wrapped(
                        "Work overhead, on the mains and with a lift is for those who are trained and licensed for it; what the local code says goes before this plan.");
        return page;
    }

    private String answer() {
        if (!plan.missed().isEmpty()) {
            return plan.saidMissed() + ".";
        }
        int end =
                plan.tasks().stream().mapToInt(each -> each.slot().end()).max().orElse(0);
        return "all " + plan.tasks().size() + " tasks are done by " + job.spoken(end) + ".";
    }

    private void bounds() {
        for (Level level : plan.levels()) {
            String value = said(level.goal(), level.value());
            if (!value.isEmpty()) {
                page.hanging("  ", value + bound(level) + ".");
            }
        }
        page.hanging("  ", ended());
    }

    /** Nothing where the bound says nothing. */
    private String bound(Level level) {
        return level.proved()
                ? "; no plan does better"
                : level.bound() <= 0 ? "" : "; no plan can do better than " + said(level.goal(), level.bound());
    }

    private String ended() {
        String ended = switch (plan.ended()) {
            case PROVED -> "The search is complete.";
            case LIMIT ->
                !plan.remark().isBlank()
                        ? plan.remark()
                        : "The search ended at its limit; a longer one (--seconds) may find better.";
            case STOPPED -> "The search was stopped; this is the best until then.";
            case BROKEN -> "The search broke off; this is the best until then.";
        };
        return plan.ended() == Solved.Ended.BROKEN && !plan.remark().isBlank() ? ended + " " + plan.remark() : ended;
    }

    private String said(Goal goal, long value) {
        return switch (goal) {
            case FINISH ->
                (plan.missed().isEmpty() ? "ready " : "what is in it is done ")
                        + job.spoken((int) Math.min(value, job.end()));
            case HIRE_DAYS -> value + (value == 1 ? " day of hire" : " days of hire");
            case MISSED, MOVED, HIRE_MOVES, IDLE -> "";
        };
    }

    private void missed() {
        if (plan.missed().isEmpty()) {
            return;
        }
        page.blank().line(Ink.STRONG, "Missed");
        for (String each :
                plan.missed().subList(0, Math.min(MOST_LINES, plan.missed().size()))) {
            page.hanging(Ink.STOP, "■ ", each);
        }
        if (plan.missed().size() > MOST_LINES) {
            page.line("  … and " + (plan.missed().size() - MOST_LINES) + " more; --json has them all.");
        }
        for (Clash clash : plan.clashes()) {
            page.blank().wrapped(clash.what() + (clash.proved() ? "" : " That there is none is not proved."));
            clash.wishes().forEach(wish -> page.hanging("  - ", wish));
            clash.ways().forEach(way -> page.hanging("  What would help: ", way));
        }
    }

    private void events() {
        if (plan.events().isEmpty()) {
            return;
        }
        page.blank().line(Ink.STRONG, "Events");
        for (Readiness each : plan.events()) {
            String likely = chances.stream()
                    .filter(chance -> chance.event().equals(each.event()))
                    .map(chance -> "; that it is kept is " + chance.likely().word() + ", as far as lengths are guessed")
                    .findFirst()
                    .orElse("");
            String when = job.spoken(job.event(each.event()).when().from());
            if (each.ready()) {
                page.hanging("✓ ", each.event() + ", " + when + ": whole" + likely + ".");
            } else {
                page.hanging(Ink.STOP, "■ ", each.event() + ", " + when + ": " + String.join(" ", each.lacks()));
            }
        }
    }

    private void moved() {
        if (plan.moves().isEmpty()) {
            return;
        }
        page.blank()
                .line(
                        Ink.STRONG,
                        plan.moves().size() == 1
                                ? "Moved: one task"
                                : "Moved: " + plan.moves().size() + " tasks");
        for (Move move : plan.moves()) {
            Slot to = move.to();
            page.hanging(
                    "→ ",
                    job.task(move.from().task()).title() + ": was " + when(move.from()) + ", is "
                            + (to == null ? "left out" : when(to)) + ". " + move.why() + " ["
                            + move.from().task() + "]");
        }
    }

    private String when(Slot slot) {
        return job.spoken(slot.start()) + (slot.people().isEmpty() ? "" : " by " + String.join(" and ", slot.people()));
    }

    /** What one person could begin now. */
    static Page ready(Page page, PlanBasis basis, String who, List<Ready> ready) {
        Job job = basis.job();
        String now = job.spoken(basis.log().now());
        page.wrapped(
                Ink.STRONG,
                ready.isEmpty()
                        ? who + " can begin nothing now, " + now + "."
                        : who + " can begin " + ready.size() + (ready.size() == 1 ? " task" : " tasks") + " now, " + now
                                + "; what most waits for comes first.");
        for (Log.Begun each : basis.log().begun()) {
            if (each.people().contains(who)) {
                page.hanging(
                        "  ",
                        "Begun already: " + job.task(each.task()).title() + ", about " + each.left() + " min more. ["
                                + each.task() + "]");
            }
        }
        for (Ready each : ready) {
            Task task = job.task(each.task());
            page.hanging(
                    "- ",
                    task.title() + ", " + task.length().planned(job.tick()) + " min. " + each.says() + " [" + task.id()
                            + "]");
        }
        if (!basis.isAccepted()) {
            page.blank().wrapped("No plan is accepted yet: what is to wait for an event is taken from a quick one.");
        }
        return page;
    }

    private void days() {
        Map<Integer, Map<String, List<String>>> days = new TreeMap<>();
        Map<Integer, Set<String>> hires = new TreeMap<>();
        for (Planned each : plan.tasks()) {
            for (Window piece : each.slot().pieces()) {
                int day = piece.from() / Job.DAY;
                for (String who : each.slot().people()) {
                    if (person == null || person.equals(who)) {
                        days.computeIfAbsent(day, key -> new TreeMap<>())
                                .computeIfAbsent(who, key -> new ArrayList<>())
                                .add(line(each, piece, who));
                    }
                }
                if (each.hire() != null) {
                    hires.computeIfAbsent(day, key -> new TreeSet<>()).add(each.hire());
                }
            }
        }
        days.forEach((day, people) -> {
            Set<String> hired = hires.getOrDefault(day, Set.of());
            page.blank()
                    .line(
                            Ink.STRONG,
                            job.spokenDay(day) + (hired.isEmpty() ? "" : " · hired: " + String.join(", ", hired)));
            new LinkedHashMap<>(people).forEach((who, lines) -> {
                page.line("  " + who);
                lines.forEach(line -> page.hanging("    ", line));
            });
        });
    }

    private String line(Planned task, Window piece, String who) {
        List<String> more = new ArrayList<>();
        List<String> others =
                task.slot().people().stream().filter(each -> !each.equals(who)).toList();
        if (!others.isEmpty()) {
            more.add("with " + String.join(", ", others));
        }
        if (task.hire() != null) {
            more.add(task.hire());
        }
        if (task.slackMinutes() == 0) {
            more.add("no slack");
        }
        return job.at(piece.from()).format(HOUR) + "–" + job.at(piece.to()).format(HOUR) + " " + task.title()
                + (more.isEmpty() ? "" : " (" + String.join("; ", more) + ")") + " ["
                + task.slot().task() + "]";
    }

    private void assumed() {
        if (assumed.isEmpty()) {
            return;
        }
        page.blank().line(Ink.STRONG, "Taken for granted");
        assumed.forEach(each -> page.hanging("  - ", each));
    }
}
