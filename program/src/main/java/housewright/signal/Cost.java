package housewright.signal;

import java.math.BigDecimal;

/**
 * What a change costs, in one number that may be added and compared: price first, then minutes, then number of
 * changes. Hundredths of the currency above, minutes in the middle, changes below.
 */
final class Cost {
    private static final int MINUTES = 10;
    private static final int PRICE = 28;

    private Cost() {}

    static long of(long hundredths, int minutes, int changes) {
        return (hundredths << PRICE) + ((long) minutes << MINUTES) + changes;
    }

    static BigDecimal price(long cost) {
        return BigDecimal.valueOf(cost >> PRICE, 2);
    }

    static int minutes(long cost) {
        return (int) ((cost >> MINUTES) & ((1 << (PRICE - MINUTES)) - 1));
    }

    static long hundredths(BigDecimal price) {
        return price.movePointRight(2)
                .setScale(0, java.math.RoundingMode.HALF_UP)
                .longValueExact();
    }
}
