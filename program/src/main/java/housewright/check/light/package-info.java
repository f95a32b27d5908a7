/** Rules about light and what controls it: addresses, lines of DMX, dimmers, looks, buttons. */
@NullMarked
package housewright.check.light;

import org.jspecify.annotations.NullMarked;
