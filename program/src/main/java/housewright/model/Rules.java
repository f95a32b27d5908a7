package housewright.model;

/** Which set of limits applies. */
public record Rules(@Default("metric-eu") RuleSet set) {}
