package housewright.work;

import housewright.model.Equipment;
import housewright.model.Hire;
import housewright.model.LabourUnit;
import housewright.model.Life;
import housewright.model.Task;
import housewright.model.TaskKind;
import housewright.model.Where;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The project's own tasks: they stand beside those that are worked out, change them, cover or skip them. */
final class OwnTasks {
    private static final int UNKNOWN_MINUTES = 60;

    /** One task before another, as the project says it; it gives way to nothing that is worked out. */
    record Edge(String before, String after) {}

    private final Job job;
    private final List<Edge> edges = new ArrayList<>();

    OwnTasks(Job job) {
        this.job = job;
    }

    List<Edge> edges() {
        return edges;
    }

    void merge() {
        List<Task> own = new ArrayList<>();
        for (Task task : job.project.tasks().values()) {
            Draft known = job.drafts.get(task.id());
            if (known == null) {
                own.add(task);
                job.drafts.put(task.id(), fresh(task));
            } else {
                change(known, task);
            }
        }
        for (Task task : own) {
            Draft draft = Objects.requireNonNull(job.drafts.get(task.id()));
            fill(draft, task);
            needs(draft, task.needs());
        }
        job.project.tasks().values().forEach(this::cover);
        for (Task task : job.project.tasks().values()) {
            if (task.skip()) {
                skip(task.id());
            }
        }
        for (Task task : job.project.tasks().values()) {
            for (String first : task.after()) {
                edge(first, task.id());
            }
            notAlone(job.drafts.get(task.id()));
        }
    }

    /** Whatever the project says of it: somebody stays below who can help, and fetch help. */
    private void notAlone(@Nullable Draft draft) {
        if (draft == null || draft.remote || draft.crew > 1) {
            return;
        }
        boolean high = draft.heightM != null && draft.heightM > job.steps();
        boolean hired = job.project.hires().values().stream()
                .anyMatch(hire -> draft.hires.contains(hire.id()) && (hire.isLift() || hire.isTower()));
        if (high || hired) {
            draft.crew = 2;
            draft.assumed.add("two people: nobody works that high, or with a lift or a tower, alone");
        }
    }

    private void edge(String first, String then) {
        if (job.drafts.containsKey(then)) {
            if (job.drafts.containsKey(first)) {
                edges.add(new Edge(first, then));
            } else {
                job.notes.add("The task " + then + " is said to come after " + first
                        + ", which nothing in the project implies.");
            }
        }
    }

    private static Draft fresh(Task task) {
        String name = task.name() == null ? Say.capital(Words.said(task.id())) : task.name();
        String note = task.remarks().note();
        Draft draft = new Draft(task.id(), TaskKind.OWN, name, Goes.because("The project's own task", note));
        draft.own = true;
        draft.about.add("tasks." + task.id());
        return draft;
    }

    private void change(Draft draft, Task task) {
        draft.changed = true;
        if (task.name() != null) {
            draft.title = task.name();
        }
        fill(draft, task);
        needs(draft, task.needs());
    }

    private void fill(Draft draft, Task task) {
        length(draft, task);
        draft.who.addAll(task.who());
        Integer crew = task.crew();
        draft.crew = crew != null ? crew : Math.max(draft.crew, task.who().size());
        draft.skills.addAll(task.skills());
        if (!task.conditions().isEmpty()) {
            draft.conditions.clear();
            draft.conditions.addAll(task.conditions());
        }
        if (task.where() != null) {
            draft.remote = task.where() == Where.REMOTE;
            draft.beforehand = draft.remote;
        }
    }

    private void length(Draft draft, Task task) {
        boolean said = task.takes() != null || task.least() != null || task.most() != null;
        if (!said && !draft.own) {
            return;
        }
        Minutes known = draft.own
                ? around(
                        job,
                        (task.takes() == null
                                ? UNKNOWN_MINUTES * 60.0
                                : task.takes().seconds()))
                : task.takes() != null ? around(job, task.takes().seconds()) : draft.takes();
        if (draft.own && !said) {
            draft.assumed.add("an hour: nobody has said how long it takes");
        }
        int likely = known.likely();
        int least = task.least() == null
                ? Math.min(known.least(), likely)
                : (int) Math.round(task.least().seconds() / 60);
        int most = task.most() == null
                ? Math.max(known.most(), likely)
                : (int) Math.round(task.most().seconds() / 60);
        draft.stated = new Minutes(Math.min(least, likely), likely, Math.max(most, likely));
        draft.assumed.removeIf(each -> each.startsWith("how long it takes"));
    }

    /** Three points around what is most likely, as wide as the labour unit of such tasks. */
    static Minutes around(Job job, double seconds) {
        LabourUnit unit = job.practice.labour().get("own-task");
        double least =
                unit == null ? 0.75 : unit.least().seconds() / unit.likely().seconds();
        double most = unit == null ? 2 : unit.most().seconds() / unit.likely().seconds();
        int likely = Math.max(1, (int) Math.round(seconds / 60));
        return new Minutes(
                Math.min(likely, Math.max(1, (int) Math.floor(likely * least))), likely, Math.max(likely, (int)
                        Math.ceil(likely * most)));
    }

    private void needs(Draft draft, List<String> needs) {
        for (String need : needs) {
            Hire hire = job.project.hires().get(need);
            Equipment thing = job.project.equipment().get(need);
            if (hire != null) {
                draft.hires.add(hire.id());
                if (hire.skill() != null) {
                    draft.skills.add(hire.skill());
                }
            } else if (thing != null) {
                thing(draft, thing);
            } else if (job.project.cables().containsKey(need)) {
                for (TaskKind kind : List.of(TaskKind.PULL, TaskKind.TERMINATE, TaskKind.TEST)) {
                    before(job.find(kind, need), draft);
                }
            } else if (job.project.files().containsKey(need)) {
                Draft load = job.find(TaskKind.LOAD, need);
                before(load != null ? load : job.find(TaskKind.PREPARE, need), draft);
            }
        }
    }

    private void thing(Draft draft, Equipment thing) {
        if (thing.life() == Life.HIRE) {
            before(job.find(TaskKind.FETCH, thing.id()), draft);
            before(draft, job.find(TaskKind.RETURN, thing.id()));
            draft.at(thing.at());
        } else if (Job.isStruck(thing)) {
            before(draft, job.find(TaskKind.STRIKE, thing.id()));
            draft.at(thing.today().at());
        } else {
            job.placed(thing.id()).forEach(each -> before(each, draft));
            draft.at(thing.at());
        }
    }

    private void before(@Nullable Draft first, @Nullable Draft then) {
        if (first != null && then != null && first != then) {
            edges.add(new Edge(first.id, then.id));
        }
    }

    private void cover(Task task) {
        Draft own = job.drafts.get(task.id());
        if (own == null) {
            return;
        }
        for (String id : task.covers()) {
            Draft covered = job.drafts.get(id);
            if (covered == null || covered == own) {
                job.notes.add("The task " + task.id() + " covers " + id + ", which nothing in the project implies"
                        + (covered == own ? " beside itself." : ", or another covers, too."));
                continue;
            }
            if (own.stated == null) {
                own.count(covered);
            }
            own.does.addAll(covered.does);
            own.about.addAll(covered.about);
            own.crew = task.crew() != null ? own.crew : Math.max(own.crew, covered.crew);
            own.skills.addAll(covered.skills);
            own.hires.addAll(covered.hires);
            own.places.addAll(covered.places);
            Double height = covered.heightM;
            if (height != null) {
                own.high(height);
            }
            own.overhead |= covered.overhead;
            if (task.conditions().isEmpty()) {
                own.conditions.addAll(covered.conditions);
            }
            own.deliveries.addAll(covered.deliveries);
            own.unordered.addAll(covered.unordered);
            own.takesApart.addAll(covered.takesApart);
            own.proves.addAll(covered.proves);
            own.parts.addAll(covered.parts);
            own.cautions.addAll(covered.cautions);
            replace(covered, own);
        }
    }

    private void replace(Draft covered, Draft own) {
        job.drafts.remove(covered.id);
        covered.after.forEach(first -> own(first, own.id));
        for (Draft each : job.drafts.values()) {
            if (each.after.remove(covered.id) && each != own) {
                own(own.id, each.id);
            }
        }
        List<Edge> turned = new ArrayList<>();
        for (Edge edge : edges) {
            turned.add(new Edge(
                    edge.before().equals(covered.id) ? own.id : edge.before(),
                    edge.after().equals(covered.id) ? own.id : edge.after()));
        }
        edges.clear();
        edges.addAll(turned);
    }

    private void own(String first, String then) {
        if (!first.equals(then)) {
            edges.add(new Edge(first, then));
        }
    }

    /** What came after it comes after what came before it. */
    private void skip(String id) {
        Draft skipped = job.drafts.remove(id);
        if (skipped == null) {
            return;
        }
        Map<String, Set<String>> own = new LinkedHashMap<>();
        for (Edge edge : edges) {
            own.computeIfAbsent(edge.after(), each -> new LinkedHashSet<>()).add(edge.before());
        }
        Set<String> before = new LinkedHashSet<>(skipped.after);
        before.addAll(own.getOrDefault(id, Set.of()));
        for (Draft each : job.drafts.values()) {
            if (each.after.remove(id)) {
                each.after.addAll(skipped.after);
                own.getOrDefault(id, Set.of()).forEach(first -> own(first, each.id));
            }
        }
        List<Edge> kept = new ArrayList<>();
        for (Edge edge : edges) {
            if (edge.before().equals(id)) {
                before.forEach(first -> kept.add(new Edge(first, edge.after())));
            } else if (!edge.after().equals(id)) {
                kept.add(edge);
            }
        }
        edges.clear();
        edges.addAll(kept);
    }
}
