package housewright.check.network;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Kind;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.network.Link;
import housewright.network.Networks;
import housewright.signal.Cause;
import housewright.signal.Present;
import housewright.signal.Unjoined;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Things that hang on the second network socket of a box that is no switch, and so are not on the network. Where a send
 * fails by it, that is reported instead.
 */
public final class BoxPassesNoNetwork implements Rule {
    private static final Card CARD = new Card(
            "box-passes-no-network",
            "Is everything on the network by way of switches, and not through boxes that hand nothing on?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Networks networks = evidence.networks();
        List<Finding> findings = new ArrayList<>();
        Set<String> failing = null;
        for (Present box : networks.things()) {
            List<Link> links = networks.linksOf(box.id());
            if (links.size() < 2
                    || !keepsToItself(box)
                    || links.stream().noneMatch(link -> Link.isSwitch(link.far(box.id())))) {
                continue;
            }
            if (failing == null) {
                failing = failing(evidence);
            }
            Set<String> behind = new LinkedHashSet<>();
            for (Link link : links) {
                String thing = link.far(box.id()).at().thing();
                boolean only = networks.linksOf(thing).size() == 1;
                if (only && !networks.isSwitch(thing) && !failing.contains(thing)) {
                    behind.add(thing);
                }
            }
            if (!behind.isEmpty()) {
                findings.add(finding(box.id(), behind));
            }
        }
        return findings.stream();
    }

    /** A router joins its sockets, and what is in a thing of unknown type nobody knows. */
    private static boolean keepsToItself(Present box) {
        return box.model() != null
                && box.model().portsKnown()
                && box.model().kind() != Kind.SWITCH
                && box.model().kind() != Kind.INTERNET_ROUTER;
    }

    private static Set<String> failing(Evidence evidence) {
        Set<String> failing = new LinkedHashSet<>();
        for (Unjoined unjoined : evidence.signals().unjoined()) {
            if (unjoined.cause() instanceof Cause.BySend) {
                failing.add(unjoined.one().thing());
                failing.add(unjoined.other().thing());
            }
        }
        return failing;
    }

    private static Finding finding(String box, Set<String> behind) {
        List<Subject> subjects = new ArrayList<>(Said.equipment(behind));
        subjects.add(Subject.equipment(box));
        boolean one = behind.size() == 1;
        return CARD.finding(
                Severity.FIX,
                subjects,
                Said.things(behind, 4) + (one ? " hangs" : " hang") + " on " + Words.said(box)
                        + ", which is no switch and hands no network on: " + (one ? "it is" : "they are")
                        + " not on the network.",
                List.of(),
                List.of(Fix.of("Plug " + (one ? "it" : "them") + " into a switch; if " + Words.said(box)
                        + " has one inside, draw that as a thing of its own.")));
    }
}
