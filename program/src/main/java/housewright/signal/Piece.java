package housewright.signal;

import housewright.model.Equipment;
import org.jspecify.annotations.Nullable;

/**
 * A piece of equipment that is there.
 *
 * @param equipment as it is at the moment asked about
 * @param layout its inside; null while its type is not known, or its sockets have not been counted
 * @param base number of its first node
 */
record Piece(Equipment equipment, @Nullable Layout layout, int base) {
    String id() {
        return equipment.id();
    }
}
