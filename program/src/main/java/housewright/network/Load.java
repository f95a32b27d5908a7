package housewright.network;

import java.util.Set;

/**
 * What one direction of a link carries.
 *
 * @param out the thing that sends
 * @param bitsPerSecond the sum of all sends whose rate is known
 * @param sends their ids
 * @param flooded ids of multicasts that are there only because a switch does not keep them off
 */
public record Load(Link link, String out, double bitsPerSecond, Set<String> sends, Set<String> flooded) {}
