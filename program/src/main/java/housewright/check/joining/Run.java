package housewright.check.joining;

import housewright.cable.Cabling;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Port;
import housewright.model.Signal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A run of analogue sound whose two ends are known: what gives, and what takes.
 *
 * @param source in the output
 * @param input in the input; what a {@code both} port is counted as does not matter
 */
record Run(Plug source, Plug input, Line line) {
    static List<Run> ofSound(Cabling cabling) {
        List<Run> runs = new ArrayList<>();
        for (Line line : cabling.lines()) {
            Run run = of(line);
            if (run != null) {
                runs.add(run);
            }
        }
        return runs;
    }

    private static @Nullable Run of(Line line) {
        Plug from = line.from();
        Plug to = line.to();
        if (Signalled.of(from) != Signal.ANALOG_AUDIO || Signalled.of(to) != Signal.ANALOG_AUDIO) {
            return null;
        }
        Plug one = Objects.requireNonNull(from);
        Plug other = Objects.requireNonNull(to);
        if (port(one).leaves() && port(other).arrives() && port(one).in() == null) {
            return new Run(one, other, line);
        }
        return port(other).leaves() && port(one).arrives() ? new Run(other, one, line) : null;
    }

    Port out() {
        return port(source);
    }

    Port in() {
        return port(input);
    }

    /** Speech both ways and power on one pair, as intercom has it: its own world of levels. */
    boolean isBothWays() {
        return out().both() != null || in().both() != null;
    }

    private static Port port(Plug plug) {
        return Objects.requireNonNull(plug.port());
    }
}
