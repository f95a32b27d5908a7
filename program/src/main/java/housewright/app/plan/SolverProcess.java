package housewright.app.plan;

import housewright.plan.Effort;
import housewright.plan.Level;
import housewright.plan.Progress;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Solved;
import housewright.plan.Solver;
import housewright.plan.check.PlanChecker;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Runs the exact solver in a process of its own: when that breaks, the solve is lost from there on and nothing else. What it
 * says is not trusted but checked; the best legal schedule it told of is the answer.
 */
public final class SolverProcess implements Solver {
    private static final int POLL_MS = 100;
    /** How long a child may take over stopping, and over its limit, before it is ended by force. */
    private static final int PATIENCE_S = 20;

    /** Characters kept of what a child complains about. */
    private static final int MOST_WORDS = 100_000;

    private static final List<Integer> ENDED_BY_A_PERSON = List.of(130, 143);

    private final String mainClass;

    public SolverProcess() {
        this(SolverChild.class.getName());
    }

    /** With another main class, for tests of what happens when it breaks. */
    SolverProcess(String mainClass) {
        this.mainClass = mainClass;
    }

    @Override
    public Solved solve(Request request, Schedule first, Progress progress) {
        Path folder = null;
        try {
            // The native library is unpacked into the folder for temporary files, and left there by a process that
            // dies.
            folder = Files.createTempDirectory("housewright-solver-");
            return new Run(request, first, progress, start(folder)).solved();
        } catch (IOException e) {
            return new Solved(first, List.of(), Solved.Ended.BROKEN, "The solver did not start: " + e.getMessage());
        } finally {
            if (folder != null) {
                delete(folder);
            }
        }
    }

    private Process start(Path folder) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home", ""), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-Xshare:auto",
                "-Xlog:disable",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:-CreateCoredumpOnCrash",
                "-XX:ErrorFile=" + folder.resolve("crash.log"),
                "-Djava.io.tmpdir=" + folder,
                "-cp",
                System.getProperty("java.class.path", ""),
                mainClass));
        return new ProcessBuilder(command).directory(new File(".")).start();
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(path -> path.toFile().delete());
        } catch (IOException e) {
            // the folder for temporary files is cleared by the system
        }
    }

    /** One solve. */
    private static final class Run {
        private final Request request;
        private final Progress progress;
        private final Process child;
        private final Map<housewright.plan.Goal, Level> levels = new EnumMap<>(housewright.plan.Goal.class);
        private final StringBuilder complaints = new StringBuilder();
        private Schedule best;
        private @Nullable Solved solved;
        private String refused = "";
        private volatile boolean stopped;
        private volatile boolean overdue;

        Run(Request request, Schedule first, Progress progress, Process child) {
            this.request = request;
            this.progress = progress;
            this.child = child;
            this.best = first;
        }

        Solved solved() {
            BufferedWriter toChild = child.outputWriter(StandardCharsets.UTF_8);
            Thread complaining = background(this::hearComplaints);
            Thread watching = background(() -> watch(toChild));
            try (BufferedReader answers = child.inputReader(StandardCharsets.UTF_8)) {
                synchronized (toChild) {
                    toChild.write(Wire.line(new Wire.Ask(request, best)));
                    toChild.newLine();
                    toChild.flush();
                }
                for (String line = answers.readLine(); line != null; line = answers.readLine()) {
                    hear(Wire.answer(line));
                }
            } catch (IOException e) {
                complain(e.getMessage() + "\n");
            }
            int exit = ended();
            watching.interrupt();
            join(complaining);
            Solved last = solved;
            if (last != null && refused.isEmpty()) {
                return stopped ? new Solved(last.schedule(), last.levels(), Solved.Ended.STOPPED, "") : last;
            }
            boolean byPerson = stopped || progress.stopped() || ENDED_BY_A_PERSON.contains(exit);
            return new Solved(
                    best,
                    List.copyOf(levels.values()),
                    overdue ? Solved.Ended.LIMIT : byPerson ? Solved.Ended.STOPPED : Solved.Ended.BROKEN,
                    byPerson || overdue ? "" : refused.isEmpty() ? broke(exit) : refused);
        }

        private String broke(int exit) {
            List<String> lines;
            synchronized (complaints) {
                lines = complaints.toString().lines().toList();
            }
            return "The solver's process ended with status %s before it was done; the plan is the best until then. %s"
                    .formatted(exit, lines.isEmpty() ? "" : "Its last words: " + lines.getLast())
                    .strip();
        }

        private void hear(Wire.Answer answer) {
            Level level = answer.level();
            Schedule better = answer.better();
            if (better != null && level != null) {
                if (legal(better)) {
                    best = better;
                    levels.put(level.goal(), level);
                    progress.better(better, level);
                }
            } else if (level != null) {
                levels.put(level.goal(), level);
                progress.bound(level);
            }
            Solved end = answer.solved();
            if (end != null && legal(end.schedule())) {
                solved = end;
            }
        }

        private boolean legal(Schedule schedule) {
            var breaches = PlanChecker.check(request, schedule).breaches();
            if (!breaches.isEmpty()) {
                refused =
                        "The solver's plan was refused: " + breaches.getFirst().says() + ".";
            }
            return breaches.isEmpty();
        }

        private void complain(String words) {
            synchronized (complaints) {
                if (complaints.length() < MOST_WORDS) {
                    complaints.append(words);
                }
            }
        }

        private void hearComplaints() {
            try (InputStream errors = child.getErrorStream()) {
                byte[] some = new byte[4096];
                for (int count = errors.read(some); count >= 0; count = errors.read(some)) {
                    complain(new String(some, 0, count, StandardCharsets.UTF_8));
                }
            } catch (IOException e) {
                // it has ended
            }
        }

        /** Passes a wish to stop on, and ends by force what does not listen. */
        private void watch(BufferedWriter toChild) {
            Effort effort = request.effort();
            long begun = System.nanoTime();
            long told = 0;
            while (child.isAlive()) {
                long now = System.nanoTime();
                if (told == 0 && progress.stopped()) {
                    stopped = true;
                    told = now;
                    tell(toChild);
                }
                boolean deaf = told > 0 && now - told > TimeUnit.SECONDS.toNanos(PATIENCE_S);
                overdue = !effort.repeatable()
                        && now - begun
                                > TimeUnit.MILLISECONDS.toNanos((long) (effort.seconds() * 1000 + PATIENCE_S * 1000L));
                if (deaf || overdue) {
                    child.destroyForcibly();
                    return;
                }
                try {
                    Thread.sleep(POLL_MS);
                } catch (InterruptedException e) {
                    return;
                }
            }
        }

        private static void tell(BufferedWriter toChild) {
            try {
                synchronized (toChild) {
                    toChild.write(Wire.STOP);
                    toChild.newLine();
                    toChild.flush();
                }
            } catch (IOException e) {
                // it has ended already
            }
        }

        private int ended() {
            try {
                return child.waitFor();
            } catch (InterruptedException e) {
                child.destroyForcibly();
                Thread.currentThread().interrupt();
                return 143;
            }
        }

        private static Thread background(Runnable work) {
            Thread thread = new Thread(work, "solver");
            thread.setDaemon(true);
            thread.start();
            return thread;
        }

        private static void join(Thread thread) {
            try {
                thread.join(TimeUnit.SECONDS.toMillis(2));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
