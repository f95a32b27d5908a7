package housewright.light;

import housewright.cable.Chain;
import housewright.cable.Plug;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One line of DMX: what hangs one on the other behind one socket.
 *
 * @param chain its cables
 * @param source the socket it begins at; null where its first cable begins nowhere
 * @param loads the things on it, in order; a terminator is none
 * @param ends the sockets after which nothing follows
 * @param fed something sends into it, or that cannot be told because a type on the way is a sketch
 * @param senders what sends into it
 * @param universes those that are sent into it, as far as that can be told
 */
public record DmxLine(
        Chain chain,
        @Nullable Plug source,
        List<String> loads,
        List<Plug> ends,
        boolean fed,
        Set<String> senders,
        Set<Integer> universes) {}
