package housewright.bench;

import housewright.plan.Effort;
import housewright.plan.Goal;
import housewright.plan.Job;
import housewright.plan.Level;
import housewright.plan.Log;
import housewright.plan.Progress;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Solved;
import housewright.plan.axis.Grid;
import housewright.plan.check.PlanChecker;
import housewright.plan.check.Verdict;
import housewright.plan.cpsat.CpSatSolver;
import housewright.plan.list.ListScheduler;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Prints how well planning does: {@code psplib SET SECONDS EVERY} beside best-known values, {@code jobs SIZE SECONDS SEEDS} on
 * invented refits beside the proved bound, {@code replan SIZE SECONDS SEEDS} after one late part, {@code list SIZE SEEDS} for
 * the list scheduler alone. Every plan passes the independent checker, or the run ends.
 */
public final class PlanTables {
    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.UTF_8);

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private PlanTables() {}

    public static void main(String[] args) throws IOException {
        if (args.length < 2) {
            OUT.println(
                    "usage: bench/run plan psplib SET SECONDS EVERY | jobs SIZE SECONDS SEEDS | replan SIZE SECONDS SEEDS"
                            + " | list SIZE SEEDS");
            return;
        }
        switch (args[0]) {
            case "psplib" -> psplib(args[1], Double.parseDouble(args[2]), Integer.parseInt(args[3]));
            case "jobs" -> jobs(Integer.parseInt(args[1]), Double.parseDouble(args[2]), Integer.parseInt(args[3]));
            case "replan" -> replan(Integer.parseInt(args[1]), Double.parseDouble(args[2]), Integer.parseInt(args[3]));
            case "list" -> list(Integer.parseInt(args[1]), Integer.parseInt(args[2]));
            default -> throw new IllegalArgumentException("Not a table: " + args[0]);
        }
    }

    private static String print(String format, Object... values) {
        String text = String.format(Locale.ROOT, format, values);
        OUT.println(text);
        return text;
    }

    private static void psplib(String set, double seconds, int every) throws IOException {
        Path folder = Path.of(System.getProperty("housewright.psplib", "../shared/data/psplib"));
        if (!Files.isDirectory(folder)) {
            print("There is no %s: name the folder of the PSPLIB data with -Dhousewright.psplib=…", folder);
            return;
        }
        CpSatSolver.load();
        int count = 0;
        int proved = 0;
        int best = 0;
        int wrong = 0;
        double gaps = 0;
        double listGaps = 0;
        double worst = 0;
        List<Double> times = new ArrayList<>();
        for (Psplib.Instance instance : Psplib.read(folder, set, every)) {
            Request request = Request.of(instance.job(), Effort.quick(1, seconds));
            long begun = System.nanoTime();
            Schedule first = ListScheduler.longer(request);
            Solved solved = new CpSatSolver().solve(request, first, Progress.NONE);
            times.add(since(begun));
            long makespan = legal(request, solved.schedule()).values().get(Goal.FINISH);
            long listed = legal(request, first).values().get(Goal.FINISH);
            Level level = level(solved, Goal.FINISH);
            double gap = 100.0 * (makespan - instance.best()) / instance.best();
            count++;
            proved += level.proved() ? 1 : 0;
            best += makespan <= instance.best() ? 1 : 0;
            wrong += level.bound() > instance.best() ? 1 : 0;
            gaps += gap;
            listGaps += 100.0 * (listed - instance.best()) / instance.best();
            worst = Math.max(worst, gap);
            if (gap != 0 || level.bound() > instance.best()) {
                print(
                        "  %s %s: %d, best known %d, bound %d",
                        set, instance.name(), makespan, instance.best(), level.bound());
            }
        }
        times.sort(null);
        print(
                "%s, every %d, %.0f s each: %d instances; proved %d (%.1f %%); at best known %d (%.1f %%); mean gap %.3f %%, worst"
                        + " %.1f %%; list scheduler alone %.2f %%; bounds above best known %d; time s median %.3f, mean %.2f, max %.1f",
                set,
                every,
                seconds,
                count,
                proved,
                100.0 * proved / count,
                best,
                100.0 * best / count,
                gaps / count,
                worst,
                listGaps / count,
                wrong,
                times.get(count / 2),
                times.stream().mapToDouble(Double::doubleValue).average().orElse(0),
                times.getLast());
    }

    private static void list(int size, int seeds) {
        for (int round = 0; round < 3; round++) {
            for (long seed = 1; seed <= seeds; seed++) {
                Request request = Request.of(JobGenerator.of(size, seed), Effort.quick(1, 1));
                long begun = System.nanoTime();
                long worked = THREADS.getCurrentThreadCpuTime();
                Schedule one = ListScheduler.schedule(request, Grid.of(request.job(), Log.NOTHING), 1);
                double first = since(begun);
                double firstWork = (THREADS.getCurrentThreadCpuTime() - worked) / 1e9;
                worked = THREADS.getCurrentThreadCpuTime();
                Schedule more = ListScheduler.schedule(request);
                double all = (THREADS.getCurrentThreadCpuTime() - worked) / 1e9;
                print(
                        "%d tasks, seed %d, %s: first legal plan %.0f ms (processor %.0f ms), missed %d; usual rounds processor %.0f ms,"
                                + " missed %d",
                        size,
                        seed,
                        round == 0 ? "cold" : "warm",
                        first * 1000,
                        firstWork * 1000,
                        legal(request, one).values().get(Goal.MISSED),
                        all * 1000,
                        legal(request, more).values().get(Goal.MISSED));
            }
        }
    }

    private static void jobs(int size, double seconds, int seeds) {
        CpSatSolver.load();
        for (long seed = 1; seed <= seeds; seed++) {
            Job job = JobGenerator.of(size, seed);
            Request request = Request.of(job, Effort.quick(1, seconds / 0.65));
            Grid grid = Grid.of(job, Log.NOTHING);
            long begun = System.nanoTime();
            Schedule first = ListScheduler.longer(request);
            double listed = since(begun);
            Map<Double, Level> finish = new TreeMap<>();
            long solving = System.nanoTime();
            Solved solved = new CpSatSolver().solve(request, first, new Progress() {
                @Override
                public void better(Schedule schedule, Level level) {
                    bound(level);
                }

                @Override
                public void bound(Level level) {
                    if (level.goal() == Goal.FINISH) {
                        finish.put(since(solving), level);
                    }
                }
            });
            Verdict verdict = legal(request, solved.schedule());
            long start = job.people().getFirst().onSite().getFirst().from();
            Level last = finish.values().stream().reduce((one, two) -> two).orElse(level(solved, Goal.FINISH));
            double near = finish.entrySet().stream()
                    .filter(entry -> gap(grid, entry.getValue().value(), last.bound(), start) <= 2)
                    .mapToDouble(Map.Entry::getKey)
                    .findFirst()
                    .orElse(Double.NaN);
            print(
                    "%d tasks, seed %d: list scheduler's longer look %.0f ms (missed %d); finish: first %.2f s, within 2 %% of the bound %.1f s, after %.0f s gap"
                            + " %.1f %% of the on-site span%s; hire days %s; idle %s; missed %d; all goals %.1f s",
                    size,
                    seed,
                    listed * 1000,
                    legal(request, first).values().get(Goal.MISSED),
                    finish.keySet().stream().findFirst().orElse(Double.NaN),
                    near,
                    seconds,
                    gap(grid, last.value(), last.bound(), start),
                    last.proved() ? ", proved" : "",
                    text(solved, Goal.HIRE_DAYS),
                    text(solved, Goal.IDLE),
                    verdict.values().get(Goal.MISSED),
                    since(solving));
        }
    }

    private static String text(Solved solved, Goal goal) {
        return solved.levels().stream()
                .filter(level -> level.goal() == goal)
                .map(level -> "%d (bound %d)".formatted(level.value(), level.bound()))
                .findFirst()
                .orElse("-");
    }

    /** Percent of working time from the first day on site to the bound. */
    private static double gap(Grid grid, long value, long bound, long start) {
        int tick = grid.job.tick();
        int from = grid.atOrAfter((int) start / tick);
        int is = grid.atOrAfter((int) Math.max(0, value - 1) / tick) + 1;
        int least = grid.atOrAfter((int) Math.max(0, bound - 1) / tick) + 1;
        return 100.0 * (is - least) / Math.max(1, is - from);
    }

    private static void replan(int size, double seconds, int seeds) {
        CpSatSolver.load();
        List<Double> proved = new ArrayList<>();
        for (long seed = 1; seed <= seeds; seed++) {
            Job job = JobGenerator.of(size, seed);
            Schedule old = new CpSatSolver()
                    .solve(
                            Request.of(job, Effort.quick(1, 8)),
                            ListScheduler.schedule(Request.of(job, Effort.quick(1, 8))),
                            Progress.NONE)
                    .schedule();
            int day = job.people().getFirst().onSite().getFirst().from() / Job.DAY;
            int now = day * Job.DAY + 13 * 60;
            for (int part = 0; part < 2; part++) {
                Log log = log(job, old, now, part);
                Request request = new Request(job, log, old, Effort.quick(1, seconds));
                long begun = System.nanoTime();
                Schedule first = ListScheduler.schedule(request, Grid.of(job, log), 1);
                double repaired = since(begun);
                Verdict repair = legal(request, first);
                begun = System.nanoTime();
                Solved solved = new CpSatSolver().solve(request, first, Progress.NONE);
                double all = since(begun);
                Verdict verdict = legal(request, solved.schedule());
                proved.add(solved.ended() == Solved.Ended.PROVED ? all : Double.NaN);
                print(
                        "%d tasks, seed %d, %s late: repair %.0f ms (missed %d, moved %d); then %.2f s: missed %s, moved %s",
                        size,
                        seed,
                        log.late().keySet(),
                        repaired * 1000,
                        repair.values().get(Goal.MISSED),
                        repair.values().get(Goal.MOVED),
                        all,
                        text(solved, Goal.MISSED),
                        text(solved, Goal.MOVED) + (verdict.legal() ? "" : " ILLEGAL"));
            }
        }
        double[] done = proved.stream()
                .mapToDouble(Double::doubleValue)
                .filter(time -> !Double.isNaN(time))
                .sorted()
                .toArray();
        print(
                "proved fewest in %d of %d; of these median %.2f s, worst %.2f s",
                done.length,
                proved.size(),
                done.length == 0 ? Double.NaN : done[done.length / 2],
                done.length == 0 ? Double.NaN : Arrays.stream(done).max().orElseThrow());
    }

    /** The plan followed until a moment, and one part that a task still needs two days late. */
    private static Log log(Job job, Schedule old, int now, int which) {
        List<Slot> done = new ArrayList<>();
        List<Log.Begun> begun = new ArrayList<>();
        List<String> waited = new ArrayList<>();
        for (Slot slot : old.slots()) {
            if (slot.end() <= now) {
                done.add(slot);
            } else if (slot.start() < now) {
                begun.add(new Log.Begun(slot.task(), slot.start(), slot.people(), slot.end() - now));
            } else {
                waited.addAll(job.task(slot.task()).timing().deliveries());
            }
        }
        if (waited.isEmpty()) {
            return new Log(now, done, begun, Map.of(), Map.of());
        }
        String late = waited.get(which == 0 ? 0 : waited.size() / 2);
        return new Log(
                now, done, begun, Map.of(late, Math.max(now, job.delivery(late).expected()) + 2 * Job.DAY), Map.of());
    }

    private static Level level(Solved solved, Goal goal) {
        return solved.levels().stream()
                .filter(level -> level.goal() == goal)
                .findFirst()
                .orElseThrow();
    }

    private static Verdict legal(Request request, Schedule schedule) {
        Verdict verdict = PlanChecker.check(request, schedule);
        if (!verdict.legal()) {
            throw new IllegalStateException("A plan that is not legal: " + verdict.breaches());
        }
        return verdict;
    }

    private static double since(long begun) {
        return (System.nanoTime() - begun) / 1e9;
    }
}
