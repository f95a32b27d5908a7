package housewright.bench;

import housewright.app.ProjectFiles;
import housewright.app.Server;
import housewright.app.StoreException;
import housewright.app.TypeSearch;
import housewright.cli.Cli;
import housewright.cli.Screen;
import housewright.file.EntityCells;
import housewright.file.ProjectReader;
import housewright.file.ProjectWriter;
import housewright.file.ReadResult;
import housewright.finding.Findings;
import housewright.library.BuiltInLibrary;
import housewright.model.Cable;
import housewright.model.Feed;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.FeedProof;
import housewright.signal.Moment;
import housewright.signal.Signals;
import housewright.study.Study;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * From text to proofs on halls of 1, 10 and 50 times the demo: reading, building the graph, proving all feeds. Beside
 * the proofs stands plain reachability on the same graph in the same run: a breadth-first search over int arrays from
 * the start of every pair of every feed, which says whether it arrives and nothing else. Their ratio is what explaining
 * costs.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SignalBenchmark {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);

    /** A hall as text and as project. */
    @State(Scope.Benchmark)
    public static class Hall {
        @Param({"1", "10", "50"})
        int times;

        Project project;
        byte[] text;
        Path file;

        @Setup
        public void make() throws IOException {
            Project made = new HallGenerator(LIBRARY).times(times);
            text = times == 1 ? HallGenerator.demo() : ProjectWriter.yaml(made).getBytes(StandardCharsets.UTF_8);
            project = HallGenerator.read(text, LIBRARY);
            file = Files.write(Files.createTempFile("hall", ".yaml"), text);
            Signals signals = Signals.of(project, LIBRARY, Moment.target());
            List<FeedProof> proofs = signals.proofs();
            long proven = proofs.stream().filter(FeedProof::proven).count();
            long hops = proofs.stream()
                    .flatMap(proof -> proof.pairs().stream())
                    .mapToInt(pair -> pair.hops().size())
                    .sum();
            System.out.printf(
                    "x%d: %d bytes, %d equipment, %d cables, %d nodes, %d edges, %d feeds of which %d proven, %d"
                            + " pairs, %d hops%n",
                    times,
                    text.length,
                    project.equipment().size(),
                    project.cables().size(),
                    signals.nodeCount(),
                    signals.edgeCount(),
                    proofs.size(),
                    proven,
                    proofs.stream().mapToInt(proof -> proof.pairs().size()).sum(),
                    hops);
        }

        @TearDown
        public void clean() throws IOException {
            Files.deleteIfExists(file);
        }
    }

    /** A graph just built, with nothing proven on it yet: what proving finds when a project has been read. */
    @State(Scope.Thread)
    public static class Built {
        Signals signals;

        @Setup(Level.Invocation)
        public void build(Hall hall) {
            signals = Signals.of(hall.project, LIBRARY, Moment.target());
        }
    }

    /** The same graph, just built, as plain arrays, with the nodes where every pair begins and ends. */
    @State(Scope.Thread)
    public static class Plain {
        int[] starts;
        int[] targets;
        int[] from;
        int[] to;

        @Setup(Level.Invocation)
        public void flatten(Hall hall) {
            Signals signals = Signals.of(hall.project, LIBRARY, Moment.target());
            starts = signals.linkStarts();
            targets = signals.linkTargets();
            List<Feed> feeds = List.copyOf(hall.project.feeds().values());
            from = feeds.stream()
                    .flatMapToInt(feed -> Arrays.stream(signals.startNodes(feed)))
                    .toArray();
            to = feeds.stream()
                    .flatMapToInt(feed -> Arrays.stream(signals.endNodes(feed)))
                    .toArray();
        }

        /** How many pairs arrive: a search for each, all with the same two arrays. */
        int reached() {
            int[] seen = new int[starts.length];
            int[] queue = new int[starts.length];
            int count = 0;
            for (int i = 0; i < from.length; i++) {
                count += from[i] >= 0 && to[i] >= 0 && reaches(from[i], to[i], seen, queue, i + 1) ? 1 : 0;
            }
            return count;
        }

        private boolean reaches(int source, int wanted, int[] seen, int[] queue, int run) {
            int head = 0;
            int tail = 0;
            seen[source] = run;
            queue[tail++] = source;
            while (head < tail) {
                int node = queue[head++];
                if (node == wanted) {
                    return true;
                }
                for (int e = starts[node], end = starts[node + 1]; e < end; e++) {
                    int next = targets[e];
                    if (seen[next] != run) {
                        seen[next] = run;
                        queue[tail++] = next;
                    }
                }
            }
            return false;
        }
    }

    @Benchmark
    public ReadResult read(Hall hall) {
        return ProjectReader.read("hall.yaml", hall.text, LIBRARY);
    }

    @Benchmark
    public Signals graph(Hall hall) {
        return Signals.of(hall.project, LIBRARY, Moment.target());
    }

    @Benchmark
    public List<FeedProof> proofs(Built built) {
        return built.signals.proofs();
    }

    /** To be set against {@link #proofs}. */
    @Benchmark
    public int reachability(Plain plain) {
        return plain.reached();
    }

    /** A study of the hall that has been asked for everything, and the project with one edit: a longer cable. */
    @State(Scope.Benchmark)
    public static class Edited {
        Study before;
        Project after;

        @Setup
        public void edit(Hall hall) {
            before = Study.of(hall.project, LIBRARY);
            before.findings();
            Cable first = hall.project.cables().values().iterator().next();
            if (!(EntityCells.read(Section.CABLES, first.id(), first, Map.of("length", "12 m"))
                    instanceof EntityCells.Reading.Read longer)) {
                throw new IllegalStateException("12 m is no length of " + first);
            }
            after = Change.apply(hall.project, List.of(new Change.Put(Section.CABLES, first.id(), longer.entity())));
        }
    }

    /** What an edit is waited for: everything found anew, the file not read again. */
    @Benchmark
    public Findings checkAfterAnEdit(Edited edited) {
        return edited.before.with(edited.after).findings();
    }

    /** The whole command, from the file on disc to the text of the answer, in a process that is warm. */
    @Benchmark
    public int check(Hall hall) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        Cli cli = new Cli(
                LIBRARY,
                new ProjectFiles(LIBRARY, new ByteArrayInputStream(new byte[0])),
                new TypeSearch(LIBRARY),
                wish -> new Server.Start.NotStarted(List.of()),
                () -> {
                    throw new StoreException("None.");
                },
                nowhere,
                nowhere,
                new Screen(false, false),
                "benchmark");
        return cli.run(List.of("check", hall.file.toString()));
    }
}
