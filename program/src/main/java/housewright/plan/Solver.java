package housewright.plan;

/** Looks for good schedules. */
public interface Solver {
    /**
     * The best it finds, never worse than {@code first}.
     *
     * @param first a legal schedule for the request, to begin with
     */
    Solved solve(Request request, Schedule first, Progress progress);
}
