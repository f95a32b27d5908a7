package housewright.model;

/** Which limits apply where they differ between regions. */
public enum RuleSet implements Word {
    METRIC_EU,
    US
}
