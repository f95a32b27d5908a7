package housewright.app.table;

import housewright.model.Equipment;
import housewright.model.Shape;
import housewright.study.Study;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Sockets as people write them in their lists: {@code Stage Box 1 / In 3} is {@code stage-box-1.in-3}. */
final class SocketWords {
    /** What lists call a socket, by how names of sockets begin. */
    private static final Map<String, List<String>> BEGINS = Map.of(
            "input", List.of("in", "mic", "line"),
            "in", List.of("in", "mic", "input"),
            "mic", List.of("mic", "in"),
            "line", List.of("line", "in"),
            "ch", List.of("in", "mic", "ch"),
            "channel", List.of("in", "mic", "ch"),
            "output", List.of("out", "line-out"),
            "out", List.of("out"),
            "", List.of("in", "mic", "front"));

    private final Study study;
    private final TreeMap<String, String> things = new TreeMap<>();
    private final Map<String, Map<String, String>> sockets = new HashMap<>();

    SocketWords(Study study) {
        this.study = study;
        for (Equipment each : study.project().equipment().values()) {
            String label = each.label();
            if (label != null && !Edits.slug(label).isEmpty()) {
                things.putIfAbsent(Edits.slug(label), each.id());
            }
        }
        study.project().equipment().keySet().forEach(id -> things.put(Edits.slug(id), id));
    }

    /** The thing and the port that are meant; null where that is not plain. */
    @Nullable
    String find(String text) {
        int dot = text.indexOf('.');
        if (dot > 0 && study.project().equipment().containsKey(text.substring(0, dot))) {
            return text;
        }
        String slug = Edits.slug(text);
        for (int end = slug.length(); end > 0; end = slug.lastIndexOf('-', end - 1)) {
            String thing = things.get(slug.substring(0, end));
            if (thing != null && end < slug.length()) {
                String port = port(thing, slug.substring(end + 1));
                if (port != null) {
                    return thing + "." + port;
                }
            }
        }
        return null;
    }

    /** The port of a thing; null where there is none that is called so, or two. */
    @Nullable
    String port(String thing, String slug) {
        Map<String, String> names = sockets.computeIfAbsent(thing, this::sockets);
        String exact = names.get(slug);
        if (exact != null) {
            return exact;
        }
        String digits = slug.replaceFirst("^.*?(\\d*)$", "$1");
        String word = slug.substring(0, slug.length() - digits.length()).replaceFirst("-$", "");
        if (digits.isEmpty() || digits.length() > 4 || !BEGINS.containsKey(word)) {
            return null;
        }
        String number = Integer.toString(Integer.parseInt(digits));
        return BEGINS.getOrDefault(word, List.of()).stream()
                .map(begin -> names.get(begin + "-" + number))
                .filter(name -> name != null)
                .findFirst()
                .orElse(null);
    }

    private Map<String, String> sockets(String thing) {
        Map<String, String> names = new LinkedHashMap<>();
        Optional.ofNullable(study.project().equipment().get(thing))
                .flatMap(each -> study.types().findModel(each.model()))
                .map(Shape::of)
                .ifPresent(shape -> shape.sockets().keySet().forEach(name -> names.put(Edits.slug(name), name)));
        return names;
    }
}
