/**
 * The binder: papers as files in a folder, with what changed since the revision before. What was issued is kept in a
 * manifest in that folder, so that a sheet keeps its revision and its date for as long as it says the same.
 */
@NullMarked
package housewright.app.paper;

import org.jspecify.annotations.NullMarked;
