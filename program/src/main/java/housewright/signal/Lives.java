package housewright.signal;

import housewright.model.Cable;
import housewright.model.CableToday;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.EquipmentToday;
import housewright.model.Join;
import housewright.model.Life;
import housewright.model.LocalRef;
import housewright.model.NamePattern;
import housewright.model.NetworkSend;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.RadioLink;
import housewright.model.Ref;
import housewright.model.Setting;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a mend changes, made so that TODAY stays as it is: nobody has touched the hall yet. What is there today and is
 * no longer wanted is to be struck, what is added is new, what is set another way was set as it is.
 */
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

    private static @Nullable Ref ref(@Nullable End end) {
        return end == null ? null : end.ref();
    }

    private static Cable copy(Cable c, @Nullable End from, @Nullable End to, Life life, @Nullable CableToday was) {
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

    /** The piece set another way; where it is there today, it is set as before today. */
    static Equipment with(Equipment e, LocalRef ref, Setting setting, Setting before) {
        Map<LocalRef, Setting> set = new LinkedHashMap<>(e.set());
        set.put(ref, setting);
        EquipmentToday was = e.was() == null ? NOTHING : e.was();
        Map<LocalRef, Setting> today = new LinkedHashMap<>(was.set());
        today.putIfAbsent(ref, before);
        return copy(e, e.life(), set, e.vlans(), e.life().today() ? was(was, today, was.vlans()) : e.was());
    }

    /** The piece with its ports in other VLANs; where it is there today, they are as before today. */
    static Equipment withVlans(
            Equipment e, Map<NamePattern, List<Integer>> vlans, Map<NamePattern, List<Integer>> before) {
        EquipmentToday was = e.was() == null ? NOTHING : e.was();
        Map<NamePattern, List<Integer>> today = new LinkedHashMap<>(was.vlans());
        before.forEach(today::putIfAbsent);
        return copy(e, e.life(), e.set(), vlans, e.life().today() ? was(was, was.set(), today) : e.was());
    }

    static Equipment kept(Equipment e) {
        return copy(e, Life.KEEP, e.set(), e.vlans(), e.was());
    }

    private static final EquipmentToday NOTHING =
            new EquipmentToday(null, null, null, null, Map.of(), null, null, null, null, null, Map.of());

    private static EquipmentToday was(
            EquipmentToday was, Map<LocalRef, Setting> set, Map<NamePattern, List<Integer>> vlans) {
        return new EquipmentToday(
                was.model(),
                was.at(),
                was.circuit(),
                was.poweredBy(),
                set,
                was.unit(),
                was.secondary(),
                was.light(),
                was.terminator(),
                was.ip(),
                vlans);
    }

    /**
     * The join set from now on; what is set today stays so.
     *
     * @param like an entry it stands in for, whose tap, gain and delay it takes over
     */
    static List<Change> patched(Project now, String device, Join.Pair pair, @Nullable PatchEntry like) {
        PatchEntry struck = entry(now, device, pair);
        if (struck != null) { // it is there today and was to be taken out
            return List.of(
                    new Change.Unpatch(device, pair.from(), pair.to()),
                    new Change.Patch(device, single(struck, pair, null)));
        }
        PatchEntry added = new PatchEntry(
                new LocalRef(pair.from().toString()),
                List.of(new LocalRef(pair.to().toString())),
                like == null ? null : like.tap(),
                like == null ? null : like.gain(),
                like == null ? null : like.delay(),
                isThereToday(now, device) ? Life.NEW : null,
                null);
        return List.of(new Change.Patch(device, added));
    }

    /** The join no longer set; where it is today, it is to be taken out. */
    static List<Change> unpatched(Project now, String device, Join.Pair pair) {
        PatchEntry entry = entry(now, device, pair);
        Change.Unpatch out = new Change.Unpatch(device, pair.from(), pair.to());
        if (entry == null) {
            return List.of(out);
        }
        boolean today = isThereToday(now, device)
                && (entry.life() == null || entry.life().today());
        return today ? List.of(out, new Change.Patch(device, single(entry, pair, Life.STRIKE))) : List.of(out);
    }

    /** Nothing of the entry is there today. */
    static boolean isOnlyNew(Project now, String device, PatchEntry entry) {
        return !isThereToday(now, device) || entry.life() == Life.NEW;
    }

    private static boolean isThereToday(Project now, String device) {
        Equipment equipment = now.equipment().get(device);
        return equipment != null && equipment.life().today();
    }

    /** The entry that sets the join; null for none. */
    static @Nullable PatchEntry entry(Project now, String device, Join.Pair pair) {
        for (PatchEntry entry : now.patch().getOrDefault(device, List.of())) {
            if (entry.join().pairs().contains(pair)) {
                return entry;
            }
        }
        return null;
    }

    private static PatchEntry single(PatchEntry entry, Join.Pair pair, @Nullable Life life) {
        return new PatchEntry(
                new LocalRef(pair.from().toString()),
                List.of(new LocalRef(pair.to().toString())),
                entry.tap(),
                entry.gain(),
                entry.delay(),
                life,
                entry.note());
    }

    /** The cable taken away; where it is there today, it is to be struck. */
    static Change gone(Cable c) {
        return c.life().today()
                ? new Change.Put(Section.CABLES, c.id(), copy(c, c.from(), c.to(), Life.STRIKE, c.was()))
                : new Change.Drop(Section.CABLES, c.id());
    }

    static Change gone(NetworkSend s) {
        return s.life().today()
                ? new Change.Put(
                        Section.NETWORK_SENDS,
                        s.id(),
                        new NetworkSend(
                                s.id(),
                                s.from(),
                                s.to(),
                                s.as(),
                                s.rate(),
                                s.vlan(),
                                s.multicast(),
                                s.delay(),
                                Life.STRIKE,
                                s.remarks()))
                : new Change.Drop(Section.NETWORK_SENDS, s.id());
    }

    static Change gone(RadioLink r) {
        return r.life().today()
                ? new Change.Put(
                        Section.RADIO,
                        r.id(),
                        new RadioLink(
                                r.id(),
                                r.from(),
                                r.to(),
                                r.frequency(),
                                r.bandwidth(),
                                r.delay(),
                                Life.STRIKE,
                                r.remarks()))
                : new Change.Drop(Section.RADIO, r.id());
    }

    private static Equipment copy(
            Equipment e,
            Life life,
            Map<LocalRef, Setting> set,
            Map<NamePattern, List<Integer>> vlans,
            @Nullable EquipmentToday was) {
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
                e.handover(),
                was,
                e.remarks());
    }
}
