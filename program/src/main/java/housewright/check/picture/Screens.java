package housewright.check.picture;

import housewright.check.Evidence;
import housewright.model.Join;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Patchable;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Screens with an input button: what may be shown by it, and what is set. */
final class Screens {
    private Screens() {}

    /**
     * A place of a screen where a picture is shown.
     *
     * @param inputs every socket that may be shown there
     * @param set what is set to be shown there
     */
    record Shown(String screen, String point, Set<String> inputs, List<Join.Pair> set) {}

    static List<Shown> all(Evidence evidence) {
        List<Shown> all = new ArrayList<>();
        Map<String, Map<String, Set<String>>> byModel = new HashMap<>();
        for (Present present : evidence.pictures().things()) {
            Model model = present.model();
            Patchable patch = model == null ? null : model.patch();
            Kind kind = model == null ? Kind.OTHER : model.kind();
            boolean screen = kind == Kind.DISPLAY || kind == Kind.PROJECTOR;
            if (model != null && screen && patch != null && !patch.free()) {
                add(evidence, present.id(), byModel.computeIfAbsent(model.id(), id -> inputs(patch)), all);
            }
        }
        return all;
    }

    /** For each place where a picture is shown the sockets that may be shown there. */
    private static Map<String, Set<String>> inputs(Patchable patch) {
        Map<String, Set<String>> inputs = new LinkedHashMap<>();
        for (Join join : patch.joins()) {
            for (Join.Pair pair : join.pairs()) {
                if ("v".equals(pair.from().channel())) {
                    inputs.computeIfAbsent(pair.to().name(), key -> new LinkedHashSet<>())
                            .add(pair.from().name());
                }
            }
        }
        return inputs;
    }

    private static void add(Evidence evidence, String screen, Map<String, Set<String>> inputs, List<Shown> all) {
        List<Join.Pair> patched = evidence.pictures().patched(screen);
        inputs.forEach((point, sockets) -> all.add(new Shown(
                screen,
                point,
                sockets,
                patched.stream()
                        .filter(pair -> pair.to().name().equals(point)
                                && sockets.contains(pair.from().name()))
                        .distinct()
                        .toList())));
    }

    static boolean isPlugged(Evidence evidence, String screen, String input) {
        return !evidence.cabling().in(screen + "." + input).isEmpty();
    }
}
