package housewright.web;

import java.util.List;

/** The pages there are, for the tests that look at each. */
final class Pages {
    private Pages() {}

    /** @param name of its picture */
    record Shown(String name, String path) {}

    /** A server with the demo, and something to see on each page. */
    static Hall inUse() {
        return Hall.demo();
    }

    static List<Shown> of(Hall hall) {
        String job = "/p/" + hall.job().id();
        return List.of(
                new Shown("overview", job), new Shown("projects", "/"), new Shown("findings", job + "/findings"));
    }

    static List<Shown> ofEmpty() {
        return List.of(new Shown("begin", "/"));
    }
}
