package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.signal.Cause;
import housewright.signal.Unjoined;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** A cable or link between two ports that cannot understand each other, or a patch entry that holds nothing. */
public final class CableJoinsNothing implements Rule {
    private static final Card CARD = new Card(
            "cable-joins-nothing",
            "Do both ends of every cable and link speak the same signal and protocol?",
            Set.of(Severity.STOP),
            new Source.TheProject(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<Subject, List<Unjoined>> bySubject = new LinkedHashMap<>();
        for (Unjoined unjoined : evidence.signals().unjoined()) {
            bySubject
                    .computeIfAbsent(Subject.at(unjoined.cause().entity()), subject -> new ArrayList<>())
                    .add(unjoined);
        }
        return bySubject.entrySet().stream().map(each -> finding(evidence, each.getKey(), each.getValue()));
    }

    private static Finding finding(Evidence evidence, Subject subject, List<Unjoined> unjoined) {
        Unjoined first = unjoined.getFirst();
        String more = unjoined.size() == 1 ? "" : " (and " + (unjoined.size() - 1) + " more of it)";
        return CARD.finding(
                Severity.STOP,
                List.of(subject),
                subject.id() + " does not join " + first.one().said() + " and "
                        + first.other().said() + more + ": " + first.why() + ".",
                List.of(),
                List.of(Fix.of(
                        first.cause() instanceof Cause.BySend
                                ? "Join both to one network by cable and switch, in one VLAN; or send it to what"
                                        + " speaks the same."
                                : first.cause() instanceof Cause.ByPatch
                                        ? "Take the entry out of the patch: what the type joins inside needs none, and what it"
                                                + " does not join cannot be set."
                                        : bearsPower(evidence, first)
                                                ? "Take it out: what drives loudspeakers, and mains, go to nothing else."
                                                : "Plug it where both ends agree, or put a converter between.")));
    }

    /** Loudspeaker power or mains at an end, which no converter makes harmless. */
    private static boolean bearsPower(Evidence evidence, Unjoined unjoined) {
        return unjoined.cause() instanceof Cause.ByCable cable
                && evidence.cabling().findLead(cable.id()).stream()
                        .flatMap(lead -> lead.joints().stream())
                        .flatMap(joint -> Stream.of(joint.from(), joint.to()))
                        .anyMatch(plug -> plug != null
                                && plug.port() != null
                                && (plug.port().signal() == Signal.SPEAKER
                                        || plug.port().signal() == Signal.MAINS));
    }
}
