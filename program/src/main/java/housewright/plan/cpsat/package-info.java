/**
 * The exact engine: the constraint solver CP-SAT of OR-Tools, the only place where it is used. Goals are taken one after
 * another, each kept while the next is looked at. It begins from a complete legal schedule, so there is always an answer.
 *
 * <p>The model lies on the axis of working time ({@code plan.axis}): a start for each piece, whose domain is where somebody
 * could do it; for each person an optional interval sharing that start; no overlap per person and machine; cumulative
 * tools and conditions; and for each person a row that says that the work done up to the finish cannot be more than the
 * hours up to it, from which the good bounds come.
 *
 * <p>Native code can crash the process; the program therefore runs this in a process of its own ({@code app.plan}). The
 * solver's call-back for bounds is not used, since it brought the process down when tried.
 */
@NullMarked
package housewright.plan.cpsat;

import org.jspecify.annotations.NullMarked;
