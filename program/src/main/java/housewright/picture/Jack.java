package housewright.picture;

import housewright.model.Port;
import housewright.model.Ref.Address;

/**
 * A socket that a picture goes through.
 *
 * @param at the socket, without a channel
 */
public record Jack(Address at, Port port) {}
