package housewright.signal;

import housewright.model.Project;
import housewright.model.change.Change;
import housewright.signal.GraphBuilder.PortKey;
import java.util.List;
import java.util.Set;

/**
 * One thing that could be done.
 *
 * @param key tells one from another; as text it settles ties
 * @param cost see {@link Cost}
 * @param done the changes and the words for them
 * @param takes ports that have to be free for it
 */
record Step(Object key, long cost, Set<PortKey> takes, Doing done) {
    /** How a step is taken, on the project as the steps before it have left it. */
    interface Doing {
        Done on(Project now, NewIds ids);
    }

    /** A step taken. */
    record Done(List<Change> changes, List<String> words, List<String> assumed) {}

    static final String EXCHANGE = "exchange ";

    /** Two plugs change places. */
    boolean isExchange() {
        return key.toString().startsWith(EXCHANGE);
    }

    @Override
    public boolean equals(Object other) {
        return other == this || (other instanceof Step step && step.key.equals(key));
    }

    @Override
    public int hashCode() {
        return key.hashCode();
    }
}
