/** The tables of papers as text with commas (RFC 4180). */
@NullMarked
package housewright.paper.csv;

import org.jspecify.annotations.NullMarked;
