package housewright.web;

import housewright.app.ProjectStore;
import housewright.app.StoreException;
import java.io.PrintStream;
import java.time.Duration;
import java.time.InstantSource;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Asks a store now and then whether a backup is due, as long as it is served. Opening the store has asked once. */
final class BackupClock implements AutoCloseable {
    static final Duration EVERY = Duration.ofHours(1);

    private final ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "backups");
        thread.setDaemon(true);
        return thread;
    });
    private final ProjectStore store;
    private final InstantSource clock;
    private final PrintStream err;
    private @Nullable String said;

    private BackupClock(ProjectStore store, InstantSource clock, PrintStream err) {
        this.store = store;
        this.clock = clock;
        this.err = err;
    }

    /** @param err is told once of each reason why a backup fails; the projects page says it, too */
    @SuppressWarnings("FutureReturnValueIgnored") // it never ends of itself, and nothing is thrown out of it
    static BackupClock start(ProjectStore store, InstantSource clock, Duration every, PrintStream err) {
        BackupClock backups = new BackupClock(store, clock, err);
        if (!store.isReadOnly()) {
            backups.timer.scheduleWithFixedDelay(
                    backups::look, every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
        }
        return backups;
    }

    /** Whatever goes wrong now may go well in an hour, so that nothing may end the timer. */
    private void look() {
        try {
            store.backUpIfDue(clock.instant());
            said = null;
        } catch (StoreException e) {
            say("No backup was made. " + e.why());
        } catch (RuntimeException e) {
            say("No backup was made: " + e);
        }
    }

    private void say(String why) {
        if (!why.equals(said)) {
            said = why;
            err.println(why);
        }
    }

    /** A backup that is being made is made to its end. */
    @Override
    public void close() {
        timer.shutdown();
        try {
            if (!timer.awaitTermination(1, TimeUnit.MINUTES)) {
                timer.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
