package housewright.cable;

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
public record SoundRun(Plug source, Plug input, Line line) {
    /** Those among the runs, in their order. */
    static List<SoundRun> among(List<Line> lines) {
        List<SoundRun> runs = new ArrayList<>();
        for (Line line : lines) {
            SoundRun run = of(line);
            if (run != null) {
                runs.add(run);
            }
        }
        return List.copyOf(runs);
    }

    private static @Nullable SoundRun of(Line line) {
        Plug from = line.from();
        Plug to = line.to();
        if (Line.signal(from) != Signal.ANALOG_AUDIO || Line.signal(to) != Signal.ANALOG_AUDIO) {
            return null;
        }
        Plug one = Objects.requireNonNull(from);
        Plug other = Objects.requireNonNull(to);
        if (port(one).leaves() && port(other).arrives() && port(one).in() == null) {
            return new SoundRun(one, other, line);
        }
        return port(other).leaves() && port(one).arrives() ? new SoundRun(other, one, line) : null;
    }

    public Port out() {
        return port(source);
    }

    public Port in() {
        return port(input);
    }

    /** Speech both ways and power on one pair, as intercom has it: its own world of levels. */
    public boolean isBothWays() {
        return out().both() != null || in().both() != null;
    }

    private static Port port(Plug plug) {
        return Objects.requireNonNull(plug.port());
    }
}
