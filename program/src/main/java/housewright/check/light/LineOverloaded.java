package housewright.check.light;

import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.light.DmxLine;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/** More receivers on one line than its driver is made for. */
public final class LineOverloaded implements Rule {
    static final Limit LOADS = Limit.most("unit loads on one line", 32, "");

    private static final Card CARD = new Card(
            "dmx-line-overloaded",
            "Has every line of DMX no more on it than one driver may feed?",
            Set.of(Severity.FIX),
            new Source.Published("EIA-485 and ANSI E1.11 (DMX512-A), as quoted", "32 unit loads"),
            Stage.DESIGN,
            List.of(LOADS));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, LOADS);
        List<Finding> findings = new ArrayList<>();
        for (DmxLine line : evidence.lights().lines()) {
            int loads = line.loads().size();
            Plug source = line.source();
            if (loads > most && source != null) {
                findings.add(CARD.finding(
                        Severity.FIX,
                        List.of(
                                Subject.equipment(source.at().thing()),
                                Subject.equipment(line.loads().getLast())),
                        "The line from " + source.at().saidPort() + " has " + loads + " things on it, "
                                + String.format(Locale.ROOT, "%.0f", loads - most)
                                + " more than its driver is made for.",
                        List.of(new Value("unit loads", loads, most, "")),
                        List.of(Fix.of("Put an isolated splitter in, and share the fixtures out over its outputs."))));
            }
        }
        return findings.stream();
    }
}
