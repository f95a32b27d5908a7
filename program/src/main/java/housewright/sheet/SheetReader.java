package housewright.sheet;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/**
 * Reads spreadsheets: {@code .xlsx} workbooks, and {@code .csv}, {@code .tsv} and {@code .txt} with commas, semicolons or
 * tabs between the cells.
 */
public final class SheetReader {
    /** The largest file that is read. */
    public static final int MOST_BYTES = 25 * 1024 * 1024;

    /** The most rows with anything in them that a sheet may have. */
    public static final int MOST_ROWS = 50_000;

    /** The last column in which anything may stand. */
    public static final int MOST_COLUMNS = 500;

    /** The most cells with anything in them that a file may have. */
    static final int MOST_CELLS = 1_500_000;

    /** The most characters of a cell: what a spreadsheet itself allows. */
    static final int LONGEST_CELL = 32_767;

    private SheetReader() {}

    /**
     * @param name of the file, for its ending
     * @param bytes all of it
     */
    public static SheetReading read(String name, byte[] bytes) {
        try {
            String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
            if (bytes.length == 0) {
                throw new Unreadable("It is empty: 0 bytes.");
            }
            if (bytes.length > MOST_BYTES) {
                throw new Unreadable("It has " + bytes.length / 1024 / 1024 + " MB; a spreadsheet may have "
                        + MOST_BYTES / 1024 / 1024 + " MB.");
            }
            return switch (ending) {
                case "xlsx" -> workbook(bytes);
                case "csv", "tsv", "txt" -> text(name, bytes);
                case "xlsm", "xltm" ->
                    throw new Unreadable(
                            "It may hold macros, which are never run here. Save it as .xlsx without them.");
                case "xls" -> throw new Unreadable(looksLike(bytes, "It is of the older kind .xls"));
                case "ods", "numbers" ->
                    throw new Unreadable("Files of the kind ." + ending + " are not read. Save it as .xlsx or .csv.");
                default ->
                    throw new Unreadable(
                            "Its name does not say what it is: a spreadsheet ends in .xlsx, .csv, .tsv or" + " .txt.");
            };
        } catch (Unreadable e) {
            return new SheetReading.Refused(e.why);
        }
    }

    /** Whether a file begins as a workbook does, whatever its name. */
    public static boolean isWorkbook(byte[] bytes) {
        return begins(bytes, 'P', 'K', 3, 4);
    }

    private static SheetReading workbook(byte[] bytes) throws Unreadable {
        if (!isWorkbook(bytes)) {
            throw new Unreadable(looksLike(bytes, "It is named .xlsx and is no workbook"));
        }
        return Workbook.read(bytes);
    }

    private static SheetReading text(String name, byte[] bytes) throws Unreadable {
        if (isWorkbook(bytes) || isCompound(bytes) || begins(bytes, '%', 'P', 'D', 'F')) {
            throw new Unreadable(looksLike(bytes, "It is named as text and is none"));
        }
        Encoding.Decoded text = Encoding.decode(bytes);
        String plain = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        List<Sheet.Row> rows = Delimited.read(text.text());
        return new SheetReading.Read(List.of(new Sheet(plain, rows)), text.remarks());
    }

    /** What a file is that is not what its name says, and what to do. */
    private static String looksLike(byte[] bytes, String otherwise) {
        if (isCompound(bytes)) {
            return contains(bytes, "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE))
                    ? "It is locked with a password. Open it, take the password away, and save it as .xlsx."
                    : "It is of the older kind .xls. Open it and save it as .xlsx or .csv.";
        }
        if (isWorkbook(bytes)) {
            return otherwise + ": it is a zip archive. Where it is a workbook, name it .xlsx.";
        }
        if (begins(bytes, '%', 'P', 'D', 'F')) {
            return otherwise + ": it is a PDF. Ask for the spreadsheet it was printed from.";
        }
        String start = new String(bytes, 0, Math.min(bytes.length, 500), StandardCharsets.ISO_8859_1)
                .strip()
                .toLowerCase(Locale.ROOT);
        if (start.startsWith("<!doctype html") || start.startsWith("<html") || start.startsWith("<table")) {
            return otherwise + ": it is a web page. Open it in a spreadsheet program and save it as .xlsx.";
        }
        boolean text = start.chars().allMatch(c -> c >= 32 || c == '\n' || c == '\r' || c == '\t');
        return text && !start.isEmpty()
                ? otherwise + ": it looks like text. Where it is a table, name it .csv."
                : otherwise + ". Open it in a spreadsheet program and save it as .xlsx.";
    }

    /** An OLE container: what encrypted workbooks and the older kind are kept in. */
    private static boolean isCompound(byte[] bytes) {
        return begins(bytes, 0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1);
    }

    private static boolean begins(byte[] bytes, int... with) {
        if (bytes.length < with.length) {
            return false;
        }
        for (int i = 0; i < with.length; i++) {
            if ((bytes[i] & 0xFF) != with[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean contains(byte[] bytes, byte[] wanted) {
        for (int i = 0; i + wanted.length <= bytes.length; i++) {
            int same = 0;
            while (same < wanted.length && bytes[i + same] == wanted[same]) {
                same++;
            }
            if (same == wanted.length) {
                return true;
            }
        }
        return false;
    }
}
