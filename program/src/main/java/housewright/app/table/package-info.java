/**
 * A project as tables that a hand can fly through: rows and columns, what may stand in a cell, and the edits on them.
 * Every edit is worked out as one batch of changes and made by whoever asks for it; nothing here keeps anything.
 */
@NullMarked
package housewright.app.table;

import org.jspecify.annotations.NullMarked;
