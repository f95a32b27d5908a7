package housewright.drawing;

import housewright.finding.Subject;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.signal.Moment;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What stands where in a state. */
final class Things {
    /**
     * A piece of equipment at a place.
     *
     * @param model its type; null where that is not known
     */
    record Thing(Equipment equipment, @Nullable Model model, Change change) {
        String id() {
            return equipment.id();
        }

        String name() {
            return model != null && model.name() != null
                    ? model.name()
                    : equipment.model() != null ? equipment.model() : "type not known yet";
        }

        String said() {
            return "Equipment " + id() + ", " + name() + change.said;
        }
    }

    private final Map<String, List<Thing>> byPlace = new LinkedHashMap<>();
    private final List<Subject> placeless = new ArrayList<>();

    Things(Study study, State state) {
        for (Equipment each : study.project().equipment().values()) {
            Equipment today = Moment.today().isThere("equipment", each.id(), each.life()) ? each.today() : null;
            Equipment target = Moment.target().isThere("equipment", each.id(), each.life()) ? each : null;
            switch (state) {
                case TODAY -> add(study, today, Change.THERE);
                case TARGET -> add(study, target, Change.THERE);
                case CHANGE -> {
                    boolean same = today != null
                            && target != null
                            && java.util.Objects.equals(today.at(), target.at())
                            && java.util.Objects.equals(today.model(), target.model())
                            && java.util.Objects.equals(today.unit(), target.unit());
                    add(study, target, same ? Change.STAYS : Change.COMES);
                    add(study, same ? null : today, Change.GOES);
                }
            }
        }
    }

    /** In the order of the file. */
    List<Thing> at(String place) {
        return byPlace.getOrDefault(place, List.of());
    }

    /** Equipment of which nobody has said where it is: no place, and no host that has one. */
    List<Subject> placeless() {
        return placeless;
    }

    private void add(Study study, @Nullable Equipment equipment, Change change) {
        if (equipment == null || equipment.partOf() != null || equipment.runsOn() != null) {
            return;
        }
        if (equipment.at() == null) {
            placeless.add(Subject.equipment(equipment.id()));
            return;
        }
        Model model = study.types().findModel(equipment.model()).orElse(null);
        byPlace.computeIfAbsent(equipment.at(), each -> new ArrayList<>()).add(new Thing(equipment, model, change));
    }
}
