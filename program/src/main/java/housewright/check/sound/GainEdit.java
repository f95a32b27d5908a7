package housewright.check.sound;

import housewright.model.Equipment;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.Setting;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.unit.Gain;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Changes of gains that a project sets, and gains in words. */
final class GainEdit {
    private GainEdit() {}

    /** The gain at each place is this, in dB; null takes it away. What else is set stays, ranges are split. */
    static List<Change> set(Project project, Map<Address, @Nullable Double> gains) {
        Map<String, Equipment> changed = new LinkedHashMap<>();
        gains.forEach((at, db) -> {
            Equipment equipment =
                    changed.getOrDefault(at.thing(), project.equipment().get(at.thing()));
            if (equipment != null) {
                changed.put(at.thing(), equipment.with(set(equipment.set(), at.spot(), db)));
            }
        });
        return changed.values().stream()
                .<Change>map(each -> new Change.Put(Section.EQUIPMENT, each.id(), each))
                .toList();
    }

    private static Map<LocalRef, Setting> set(Map<LocalRef, Setting> settings, Spot spot, @Nullable Double db) {
        Map<LocalRef, Setting> all = new LinkedHashMap<>();
        boolean done = db == null;
        for (Map.Entry<LocalRef, Setting> each : settings.entrySet()) {
            List<Spot> spots = each.getKey().spots();
            Setting setting = each.getValue();
            if (setting.gain() == null || !spots.contains(spot)) {
                all.put(each.getKey(), setting);
                continue;
            }
            for (Spot one : spots) {
                boolean here = one.equals(spot);
                Setting own = here ? setting.with(done ? (Gain) null : gain(db)) : setting;
                done |= here;
                if (!own.isEmpty()) {
                    all.put(new LocalRef(one.toString()), own);
                }
            }
        }
        if (!done) {
            LocalRef ref = new LocalRef(spot.toString());
            Setting old = all.getOrDefault(ref, new Setting(null, null, null, null, false, null));
            all.put(ref, old.with(gain(db)));
        }
        return all;
    }

    private static @Nullable Gain gain(@Nullable Double db) {
        return db == null ? null : Gain.ofDecibels(db);
    }

    /** "46 dB", "-2.5 dB". */
    static String said(double db) {
        return number(db) + " dB";
    }

    /** With one figure behind the point where it is no whole number. */
    static String number(double value) {
        double rounded = Math.round(value * 10) / 10.0;
        return rounded == Math.rint(rounded)
                ? Long.toString((long) rounded)
                : String.format(Locale.ROOT, "%.1f", rounded);
    }
}
