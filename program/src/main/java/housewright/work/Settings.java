package housewright.work;

import housewright.model.Control;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.LocalRef;
import housewright.model.MadeFile;
import housewright.model.NetworkSend;
import housewright.model.PatchEntry;
import housewright.model.RadioLink;
import housewright.model.TaskKind;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is set and not wired: files loaded, devices configured, radio links. */
final class Settings {
    /** So many are a turn of a knob each, with nothing to log into: common practice. */
    private static final int FEW = 2;

    private final Job job;
    private final Supply supply;

    Settings(Job job, Supply supply) {
        this.job = job;
        this.supply = supply;
    }

    void derive() {
        Set<String> loaded = new LinkedHashSet<>();
        for (MadeFile file : job.project.files().values()) {
            load(file, loaded);
        }
        for (Equipment thing : job.project.equipment().values()) {
            int settings = thing.life().target() ? changed(job, thing) : 0;
            if (settings > 0 && !loaded.contains(thing.id())) {
                configure(thing, settings);
            }
        }
        for (RadioLink link : job.project.radio().values()) {
            tune(link);
        }
    }

    private void load(MadeFile file, Set<String> loaded) {
        Equipment thing = file.device() == null ? null : job.project.equipment().get(file.device());
        if (thing == null || !thing.life().target()) {
            return;
        }
        String name = Words.said(thing.id());
        Draft draft = job.draft(
                TaskKind.LOAD,
                file.id(),
                "Load " + Words.said(file.id()) + " into " + name + ", and go through it",
                "The file was made beforehand for " + name + ".");
        job.takes(draft, "load-file", 1);
        draft.after(job.find(TaskKind.PREPARE, file.id()));
        if (loaded.add(thing.id())) { // a second file of the same device says nothing more of its settings
            set(draft, thing);
        } else {
            job.about(draft, "equipment", thing.id());
        }
        settled(draft, thing);
    }

    private void configure(Equipment thing, int settings) {
        String name = Words.said(thing.id());
        Draft draft = job.draft(
                TaskKind.CONFIGURE,
                thing.id(),
                "Set up " + name + ": " + Say.counted(settings, "setting", "settings"),
                Say.capital(name)
                        + (Job.isNew(thing)
                                ? " is new and comes with none of them."
                                : " is set otherwise afterwards."));
        if (settings > FEW || thing.ip() != null || !thing.vlans().isEmpty()) {
            job.takes(draft, "configure-device", 1);
        }
        job.takes(draft, "configure-setting", settings);
        set(draft, thing);
        settled(draft, thing);
    }

    /** What the task sets, by entity. */
    private void set(Draft draft, Equipment thing) {
        job.about(draft, "equipment", thing.id());
        if (job.project.patch().containsKey(thing.id())) {
            job.about(draft, "patch", thing.id());
        }
        for (NetworkSend send : sends(job, thing.id())) {
            job.about(draft, "network-sends", send.id());
        }
    }

    private void settled(Draft draft, Equipment thing) {
        skilled(draft, thing);
        job.fromTheFloor(draft, thing);
        draft.after(supply.alive(thing.id()));
        draft.after(job.find(TaskKind.COPY, thing.id()));
        if (thing.ip() != null || !thing.vlans().isEmpty()) {
            draft.after(job.drafts.get(TaskKind.PLAN_NETWORK.word()));
        }
    }

    /** Whoever knows such things, where somebody on the job does; else whoever is there. */
    private void skilled(Draft draft, Equipment thing) {
        Kind kind = job.kind(thing);
        String skill = kind == null ? null : skill(kind);
        if (skill != null
                && job.project.people().values().stream()
                        .anyMatch(person -> person.skills().contains(skill))) {
            draft.skills.add(skill);
        }
    }

    private static @Nullable String skill(Kind kind) {
        return switch (kind) {
            case RADIO_TRANSMITTER, RADIO_RECEIVER, STAGE_BOX, MIXER, PERSONAL_MIXER, PROCESSOR, AMPLIFIER, RECORDER ->
                "audio";
            case CONTROL_PANEL, BUTTON_PAD, DMX_INTERFACE, DMX_NODE, DMX_SPLITTER, DMX_MERGER, DIMMER -> "lighting";
            case CONVERTER, MATRIX, EMBEDDER, DE_EMBEDDER, VISION_MIXER, CAMERA, CAPTURE, PROJECTOR, ENCODER ->
                "picture";
            case SWITCH, INTERNET_ROUTER -> "network";
            default -> null;
        };
    }

    /** How many settings of it are other than today: of a new thing all that the project names. */
    static int changed(Job job, Equipment thing) {
        if (job.kind(thing) == Kind.FIXTURE) {
            return 0; // its address and aim have tasks of their own
        }
        Equipment was = thing.today();
        boolean isNew = Job.isNew(thing) || Job.isSwapped(thing);
        int count = 0;
        for (Map.Entry<LocalRef, ?> each : thing.set().entrySet()) {
            if (isNew || !Objects.equals(was.set().get(each.getKey()), each.getValue())) {
                count += each.getKey().spots().size();
            }
        }
        if (thing.ip() != null && (isNew || !thing.ip().equals(was.ip()))) {
            count++;
        }
        if (isNew || !was.vlans().equals(thing.vlans())) {
            count += thing.vlans().size();
        }
        for (PatchEntry entry : job.project.patch().getOrDefault(thing.id(), List.of())) {
            Life life = entry.life();
            boolean now = life == null || life.target();
            boolean before = !isNew && (life == null || life.today());
            count += now != before ? entry.join().pairs().size() : 0;
        }
        count += (int) sends(job, thing.id()).stream()
                .filter(each -> isNew || each.life() == Life.NEW || each.life() == Life.STRIKE)
                .count();
        if (isNew) {
            for (Control control : job.project.controls().values()) {
                boolean pressed =
                        control.press() != null && control.press().thing().equals(thing.id());
                boolean does = control.does() != null && control.does().thing().equals(thing.id());
                count += pressed || does ? 1 : 0;
            }
        }
        return count;
    }

    private static List<NetworkSend> sends(Job job, String equipment) {
        List<NetworkSend> sends = new ArrayList<>();
        for (NetworkSend send : job.project.networkSends().values()) {
            Equipment to = job.project.equipment().get(send.to().thing());
            Kind kind = to == null ? null : job.kind(to);
            boolean takes = kind != Kind.SWITCH && kind != Kind.INTERNET_ROUTER; // they pass on what they are given
            if (send.from().thing().equals(equipment)
                    || (takes && send.to().thing().equals(equipment))) {
                sends.add(send);
            }
        }
        return sends;
    }

    private void tune(RadioLink link) {
        Equipment from = job.project.equipment().get(link.from().thing());
        Equipment to = job.project.equipment().get(link.to().thing());
        boolean changes = link.life() == Life.NEW || isNew(from) || isNew(to);
        if (link.frequency() == null || !link.life().target() || !changes) {
            return;
        }
        Draft draft = job.draft(
                TaskKind.TUNE,
                link.id(),
                "Set the radio link " + Words.said(link.id()) + " to "
                        + link.frequency().text() + ", look what else is on the air, walk the room with it",
                "The link is new, or one of its ends is.");
        job.takes(draft, "radio-link", 1);
        draft.cautions.add("Only frequencies that the hall is licensed for, or may use without a licence.");
        for (Equipment end : new Equipment[] {from, to}) {
            if (end != null) {
                draft.after(supply.alive(end.id()));
                draft.after(job.find(TaskKind.CONFIGURE, end.id()));
                draft.at(job.placeOf(end));
            }
        }
    }

    private static boolean isNew(@Nullable Equipment thing) {
        return thing != null && Job.isNew(thing);
    }
}
