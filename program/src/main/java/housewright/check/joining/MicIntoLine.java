package housewright.check.joining;

import housewright.cable.SoundRun;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.LevelClass;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Microphone level on an input without a microphone amplifier: it arrives, and nobody hears it. A hot microphone that
 * reaches line level by itself, and an input whose set gain makes up for it, are left alone.
 */
public final class MicIntoLine implements Rule {
    static final Limit LOUDEST = Limit.least("level that reaches a line input when it is loud", -20, "dBu");

    private static final Card CARD = new Card(
            "mic-into-line",
            "Does everything at microphone level go into a microphone input?",
            Set.of(Severity.FIX),
            new Source.FromMemory("sound-system installation handbooks: microphone level is below -20 dBu"),
            Stage.DESIGN,
            List.of(LOUDEST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double least = evidence.limit(CARD, LOUDEST);
        Sets sets = new Sets();
        List<Finding> findings = new ArrayList<>();
        for (SoundRun run : evidence.cabling().soundRuns()) {
            Finding finding = check(run, sets, least);
            if (finding != null) {
                findings.add(finding);
            }
        }
        return findings.stream();
    }

    private static @Nullable Finding check(SoundRun run, Sets sets, double least) {
        if (run.out().level() != LevelClass.MIC || !Levels.isLineInput(run.in()) || run.isBothWays()) {
            return null;
        }
        OptionalDouble gives = Levels.microphoneDbu(run.source().model(), run.out());
        double gain = sets.gainDb(run.input());
        if (gives.orElse(least - 20) + gain >= least) {
            return null;
        }
        OptionalDouble wants = Levels.working(run.in());
        String how = gives.isPresent()
                ? String.format(Locale.ROOT, "gives %s when it is loud (94 dB SPL)", Levels.said(gives.getAsDouble()))
                : "gives microphone level";
        String short_ = gives.isPresent() && wants.isPresent()
                ? String.format(Locale.ROOT, ", %.0f dB short", wants.getAsDouble() - gives.getAsDouble() - gain)
                : "";
        return CARD.finding(
                Severity.FIX,
                Subjects.of(run),
                run.source().at().saidPort() + " " + how + ", and "
                        + run.input().at().saidPort() + " is a line input without a microphone amplifier" + short_
                        + ".",
                gives.isPresent() ? List.of(new Value("level", gives.getAsDouble() + gain, least, "dBu")) : List.of(),
                List.of(Fix.of("Plug it into a microphone input, or put a microphone amplifier between.")));
    }
}
