package housewright.bench;

import housewright.drawing.Drawings;
import housewright.drawing.Imprint;
import housewright.drawing.Plan;
import housewright.drawing.Sheet;
import housewright.drawing.Trade;
import housewright.library.BuiltInLibrary;
import housewright.model.Project;
import housewright.study.Study;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Drawing the sound of halls of 1 and 10 times the demo: one sheet, all sheets, and the floor plan. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DrawingBenchmark {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);

    /** A hall whose cabling and proofs are worked out, so that drawing alone is timed. */
    @State(Scope.Benchmark)
    public static class Hall {
        @Param({"1", "10"})
        int times;

        Project project;
        Drawings drawings;
        String feed;

        @Setup
        public void make() {
            project = new HallGenerator(LIBRARY).times(times);
            drawings = Drawings.of(Study.of(project, LIBRARY), Imprint.NONE);
            feed = project.feeds().keySet().iterator().next();
            drawings.feed(feed, housewright.drawing.State.TARGET);
        }
    }

    @Benchmark
    public Sheet oneSignalSheet(Hall hall) {
        return hall.drawings.signal(Trade.SOUND, housewright.drawing.State.TARGET, 1);
    }

    @Benchmark
    public List<Sheet> allSignalSheets(Hall hall) {
        return hall.drawings.signal(Trade.SOUND, housewright.drawing.State.TARGET);
    }

    @Benchmark
    public Sheet oneFeed(Hall hall) {
        return hall.drawings.feed(hall.feed, housewright.drawing.State.TARGET);
    }

    @Benchmark
    public Plan floorPlan(Hall hall) {
        return hall.drawings.floorPlan(housewright.drawing.State.TARGET);
    }
}
