package housewright.model;

import housewright.unit.TimeSpan;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is ordered where. */
public record Order(
        String id,
        @Key("for") List<String> items,
        @Nullable String supplier,
        @Nullable LocalDate placed,
        @Nullable TimeSpan lead,
        @Nullable LocalDate promised,
        @Nullable LocalDate arrived,

        @Doc("Price of its delivery; else a share of the goods") @Nullable
        BigDecimal freight,

        Remarks remarks) {
    public Order {
        items = List.copyOf(items);
    }
}
