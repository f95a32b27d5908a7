package housewright.plan;

import java.util.List;

/**
 * Whether all that an event needs is whole when it begins.
 *
 * @param lacks what is not, in sentences; empty when ready
 */
public record Readiness(String event, List<String> lacks) {
    public Readiness {
        lacks = List.copyOf(lacks);
    }

    public boolean ready() {
        return lacks.isEmpty();
    }
}
