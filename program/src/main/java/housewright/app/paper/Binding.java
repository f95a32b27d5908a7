package housewright.app.paper;

import java.util.List;

/** What came of writing a binder. */
public sealed interface Binding {

    /**
     * It is written.
     *
     * @param revision of the project
     * @param before the revision before; empty for the first issue
     * @param sheets all sheets, in order
     * @param withdrawn titles of sheets that are no more
     * @param files all files of the binder, in order
     */
    record Bound(
            String revision,
            String date,
            String before,
            List<IssuedSheet> sheets,
            List<String> withdrawn,
            List<String> files)
            implements Binding {}

    /** @param state new, changed or same */
    record IssuedSheet(String id, String paper, String title, State state) {}

    /** How a sheet compares with the revision before. */
    enum State {
        NEW,
        CHANGED,
        SAME
    }

    /** @param why nothing was written, as a sentence */
    record NotBound(String why) implements Binding {}
}
