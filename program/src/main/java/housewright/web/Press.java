package housewright.web;

import housewright.app.paper.Inventory;
import housewright.paper.Paper;
import housewright.paper.Papers;
import housewright.study.Study;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Makes papers, one at a time of each project, and keeps the last. Whoever asks waits for a bounded time; what then is
 * not done yet goes on, and is there for who asks again.
 */
final class Press {
    private static final int MOST_REVISIONS = 8;

    /** The whole binder of a large hall on a slow machine. */
    private static final Duration USUAL = Duration.ofSeconds(90);

    private final Duration patience;
    private final Kept<Inventory.Part> parts =
            new Kept<>(MOST_REVISIONS * Papers.all().size());
    private final Set<String> known = ConcurrentHashMap.newKeySet();
    private final Map<String, Job> last = new ConcurrentHashMap<>();

    private record Job(String what, CompletableFuture<byte[]> made) {}

    Press() {
        this(USUAL);
    }

    Press(Duration patience) {
        this.patience = patience;
    }

    /** What a paper has at a revision; worked out once. */
    Inventory.Part part(String project, long revision, Study study, Paper paper) {
        return parts.get(project + ' ' + revision + ' ' + paper.id(), () -> Inventory.of(study, paper));
    }

    /** What each paper has at a revision, which takes a while. */
    Inventory inventory(String project, long revision, Study study) {
        Inventory all = new Inventory(Papers.all().stream()
                .map(paper -> part(project, revision, study, paper))
                .toList());
        known.add(project + ' ' + revision);
        return all;
    }

    /** The same, where somebody has waited for it already; null otherwise. */
    @Nullable
    Inventory known(String project, long revision, Study study) {
        return known.contains(project + ' ' + revision) ? inventory(project, revision, study) : null;
    }

    /**
     * Makes a paper, or answers with it where it was the last that was made.
     *
     * @param what the same for the same bytes
     * @throws Refused where it is not there in time
     */
    byte[] make(String project, String what, Supplier<byte[]> work) {
        long until = System.nanoTime() + patience.toNanos();
        while (true) {
            Job job = begin(project, what, work);
            try {
                byte[] made = job.made().get(until - System.nanoTime(), TimeUnit.NANOSECONDS);
                if (job.what().equals(what)) {
                    return made;
                }
            } catch (TimeoutException e) {
                throw busy(
                        job.what().equals(what)
                                ? "This paper takes longer than " + patience.toSeconds()
                                        + " seconds. It is being made still; ask for it again in a minute."
                                : "Another paper of this project is being made, one at a time. Ask again in a minute.");
            } catch (ExecutionException e) {
                if (job.what().equals(what)) {
                    throw new CompletionException(e.getCause());
                } // else whoever asked for that one is told
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw busy("The server is being stopped.");
            }
        }
    }

    /** The job under way, whoever began it; else this one. */
    private Job begin(String project, String what, Supplier<byte[]> work) {
        return last.compute(project, (id, before) -> {
            boolean serves = before != null
                    && (!before.made().isDone()
                            || (before.what().equals(what) && !before.made().isCompletedExceptionally()));
            if (serves) {
                return before;
            }
            CompletableFuture<byte[]> made = new CompletableFuture<>();
            Thread.ofPlatform().daemon().name("press").start(() -> {
                try {
                    made.complete(work.get());
                } catch (RuntimeException | Error e) {
                    made.completeExceptionally(e);
                }
            });
            return new Job(what, made);
        });
    }

    private static Refused busy(String why) {
        return new Refused(HttpStatus.SERVICE_UNAVAILABLE, why);
    }
}
