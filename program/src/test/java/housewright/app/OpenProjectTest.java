package housewright.app;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.ProjectStore.Step;
import housewright.file.EntityCells;
import housewright.library.BuiltInLibrary;
import housewright.model.Exemption;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.store.sqlite.SqliteStore;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenProjectTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);
    private static final Instant NOW = Instant.parse("2027-01-11T09:00:00Z");
    private static final Author ADA = new Author("Ada", Role.LEAD);
    private static final Author BEN = new Author("Ben", Role.LEAD);

    @TempDir
    Path folder;

    private ProjectStore store;
    private Projects projects;
    private OpenProject demo;

    @BeforeEach
    void openTheDemo() throws StoreException {
        open();
        Opening.Opened opened = (Opening.Opened) projects.read(Demo.FILE_NAME, Demo.bytes());
        demo = projects.begin(opened.file(), ADA);
    }

    private void open() throws StoreException {
        store = SqliteStore.open(folder.resolve("projects.housewright"), NOW);
        projects = new Projects(store, LIBRARY, new ProjectFiles(LIBRARY, InputStream.nullInputStream()), () -> NOW);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Change put(Section section, String id, Map<String, String> cells) {
        Record before = section.of(demo.now().project()).get(id);
        return new Change.Put(
                section, id, ((EntityCells.Reading.Read) EntityCells.read(section, id, before, cells)).entity());
    }

    private Change note(String person, String note) {
        return put(Section.PEOPLE, person, Map.of("note", note));
    }

    private String noteOf(String person) {
        return String.valueOf(
                demo.now().project().people().get(person).remarks().note());
    }

    @Test
    void anEditIsKeptAndStillThereWhenTheStoreIsOpenedAgain() throws StoreException {
        Outcome outcome = demo.edit(ADA, demo.now().revision(), "Note", List.of(note("lead", "Has the keys")));
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        Outcome.Accepted.class,
                        accepted -> assertThat(accepted.revision()).isEqualTo(2));
        Project kept = demo.now().project();
        store.close();
        open();
        demo = projects.find(demo.id()).orElseThrow();
        assertThat(demo.now().project()).isEqualTo(kept);
        assertThat(demo.now().revision()).isEqualTo(2);
        assertThat(demo.undo(ADA)).isInstanceOf(Outcome.Accepted.class);
        assertThat(noteOf("lead")).isEqualTo("null");
        assertThat(demo.redo(ADA)).isInstanceOf(Outcome.Accepted.class);
        assertThat(noteOf("lead")).isEqualTo("Has the keys");
    }

    @Test
    void anEditThatChangesNothingMakesNoRevision() {
        Record lead = demo.now().project().people().get("lead");
        Outcome outcome = demo.edit(ADA, 1, "Nothing", List.of(new Change.Put(Section.PEOPLE, "lead", lead)));
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        Outcome.Accepted.class,
                        accepted -> assertThat(accepted.revision()).isZero());
        assertThat(demo.now().revision()).isEqualTo(1);
    }

    @Test
    void whatNamesSomethingThatIsNotThereIsRefusedWithTheNearest() {
        Outcome outcome =
                demo.edit(ADA, 1, "Move", List.of(put(Section.EQUIPMENT, "interpreter-mic", Map.of("at", "boooth"))));
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.errors()).singleElement().satisfies(error -> {
                            assertThat(error.path()).isEqualTo("equipment.interpreter-mic.at");
                            assertThat(error.nearest()).isEqualTo("booth");
                        }));
        assertThat(demo.now().revision()).isEqualTo(1);
    }

    @Test
    void editsOfDifferentThingsMadeOnTheSameRevisionAreBothKept() {
        Change one = note("lead", "One");
        Change other = put(Section.EQUIPMENT, "interpreter-mic", Map.of("note", "Other"));
        assertThat(demo.edit(ADA, 1, "One", List.of(one))).isInstanceOf(Outcome.Accepted.class);
        assertThat(demo.edit(BEN, 1, "Other", List.of(other))).isInstanceOf(Outcome.Accepted.class);
        assertThat(noteOf("lead")).isEqualTo("One");
        assertThat(demo.now()
                        .project()
                        .equipment()
                        .get("interpreter-mic")
                        .remarks()
                        .note())
                .isEqualTo("Other");
    }

    @Test
    void editsOfTheSameThingClashAndBothAreShown() {
        Change one = note("lead", "One");
        Change other = note("lead", "Other");
        demo.edit(ADA, 1, "One", List.of(one));
        Outcome outcome = demo.edit(BEN, 1, "Other", List.of(other));
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        Outcome.Conflict.class,
                        conflict -> assertThat(conflict.clashes())
                                .singleElement()
                                .satisfies(clash -> {
                                    assertThat(clash.subject()).isEqualTo("people.lead");
                                    assertThat(clash.was()).isEmpty();
                                    assertThat(clash.kept()).isEqualTo("note: One");
                                    assertThat(clash.yours()).isEqualTo("note: Other");
                                }));
        assertThat(noteOf("lead")).isEqualTo("One");
        assertThat(demo.edit(BEN, demo.now().revision(), "Other", List.of(other)))
                .isInstanceOf(Outcome.Accepted.class);
    }

    @Test
    void theSameEditMadeTwiceAtOnceIsNoClash() {
        Change same = note("lead", "Same");
        demo.edit(ADA, 1, "Same", List.of(same));
        assertThat(demo.edit(BEN, 1, "Same", List.of(same))).isInstanceOf(Outcome.Accepted.class);
    }

    @Test
    void twoPatchesOfOneDeviceMergeWhereTheyGoToDifferentPlaces() {
        String device = demo.now().project().patch().keySet().iterator().next();
        List<PatchEntry> entries = demo.now().project().patch().get(device);
        List<PatchEntry> single = entries.stream()
                .filter(entry -> entry.join().pairs().size() == 1)
                .toList();
        var first = single.get(0).join().pairs().getFirst();
        var second = single.get(1).join().pairs().getFirst();
        demo.edit(ADA, 1, "Out", List.of(new Change.Unpatch(device, first.from(), first.to())));
        assertThat(demo.edit(BEN, 1, "Out", List.of(new Change.Unpatch(device, second.from(), second.to()))))
                .isInstanceOf(Outcome.Accepted.class);
        assertThat(demo.now().project().patch().get(device)).hasSize(entries.size() - 2);
    }

    @Test
    void undoTakesBackOnesOwnStepsAndLeavesThoseOfOthers() {
        demo.edit(ADA, 1, "One", List.of(note("lead", "One")));
        demo.edit(BEN, 2, "Other", List.of(put(Section.EQUIPMENT, "interpreter-mic", Map.of("note", "Other"))));
        assertThat(demo.undo(ADA)).isInstanceOf(Outcome.Accepted.class);
        assertThat(noteOf("lead")).isEqualTo("null");
        assertThat(demo.now()
                        .project()
                        .equipment()
                        .get("interpreter-mic")
                        .remarks()
                        .note())
                .isEqualTo("Other");
        assertThat(demo.undo(ADA)).isInstanceOf(Outcome.NotDone.class);
    }

    @Test
    void undoRefusesWhereSomebodyElseEditedTheSameSince() {
        demo.edit(ADA, 1, "One", List.of(note("lead", "One")));
        demo.edit(BEN, 2, "Other", List.of(note("lead", "Other")));
        assertThat(demo.undo(ADA)).isInstanceOf(Outcome.Conflict.class);
        assertThat(noteOf("lead")).isEqualTo("Other");
    }

    /** Against a plain pair of stacks, which is what a person expects of undo and redo. */
    @Test
    void randomStepsUndoAndRedoAsAPairOfStacksDoes() {
        Random random = new Random(20270111);
        List<String> undo = new ArrayList<>(List.of("null"));
        List<String> redo = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            switch (random.nextInt(3)) {
                case 0 -> {
                    String text = "Note " + i;
                    demo.edit(ADA, demo.now().revision(), text, List.of(note("lead", text)));
                    undo.add(text);
                    redo.clear();
                }
                case 1 -> {
                    boolean done = demo.undo(ADA) instanceof Outcome.Accepted;
                    assertThat(done).as("undo at " + i).isEqualTo(undo.size() > 1);
                    if (done) {
                        redo.add(undo.removeLast());
                    }
                }
                default -> {
                    boolean done = demo.redo(ADA) instanceof Outcome.Accepted;
                    assertThat(done).as("redo at " + i).isEqualTo(!redo.isEmpty());
                    if (done) {
                        undo.add(redo.removeLast());
                    }
                }
            }
            assertThat(noteOf("lead")).as("step " + i).isEqualTo(undo.getLast());
        }
    }

    @Test
    void anyRevisionIsRestoredAndThatIsTakenBack() throws StoreException {
        Project first = demo.now().project();
        for (int i = 0; i < 30; i++) {
            demo.edit(ADA, demo.now().revision(), "Note", List.of(note("lead", "Note " + i)));
        }
        demo.edit(
                ADA,
                demo.now().revision(),
                "Switched off",
                List.of(new Change.Exempt(List.of(new Exemption("some-rule", null, "Agreed")))));
        Project last = demo.now().project();
        assertThat(demo.restore(BEN, demo.now().revision(), 1)).isInstanceOf(Outcome.Accepted.class);
        assertThat(demo.now().project()).isEqualTo(first);
        assertThat(demo.undo(BEN)).isInstanceOf(Outcome.Accepted.class);
        assertThat(demo.now().project()).isEqualTo(last);
        assertThat(demo.findAt(15)
                        .orElseThrow()
                        .project()
                        .people()
                        .get("lead")
                        .remarks()
                        .note())
                .isEqualTo("Note 13");
        assertThat(demo.findAt(999)).isEmpty();
        assertThat(demo.history(Long.MAX_VALUE, 2))
                .extracting(revision -> revision.what().step())
                .containsExactly(Step.UNDO, Step.RESTORE);
    }

    @Test
    void neitherRestoringNorAFileTakesAwayWhatOthersEditedSinceItWasLookedAt() throws StoreException {
        demo.edit(ADA, 1, "Note", List.of(note("lead", "Has the keys")));
        Project first = demo.findAt(1).orElseThrow().project();
        demo.edit(ADA, 2, "Note", List.of(note("lead", "Has the keys and the van")));
        for (Outcome outcome : List.of(demo.restore(BEN, 2, 1), demo.takeOver(BEN, 2, "File", first))) {
            assertThat(outcome)
                    .isInstanceOfSatisfying(
                            Outcome.Conflict.class,
                            conflict -> assertThat(conflict.clashes())
                                    .extracting(Clash::subject)
                                    .containsExactly("people.lead"));
        }
        assertThat(noteOf("lead")).isEqualTo("Has the keys and the van");
        assertThat(demo.takeOver(BEN, 3, "File", first)).isInstanceOf(Outcome.Accepted.class);
        assertThat(demo.now().project()).isEqualTo(first);
    }

    @Test
    void manyPeopleAtOnceLoseNothing() throws Exception {
        List<String> people = List.copyOf(demo.now().project().people().keySet());
        try (ExecutorService threads = Executors.newFixedThreadPool(people.size())) {
            List<Future<?>> done = new ArrayList<>();
            for (String person : people) {
                done.add(threads.submit(() -> {
                    for (int i = 0; i < 10; i++) {
                        Outcome outcome = demo.edit(
                                new Author(person, Role.LEAD),
                                demo.now().revision(),
                                "Note",
                                List.of(note(person, "Note " + i)));
                        assertThat(outcome).isInstanceOf(Outcome.Accepted.class);
                    }
                }));
            }
            for (Future<?> each : done) {
                each.get();
            }
        }
        assertThat(demo.now().revision()).isEqualTo(1 + 10L * people.size());
        for (String person : people) {
            assertThat(noteOf(person)).isEqualTo("Note 9");
        }
    }

    @Test
    void anEditSaysWhatBecomesOfFeedsAndFindings() {
        String cable = demo.now().project().cables().keySet().iterator().next();
        Outcome outcome = demo.edit(ADA, 1, "Out", List.of(new Change.Drop(Section.CABLES, cable)));
        assertThat(outcome).isInstanceOfSatisfying(Outcome.Accepted.class, accepted -> {
            Effect effect = accepted.effect();
            assertThat(effect.feeds().size() + effect.found().size()).isPositive();
            assertThat(effect.found())
                    .doesNotContainAnyElementsOf(
                            accepted.before().study().findings().due());
        });
    }

    @Test
    void watchersHearOfEachRevisionUntilTheyLeave() {
        List<Long> heard = new ArrayList<>();
        Runnable leave = demo.watch((before, now, step) -> heard.add(now.revision()));
        demo.edit(ADA, 1, "One", List.of(note("lead", "One")));
        leave.run();
        demo.edit(ADA, 2, "Two", List.of(note("lead", "Two")));
        assertThat(heard).containsExactly(2L);
    }

    @Test
    void anEmptyProjectBeginsWithItsNameWhateverThatIs() throws StoreException {
        for (String name : List.of("Mill Lane", "O'Brien: hall", "\"quoted\" # {not} yaml", "教会堂", "  spaced  ")) {
            OpenProject begun = projects.begin(name, ADA);
            assertThat(begun.now().project().about().name()).isEqualTo(name.strip());
            assertThat(begun.now().study().findings().stop()).isFalse();
        }
    }
}
