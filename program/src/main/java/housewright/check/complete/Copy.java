package housewright.check.complete;

import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.change.Change;
import housewright.model.change.Section;
import org.jspecify.annotations.Nullable;

/** Equipment with one thing entered that was missing or wrong. */
final class Copy {
    private Copy() {}

    static Change kept(Equipment thing) {
        return put(thing, Life.KEEP, thing.circuit());
    }

    static Change onCircuit(Equipment thing, @Nullable String circuit) {
        return put(thing, thing.life(), circuit);
    }

    private static Change put(Equipment thing, Life life, @Nullable String circuit) {
        return new Change.Put(
                Section.EQUIPMENT,
                thing.id(),
                new Equipment(
                        thing.id(),
                        thing.model(),
                        thing.at(),
                        life,
                        circuit,
                        thing.poweredBy(),
                        thing.set(),
                        thing.unit(),
                        thing.secondary(),
                        thing.light(),
                        thing.gang(),
                        thing.terminator(),
                        thing.ip(),
                        thing.vlans(),
                        thing.partOf(),
                        thing.runsOn(),
                        thing.serial(),
                        thing.label(),
                        thing.handover(),
                        thing.was(),
                        thing.remarks()));
    }
}
