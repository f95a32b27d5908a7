/** A store that is gone when the program ends: for the demo, which leaves nothing behind, and for tests. */
@NullMarked
package housewright.store.memory;

import org.jspecify.annotations.NullMarked;
