/** The rules about cables: how long, how joined, how laid. */
@NullMarked
package housewright.check.cable;

import org.jspecify.annotations.NullMarked;
