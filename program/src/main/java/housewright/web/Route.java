package housewright.web;

/**
 * One thing the server answers to.
 *
 * @param path with {@code {name}} for what varies
 * @param changes it changes something, so it takes POST and the page's token
 */
record Route(String path, boolean changes, Need need, Action action) {

    /** What a route does. */
    @FunctionalInterface
    interface Action {
        void answer(Visit visit) throws Exception;
    }

    static Route page(String path, Need need, Action action) {
        return new Route(path, false, need, action);
    }

    static Route change(String path, Need need, Action action) {
        return new Route(path, true, need, action);
    }
}
