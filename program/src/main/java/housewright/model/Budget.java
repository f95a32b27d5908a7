package housewright.model;

import housewright.unit.Ratio;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What the job may cost. */
public record Budget(
        @Doc("All there is, tax included") @Nullable BigDecimal limit,

        @Doc("Tax on what is bought and hired; asked of whoever pays") @Nullable
        Ratio tax) {}
