package housewright.cli;

import housewright.app.ProjectFile;
import housewright.app.Saving;
import housewright.app.plan.Acceptance;
import housewright.app.plan.Calendars;
import housewright.app.plan.PlanDocument;
import housewright.app.plan.Planning;
import housewright.app.plan.ReadyDocument;
import housewright.app.plan.SolverProcess;
import housewright.file.ProjectText;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.plan.Effort;
import housewright.plan.Job;
import housewright.plan.Level;
import housewright.plan.Plan;
import housewright.plan.Ready;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.chance.Chance;
import housewright.plan.chance.Likelihood;
import housewright.plan.report.Reports;
import housewright.study.PlanBasis;
import housewright.study.Study;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Who does what when. */
@Command(
        name = "plan",
        header = "Plans who does what when, so that no service finds the room in pieces.",
        description = {
            "Takes the tasks that the change from today to the target implies, people's free times, hires, deliveries and events, and looks for the best plan: first that nothing is missed, then that all is done early, then with few days of hire. A plan is shown only when a check that shares nothing with the search has passed it, with the bound that no plan could beat.",
            "Where FILE holds an accepted plan and a log, what has begun stays, as little else as possible moves, and what moved is told with the reason. Pins (plan.pins in FILE) hold a task to people or to a start.",
            "Ctrl-C ends the search and shows the best plan so far.",
            "Exit status: 0 planned and nothing missed, 1 something is missed, 2 the file cannot be read or written, or nothing can be planned."
        })
final class PlanCommand extends FileCommand {
    private static final int DRAWS = 400;
    private static final int MOST_PATIENCE_S = 300; // telling what clashes in an overfull job takes a minute and more

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description =
                    "Plan from then on, such as 2027-03-15T08:30, or 2027-03-15 for the beginning of that day; without it, from this moment.")
    @Nullable
    LocalDateTime now;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "20",
            description = "How long to search, 1 to 3600; ${DEFAULT-VALUE} without it.")
    double seconds;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "The same plan each time, with one worker and a limit counted in work and not by the clock.")
    @Nullable
    Long seed;

    @Option(
            names = "--quick",
            description = "A plan at once, by rules of thumb alone, without the search for a better one.")
    boolean quick;

    @Option(names = "--person", paramLabel = "ID", description = "Show this person's work alone.")
    @Nullable
    String person;

    @Option(
            names = "--log",
            paramLabel = "LOGFILE",
            description =
                    "What happened on site, written as the section log of a project file; without it, FILE's own.")
    @Nullable
    String log;

    @Option(names = "--anew", description = "Leave the accepted plan aside, and look for the best from the beginning.")
    boolean anew;

    @Option(
            names = "--accept",
            description = "Write the plan into FILE as the one that holds; everything else in it stays as it is.")
    boolean accept;

    @Option(
            names = "--ready",
            paramLabel = "PERSON",
            description =
                    "Make no plan; list what this person could begin now by the accepted one, what most work waits for first.")
    @Nullable
    String ready;

    @Option(
            names = "--ics",
            paramLabel = "DIR",
            description = "Write a calendar for each person into this folder (iCalendar, PERSON.ics).")
    @Nullable
    String ics;

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    private final CountDownLatch shown = new CountDownLatch(1);

    PlanCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        if (!(seconds >= 1 && seconds <= 3600)) {
            return desk.refuse("--seconds takes 1 to 3600, but this is " + seconds + ".");
        }
        for (String each : Stream.of(person, ready).filter(Objects::nonNull).toList()) {
            if (!project.project().people().containsKey(each)) {
                return desk.refuse(project.name() + " has no person " + each + "; "
                        + Desk.instead(
                                each, project.project().people().keySet(), "its people are ", "it has no people yet."));
            }
        }
        ProjectFile happened = log == null ? project : desk.openLog(log, project);
        if (happened == null) {
            return Status.CANNOT;
        }
        Study study = desk.study(happened, false); // of the log, too: a task that it names stays by itself
        LocalDateTime from = now == null ? here(project.project()) : now;
        PlanBasis basis = desk.during(
                "Working the tasks out",
                () -> study.planBasis(from, happened.project().log()));
        if (!basis.unplanned().isEmpty()) {
            return desk.refuse(basis.unplanned());
        }
        if (ready != null) {
            return ready(basis, ready, from);
        }
        Effort effort = seed == null ? Effort.quick(1, seconds) : Effort.repeatable(seed, seconds);
        Request request = anew ? basis.anew(effort) : basis.request(effort);
        Plan plan = quick ? Planning.quick(request) : search(request);
        try {
            return show(project, basis, request, plan, from);
        } finally {
            shown.countDown();
        }
    }

    /** This moment where the project is. */
    private static LocalDateTime here(Project project) {
        ZoneId zone = project.about().timeZone();
        return LocalDateTime.now(zone == null ? ZoneId.systemDefault() : zone).truncatedTo(ChronoUnit.MINUTES);
    }

    private int show(ProjectFile project, PlanBasis basis, Request request, Plan plan, LocalDateTime from) {
        Job job = request.job();
        List<String> written = new ArrayList<>();
        if (accept) {
            Project accepted =
                    Change.apply(project.project(), List.of(Acceptance.of(job, plan, from, quick ? null : seed)));
            String text = ProjectText.edit(project.text(), project.name(), project.project(), accepted);
            if (desk.files.replace(project, text) instanceof Saving.NotSaved not) {
                return desk.refuse(not.why());
            }
            written.add("It is written into " + project.name() + " as the plan that holds.");
        }
        if (ics != null) {
            Map<String, String> calendars = calendars(project.project(), job, plan, from);
            if (desk.files.writeAll(ics, calendars) instanceof Saving.NotSaved not) {
                return desk.refuse(not.why());
            }
            written.add("Calendars written into " + ics + ": " + String.join(", ", calendars.keySet()) + ".");
        }
        List<Chance> chances = Likelihood.of(
                job, request.log(), plan.schedule(), request.effort().seed(), DRAWS);
        if (json) {
            desk.print(PlanDocument.of(job, plan, chances, basis.assumed()));
        } else {
            desk.print(new PlanText(
                            desk.page(), project.project().about().name(), job, plan, chances, basis.assumed(), person)
                    .write(written));
        }
        return plan.missed().isEmpty() ? Status.FINE : Status.STOPS;
    }

    private static Map<String, String> calendars(Project project, Job job, Plan plan, LocalDateTime from) {
        Calendars calendars =
                new Calendars(project.about().name(), project.about().timeZone(), job, plan, from);
        Map<String, String> files = new LinkedHashMap<>();
        job.people().stream()
                .map(each -> each.id())
                .filter(id -> plan.tasks().stream()
                        .anyMatch(task -> task.slot().people().contains(id)))
                .forEach(id -> files.put(id + ".ics", calendars.of(id)));
        return files;
    }

    private int ready(PlanBasis basis, String who, LocalDateTime from) {
        Schedule holds = basis.isAccepted()
                ? basis.accepted()
                : Planning.quick(basis.request(Effort.quick(1, seconds))).schedule();
        List<Ready> able = Reports.ready(basis.job(), basis.log(), holds, who);
        if (json) {
            desk.print(ReadyDocument.of(basis.job(), who, from, able));
        } else {
            desk.print(PlanText.ready(desk.page(), basis, who, able));
        }
        return Status.FINE;
    }

    /** Ctrl-C asks the search to end; the process stays until the plan is shown. */
    private Plan search(Request request) {
        Listener progress = new Listener();
        Thread onInterrupt = new Thread(() -> {
            progress.stop = true;
            desk.err.println("Stopping: the best plan so far is written down.");
            desk.err.flush();
            try {
                shown.await(MOST_PATIENCE_S, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        Runtime.getRuntime().addShutdownHook(onInterrupt);
        Plan plan = new Planning(new SolverProcess()).plan(request, progress);
        if (!progress.stop) {
            Runtime.getRuntime().removeShutdownHook(onInterrupt);
        }
        return plan;
    }

    private final class Listener implements housewright.plan.Progress {
        private volatile boolean stop;

        @Override
        public void better(Schedule schedule, Level level) {
            if (desk.screen.watched()) {
                desk.err.println(said(level));
                desk.err.flush();
            }
        }

        @Override
        public boolean stopped() {
            return stop;
        }

        private String said(Level level) {
            String known = level.proved() ? ", which no plan beats" : "";
            return switch (level.goal()) {
                case MISSED -> level.value() == 0 ? "A plan with nothing missed." : "A plan; not all can be done yet.";
                case MOVED -> "A plan that moves " + level.value() + " tasks" + known + ".";
                case FINISH -> "A plan that is done earlier" + known + ".";
                case HIRE_DAYS -> "A plan with " + level.value() + " days of hire" + known + ".";
                default ->
                    "A plan with less "
                            + level.goal().name().toLowerCase(Locale.ROOT).replace('_', ' ') + known + ".";
            };
        }
    }
}
