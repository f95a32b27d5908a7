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
 * A line output on an input that clips too soon: most often a line in a microphone input. Programme peaks stand 9 dB
 * above the level a line works at, so that much must be left, unless the output itself cannot go so high.
 */
public final class InputOverdriven implements Rule {
    static final Limit HEADROOM = Limit.least("headroom above the working level of what is plugged in", 9, "dB");

    private static final Card CARD = new Card(
            "input-overdriven",
            "Does every input take the level of the output that is plugged into it, peaks and set gain counted?",
            Set.of(Severity.FIX),
            new Source.Published("EBU R 68-2000, as quoted", "programme peaks 9 dB above alignment level"),
            Stage.DESIGN,
            List.of(HEADROOM));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double least = evidence.limit(CARD, HEADROOM);
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
        OptionalDouble works = Levels.working(run.out());
        OptionalDouble clips = Levels.dbu(run.in().max());
        if (works.isEmpty() || clips.isEmpty() || run.isBothWays()) {
            return null;
        }
        double gain = run.in().level() == LevelClass.MIC ? sets.gainDb(run.input()) : 0;
        double headroom = clips.getAsDouble() - works.getAsDouble() - gain;
        OptionalDouble highest = Levels.dbu(run.out().max());
        boolean cannotReach = highest.isPresent() && highest.getAsDouble() + gain <= clips.getAsDouble();
        if (headroom >= least || cannotReach) {
            return null;
        }
        boolean byGain = headroom + gain >= least;
        String message = String.format(
                Locale.ROOT,
                "%s gives %s, and %s clips at %s%s: %s.",
                run.source().at().saidPort(),
                Levels.said(works.getAsDouble()),
                run.input().at().saidPort(),
                Levels.said(clips.getAsDouble()),
                gain == 0 ? "" : String.format(Locale.ROOT, " before its gain of %.0f dB", gain),
                headroom < 0
                        ? String.format(Locale.ROOT, "%.0f dB over before anybody is loud", -headroom)
                        : String.format(Locale.ROOT, "%.0f dB is left for peaks, %.0f dB is wanted", headroom, least));
        String fix = byGain
                ? "Turn the gain of that input down, or use a line input."
                : "Use a line input, turn the output down, or put a pad between.";
        return CARD.finding(
                Severity.FIX,
                Subjects.of(run),
                message,
                List.of(new Value("headroom", headroom, least, "dB")),
                List.of(Fix.of(fix)));
    }
}
