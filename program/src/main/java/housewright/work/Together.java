package housewright.work;

import housewright.model.AcceptedPlan;
import housewright.model.Cable;
import housewright.model.Equipment;
import housewright.model.Feed;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.RadioLink;
import housewright.model.Task;
import housewright.model.TaskKind;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Like tasks at one place are one round of work, and one task: nobody plans every plug. What leaves the old as it is and
 * what comes after something of it has gone are two rounds. A task that the project names stays by itself, and a round that
 * it names stays a round.
 */
final class Together {
    private static final Set<TaskKind> ROUNDS = EnumSet.of(
            TaskKind.TAKE_OUT,
            TaskKind.STRIKE,
            TaskKind.MOVE,
            TaskKind.MOUNT,
            TaskKind.SECURE,
            TaskKind.WIRE,
            TaskKind.PULL,
            TaskKind.TERMINATE,
            TaskKind.LEADS,
            TaskKind.TEST,
            TaskKind.REPLUG,
            TaskKind.CONNECT,
            TaskKind.POWER,
            TaskKind.ADDRESS,
            TaskKind.TERMINATOR,
            TaskKind.CONFIGURE,
            TaskKind.TUNE,
            TaskKind.FOCUS,
            TaskKind.LOOK,
            TaskKind.PROVE);

    /** Of a kind that takes no longer at one place than this, in minutes, the whole room is one round: common practice. */
    private static final int SHORT = 30;

    /** What is done on the way through a room. */
    private static final Set<TaskKind> SMALL = EnumSet.of(
            TaskKind.MOVE,
            TaskKind.MOUNT,
            TaskKind.TERMINATE,
            TaskKind.LEADS,
            TaskKind.REPLUG,
            TaskKind.CONNECT,
            TaskKind.POWER,
            TaskKind.ADDRESS,
            TaskKind.CONFIGURE);

    private static final String MAINS = "mains";

    /** How many of its parts a round is told by. */
    private static final int TOLD = 5;

    private final Job job;
    private final Set<String> named = new HashSet<>();

    Together(Job job) {
        this.job = job;
        for (Task task : job.project.tasks().values()) {
            named.add(task.id());
            named.addAll(task.after());
            named.addAll(task.covers());
            for (String need : task.needs()) { // so that it waits for no more than that
                ROUNDS.forEach(kind -> named.add(kind.id(need)));
            }
        }
        named.addAll(agreed(job.project));
    }

    /** What was planned, pinned or ticked off keeps its name: of the plan and the log, the tasks rest on this alone. */
    static Set<String> agreed(Project project) {
        Set<String> agreed = new HashSet<>(project.log().keySet());
        agreed.removeAll(project.orders().keySet());
        AcceptedPlan plan = project.plan();
        if (plan != null) {
            agreed.addAll(plan.times().keySet());
            agreed.addAll(plan.pins().keySet());
        }
        return agreed;
    }

    void merge() {
        Waits waits = new Waits(job.drafts.values());
        if (!waits.find()) {
            return; // they wait for each other, which is told elsewhere
        }
        Map<String, List<Draft>> rounds = new LinkedHashMap<>();
        Map<String, List<Draft>> walks = new LinkedHashMap<>();
        Set<String> later = later(waits);
        for (Draft draft : job.drafts.values().stream().sorted(waits.inOrder()).toList()) {
            String id = draft.id;
            String place = placeOf(draft);
            if (ROUNDS.contains(draft.kind) && place != null && !named.contains(id)) {
                rounds.computeIfAbsent(
                                draft.kind.idAt(place, which(draft, place, later.contains(id))),
                                each -> new ArrayList<>())
                        .add(draft);
            }
        }
        for (Map.Entry<String, List<Draft>> round : List.copyOf(rounds.entrySet())) {
            Draft one = round.getValue().getFirst();
            String place = Objects.requireNonNull(placeOf(one));
            String room = roomOf(place);
            if (room != null && !named.contains(round.getKey()) && isShort(round.getValue())) {
                walks.computeIfAbsent(
                                one.kind.idAt(room, which(one, place, later.contains(one.id))),
                                each -> new ArrayList<>())
                        .addAll(round.getValue());
                rounds.remove(round.getKey());
            }
        }
        Map<String, Draft> made = new LinkedHashMap<>();
        rounds.forEach((id, all) -> round(id, all, waits, made));
        walks.forEach((id, all) -> round(id, all, waits, made));
        replace(made);
    }

    private void round(String id, List<Draft> all, Waits waits, Map<String, Draft> made) {
        if (all.size() == 1 && !named.contains(id)) {
            return;
        }
        List<Draft> members = waits.find() ? free(all, waits) : List.of();
        if (members.size() > 1 || (named.contains(id) && !members.isEmpty())) {
            made.put(id, round(id, members));
            waits.join(members);
        }
    }

    /** Done from the floor, at no rack, and in no time. */
    private boolean isShort(List<Draft> round) {
        double likely = 0;
        for (Draft each : round) {
            Place place = job.place(placeOf(each));
            Double height = each.kind == TaskKind.LEADS ? null : each.heightM;
            if (!SMALL.contains(each.kind)
                    || !each.hires.isEmpty()
                    || place == null
                    || place.rack() != null
                    || (height != null && height > job.reach())) {
                return false;
            }
            likely += each.likelySeconds;
        }
        return likely <= 60 * SHORT;
    }

    // ---- which go together ----

    /** Those after which something of the old has gone. */
    private Set<String> later(Waits waits) {
        BitSet later = new BitSet();
        for (Draft each : job.drafts.values()) {
            if (!each.takesApart.isEmpty()) {
                int at = waits.number(each);
                later.set(at);
                later.or(waits.behind(at));
            }
        }
        return job.drafts.values().stream()
                .filter(each -> later.get(waits.number(each)))
                .map(each -> each.id)
                .collect(Collectors.toSet());
    }

    private String which(Draft draft, String place, boolean later) {
        List<String> which = new ArrayList<>();
        if (draft.kind == TaskKind.PROVE) {
            Feed feed = job.project.feeds().get(draft.proves.iterator().next());
            if (feed != null) {
                which.add(
                        feed.never()
                                ? "never"
                                : feed.carries() == null
                                        ? "any"
                                        : feed.carries().word());
                job.project.events().values().stream()
                        .filter(each ->
                                each.needs() != null && each.needs().feeds().contains(feed.id()))
                        .forEach(each -> which.add(each.id()));
            }
            return String.join("-", which);
        }
        Double height = job.height(job.place(place));
        if (!draft.hires.isEmpty() && (height == null || height <= job.reach())) {
            which.addAll(draft.hires);
        }
        if (draft.kind == TaskKind.ADDRESS && draft.overhead) {
            which.add("up");
        }
        if (draft.crew > 1 && draft.hires.isEmpty() && draft.kind.section() != null && isCarried(draft)) {
            which.add("by-" + draft.crew);
        }
        if (draft.kind == TaskKind.TERMINATE && draft.hires.isEmpty() && comesDown(draft)) {
            which.add("from-above");
        }
        if (draft.skills.contains(MAINS) && isOff(draft)) {
            which.add(MAINS); // nobody calls the electrician for the rest
        }
        if (later) {
            which.add("later");
        }
        if (draft.kind == TaskKind.CONFIGURE) {
            which.addAll(draft.skills);
        }
        return String.join("-", which);
    }

    /** Its cable is pulled overhead, and may be long after those on the floor. */
    private boolean comesDown(Draft draft) {
        for (String first : draft.after) {
            Draft pull = job.drafts.get(job.joined.getOrDefault(first, first));
            if (pull != null && pull.kind == TaskKind.PULL && !pull.hires.isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOff(Draft draft) {
        return switch (draft.kind) {
            case TAKE_OUT, STRIKE, MOVE, MOUNT, REPLUG -> true;
            default -> false;
        };
    }

    private static boolean isCarried(Draft draft) {
        return switch (draft.kind) {
            case MOUNT, MOVE, STRIKE -> true;
            default -> false;
        };
    }

    /** The place of a round; a room for what is done in a whole room. */
    private @Nullable String placeOf(Draft draft) {
        String about = draft.about.isEmpty() ? "" : draft.about.iterator().next();
        String id = about.substring(about.lastIndexOf('.') + 1);
        return switch (draft.kind) {
            case STRIKE -> {
                Equipment thing = job.project.equipment().get(id);
                yield thing == null ? null : thing.today().at();
            }
            case PULL, TERMINATE, TEST, REPLUG, TAKE_OUT -> farthest(draft);
            case LEADS -> id;
            case TUNE -> {
                RadioLink link = job.project.radio().get(id);
                yield link == null ? null : racked(link);
            }
            case LOOK -> draft.rooms.isEmpty() ? room(job.project.equipment().keySet()) : first(draft.rooms);
            case PROVE ->
                draft.places.isEmpty() ? null : roomOf(List.copyOf(draft.places).getLast());
            default -> {
                Equipment thing = job.project.equipment().get(id);
                yield thing == null ? null : job.placeOf(thing);
            }
        };
    }

    private static @Nullable String first(Set<String> some) {
        return some.isEmpty() ? null : some.iterator().next();
    }

    private @Nullable String room(Set<String> things) {
        for (String each : things) {
            Equipment thing = job.project.equipment().get(each);
            String room = thing == null ? null : roomOf(job.placeOf(thing));
            if (room != null) {
                return room;
            }
        }
        return null;
    }

    private @Nullable String roomOf(@Nullable String place) {
        Place where = job.place(place);
        return where == null ? null : where.room();
    }

    /** The highest end; of those on the floor the first that is in no rack, since cables go out from racks. */
    private @Nullable String farthest(Draft draft) {
        String found = null;
        double highest = job.steps();
        for (String each : draft.places) {
            Place place = job.place(each);
            Double height = job.height(place);
            if (height != null && height > highest) {
                highest = height;
                found = each;
            }
        }
        if (found != null) {
            return found;
        }
        for (String each : draft.places) {
            Place place = job.place(each);
            if (place != null && place.rack() == null) {
                return each;
            }
        }
        return draft.places.isEmpty() ? null : List.copyOf(draft.places).getLast();
    }

    private @Nullable String racked(RadioLink link) {
        String found = null;
        for (String end : List.of(link.from().thing(), link.to().thing())) {
            Equipment thing = job.project.equipment().get(end);
            if (thing != null && (found == null || job.isRacked(thing))) {
                found = job.placeOf(thing);
            }
        }
        return found;
    }

    /** As many of a round as can be done in one go, with nothing between that waits for one and is waited for by another. */
    private List<Draft> free(List<Draft> all, Waits waits) {
        BitSet members = new BitSet();
        BitSet first = new BitSet();
        BitSet then = new BitSet();
        List<Draft> free = new ArrayList<>();
        for (Draft draft : all.stream().sorted(waits.inOrder()).toList()) {
            int at = waits.number(draft);
            BitSet before = waits.before(at);
            BitSet behind = waits.behind(at);
            BitSet between = (BitSet) first.clone();
            between.or(before);
            BitSet after = (BitSet) then.clone();
            after.or(behind);
            between.and(after);
            between.andNot(members);
            between.clear(at);
            if (between.isEmpty()) {
                members.set(at);
                first.or(before);
                then.or(behind);
                free.add(draft);
            }
        }
        return free;
    }

    // ---- one of many ----

    private Draft round(String id, List<Draft> members) {
        Draft one = members.getFirst();
        Draft round = new Draft(id, one.kind, title(members), why(members));
        for (Draft each : members) {
            job.joined.put(each.id, id);
            round.does.addAll(each.does);
            round.about.addAll(each.about);
            round.count(each);
            round.crew = Math.max(round.crew, each.crew);
            round.skills.addAll(each.skills);
            round.hires.addAll(each.hires);
            round.places.addAll(each.places);
            round.rooms.addAll(each.rooms);
            Double height = each.heightM;
            if (height != null) {
                round.high(height);
            }
            round.overhead |= each.overhead;
            round.conditions.addAll(each.conditions);
            round.deliveries.addAll(each.deliveries);
            round.unordered.addAll(each.unordered);
            round.after.addAll(each.after);
            round.takesApart.addAll(each.takesApart);
            round.proves.addAll(each.proves);
            round.cautions.addAll(each.cautions);
            round.assumed.addAll(each.assumed);
            round.parts.add(each.title);
        }
        return round;
    }

    /** Puts the rounds where the first of their members stood, and lets what waited for a member wait for its round. */
    private void replace(Map<String, Draft> made) {
        Map<String, Draft> drafts = new LinkedHashMap<>();
        for (Draft each : job.drafts.values()) {
            Draft round = made.get(job.joined.get(each.id));
            drafts.putIfAbsent(round == null ? each.id : round.id, round == null ? each : round);
        }
        for (Draft each : drafts.values()) {
            Set<String> rounds = new LinkedHashSet<>();
            each.after.stream().map(job.joined::get).filter(Objects::nonNull).forEach(rounds::add);
            each.after.removeIf(job.joined::containsKey);
            rounds.remove(each.id);
            made.keySet().stream().filter(rounds::contains).forEach(each.after::add);
        }
        job.drafts.clear();
        job.drafts.putAll(drafts);
    }

    private static String why(List<Draft> members) {
        Set<String> reasons = new LinkedHashSet<>();
        members.forEach(each -> reasons.add(each.why));
        List<String> all = List.copyOf(reasons);
        return all.getFirst() + (all.size() == 1 ? "" : " Of the others it is much the same.")
                + " They are alike and at one place: one round of work.";
    }

    private String title(List<Draft> members) {
        Draft one = members.getFirst();
        int count = members.size();
        Set<String> names = new LinkedHashSet<>();
        for (Draft each : members) {
            String about = each.about.iterator().next();
            names.add(Words.said(about.substring(about.lastIndexOf('.') + 1)));
        }
        String told = ": " + Say.some(names, TOLD);
        Set<String> places = new LinkedHashSet<>();
        members.forEach(each -> places.add(Objects.requireNonNullElse(placeOf(each), "")));
        boolean walk = places.size() > 1;
        String place = walk
                ? Objects.requireNonNullElse(roomOf(first(places)), "")
                : Objects.requireNonNullElse(first(places), "");
        Place where = walk ? null : job.place(place);
        boolean rack = where != null && where.rack() != null;
        Double height = job.height(where);
        boolean up = height != null && height > job.reach() && job.hangs(place);
        String at = (rack || walk ? " in " : " at ") + Words.said(place);
        String high = up && height != null ? at + ", " + Say.metres(height) + " up" : at;
        return switch (one.kind) {
            case TAKE_OUT -> "Take out " + Say.counted(count, "cable", "cables") + at + told;
            case STRIKE -> "Strike " + things(count) + at + told;
            case MOVE ->
                (up ? "Hang " : "Move ") + things(count) + (rack ? " into " : " to ") + Words.said(place) + told;
            case MOUNT -> (up ? "Hang " : rack ? "Mount " : "Set up ") + things(count) + high + told;
            case SECURE -> "Fit the missing safety attachments of " + things(count) + high + told;
            case WIRE -> "Wire " + things(count) + at + " into the mains, test and certify them" + told;
            case PULL ->
                "Pull " + Say.counted(count, "cable", "cables") + " to " + Words.said(place) + ", "
                        + Say.metres(Math.ceil(metres(members))) + " in all, and label both ends" + told;
            case TERMINATE -> "Make off " + Say.counted(count, "cable", "cables") + high + told;
            case TEST -> "Test " + Say.counted(count, "cable", "cables") + at + ", every conductor" + told;
            case REPLUG ->
                "Plug " + Say.counted(count, "cable", "cables") + at + " elsewhere, and label them anew" + told;
            case CONNECT -> "Plug in " + things(count) + high + told;
            case POWER -> "Plug the mains of " + things(count) + at + " in elsewhere" + told;
            case ADDRESS ->
                "Set the addresses of " + Say.counted(count, "fixture", "fixtures")
                        + (one.overhead ? high : " for " + Words.said(place) + ", on the ground") + told;
            case TERMINATOR -> "Plug in " + Say.counted(count, "terminator", "terminators") + high + told;
            case LEADS ->
                "Label and try the " + Say.counted(leads(members), "loose lead", "loose leads") + " for "
                        + Say.some(names, TOLD) + ", on the bench";
            case CONFIGURE -> "Set up " + Say.counted(count, "device", "devices") + at + told;
            case TUNE ->
                "Set " + Say.counted(count, "radio link", "radio links")
                        + ", look what else is on the air, walk the room with each" + told;
            case FOCUS -> "Focus " + Say.counted(count, "fixture", "fixtures") + high + told;
            case LOOK ->
                "See " + Say.counted(count, "look", "looks") + " in the dark, set them right and save them" + told;
            case PROVE -> "Prove " + Say.counted(count, "feed", "feeds") + " in " + Words.said(place) + told;
            default -> one.title + " and " + (count - 1) + " more";
        };
    }

    private static int leads(List<Draft> members) {
        return members.stream().mapToInt(each -> each.about.size() - 1).sum();
    }

    private static String things(int count) {
        return Say.counted(count, "thing", "things");
    }

    private double metres(List<Draft> pulls) {
        double metres = 0;
        for (Draft each : pulls) {
            String about = each.about.iterator().next();
            Cable cable = job.project.cables().get(about.substring(about.lastIndexOf('.') + 1));
            metres += cable == null ? 0 : Cables.metres(job, cable);
        }
        return metres;
    }
}
