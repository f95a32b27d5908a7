package housewright.check.light;

import housewright.check.Evidence;
import housewright.model.Circuit;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Ref.Address;
import housewright.power.Supplies;
import housewright.power.Supply;
import housewright.signal.Present;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which mains is dimmed. */
final class Dimmed {
    private Dimmed() {}

    /** The dimmer, or the dimmed circuit, that feeds a thing; null where its mains is plain or not known. */
    static @Nullable String by(Evidence evidence, Supply supply) {
        Supplies supplies = evidence.supplies();
        Set<String> seen = new HashSet<>();
        Supply at = supply;
        while (at != null && seen.add(at.id())) {
            Address outlet = at.outlet();
            if (outlet == null) {
                break;
            }
            Present above = supplies.things().get(outlet.thing());
            if (above != null && above.model() != null && above.model().kind() == Kind.DIMMER) {
                return outlet.thing();
            }
            at = supplies.find(outlet.thing()).orElse(null);
        }
        Circuit circuit = supply.circuit() == null
                ? null
                : evidence.project().venue().circuits().get(supply.circuit());
        return circuit != null && circuit.dimmed() ? circuit.id() : null;
    }

    static boolean isMadeForIt(@Nullable Model model) {
        return model != null && model.light() != null && model.light().dimmed();
    }
}
