package housewright.file;

/** A text that is no document at all; reading stops there. */
final class DocumentException extends Exception {
    private static final long serialVersionUID = 1;

    private final int line;
    private final int column;
    private final String found;
    private final String expected;

    DocumentException(int line, int column, String found, String expected) {
        super(found, null, false, false);
        this.line = line;
        this.column = column;
        this.found = found;
        this.expected = expected;
    }

    FileError error(String file) {
        return new FileError(file, line, column, "", found, expected, null);
    }
}
