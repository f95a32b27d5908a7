/**
 * Question: what does the job look like on paper: which way the signal runs, where in the room things are, what sits
 * where in the racks?
 *
 * <p>Method: every drawing is SVG text, worked out from a {@link housewright.study.Study}. Signal drawings are laid out
 * by layers from sources to destinations with edges of right angles (Eclipse Layout Kernel, layered method), places as
 * frames around what stands in them; one that would not be readable on one sheet is cut by places into several, with
 * references from sheet to sheet. Plans, side views and rack elevations are to scale.
 *
 * <p>A sheet is drawn at print size: 96 of its units are an inch, so that text of 12 units is 9 pt. It has no styles
 * and no script of its own: ink is {@code currentColor}, and classes let a page theme it. Every thing that is drawn has
 * {@code data-subject} (kind and id), a title and a name for a screen reader.
 *
 * <p>Limits: drawings show what the model says. What has no position is listed and not guessed. Widths of text are
 * estimates that err on the wide side, as no font is asked. The same input gives the same bytes; nothing here reads a
 * clock.
 */
@NullMarked
package housewright.drawing;

import org.jspecify.annotations.NullMarked;
