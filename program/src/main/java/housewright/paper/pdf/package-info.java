/** Papers as PDF, to print. */
@NullMarked
package housewright.paper.pdf;

import org.jspecify.annotations.NullMarked;
