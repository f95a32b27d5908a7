package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Losses;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Value;
import housewright.model.CableType;
import housewright.model.LevelClass;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Sound that loses its top in the capacitance of the cable: with what the source drives it through, that is a low-pass
 * whose corner, 1/(2π·R·C), must lie above what is heard. Guitars live with less, so theirs is a note.
 */
public final class LineLosesTreble implements Rule {
    static final Limit CORNER = Limit.least("corner frequency", 20, "kHz");

    private static final Card CARD = new Card(
            "line-loses-treble",
            "Does every analogue line pass 20 kHz with the capacitance of its cable?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(CORNER));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double limit = evidence.limit(CARD, CORNER);
        List<Finding> findings = new ArrayList<>();
        Set<List<String>> seen = new HashSet<>();
        for (Line line : evidence.cabling().lines()) {
            Double corner = line.signal() == Signal.ANALOG_AUDIO ? cornerKilohertz(line) : null;
            if (corner != null && corner < limit && seen.add(line.ids())) {
                findings.add(finding(evidence, line, corner, limit));
            }
        }
        return findings.stream();
    }

    private static Finding finding(Evidence evidence, Line line, double corner, double limit) {
        Plug source = line.source();
        List<Fix> fixes = new ArrayList<>();
        if (line.leads().size() == 1) {
            Recut.otherType(
                            evidence,
                            line.leads().getFirst(),
                            type -> type.carries().contains(Signal.ANALOG_AUDIO)
                                    && cornerKilohertz(line, type) >= limit)
                    .ifPresent(fixes::add);
        }
        fixes.add(Fix.of("Put a DI box or a line driver at the source, or shorten the cable."));
        boolean guitar =
                source != null && source.port() != null && source.port().level() == LevelClass.INSTRUMENT;
        return CARD.finding(
                guitar ? Severity.NOTE : Severity.FIX,
                Said.subjects(line.ids()),
                String.format(
                        Locale.ROOT,
                        "%s %s treble: %s of %s on what %s gives through %.0f ohm %s 3 dB down at %.1f kHz already;"
                                + " %s kHz is the limit.",
                        Said.all(line.ids()),
                        line.leads().size() == 1 ? "loses" : "lose",
                        Said.length(line),
                        Said.types(line),
                        Said.end(source),
                        ohms(source),
                        "are",
                        corner,
                        Said.number(limit)),
                List.of(new Value("corner frequency", corner, limit, "kHz")),
                fixes);
    }

    /** Null where the source's impedance, or the capacitance or length of a cable, is not known. */
    private static @Nullable Double cornerKilohertz(Line line) {
        double ohms = ohms(line.source());
        double picofarads = 0;
        for (Lead lead : line.leads()) {
            CableType type = lead.type();
            if (type == null || type.capacitance() == null || lead.span() == null) {
                return null;
            }
            picofarads += type.capacitance().picofaradsPerMetre() * lead.span().metres();
        }
        return ohms > 0 && picofarads > 0 ? (Double) (Losses.cornerHertz(ohms, picofarads) / 1000) : null;
    }

    private static double cornerKilohertz(Line line, CableType type) {
        Double metres = line.metres();
        return type.capacitance() == null || metres == null
                ? 0
                : Losses.cornerHertz(ohms(line.source()), type.capacitance().picofaradsPerMetre() * metres) / 1000;
    }

    private static double ohms(@Nullable Plug source) {
        Port port = source == null ? null : source.port();
        return port == null || port.out() == null || port.impedance() == null
                ? 0
                : port.impedance().ohms();
    }
}
