/**
 * What each thing takes from the mains, from where, and what that comes to on every outlet and circuit.
 *
 * <p>Method: a thing is fed by the outlet it names as {@code powered-by}, else by the one its mains lead is plugged into,
 * else straight by its circuit. What it takes is its type's power, that of the cards in it, and what it gives away over
 * the network. Sums go up the tree to the circuit. Current is W / (V x power factor) on one phase.
 *
 * <p>Limits: figures are those of the types, typical ones until the data sheets are in; nothing is known of what else the
 * house has on a circuit. A fixed circuit is designed, tested and certified by a licensed electrician under local code.
 */
@NullMarked
package housewright.power;

import org.jspecify.annotations.NullMarked;
