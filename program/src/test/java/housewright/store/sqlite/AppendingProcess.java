package housewright.store.sqlite;

import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Appended;
import housewright.app.ProjectStore.NewRevision;
import housewright.app.ProjectStore.Step;
import housewright.app.StoreException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Random;

/**
 * A process that edits until it is killed, or so many times. It prints {@code revision seed} for each step when the
 * store has acknowledged it, and not before.
 */
final class AppendingProcess {

    private AppendingProcess() {}

    /** Arguments: the file, a seed, when it is now, how many steps. */
    public static void main(String[] args) throws StoreException {
        Path file = Path.of(args[0]);
        long run = Long.parseLong(args[1]);
        int most = Integer.parseInt(args[3]);
        try (ProjectStore store = SqliteStore.open(file, Instant.parse(args[2]))) {
            long head = store.listProjects().getFirst().head();
            for (int number = 0; number < most; ) {
                long seed = run * 1_000_000 + number;
                NewRevision step = step(seed);
                switch (store.append("hall", head, step, () -> document(seed))) {
                    case Appended.Done done -> {
                        head = done.revision();
                        number++;
                        System.out.print(head + " " + seed + "\n");
                        System.out.flush();
                    }
                    case Appended.Moved moved -> head = moved.head();
                }
            }
        }
    }

    /** The same for the same seed, of up to 4 kB. */
    static NewRevision step(long seed) {
        Random random = new Random(seed);
        Instant at = Instant.ofEpochSecond(1_770_000_000L, random.nextInt(1_000_000_000));
        return new NewRevision(
                "Ines Aguirre", at, Step.EDIT, 0, "seed " + seed, text(random, 2_000), text(random, 2_000));
    }

    static String document(long seed) {
        return text(new Random(~seed), 100_000);
    }

    private static String text(Random random, int most) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(1 + random.nextInt(most)); // mostly short
        while (text.length() < length) {
            text.append((char) (' ' + random.nextInt(95)));
        }
        return text.toString();
    }
}
