/** Papers as web pages, and the markup that the printed ones are made from. */
@NullMarked
package housewright.paper.html;

import org.jspecify.annotations.NullMarked;
