package housewright.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line of what is bought or hired.
 *
 * @param id stable: the order and the type, with the length of a lead
 * @param order the project's order it is in; null where it is in none
 * @param supplier null where none is chosen
 * @param type id of the type; of what has none, a word
 * @param name as a supplier reads it
 * @param items equipment and cables of the project that it is for
 * @param needed pieces, or metres of cable that is cut
 * @param spares pieces beyond those needed, or metres
 * @param fromStruck of the spares, those that are there already among what goes
 * @param buy pieces, or metres of whole drums
 * @param unit pieces or m or days
 * @param unitPrice in the project's currency; null where nobody has said
 * @param leadDays from order to delivery; null where nobody has said
 * @param need the day it is needed; null where nobody knows
 * @param planned the day of need is a plan's; else it is the first day on site
 * @param latest the latest day to order it; null where lead or need is not known
 * @param tasks those that use it
 * @param delays what else waits, if it is late
 * @param assumed what was taken for granted
 */
public record OrderLine(
        String id,
        Sort sort,
        @Nullable String order,
        @Nullable String supplier,
        State state,
        String type,
        String name,
        List<String> items,
        double needed,
        double spares,
        double fromStruck,
        double buy,
        String unit,
        @Nullable BigDecimal unitPrice,
        @Nullable Integer leadDays,
        @Nullable LocalDate need,
        boolean planned,
        @Nullable LocalDate latest,
        @Nullable LocalDate placed,
        @Nullable LocalDate promised,
        List<String> tasks,
        List<String> delays,
        List<String> assumed) {

    /** What sort of thing it is. */
    public enum Sort {
        EQUIPMENT,
        /** Made up, with both its ends. */
        LEAD,
        /** Off drums, cut on site. */
        CABLE,
        CONNECTOR,
        ADAPTER,
        TERMINATOR,
        /** Safety attachments. */
        SECONDARY,
        LABEL,
        HIRE
    }

    /** How far it is. */
    public enum State {
        /** In no order of the project. */
        IN_NO_ORDER,
        TO_ORDER,
        PLACED,
        /** Placed, and promised for later than it is needed. */
        LATE,
        ARRIVED
    }

    public OrderLine {
        items = List.copyOf(items);
        tasks = List.copyOf(tasks);
        delays = List.copyOf(delays);
        assumed = List.copyOf(assumed);
    }

    /** What it costs; null where its price is not known. */
    public @Nullable BigDecimal price() {
        return unitPrice == null
                ? null
                : unitPrice.multiply(BigDecimal.valueOf(buy)).setScale(2, RoundingMode.HALF_UP);
    }
}
