/**
 * Everything that follows from one project and one library: immutable, each result worked out once, when first asked
 * for. Holds the catalogue of rules.
 */
@NullMarked
package housewright.study;

import org.jspecify.annotations.NullMarked;
