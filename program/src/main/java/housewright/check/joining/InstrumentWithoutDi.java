package housewright.check.joining;

import housewright.cable.SoundRun;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.LevelClass;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.unit.Resistance;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * An instrument straight into a microphone or line input. A pick-up of many kilohms is loaded until it sounds dull; one
 * with a preamplifier of its own gets through, unbalanced. A belt pack has an input for instruments.
 */
public final class InstrumentWithoutDi implements Rule {
    static final Limit DRIVES = Limit.most("source impedance of an instrument without a DI box", 5, "kohm");

    private static final Card CARD = new Card(
            "instrument-without-di",
            "Does every instrument go through a DI box, or into an input made for it?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(DRIVES));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, DRIVES) * 1000;
        List<Finding> findings = new ArrayList<>();
        for (SoundRun run : evidence.cabling().soundRuns()) {
            if (run.out().level() == LevelClass.INSTRUMENT && isNoInstrumentInput(run)) {
                findings.add(finding(run, most));
            }
        }
        return findings.stream();
    }

    private static boolean isNoInstrumentInput(SoundRun run) {
        Model model = run.input().model();
        boolean pack = model != null && model.kind() == Kind.RADIO_TRANSMITTER;
        return !pack && (run.in().level() == LevelClass.MIC || Levels.isLineInput(run.in()));
    }

    private static Finding finding(SoundRun run, double most) {
        Resistance impedance = run.out().impedance();
        boolean drives = impedance != null && impedance.ohms() <= most;
        String message =
                run.source().at().saidPort() + " goes into " + run.input().at().saidPort()
                        + " without a DI box"
                        + (drives
                                ? ": it gets through, unbalanced, with whatever hum the lead picks up."
                                : ": the input loads it, and it sounds dull and thin.");
        return CARD.finding(
                drives ? Severity.NOTE : Severity.FIX,
                Subjects.of(run),
                message,
                impedance == null
                        ? List.of()
                        : List.of(new Value("source impedance", impedance.ohms() / 1000, most / 1000, "kohm")),
                List.of(Fix.of("Put a DI box between, close to the instrument; an active one for a passive pick-up.")));
    }
}
