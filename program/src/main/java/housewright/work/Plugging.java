package housewright.work;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Equipment;
import housewright.model.Fitted;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Place;
import housewright.model.Signal;
import housewright.model.TaskKind;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is plugged in, device by device: the ends of new runs at it, and the loose leads that go to it, which are labelled
 * and tried on the bench before, place by place. A loose lead belongs to the device its far end is in; to the other where
 * that is a panel. What stands free is set up and plugged in at once.
 */
final class Plugging {
    private final Job job;
    private final Map<String, Set<String>> ends = new LinkedHashMap<>();
    private final Map<String, Set<String>> leads = new LinkedHashMap<>();
    private final Map<String, Draft> benched = new LinkedHashMap<>();

    Plugging(Job job) {
        this.job = job;
    }

    void derive() {
        for (Cable cable : job.project.cables().values()) {
            Lead lead = job.lead(cable.id());
            if (cable.life() == Life.NEW && lead != null) {
                sort(cable, lead);
            }
        }
        bench();
        Set<String> things = new LinkedHashSet<>(ends.keySet());
        things.addAll(leads.keySet());
        for (String id : job.project.equipment().keySet()) {
            if (things.contains(id)) {
                connect(id);
            }
        }
        for (Equipment thing : job.project.equipment().values()) {
            if (thing.life().target()) {
                terminator(thing);
                power(thing);
            }
        }
    }

    private void sort(Cable cable, Lead lead) {
        if (isWithin(lead)) {
            for (Joint joint : lead.joints()) {
                for (Plug plug : joint.plugs()) {
                    Draft card = job.find(TaskKind.MOUNT, plug.at().thing());
                    if (card != null) {
                        job.about(card, "cables", cable.id());
                    }
                }
            }
            return;
        }
        if (Job.isFixed(cable)) {
            for (Joint joint : lead.joints()) {
                for (Plug plug : joint.plugs()) {
                    if (!isMadeOffThere(plug)) {
                        ends.computeIfAbsent(plug.at().thing(), each -> new LinkedHashSet<>())
                                .add(cable.id());
                    }
                }
            }
            return;
        }
        String thing = belongsTo(lead);
        if (thing != null) {
            leads.computeIfAbsent(thing, each -> new LinkedHashSet<>()).add(cable.id());
        }
    }

    private void bench() {
        Map<String, List<String>> places = new LinkedHashMap<>();
        leads.forEach((id, cables) -> {
            Equipment thing = job.project.equipment().get(id);
            String place = thing == null ? null : job.placeOf(thing);
            if (place != null && job.place(place) != null) {
                cables.stream()
                        .filter(each -> CableType.isBought(
                                Objects.requireNonNull(job.project.cables().get(each))
                                        .type()))
                        .forEach(each -> places.computeIfAbsent(place, key -> new ArrayList<>())
                                .add(each));
            }
        });
        for (String place : job.project.venue().places().keySet()) {
            List<String> cables = places.get(place);
            if (cables == null) {
                continue;
            }
            Draft draft = job.draft(
                    TaskKind.LEADS,
                    place,
                    "Label and try the " + Say.counted(cables.size(), "loose lead", "loose leads") + " for "
                            + Words.said(place) + ", on the bench",
                    "A lead that does not work is found before it is behind a rack or up on a bar.");
            draft.does.add(TaskKind.LABEL);
            draft.does.add(TaskKind.TEST);
            for (String id : cables) {
                Cable cable = Objects.requireNonNull(job.project.cables().get(id));
                Lead lead = Objects.requireNonNull(job.lead(id));
                job.about(draft, "cables", id);
                job.takes(draft, "label-end", 2);
                job.takes(draft, "test-lead", Math.max(1, lead.joints().size()));
                job.uses(draft, id, cable.type());
                benched.put(id, draft);
            }
            draft.after(job.drafts.get(TaskKind.PRINT_LABELS.word()));
        }
    }

    /** Drawn between a machine and what is in it. */
    private static boolean isWithin(Lead lead) {
        return lead.type() != null && lead.type().ends().contains(Connector.NONE);
    }

    /** The back of a panel, where the cable is punched, clamped or soldered. */
    private boolean isMadeOffThere(Plug plug) {
        boolean back = plug.connector() == Connector.TERMINALS
                || (plug.port() != null && plug.port().connector() == Connector.TERMINALS)
                || plug.at().spot().name().contains("rear");
        return back && job.isPanel(plug.at().thing());
    }

    private @Nullable String belongsTo(Lead lead) {
        String first = null;
        for (Joint joint : lead.joints()) {
            List<Plug> plugs = new ArrayList<>(joint.plugs());
            for (Plug plug : plugs.reversed()) {
                String thing = plug.at().thing();
                if (!job.isPanel(thing)) {
                    return thing;
                }
                first = first == null ? thing : first;
            }
        }
        return first;
    }

    private void connect(String id) {
        Equipment thing = Objects.requireNonNull(job.project.equipment().get(id));
        Set<String> runs = ends.getOrDefault(id, Set.of());
        Set<String> loose = leads.getOrDefault(id, Set.of());
        Set<String> all = new LinkedHashSet<>(runs);
        all.addAll(loose);
        Draft mount = job.find(TaskKind.MOUNT, id);
        boolean atOnce = mount != null && isFree(thing);
        Draft draft = mount;
        if (draft == null || !atOnce) {
            draft = job.draft(
                    TaskKind.CONNECT,
                    id,
                    "Plug in the cables of " + Words.said(id) + ": " + Say.some(all, 6),
                    Say.counted(all.size(), "cable to it is", "cables to it are") + " new.");
            job.at(draft, job.placeOf(thing));
            draft.after(job.placed(id));
        } else {
            draft.title += ", and plug in " + Say.some(all, 4);
            draft.does.add(TaskKind.CONNECT);
        }
        for (String each : runs) {
            run(draft, id, each);
        }
        for (String each : loose) {
            loose(draft, thing, each);
        }
    }

    private boolean isFree(Equipment thing) {
        Place place = job.place(thing.at());
        return (place == null || (place.rack() == null && place.hang() == null))
                && job.kind(thing) != Kind.PANEL
                && thing.partOf() == null
                && thing.runsOn() == null
                && !Goes.isWiredIn(job.model(thing));
    }

    private void run(Draft draft, String thing, String cable) {
        Lead lead = Objects.requireNonNull(job.lead(cable));
        job.about(draft, "cables", cable);
        draft.after(job.find(TaskKind.TEST, cable));
        for (Joint joint : lead.joints()) {
            for (Plug plug : joint.plugs()) {
                if (plug.at().thing().equals(thing)) {
                    job.takes(draft, "plug-end", 1);
                    makesRoom(draft, plug);
                }
            }
        }
    }

    private void loose(Draft draft, Equipment thing, String id) {
        Cable cable = Objects.requireNonNull(job.project.cables().get(id));
        Lead lead = Objects.requireNonNull(job.lead(id));
        job.about(draft, "cables", id);
        draft.does.add(TaskKind.CONNECT);
        int ends = 0;
        for (Joint joint : lead.joints()) {
            for (Plug plug : joint.plugs()) {
                ends++;
                makesRoom(draft, plug);
                Equipment other = job.project.equipment().get(plug.at().thing());
                if (other != null && !other.equals(thing) && !isFree(other)) {
                    draft.after(job.placed(other.id()));
                }
                if (plug.port() != null && plug.port().signal() == Signal.MAINS) {
                    draft.cautions.add("Mains last, and switched off while plugging.");
                }
            }
        }
        job.takes(draft, "plug-end", ends);
        if (!CableType.isBought(cable.type())) {
            return;
        }
        draft.does.add(TaskKind.PULL);
        job.takes(draft, "lay-lead", 1);
        job.uses(draft, id, cable.type());
        Draft bench = benched.get(id);
        if (bench != null) {
            draft.after(bench);
            return;
        }
        draft.does.add(TaskKind.LABEL);
        draft.does.add(TaskKind.TEST);
        job.takes(draft, "label-end", 2);
        job.takes(draft, "test-lead", Math.max(1, lead.joints().size()));
        draft.after(job.drafts.get(TaskKind.PRINT_LABELS.word()));
    }

    /** Whatever is in the socket and goes must be out of it. */
    private void makesRoom(Draft draft, Plug plug) {
        for (Lead here : job.today.in(plug.socket())) {
            draft.after(job.find(TaskKind.TAKE_OUT, here.id()));
        }
    }

    private void terminator(Equipment thing) {
        boolean comes = Job.isNew(thing) || Job.isMoved(thing);
        if (thing.terminator() != Fitted.FITTED || (!comes && thing.today().terminator() == Fitted.FITTED)) {
            return;
        }
        Draft with = job.find(TaskKind.CONNECT, thing.id());
        with = with == null && comes ? job.find(TaskKind.MOUNT, thing.id()) : with;
        if (with == null) {
            with = job.draft(
                    TaskKind.TERMINATOR,
                    thing.id(),
                    "Plug a terminator into " + Words.said(thing.id()),
                    "It becomes the last of its line.");
            job.at(with, thing.at());
            with.after(job.placed(thing.id()));
        } else {
            with.does.add(TaskKind.TERMINATOR);
            with.title += ", and its terminator";
        }
        job.takes(with, "fit-terminator", 1);
    }

    /** A mains plug that goes into another outlet, with no cable of the project's own that says so. */
    private void power(Equipment thing) {
        Equipment was = thing.today();
        boolean other =
                !Objects.equals(was.poweredBy(), thing.poweredBy()) || !Objects.equals(was.circuit(), thing.circuit());
        if (!Job.stays(thing) || !other || Job.isMoved(thing) || Job.isSwapped(thing) || hasNewMains(thing.id())) {
            return;
        }
        Draft draft = job.draft(
                TaskKind.POWER,
                thing.id(),
                "Plug the mains of " + Words.said(thing.id()) + " into "
                        + (thing.poweredBy() != null
                                ? Words.said(thing.poweredBy().thing())
                                : "an outlet of circuit " + thing.circuit()),
                "It is on another outlet or circuit today.");
        job.takes(draft, "move-mains-plug", 1);
        job.at(draft, thing.at());
        if (Goes.isWiredIn(job.model(thing))) {
            draft.skills.add("mains");
            draft.cautions.add("Wired into the mains: by a licensed electrician alone.");
        }
        if (thing.poweredBy() != null) {
            draft.after(job.placed(thing.poweredBy().thing()))
                    .after(job.find(TaskKind.WIRE, thing.poweredBy().thing()));
        }
    }

    private boolean hasNewMains(String equipment) {
        for (Cable cable : job.project.cables().values()) {
            Lead lead = job.lead(cable.id());
            boolean changes = cable.life() == Life.NEW || Job.isReplugged(cable);
            if (changes && lead != null) {
                for (Joint joint : lead.joints()) {
                    for (Plug plug : joint.plugs()) {
                        if (plug.at().thing().equals(equipment)
                                && plug.port() != null
                                && plug.port().in() == Signal.MAINS) {
                            return true;
                        }
                    }
                }
            }
        }
        return false;
    }
}
