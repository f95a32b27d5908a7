/**
 * Which ways pictures take and what each device on the way does to them: which plug they come in by and go out by, and
 * between which two places they must keep one format. What a device does inside is taken from its type: it keeps the
 * format unless it scales, mixes or is a computer; where a type lists no formats nothing is claimed.
 */
@NullMarked
package housewright.picture;

import org.jspecify.annotations.NullMarked;
