package housewright.cable;

import housewright.model.Port;
import housewright.model.Signal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A run from one piece of equipment to the next: one cable, or several that meet in panels which pass straight through.
 *
 * @param from in what is no panel, where it starts; null where it starts loose or in a panel's free side
 * @param to the same where it ends
 * @param leads the cables in order, one at least
 */
public record Line(@Nullable Plug from, @Nullable Plug to, List<Lead> leads) {
    public Line {
        leads = List.copyOf(leads);
    }

    /** Length of all its cables; null where that of one is not known. */
    public @Nullable Double metres() {
        double sum = 0;
        for (Lead lead : leads) {
            Span span = lead.span();
            if (span == null) {
                return null;
            }
            sum += span.metres();
        }
        return sum;
    }

    /** What it carries, by the socket at either end; null where neither says. */
    public @Nullable Signal signal() {
        Signal one = signal(from);
        return one != null ? one : signal(to);
    }

    /** The end that the signal leaves from; {@link #from} where it goes both ways or nobody knows. */
    public @Nullable Plug source() {
        return isTurned() ? to : from;
    }

    /** The end that the signal arrives at. */
    public @Nullable Plug sink() {
        return isTurned() ? from : to;
    }

    /** The ids of its cables, in order. */
    public List<String> ids() {
        return leads.stream().map(Lead::id).toList();
    }

    private boolean isTurned() {
        Port one = from == null ? null : from.port();
        Port other = to == null ? null : to.port();
        return (one != null && one.in() != null) || (other != null && other.out() != null && !leaves(one));
    }

    private static boolean leaves(@Nullable Port port) {
        return port != null && (port.out() != null || port.both() != null);
    }

    static @Nullable Signal signal(@Nullable Plug plug) {
        return plug == null || plug.port() == null ? null : plug.port().signal();
    }
}
