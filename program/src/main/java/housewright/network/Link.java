package housewright.network;

import housewright.cable.Lead;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Kind;
import org.jspecify.annotations.Nullable;

/**
 * Two network ports joined by a cable, or by several that meet in panels.
 *
 * @param one where the line starts
 * @param other where it ends
 */
public record Link(Line line, Plug one, Plug other) {
    /** In bit/s, of the slower port; null where neither says. */
    public @Nullable Double rate() {
        Double first = rate(one);
        Double second = rate(other);
        return first == null ? second : second == null ? first : (Double) Math.min(first, second);
    }

    /** In bit/s; null where the port does not say. */
    public static @Nullable Double rate(Plug plug) {
        return plug.port() == null || plug.port().rate() == null
                ? null
                : (Double) plug.port().rate().bitsPerSecond();
    }

    /** The end that is not in this thing. */
    public Plug far(String thing) {
        return one.at().thing().equals(thing) ? other : one;
    }

    /** The end that is in this thing. */
    public Plug near(String thing) {
        return one.at().thing().equals(thing) ? one : other;
    }

    public boolean joinsSwitches() {
        return isSwitch(one) && isSwitch(other);
    }

    public static boolean isSwitch(Plug plug) {
        return plug.model() != null && plug.model().kind() == Kind.SWITCH;
    }

    /** Its cables, "C511 to C513" where there are several. */
    public String said() {
        Lead first = line.leads().getFirst();
        Lead last = line.leads().getLast();
        return line.leads().size() == 1 ? first.id() : first.id() + " to " + last.id();
    }

    /** A socket has one line, so its two sockets tell a link from all others. */
    @Override
    public boolean equals(@Nullable Object object) {
        return object instanceof Link link
                && one.at().equals(link.one.at())
                && other.at().equals(link.other.at())
                && line.leads()
                        .getFirst()
                        .id()
                        .equals(link.line.leads().getFirst().id());
    }

    @Override
    public int hashCode() {
        return 31 * one.at().hashCode() + other.at().hashCode();
    }
}
