package housewright.check.cable;

import housewright.cable.Lead;
import housewright.cable.Line;
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
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A run longer than its type of cable reaches, as the type says. Where several types meet, each uses up its part. What
 * has a rule of its own is left to that: SDI on coax, HDMI, USB, twisted pair, DMX, AES3. Balanced line level goes
 * farther than the same cable with a microphone on it.
 */
public final class CableTooLong implements Rule {
    /** CAB-39; the types of cable say what they reach with a microphone, CAB-38. */
    static final Limit LINE_LEVEL = Limit.most("balanced line level", 300, "m");

    private static final Card CARD = new Card(
            "cable-too-long",
            "Does every cable keep within the longest run of its type?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.FromMemory("What its type gives as longest, and handbook practice"),
            Stage.DESIGN,
            List.of(LINE_LEVEL));

    private static final double BALANCED_M = 100; // a type that reaches this far is a balanced one

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        Set<List<String>> seen = new HashSet<>();
        for (Line line : evidence.cabling().lines()) {
            if (!hasOwnRule(line) && isMadeForIt(line)) {
                finding(evidence, line).filter(finding -> seen.add(line.ids())).ifPresent(findings::add);
            }
        }
        return findings.stream();
    }

    private static boolean hasOwnRule(Line line) {
        Signal signal = line.signal();
        return signal == Signal.HDMI
                || signal == Signal.USB
                || signal == Signal.USB_AUDIO
                || signal == Signal.DMX
                || signal == Signal.AES3
                || NetworkRunTooLong.isTwistedPair(line);
    }

    /** How far a type reaches says nothing of a signal that it is not made for: that is found of its own. */
    private static boolean isMadeForIt(Line line) {
        Signal signal = line.signal();
        return signal == null
                || line.leads().stream()
                        .map(Lead::type)
                        .allMatch(type -> type == null
                                || type.carries().isEmpty()
                                || type.carries().contains(signal));
    }

    private static Optional<Finding> finding(Evidence evidence, Line line) {
        double used = 0;
        double metres = 0;
        for (Lead lead : line.leads()) {
            CableType type = lead.type();
            if (type != null && type.longest() != null && lead.span() != null) {
                double own = reach(evidence, line, type.longest().metres());
                used += lead.span().metres() / own;
                metres += lead.span().metres();
            }
        }
        if (used <= 1 + 1e-9) {
            return Optional.empty();
        }
        double limit = metres / used;
        String message = Said.tooLong(line, metres - limit) + Said.types(line) + ", which reaches "
                + Said.metres(limit) + (signal(line).isEmpty() ? "" : " with " + signal(line)) + ": "
                + (line.metres() == null ? Said.metres(metres) + " of it are known" : Said.length(line)) + ".";
        return Optional.of(CARD.finding(
                line.signal() == Signal.MAINS ? Severity.NOTE : Severity.FIX,
                Said.subjects(line.ids()),
                message,
                List.of(new Value("length", metres, limit, "m")),
                fixes(evidence, line, metres)));
    }

    private static List<Fix> fixes(Evidence evidence, Line line, double metres) {
        Fix other = Fix.of("Take a type that reaches farther, or bring the two ends nearer.");
        Signal signal = line.signal();
        return line.leads().size() > 1 || signal == null
                ? List.of(other)
                : Recut.otherType(
                                evidence,
                                line.leads().getFirst(),
                                type -> type.carries().contains(signal)
                                        && type.longest() != null
                                        && reach(evidence, line, type.longest().metres()) >= metres)
                        .map(fix -> List.of(fix, other))
                        .orElse(List.of(other));
    }

    private static double reach(Evidence evidence, Line line, double own) {
        return own >= BALANCED_M && isLineLevel(line.source()) ? Math.max(own, evidence.limit(CARD, LINE_LEVEL)) : own;
    }

    private static boolean isLineLevel(@Nullable Plug plug) {
        return plug != null
                && plug.port() != null
                && plug.port().signal() == Signal.ANALOG_AUDIO
                && plug.port().level() == LevelClass.LINE
                && !Boolean.FALSE.equals(plug.port().balanced());
    }

    private static String signal(Line line) {
        return line.signal() == null ? "" : line.signal().word();
    }
}
