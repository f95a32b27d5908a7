package housewright.cli;

import java.io.PrintStream;
import java.time.Duration;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A line on a watched screen that says what takes so long; gone when it is done. */
final class Progress {
    static final Duration PATIENCE = Duration.ofSeconds(1);

    private final PrintStream err;
    private final Thread waiting;
    private boolean done;
    private int shown;

    private Progress(PrintStream err, String what, Duration patience) {
        this.err = err;
        this.waiting = new Thread(() -> waitAndSay(what, patience), "progress");
        waiting.setDaemon(true);
    }

    /**
     * Does the work.
     *
     * @param watched whether anybody would see the line
     * @param patience how long nothing is said
     */
    static <T extends @Nullable Object> T during(
            PrintStream err, boolean watched, String what, Duration patience, Supplier<T> work) {
        if (!watched) {
            return work.get();
        }
        Progress progress = new Progress(err, what, patience);
        progress.waiting.start();
        try {
            return work.get();
        } finally {
            progress.end();
        }
    }

    private synchronized void waitAndSay(String what, Duration patience) {
        long until = System.nanoTime() + patience.toNanos();
        try {
            while (!done) {
                long left = (until - System.nanoTime()) / 1_000_000;
                if (left <= 0) {
                    err.print(what + "…");
                    err.flush();
                    shown = what.length() + 1;
                    return;
                }
                wait(left);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private synchronized void end() {
        done = true;
        notifyAll();
        if (shown > 0) {
            err.print("\r" + " ".repeat(shown) + "\r");
            err.flush();
            shown = 0;
        }
    }
}
