package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** AES3 over more cable than it reaches without an equaliser: twisted pair, or 75 Ω coax, which goes farther. */
public final class TooLongForAes3 implements Rule {
    static final Limit PAIR = Limit.most("twisted pair, not equalised,", 100, "m");
    static final Limit COAX = Limit.most("75 ohm coax, not equalised,", 300, "m");

    private static final Card CARD = new Card(
            "cable-too-long-for-aes3",
            "Is every digital audio run within what AES3 reaches without an equaliser?",
            Set.of(Severity.FIX),
            new Source.FromMemory("AES3-2009 and AES-3id guidance"),
            Stage.DESIGN,
            List.of(PAIR, COAX));

    private static final double COAX_OHM = 75;

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Set<List<String>> seen = new HashSet<>();
        for (Line line : evidence.cabling().lines()) {
            Double metres = line.signal() == Signal.AES3 ? line.metres() : null;
            if (metres == null) {
                continue;
            }
            double used = 0;
            for (Lead lead : line.leads()) {
                used += lead.span() == null ? 0 : lead.span().metres() / reach(evidence, lead.type());
            }
            if (used > 1 + 1e-9 && seen.add(line.ids())) {
                findings.add(finding(line, metres, metres / used));
            }
        }
        return findings.stream();
    }

    private static double reach(Evidence evidence, @Nullable CableType type) {
        boolean coax =
                type != null && type.impedance() != null && type.impedance().ohms() == COAX_OHM;
        double reach = coax ? COAX.value() : evidence.limit(CARD, PAIR);
        return type == null || type.longest() == null
                ? reach
                : Math.min(reach, type.longest().metres());
    }

    private static Finding finding(Line line, double metres, double limit) {
        return CARD.finding(
                Severity.FIX,
                Said.subjects(line.ids()),
                Said.tooLong(line, metres - limit) + "AES3 on " + Said.types(line) + ": " + Said.length(line) + ", "
                        + Said.metres(limit) + " is the limit.",
                List.of(new Value("length", metres, limit, "m")),
                List.of(Fix.of(
                        "Change to 75 ohm coax with transformers at both ends, or to a network or a stage link.")));
    }
}
