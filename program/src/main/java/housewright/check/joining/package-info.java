/**
 * What is plugged into what: whether plugs go into sockets, whether what leaves one end is what the other is made for,
 * in kind, direction, level, balance and power, and whether amplifiers and loudspeakers go together.
 */
@NullMarked
package housewright.check.joining;

import org.jspecify.annotations.NullMarked;
