package housewright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import housewright.app.ProjectStore.Appended;
import housewright.app.ProjectStore.Attachment;
import housewright.app.ProjectStore.Entrance;
import housewright.app.ProjectStore.Kept;
import housewright.app.ProjectStore.NewRevision;
import housewright.app.ProjectStore.Printed;
import housewright.app.ProjectStore.Revision;
import housewright.app.ProjectStore.Saved;
import housewright.app.ProjectStore.ShareLink;
import housewright.app.ProjectStore.Stationery;
import housewright.app.ProjectStore.Step;
import housewright.app.ProjectStore.StepTaken;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every store of projects does. A store joins by a subclass that opens it. */
public abstract class ProjectStoreContract {
    protected static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    /** Characters that storage has been known to change: quotes, line ends, zero, beyond the basic plane, combining. */
    private static final String AWKWARD = "a'b\"c\r\n\td\0e :f ?g %h é e\u0301 漢字 \uD83C\uDFB9 \uFEFF end ";

    protected ProjectStore store;

    /** Opens the same place each time, empty before the first. */
    protected abstract ProjectStore open() throws StoreException;

    @BeforeEach
    void openStore() throws StoreException {
        store = open();
    }

    @AfterEach
    void closeStore() {
        store.close();
    }

    private void reopen() throws StoreException {
        store.close();
        store = open();
    }

    protected static NewRevision step(Step step, int number) {
        return new NewRevision(
                "Ines Aguirre",
                START.plusMillis(number * 1_500L),
                step,
                step == Step.UNDO ? number - 1 : 0,
                "step " + number,
                "changes " + number,
                "back " + number);
    }

    protected static String document(long number) {
        return "document at " + number;
    }

    /** Begins a project and appends until its head is this. */
    protected static Kept project(ProjectStore store, String name, int head) throws StoreException {
        Kept kept = store.create(name, null, step(Step.BEGIN, 1), document(1));
        append(store, kept.id(), 1, head);
        return kept;
    }

    private static void append(ProjectStore store, String project, int head, int upTo) throws StoreException {
        for (int number = head + 1; number <= upTo; number++) {
            String text = document(number);
            assertThat(store.append(project, number - 1, step(Step.EDIT, number), () -> text))
                    .isEqualTo(new Appended.Done(number));
        }
    }

    private static List<Long> numbers(List<Revision> revisions) {
        return revisions.stream().map(Revision::number).toList();
    }

    @Test
    void newStoreIsEmptyAndCanBeWritten() throws StoreException {
        assertThat(store.listProjects()).isEmpty();
        assertThat(store.listLinks()).isEmpty();
        assertThat(store.listEntrances()).isEmpty();
        assertThat(store.listBackups()).isEmpty();
        assertThat(store.isReadOnly()).isFalse();
        assertThat(store.listRemarks()).isEmpty();
        assertThat(store.findNewest("hall")).isEmpty();
        assertThat(store.findAt("hall", 1)).isEmpty();
        assertThat(store.findAttachment("hall", "x")).isEmpty();
        assertThat(store.findContent("hall", "x")).isEmpty();
    }

    @Test
    void projectBegunIsThereAfterReopening() throws StoreException {
        NewRevision first = step(Step.IMPORT, 1);
        Kept kept = store.create("The Old Granary", "granary.yaml", first, "text");
        assertThat(kept).isEqualTo(new Kept("the-old-granary", "The Old Granary", "granary.yaml", 1, first.at()));
        reopen();
        assertThat(store.listProjects()).containsExactly(kept);
        assertThat(store.findNewest(kept.id())).contains(new Saved(1, "text", List.of()));
        assertThat(store.listRevisions(kept.id(), Long.MAX_VALUE, 10)).containsExactly(new Revision(1, first));
    }

    @Test
    void textsComeBackCharacterForCharacter() throws StoreException {
        NewRevision step = new NewRevision(AWKWARD, START.plusNanos(123_456_789), Step.EDIT, 0, AWKWARD, AWKWARD, "");
        Kept kept = store.create(AWKWARD, AWKWARD, step, AWKWARD);
        store.append(kept.id(), 1, step, () -> "unused");
        byte[] content = AWKWARD.getBytes(StandardCharsets.UTF_8);
        Attachment attachment = store.attach(kept.id(), AWKWARD, "text/plain", content, AWKWARD, step.at());
        reopen();
        assertThat(store.listProjects()).containsExactly(new Kept(kept.id(), AWKWARD, AWKWARD, 2, step.at()));
        assertThat(store.findNewest(kept.id())).contains(new Saved(1, AWKWARD, List.of(new Revision(2, step))));
        assertThat(store.findAttachment(kept.id(), attachment.id())).contains(attachment);
        assertThat(store.findContent(kept.id(), attachment.id())).hasValue(content);
    }

    @Test
    void everyStepKeepsItsKind() throws StoreException {
        Kept kept = store.create("Hall", null, step(Step.BEGIN, 1), "text");
        List<Revision> taken = new ArrayList<>();
        for (Step each : Step.values()) {
            int number = taken.size() + 2;
            taken.add(new Revision(number, step(each, number)));
            store.append(kept.id(), number - 1, step(each, number), () -> "text");
        }
        assertThat(store.listSince(kept.id(), 1)).isEqualTo(taken);
    }

    @Test
    void projectsAreListedWithTheLastChangedFirst() throws StoreException {
        Kept older = store.create("A", null, step(Step.BEGIN, 0), "text"); // a full second
        Kept newer = store.create("B", null, step(Step.BEGIN, 1), "text"); // half a second more than the next
        assertThat(store.listProjects()).containsExactly(newer, older);
        store.append(older.id(), 1, step(Step.EDIT, 2), () -> "text");
        assertThat(store.listProjects()).extracting(Kept::id).containsExactly("a", "b");
    }

    @ParameterizedTest(name = "{0} gives {1}")
    @CsvSource(delimiter = '|', textBlock = """
                    Carrow Fenn Hall            | carrow-fenn-hall
                    --  St. Bríd’s, north --    | st-brid-s-north
                    Große Straße / Æbelø Łódź   | grosse-strasse-aebelo-lodz
                    KILKIS ISTANBUL İZMİR       | kilkis-istanbul-izmir
                    Зал                         | project
                    礼拝堂 2                    | project-2
                    2026                        | project-2026
                    ﬁne Ⓗall ｆｕｌｌ            | fine-hall-full
                    !?                          | project
                    '   '                       | project
                    abcdefghijklmnopqrstuvwxyz abcdefghijklm nopqrstuvwxyz | abcdefghijklmnopqrstuvwxyz-abcdefghijklm
                    """)
    void idIsMadeFromTheName(String name, String id) throws StoreException {
        assertThat(project(store, name, 1).id()).isEqualTo(id);
    }

    @Test
    void idsAreUnique() throws StoreException {
        List<String> names = List.of("Hall", "hall", "HALL!", "Hall 2", "Зал", "Ναός", "Hall");
        List<String> ids = new ArrayList<>();
        for (String name : names) {
            ids.add(project(store, name, 1).id());
        }
        assertThat(ids).containsExactly("hall", "hall-2", "hall-3", "hall-2-2", "project", "project-2", "hall-4");
    }

    @Test
    void renamingKeepsTheIdAndTheHistory() throws StoreException {
        Kept kept = project(store, "Hall", 3);
        store.rename(kept.id(), "Chapel");
        assertThat(store.listProjects()).singleElement().satisfies(renamed -> {
            assertThat(renamed.name()).isEqualTo("Chapel");
            assertThat(renamed.id()).isEqualTo("hall");
            assertThat(renamed.head()).isEqualTo(3);
        });
    }

    @Test
    void removingTakesOneProjectAndAllOfIt() throws StoreException {
        Kept gone = project(store, "Hall", 110);
        Kept stays = project(store, "Chapel", 2);
        byte[] content = {1, 2, 3};
        String attached = store.attach(gone.id(), "a", "image/png", content, "Ines", START)
                .id();
        store.attach(stays.id(), "a", "image/png", content, "Ines", START);
        store.see(gone.id(), "Ines", 2);
        store.keepPrinted(gone.id(), "p", List.of(new Printed("p", "s", "S", "hash", 2, "Ines", START)));
        store.remove(gone.id(), START);
        assertThat(store.listProjects()).extracting(Kept::id).containsExactly(stays.id());
        assertThat(store.findNewest(gone.id())).isEmpty();
        assertThat(store.findContent(gone.id(), attached)).isEmpty();
        assertThat(store.findContent(stays.id(), attached)).hasValue(content);
        assertThat(store.listBackups()).hasSize(1);

        Kept again = project(store, "Hall", 1);
        assertThat(again.id()).isEqualTo(gone.id());
        assertThat(store.listSince(again.id(), 0)).hasSize(1);
        assertThat(store.lastSeen(again.id(), "Ines")).isZero();
        assertThat(store.listPrinted(again.id())).isEmpty();
        assertThat(store.findAttachment(again.id(), attached)).isEmpty();
    }

    @Test
    void whatIsNotThereIsSaid() {
        String why = "There is no project nowhere any more.";
        assertThatExceptionOfType(StoreException.class)
                .isThrownBy(() -> store.append("nowhere", 1, step(Step.EDIT, 2), () -> "text"))
                .withMessage(why);
        assertThatThrownBy(() -> store.rename("nowhere", "x")).hasMessage(why);
        assertThatThrownBy(() -> store.remove("nowhere", START)).hasMessage(why);
        assertThatThrownBy(() -> store.listRevisions("nowhere", 5, 5)).hasMessage(why);
        assertThatThrownBy(() -> store.listSince("nowhere", 0)).hasMessage(why);
        assertThatThrownBy(() -> store.see("nowhere", "Ines", 1)).hasMessage(why);
        assertThatThrownBy(() -> store.lastSeen("nowhere", "Ines")).hasMessage(why);
        assertThatThrownBy(() -> store.attach("nowhere", "a", "b", new byte[1], "Ines", START))
                .hasMessage(why);
        assertThatThrownBy(() -> store.revokeLink("nowhere")).isInstanceOf(StoreException.class);
    }

    @Test
    void appendingToAnOldHeadWritesNothing() throws StoreException {
        Kept kept = project(store, "Hall", 3);
        for (long head : new long[] {-1, 0, 1, 2, 4, 100}) {
            assertThat(store.append(kept.id(), head, step(Step.EDIT, 9), () -> "text"))
                    .isEqualTo(new Appended.Moved(3));
        }
        assertThat(numbers(store.listSince(kept.id(), 0))).containsExactly(1L, 2L, 3L);
    }

    @ParameterizedTest(name = "{0} revisions")
    @ValueSource(ints = {1, 2, 100, 101, 202})
    void anyRevisionCanBeWorkedOutFromAFullTextAndTheStepsAfterIt(int head) throws StoreException {
        Kept kept = project(store, "Hall", head);
        assertThat(store.findNewest(kept.id())).isEqualTo(store.findAt(kept.id(), head));
        for (int revision = 1; revision <= head; revision++) {
            Saved saved = store.findAt(kept.id(), revision).orElseThrow();
            assertThat(saved.revision()).isBetween(1L, (long) revision);
            assertThat(saved.document()).isEqualTo(document(saved.revision()));
            assertThat(numbers(saved.since()))
                    .isEqualTo(LongStream.rangeClosed(saved.revision() + 1, revision)
                            .boxed()
                            .toList());
        }
        assertThat(store.findAt(kept.id(), 0)).isEmpty();
        assertThat(store.findAt(kept.id(), -1)).isEmpty();
        assertThat(store.findAt(kept.id(), head + 1)).isEmpty();
    }

    @Test
    void stepsToDoAgainStayFewHoweverLongTheHistory() throws StoreException {
        Kept kept = project(store, "Hall", 230);
        assertThat(store.findNewest(kept.id()).orElseThrow().since()).hasSizeLessThan(150);
    }

    @Test
    void appendThatCannotWriteItsDocumentKeepsNothing() throws StoreException {
        Kept kept = project(store, "Hall", 1);
        int number = 1;
        while (number < 1000) { // until a full text is due
            int next = number + 1;
            try {
                store.append(kept.id(), number, step(Step.EDIT, next), () -> {
                    throw new IllegalStateException("cannot be written");
                });
                number = next;
            } catch (IllegalStateException e) {
                break;
            }
        }
        assertThat(number).as("a full text was asked for").isLessThan(1000);
        assertThat(store.listProjects()).extracting(Kept::head).containsExactly((long) number);
        append(store, kept.id(), number, number + 1);
    }

    @Test
    void historyIsReadInPagesAndFromARevisionOn() throws StoreException {
        Kept kept = project(store, "Hall", 10);
        project(store, "Chapel", 20);
        assertThat(numbers(store.listRevisions(kept.id(), Long.MAX_VALUE, 3))).containsExactly(10L, 9L, 8L);
        assertThat(numbers(store.listRevisions(kept.id(), 8, 3))).containsExactly(7L, 6L, 5L);
        assertThat(numbers(store.listRevisions(kept.id(), 3, 30))).containsExactly(2L, 1L);
        assertThat(store.listRevisions(kept.id(), 1, 3)).isEmpty();
        assertThat(store.listRevisions(kept.id(), 8, 0)).isEmpty();
        assertThat(numbers(store.listSince(kept.id(), 7))).containsExactly(8L, 9L, 10L);
        assertThat(store.listSince(kept.id(), 10)).isEmpty();
    }

    @Test
    void eachPersonHasSeenTheNewestTheyLookedAt() throws StoreException {
        Kept kept = project(store, "Hall", 9);
        assertThat(store.lastSeen(kept.id(), "Ines")).isZero();
        store.see(kept.id(), "Ines", 5);
        store.see(kept.id(), "Ines", 3);
        store.see(kept.id(), "Tom", 2);
        reopen();
        assertThat(store.lastSeen(kept.id(), "Ines")).isEqualTo(5);
        assertThat(store.lastSeen(kept.id(), "Tom")).isEqualTo(2);
        store.see(kept.id(), "Ines", 8);
        assertThat(store.lastSeen(kept.id(), "Ines")).isEqualTo(8);
    }

    @Test
    void sameContentIsKeptOnceUnderItsFirstName() throws StoreException {
        Kept kept = project(store, "Hall", 1);
        byte[] content = new byte[300_000];
        new Random(7).nextBytes(content);
        Attachment first = store.attach(kept.id(), "rack.jpg", "image/jpeg", content, "Ines", START);
        Attachment second = store.attach(kept.id(), "copy.jpg", "image/jpeg", content.clone(), "Tom", START);
        assertThat(second).isEqualTo(first);
        assertThat(first.bytes()).isEqualTo(300_000);
        Attachment empty = store.attach(kept.id(), "empty", "text/plain", new byte[0], "Tom", START);
        assertThat(empty.id()).isNotEqualTo(first.id());
        assertThat(store.findContent(kept.id(), empty.id())).hasValue(new byte[0]);
        reopen();
        assertThat(store.findContent(kept.id(), first.id())).hasValue(content);
        assertThat(store.findContent(kept.id(), "another")).isEmpty();
    }

    @Test
    void stepsComeWithoutTheirChangesAndOnlyThoseSince() throws StoreException {
        Kept kept = project(store, "Hall", 3);
        List<StepTaken> all = store.listSteps(kept.id(), 0);
        assertThat(all)
                .isEqualTo(store.listSince(kept.id(), 0).stream()
                        .map(each -> new StepTaken(
                                each.number(),
                                each.what().author(),
                                each.what().step(),
                                each.what().of()))
                        .toList())
                .hasSize(3);
        assertThat(store.listSteps(kept.id(), 2)).containsExactly(all.getLast());
        assertThat(store.listSteps(kept.id(), 3)).isEmpty();
    }

    @Test
    void whatIsPrintedOnIsKeptForEachPersonAndProject() throws StoreException {
        Kept kept = project(store, "Hall", 1);
        Kept other = project(store, "Chapel", 1);
        store.keepStationery(kept.id(), "Ines", new Stationery("a4", "a4-44"));
        store.keepStationery(kept.id(), "Tom", new Stationery("letter", "letter-30"));
        store.keepStationery(kept.id(), "Ines", new Stationery("a4", "tape-12"));
        reopen();
        assertThat(store.findStationery(kept.id(), "Ines")).hasValue(new Stationery("a4", "tape-12"));
        assertThat(store.findStationery(kept.id(), "Tom")).hasValue(new Stationery("letter", "letter-30"));
        assertThat(store.findStationery(other.id(), "Ines")).isEmpty();
        store.remove(kept.id(), START);
        Kept again = project(store, "Hall", 1);
        assertThat(again.id()).isEqualTo(kept.id());
        assertThat(store.findStationery(again.id(), "Ines")).isEmpty();
    }

    @Test
    void whatWasPrintedIsKeptByPaperUntilItIsPrintedAgain() throws StoreException {
        Kept kept = project(store, "Hall", 3);
        Kept other = project(store, "Chapel", 1);
        Printed north = new Printed("pulling", "north", "North", "hash-a", 2, "Ines", START);
        Printed south = new Printed("pulling", "south", "South", "hash-b", 2, "Ines", START);
        Printed cables = new Printed("cables", "all", "Cables", "hash-c", 3, "Tom", START.plusMillis(1));
        store.keepPrinted(kept.id(), "pulling", List.of(south, north));
        store.keepPrinted(kept.id(), "cables", List.of(cables));
        reopen();
        assertThat(store.listPrinted(kept.id())).containsExactly(cables, north, south);
        assertThat(store.listPrinted(other.id())).isEmpty();
        Printed again = new Printed("pulling", "north", "North", "hash-d", 3, "Tom", START.plusMillis(2));
        store.keepPrinted(kept.id(), "pulling", List.of(again));
        store.keepPrinted(kept.id(), "cables", List.of());
        reopen();
        assertThat(store.listPrinted(kept.id())).containsExactly(again);
        assertThatThrownBy(() -> store.keepPrinted("nowhere", "pulling", List.of(again)))
                .hasMessage("There is no project nowhere any more.");
    }

    @Test
    void whoCameInIsKeptUntilForgotten() throws StoreException {
        Entrance lead = new Entrance("hash-a", "Ines", Role.LEAD, null, START);
        Entrance helper = new Entrance("hash-b", "Tom", Role.HELPER, "site", START.plusMillis(1));
        store.keepEntrance(lead);
        store.keepEntrance(helper);
        reopen();
        assertThat(store.listEntrances()).containsExactly(helper, lead);
        Entrance seenAgain = new Entrance("hash-a", "Ines", Role.LEAD, null, START.plusSeconds(5));
        store.keepEntrance(seenAgain);
        store.forgetEntrances(List.of("hash-b", "hash-of-nobody"));
        reopen();
        assertThat(store.listEntrances()).containsExactly(seenAgain);
    }

    @Test
    void revokedLinkStaysRevoked() throws StoreException {
        ShareLink lead = new ShareLink("a", "hash-a", Role.LEAD, "Ines", START, false);
        ShareLink helper = new ShareLink("b", "hash-b", Role.HELPER, "Tom", START.plusMillis(1), false);
        ShareLink viewer = new ShareLink("c", "hash-c", Role.VIEWER, "Ada", START.plusMillis(2), true);
        for (ShareLink each : List.of(lead, helper, viewer)) {
            store.addLink(each);
        }
        store.revokeLink("b");
        store.revokeLink("b");
        assertThatThrownBy(() -> store.addLink(helper)).isInstanceOf(StoreException.class);
        reopen();
        assertThat(store.listLinks())
                .containsExactly(
                        viewer, new ShareLink("b", "hash-b", Role.HELPER, "Tom", START.plusMillis(1), true), lead);
    }

    @Test
    void backupsAreListedNewestFirst() throws StoreException {
        project(store, "Hall", 5);
        ProjectStore.Backup first = store.backUp(START);
        ProjectStore.Backup second = store.backUp(START.plusSeconds(60));
        ProjectStore.Backup same = store.backUp(START.plusSeconds(60));
        assertThat(store.listBackups()).containsExactlyInAnyOrder(first, second, same);
        assertThat(store.listBackups().getLast()).isEqualTo(first);
        assertThat(first.at()).isEqualTo(START);
        assertThat(first.bytes()).isPositive();
        assertThat(first.file()).hasSize(first.bytes());
    }

    @Test
    void backupIsDueADayAfterTheLastWhereSomethingWasChanged() throws StoreException {
        assertThat(store.backUpIfDue(START)).as("nothing to keep").isEmpty();
        Kept kept = project(store, "Hall", 1);
        Instant tomorrow = START.plus(Duration.ofHours(25));
        assertThat(store.backUpIfDue(START)).isPresent();
        assertThat(store.backUpIfDue(tomorrow)).as("nothing changed").isEmpty();
        append(store, kept.id(), 1, 2);
        assertThat(store.backUpIfDue(START.plus(Duration.ofHours(23))))
                .as("too soon")
                .isEmpty();
        assertThat(store.backUpIfDue(tomorrow)).isPresent();
        assertThat(store.listBackups()).hasSize(2);
    }

    @Test
    void everyAcknowledgedStepOfManyThreadsIsThere() throws Exception {
        Kept kept = project(store, "Hall", 1);
        int threads = 8;
        int each = 60;
        Map<Long, String> acknowledged = new LinkedHashMap<>();
        for (Map<Long, String> part :
                together(IntStream.range(0, threads).mapToObj(thread -> appending(kept.id(), thread, each)))) {
            part.forEach((number, says) -> assertThat(acknowledged.put(number, says))
                    .as("acknowledged once")
                    .isNull());
        }
        reopen();
        List<Revision> revisions = store.listSince(kept.id(), 1);
        assertThat(numbers(revisions))
                .isEqualTo(LongStream.rangeClosed(2, 1 + (long) threads * each)
                        .boxed()
                        .toList());
        assertThat(revisions)
                .allSatisfy(
                        revision -> assertThat(revision.what().says()).isEqualTo(acknowledged.get(revision.number())));
    }

    /** Appends so many, again on the newer head each time that somebody else was quicker. */
    private Callable<Map<Long, String>> appending(String project, int thread, int count) {
        return () -> {
            Map<Long, String> acknowledged = new LinkedHashMap<>();
            long head = 1;
            while (acknowledged.size() < count) {
                String says = "thread " + thread + " step " + acknowledged.size();
                NewRevision step = new NewRevision("Ines", START, Step.EDIT, 0, says, "changes", "back");
                switch (store.append(project, head, step, () -> "text")) {
                    case Appended.Done done -> {
                        acknowledged.put(done.revision(), says);
                        head = done.revision();
                    }
                    case Appended.Moved moved -> {
                        assertThat(moved.head()).isNotEqualTo(head);
                        head = moved.head();
                    }
                }
            }
            return acknowledged;
        };
    }

    @Test
    void readersSeeWholeStatesWhileOthersWriteAndBackUp() throws Exception {
        Kept kept = project(store, "Hall", 90);
        Callable<Integer> writing = () -> {
            append(store, kept.id(), 90, 230);
            return 0;
        };
        Callable<Integer> backingUp = () -> {
            for (int number = 0; number < 3; number++) {
                store.backUp(START.plusSeconds(number));
            }
            return 0;
        };
        Callable<Integer> reading = () -> {
            long seen = 0;
            while (seen < 230) {
                Saved saved = store.findNewest(kept.id()).orElseThrow();
                assertThat(saved.document()).isEqualTo(document(saved.revision()));
                long head = saved.revision() + saved.since().size();
                assertThat(numbers(saved.since()))
                        .isEqualTo(LongStream.rangeClosed(saved.revision() + 1, head)
                                .boxed()
                                .toList());
                assertThat(head).isGreaterThanOrEqualTo(seen);
                seen = head;
            }
            return 0;
        };
        together(Stream.of(reading, reading, writing, backingUp));
        assertThat(store.listBackups()).hasSize(3);
    }

    private static <T> List<T> together(Stream<Callable<T>> tasks) throws Exception {
        List<Callable<T>> all = tasks.toList();
        CountDownLatch ready = new CountDownLatch(all.size());
        try (ExecutorService threads = Executors.newFixedThreadPool(all.size())) {
            List<Future<T>> futures = new ArrayList<>();
            for (Callable<T> each : all) {
                futures.add(threads.submit(() -> {
                    ready.countDown();
                    ready.await();
                    return each.call();
                }));
            }
            List<T> results = new ArrayList<>();
            for (Future<T> each : futures) {
                results.add(each.get());
            }
            return results;
        }
    }

    @Test
    void secondOpeningOfTheSamePlaceSeesWhatTheFirstAcknowledged() throws StoreException {
        Kept kept = project(store, "Hall", 2);
        try (ProjectStore other = open()) {
            assertThat(other.append(kept.id(), 2, step(Step.EDIT, 3), () -> "text"))
                    .isEqualTo(new Appended.Done(3));
        }
        assertThat(store.append(kept.id(), 2, step(Step.EDIT, 3), () -> "text")).isEqualTo(new Appended.Moved(3));
    }

    @Test
    void closedStoreSaysSo() {
        store.close();
        assertThatThrownBy(() -> store.listProjects()).isInstanceOf(StoreException.class);
        store.close();
    }
}
