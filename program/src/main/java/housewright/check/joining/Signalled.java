package housewright.check.joining;

import housewright.cable.Cabling;
import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Port;
import housewright.model.Signal;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What each cable carries, by the sockets at the two ends of the runs it is in. */
final class Signalled {
    private Signalled() {}

    /** By the cable's id, the signals of all its ways. */
    static Map<String, Set<Signal>> byCable(Cabling cabling) {
        Map<String, Set<Signal>> signals = new LinkedHashMap<>();
        for (Line line : cabling.lines()) {
            Signal one = of(line.from());
            Signal other = of(line.to());
            for (Lead lead : line.leads()) {
                Set<Signal> all = signals.computeIfAbsent(lead.id(), id -> new LinkedHashSet<>(2));
                if (one != null) {
                    all.add(one);
                }
                if (other != null) {
                    all.add(other);
                }
            }
        }
        return signals;
    }

    static @Nullable Signal of(@Nullable Plug plug) {
        Port port = plug == null ? null : plug.port();
        return port == null ? null : port.signal();
    }
}
