package housewright.room;

/** Heights of people in m, without shoes: NUREG-0700 Rev. 3, table 11.4; heads by theatre practice (from memory). */
final class Body {
    /** 5th percentile of women, standing. */
    static final double LOW_STANDING_EYE = 1.501;

    /** 95th percentile of men, standing. */
    static final double HIGH_STANDING_EYE = 1.756;

    /** 5th percentile of women, seated: 376 mm from floor to seat and 724 mm from seat to eye. */
    static final double LOW_SEATED_EYE = 1.100;

    /** From the eye to the top of the head. */
    static final double OVER_EYE = 0.12;

    /** Seated eye in an audience where the project does not say. */
    static final double AUDIENCE_EYE = 1.20;

    /** Top of a standing head; many are taller. */
    static final double STANDING_HEAD = 1.75;

    /** From the eye to a screen at arm's length. */
    static final double TO_SCREEN = 0.7;

    private Body() {}
}
