package housewright.model;

import housewright.unit.Length;
import housewright.unit.Mass;
import housewright.unit.Ratio;
import housewright.unit.TimeSpan;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How a company works: how long things take it, what it buys beyond what is needed. An entry here stands in for the built-in one. */
public record Practice(
        @Doc("Labour units, by kind of work") Map<String, LabourUnit> labour,

        @Doc("Spares, by kind of equipment, or cable, lead, connector, adapter, label")
        Map<String, SpareRule> spares,

        @Doc("Lengths in which cable is sold") Map<String, Drum> drums,
        @Doc("Freight, as a share of the goods") @Nullable Ratio freight,

        @Doc("For what nobody foresees, as a share of the goods") @Nullable
        Ratio contingency,

        @Doc("A delivery is wanted so long before it is needed") @Nullable
        TimeSpan margin,

        @Doc("Up to this height people work from the floor") @Nullable
        Length reach,

        @Doc("Up to this height people work from steps; above, from a lift or a tower") @Nullable
        Length steps,

        @Doc("What weighs more takes two people") @Nullable Mass heavy) {
    /** Nothing said. */
    public static final Practice NONE = new Practice(Map.of(), Map.of(), Map.of(), null, null, null, null, null, null);

    public Practice {
        labour = Ordered.copy(labour);
        spares = Ordered.copy(spares);
        drums = Ordered.copy(drums);
    }

    public Optional<LabourUnit> findLabour(String kind) {
        return Optional.ofNullable(labour.get(kind));
    }

    public Optional<SpareRule> findSpares(String kind) {
        return Optional.ofNullable(spares.get(kind));
    }

    public Optional<Drum> findDrum(String cableType) {
        return Optional.ofNullable(Drum.of(drums.values(), cableType));
    }

    /** This, with everything that the other says put in its place, entry by entry. */
    public Practice overlaidBy(@Nullable Practice other) {
        if (other == null) {
            return this;
        }
        return new Practice(
                overlaid(labour, other.labour),
                overlaid(spares, other.spares),
                overlaid(other.drums, drums, other.drums), // the company's own are looked at first
                Words.first(other.freight, freight),
                Words.first(other.contingency, contingency),
                Words.first(other.margin, margin),
                Words.first(other.reach, reach),
                Words.first(other.steps, steps),
                Words.first(other.heavy, heavy));
    }

    @SafeVarargs
    private static <T> Map<String, T> overlaid(Map<String, T>... layers) {
        Map<String, T> all = new LinkedHashMap<>();
        for (Map<String, T> layer : layers) {
            all.putAll(layer);
        }
        return all;
    }
}
