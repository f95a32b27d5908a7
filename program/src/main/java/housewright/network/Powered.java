package housewright.network;

import housewright.cable.Plug;
import housewright.signal.Present;
import org.jspecify.annotations.Nullable;

/**
 * A thing that takes its power from the network.
 *
 * @param takes what it takes, in W
 * @param by the port at the other end of its network cable; null where it has none
 * @param gives what that port gives, in W; 0 where it gives none
 * @param otherwise it is known to have power of another kind: a circuit, an outlet, a mains cable
 * @param inlet it has an inlet for mains or a supply of its own
 */
public record Powered(Present thing, double takes, @Nullable Plug by, double gives, boolean otherwise, boolean inlet) {}
