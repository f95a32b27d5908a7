/** The rules about what is missing: in the entries, in the orders, and in what the hall is handed at the end. */
@NullMarked
package housewright.check.complete;

import org.jspecify.annotations.NullMarked;
