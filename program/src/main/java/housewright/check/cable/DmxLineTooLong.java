package housewright.check.cable;

import housewright.cable.Chain;
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
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A DMX line longer than planned for: all its cables together, from the node or splitter to the last lamp. */
public final class DmxLineTooLong implements Rule {
    static final Limit AWG_24 = Limit.most("line on 24 AWG", 300, "m");
    static final Limit AWG_22 = Limit.most("line on 22 AWG", 500, "m");

    private static final Card CARD = new Card(
            "dmx-line-too-long",
            "Is every DMX line short enough from the node or splitter to its last lamp?",
            Set.of(Severity.FIX),
            new Source.Published("USITT recommended practice for DMX512, as quoted in two guides", ""),
            Stage.DESIGN,
            List.of(AWG_24, AWG_22));

    private static final double AWG_22_MM2 = 0.32;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Chain chain : evidence.cabling().chains(Signal.DMX)) {
            double used = 0;
            double metres = 0;
            Map<String, Lead> cables = new LinkedHashMap<>();
            boolean known = true;
            for (Line line : chain.lines()) {
                for (Lead lead : line.leads()) {
                    cables.put(lead.id(), lead);
                    known &= lead.span() != null;
                    double each = lead.span() == null ? 0 : lead.span().metres();
                    metres += each;
                    used += each / reach(evidence, lead.type());
                }
            }
            if (used > 1 + 1e-9) {
                findings.add(finding(chain, cables, metres, metres / used, known));
            }
        }
        return findings.stream();
    }

    private static double reach(Evidence evidence, @Nullable CableType type) {
        double thin = evidence.limit(CARD, AWG_24);
        if (type == null) {
            return thin;
        }
        if (type.longest() != null) {
            return type.longest().metres() == AWG_24.value()
                    ? thin
                    : type.longest().metres();
        }
        boolean thick = type.conductor() != null && type.conductor().squareMillimetres() >= AWG_22_MM2;
        return thick ? AWG_22.value() : thin;
    }

    private static Finding finding(Chain chain, Map<String, Lead> cables, double metres, double limit, boolean known) {
        Plug start = chain.lines().getFirst().source();
        List<Subject> subjects = new ArrayList<>(Said.subjects(cables.keySet()));
        if (start != null) {
            subjects.add(Subject.equipment(start.at().thing()));
        }
        return CARD.finding(
                Severity.FIX,
                subjects,
                "The DMX line from " + Said.end(start) + " is " + Said.metres(metres - limit) + " too long: "
                        + (known
                                ? Said.length(metres, List.copyOf(cables.values()))
                                : "what is known of it comes to " + Said.metres(metres))
                        + " over " + Said.count(cables.size(), "cable") + "; " + Said.metres(limit) + " is the limit.",
                List.of(new Value("line", metres, limit, "m")),
                List.of(Fix.of("Feed the far part from a splitter's output or a node of its own.")));
    }
}
