package housewright.demo;

import housewright.model.Join;
import housewright.model.LocalRef;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is put wrong in a project that is sound.
 *
 * @param replace words of the file, each found there once, and what stands there instead
 * @param drop section and id of what is taken away
 * @param patch joins set in a device besides
 * @param unpatch joins no longer set in a device
 */
public record Damage(
        Map<String, String> replace,
        List<String> drop,
        Map<String, List<String>> patch,
        Map<String, List<String>> unpatch) {

    /** From an entry of a file of breaks or mistakes. */
    static Damage of(Map<?, ?> each) {
        return new Damage(
                words(each.get("replace")),
                list(each.get("drop")),
                lists(each.get("patch")),
                lists(each.get("unpatch")));
    }

    static Map<String, String> words(Object map) {
        Map<String, String> words = new LinkedHashMap<>();
        if (map != null) {
            ((Map<?, ?>) map).forEach((key, value) -> words.put((String) key, value == null ? "" : (String) value));
        }
        return words;
    }

    static List<String> list(Object value) {
        return switch (value) {
            case null -> List.of();
            case List<?> several -> several.stream().map(String.class::cast).toList();
            default -> List.of((String) value);
        };
    }

    private static Map<String, List<String>> lists(Object map) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        if (map != null) {
            ((Map<?, ?>) map).forEach((key, value) -> lists.put((String) key, list(value)));
        }
        return lists;
    }

    /** The project of a file with this put wrong; an error where that changes nothing. */
    Project in(String text) {
        Project before = Demo.read(replaced(text));
        for (String gone : drop) {
            if (!section(gone).of(before).containsKey(id(gone))) {
                throw new AssertionError("There is no " + gone + " to drop");
            }
        }
        Project after = Change.apply(before, changes());
        if (replace.isEmpty() && after.equals(before)) {
            throw new AssertionError("Nothing is changed");
        }
        return after;
    }

    /** The text with its words replaced. */
    String replaced(String text) {
        String changed = text;
        for (Map.Entry<String, String> each : replace.entrySet()) {
            int first = changed.indexOf(each.getKey());
            if (first < 0 || changed.indexOf(each.getKey(), first + 1) >= 0) {
                throw new AssertionError("\"" + each.getKey() + "\" must stand once in the file");
            }
            changed = changed.substring(0, first)
                    + each.getValue()
                    + changed.substring(first + each.getKey().length());
        }
        return changed;
    }

    /** Both, this one first. */
    Damage and(Damage other) {
        Map<String, String> words = new LinkedHashMap<>(replace);
        words.putAll(other.replace);
        List<String> gone = new ArrayList<>(drop);
        gone.addAll(other.drop);
        return new Damage(words, gone, joined(patch, other.patch), joined(unpatch, other.unpatch));
    }

    private static Map<String, List<String>> joined(Map<String, List<String>> one, Map<String, List<String>> other) {
        Map<String, List<String>> joined = new LinkedHashMap<>();
        one.forEach((device, joins) -> joined.put(device, new ArrayList<>(joins)));
        other.forEach((device, joins) ->
                joined.computeIfAbsent(device, each -> new ArrayList<>()).addAll(joins));
        return joined;
    }

    /** Whether the two change the same words or take away the same thing. */
    boolean touches(Damage other) {
        return replace.keySet().stream()
                        .anyMatch(word -> other.replace.keySet().stream()
                                .anyMatch(each -> each.contains(word) || word.contains(each)))
                || drop.stream().anyMatch(other.drop::contains);
    }

    private List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        for (String gone : drop) {
            changes.add(new Change.Drop(section(gone), id(gone)));
        }
        unpatch.forEach((device, joins) -> {
            for (String join : joins) {
                for (Join.Pair pair : Join.parse(join).pairs()) {
                    changes.add(new Change.Unpatch(device, pair.from(), pair.to()));
                }
            }
        });
        patch.forEach((device, joins) -> {
            for (String join : joins) {
                for (Join.Pair pair : Join.parse(join).pairs()) {
                    LocalRef from = LocalRef.parse(pair.from().toString());
                    LocalRef to = LocalRef.parse(pair.to().toString());
                    changes.add(
                            new Change.Patch(device, new PatchEntry(from, List.of(to), null, null, null, null, null)));
                }
            }
        });
        return changes;
    }

    private static Section section(String path) {
        String section = path.substring(0, path.lastIndexOf('.'));
        return Arrays.stream(Section.values())
                .filter(each -> each.path().equals(section))
                .findFirst()
                .orElseThrow(() -> new AssertionError("There is no section " + section));
    }

    private static String id(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}
