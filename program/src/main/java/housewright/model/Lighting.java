package housewright.model;

import java.util.Map;

/** What light is for, and the looks. */
public record Lighting(Map<String, Target> targets, Map<String, Look> looks) {
    public Lighting {
        targets = Ordered.copy(targets);
        looks = Ordered.copy(looks);
    }
}
