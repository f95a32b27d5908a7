package housewright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import housewright.app.Demo;
import housewright.library.BuiltInLibrary;
import housewright.model.Exemption;
import housewright.model.LocalRef;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ChangeTextTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(BuiltInLibrary.LATEST);
    private static final Project DEMO = read(Demo.bytes());

    private static Project read(byte[] bytes) {
        return ((ReadResult.Loaded) ProjectReader.read(Demo.FILE_NAME, bytes, LIBRARY)).project();
    }

    @Test
    void everyEntityOfTheDemoIsTheSameAfterAJourneyThroughText() {
        List<Change> changes = new ArrayList<>();
        for (Section section : Section.values()) {
            section.of(DEMO).forEach((id, entity) -> changes.add(new Change.Put(section, id, entity)));
        }
        DEMO.patch().forEach((device, entries) -> changes.add(new Change.Repatch(device, entries)));
        DEMO.pairs().forEach((id, channels) -> changes.add(new Change.Pair(id, channels)));
        changes.add(new Change.Describe(DEMO.about()));
        changes.add(new Change.Reckon(DEMO.budget(), DEMO.practice()));
        assertThat(ChangeText.read(ChangeText.write(changes))).isEqualTo(changes);
    }

    @Test
    void everyKindOfChangeIsReadBack() {
        PatchEntry entry = PatchEntry.ofText("ch-1 -> mix, aux-{1..4}");
        List<Change> changes = List.of(
                new Change.Drop(Section.CABLES, "C014"),
                new Change.Arrange(Section.CABLES, List.of("C015", "C014")),
                new Change.Patch("desk", entry),
                new Change.Unpatch("desk", new LocalRef.Spot("ch-1", null), new LocalRef.Spot("link", "3")),
                new Change.Repatch("desk", List.of(entry)),
                new Change.Repatch("desk", List.of()),
                new Change.Pair("mains", List.of(Ref.parse("desk.out-1"), Ref.parse("desk.out-2"))),
                new Change.Pair("mains", List.of()),
                new Change.Exempt(
                        List.of(new Exemption("cable-too-long", "cables.C014", "measured, and it \"works\""))));
        assertThat(ChangeText.read(ChangeText.write(changes))).isEqualTo(changes);
    }

    @Test
    void whatIsNoChangeIsRefused() {
        for (String text : List.of("", "{}", "[1]", "[{\"paint\": \"red\"}]", "[{\"put\": \"cables\"}]", "[{")) {
            assertThatThrownBy(() -> ChangeText.read(text)).as(text).isInstanceOfAny(IllegalArgumentException.class);
        }
    }

    /** Random edits, each undone by the difference back: the order of the entities, too, is as it was. */
    @Test
    void theDifferenceOfTwoProjectsMakesOneOfTheOtherBothWays() {
        for (int seed = 0; seed < 60; seed++) {
            Project changed = shuffled(DEMO, new Random(seed));
            List<Change> there = ChangeText.read(ChangeText.write(Change.between(DEMO, changed)));
            List<Change> back = ChangeText.read(ChangeText.write(Change.between(changed, DEMO)));
            assertSame("there, seed " + seed, Change.apply(DEMO, there), changed);
            assertSame("back, seed " + seed, Change.apply(changed, back), DEMO);
        }
    }

    private static void assertSame(String as, Project found, Project expected) {
        assertThat(found).as(as).isEqualTo(expected);
        for (Section section : Section.values()) {
            assertThat(List.copyOf(section.of(found).keySet()))
                    .as(section.path() + " " + as)
                    .isEqualTo(List.copyOf(section.of(expected).keySet()));
        }
    }

    private static Project shuffled(Project project, Random random) {
        Project changed = project;
        for (int i = 0; i < 6; i++) {
            Section section = Section.values()[random.nextInt(Section.values().length)];
            List<String> ids = new ArrayList<>(section.of(changed).keySet());
            if (ids.isEmpty()) {
                continue;
            }
            String id = ids.get(random.nextInt(ids.size()));
            Record entity = section.of(changed).get(id);
            Change change = switch (random.nextInt(4)) {
                case 0 -> new Change.Drop(section, id);
                case 1 -> new Change.Put(section, id + "-b", copy(section, id + "-b", entity));
                case 2 -> {
                    Collections.shuffle(ids, random);
                    yield new Change.Arrange(section, ids);
                }
                default -> patch(changed, random);
            };
            changed = Change.apply(changed, List.of(change));
        }
        return changed;
    }

    private static Record copy(Section section, String id, Record entity) {
        EntityCells.Reading reading = EntityCells.read(section, id, null, EntityCells.of(entity));
        return ((EntityCells.Reading.Read) reading).entity();
    }

    private static Change patch(Project project, Random random) {
        List<String> devices = List.copyOf(project.patch().keySet());
        String device = devices.get(random.nextInt(devices.size()));
        List<PatchEntry> entries = project.patch().get(device);
        PatchEntry entry = entries.get(random.nextInt(entries.size()));
        var pair = entry.join().pairs().getFirst();
        return random.nextBoolean()
                ? new Change.Unpatch(device, pair.from(), pair.to())
                : new Change.Patch(device, PatchEntry.ofText("spare-" + random.nextInt(9) + " -> " + pair.to()));
    }

    @Test
    void theBudgetAndTheCompanysPracticeGoAlongToo() {
        String bare = "housewright: 1\nproject: {name: A job}\n";
        Project none = read(bare.getBytes(StandardCharsets.UTF_8));
        Project both = read((bare + "budget: {limit: 5000}\npractice: {steps: 3 m, labour: {mount-rack:"
                        + " {per: piece, least: 1 h, likely: 2 h, most: 3 h, source: our own records}}}\n")
                .getBytes(StandardCharsets.UTF_8));
        assertThat(both.budget()).isNotNull();
        assertThat(both.practice()).isNotNull();
        for (List<Project> pair : List.of(List.of(none, both), List.of(both, none), List.of(DEMO, both))) {
            List<Change> changes = ChangeText.read(ChangeText.write(Change.between(pair.getFirst(), pair.getLast())));
            assertSame("there", Change.apply(pair.getFirst(), changes), pair.getLast());
        }
    }

    @Test
    void noDifferenceIsNoChange() {
        assertThat(Change.between(DEMO, read(Demo.bytes()))).isEmpty();
    }
}
