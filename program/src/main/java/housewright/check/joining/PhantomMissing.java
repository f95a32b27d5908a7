package housewright.check.joining;

import housewright.cable.Plug;
import housewright.cable.SoundRun;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.LevelClass;
import housewright.model.Model;
import housewright.model.Phantom;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A condenser microphone or an active DI box on an input that gives no phantom power, or where it is set off. Boxes
 * without power of their own, such as splitters, may pass it on from what is behind them. Where a microphone input's type
 * does not say, that is a note.
 */
public final class PhantomMissing implements Rule {
    private static final Card CARD = new Card(
            "phantom-missing",
            "Does everything that needs phantom power get it?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.TheProject(),
            Stage.DESIGN);

    /** What lies between a source and phantom power, the best it can hope for first. */
    private enum Supply {
        GIVEN,
        NOT_SAID,
        SET_OFF,
        NONE
    }

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<SoundRun> runs = evidence.cabling().soundRuns();
        Map<String, List<SoundRun>> byThing = new HashMap<>();
        runs.forEach(run -> byThing.computeIfAbsent(run.source().at().thing(), thing -> new ArrayList<>())
                .add(run));
        Sets sets = new Sets();
        List<Finding> findings = new ArrayList<>();
        Map<String, List<SoundRun>> notSaid = new LinkedHashMap<>();
        for (SoundRun run : runs) {
            if (run.out().phantom() == Phantom.NEEDS) {
                switch (supply(run.input(), sets, byThing, new LinkedHashSet<>())) {
                    case GIVEN -> {}
                    case NOT_SAID ->
                        notSaid.computeIfAbsent(run.input().at().thing(), id -> new ArrayList<>())
                                .add(run);
                    case SET_OFF -> findings.add(setOff(evidence, run));
                    case NONE -> findings.add(none(run));
                }
            }
        }
        notSaid.values().forEach(each -> findings.add(notSaid(each)));
        return findings.stream();
    }

    private static Supply supply(Plug input, Sets sets, Map<String, List<SoundRun>> byThing, Set<String> seen) {
        Port port = input.port();
        if (port == null) {
            return Supply.GIVEN; // nobody knows; not for this rule to say
        }
        if (port.phantom() == Phantom.GIVES) {
            return Boolean.FALSE.equals(sets.phantom(input)) ? Supply.SET_OFF : Supply.GIVEN;
        }
        if (Boolean.TRUE.equals(sets.phantom(input))) {
            return Supply.GIVEN;
        }
        Supply best = port.level() == LevelClass.MIC || port.level() == null ? Supply.NOT_SAID : Supply.NONE;
        if (isUnpowered(input.model()) && seen.add(input.at().thing())) {
            best = Supply.NONE;
            for (SoundRun onward : byThing.getOrDefault(input.at().thing(), List.of())) {
                Supply other = supply(onward.input(), sets, byThing, seen);
                best = other.compareTo(best) < 0 ? other : best;
            }
        }
        return best;
    }

    private static boolean isUnpowered(@Nullable Model model) {
        return model != null
                && model.battery() == null
                && model.poe() == null
                && !model.routes().isEmpty()
                && model.ports().values().stream()
                        .noneMatch(port -> port.in() == Signal.MAINS || port.phantom() == Phantom.GIVES);
    }

    private static Finding setOff(Evidence evidence, SoundRun run) {
        return CARD.finding(
                Severity.FIX,
                Subjects.of(run),
                run.source().at().saidPort() + " needs phantom power, and it is set off at "
                        + run.input().at().saidPort() + ".",
                List.of(),
                List.of(PhantomSetting.fix(evidence, run.input(), true)));
    }

    private static Finding none(SoundRun run) {
        return CARD.finding(
                Severity.FIX,
                Subjects.of(run),
                run.source().at().saidPort() + " needs phantom power, and "
                        + run.input().at().saidPort() + " gives none.",
                List.of(),
                List.of(Fix.of("Plug it into an input that gives phantom power, or put a supply for it between.")));
    }

    private static Finding notSaid(List<SoundRun> runs) {
        SoundRun first = runs.getFirst();
        Set<Subject> subjects = new LinkedHashSet<>();
        runs.forEach(run -> subjects.addAll(Subjects.of(run)));
        String more = runs.size() == 1 ? "" : " (and " + (runs.size() - 1) + " more on it)";
        return CARD.finding(
                Severity.NOTE,
                List.copyOf(subjects),
                first.source().at().saidPort() + " needs phantom power, and the type of "
                        + first.input().at().saidPort() + " does not say that it gives any" + more + ".",
                List.of(),
                List.of(Fix.of("Look it up, and enter it in the type.")));
    }
}
