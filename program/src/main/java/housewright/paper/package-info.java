/**
 * What each person holds in the hand, as data: a paper is a small class that asks the {@link housewright.study.Study}
 * and gives sheets, a sheet is a list of blocks. What kind of file becomes of it is the business of the packages below.
 * No paper has a figure of its own; what nobody has said is a blank to fill in, never a guess.
 */
@NullMarked
package housewright.paper;

import org.jspecify.annotations.NullMarked;
