package housewright.cli;

import housewright.app.ProjectFile;
import housewright.app.plan.PlanDocument;
import housewright.app.plan.Planning;
import housewright.app.plan.SolverProcess;
import housewright.plan.Effort;
import housewright.plan.Job;
import housewright.plan.Level;
import housewright.plan.Log;
import housewright.plan.Plan;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.chance.Chance;
import housewright.plan.chance.Likelihood;
import housewright.study.PlanJob;
import housewright.study.Study;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Who does what when. */
@Command(
        name = "plan",
        header = "Plans who does what when, so that no service finds the room in pieces.",
        description = {
            "Takes the tasks that the change from today to the target implies, people's free times, hires, deliveries and events, and looks for the best plan: first that nothing is missed, then that all is done early, then with few days of hire. A plan is shown only when a check that shares nothing with the search has passed it, with the bound that no plan could beat.",
            "Ctrl-C ends the search and shows the best plan so far.",
            "Exit status: 0 planned and nothing missed, 1 something is missed, 2 the file cannot be read or nothing can be planned."
        })
final class PlanCommand implements Callable<Integer> {
    private static final int DRAWS = 400;
    private static final int MOST_PATIENCE_S = 300; // telling what clashes in an overfull job takes a minute and more

    @Parameters(index = "0", paramLabel = "FILE", description = "Project file, YAML or JSON; - reads standard input.")
    String file = "";

    @Option(
            names = "--now",
            paramLabel = "TIME",
            description = "Plan from then on, such as 2027-03-15T08:30; without it, from this moment.")
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

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    private final Desk desk;
    private final CountDownLatch shown = new CountDownLatch(1);

    PlanCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        if (!(seconds >= 1 && seconds <= 3600)) {
            return desk.refuse("--seconds takes 1 to 3600, but this is " + seconds + ".");
        }
        ProjectFile project = desk.open(file);
        if (project == null) {
            return Status.CANNOT;
        }
        if (person != null && !project.project().people().containsKey(person)) {
            return desk.refuse(project.name() + " has no person " + person + "; its people are "
                    + String.join(", ", project.project().people().keySet()) + ".");
        }
        Study study = desk.study(project, false);
        LocalDateTime from =
                now == null ? LocalDateTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.MINUTES) : now;
        PlanJob asked = desk.during("Working the tasks out", () -> study.planJob(from.toLocalDate()));
        if (!asked.unplanned().isEmpty()) {
            return desk.refuse(asked.unplanned());
        }
        Request request = request(asked.job(), from);
        Plan plan = quick ? Planning.quick(request) : search(request);
        List<Chance> chances = Likelihood.of(
                request.job(), request.log(), plan.schedule(), request.effort().seed(), DRAWS);
        if (json) {
            desk.print(PlanDocument.of(request.job(), plan, chances, asked.assumed()));
        } else {
            desk.print(new PlanText(
                            desk.page(),
                            study.project().about().name(),
                            request.job(),
                            plan,
                            chances,
                            asked.assumed(),
                            person)
                    .write());
        }
        shown.countDown();
        return plan.missed().isEmpty() ? Status.FINE : Status.STOPS;
    }

    private Request request(Job job, LocalDateTime from) {
        Effort effort = seed == null ? Effort.quick(1, seconds) : Effort.repeatable(seed, seconds);
        int minute = Math.clamp(ChronoUnit.MINUTES.between(job.firstDay().atStartOfDay(), from), 0, job.end());
        return Request.of(job, effort).withLog(new Log(minute, List.of(), List.of(), Map.of(), Map.of()));
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
