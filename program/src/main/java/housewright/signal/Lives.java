package housewright.signal;

import housewright.model.Cable;
import housewright.model.CableToday;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.LocalRef;
import housewright.model.NamePattern;
import housewright.model.Ref;
import housewright.model.Setting;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Copies of a cable or a piece with one thing changed. */
final class Lives {
    private Lives() {}

    static Cable kept(Cable c) {
        return copy(c, c.from(), c.to(), Life.KEEP, c.was());
    }

    /** The cable with other ends; what it is today stays said where it is there today. */
    static Cable moved(Cable c, Ref from, Ref to) {
        boolean today = c.life().today() && c.was() == null;
        CableToday was = today
                ? new CableToday(
                        null,
                        from.equals(ref(c.from())) ? null : c.from(),
                        to.equals(ref(c.to())) ? null : c.to(),
                        List.of(),
                        List.of(),
                        null,
                        List.of(),
                        List.of())
                : c.was();
        return copy(c, new End(from), new End(to), c.life(), was);
    }

    private static @org.jspecify.annotations.Nullable Ref ref(@org.jspecify.annotations.Nullable End end) {
        return end == null ? null : end.ref();
    }

    private static Cable copy(
            Cable c,
            @org.jspecify.annotations.Nullable End from,
            @org.jspecify.annotations.Nullable End to,
            Life life,
            @org.jspecify.annotations.Nullable CableToday was) {
        return new Cable(
                c.id(),
                c.type(),
                from,
                to,
                c.ways(),
                c.via(),
                life,
                c.length(),
                c.ends(),
                c.adapters(),
                c.terminated(),
                c.label(),
                c.tested(),
                was,
                c.remarks());
    }

    static Equipment with(Equipment e, LocalRef ref, Setting setting) {
        Map<LocalRef, Setting> set = new LinkedHashMap<>(e.set());
        set.put(ref, setting);
        return copy(e, e.life(), set, e.vlans());
    }

    static Equipment withVlans(Equipment e, Map<NamePattern, List<Integer>> vlans) {
        return copy(e, e.life(), e.set(), vlans);
    }

    static Equipment kept(Equipment e) {
        return copy(e, Life.KEEP, e.set(), e.vlans());
    }

    private static Equipment copy(
            Equipment e, Life life, Map<LocalRef, Setting> set, Map<NamePattern, List<Integer>> vlans) {
        return new Equipment(
                e.id(),
                e.model(),
                e.at(),
                life,
                e.circuit(),
                e.poweredBy(),
                set,
                e.unit(),
                e.secondary(),
                e.light(),
                e.gang(),
                e.terminator(),
                e.ip(),
                vlans,
                e.partOf(),
                e.runsOn(),
                e.serial(),
                e.label(),
                e.was(),
                e.remarks());
    }
}
