package housewright.work;

import housewright.cable.Cabling;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.Types;
import housewright.signal.FeedProof;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** The tasks of a project: those that the change from TODAY to TARGET implies, and its own. Immutable. */
public final class Work {
    private final Map<String, WorkTask> tasks;
    private final Map<String, Integer> place = new HashMap<>();
    private final Map<String, List<String>> then = new HashMap<>();
    private final Map<String, List<String>> using = new HashMap<>(); // by the thing or cable that has to come
    private final List<String> notes;

    private Work(Map<String, WorkTask> tasks, List<String> notes) {
        this.tasks = tasks;
        this.notes = notes;
        for (WorkTask task : tasks.values()) {
            place.put(task.id(), place.size());
            task.after().forEach(first -> add(then, first, task));
            if (waitsForThings(task)) {
                task.about().stream()
                        .filter(about -> about.startsWith("equipment.") || about.startsWith("cables."))
                        .map(about -> about.substring(about.indexOf('.') + 1))
                        .distinct()
                        .forEach(item -> add(using, item, task));
            }
        }
    }

    private static void add(Map<String, List<String>> lists, String key, WorkTask task) {
        lists.computeIfAbsent(key, each -> new ArrayList<>()).add(task.id());
    }

    private static boolean waitsForThings(WorkTask task) {
        return switch (task.kind()) {
            case MOUNT, PULL, TERMINATE, LEADS, CONNECT, ADDRESS, OWN ->
                !task.deliveries().isEmpty() || !task.unordered().isEmpty();
            default -> false;
        };
    }

    /**
     * @param today the cables before the work
     * @param target the cables when it is done
     * @param proofsToday the feeds as they are before the work: what works then may stop on the way
     * @param proofsTarget the feeds when it is done: what is to be proven, and over what it runs
     */
    public static Work of(
            Types types, Cabling today, Cabling target, List<FeedProof> proofsToday, List<FeedProof> proofsTarget) {
        Job job = new Job(types, today, target, proofsToday, proofsTarget);
        new Beforehand(job).derive();
        new Goes(job).derive();
        new Things(job).derive();
        new Cables(job).derive();
        new Plugging(job).derive();
        Supply supply = new Supply(job);
        new Settings(job, supply).derive();
        new LightWork(job, supply).derive();
        new Ending(job, supply).derive();
        new Together(job).merge();
        OwnTasks own = new OwnTasks(job);
        own.merge();
        return finish(job, own.edges());
    }

    /** Whether two projects of the same design have the same tasks: an accepted plan, a pin and the log hold on to some. */
    public static boolean isAlike(Project one, Project other) {
        return Together.agreed(one).equals(Together.agreed(other));
    }

    private static Work finish(Job job, List<OwnTasks.Edge> own) {
        Sequence sequence = new Sequence(job.drafts.keySet());
        List<Sequence.Pair> all = new ArrayList<>();
        own.forEach(edge -> all.add(new Sequence.Pair(edge.before(), edge.after())));
        job.drafts.values().forEach(draft -> draft.after.forEach(first -> all.add(new Sequence.Pair(first, draft.id))));
        if (!sequence.addAll(all)) {
            oneByOne(job, own, sequence);
        }
        return finish(job, sequence.reduced());
    }

    /** Some wait for each other: what the project says goes before what is worked out, and what does not fit is told. */
    private static void oneByOne(Job job, List<OwnTasks.Edge> own, Sequence sequence) {
        for (OwnTasks.Edge edge : own) {
            if (!sequence.add(edge.before(), edge.after())) {
                job.notes.add("The tasks " + edge.before() + " and " + edge.after() + " wait for each other; that "
                        + edge.before() + " comes first was left out.");
            }
        }
        for (Draft draft : job.drafts.values()) {
            for (String first : draft.after) {
                if (job.drafts.containsKey(first) && !sequence.add(first, draft.id)) {
                    job.notes.add("By its own order of tasks the project has " + draft.id + " before " + first
                            + ", which is usually the other way round.");
                }
            }
        }
    }

    private static Work finish(Job job, Map<String, List<String>> after) {
        Set<String> waitedFor = new LinkedHashSet<>();
        after.values().forEach(waitedFor::addAll);
        Map<String, WorkTask> tasks = new LinkedHashMap<>();
        after.forEach((id, first) -> {
            Draft draft = Objects.requireNonNull(job.drafts.get(id));
            draft.mayWait = switch (draft.kind) {
                case STRIKE, TAKE_OUT, RETURN -> !waitedFor.contains(id);
                default -> false;
            };
            draft.mayPause = !draft.parts.isEmpty()
                    || switch (draft.kind) {
                        case PREPARE, PLAN_NETWORK, PRINT_LABELS, RECEIVE, LEADS, OWN -> true;
                        default -> false;
                    };
            if (draft.own && draft.beforehand) {
                draft.beforehand = first.stream()
                        .allMatch(
                                each -> Objects.requireNonNull(tasks.get(each)).beforehand());
            }
            for (String place : draft.places) {
                Place where = job.place(place);
                if (where != null && where.room() != null) {
                    draft.rooms.add(where.room());
                }
            }
            tasks.put(id, draft.finish(first));
        });
        unused(job);
        return new Work(Collections.unmodifiableMap(tasks), List.copyOf(job.notes));
    }

    /** A skill that nobody has is best known early. */
    private static void unused(Job job) {
        if (job.project.people().isEmpty()) {
            return;
        }
        Set<String> known = new LinkedHashSet<>();
        job.project.people().values().forEach(person -> known.addAll(person.skills()));
        Map<String, Integer> missing = new LinkedHashMap<>();
        job.drafts
                .values()
                .forEach(draft -> draft.skills.stream()
                        .filter(skill -> !known.contains(skill))
                        .forEach(skill -> missing.merge(skill, 1, Integer::sum)));
        missing.forEach((skill, count) -> job.notes.add("Nobody on the job has the skill " + skill + ", which "
                + Say.counted(count, "task asks for.", "tasks ask for.")));
    }

    /** Every task after those before it; within that, as one goes about it: what comes beforehand, what goes, what comes, what is set, what is proven. */
    public List<WorkTask> tasks() {
        return List.copyOf(tasks.values());
    }

    public Optional<WorkTask> find(String id) {
        return Optional.ofNullable(tasks.get(id));
    }

    /** What the project says of its tasks and cannot be, and what it lacks, as sentences. */
    public List<String> notes() {
        return notes;
    }

    /** Everything that waits for one of these, directly or not, in order; those themselves left out. */
    public List<String> downstream(Iterable<String> ids) {
        Set<String> start = new LinkedHashSet<>();
        ids.forEach(start::add);
        Set<String> seen = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(start);
        while (!open.isEmpty()) {
            String next = open.removeLast();
            for (String each : then.getOrDefault(next, List.of())) {
                if (seen.add(each)) {
                    open.add(each);
                }
            }
        }
        seen.removeAll(start);
        return seen.stream()
                .filter(tasks::containsKey)
                .sorted(Comparator.comparing(place::get))
                .toList();
    }

    /** The tasks that use a thing or cable that has to come first, such as {@code desk}, in order. */
    public List<String> using(String item) {
        return Collections.unmodifiableList(using.getOrDefault(item, List.of()));
    }
}
