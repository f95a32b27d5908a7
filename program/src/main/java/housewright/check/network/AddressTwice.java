package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Two things with one address: neither answers reliably, and which of them does changes by the hour. On networks that
 * are known to be apart the same address does no harm.
 */
public final class AddressTwice implements Rule {
    private static final Card CARD = new Card(
            "address-twice",
            "Has every thing on the network an address of its own?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Addresses addresses = new Addresses(evidence);
        Map<Integer, List<Addresses.Held>> byAddress = new LinkedHashMap<>();
        addresses
                .all()
                .forEach(held -> byAddress
                        .computeIfAbsent(held.ip().bits(), key -> new ArrayList<>(1))
                        .add(held));
        byAddress.values().removeIf(same -> same.size() < 2);
        if (byAddress.isEmpty()) {
            return Stream.empty();
        }
        Map<String, Set<Integer>> segments = Addresses.segments(evidence);
        return byAddress.values().stream()
                .map(same -> clashing(same, segments))
                .filter(same -> same.size() > 1)
                .map(same -> finding(evidence, addresses, same));
    }

    /** Those that share a network with another of them, or of which that is not known. */
    private static List<Addresses.Held> clashing(List<Addresses.Held> same, Map<String, Set<Integer>> segments) {
        return same.stream()
                .filter(one -> same.stream()
                        .anyMatch(
                                other -> !other.thing().id().equals(one.thing().id())
                                        && mayMeet(
                                                segments.get(one.thing().id()),
                                                segments.get(other.thing().id()))))
                .toList();
    }

    private static boolean mayMeet(@Nullable Set<Integer> one, @Nullable Set<Integer> other) {
        return one == null || other == null || one.stream().anyMatch(other::contains);
    }

    private static Finding finding(Evidence evidence, Addresses addresses, List<Addresses.Held> same) {
        Ip ip = same.getFirst().ip();
        List<String> things = same.stream().map(held -> held.thing().id()).toList();
        List<Fix> fixes = new ArrayList<>();
        List<Change> changes = new ArrayList<>();
        List<String> words = new ArrayList<>();
        Ip free = ip;
        for (Addresses.Held held : same.subList(1, same.size())) {
            free = addresses.free(ip, free.bits() - free.network());
            if (free == null) {
                break;
            }
            changes.addAll(Addresses.give(evidence, held.thing().id(), free));
            words.add(Words.said(held.thing().id()) + " " + free.text());
        }
        if (free != null && changes.size() == same.size() - 1) {
            fixes.add(new Fix("Give " + Said.some(words, 4) + ", which is free in this project.", changes));
        } else {
            fixes.add(Fix.of("Give each an address of its own."));
        }
        return CARD.finding(
                Severity.FIX,
                Said.equipment(things),
                Said.things(things, 4) + " have the same address, " + ip.text() + ".",
                List.of(new Value("things with it", things.size(), 1.0, "")),
                fixes);
    }
}
