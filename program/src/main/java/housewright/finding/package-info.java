/** What is wrong with a project, how bad it is, what says so, and how to put it right: plain data, no reckoning. */
@NullMarked
package housewright.finding;

import org.jspecify.annotations.NullMarked;
