package housewright.work;

import housewright.model.Equipment;
import housewright.model.FixtureSetting;
import housewright.model.Kind;
import housewright.model.Lighting;
import housewright.model.Look;
import housewright.model.Model;
import housewright.model.NetworkSend;
import housewright.model.Place;
import housewright.model.Port;
import housewright.model.RoomCondition;
import housewright.model.Signal;
import housewright.model.TaskKind;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Fixtures aimed, and looks set and saved. */
final class LightWork {
    private static final Set<Kind> PASSES_ON = EnumSet.of(
            Kind.DMX_SPLITTER, Kind.DMX_NODE, Kind.DMX_MERGER, Kind.FIXTURE, Kind.DIMMER, Kind.DMX_INTERFACE);
    private static final Set<TaskKind> CHANGES = EnumSet.of(
            TaskKind.MOUNT, TaskKind.MOVE, TaskKind.ADDRESS, TaskKind.FOCUS, TaskKind.CONNECT, TaskKind.REPLUG);

    private final Job job;
    private final Supply supply;

    LightWork(Job job, Supply supply) {
        this.job = job;
        this.supply = supply;
    }

    void derive() {
        for (Equipment thing : job.project.equipment().values()) {
            if (thing.life().target() && job.kind(thing) == Kind.FIXTURE) {
                focus(thing);
            }
        }
        Lighting lighting = job.project.lighting();
        if (lighting != null) {
            lighting.looks().values().forEach(this::look);
        }
    }

    private void focus(Equipment thing) {
        FixtureSetting light = thing.light();
        if (light == null || (light.aim() == null && light.focus() == null)) {
            return;
        }
        FixtureSetting was = thing.today().light();
        boolean comes = Job.isNew(thing) || Job.isMoved(thing) || Job.isSwapped(thing);
        boolean other = was == null
                || !Objects.equals(was.aim(), light.aim())
                || !Objects.equals(was.focus(), light.focus())
                || !Objects.equals(was.colour(), light.colour());
        if (!comes && !other) {
            return;
        }
        Draft draft = job.draft(
                TaskKind.FOCUS,
                thing.id(),
                "Focus " + Words.said(thing.id())
                        + (light.focus() != null ? " on " + light.focus() : "")
                        + (light.aim() != null
                                ? " at " + light.aim().x().text() + ", "
                                        + light.aim().y().text()
                                : ""),
                comes ? "It hangs where it did not hang before." : "It is aimed elsewhere today.");
        job.takes(draft, "focus-fixture", 1);
        job.at(draft, thing.at());
        draft.conditions.add(RoomCondition.DARK);
        draft.after(supply.alive(thing.id()));
        draft.after(job.find(TaskKind.ADDRESS, thing.id()));
        draft.after(job.find(TaskKind.SECURE, thing.id()));
        draft.cautions.add("Its housing may be hot; whoever stands in for the speaker does not look into it.");
    }

    /** What the looks are saved in: what sends light data and does not merely pass it on. */
    private Set<String> controllers() {
        Set<String> controllers = new LinkedHashSet<>();
        for (Equipment thing : job.project.equipment().values()) {
            Model model = job.model(thing);
            if (!thing.life().target() || model == null || PASSES_ON.contains(model.kind())) {
                continue;
            }
            for (Port port : model.ports().values()) {
                if (port.out() == Signal.DMX) {
                    controllers.add(thing.id());
                }
            }
        }
        for (NetworkSend send : job.project.networkSends().values()) {
            if ("lighting-data".equals(send.as()) && send.life().target()) {
                Equipment from = job.project.equipment().get(send.from().thing());
                if (from != null && !PASSES_ON.contains(Objects.requireNonNullElse(job.kind(from), Kind.OTHER))) {
                    controllers.add(from.id());
                }
            }
        }
        return controllers;
    }

    private void look(Look look) {
        List<Draft> first = new ArrayList<>();
        Set<String> fixtures = new LinkedHashSet<>(look.levels().keySet());
        fixtures.addAll(look.colours().keySet());
        for (String fixture : fixtures) {
            job.changing("equipment." + fixture).stream()
                    .filter(each -> CHANGES.contains(each.kind))
                    .forEach(first::add);
        }
        for (String controller : controllers()) {
            job.changing("equipment." + controller).stream()
                    .filter(each -> each.kind == TaskKind.LOAD
                            || each.kind == TaskKind.CONFIGURE
                            || each.kind == TaskKind.CONNECT
                            || each.kind == TaskKind.MOUNT)
                    .forEach(first::add);
        }
        if (first.isEmpty()) {
            return;
        }
        Draft draft = job.draft(
                TaskKind.LOOK,
                look.id(),
                "See the look " + Words.said(look.id()) + " in the dark, set it right and save it",
                "Its fixtures, or what it is saved in, are not as they are today.");
        job.takes(draft, "look", 1);
        job.takes(draft, "look-fixture", fixtures.size());
        draft.conditions.add(RoomCondition.DARK);
        draft.after(first);
        for (String fixture : fixtures) {
            Equipment thing = job.project.equipment().get(fixture);
            Place place = thing == null ? null : job.place(job.placeOf(thing));
            if (place != null && place.room() != null) {
                draft.rooms.add(place.room());
            }
        }
    }
}
