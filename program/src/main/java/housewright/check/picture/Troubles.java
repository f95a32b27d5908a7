package housewright.check.picture;

import housewright.model.Ref.Address;
import housewright.picture.Jack;
import housewright.picture.Stretch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Stretches that go wrong, those from one source that go wrong at one socket taken together. */
final class Troubles {
    private Troubles() {}

    private record Place(Address from, Address at) {}

    static List<Stretch> gathered(List<Stretch> stretches, Function<Stretch, Optional<Jack>> where) {
        Map<Place, Stretch> troubles = new LinkedHashMap<>();
        for (Stretch stretch : stretches) {
            Address from = stretch.jacks().getFirst().at();
            where.apply(stretch).ifPresent(jack -> troubles.merge(new Place(from, jack.at()), stretch, Stretch::with));
        }
        return new ArrayList<>(troubles.values());
    }
}
