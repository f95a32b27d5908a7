package housewright.unit;

/**
 * How a converter lines analogue levels up with digital ones.
 *
 * @param atZero the analogue level, in dBu or dBV, that is 0 dBFS
 */
public record FullScale(Level atZero) {
    /** EBU R 68: alignment level -18 dBFS is 0 dBu. */
    public static final FullScale EBU_R68 = new FullScale(Level.ofDbu(18));

    /** SMPTE RP 155: reference level -20 dBFS is +4 dBu. */
    public static final FullScale SMPTE_RP155 = new FullScale(Level.ofDbu(24));

    /** @throws IllegalArgumentException if the level is neither dBu nor dBV */
    public FullScale {
        atZero.unit().requireConvertible(Unit.DBU);
    }

    /**
     * The level in dBFS that this analogue level becomes; above 0 it clips.
     *
     * @throws IllegalArgumentException if the level is neither dBu nor dBV
     */
    public Level toDigital(Level analogue) {
        return new Level(analogue.minus(atZero).decibels(), Unit.DBFS);
    }

    /**
     * The analogue level that this digital one becomes, in the unit of {@link #atZero()}.
     *
     * @throws IllegalArgumentException if the level is not in dBFS
     */
    public Level toAnalogue(Level digital) {
        return atZero.plus(Gain.ofDecibels(digital.in(Unit.DBFS)));
    }
}
