/**
 * What a rule is, what it may ask, and how rules are run. The rules themselves stand in {@code check.<trade>}, one
 * small class each.
 */
@NullMarked
package housewright.check;

import org.jspecify.annotations.NullMarked;
