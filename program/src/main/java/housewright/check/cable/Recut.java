package housewright.check.cable;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.finding.Fix;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Life;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.unit.Length;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Other cable in the place of one that is still to be bought. What lies there already is a person's to exchange. */
final class Recut {
    private static final BigDecimal DEAR = BigDecimal.valueOf(Integer.MAX_VALUE);

    private Recut() {}

    static Optional<Cable> planned(Evidence evidence, Lead lead) {
        return Optional.ofNullable(evidence.project().cables().get(lead.id()))
                .filter(cable -> cable.life() == Life.NEW && cable.equals(lead.cable()));
    }

    /** The cheapest type with the same ends that will do, where the cable is still to be bought. */
    static Optional<Fix> otherType(Evidence evidence, Lead lead, Predicate<CableType> does) {
        CableType own = lead.type();
        if (own == null) {
            return Optional.empty();
        }
        return planned(evidence, lead)
                .flatMap(cable -> evidence.types().cableTypeIds().stream()
                        .flatMap(id -> evidence.types().findCableType(id).stream())
                        .filter(type -> type.ends().equals(own.ends())
                                && (own.ways() == null || own.ways().equals(type.ways()))
                                && does.test(type))
                        .min(Comparator.comparing((CableType type) -> type.perMetre() == null ? DEAR : type.perMetre())
                                .thenComparing(CableType::id))
                        .map(type -> new Fix(
                                "Take " + type.id() + " for " + cable.id() + ".",
                                List.of(put(with(cable, type.id(), cable.life(), cable.length(), cable.label()))))));
    }

    /** The cable with another length; null for the length of its pathways and slack. */
    static Fix otherLength(Cable cable, @Nullable Length length, String words) {
        return new Fix(words, List.of(put(with(cable, cable.type(), cable.life(), length, cable.label()))));
    }

    static Change labelled(Cable cable, String label) {
        return put(with(cable, cable.type(), cable.life(), cable.length(), label));
    }

    static Change kept(Cable cable) {
        return put(with(cable, cable.type(), Life.KEEP, cable.length(), cable.label()));
    }

    private static Change put(Cable cable) {
        return new Change.Put(Section.CABLES, cable.id(), cable);
    }

    private static Cable with(
            Cable cable, @Nullable String type, Life life, @Nullable Length length, @Nullable String label) {
        return new Cable(
                cable.id(),
                type,
                cable.from(),
                cable.to(),
                cable.ways(),
                cable.via(),
                life,
                length,
                cable.ends(),
                cable.adapters(),
                cable.terminated(),
                label,
                cable.tested(),
                cable.was(),
                cable.remarks());
    }
}
