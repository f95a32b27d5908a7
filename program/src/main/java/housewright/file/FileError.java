package housewright.file;

import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with a file.
 *
 * @param file its name, as handed to the reader
 * @param line from 1; 0 where it concerns no single line
 * @param column from 1
 * @param path where in the document, such as {@code cables.C014.to} or {@code patch.desk[3]} (the third entry); empty
 *     for the whole document
 * @param found what stands there: text in quotation marks, or words such as {@code a list}
 * @param expected what belongs there; empty where found says it all
 * @param nearest the word that was probably meant
 */
public record FileError(
        String file,
        int line,
        int column,
        String path,
        String found,
        String expected,
        @Nullable String nearest) {

    /** In one line: {@code hall.yaml:41:12  cables.C014.to: found "desk.lnk", expected a port; did you mean "link"?} */
    public String text() {
        StringBuilder text = new StringBuilder(file);
        if (line > 0) {
            text.append(':').append(line).append(':').append(column);
        }
        text.append("  ");
        if (!path.isEmpty()) {
            text.append(path).append(": ");
        }
        text.append("found ").append(found);
        if (!expected.isEmpty()) {
            text.append(", expected ").append(expected);
        }
        if (nearest != null) {
            text.append("; did you mean \"").append(nearest).append("\"?");
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return text();
    }
}
