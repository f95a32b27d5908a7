/**
 * Spreadsheets, as they come: workbooks (XLSX, ISO/IEC 29500) and delimited text, read into rows of texts and written.
 * What is in the rows nobody here knows. Reading is bounded in time and memory, follows no link, runs no formula and no
 * macro, and refuses with a sentence what it cannot read.
 */
@NullMarked
package housewright.sheet;

import org.jspecify.annotations.NullMarked;
