package housewright.work;

import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Latency;
import housewright.model.Life;
import housewright.model.MadeFile;
import housewright.model.Model;
import housewright.model.Order;
import housewright.model.TaskKind;
import housewright.model.Where;
import housewright.model.Words;
import housewright.unit.TimeSpan;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is done before the visit, and what comes first on it: files, addresses on paper, labels, deliveries, copies of the old. */
final class Beforehand {
    private static final Set<Kind> HOLDS_SETTINGS = EnumSet.of(
            Kind.MIXER,
            Kind.PROCESSOR,
            Kind.RECORDER,
            Kind.COMPUTER,
            Kind.CONTROL_PANEL,
            Kind.DMX_NODE,
            Kind.MATRIX,
            Kind.VISION_MIXER,
            Kind.ENCODER);
    private static final Set<Kind> NETWORKED = EnumSet.of(Kind.SWITCH, Kind.INTERNET_ROUTER);
    private static final Set<Kind> HOLDS_FILES = EnumSet.of(Kind.COMPUTER, Kind.RECORDER);

    private final Job job;

    Beforehand(Job job) {
        this.job = job;
    }

    void derive() {
        networkPlan();
        files();
        labels();
        for (Order order : job.project.orders().values()) {
            receive(order);
        }
        for (Equipment thing : job.project.equipment().values()) {
            copy(thing);
            if (thing.life() == Life.HIRE) {
                hired(thing);
            }
        }
    }

    private void networkPlan() {
        List<String> changed = new ArrayList<>();
        for (Equipment thing : job.project.equipment().values()) {
            Equipment was = thing.today();
            boolean said = thing.ip() != null || !thing.vlans().isEmpty();
            if (thing.life().target()
                    && ((Job.isNew(thing) && said)
                            || !Objects.equals(was.ip(), thing.ip())
                            || !was.vlans().equals(thing.vlans()))) {
                changed.add(thing.id());
            }
        }
        if (changed.isEmpty()) {
            return;
        }
        Draft plan = job.draft(
                TaskKind.PLAN_NETWORK,
                "",
                "Write the plan of network addresses and VLANs",
                Say.counted(changed.size(), "device has", "devices have")
                        + " an address or networks that it has not today: "
                        + Say.some(changed.stream().map(Words::said).toList(), 5) + ".");
        changed.forEach(each -> plan.about("equipment", each));
        job.takes(plan, "network-plan", changed.size());
        beforehand(plan);
    }

    private static void beforehand(Draft draft) {
        draft.remote = true;
        draft.beforehand = true;
    }

    private void files() {
        for (MadeFile file : job.project.files().values()) {
            String device = file.device();
            Draft draft = job.draft(
                    TaskKind.PREPARE,
                    file.id(),
                    "Make " + Words.said(file.id()) + (device == null ? "" : " for " + Words.said(device)),
                    "The project lists it as made beforehand and loaded on the day.");
            TimeSpan takes = file.takes();
            if (takes == null) {
                draft.assumed.add("how long it takes, from the labour unit make-file");
                job.takes(draft, "make-file", 1);
            } else {
                draft.stated = OwnTasks.around(job, takes.seconds());
            }
            if (file.madeBy() != null) {
                draft.who.add(file.madeBy());
            }
            Equipment thing = device == null ? null : job.project.equipment().get(device);
            if (file.where() == Where.ROOM) {
                job.at(draft, thing == null ? null : job.placeOf(thing));
            } else {
                beforehand(draft);
            }
            if (thing != null && (thing.ip() != null || !thing.vlans().isEmpty())) {
                draft.after(job.drafts.get(TaskKind.PLAN_NETWORK.word()));
            }
        }
    }

    private void labels() {
        List<Cable> labelled = new ArrayList<>();
        for (Cable cable : job.project.cables().values()) {
            boolean changed = cable.life().today() && cable.life().target() && Job.isReplugged(cable);
            if ((cable.life() == Life.NEW || changed) && CableType.isBought(cable.type())) {
                labelled.add(cable);
            }
        }
        if (labelled.isEmpty()) {
            return;
        }
        Draft print = job.draft(
                TaskKind.PRINT_LABELS,
                "",
                "Print the labels of " + Say.counted(labelled.size(), "cable", "cables") + ", one for each end",
                "Cables that are new or plugged elsewhere are labelled at both ends.");
        labelled.forEach(each -> print.about("cables", each.id()));
        job.takes(print, "print-label", 2.0 * labelled.size());
        beforehand(print);
    }

    private void receive(Order order) {
        int pieces = job.pieces(order);
        if (pieces == 0 || order.arrived() != null) {
            return;
        }
        Draft draft = job.draft(
                TaskKind.RECEIVE,
                order.id(),
                "Unpack and check the delivery " + Words.said(order.id()) + ": "
                        + Say.counted(pieces, "piece", "pieces")
                        + (order.supplier() == null ? "" : " from " + order.supplier()),
                "What is missing or broken is best known on the day it comes.");
        draft.deliveries.add(order.id());
        int leads = job.leads(order);
        job.takes(draft, "receive-piece", pieces - leads);
        job.takes(draft, "receive-lead", leads);
    }

    private void hired(Equipment thing) {
        String name = Words.said(thing.id());
        Draft fetch = job.draft(
                TaskKind.FETCH,
                thing.id(),
                "Fetch " + name + " from where it is hired, and see that it is whole and works",
                "It is hired for the job.");
        job.takes(fetch, "fetch-hire", 1);
        Goes.heavy(job, fetch, job.model(thing));
        Draft back = job.draft(
                TaskKind.RETURN,
                thing.id(),
                "Clean " + name + " and take it back",
                "It is hired for the job, and every further day costs.");
        job.takes(back, "fetch-hire", 1);
        Goes.heavy(job, back, job.model(thing));
        back.after(fetch);
    }

    /** What a device holds is lost when it goes, or when it is set otherwise. */
    private void copy(Equipment thing) {
        Model model = job.types.findModel(thing.today().model()).orElse(null);
        boolean holds = model != null
                && (HOLDS_SETTINGS.contains(model.kind())
                        || (NETWORKED.contains(model.kind())
                                && (thing.today().ip() != null
                                        || !thing.today().vlans().isEmpty())));
        String why = reason(thing);
        if (model == null || !holds || why == null) {
            return;
        }
        String name = Words.said(thing.id());
        boolean files = HOLDS_FILES.contains(model.kind());
        boolean digital = NETWORKED.contains(model.kind()) || model.kind() == Kind.PROCESSOR || isDelayed(model);
        Draft draft = job.draft(
                TaskKind.COPY,
                thing.id(),
                files
                        ? "Copy what is on " + name + ", and try the copy"
                        : digital
                                ? "Save the settings of " + name + " to two places"
                                : "Photograph and note how " + name + " is set and plugged",
                Say.capital(name) + " " + why + "; until the first service has passed there must be a way back.");
        job.takes(draft, files ? "copy-computer" : digital ? "save-file" : "note-settings", 1);
        job.at(draft, thing.today().at());
    }

    /** What takes time to pass a signal has a processor in it, and a memory. */
    private static boolean isDelayed(Model model) {
        Latency latency = model.latency();
        return latency != null && !latency.equals(Latency.ofText("0 ms"));
    }

    private @Nullable String reason(Equipment thing) {
        if (Job.isStruck(thing)) {
            return "goes";
        }
        if (!Job.stays(thing)) {
            return null;
        }
        if (Job.isSwapped(thing)) {
            return "is exchanged for another type";
        }
        if (Settings.changed(job, thing) > 0) {
            return "is set otherwise";
        }
        boolean opened = job.project.equipment().values().stream()
                .anyMatch(each -> Job.isNew(each) && thing.id().equals(each.partOf()));
        return opened ? "is opened for a card" : Job.isMoved(thing) ? "is moved" : null;
    }
}
