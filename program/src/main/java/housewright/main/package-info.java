/** The composition root: puts the parts together and starts the face asked for. Nobody depends on it. */
@NullMarked
package housewright.main;

import org.jspecify.annotations.NullMarked;
