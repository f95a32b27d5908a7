package housewright.check.joining;

import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.finding.Fix;
import housewright.model.Equipment;
import housewright.model.LocalRef;
import housewright.model.Setting;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Switching phantom power at one input. */
final class PhantomSetting {
    private PhantomSetting() {}

    /** With the change, where the project sets this very socket; what stands in a range is for a person to part. */
    static Fix fix(Evidence evidence, Plug input, boolean on) {
        String words = "Switch phantom power " + (on ? "on" : "off") + " at "
                + input.at().saidPort() + ".";
        LocalRef socket = new LocalRef(input.at().spot().name());
        Equipment equipment = evidence.project().equipment().get(input.at().thing());
        Setting setting = equipment == null ? null : equipment.set().get(socket);
        if (equipment == null || setting == null || !equipment.equals(input.equipment())) {
            return Fix.of(words);
        }
        Map<LocalRef, Setting> set = new LinkedHashMap<>(equipment.set());
        set.put(socket, setting.withPhantom(on));
        return new Fix(words, List.of(new Change.Put(Section.EQUIPMENT, equipment.id(), with(equipment, set))));
    }

    private static Equipment with(Equipment equipment, Map<LocalRef, Setting> set) {
        return new Equipment(
                equipment.id(),
                equipment.model(),
                equipment.at(),
                equipment.life(),
                equipment.circuit(),
                equipment.poweredBy(),
                set,
                equipment.unit(),
                equipment.secondary(),
                equipment.light(),
                equipment.gang(),
                equipment.terminator(),
                equipment.ip(),
                equipment.vlans(),
                equipment.partOf(),
                equipment.runsOn(),
                equipment.serial(),
                equipment.label(),
                equipment.handover(),
                equipment.was(),
                equipment.remarks());
    }
}
