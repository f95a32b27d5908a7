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
        return !chain(plug, socket, adapters).isEmpty() || goes(plug, socket);
    }

    /** The shortest chain of these adapters that is needed between; empty where none is needed or none will do. */
    static List<Adapter> chain(@Nullable Connector plug, @Nullable Connector socket, List<Adapter> adapters) {
        if (goes(plug, socket)) {
            return List.of();
        }
        for (Adapter one : adapters) {
            if (between(plug, one.from(), one.to(), socket) || between(plug, one.to(), one.from(), socket)) {
                return List.of(one);
            }
        }
        for (Adapter near : adapters) {
            for (Connector face : List.of(near.from(), near.to())) {
                Connector back = face == near.from() ? near.to() : near.from();
                if (!goes(face, socket)) {
                    continue;
                }
                for (Adapter far : adapters) {
                    if (far != near
                            && (between(plug, far.from(), far.to(), back)
                                    || between(plug, far.to(), far.from(), back))) {
                        return List.of(near, far);
                    }
                }
            }
        }
        return List.of();
    }

    /** One face of an adapter goes into the socket, and the plug into its other. */
    private static boolean between(
            @Nullable Connector plug, Connector face, Connector back, @Nullable Connector socket) {
        return goes(face, socket) && goes(plug, back);
    }
}
