package housewright.bench;

import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Appended;
import housewright.app.ProjectStore.Backup;
import housewright.app.ProjectStore.NewRevision;
import housewright.app.ProjectStore.Saved;
import housewright.app.ProjectStore.Step;
import housewright.app.StoreException;
import housewright.file.ProjectWriter;
import housewright.library.BuiltInLibrary;
import housewright.store.sqlite.SqliteStore;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * A store with a project of 5000 revisions, the demo or ten of it. Beside {@link #append} stands the least that keeping
 * anything can cost on the same disk: one page written and waited for.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class StoreBenchmark {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final int REVISIONS = 5000;

    /** What one edit of a cell comes to, with what takes it back. */
    private static final NewRevision EDIT = new NewRevision(
            "Ines Aguirre", START, Step.EDIT, 0, "Length of cable C104", "c".repeat(300), "b".repeat(300));

    /** A store in a folder of its own. */
    @State(Scope.Benchmark)
    public static class Hall {
        @Param({"1", "10"})
        int times;

        Path folder;
        Path file;
        String document;
        ProjectStore store;
        String project;
        long head;
        FileChannel page;

        @Setup
        public void make() throws IOException, StoreException {
            document = ProjectWriter.json(new HallGenerator(LIBRARY).times(times));
            folder = Files.createTempDirectory("store");
            file = folder.resolve("halls.db");
            store = SqliteStore.open(file, START);
            project = store.create("Hall", null, EDIT, document).id();
            head = 1;
            while (head < REVISIONS) {
                appendOne();
            }
            store.close();
            System.out.printf(
                    "x%d: document of %d bytes, store of %d bytes after %d revisions%n",
                    times, document.length(), Files.size(file), head);
            store = SqliteStore.open(file, START);
            page = FileChannel.open(folder.resolve("page"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        }

        void appendOne() throws StoreException {
            Appended appended = store.append(project, head, EDIT, () -> document);
            head = ((Appended.Done) appended).revision();
        }

        @TearDown
        public void clean() throws IOException {
            page.close();
            store.close();
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }

    @Benchmark
    public long append(Hall hall) throws StoreException {
        hall.appendOne();
        return hall.head;
    }

    @Benchmark
    public int onePageWaitedFor(Hall hall) throws IOException {
        int written = hall.page.write(ByteBuffer.allocate(4096));
        hall.page.force(false);
        return written;
    }

    /** With the check of the whole file. */
    @Benchmark
    public Saved openAndFindNewest(Hall hall) throws StoreException {
        try (ProjectStore opened = SqliteStore.open(hall.file, START)) {
            return opened.findNewest(hall.project).orElseThrow();
        }
    }

    @Benchmark
    public Saved findNewest(Hall hall) throws StoreException {
        return hall.store.findNewest(hall.project).orElseThrow();
    }

    @Benchmark
    public Saved findAtWithMostSteps(Hall hall) throws StoreException {
        return hall.store.findAt(hall.project, REVISIONS / 2 + 99).orElseThrow();
    }

    @Benchmark
    public Backup backUp(Hall hall) throws StoreException {
        return hall.store.backUp(START);
    }
}
