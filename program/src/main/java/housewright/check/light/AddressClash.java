package housewright.check.light;

import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.light.DmxLine;
import housewright.light.Lights;
import housewright.light.Receiver;
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Fixtures that answer to the same channels of one universe, and nobody says that this is meant. */
public final class AddressClash implements Rule {
    private static final Card CARD = new Card(
            "dmx-address-clash",
            "Has every fixture channels of its own, unless it is ganged on purpose?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Lights lights = evidence.lights();
        Map<String, Integer> said = new HashMap<>();
        for (Receiver each : lights.receivers()) {
            String root = root(lights, each);
            if (root != null && each.universe() != null) {
                said.putIfAbsent(root, each.universe());
            }
        }
        Map<String, List<Receiver>> byUniverse = new LinkedHashMap<>();
        for (Receiver each : lights.receivers()) {
            String universe = universe(lights, each, said);
            Integer first = each.address();
            if (universe != null && first != null && first >= 1) { // below, it answers to nothing: another rule's
                byUniverse.computeIfAbsent(universe, key -> new ArrayList<>()).add(each);
            }
        }
        List<Finding> findings = new ArrayList<>();
        byUniverse.values().forEach(all -> check(evidence, all, findings));
        return findings.stream();
    }

    /** The universe by its number: its own, or what another on its line says. Else the socket that all of them hang on. */
    private static @Nullable String universe(Lights lights, Receiver receiver, Map<String, Integer> said) {
        String root = root(lights, receiver);
        Integer number = receiver.universe() != null || root == null ? receiver.universe() : said.get(root);
        return number == null ? root : "universe " + number;
    }

    /** The socket that sends to it, back through splitters, which send the same to all their outputs. */
    private static @Nullable String root(Lights lights, Receiver receiver) {
        Set<Plug> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        DmxLine line = lights.findLine(receiver.id()).orElse(null);
        while (line != null && line.source() != null && seen.add(line.source())) {
            Plug source = line.source();
            boolean split = source.model() != null && source.model().kind() == Kind.DMX_SPLITTER;
            DmxLine before = split ? lights.findLine(source.at().thing()).orElse(null) : null;
            if (before == null) {
                return split ? source.at().thing() : source.socket();
            }
            line = before;
        }
        return null;
    }

    /** Those that overlap are gathered, from the lowest address up. */
    private static void check(Evidence evidence, List<Receiver> all, List<Finding> findings) {
        List<Receiver> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparing(each -> Objects.requireNonNull(each.address())));
        List<Receiver> heap = new ArrayList<>();
        int end = -1;
        for (Receiver each : sorted) {
            Integer first = each.address();
            Integer last = each.last();
            if (first == null || last == null) {
                continue;
            }
            if (first > end) {
                report(evidence, all, heap, findings);
                heap.clear();
            }
            heap.add(each);
            end = Math.max(end, last);
        }
        report(evidence, all, heap, findings);
    }

    private static void report(Evidence evidence, List<Receiver> all, List<Receiver> heap, List<Finding> findings) {
        if (heap.size() < 2) {
            return;
        }
        Lights lights = evidence.lights();
        Set<Receiver> wrong = new LinkedHashSet<>();
        int common = 0;
        int from = Integer.MAX_VALUE;
        int to = 0;
        Set<List<Integer>> shared = new HashSet<>();
        for (int i = 0; i < heap.size(); i++) {
            for (int j = i + 1; j < heap.size(); j++) {
                Receiver one = heap.get(i);
                Receiver other = heap.get(j);
                if (one.overlaps(other) && !lights.areGanged(one.id(), other.id())) {
                    wrong.add(one);
                    wrong.add(other);
                    int low = Math.max(first(one), first(other));
                    int high = Math.min(last(one), last(other));
                    common = Math.max(common, high - low + 1);
                    shared.add(List.of(low, high));
                    from = Math.min(from, low);
                    to = Math.max(to, high);
                }
            }
        }
        if (!wrong.isEmpty()) {
            String which =
                    Said.channels(from, to) + Said.ofUniverse(heap.getFirst().universe());
            findings.add(finding(evidence, all, List.copyOf(wrong), common, which, shared.size() == 1));
        }
    }

    private static int first(Receiver receiver) {
        return Objects.requireNonNull(receiver.address());
    }

    private static int last(Receiver receiver) {
        return Objects.requireNonNull(receiver.last());
    }

    /** As few as can be: those that end first stay where they are, and whoever is in their way moves. */
    private static List<Receiver> movers(Lights lights, List<Receiver> wrong) {
        List<Receiver> kept = new ArrayList<>();
        List<Receiver> movers = new ArrayList<>();
        wrong.stream().sorted(Comparator.comparingInt(AddressClash::last)).forEach(each -> {
            boolean inTheWay =
                    kept.stream().anyMatch(other -> other.overlaps(each) && !lights.areGanged(other.id(), each.id()));
            (inTheWay ? movers : kept).add(each);
        });
        return movers;
    }

    private static Finding finding(
            Evidence evidence, List<Receiver> all, List<Receiver> wrong, int common, String which, boolean same) {
        List<String> ids = wrong.stream().map(Receiver::id).toList();
        List<Receiver> movers = movers(evidence.lights(), wrong);
        List<Fix> fixes = new ArrayList<>();
        List<Change> changes = Addresses.anew(evidence, movers, all);
        if (!changes.isEmpty()) {
            fixes.add(new Fix(
                    "Give " + Said.things(movers.stream().map(Receiver::id).toList()) + " the next free "
                            + (movers.size() == 1 ? "address, and set it" : "addresses, and set them")
                            + " on the display before it is hung.",
                    changes));
        }
        fixes.add(Fix.of("Where they shall do the same, say so: `gang: " + ids.getFirst()
                + "`, with the same address and mode."));
        return CARD.finding(
                Severity.FIX,
                Said.equipment(ids),
                Said.things(ids)
                        + (same
                                ? (ids.size() == 2 ? " both" : " all") + " answer to " + which
                                : " share " + which + " among them")
                        + ": what is meant for one moves the other.",
                List.of(new Value("channels in common", common, 0.0, "")),
                fixes);
    }
}
