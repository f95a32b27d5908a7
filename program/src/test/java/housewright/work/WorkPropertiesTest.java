package housewright.work;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.Mentions;
import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.LogEntry;
import housewright.model.NetworkSend;
import housewright.model.PatchEntry;
import housewright.model.Pin;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Remarks;
import housewright.model.SiteState;
import housewright.model.TaskKind;
import housewright.model.Termination;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.study.Study;
import housewright.testing.RandomProjects;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of the tasks of any project: the demo, sound halls, and the demo with lives changed at random. */
class WorkPropertiesTest {
    private static final Path DEMO = Path.of("src/main/resources/housewright/demo/carrowfenn-hall.yaml");
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);
    private static final Set<TaskKind> BESIDE = EnumSet.of(
            TaskKind.FOCUS,
            TaskKind.LOOK,
            TaskKind.ALIGN,
            TaskKind.PROVE,
            TaskKind.TRAIN,
            TaskKind.REHEARSE,
            TaskKind.SECURE,
            TaskKind.OWN,
            TaskKind.PRINT_LABELS,
            TaskKind.PLAN_NETWORK);
    /** What is about many things at once. */
    private static final Set<TaskKind> GATHERED = EnumSet.of(
            TaskKind.PROVE,
            TaskKind.ALIGN,
            TaskKind.LOOK,
            TaskKind.TRAIN,
            TaskKind.REHEARSE,
            TaskKind.LEADS,
            TaskKind.RECEIVE,
            TaskKind.PRINT_LABELS,
            TaskKind.PLAN_NETWORK,
            TaskKind.OWN);

    private record Hall(String name, Project project, Study study) {
        Hall(String name, Project project) {
            this(name, project, Study.of(project, LIBRARY));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Project read(String name, String text) {
        return switch (ProjectReader.read(name + ".yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors());
        };
    }

    /** The demo with what becomes of things changed here and there. */
    private static Project shaken(long seed) {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>();
        for (String line : text(DEMO).split("\n", -1)) {
            lines.add(
                    random.nextInt(6) > 0
                            ? line
                            : line.replaceFirst(
                                    "life: (new|strike|move)\\b",
                                    "life: "
                                            + List.of("keep", "strike", "move", "new")
                                                    .get(random.nextInt(4))));
        }
        return read("shaken", String.join("\n", lines));
    }

    private static final List<Hall> HALLS = allHalls();

    /** What a study has worked out once is not worked out for each test anew. */
    static List<Hall> halls() {
        return HALLS;
    }

    private static List<Hall> allHalls() {
        List<Hall> halls = new ArrayList<>();
        halls.add(new Hall("demo", read("demo", text(DEMO))));
        for (Path folder : List.of(Path.of("../examples"), Path.of("src/test/resources/housewright/halls"))) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(file -> {
                    String name = file.getFileName().toString().replace(".yaml", "");
                    halls.add(new Hall(name, read(name, text(file))));
                });
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        IntStream.range(0, 8).forEach(seed -> halls.add(new Hall("shaken " + seed, shaken(seed))));
        return halls;
    }

    @ParameterizedTest
    @MethodSource("halls")
    void tasksAreInOrderAndWellFormed(Hall hall) {
        Work work = hall.study().work();
        Set<String> seen = new HashSet<>();
        for (WorkTask task : work.tasks()) {
            assertThat(seen).as(task.id()).containsAll(task.after());
            assertThat(seen.add(task.id())).as(task.id()).isTrue();
            assertThat(task.id()).matches("[A-Za-z0-9][A-Za-z0-9-]*");
            assertThat(task.title()).as(task.id()).isNotBlank();
            assertThat(task.why()).as(task.id()).endsWith(".");
            assertThat(task.does().getFirst()).isEqualTo(task.kind());
            assertThat(task.takes().likely()).as(task.id()).isPositive();
            assertThat(task.own() || task.about().stream().noneMatch(each -> each.startsWith("tasks.")))
                    .isTrue();
            if (!task.own() && task.kind().section() != null) {
                assertThat(TaskKind.find(task.id()).orElseThrow().kind()).isEqualTo(task.kind());
                String about = task.about().getFirst();
                String place = task.parts().isEmpty() ? "" : "at-";
                assertThat(task.id()).startsWith(task.kind().word() + "-" + place);
                if (task.parts().isEmpty()) {
                    assertThat(task.id().replaceFirst("-up$", ""))
                            .endsWith(
                                    about.substring(about.lastIndexOf('.') + 1).replaceFirst("-up$", ""));
                }
            }
            if (task.heightM() != null && task.heightM() > 3.5 && !task.remote()) {
                assertThat(task.crew()).as(task.id()).isGreaterThan(1);
            }
            if (task.heightM() != null && task.heightM() > 3.5 && !task.own()) {
                assertThat(task.overhead()).as(task.id()).isTrue();
                assertThat(task.cautions()).as(task.id()).anyMatch(each -> each.startsWith("Work at height"));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("halls")
    void everyNewCableIsPulledMadeOffLabelledAndTested(Hall hall) {
        Work work = hall.study().work();
        for (Cable cable : hall.project().cables().values()) {
            if (cable.life() != Life.NEW || !CableType.isBought(cable.type())) {
                continue;
            }
            Set<TaskKind> done = EnumSet.noneOf(TaskKind.class);
            work.tasks().stream()
                    .filter(task -> task.about().contains("cables." + cable.id()))
                    .forEach(task -> done.addAll(task.does()));
            boolean joined = cable.from() != null && cable.from().ref() != null
                    || cable.to() != null && cable.to().ref() != null
                    || !cable.ways().isEmpty();
            boolean fixed = !cable.via().isEmpty() || cable.terminated() == Termination.SITE;
            if (fixed || joined) { // a loose lead that nobody has said the ends of is a question, not work
                assertThat(done).as(cable.id()).contains(TaskKind.PULL, TaskKind.LABEL, TaskKind.TEST);
            }
            if (cable.terminated() == Termination.SITE && joined) {
                assertThat(done).as(cable.id()).contains(TaskKind.TERMINATE);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("halls")
    void everyProofIsAfterAllThatIsDoneToItsPath(Hall hall) {
        Study study = hall.study();
        Work work = study.work();
        Map<String, Set<String>> before = before(work);
        for (FeedProof proof : study.proofs()) {
            WorkTask prove = work.tasks().stream()
                    .filter(task -> task.proves().contains(proof.feed().id()))
                    .findFirst()
                    .orElse(null);
            if (proof.feed().never()) {
                continue;
            }
            Set<String> path = path(proof);
            for (WorkTask task : work.tasks()) {
                if (!BESIDE.contains(task.kind()) && task.about().stream().anyMatch(path::contains)) {
                    assertThat(prove)
                            .as(proof.feed().id() + " passes " + task.id())
                            .isNotNull();
                    assertThat(before.get(prove.id())).as(prove.id()).contains(task.id());
                }
            }
        }
    }

    private static Map<String, Set<String>> before(Work work) {
        Map<String, Set<String>> before = new HashMap<>();
        for (WorkTask task : work.tasks()) {
            Set<String> all = new HashSet<>(task.after());
            task.after().forEach(first -> all.addAll(before.get(first)));
            before.put(task.id(), all);
        }
        return before;
    }

    private static Set<String> path(FeedProof proof) {
        Set<String> path = new HashSet<>();
        proof.pairs().forEach(pair -> {
            for (Hop hop : pair.hops()) {
                path.add(hop.cause().entity());
                path.add("equipment." + hop.from().thing());
                path.add("equipment." + hop.to().thing());
                if (hop.cause() instanceof Cause.BySend send) {
                    send.over().forEach(each -> path.addAll(List.of("cables." + each, "equipment." + each)));
                }
            }
        });
        return path;
    }

    @ParameterizedTest
    @MethodSource("halls")
    void noTaskIsAboutWhatDoesNotChange(Hall hall) {
        Set<String> changing = changing(hall.project());
        for (WorkTask task : hall.study().work().tasks()) {
            switch (task.kind()) {
                case PROVE, ALIGN, LOOK, REHEARSE ->
                    assertThat(task.after()).as(task.id()).isNotEmpty();
                case OWN, RECEIVE, PREPARE -> {}
                default -> assertThat(task.about()).as(task.id()).anyMatch(changing::contains);
            }
        }
    }

    /** Everything that is not as today, and every thing that something is done at. */
    private static Set<String> changing(Project project) {
        Set<String> changing = new HashSet<>();
        for (Equipment thing : project.equipment().values()) {
            if (thing.life() != Life.KEEP || thing.was() != null) {
                changing.add("equipment." + thing.id());
                if (thing.partOf() != null) {
                    changing.add("equipment." + thing.partOf());
                }
            }
        }
        for (Cable cable : project.cables().values()) {
            if (cable.life() != Life.KEEP || cable.was() != null) {
                changing.add("cables." + cable.id());
            }
        }
        project.patch().forEach((device, entries) -> {
            if (entries.stream().map(PatchEntry::life).anyMatch(life -> life == Life.NEW || life == Life.STRIKE)) {
                changing.add("equipment." + device);
            }
        });
        for (NetworkSend send : project.networkSends().values()) {
            if (send.life() != Life.KEEP) {
                changing.addAll(List.of(
                        "equipment." + send.from().thing(),
                        "equipment." + send.to().thing()));
            }
        }
        project.radio().values().forEach(link -> changing.add("radio." + link.id()));
        project.files()
                .values()
                .forEach(file -> changing.addAll(List.of("files." + file.id(), "equipment." + file.device())));
        return changing;
    }

    @ParameterizedTest
    @MethodSource("halls")
    void equalProjectsGiveEqualTasks(Hall hall) {
        Work one = hall.study().work();
        Project again = read("again", housewright.file.ProjectWriter.yaml(hall.project()));
        assertThat(again).isEqualTo(hall.project());
        Work other = Study.of(again, LIBRARY).work();
        assertThat(other.tasks()).isEqualTo(one.tasks());
        assertThat(other.notes()).isEqualTo(one.notes());
    }

    /** However the plan and the log come to be as they are: asked step by step, or of the project read anew. */
    @ParameterizedTest
    @MethodSource("halls")
    void tasksAfterTicksAndPinsAreThoseOfTheProjectReadAnew(Hall hall) {
        Random random = new Random(hall.name().hashCode());
        Project project = hall.project();
        Study study = hall.study();
        for (int i = 0; i < 6; i++) {
            List<WorkTask> tasks = study.work().tasks();
            if (tasks.isEmpty()) {
                return;
            }
            String task = tasks.get(random.nextInt(tasks.size())).id();
            List<String> pinned = List.copyOf(Section.PINS.of(project).keySet());
            Change change = pinned.isEmpty() || random.nextInt(3) > 0
                    ? random.nextBoolean()
                            ? new Change.Put(Section.PINS, task, new Pin(task, null, List.of("ann"), Remarks.NONE))
                            : new Change.Put(Section.LOG, task, done(task))
                    : new Change.Drop(Section.PINS, pinned.get(random.nextInt(pinned.size())));
            project = Change.apply(project, List.of(change));
            study = study.after(project);
        }
        assertThat(study.work().tasks())
                .isEqualTo(Study.of(project, LIBRARY).work().tasks());
    }

    private static LogEntry done(String task) {
        return new LogEntry(task, SiteState.DONE, null, null, List.of(), null, null, null, Remarks.NONE);
    }

    static IntStream seeds() {
        return IntStream.range(0, 25);
    }

    /** Whatever is taken away, what is about other things keeps its id, and means the same. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void idsStayWhenSomethingElseIsEdited(int seed) {
        Random random = new Random(seed);
        Project before = HALLS.getFirst().project();
        Project after = edited(before, random);
        Map<String, WorkTask> old = byId(before);
        Map<String, WorkTask> now = byId(after);
        Set<String> touched = touched(before, after);
        for (WorkTask task : old.values()) {
            boolean concerned = GATHERED.contains(task.kind())
                    || !task.parts().isEmpty()
                    || task.about().stream().anyMatch(touched::contains);
            if (concerned || joined(now, task)) {
                continue;
            }
            assertThat(now).as("seed " + seed).containsKey(task.id());
            WorkTask same = now.get(task.id());
            assertThat(same.about()).as(task.id()).containsExactlyInAnyOrderElementsOf(task.about());
            assertThat(same.kind()).as(task.id()).isEqualTo(task.kind());
        }
        for (WorkTask task : now.values()) {
            boolean concerned = GATHERED.contains(task.kind())
                    || !task.parts().isEmpty()
                    || task.about().stream().anyMatch(touched::contains);
            assertThat(concerned || joined(old, task) || old.containsKey(task.id()))
                    .as(task.id())
                    .isTrue();
        }
    }

    /** It is part of a round of like work in one of the two projects, and by itself in the other. */
    private static boolean joined(Map<String, WorkTask> tasks, WorkTask alone) {
        return tasks.values().stream()
                .anyMatch(task -> task.kind() == alone.kind()
                        && !task.parts().isEmpty()
                        && task.about().containsAll(alone.about()));
    }

    private static Map<String, WorkTask> byId(Project project) {
        Map<String, WorkTask> byId = new LinkedHashMap<>();
        Study.of(project, LIBRARY).work().tasks().forEach(task -> byId.put(task.id(), task));
        return byId;
    }

    /** Takes a few cables and things away, with every mention of them, or moves rows about. */
    private static Project edited(Project project, Random random) {
        Project edited = project;
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            Section section = random.nextBoolean() ? Section.CABLES : Section.EQUIPMENT;
            List<String> ids = List.copyOf(section.of(edited).keySet());
            String id = ids.get(random.nextInt(ids.size()));
            if (random.nextInt(3) == 0) {
                List<String> order = new ArrayList<>(ids);
                java.util.Collections.shuffle(order, random);
                edited = Change.apply(edited, List.of(new Change.Arrange(section, order)));
            } else {
                edited = Mentions.without(edited, section, List.of(id));
            }
        }
        return edited;
    }

    /** Entities that differ, the ends of cables that do, and what those power. */
    private static Set<String> touched(Project before, Project after) {
        Set<String> touched = new HashSet<>();
        for (Section section : Section.values()) {
            Map<String, ? extends Record> old = section.of(before);
            Map<String, ? extends Record> now = section.of(after);
            Set<String> ids = new HashSet<>(old.keySet());
            ids.addAll(now.keySet());
            for (String id : ids) {
                if (!java.util.Objects.equals(old.get(id), now.get(id))) {
                    touched.add(section.path() + "." + id);
                    for (Record each : new Record[] {old.get(id), now.get(id)}) {
                        ends(each).forEach(end -> touched.add("equipment." + end));
                    }
                }
            }
        }
        before.patch().keySet().stream()
                .filter(device ->
                        !before.patch().get(device).equals(after.patch().get(device)))
                .forEach(device -> touched.add("equipment." + device));
        return touched;
    }

    private static List<String> ends(Record record) {
        List<String> ends = new ArrayList<>();
        if (record instanceof Cable cable) {
            for (housewright.model.End end : new housewright.model.End[] {cable.from(), cable.to()}) {
                if (end != null && end.ref() != null) {
                    ends.add(end.ref().thing());
                }
            }
            cable.ways().forEach(way -> {
                for (Ref ref : List.of(way.from(), way.to())) {
                    ref.addresses().forEach(at -> ends.add(at.thing()));
                }
            });
        } else if (record instanceof Equipment thing && thing.partOf() != null) {
            ends.add(thing.partOf());
        } else if (record instanceof NetworkSend send) {
            ends.add(send.from().thing());
            ends.add(send.to().thing());
        }
        return ends;
    }

    static IntStream manySeeds() {
        return IntStream.range(0, 150);
    }

    /** Projects that no hall is like: whatever they say, tasks and orders come of it, in order and the same again. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("manySeeds")
    void nothingThatCanBeReadStopsTheDerivation(int seed) {
        Study study = Study.of(RandomProjects.of(seed), LIBRARY);
        Set<String> seen = new HashSet<>();
        for (WorkTask task : study.work().tasks()) {
            assertThat(seen).as(task.id()).containsAll(task.after());
            seen.add(task.id());
        }
        assertThat(study.orders().costs().total()).isNotNegative();
        assertThat(Study.of(RandomProjects.of(seed), LIBRARY).work().tasks())
                .isEqualTo(study.work().tasks());
    }

    @Test
    void theDemoReadsAsATechnicianWouldSayIt() {
        Work work = Study.of(read("demo", text(DEMO)), LIBRARY).work();
        assertThat(work.notes()).isEmpty();
        assertThat(work.find("copy-media-pc")).as("covered by save-old-words").isEmpty();
        assertThat(work.find("move-main-left").orElseThrow().after()).contains("brackets");
        assertThat(work.find("strike-old-dimmer").orElseThrow().after()).contains("outlets");
        assertThat(work.find("rehearse-first-sunday").orElseThrow().event()).isEqualTo("rehearsal");
        assertThat(work.find("prove-lectern-to-hall").orElseThrow().after()).contains("load-desk-file");
        assertThat(work.tasks().stream().filter(WorkTask::beforehand).map(WorkTask::id))
                .contains("plan-network", "print-labels", "prepare-desk-file", "prepare-light-file", "licence");
    }
}
