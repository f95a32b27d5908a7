package housewright.work;

import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Pathway;
import housewright.model.Port;
import housewright.model.RoomCondition;
import housewright.model.Signal;
import housewright.model.TaskKind;
import housewright.model.Words;
import org.jspecify.annotations.Nullable;

/** What is there today and is gone afterwards. */
final class Goes {
    /** A length nobody knows counts as this. */
    private static final double UNKNOWN_M = 10;

    private final Job job;

    Goes(Job job) {
        this.job = job;
    }

    void derive() {
        for (Cable cable : job.project.cables().values()) {
            if (cable.life() == Life.STRIKE) {
                takeOut(cable);
            }
        }
        for (Equipment thing : job.project.equipment().values()) {
            if (Job.isStruck(thing)) {
                strike(thing);
            }
        }
    }

    private void takeOut(Cable cable) {
        Draft draft = job.draft(
                TaskKind.TAKE_OUT,
                cable.id(),
                "Take out cable " + cable.id() + ends(cable.today()),
                because(
                        "It is there today and not in the target",
                        cable.remarks().note()));
        Lead lead = job.today.findLead(cable.id()).orElse(null);
        double metres = UNKNOWN_M;
        if (lead == null || lead.span() == null || lead.span().metres() <= 0) {
            draft.assumed.add("a length of " + Say.metres(UNKNOWN_M) + ": nobody has said how long it is");
        } else {
            metres = lead.span().metres();
        }
        job.takes(draft, "take-out-set-up", 1);
        job.takes(draft, "take-out-metre", CableType.isBought(cable.type()) ? metres : 1);
        if (lead == null) {
            return;
        }
        for (Pathway pathway : lead.pathways()) {
            if (pathway.height() != null) {
                job.up(draft, pathway.height().metres());
            }
        }
        lead.joints()
                .forEach(joint -> joint.plugs().forEach(plug -> {
                    if (plug.equipment() != null && plug.equipment().at() != null) {
                        job.at(draft, plug.equipment().at());
                    }
                    if (plug.equipment() != null) { // noted as plugged, and copied while it still runs
                        draft.after(job.find(TaskKind.COPY, plug.equipment().id()));
                    }
                    if (isWiredIn(plug)) {
                        disconnect(draft);
                    } else if (plug.port() != null && plug.port().signal() == Signal.MAINS) {
                        draft.cautions.add("Unplug it at the outlet first.");
                    }
                }));
    }

    private static String ends(Cable cable) {
        String from = end(cable.from() == null ? null : cable.from().ref());
        String to = end(cable.to() == null ? null : cable.to().ref());
        return from.isEmpty() && to.isEmpty()
                ? ""
                : from.isEmpty() ? " at " + to : to.isEmpty() ? " at " + from : " between " + from + " and " + to;
    }

    private static String end(housewright.model.@Nullable Ref ref) {
        return ref == null ? "" : Words.said(ref.thing());
    }

    static String because(String reason, @Nullable String note) {
        return reason + (note == null ? "." : ": " + note + (note.endsWith(".") ? "" : "."));
    }

    private void strike(Equipment thing) {
        Equipment was = thing.today();
        Model model = job.types.findModel(was.model()).orElse(null);
        Draft draft = job.draft(
                TaskKind.STRIKE,
                thing.id(),
                "Strike " + Words.said(thing.id()) + Say.where(Words.said(thing.id()), job.place(was.at()), was.unit()),
                because(
                        "It is there today and not in the target",
                        thing.remarks().note()));
        job.at(draft, was.at());
        boolean up = draft.heightM != null && draft.heightM > job.reach() && job.hangs(was.at());
        job.takes(draft, up ? "strike-overhead" : "strike-piece", 1);
        heavy(job, draft, model);
        if (isWiredIn(model)) {
            disconnect(draft);
        } else if (model != null && model.kind() == Kind.FIXTURE) {
            draft.cautions.add("Unplug it and let it cool first.");
        }
        if (up) {
            draft.overhead = true;
            draft.conditions.add(RoomCondition.EMPTY);
            draft.cautions.add(
                    "Its weight is held before the fixing is loosened; the safety attachment comes off last.");
        }
        draft.after(job.find(TaskKind.COPY, thing.id()));
        for (Cable cable : job.project.cables().values()) {
            Draft out = job.find(TaskKind.TAKE_OUT, cable.id());
            if (out != null && touches(job.today.findLead(cable.id()).orElse(null), thing.id())) {
                draft.after(out);
            }
        }
    }

    private static boolean touches(@Nullable Lead lead, String equipment) {
        return lead != null
                && lead.joints().stream()
                        .flatMap(joint -> joint.plugs().stream())
                        .map(Plug::at)
                        .anyMatch(at -> at.thing().equals(equipment));
    }

    static void heavy(Job job, Draft draft, @Nullable Model model) {
        if (job.isHeavy(model) && model != null && model.weight() != null) {
            draft.crew = Math.max(draft.crew, 2);
            draft.cautions.add("It weighs " + model.weight().text() + ": two people, or a lift for it.");
        }
    }

    /** Off the mains, where there is no plug to pull: by nobody but an electrician. */
    static void disconnect(Draft draft) {
        draft.skills.add("mains");
        draft.cautions.add(
                "Wired into the mains: isolated, proved dead and disconnected by a licensed electrician first.");
    }

    /** It ends at terminals of the mains: no plug to pull. */
    static boolean isWiredIn(Plug plug) {
        return plug.port() != null
                && plug.port().signal() == Signal.MAINS
                && plug.port().connector() == Connector.TERMINALS;
    }

    /** Its mains come in at terminals: no plug to pull. */
    static boolean isWiredIn(@Nullable Model model) {
        if (model != null) {
            for (Port port : model.ports().values()) {
                if (port.in() == Signal.MAINS && port.connector() == Connector.TERMINALS) {
                    return true;
                }
            }
        }
        return false;
    }
}
