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
import housewright.model.Stage;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.Comparator;
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
        Map<String, List<Receiver>> byUniverse = new LinkedHashMap<>();
        for (Receiver each : evidence.lights().receivers()) {
            String universe = universe(evidence.lights(), each);
            if (universe != null && each.address() != null) {
                byUniverse.computeIfAbsent(universe, key -> new ArrayList<>()).add(each);
            }
        }
        List<Finding> findings = new ArrayList<>();
        byUniverse.values().forEach(all -> check(evidence, all, findings));
        return findings.stream();
    }

    /** The universe by its number, or where none is said what hangs on one line. */
    private static @Nullable String universe(Lights lights, Receiver receiver) {
        if (receiver.universe() != null) {
            return "universe " + receiver.universe();
        }
        return lights.findLine(receiver.id())
                .map(DmxLine::source)
                .map(Plug::socket)
                .orElse(null);
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
                report(evidence, heap, findings);
                heap.clear();
            }
            heap.add(each);
            end = Math.max(end, last);
        }
        report(evidence, heap, findings);
    }

    private static void report(Evidence evidence, List<Receiver> heap, List<Finding> findings) {
        if (heap.size() < 2) {
            return;
        }
        Lights lights = evidence.lights();
        Set<Receiver> wrong = new LinkedHashSet<>();
        int common = 0;
        int from = Integer.MAX_VALUE;
        int to = 0;
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
                    from = Math.min(from, low);
                    to = Math.max(to, high);
                }
            }
        }
        if (!wrong.isEmpty()) {
            findings.add(finding(evidence, List.copyOf(wrong), common, from, to));
        }
    }

    private static int first(Receiver receiver) {
        return Objects.requireNonNull(receiver.address());
    }

    private static int last(Receiver receiver) {
        return Objects.requireNonNull(receiver.last());
    }

    private static Finding finding(Evidence evidence, List<Receiver> wrong, int common, int from, int to) {
        List<String> ids = wrong.stream().map(Receiver::id).toList();
        Receiver kept = wrong.getFirst();
        List<Receiver> movers = wrong.stream()
                .filter(each -> !evidence.lights().areGanged(kept.id(), each.id()))
                .toList();
        List<Fix> fixes = new ArrayList<>();
        List<Change> changes = Addresses.anew(evidence, movers);
        if (!changes.isEmpty()) {
            fixes.add(new Fix(
                    "Give " + Said.things(movers.stream().map(Receiver::id).toList())
                            + " the next free address each, and set it on the display before it is hung.",
                    changes));
        }
        fixes.add(Fix.of("Where they shall do the same, say so: `gang: " + kept.id() + "`, with the same address and"
                + " mode."));
        return CARD.finding(
                Severity.FIX,
                Said.equipment(ids),
                Said.things(ids) + (ids.size() == 2 ? " both" : " all") + " answer to " + Said.channels(from, to)
                        + Said.ofUniverse(kept.universe()) + ": what is meant for one moves the other.",
                List.of(new Value("channels in common", common, 0.0, "")),
                fixes);
    }
}
