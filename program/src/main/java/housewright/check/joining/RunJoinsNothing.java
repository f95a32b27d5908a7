package housewright.check.joining;

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
import housewright.model.Port;
import housewright.model.Signal;
import housewright.model.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Two ports that meet through panels and cannot understand each other. Each cable of such a run is in order by itself,
 * so nobody sees it on the schedule: the network in the stage link's socket, an output that meets an output.
 */
public final class RunJoinsNothing implements Rule {
    private static final Card CARD = new Card(
            "run-joins-nothing",
            "Do the two ends of every run through panels speak the same signal and protocol, one giving and one taking?",
            Set.of(Severity.STOP),
            new Source.TheProject(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        List<Finding> findings = new ArrayList<>();
        for (Line line : evidence.cabling().lines()) {
            Plug from = line.from();
            Plug to = line.to();
            Signal one = Signalled.of(from);
            Signal other = Signalled.of(to);
            boolean told = line.leads().size() == 1; // by cable-joins-nothing
            if (told || from == null || to == null || one == null || other == null) {
                continue;
            }
            boolean burns = one != other && (one == Signal.SPEAKER || other == Signal.SPEAKER);
            String why = burns ? null : why(from, to); // that is for speaker-level-into-input to say
            if (why != null) {
                findings.add(finding(line, from, to, why));
            }
        }
        return findings.stream();
    }

    private static @Nullable String why(Plug from, Plug to) {
        Port one = Objects.requireNonNull(from.port());
        Port other = Objects.requireNonNull(to.port());
        if (one.signal() != other.signal()) {
            return "one is " + word(one) + ", the other " + word(other);
        }
        if (one.protocol() != null
                && other.protocol() != null
                && !one.protocol().equals(other.protocol())) {
            return "one speaks " + one.protocol() + ", the other " + other.protocol();
        }
        if (!one.arrives() && !other.arrives()) {
            return "both are outputs";
        }
        return one.leaves() || other.leaves() ? null : "both are inputs";
    }

    private static String word(Port port) {
        Signal signal = port.signal();
        return signal == null ? "anything" : signal.word();
    }

    private static Finding finding(Line line, Plug from, Plug to, String why) {
        List<Subject> subjects = new ArrayList<>();
        line.leads().forEach(lead -> subjects.add(Subject.cable(lead.id())));
        subjects.add(Subject.equipment(from.at().thing()));
        subjects.add(Subject.equipment(to.at().thing()));
        String leads = line.leads().stream().map(Lead::id).collect(Collectors.joining(", "));
        return CARD.finding(
                Severity.STOP,
                subjects,
                leads + " lead from " + from.at().saidPort() + " to " + to.at().saidPort()
                        + ", which do not go together: " + why + ".",
                List.of(),
                List.of(Fix.of("Plug one of the cables at the panel where it belongs, or put a converter between.")));
    }
}
