package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Look;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;
import housewright.model.About;
import housewright.model.AcceptedPlan;
import housewright.model.Exemption;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.PatchEntry;
import housewright.model.Practice;
import housewright.model.Ref;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Changes as text, for a journal that is read again years later: a JSON list of objects, one for each change, its values
 * as the project file has them. Reading what was written gives equal changes.
 */
public final class ChangeText {
    private static final String PUT = "put";
    private static final String DROP = "drop";
    private static final String ARRANGE = "arrange";
    private static final String PATCH = "patch";
    private static final String UNPATCH = "unpatch";
    private static final String REPATCH = "repatch";
    private static final String PAIR = "pair";
    private static final String PROJECT = "project";
    private static final String EXEMPT = "exempt";
    private static final String PLAN = "plan";
    private static final String RECKONED = "reckoned";
    private static final String BUDGET = "budget";
    private static final String PRACTICE = "practice";

    private ChangeText() {}

    /** On one line. */
    public static String write(List<Change> changes) {
        return JsonText.line(list(changes.stream().map(ChangeText::node).toList()));
    }

    /** @throws IllegalArgumentException where the text was not written by this class */
    public static List<Change> read(String text) {
        try {
            List<Change> changes = new ArrayList<>();
            for (Node each : sequence(JsonNodes.read(text))) {
                changes.add(change((Mapping) each));
            }
            return List.copyOf(changes);
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e.error("changes").text(), e);
        } catch (ClassCastException e) {
            throw new IllegalArgumentException("These are no changes: " + Shown.cut(text), e);
        }
    }

    private static Node node(Change change) {
        return switch (change) {
            case Change.Put put ->
                object(PUT, text(put.section().path()), "id", text(put.id()), "is", ModelNodes.of(put.entity()));
            case Change.Drop drop -> object(DROP, text(drop.section().path()), "id", text(drop.id()));
            case Change.Arrange arrange ->
                object(
                        ARRANGE,
                        text(arrange.section().path()),
                        "ids",
                        list(arrange.ids().stream().map(ChangeText::text).toList()));
            case Change.Patch patch -> object(PATCH, text(patch.device()), "entry", ModelNodes.of(patch.entry()));
            case Change.Unpatch unpatch ->
                object(
                        UNPATCH,
                        text(unpatch.device()),
                        "from",
                        text(unpatch.from().toString()),
                        "to",
                        text(unpatch.to().toString()));
            case Change.Repatch repatch ->
                object(
                        REPATCH,
                        text(repatch.device()),
                        "entries",
                        list(repatch.entries().stream().map(ModelNodes::of).toList()));
            case Change.Pair pair ->
                object(
                        PAIR,
                        text(pair.id()),
                        "channels",
                        list(pair.channels().stream()
                                .map(ref -> text(ref.text()))
                                .toList()));
            case Change.Describe describe -> object(PROJECT, ModelNodes.of(describe.about()));
            case Change.Reckon reckon -> reckoned(reckon);
            case Change.Accept accept -> object(PLAN, ModelNodes.of(accept.plan()));
            case Change.Exempt exempt ->
                object(
                        EXEMPT,
                        list(exempt.exemptions().stream().map(ModelNodes::of).toList()));
        };
    }

    private static Change change(Mapping node) {
        String kind = node.entries().getFirst().key().text();
        return switch (kind) {
            case PUT -> {
                Section section = section(string(node, PUT));
                String id = string(node, "id");
                yield new Change.Put(section, id, bound(section.type(), section.path(), id, needed(node, "is")));
            }
            case DROP -> new Change.Drop(section(string(node, DROP)), string(node, "id"));
            case ARRANGE -> new Change.Arrange(section(string(node, ARRANGE)), strings(node, "ids"));
            case PATCH ->
                new Change.Patch(
                        string(node, PATCH),
                        bound(PatchEntry.class, PATCH, string(node, PATCH), needed(node, "entry")));
            case UNPATCH ->
                new Change.Unpatch(string(node, UNPATCH), spot(string(node, "from")), spot(string(node, "to")));
            case REPATCH -> {
                List<PatchEntry> entries = new ArrayList<>();
                for (Node each : sequence(needed(node, "entries"))) {
                    entries.add(bound(PatchEntry.class, PATCH, string(node, REPATCH), each));
                }
                yield new Change.Repatch(string(node, REPATCH), entries);
            }
            case PAIR ->
                new Change.Pair(
                        string(node, PAIR),
                        strings(node, "channels").stream().map(Ref::parse).toList());
            case PROJECT -> new Change.Describe(bound(About.class, PROJECT, "", needed(node, PROJECT)));
            case RECKONED ->
                new Change.Reckon(
                        (housewright.model.Budget) whole(node, BUDGET, housewright.model.Budget.class),
                        (Practice) whole(node, PRACTICE, Practice.class));
            case PLAN -> new Change.Accept(bound(AcceptedPlan.class, PLAN, "", needed(node, PLAN)));
            case EXEMPT -> {
                List<Exemption> exemptions = new ArrayList<>();
                for (Node each : sequence(needed(node, EXEMPT))) {
                    exemptions.add(bound(Exemption.class, EXEMPT, "", each));
                }
                yield new Change.Exempt(exemptions);
            }
            default -> throw new IllegalArgumentException("There is no change called " + Shown.quoted(kind));
        };
    }

    /** What is not said is left out. */
    private static Node reckoned(Change.Reckon reckon) {
        List<Object> parts = new ArrayList<>(List.of(RECKONED, text("as follows")));
        if (reckon.budget() != null) {
            parts.addAll(List.of(BUDGET, ModelNodes.of(reckon.budget())));
        }
        if (reckon.practice() != null) {
            parts.addAll(List.of(PRACTICE, ModelNodes.of(reckon.practice())));
        }
        return object(parts.toArray());
    }

    private static @Nullable Object whole(Mapping node, String key, Class<?> type) {
        Node value = node.find(key);
        if (value == null) {
            return null;
        }
        Errors errors = new Errors();
        Object whole = new Binder(errors, new Budget()).whole(type, key, value);
        if (whole == null || !errors.isEmpty()) {
            throw new IllegalArgumentException(errors.list("changes").stream()
                    .map(FileError::text)
                    .findFirst()
                    .orElse(key));
        }
        return whole;
    }

    private static <T> T bound(Class<T> type, String section, String id, Node node) {
        Errors errors = new Errors();
        Object entity = new Binder(errors, new Budget()).entity(type, section, id, node);
        if (entity == null || !errors.isEmpty()) {
            throw new IllegalArgumentException(errors.list("changes").stream()
                    .map(FileError::text)
                    .findFirst()
                    .orElse(section + "." + id));
        }
        return type.cast(entity);
    }

    private static Section section(String path) {
        for (Section section : Section.values()) {
            if (section.path().equals(path)) {
                return section;
            }
        }
        throw new IllegalArgumentException("There is no section " + Shown.quoted(path));
    }

    private static Spot spot(String text) {
        return LocalRef.parse(text).spots().getFirst();
    }

    private static String string(Mapping node, String key) {
        return ((Scalar) needed(node, key)).text();
    }

    private static List<String> strings(Mapping node, String key) {
        return sequence(needed(node, key)).stream()
                .map(each -> ((Scalar) each).text())
                .toList();
    }

    private static List<Node> sequence(Node node) {
        return ((Sequence) node).items();
    }

    private static Node needed(Mapping node, String key) {
        @Nullable Node value = node.find(key);
        if (value == null) {
            throw new IllegalArgumentException("A change lacks " + Shown.quoted(key));
        }
        return value;
    }

    private static Node object(Object... keysAndValues) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            entries.add(new Entry(new Scalar((String) keysAndValues[i], Look.TEXT), (Node) keysAndValues[i + 1]));
        }
        return new Mapping(entries, Layout.COMPACT, Span.NONE);
    }

    private static Node list(List<? extends Node> items) {
        return new Sequence(List.copyOf(items), Layout.COMPACT, Span.NONE);
    }

    private static Node text(String text) {
        return new Scalar(text, Look.TEXT);
    }
}
