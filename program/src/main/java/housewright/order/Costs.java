package housewright.order;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What it comes to, in the project's currency.
 *
 * @param goods everything bought
 * @param hires at one day each where no plan says how many
 * @param tax null where the project does not say the rate
 * @param total tax included where it is known
 * @param limit what there is; null where nobody has said
 * @param unpriced lines without a price, left out of the sums
 * @param assumed what was taken for granted
 */
public record Costs(
        BigDecimal goods,
        BigDecimal hires,
        BigDecimal freight,
        BigDecimal contingency,
        @Nullable BigDecimal tax,
        BigDecimal total,
        @Nullable BigDecimal limit,
        List<String> unpriced,
        List<String> assumed) {
    public Costs {
        unpriced = List.copyOf(unpriced);
        assumed = List.copyOf(assumed);
    }

    /** What is left of the limit, less than nothing where it is broken; null where there is none. */
    public @Nullable BigDecimal left() {
        return limit == null ? null : limit.subtract(total);
    }
}
