/** Edits on a project: each gives a new project; a list of them is one batch, applied and undone as one. */
@NullMarked
package housewright.model.change;

import org.jspecify.annotations.NullMarked;
