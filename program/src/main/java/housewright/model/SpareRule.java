package housewright.model;

import housewright.unit.Ratio;
import org.jspecify.annotations.Nullable;

/** How much more of a kind is bought than is needed. */
public record SpareRule(
        String id,

        @Doc("Share of the number needed, rounded up") @Nullable
        Ratio share,

        @Doc("This many at least, where any is needed") @Default("0")
        int least,

        @Doc("Only where so many are needed") @Default("1") int from,

        @Doc("Where the rule comes from: common practice, or whose own")
        String source,

        Remarks remarks) {
    /** Pieces beyond those needed. */
    public int spares(int needed) {
        if (needed == 0 || needed < from) {
            return 0;
        }
        int shared = share == null ? 0 : (int) Math.ceil(needed * share.fraction() - 1e-9);
        return Math.max(least, shared);
    }
}
