/** The rules about signals: does each feed arrive, and is what arrives fit to be heard and seen? */
@NullMarked
package housewright.check.signal;

import org.jspecify.annotations.NullMarked;
