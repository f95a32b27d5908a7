package housewright.check.joining;

import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.model.Adapter;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Changes of a cable that settle what is wrong with its ends or its type. */
final class Recabling {
    private static final BigDecimal UNKNOWN = BigDecimal.valueOf(Integer.MAX_VALUE);

    private Recabling() {}

    /** The cable as the project has it; none where the moment shows it as it runs today, which no change may overwrite. */
    static Optional<Cable> editable(Evidence evidence, Lead lead) {
        Cable cable = evidence.project().cables().get(lead.id());
        return Optional.ofNullable(cable).filter(each -> each.equals(lead.cable()));
    }

    static Change put(Cable cable) {
        return new Change.Put(Section.CABLES, cable.id(), cable);
    }

    static Cable withEnds(Cable cable, List<Connector> ends) {
        return with(cable, cable.type(), ends, cable.adapters());
    }

    static Cable withType(Cable cable, String type) {
        return with(cable, type, List.of(), List.of());
    }

    static Cable withAdapters(Cable cable, List<String> adapters) {
        return with(cable, cable.type(), cable.ends(), adapters);
    }

    static Cable withMore(Cable cable, List<Adapter> adapters) {
        List<String> all = new ArrayList<>(cable.adapters());
        adapters.stream().map(Adapter::id).filter(id -> !all.contains(id)).forEach(all::add);
        return withAdapters(cable, all);
    }

    private static Cable with(Cable cable, @Nullable String type, List<Connector> ends, List<String> adapters) {
        return new Cable(
                cable.id(),
                type,
                cable.from(),
                cable.to(),
                cable.ways(),
                cable.via(),
                cable.life(),
                cable.length(),
                ends,
                adapters,
                cable.terminated(),
                cable.label(),
                cable.tested(),
                cable.was(),
                cable.remarks());
    }

    /** The type most like the cable's own, then the cheapest, that carries the signal and goes into both sockets. */
    static Optional<CableType> findType(Types types, Lead lead, Signal signal) {
        CableType own = lead.type();
        return types.cableTypeIds().stream()
                .flatMap(id -> types.findCableType(id).stream())
                .filter(type -> type.carries().contains(signal))
                .filter(type -> Objects.equals(type.ways(), own == null ? null : own.ways()))
                .filter(type -> Ends.fit(lead, type.ends()))
                .min(Comparator.comparingInt((CableType type) -> -alike(type, own))
                        .thenComparing(type -> type.perMetre() == null ? UNKNOWN : type.perMetre())
                        .thenComparing(CableType::id));
    }

    private static int alike(CableType type, @Nullable CableType own) {
        if (own == null) {
            return 0;
        }
        int alike = Objects.equals(type.impedance(), own.impedance()) ? 1 : 0;
        alike += Objects.equals(type.conductor(), own.conductor()) ? 1 : 0;
        alike += Objects.equals(type.fireClass(), own.fireClass()) ? 1 : 0;
        return alike + (Objects.equals(type.screened(), own.screened()) ? 1 : 0);
    }

    /** All adapters made for the signal. */
    static List<Adapter> adaptersFor(Types types, @Nullable Signal signal) {
        return types.adapterIds().stream()
                .flatMap(id -> types.findAdapter(id).stream())
                .filter(adapter -> signal == null
                        || adapter.carries().isEmpty()
                        || adapter.carries().contains(signal))
                .toList();
    }
}
