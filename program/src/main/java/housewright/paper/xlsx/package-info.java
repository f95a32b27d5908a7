/** The tables of papers as a workbook, a worksheet each. */
@NullMarked
package housewright.paper.xlsx;

import org.jspecify.annotations.NullMarked;
