package housewright.work;

import housewright.model.Equipment;
import housewright.model.Fitted;
import housewright.model.FixtureSetting;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.RoomCondition;
import housewright.model.TaskKind;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Things that come, move or are fitted with something. */
final class Things {
    private final Job job;

    /** By place, what stands there today. */
    private final Map<String, List<Equipment>> stands;

    Things(Job job) {
        this.job = job;
        this.stands = job.project.equipment().values().stream()
                .filter(each -> each.today().at() != null)
                .collect(Collectors.groupingBy(
                        each -> String.valueOf(each.today().at())));
    }

    void derive() {
        for (Equipment thing : job.project.equipment().values()) {
            if (thing.life().target()) {
                address(thing);
                if (Job.isNew(thing) || Job.isSwapped(thing)) {
                    mount(thing);
                } else if (Job.isMoved(thing)) {
                    move(thing);
                } else if (isSecured(thing)) {
                    secure(thing);
                }
                boolean comes = Job.isNew(thing) || Job.isSwapped(thing) || Job.isMoved(thing);
                if (comes && Goes.isWiredIn(job.model(thing))) {
                    wire(thing);
                }
            }
        }
        for (Equipment thing : job.project.equipment().values()) {
            inHost(thing);
        }
    }

    private boolean isHung(Equipment thing, @Nullable Double height) {
        return job.hangs(thing.at()) && height != null && height > job.reach();
    }

    private void mount(Equipment thing) {
        String name = Words.said(thing.id());
        Model model = job.model(thing);
        Place place = job.place(thing.at());
        Double height = job.height(place);
        boolean hung = isHung(thing, height);
        boolean swapped = Job.isSwapped(thing) && !Job.isNew(thing);
        String host = thing.partOf() != null ? thing.partOf() : thing.runsOn();
        String how = swapped
                ? "Exchange " + name + " (" + thing.today().model() + ") for a " + thing.model()
                        + Say.where(name, place, thing.unit())
                : host != null
                        ? (thing.partOf() != null ? "Fit " + name + " into " : "Install " + name + " on ")
                                + Words.said(host)
                        : hung && height != null
                                ? "Hang " + name + Say.where(name, place, null) + ", " + Say.metres(height) + " up"
                                        + (thing.secondary() == Fitted.FITTED ? ", with its safety attachment" : "")
                                : place == null
                                        ? "Set up " + name
                                        : (place.rack() != null ? "Mount " : isFixed(thing, model) ? "Fix " : "Set up ")
                                                + name
                                                + Say.where(name, place, thing.unit());
        Draft draft = job.draft(
                TaskKind.MOUNT,
                thing.id(),
                how,
                Say.capital(name) + (swapped ? " is another type afterwards." : " is new."));
        if (host == null || thing.at() != null) {
            job.at(draft, thing.at());
        }
        unit(draft, thing, model, place, hung, host);
        job.uses(draft, thing.id(), thing.model());
        overhead(draft, thing, hung);
        Goes.heavy(job, draft, model);
        if (swapped && isWiredInToday(thing)) {
            Goes.disconnect(draft);
        }
        if (model == null) {
            draft.assumed.add("a thing of usual size: its type is not known");
        }
        draft.after(job.find(TaskKind.ADDRESS, thing.id()));
        draft.after(job.find(TaskKind.COPY, thing.id()));
        draft.after(inTheWay(thing, model, place, hung));
    }

    private void unit(
            Draft draft,
            Equipment thing,
            @Nullable Model model,
            @Nullable Place place,
            boolean hung,
            @Nullable String host) {
        if (host != null) {
            job.takes(draft, thing.partOf() != null ? "mount-card" : "configure-device", 1);
        } else if (place != null && place.rack() != null) {
            job.takes(draft, "mount-rack", 1);
            job.takes(
                    draft,
                    "mount-rack-unit",
                    model == null || model.rack() == null ? 1 : model.rack().units());
        } else if (hung) {
            job.takes(draft, model != null && model.kind() == Kind.FIXTURE ? "hang-fixture" : "mount-overhead", 1);
        } else if (model != null && model.kind() == Kind.PANEL) {
            job.takes(draft, "mount-panel", 1);
        } else {
            job.takes(draft, isFixed(thing, model) ? "mount-wall" : "mount-free", 1);
        }
    }

    /** To a wall or a floor, by screws. */
    private boolean isFixed(Equipment thing, @Nullable Model model) {
        return job.hangs(thing.at())
                || Goes.isWiredIn(model)
                || isOnTheWall(model)
                || (model != null && model.kind() == Kind.PANEL);
    }

    private static boolean isOnTheWall(@Nullable Model model) {
        return model != null && model.kind() == Kind.CONTROL_PANEL && model.power() == null;
    }

    private void overhead(Draft draft, Equipment thing, boolean hung) {
        if (!hung) {
            return;
        }
        draft.overhead = true;
        draft.conditions.add(RoomCondition.EMPTY);
        Place place = job.place(thing.at());
        if (place != null && place.hang() != null && place.hang().limit() == null) {
            draft.cautions.add("Nobody has stated what hangs there safely: not before somebody entitled to has.");
        }
        if (thing.secondary() == null) {
            draft.cautions.add("Nothing is said of a safety attachment: everything overhead has one.");
        }
    }

    /** What goes and makes room for it: the same rack units, the same hanging place, another of its kind on the same table. */
    private List<Draft> inTheWay(Equipment thing, @Nullable Model model, @Nullable Place place, boolean hung) {
        List<Draft> first = new ArrayList<>();
        if (place == null) {
            return first;
        }
        for (Equipment old : stands.getOrDefault(place.id(), List.of())) {
            Draft strike = job.find(TaskKind.STRIKE, old.id());
            if (strike == null) {
                continue;
            }
            boolean inTheWay = place.rack() != null
                    ? overlap(thing, old)
                    : hung || (model != null && model.kind() == job.kind(old));
            if (inTheWay) {
                first.add(strike);
            }
        }
        return first;
    }

    private boolean overlap(Equipment thing, Equipment old) {
        Integer here = thing.unit();
        Integer there = old.today().unit();
        return here != null
                && there != null
                && here < there + units(job.types.findModel(old.today().model()).orElse(null))
                && there < here + units(job.model(thing));
    }

    private static double units(@Nullable Model model) {
        return model == null || model.rack() == null ? 1 : model.rack().units();
    }

    private void move(Equipment thing) {
        String name = Words.said(thing.id());
        Equipment was = thing.today();
        Place to = job.place(thing.at());
        Place from = job.place(was.at());
        Double height = job.height(to);
        boolean hung = isHung(thing, height);
        boolean sameRack = Objects.equals(was.at(), thing.at());
        Draft draft = job.draft(
                TaskKind.MOVE,
                thing.id(),
                sameRack
                        ? "Move " + name + " within " + Words.said(String.valueOf(thing.at())) + " to unit "
                                + thing.unit()
                        : (hung ? "Hang " : "Move ")
                                + name
                                + (from == null ? "" : " from " + Words.said(from.id()))
                                + (to == null ? "" : (to.rack() == null ? " to " : " into ") + Words.said(to.id()))
                                + (thing.unit() == null ? "" : ", unit " + thing.unit())
                                + (hung && height != null ? ", " + Say.metres(height) + " up" : "")
                                + (hung && thing.secondary() == Fitted.FITTED ? ", with its safety attachment" : ""),
                Say.capital(name) + " is kept, and " + (hung ? "hangs" : "stands") + " elsewhere today.");
        Model model = job.model(thing);
        if (was.at() != null) {
            job.at(draft, was.at());
        } else {
            draft.assumed.add("that it is at hand: where it is today is not said");
        }
        boolean wasUp = draft.heightM != null && draft.heightM > job.reach() && job.hangs(was.at());
        if (wasUp || job.hangs(was.at()) || (from != null && from.rack() != null) || Goes.isWiredIn(model)) {
            job.takes(draft, wasUp ? "strike-overhead" : "strike-piece", 1);
        }
        job.at(draft, thing.at());
        unit(draft, thing, model, to, hung, null);
        overhead(draft, thing, hung);
        Goes.heavy(job, draft, model);
        if (isWiredInToday(thing)) {
            Goes.disconnect(draft);
        }
        draft.after(job.find(TaskKind.COPY, thing.id()));
        draft.after(job.find(TaskKind.ADDRESS, thing.id()));
        draft.after(inTheWay(thing, model, to, hung));
    }

    private boolean isWiredInToday(Equipment thing) {
        return Goes.isWiredIn(job.types.findModel(thing.today().model()).orElse(null));
    }

    private static boolean isSecured(Equipment thing) {
        return thing.secondary() == Fitted.FITTED && thing.today().secondary() == Fitted.MISSING;
    }

    private void secure(Equipment thing) {
        Draft draft = job.draft(
                TaskKind.SECURE,
                thing.id(),
                "Fit the missing safety attachment to " + Words.said(thing.id())
                        + Say.where(Words.said(thing.id()), job.place(thing.at()), null),
                "It hangs without one today.");
        job.at(draft, thing.at());
        draft.overhead = true;
        draft.conditions.add(RoomCondition.EMPTY);
        job.takes(draft, "fit-secondary", 1);
        draft.cautions.add("Until it is fitted, nobody stands or sits below.");
    }

    private void wire(Equipment thing) {
        Draft draft = job.draft(
                TaskKind.WIRE,
                thing.id(),
                "Wire " + Words.said(thing.id()) + " into the mains"
                        + (thing.circuit() == null ? "" : ", circuit " + thing.circuit()) + ", test it and certify it",
                (Job.isNew(thing)
                                ? "It is new"
                                : Job.isSwapped(thing) ? "It is another type afterwards" : "It is elsewhere today")
                        + ", and its mains come in at terminals.");
        job.at(draft, thing.at());
        job.takes(draft, "wire-outlet", 1);
        draft.skills.add("mains");
        draft.cautions.add("By a licensed electrician alone, by local law.");
        draft.after(job.placed(thing.id()));
        if (thing.circuit() == null) {
            draft.assumed.add("a circuit with room for it: none is said");
        }
    }

    /** On the ground where it still has to go up; else where it hangs. */
    private void address(Equipment thing) {
        FixtureSetting light = thing.light();
        FixtureSetting was = thing.today().light();
        if (light == null || light.address() == null) {
            return;
        }
        boolean comes = Job.isNew(thing) || Job.isSwapped(thing);
        boolean other = was == null
                || !Objects.equals(light.address(), was.address())
                || !Objects.equals(light.universe(), was.universe())
                || !Objects.equals(light.mode(), was.mode());
        if (!comes && !other) {
            return;
        }
        boolean onTheGround = comes || Job.isMoved(thing);
        Draft draft = job.draft(
                TaskKind.ADDRESS,
                thing.id(),
                "Set the address of " + Words.said(thing.id()) + ": "
                        + (light.universe() == null ? "" : "universe " + light.universe() + ", ")
                        + "address " + light.address()
                        + (light.mode() == null ? "" : ", mode " + light.mode())
                        + (onTheGround ? ", on the ground before it goes up" : ""),
                comes
                        ? "A new fixture comes at address 1, or at nobody knows which."
                        : "It answers at " + (was == null || was.address() == null ? "another address" : was.address())
                                + " today.");
        job.takes(draft, "address-fixture", 1);
        if (comes) {
            job.uses(draft, thing.id(), thing.model());
        }
        if (!onTheGround) {
            address(draft, thing);
        }
    }

    /** From the floor where its type is known to allow that; nobody guesses that it does. */
    private void address(Draft draft, Equipment thing) {
        Model model = job.model(thing);
        Boolean rdm =
                (model == null || model.light() == null) ? null : model.light().rdm();
        if (Boolean.TRUE.equals(rdm)) {
            job.fromTheFloor(draft, thing);
            return;
        }
        job.at(draft, thing.at());
        if (rdm == null && draft.heightM != null && draft.heightM > job.reach()) {
            draft.assumed.add("that somebody goes up to its display: nobody has said that its address can be set from"
                    + " the floor (rdm)");
        }
    }

    /** A card or a program waits for its host. */
    private void inHost(Equipment thing) {
        Draft draft = job.find(TaskKind.MOUNT, thing.id());
        String host = thing.partOf() != null ? thing.partOf() : thing.runsOn();
        if (draft != null && host != null) {
            if (job.isPartOfItself(thing)) {
                return;
            }
            Equipment into = job.project.equipment().get(host);
            if (into != null) {
                job.about(draft, "equipment", host);
                draft.after(job.placed(host)).after(job.find(TaskKind.COPY, host));
                if (thing.at() == null && into.at() != null) {
                    draft.assumed.removeIf(each -> each.startsWith("work from the floor"));
                    job.at(draft, into.at());
                }
            }
        }
    }
}
