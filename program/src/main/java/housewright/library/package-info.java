/**
 * The built-in library: maker-neutral types of equipment, cables and adapters, packed with the program in the format
 * of a project file. Old versions are kept, so that a proof never changes by itself.
 */
@NullMarked
package housewright.library;

import org.jspecify.annotations.NullMarked;
