package housewright.check.joining;

import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Connector;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** DMX on three-pin XLR, which the standard does not permit on new equipment: one note for all of it. */
public final class DmxOnThreePins implements Rule {
    private static final Card CARD = new Card(
            "dmx-on-three-pins",
            "Is DMX on connectors that its standard permits?",
            Set.of(Severity.NOTE),
            new Source.Published(
                    "ANSI E1.11 (DMX512-A), as quoted", "connectors; XLR-3 is not permitted on new equipment"),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Set<String> things = new LinkedHashSet<>();
        Set<String> cables = new LinkedHashSet<>();
        for (Line line : evidence.cabling().lines()) {
            if (Signalled.of(line.from()) == Signal.DMX || Signalled.of(line.to()) == Signal.DMX) {
                boolean three = add(line.from(), things);
                three |= add(line.to(), things);
                if (three) {
                    line.leads().stream().map(Lead::id).forEach(cables::add);
                }
            }
        }
        return things.isEmpty() ? Stream.empty() : Stream.of(finding(things, cables));
    }

    private static boolean add(@Nullable Plug plug, Set<String> things) {
        Connector socket = Ends.socket(plug);
        boolean three = plug != null && (socket == Connector.XLR_3M || socket == Connector.XLR_3F);
        if (three && plug != null) {
            things.add(plug.at().thing());
        }
        return three;
    }

    private static Finding finding(Set<String> things, Set<String> cables) {
        List<Subject> subjects = new ArrayList<>();
        things.forEach(thing -> subjects.add(Subject.equipment(thing)));
        cables.forEach(cable -> subjects.add(Subject.cable(cable)));
        String first = Words.said(things.iterator().next());
        return CARD.finding(
                Severity.NOTE,
                subjects,
                (things.size() == 1 ? first + " has" : first + " and " + (things.size() - 1) + " more have")
                        + " DMX on three pins, like a microphone: a microphone cable fits and flickers.",
                List.of(),
                List.of(Fix.of("Keep DMX cable with three pins for them in a box of its own, and buy five pins from now"
                        + " on.")));
    }
}
