package housewright.signal;

import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Shape;
import housewright.model.Types;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A thing that is there at a moment.
 *
 * @param equipment as it stands at the moment
 * @param shape its type, with the ranges written out; null where that is not known
 */
public record Present(Equipment equipment, @Nullable Shape shape) {
    public String id() {
        return equipment.id();
    }

    /** Its type; null where that is not known. */
    public @Nullable Model model() {
        return shape == null ? null : shape.model();
    }

    /** All that is there, by id, in the order of the file. */
    public static Map<String, Present> all(Types types, Moment moment, Signals.Layouts layouts) {
        Map<String, Present> all = new LinkedHashMap<>();
        Map<String, Shape> shapes = new HashMap<>();
        for (Equipment each : types.project().equipment().values()) {
            if (moment.isThere("equipment", each.id(), each.life())) {
                Equipment now = moment.isDone("equipment", each.id()) ? each : each.today();
                Shape shape = now.model() == null
                        ? null
                        : shapes.computeIfAbsent(
                                now.model(),
                                id -> types.findModel(id).map(layouts::shape).orElse(null));
                all.put(now.id(), new Present(now, shape));
            }
        }
        return Collections.unmodifiableMap(all);
    }

    @Override
    public int hashCode() {
        return id().hashCode();
    }
}
