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
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * One thing put wrong in the demo, and what must be said of it.
 *
 * @param replace words of the file, each found there once, and what stands there instead
 * @param drop section and id of what is taken away
 * @param patch joins set in a device besides
 * @param unpatch joins no longer set in a device
 * @param feeds the feeds that are no longer proven, and how; all others are
 * @param look the feed looked at closely
 * @param at places where it stops, each of them right; for a never-feed that arrives, places of which one is on its way
 * @param why a word of the reason; for a never-feed that arrives, of its way
 * @param mend words of what a person would do, to be among the mends; null where anything that mends will do
 * @param noMend why none may be offered; null where one must be
 */
record SeededBreak(
        String name,
        Map<String, String> replace,
        List<String> drop,
        Map<String, List<String>> patch,
        Map<String, List<String>> unpatch,
        Map<String, String> feeds,
        String look,
        List<String> at,
        String why,
        String mend,
        String noMend) {

    static List<SeededBreak> all() {
        String text = Demo.text("/housewright/breaks/breaks.yaml");
        Map<?, ?> document = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(text);
        List<SeededBreak> all = new ArrayList<>();
        for (Object each : (List<?>) document.get("breaks")) {
            all.add(of((Map<?, ?>) each));
        }
        return all;
    }

    private static SeededBreak of(Map<?, ?> each) {
        Map<String, String> feeds = words(each.get("feeds"));
        return new SeededBreak(
                (String) each.get("name"),
                words(each.get("replace")),
                list(each.get("drop")),
                lists(each.get("patch")),
                lists(each.get("unpatch")),
                feeds,
                each.containsKey("look")
                        ? (String) each.get("look")
                        : feeds.keySet().iterator().next(),
                list(each.get("at")),
                (String) each.get("why"),
                (String) each.get("mend"),
                (String) each.get("no-mend"));
    }

    static Map<String, String> words(Object map) {
        Map<String, String> words = new LinkedHashMap<>();
        if (map != null) {
            ((Map<?, ?>) map).forEach((key, value) -> words.put((String) key, value == null ? "" : (String) value));
        }
        return words;
    }

    private static List<String> list(Object value) {
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

    /** The demo with this put wrong. */
    Project made() {
        Project before = Demo.read(replaced(Demo.TEXT, name, replace));
        Project after = Change.apply(before, changes());
        for (String gone : drop) {
            if (!section(gone).of(before).containsKey(id(gone))) {
                throw new AssertionError(name + ": there is no " + gone + " to drop");
            }
        }
        boolean changed = !after.equals(before) || !replace.isEmpty();
        if (!changed) {
            throw new AssertionError(name + ": nothing is changed");
        }
        return after;
    }

    /** A text with words replaced, each of which must stand in it once. */
    static String replaced(String text, String name, Map<String, String> replace) {
        String changed = text;
        for (Map.Entry<String, String> each : replace.entrySet()) {
            int first = changed.indexOf(each.getKey());
            if (first < 0 || changed.indexOf(each.getKey(), first + 1) >= 0) {
                throw new AssertionError(name + ": \"" + each.getKey() + "\" must stand once in the file");
            }
            changed = changed.substring(0, first)
                    + each.getValue()
                    + changed.substring(first + each.getKey().length());
        }
        return changed;
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

    @Override
    public String toString() {
        return name;
    }
}
