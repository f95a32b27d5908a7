/**
 * What stands on which line of DMX, which channels it takes, and what sends to it.
 *
 * <p>Method: runs that hang one on the other are one line (see {@code cable}); from where a line begins it is followed
 * back through splitters, mergers, nodes, radio and the network to what sends. The channels of a thing are those of its
 * mode; of a dimmer without modes, one for each outlet. ANSI E1.11 has 512 slots to a universe.
 *
 * <p>Limits: the universe that a node's socket sends is read off the channel of the sender that is sent to it, u1, u2 and so
 * on, the library's way of naming; where a controller is plugged in directly, any universe may come out of it.
 */
@NullMarked
package housewright.light;

import org.jspecify.annotations.NullMarked;
