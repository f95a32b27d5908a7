package housewright.check.complete;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Ref;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.FeedProof;
import housewright.signal.Present;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** New equipment with sockets and nothing in any of them. */
public final class BoughtNotConnected implements Rule {
    private static final Card CARD = new Card(
            "bought-not-connected",
            "Is everything that is bought connected to something?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Present> bought = evidence.pictures().things().stream()
                .filter(thing -> thing.equipment().life() == Life.NEW && hasSockets(thing))
                .filter(thing -> thing.equipment().partOf() == null && !isSpare(thing.equipment()))
                .toList();
        if (bought.isEmpty()) {
            return Stream.empty();
        }
        Set<String> joined = joined(evidence);
        for (FeedProof proof : evidence.signals().proofs()) {
            if (!proof.proven()) { // that it does not arrive is said already
                proof.feed().from().forEach(ref -> add(joined, ref));
                proof.feed().to().forEach(ref -> add(joined, ref));
            }
        }
        return bought.stream().filter(thing -> !joined.contains(thing.id())).map(BoughtNotConnected::finding);
    }

    /** Counted, and for more than mains: what only takes power is connected where it has some. */
    private static boolean hasSockets(Present thing) {
        Model model = thing.model();
        return model != null
                && model.portsKnown()
                && model.ports().values().stream()
                        .anyMatch(port -> port.signal() != Signal.MAINS || port.out() == Signal.MAINS);
    }

    private static boolean isSpare(Equipment thing) {
        String note = thing.remarks().note();
        return note != null && note.toLowerCase(Locale.ROOT).contains("spare");
    }

    private static Set<String> joined(Evidence evidence) {
        Set<String> joined = new HashSet<>();
        for (Lead lead : evidence.cabling().leads()) {
            for (Joint joint : lead.joints()) {
                if (joint.from() != null) {
                    joined.add(joint.from().at().thing());
                }
                if (joint.to() != null) {
                    joined.add(joint.to().at().thing());
                }
            }
        }
        evidence.project().radio().values().forEach(link -> {
            add(joined, link.from());
            add(joined, link.to());
        });
        evidence.project().networkSends().values().forEach(send -> {
            add(joined, send.from());
            add(joined, send.to());
        });
        evidence.project().equipment().values().forEach(each -> {
            add(joined, each.poweredBy());
            if (each.partOf() != null) {
                joined.add(each.partOf());
            }
        });
        return joined;
    }

    private static void add(Set<String> joined, @Nullable Ref ref) {
        if (ref != null) {
            ref.addresses().forEach(address -> joined.add(address.thing()));
        }
    }

    private static Finding finding(Present thing) {
        return CARD.finding(
                Severity.FIX,
                List.of(Subject.equipment(thing.id())),
                Words.said(thing.id()) + " is to be bought, and nothing is plugged into it.",
                List.of(),
                List.of(Fix.of(
                        "Draw its cables or its radio link, strike it from the list, or say spare in its note.")));
    }
}
