package housewright.plan.chance;

/** A chance, no finer than the guesses allow. */
public enum Likely {
    /** Kept in more than 95 of 100 draws. */
    ALMOST_SURE(95, "almost sure"),
    /** In more than 80. */
    LIKELY(80, "likely"),
    /** In more than 50. */
    MORE_LIKELY_THAN_NOT(50, "more likely than not"),
    /** In more than 20. */
    DOUBTFUL(20, "doubtful"),
    /** In 20 or fewer. */
    UNLIKELY(-1, "unlikely");

    private final int over;
    private final String word;

    Likely(int over, String word) {
        this.over = over;
        this.word = word;
    }

    /**
     * The range of a share of draws.
     *
     * @param share 0 to 1
     */
    public static Likely of(double share) {
        for (Likely range : values()) {
            if (share * 100 > range.over) {
                return range;
            }
        }
        return UNLIKELY;
    }

    public String word() {
        return word;
    }
}
