/**
 * The use cases: open a project file, mend it, look a type up; and the documents that give every result to programs.
 */
@NullMarked
package housewright.app;

import org.jspecify.annotations.NullMarked;
