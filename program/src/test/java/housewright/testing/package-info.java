/** What tests of several packages share. */
@NullMarked
package housewright.testing;

import org.jspecify.annotations.NullMarked;
