package housewright.model;

import housewright.unit.CapacitancePerLength;
import housewright.unit.CrossSection;
import housewright.unit.Length;
import housewright.unit.Resistance;
import housewright.unit.TimeSpan;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A type of cable. */
public record CableType(
        String id,
        @Nullable String name,
        @Nullable Figures figures,
        @Doc("The signals it is for") List<Signal> carries,

        @Doc("Both ends, where it comes made up or is usually made so")
        List<Connector> ends,

        @Doc("Ways of a multicore") @Nullable Integer ways,
        @Nullable Resistance impedance,
        @Doc("Outside diameter") @Nullable Length diameter,
        @Doc("Least bend radius, inside") @Nullable Length bend,
        @Doc("Conductor") @Nullable CrossSection conductor,
        @Doc("Between the conductors") @Nullable CapacitancePerLength capacitance,

        @Doc("Loss in dB per 100 m as a and b of a·√f + b·f, f in MHz") @Nullable
        Attenuation attenuation,

        @Doc("Longest run at full rate, where the signal's standard or practice gives one") @Nullable
        Length longest,

        @Doc("Reaction to fire, as printed on the sheath") List<String> fireClass,
        @Nullable Boolean screened,
        @Doc("Price of a metre") @Nullable BigDecimal perMetre,
        @Doc("Price of both ends made up") @Nullable BigDecimal perPair,
        @Nullable TimeSpan lead,
        Remarks remarks) {
    public CableType {
        carries = List.copyOf(carries);
        ends = List.copyOf(ends);
        fireClass = List.copyOf(fireClass);
    }

    private static final Set<String> NOT_BOUGHT = Set.of("own-lead", "inner-join");

    /** A cable of this type is bought, and laid by somebody; any other comes with a thing, or is drawn within one. */
    public static boolean isBought(@Nullable String type) {
        return !NOT_BOUGHT.contains(String.valueOf(type));
    }
}
