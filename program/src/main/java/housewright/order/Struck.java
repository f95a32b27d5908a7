package housewright.order;

import housewright.cable.Cabling;
import housewright.cable.Lead;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Project;
import housewright.model.Types;
import housewright.model.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** What goes and is of a type that is bought: equipment, leads, and lengths that runs can be cut from. */
final class Struck {
    private final Types types;
    private final Project project;
    private final Cabling today;
    private final Cabling target;
    private final List<Reuse> reuse = new ArrayList<>();
    private final Set<String> served = new LinkedHashSet<>();

    Struck(Types types, Cabling today, Cabling target) {
        this.types = types;
        this.project = types.project();
        this.today = today;
        this.target = target;
    }

    List<Reuse> find() {
        for (Equipment old : project.equipment().values()) {
            if (old.life() == Life.STRIKE) {
                equipment(old);
            }
        }
        List<Lead> old = new ArrayList<>();
        for (Cable cable : project.cables().values()) {
            Lead lead = today.findLead(cable.id()).orElse(null);
            if (cable.life() == Life.STRIKE
                    && lead != null
                    && lead.span() != null
                    && CableType.isBought(cable.type())) {
                old.add(lead);
            }
        }
        old.sort(Comparator.comparingDouble(lead -> metres(lead))); // the shortest that will do
        old.forEach(this::lead);
        old.forEach(this::runs);
        return reuse;
    }

    private static double metres(Lead lead) {
        return lead.span() == null ? 0 : lead.span().metres();
    }

    private void equipment(Equipment old) {
        String type = old.today().model();
        for (Equipment thing : project.equipment().values()) {
            if (type != null
                    && thing.life() == Life.NEW
                    && type.equals(thing.model())
                    && served.add("equipment." + thing.id())) {
                BigDecimal price = types.findModel(type).map(Model::price).orElse(null);
                reuse.add(new Reuse(
                        old.id(),
                        type,
                        List.of(thing.id()),
                        price,
                        Words.said(old.id()) + " is of the type of " + Words.said(thing.id())
                                + ": use it in its place, where it is sound and free in time."));
                return;
            }
        }
    }

    /** A lead with the same ends, as long as is wanted and not much longer: what is left over lies in the way. */
    private void lead(Lead old) {
        for (Cable cable : project.cables().values()) {
            Lead lead = target.findLead(cable.id()).orElse(null);
            boolean fits = lead != null
                    && isBought(cable, lead)
                    && cable.via().isEmpty()
                    && ends(old.cable()).equals(ends(cable))
                    && metres(old) >= metres(lead)
                    && metres(old) <= 2 * metres(lead) + 1;
            if (lead != null && fits && old.type() != null && served.add("cables." + cable.id())) {
                served.add("struck." + old.id());
                CableType type = old.type();
                BigDecimal saves = type.perMetre() == null && type.perPair() == null
                        ? null
                        : Objects.requireNonNullElse(type.perMetre(), BigDecimal.ZERO)
                                .multiply(BigDecimal.valueOf(metres(lead)))
                                .add(Objects.requireNonNullElse(type.perPair(), BigDecimal.ZERO));
                reuse.add(new Reuse(
                        old.id(),
                        type.id(),
                        List.of(cable.id()),
                        saves,
                        "Cable " + old.id() + " (" + Figures.metres(metres(old)) + ") can be " + cable.id() + " ("
                                + Figures.metres(metres(lead)) + "), if it tests well."));
                return;
            }
        }
    }

    private boolean isBought(Cable cable, Lead lead) {
        return cable.life() == Life.NEW
                && cable.type() != null
                && lead.span() != null
                && CableType.isBought(cable.type());
    }

    private List<Object> ends(Cable cable) {
        return List.of(String.valueOf(cable.type()), cable.ends());
    }

    /** A length that runs of the same type can be cut from, the longest first. */
    private void runs(Lead old) {
        if (served.contains("struck." + old.id()) || old.type() == null) {
            return;
        }
        double left = metres(old);
        List<Lead> runs = new ArrayList<>();
        for (Cable cable : project.cables().values()) {
            Lead lead = target.findLead(cable.id()).orElse(null);
            if (lead != null
                    && isBought(cable, lead)
                    && !cable.via().isEmpty()
                    && String.valueOf(old.cable().type()).equals(cable.type())) {
                runs.add(lead);
            }
        }
        runs.sort(Comparator.comparingDouble((Lead lead) -> -metres(lead)).thenComparing(Lead::id));
        List<String> cut = new ArrayList<>();
        double used = 0;
        for (Lead lead : runs) {
            if (metres(lead) <= left && !served.contains("cables." + lead.id())) {
                served.add("cables." + lead.id());
                cut.add(lead.id());
                left -= metres(lead);
                used += metres(lead);
            }
        }
        if (!cut.isEmpty()) {
            BigDecimal perMetre = old.type().perMetre();
            reuse.add(new Reuse(
                    old.id(),
                    old.type().id(),
                    cut,
                    perMetre == null ? null : perMetre.multiply(BigDecimal.valueOf(used)),
                    "From cable " + old.id() + " (" + Figures.metres(metres(old)) + ") can be cut "
                            + String.join(", ", cut) + " (" + Figures.metres(used)
                            + " together), if it tests well and comes out whole and in time."));
        }
    }
}
