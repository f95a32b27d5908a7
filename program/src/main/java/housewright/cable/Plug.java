package housewright.cable;

import housewright.model.Connector;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Ref.Address;
import org.jspecify.annotations.Nullable;

/**
 * One end of a cable, in a socket.
 *
 * @param at where it is plugged in
 * @param equipment the thing as it is at the moment; null where it is not there
 * @param model its type; null where that is not known
 * @param port the socket; null where the type does not have it or nobody has counted its sockets
 * @param connector what the cable has at this end, made up or by its type; null where neither says
 */
public record Plug(
        Address at,
        @Nullable Equipment equipment,
        @Nullable Model model,
        @Nullable Port port,
        @Nullable Connector connector) {
    /** The socket passes straight through to another of the same panel. */
    public boolean isPassive() {
        return port != null && port.passive();
    }

    /** The socket, without a channel: {@code desk.out-1}. */
    public String socket() {
        return at.thing() + "." + at.spot().name();
    }
}
