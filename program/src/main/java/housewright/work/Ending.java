package housewright.work;

import housewright.model.Control;
import housewright.model.Equipment;
import housewright.model.Event;
import housewright.model.Kind;
import housewright.model.NetworkSend;
import housewright.model.Place;
import housewright.model.RoomCondition;
import housewright.model.TaskKind;
import housewright.model.Words;
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.PairProof;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What comes last: loudspeakers aligned, feeds proven, people trained, the rehearsal; and which task stops what works today. */
final class Ending {
    /** Done to what a feed passes, and of no matter to whether it arrives. */
    private static final Set<TaskKind> BESIDE = EnumSet.of(
            TaskKind.FOCUS,
            TaskKind.LOOK,
            TaskKind.ALIGN,
            TaskKind.PROVE,
            TaskKind.TRAIN,
            TaskKind.REHEARSE,
            TaskKind.SECURE);

    private static final Set<Kind> SOUNDS = EnumSet.of(Kind.LOUDSPEAKER);
    private static final Set<Kind> DESKS = EnumSet.of(Kind.MIXER, Kind.VISION_MIXER);

    private final Job job;
    private final Supply supply;
    private final Map<String, Set<Draft>> ofFeed = new LinkedHashMap<>();
    private final Map<String, Set<String>> feedsOver =
            new HashMap<>(); // those that ought to work, by what they run over

    Ending(Job job, Supply supply) {
        this.job = job;
        this.supply = supply;
    }

    void derive() {
        for (FeedProof proof : job.proofsTarget) {
            if (!proof.feed().never()) {
                ofFeed.put(proof.feed().id(), path(proof));
                entities(proof)
                        .forEach(entity -> feedsOver
                                .computeIfAbsent(entity, each -> new LinkedHashSet<>())
                                .add(proof.feed().id()));
            }
        }
        for (FeedProof proof : job.proofsTarget) {
            if (proof.feed().never()) {
                ofFeed.put(proof.feed().id(), around(proof));
            }
        }
        align();
        job.proofsTarget.forEach(this::prove);
        for (Equipment thing : job.project.equipment().values()) {
            train(thing);
        }
        job.project.events().values().stream().filter(Event::deadline).forEach(this::rehearse);
        takeApart();
    }

    // ---- feeds ----

    /** Everything that is done to what the feed passes, and to what powers that. */
    private Set<Draft> path(FeedProof proof) {
        Set<Draft> path = new LinkedHashSet<>();
        for (String entity : entities(proof)) {
            changing(path, entity);
        }
        return path;
    }

    private void changing(Set<Draft> path, String entity) {
        job.changing(entity).stream()
                .filter(each -> !BESIDE.contains(each.kind))
                .forEach(path::add);
        if (entity.startsWith("equipment.")) {
            path.addAll(supply.alive(entity.substring("equipment.".length())));
        }
    }

    /** What a feed's paths run over, ends included: section and id. */
    static Set<String> entities(FeedProof proof) {
        Set<String> entities = new LinkedHashSet<>();
        for (PairProof pair : proof.pairs()) {
            entities.add("equipment." + pair.from().thing());
            for (Hop hop : pair.hops()) {
                entities.add(hop.cause().entity());
                entities.add("equipment." + hop.from().thing());
                entities.add("equipment." + hop.to().thing());
                if (hop.cause() instanceof Cause.BySend send) {
                    for (String id : send.over()) {
                        entities.add("cables." + id);
                        entities.add("equipment." + id);
                    }
                }
            }
            entities.add("equipment." + pair.to().thing());
        }
        return entities;
    }

    /** A never-feed is tried when all is done that carries its source or reaches its destination. */
    private Set<Draft> around(FeedProof never) {
        Set<String> ends = new LinkedHashSet<>();
        never.pairs().forEach(pair -> {
            ends.add(pair.from().thing());
            ends.add(pair.to().thing());
        });
        Set<Draft> around = new LinkedHashSet<>();
        ends.forEach(each -> changing(around, "equipment." + each));
        for (FeedProof other : job.proofsTarget) {
            boolean meets = !other.feed().never()
                    && other.pairs().stream()
                            .anyMatch(pair -> ends.contains(pair.from().thing())
                                    || ends.contains(pair.to().thing()));
            if (meets) {
                around.addAll(ofFeed.getOrDefault(other.feed().id(), Set.of()));
            }
        }
        return around;
    }

    private void prove(FeedProof proof) {
        Set<Draft> first = ofFeed.getOrDefault(proof.feed().id(), Set.of());
        if (proof.pairs().isEmpty()) {
            job.notes.add("The feed " + proof.feed().id() + " is not finished in the project, so no task proves it.");
            return;
        }
        if (first.isEmpty()) {
            return;
        }
        String name = Words.said(proof.feed().id());
        Draft draft = job.draft(
                TaskKind.PROVE,
                proof.feed().id(),
                proof.feed().never()
                        ? "Prove that nothing of " + ends(proof) + " (" + name + ")"
                        : "Prove " + name + ": " + ends(proof),
                Say.counted(first.size(), "task changes", "tasks change") + " what "
                        + (proof.feed().never() ? "could let it through." : "it passes."));
        job.takes(draft, "prove-feed", 1);
        job.takes(draft, "prove-pair", proof.pairs().size());
        draft.proves.add(proof.feed().id());
        draft.after(first);
        Set<String> places = new LinkedHashSet<>();
        proof.pairs().forEach(pair -> {
            places.add(at(pair.from().thing()));
            places.add(at(pair.to().thing()));
        });
        places.stream().filter(each -> !each.isEmpty()).forEach(draft::at);
        if (proof.feed().test() != null) {
            draft.title += ". " + Say.capital(proof.feed().test());
        }
        if (!proof.proven()) {
            draft.assumed.add("that it will work: on paper it is not proven yet ("
                    + proof.state().word() + ")");
        }
    }

    private String at(String equipment) {
        Equipment thing = job.project.equipment().get(equipment);
        String place = thing == null ? null : job.placeOf(thing);
        return place == null ? "" : place;
    }

    private static String ends(FeedProof proof) {
        Set<String> from = new LinkedHashSet<>();
        Set<String> to = new LinkedHashSet<>();
        proof.pairs().forEach(pair -> {
            from.add(Words.said(pair.from().thing()));
            to.add(Words.said(pair.to().thing()));
        });
        return Say.some(from, 3) + (proof.feed().never() ? " reaches " : " to ") + Say.some(to, 3);
    }

    // ---- loudspeakers ----

    private void align() {
        Map<String, Set<String>> rooms = new LinkedHashMap<>();
        Map<String, Set<Draft>> before = new HashMap<>();
        for (FeedProof proof : job.proofsTarget) {
            for (PairProof pair : proof.feed().never() ? List.<PairProof>of() : proof.pairs()) {
                Equipment speaker = job.project.equipment().get(pair.to().thing());
                if (speaker == null || !SOUNDS.contains(Objects.requireNonNullElse(job.kind(speaker), Kind.OTHER))) {
                    continue;
                }
                Place place = job.place(job.placeOf(speaker));
                String room = place == null ? null : place.room();
                Set<Draft> path = new LinkedHashSet<>();
                for (String entity : entities(new FeedProof(proof.feed(), proof.state(), List.of(pair)))) {
                    changing(path, entity);
                }
                if (room != null && path.stream().anyMatch(each -> settles(each, speaker.id()))) {
                    rooms.computeIfAbsent(room, each -> new LinkedHashSet<>()).add(speaker.id());
                    before.computeIfAbsent(room, each -> new LinkedHashSet<>()).addAll(path);
                }
            }
        }
        rooms.forEach((room, speakers) -> {
            Draft draft = job.draft(
                    TaskKind.ALIGN,
                    room,
                    "Measure and set the loudspeakers of " + Words.said(room) + ": "
                            + Say.some(speakers.stream().map(Words::said).toList(), 4),
                    "They hang elsewhere than today, or what drives them is new: level, delay and tone are set by measuring.");
            job.takes(draft, "align-loudspeaker", speakers.size());
            draft.conditions.add(RoomCondition.QUIET);
            draft.after(before.getOrDefault(room, Set.of()));
            speakers.forEach(each -> draft.at(at(each).isEmpty() ? null : at(each)));
            draft.cautions.add("Begin low; ear protection for whoever stays in the room while it is loud.");
        });
    }

    /** It makes what was measured before no longer true. */
    private boolean settles(Draft draft, String speaker) {
        return switch (draft.kind) {
            case LOAD, CONFIGURE -> draft.about.stream().anyMatch(each -> isProcessing(each));
            case MOUNT, MOVE -> draft.about.contains("equipment." + speaker);
            default -> false;
        };
    }

    private boolean isProcessing(String entity) {
        Equipment thing = entity.startsWith("equipment.")
                ? job.project.equipment().get(entity.substring("equipment.".length()))
                : null;
        Kind kind = thing == null ? null : job.kind(thing);
        return kind == Kind.MIXER || kind == Kind.PROCESSOR || kind == Kind.AMPLIFIER;
    }

    // ---- people ----

    private void train(Equipment thing) {
        Kind kind = job.kind(thing);
        if (kind == null || !(Job.isNew(thing) || Job.isSwapped(thing)) || job.isRacked(thing)) {
            return;
        }
        boolean desk = DESKS.contains(kind) || streams(thing.id());
        boolean button = false;
        for (Control control : job.project.controls().values()) {
            button |= control.press() != null && control.press().thing().equals(thing.id());
        }
        if (!desk && !button) {
            return;
        }
        Draft draft = job.draft(
                TaskKind.TRAIN,
                thing.id(),
                (desk ? "Train whoever will run " : "Show whoever opens the hall what is on ") + Words.said(thing.id()),
                Say.capital(Words.said(thing.id())) + " is new to them.");
        job.takes(draft, desk ? "train-desk" : "train-panel", 1);
        job.at(draft, thing.at());
        for (Draft each : job.changing("equipment." + thing.id())) {
            if (!BESIDE.contains(each.kind)) {
                draft.after(each);
            }
        }
        for (String feed : feedsOver.getOrDefault("equipment." + thing.id(), Set.of())) {
            draft.after(job.find(TaskKind.PROVE, feed));
        }
    }

    private boolean streams(String equipment) {
        for (NetworkSend send : job.project.networkSends().values()) {
            if ("stream".equals(send.as()) && send.from().thing().equals(equipment)) {
                return true;
            }
        }
        return false;
    }

    private void rehearse(Event deadline) {
        if (job.drafts.values().stream().noneMatch(each -> each.kind == TaskKind.PROVE)) {
            return;
        }
        Draft draft = job.draft(
                TaskKind.REHEARSE,
                deadline.id(),
                "Rehearse " + Words.said(deadline.id()) + " with those who will run it",
                "What is new is tried with people before the day that cannot move.");
        job.takes(draft, "rehearse", 1);
        Event held = job.project.events().values().stream()
                .filter(each -> !each.equals(deadline) && each.at() == null && each.needs() != null)
                .filter(each -> each.to() != null
                        && deadline.from() != null
                        && !each.to().isAfter(deadline.from()))
                .filter(each -> Objects.requireNonNull(each.needs()).all()
                        || Objects.requireNonNull(each.needs()).feeds().containsAll(needed(deadline)))
                .filter(each -> !needed(deadline).isEmpty()
                        || Objects.requireNonNull(each.needs()).all())
                .max(Comparator.comparing(each -> Objects.requireNonNull(each.to())))
                .orElse(null);
        if (held != null && held.from() != null && held.to() != null) {
            draft.event = held.id();
            int minutes =
                    (int) java.time.Duration.between(held.from(), held.to()).toMinutes();
            draft.stated = minutes > 0 ? new Minutes(minutes, minutes, minutes) : null;
        } else {
            draft.assumed.add("a time for it: no event before " + deadline.id() + " needs the same feeds");
        }
        List<String> needed = needed(deadline);
        boolean all = deadline.needs() != null && deadline.needs().all();
        for (Draft each : List.copyOf(job.drafts.values())) {
            boolean proof =
                    each.kind == TaskKind.PROVE && (all || each.proves.stream().anyMatch(needed::contains));
            if (proof || each.kind == TaskKind.TRAIN || each.kind == TaskKind.LOOK || each.kind == TaskKind.ALIGN) {
                draft.after(each);
            }
        }
    }

    private static List<String> needed(Event event) {
        return event.needs() == null ? List.of() : event.needs().feeds();
    }

    // ---- what stops working ----

    private void takeApart() {
        Map<String, Set<String>> power = Supply.today(job);
        Map<String, List<Draft>> about = new HashMap<>();
        for (Draft draft : job.drafts.values()) {
            draft.about.forEach(each ->
                    about.computeIfAbsent(each, key -> new ArrayList<>()).add(draft));
        }
        for (FeedProof proof : job.proofsToday) {
            if (proof.feed().never() || !proof.proven()) {
                continue;
            }
            Set<String> entities = new LinkedHashSet<>(entities(proof));
            for (String entity : List.copyOf(entities)) {
                powers(entity, power, entities);
            }
            entities.stream()
                    .flatMap(entity -> about.getOrDefault(entity, List.of()).stream())
                    .distinct()
                    .filter(draft -> disturbs(draft, entities))
                    .forEach(draft -> draft.takesApart.add(proof.feed().id()));
        }
    }

    private static void powers(String entity, Map<String, Set<String>> power, Set<String> into) {
        for (String by : power.getOrDefault(entity.substring(entity.indexOf('.') + 1), Set.of())) {
            if (entity.startsWith("equipment.") && into.add("equipment." + by)) {
                powers("equipment." + by, power, into);
            }
        }
    }

    private boolean disturbs(Draft draft, Set<String> entities) {
        return switch (draft.kind) {
            case STRIKE, TAKE_OUT, MOVE, REPLUG, POWER, ADDRESS -> main(draft, entities);
            case PULL, TERMINATE -> main(draft, entities); // of a cable that works today
            case MOUNT -> entities.stream().anyMatch(draft.about::contains); // exchanged, or its host opened
            case LOAD, CONFIGURE -> draft.about.stream().anyMatch(entities::contains);
            case CONNECT -> main(draft, entities) && replaces(draft, entities);
            default -> false;
        };
    }

    private static boolean main(Draft draft, Set<String> entities) {
        return entities.contains(mainOf(draft));
    }

    private static @Nullable String mainOf(Draft draft) {
        return draft.about.isEmpty() ? null : draft.about.iterator().next();
    }

    /** One of its new cables goes where a cable of today's path is, or it is powered otherwise afterwards. */
    private boolean replaces(Draft draft, Set<String> entities) {
        for (String about : draft.about) {
            if (!about.startsWith("cables.")) {
                continue;
            }
            var lead = job.lead(about.substring("cables.".length()));
            if (lead == null) {
                continue;
            }
            for (var joint : lead.joints()) {
                for (var plug : joint.plugs()) {
                    boolean mains = plug.port() != null
                            && plug.port().in() == housewright.model.Signal.MAINS
                            && entities.contains("equipment." + plug.at().thing());
                    boolean taken = job.today.in(plug.socket()).stream()
                            .anyMatch(each -> entities.contains("cables." + each.id()));
                    if (mains || taken) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
