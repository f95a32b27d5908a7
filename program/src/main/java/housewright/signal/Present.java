package housewright.signal;

import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Types;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A thing that is there at a moment.
 *
 * @param equipment as it stands at the moment
 * @param model its type; null where that is not known
 */
public record Present(Equipment equipment, @Nullable Model model) {
    public String id() {
        return equipment.id();
    }

    /** All that is there, in the order of the file. */
    public static List<Present> all(Types types, Moment moment) {
        List<Present> all = new ArrayList<>();
        for (Equipment each : types.project().equipment().values()) {
            if (moment.isThere("equipment", each.id(), each.life())) {
                Equipment now = moment.isDone("equipment", each.id()) ? each : each.today();
                all.add(new Present(now, types.findModel(now.model()).orElse(null)));
            }
        }
        return all;
    }

    @Override
    public int hashCode() {
        return id().hashCode();
    }
}
