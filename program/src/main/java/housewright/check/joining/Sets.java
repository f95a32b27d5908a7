package housewright.check.joining;

import housewright.cable.Plug;
import housewright.model.Equipment;
import housewright.model.LocalRef;
import housewright.model.Setting;
import housewright.unit.Gain;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How sockets are set, by {@code set} of their equipment; ranges are written out once a thing. */
final class Sets {
    private final Map<String, Map<String, Setting>> byThing = new HashMap<>();

    /** Gain that the input is set to, in dB; 0 where nothing is said. */
    double gainDb(Plug input) {
        Gain gain = null;
        Setting setting = of(input);
        if (setting != null) {
            gain = setting.gain();
        }
        return gain == null ? 0 : gain.decibels();
    }

    /** Whether the project says that phantom power is on or off there; null where it does not say. */
    @Nullable
    Boolean phantom(Plug input) {
        Setting setting = of(input);
        return setting == null ? null : setting.phantom();
    }

    private @Nullable Setting of(Plug input) {
        Equipment equipment = input.equipment();
        if (equipment == null || equipment.set().isEmpty()) {
            return null;
        }
        return byThing.computeIfAbsent(equipment.id(), id -> writtenOut(equipment))
                .get(input.at().spot().name());
    }

    private static Map<String, Setting> writtenOut(Equipment equipment) {
        Map<String, Setting> settings = new HashMap<>();
        equipment.set().forEach((where, setting) -> {
            for (LocalRef.Spot spot : where.spots()) {
                settings.merge(spot.name(), setting, Sets::both);
            }
        });
        return settings;
    }

    /** What is said later holds where both say something. */
    private static Setting both(Setting one, Setting other) {
        return new Setting(
                other.on() == null ? one.on() : other.on(),
                other.gain() == null ? one.gain() : other.gain(),
                other.phantom() == null ? one.phantom() : other.phantom(),
                other.delay() == null ? one.delay() : other.delay(),
                one.mute() || other.mute(),
                null);
    }
}
