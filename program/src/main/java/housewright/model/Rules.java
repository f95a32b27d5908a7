package housewright.model;

import java.util.Map;

/** Which set of limits applies, and what the project wants kept tighter. */
public record Rules(
        @Default("metric-eu") RuleSet set,

        @Doc("Limits held tighter than the rule's own, by the rule's id: cable-too-long-for-sdi: 15 dB")
        Map<String, String> tighten) {
    public Rules {
        tighten = Ordered.copy(tighten);
    }

    /** The limits as the rules have them. */
    public static final Rules PLAIN = new Rules(RuleSet.METRIC_EU, Map.of());
}
