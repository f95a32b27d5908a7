package housewright.model;

/** How far a task or a delivery is. */
public enum SiteState implements Word {
    /** Somebody is at it. */
    BEGUN,
    DONE,
    /** It comes later than it was to: a delivery, or a task that something holds up until a known moment. */
    LATE,
    /** It cannot be begun, and nobody may know until when. */
    BLOCKED
}
