package housewright.paper;

import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Ref;
import housewright.model.Words;
import housewright.signal.Present;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;

/** A label for each thing: its name, where it belongs, what feeds it, its network address. */
final class EquipmentLabels implements Paper {
    @Override
    public String id() {
        return "equipment-labels";
    }

    @Override
    public String title() {
        return "Equipment labels";
    }

    @Override
    public String recipient() {
        return "Whoever labels the gear";
    }

    @Override
    public String question() {
        return "What goes on each thing?";
    }

    @Override
    public boolean isOnLabels() {
        return true;
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        List<LabelPages.Said> all = new ArrayList<>();
        for (Present thing : study.supplies().things().values()) {
            if (thing.equipment().partOf() == null && thing.equipment().runsOn() == null) {
                all.add(new LabelPages.Said(lines(thing), options.labels().code("equipment." + thing.id())));
            }
        }
        return LabelSheets.of(this, all, options);
    }

    private static List<String> lines(Present thing) {
        Equipment equipment = thing.equipment();
        Model model = thing.model();
        List<String> lines = new ArrayList<>();
        lines.add(Words.said(thing.id()));
        if (equipment.label() != null) {
            lines.add(equipment.label());
        }
        if (model != null && model.name() != null) {
            lines.add(model.name());
        }
        List<String> where = new ArrayList<>();
        if (equipment.at() != null) {
            where.add(Words.said(equipment.at()) + (equipment.unit() == null ? "" : ", unit " + equipment.unit()));
        }
        Ref supply = equipment.poweredBy();
        if (supply != null) {
            where.add("power " + supply.addresses().getFirst().saidPort());
        } else if (equipment.circuit() != null) {
            where.add("circuit " + equipment.circuit());
        }
        if (!where.isEmpty()) {
            lines.add(String.join("; ", where));
        }
        if (equipment.ip() != null) {
            lines.add(equipment.ip());
        }
        return lines;
    }
}
