/**
 * A job in numbers, for those who search: all time in which nobody could work is cut out, so that what is left is one axis
 * of working time on which time up to the finish is a plain number (which is what makes good bounds possible). The way
 * back from the axis to the clock is here, too.
 */
@NullMarked
package housewright.plan.axis;

import org.jspecify.annotations.NullMarked;
