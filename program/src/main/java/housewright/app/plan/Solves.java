package housewright.app.plan;

import housewright.plan.Request;
import housewright.plan.Solver;
import housewright.study.PlanBasis;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Plans being made in the background, one a project at a time. The last one of each is kept until it is forgotten. */
public final class Solves implements AutoCloseable {
    private final Supplier<Solver> solvers;
    private final InstantSource clock;
    private final Map<String, Solve> byProject = new HashMap<>();

    /** @param solvers gives one for each solve */
    public Solves(Supplier<Solver> solvers, InstantSource clock) {
        this.solvers = solvers;
        this.clock = clock;
    }

    /**
     * Begins a solve; where one is running for the project already, that one goes on and is the answer.
     *
     * @param revision of the project that the basis is of
     */
    public synchronized Solve begin(String project, long revision, PlanBasis basis, Request request) {
        Solve known = byProject.get(project);
        if (known != null && known.state() == Solve.State.RUNNING) {
            return known;
        }
        Solve solve = new Solve(revision, basis, request, clock.instant());
        byProject.put(project, solve);
        Thread.ofPlatform().daemon().name("solve " + project).start(() -> solve.run(new Planning(solvers.get())));
        return solve;
    }

    public synchronized Optional<Solve> find(String project) {
        return Optional.ofNullable(byProject.get(project));
    }

    /** Takes the project's solve away, stopping it where it runs. */
    public synchronized void forget(String project) {
        Solve known = byProject.remove(project);
        if (known != null) {
            known.stop();
        }
    }

    /** Projects with a plan that was found and neither accepted nor discarded, by their ids, in order. */
    public synchronized List<String> unaccepted() {
        return byProject.entrySet().stream()
                .filter(each -> each.getValue().plan() != null)
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    @Override
    public synchronized void close() {
        byProject.values().forEach(Solve::stop);
    }
}
