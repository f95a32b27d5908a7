package housewright.check.joining;

import housewright.model.Adapter;
import housewright.model.Connector;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What goes into what, straight or by way of adapters. An adapter may be used either way round. */
final class Mating {
    private Mating() {}

    /**
     * The plug goes into the socket. Beside what is made for each other, a mono jack goes into a stereo socket and the
     * other way round, and a two-pole loudspeaker plug into a four-pole socket. What is not known goes.
     */
    static boolean goes(@Nullable Connector plug, @Nullable Connector socket) {
        if (plug == null || socket == null || plug == Connector.ADAPTER || socket == Connector.ADAPTER) {
            return true;
        }
        return socket.mate() == plug
                || (plug == Connector.TS && socket == Connector.TRS)
                || (plug == Connector.TRS && socket == Connector.TS)
                || (plug == Connector.SPEAKER_2 && socket == Connector.SPEAKER_4);
    }

    /** As {@link #goes}, straight, with one of these adapters between, or with two. */
    static boolean goesBy(@Nullable Connector plug, @Nullable Connector socket, List<Adapter> adapters) {
        return goes(plug, socket)
                || (!adapters.isEmpty()
                        && (between(plug, socket, adapters) != null || goesByTwo(plug, socket, adapters)));
    }

    /** The one of these adapters that is wanted between; null where none is needed or none will do. */
    static @Nullable Adapter between(@Nullable Connector plug, @Nullable Connector socket, List<Adapter> adapters) {
        if (goes(plug, socket)) {
            return null;
        }
        for (Adapter each : adapters) {
            if (joins(plug, each.from(), each.to(), socket) || joins(plug, each.to(), each.from(), socket)) {
                return each;
            }
        }
        return null;
    }

    private static boolean goesByTwo(@Nullable Connector plug, @Nullable Connector socket, List<Adapter> adapters) {
        for (Adapter near : adapters) {
            boolean straight = goes(near.from(), socket) && between(plug, near.to(), adapters) != null;
            if (straight || (goes(near.to(), socket) && between(plug, near.from(), adapters) != null)) {
                return true;
            }
        }
        return false;
    }

    /** One face of an adapter goes into the socket, and the plug into its other. */
    private static boolean joins(@Nullable Connector plug, Connector face, Connector back, @Nullable Connector socket) {
        return goes(face, socket) && goes(plug, back);
    }
}
