package housewright.cable;

import housewright.model.Join;
import housewright.model.Model;
import housewright.model.Route;
import housewright.model.Signal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which runs are one line electrically. */
final class Chains {
    private final List<Line> lines;
    private final Signal signal;
    private final Map<String, List<Integer>> bySource = new HashMap<>();
    private final Map<String, Map<String, Set<String>>> passed = new HashMap<>();

    private Chains(List<Line> lines, Signal signal) {
        this.lines = lines;
        this.signal = signal;
    }

    static List<Chain> of(List<Line> all, Signal signal) {
        List<Line> lines = all.stream().filter(line -> line.signal() == signal).toList();
        return new Chains(lines, signal).chains();
    }

    private List<Chain> chains() {
        for (int i = 0; i < lines.size(); i++) {
            Plug source = lines.get(i).source();
            if (source != null) {
                bySource.computeIfAbsent(source.socket(), key -> new ArrayList<>(1))
                        .add(i);
            }
        }
        List<List<Integer>> next = new ArrayList<>();
        boolean[] hangs = new boolean[lines.size()];
        for (Line line : lines) {
            List<Integer> after = after(line.sink());
            after.forEach(i -> hangs[i] = true);
            next.add(after);
        }
        List<Chain> chains = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!hangs[i]) {
                chains.add(chain(i, next));
            }
        }
        return chains;
    }

    private Chain chain(int first, List<List<Integer>> next) {
        List<Integer> order = new ArrayList<>(List.of(first));
        List<Integer> after = new ArrayList<>(List.of(-1));
        Set<Integer> seen = new LinkedHashSet<>(order);
        for (int at = 0; at < order.size(); at++) {
            for (int each : next.get(order.get(at))) {
                if (seen.add(each)) {
                    order.add(each);
                    after.add(at);
                }
            }
        }
        return new Chain(order.stream().map(lines::get).toList(), after);
    }

    /** The runs that begin where the thing at this end passes on what arrives. */
    private List<Integer> after(@Nullable Plug sink) {
        Model model = sink == null ? null : sink.model();
        if (sink == null || model == null || !passesOn(model)) {
            return List.of();
        }
        List<Integer> after = new ArrayList<>();
        Set<String> outs = passed.computeIfAbsent(model.id(), key -> routes(model))
                .getOrDefault(sink.at().spot().name(), Set.of());
        for (String out : outs) {
            after.addAll(bySource.getOrDefault(sink.at().thing() + "." + out, List.of()));
        }
        return after;
    }

    /** It joins its sockets by wire; what sends afresh (a splitter, a node, an amplifier) begins a new line. */
    private boolean passesOn(Model model) {
        return switch (model.kind()) {
            case FIXTURE, DIMMER, POWER_DISTRIBUTOR, OTHER -> true;
            case LOUDSPEAKER, CONTROL_PANEL, PANEL, PROCESSOR -> signal == Signal.SPEAKER;
            default -> false;
        };
    }

    private static Map<String, Set<String>> routes(Model model) {
        Map<String, Set<String>> routes = new HashMap<>();
        for (Route route : model.routes()) {
            for (Join.Pair pair : route.join().pairs()) {
                routes.computeIfAbsent(pair.from().name(), key -> new LinkedHashSet<>())
                        .add(pair.to().name());
            }
        }
        return routes;
    }
}
