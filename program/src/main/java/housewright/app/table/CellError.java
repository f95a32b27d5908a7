package housewright.app.table;

import housewright.file.FileError;
import org.jspecify.annotations.Nullable;

/**
 * What is wrong with a cell.
 *
 * @param row id of the row
 * @param column empty where it is the row as a whole
 * @param found what stands there
 * @param expected what belongs there; empty where found says it all
 * @param nearest what was probably meant, to be put into the cell in its stead; null where nothing is near
 */
public record CellError(
        String row,
        String column,
        String found,
        String expected,
        @Nullable String nearest) {

    /** As a sentence. */
    public String text() {
        String text = "Found " + found + (expected.isEmpty() ? "" : ", expected " + expected);
        return text + ".";
    }

    /** @param text of the whole cell, in which the nearest is put where the wrong word is; null where it is not known */
    static CellError of(String row, String column, FileError error, @Nullable String text) {
        return new CellError(
                row, column, error.found(), error.expected(), mended(text, error.found(), error.nearest()));
    }

    private static @Nullable String mended(@Nullable String text, String found, @Nullable String nearest) {
        if (nearest == null || text == null) {
            return nearest;
        }
        String wrong = found.startsWith("\"") && found.endsWith("\"") && found.length() > 2
                ? found.substring(1, found.length() - 1)
                : found;
        if (text.equals(wrong)) {
            return within(wrong, nearest);
        }
        int at = text.indexOf(wrong);
        return at < 0 ? nearest : text.substring(0, at) + within(wrong, nearest) + text.substring(at + wrong.length());
    }

    /** Of a place, either the thing or the port is wrong, and the nearest is one of the two. */
    private static String within(String wrong, String nearest) {
        int dot = wrong.indexOf('.');
        if (dot < 0 || nearest.indexOf('.') >= 0) {
            return nearest;
        }
        String thing = wrong.substring(0, dot);
        String port = wrong.substring(dot + 1);
        return likeness(thing, nearest) >= likeness(port, nearest) ? nearest + "." + port : thing + "." + nearest;
    }

    /** How many letters two words begin and end with alike. */
    private static int likeness(String one, String other) {
        int most = Math.min(one.length(), other.length());
        int front = 0;
        while (front < most && one.charAt(front) == other.charAt(front)) {
            front++;
        }
        int back = 0;
        while (back < most - front && one.charAt(one.length() - 1 - back) == other.charAt(other.length() - 1 - back)) {
            back++;
        }
        return front + back - Math.abs(one.length() - other.length());
    }
}
