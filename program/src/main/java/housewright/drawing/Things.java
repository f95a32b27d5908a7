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
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What stands where in a state. */
final class Things {
    /**
     * A piece of equipment at a place.
     *
     * @param model its type; null where that is not known
     * @param mark what becomes of it, to stand after its name; empty where it stays
     */
    record Thing(Equipment equipment, @Nullable Model model, Change change, String mark) {
        String id() {
            return equipment.id();
        }

        String name() {
            return model != null && model.name() != null
                    ? model.name()
                    : equipment.model() != null ? equipment.model() : "type not known yet";
        }

        String said() {
            return "Equipment " + id() + ", " + name() + mark;
        }
    }

    private final Map<String, List<Thing>> byPlace = new LinkedHashMap<>();
    private final List<Subject> placeless = new ArrayList<>();

    Things(Study study, State state) {
        for (Equipment each : study.project().equipment().values()) {
            Equipment today = Moment.today().isThere("equipment", each.id(), each.life()) ? each.today() : null;
            Equipment target = Moment.target().isThere("equipment", each.id(), each.life()) ? each : null;
            switch (state) {
                case TODAY -> add(study, today, Change.THERE, "");
                case TARGET -> add(study, target, Change.THERE, "");
                case CHANGE -> change(study, today, target);
            }
        }
    }

    /** What moves is said to move, not to be struck and bought anew. */
    private void change(Study study, @Nullable Equipment today, @Nullable Equipment target) {
        if (today == null || target == null) {
            add(study, target, Change.COMES, Change.COMES.said);
            add(study, today, Change.GOES, Change.GOES.said);
        } else if (!Objects.equals(today.at(), target.at())) {
            add(study, target, Change.COMES, " (moves here)");
            add(study, today, Change.GOES, " (moves away)");
        } else if (!Objects.equals(today.model(), target.model()) || !Objects.equals(today.unit(), target.unit())) {
            add(study, target, Change.COMES, " (changes)");
        } else {
            add(study, target, Change.STAYS, "");
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

    private void add(Study study, @Nullable Equipment equipment, Change change, String mark) {
        if (equipment == null || equipment.partOf() != null || equipment.runsOn() != null) {
            return;
        }
        if (equipment.at() == null) {
            placeless.add(Subject.equipment(equipment.id()));
            return;
        }
        Model model = study.types().findModel(equipment.model()).orElse(null);
        byPlace.computeIfAbsent(equipment.at(), each -> new ArrayList<>())
                .add(new Thing(equipment, model, change, mark));
    }
}
