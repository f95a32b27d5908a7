package housewright.paper;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What labels are printed on, given by its measurements in mm: a sheet of labels in columns and rows, or a tape that is
 * cut where a label ends.
 *
 * @param name such as {@code a4-44}; for one given by its measurements these
 * @param pageWidth of the sheet; of a tape the length of one label
 * @param pageHeight of the sheet; of a tape its width
 * @param width of one label
 * @param height of one label
 * @param left from the sheet's left edge to the first column
 * @param top from the sheet's upper edge to the first row
 * @param across from the left edge of one column to that of the next
 * @param down from the upper edge of one row to that of the next
 */
public record LabelStock(
        String name,
        double pageWidth,
        double pageHeight,
        int columns,
        int rows,
        double width,
        double height,
        double left,
        double top,
        double across,
        double down) {
    private static final double INCH = 25.4;

    /** Rounding in printed measurements. */
    private static final double CLOSE = 0.3;

    private static final double LEAST_TAPE = 6;
    private static final double MOST_TAPE = 60;

    /** The length of a label on a tape that is two or three times as long as it is wide, in mm. */
    private static final double TAPE_LABEL = 60;

    /** Grids that many makers sell (common practice, measurements from memory): measure your sheet before you print. */
    private static final List<LabelStock> USUAL = List.of(
            sheet("a4-21", PageSize.A4, 3, 7, 63.5, 38.1, 7.21, 15.15, 66.04, 38.1),
            sheet("a4-24", PageSize.A4, 3, 8, 70, 37, 0, 0.5, 70, 37),
            sheet("a4-40", PageSize.A4, 4, 10, 52.5, 29.7, 0, 0, 52.5, 29.7),
            sheet("a4-44", PageSize.A4, 4, 11, 48.5, 25.4, 8, 8.8, 48.5, 25.4),
            sheet("a4-65", PageSize.A4, 5, 13, 38.1, 21.2, 4.67, 10.7, 40.64, 21.2),
            sheet("letter-30", PageSize.LETTER, 3, 10, 2.625 * INCH, INCH, 0.1875 * INCH, INCH / 2, 2.75 * INCH, INCH),
            sheet("letter-20", PageSize.LETTER, 2, 10, 4 * INCH, INCH, 0.15625 * INCH, INCH / 2, 4.1875 * INCH, INCH),
            sheet(
                    "letter-80",
                    PageSize.LETTER,
                    4,
                    20,
                    1.75 * INCH,
                    INCH / 2,
                    0.28125 * INCH,
                    INCH / 2,
                    2.0625 * INCH,
                    INCH / 2),
            tape(12),
            tape(18),
            tape(24));

    private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
    private static final Pattern TAPE = Pattern.compile("tape[- ]" + NUMBER + "(?:x" + NUMBER + ")?");
    private static final Pattern SHEET =
            Pattern.compile("(a4|letter|" + NUMBER + "x" + NUMBER + ") (\\d{1,3})x(\\d{1,3}) " + NUMBER + "x" + NUMBER
                    + " at " + NUMBER + "x" + NUMBER + " every " + NUMBER + "x" + NUMBER);

    /** How one is given by its measurements. */
    public static final String EXPECTED =
            "one of " + String.join(", ", USUAL.stream().map(LabelStock::name).toList())
                    + ", or measurements in mm: \"a4 4x11 48.5x25.4 at 8x8.8 every 48.5x25.4\" (sheet, columns by rows, a label's"
                    + " width by height, the first label's distance from the left and upper edge, from one label's edge to the"
                    + " next across and down), or \"tape 12x70\" (width, and how long a label is)";

    public LabelStock {
        if (columns < 1 || rows < 1 || !(width >= 5) || !(height >= 5)) {
            throw new IllegalArgumentException(
                    "A sheet of labels has one column and row at least, and no label under 5 mm");
        }
        if ((columns > 1 && across < width - CLOSE) || (rows > 1 && down < height - CLOSE)) {
            throw new IllegalArgumentException("Labels of %s x %s mm overlap when they come every %s x %s mm"
                    .formatted(said(width), said(height), said(across), said(down)));
        }
        double right = left + (columns - 1) * across + width;
        double bottom = top + (rows - 1) * down + height;
        if (right > pageWidth + CLOSE || bottom > pageHeight + CLOSE) {
            throw new IllegalArgumentException("The labels reach %s mm across and %s mm down, the sheet %s x %s mm"
                    .formatted(said(right), said(bottom), said(pageWidth), said(pageHeight)));
        }
    }

    /** Usual grids and tapes. */
    public static List<LabelStock> usual() {
        return USUAL;
    }

    /** What most people have for a size of paper. */
    public static LabelStock usualFor(PageSize size) {
        return find(size == PageSize.A4 ? "a4-44" : "letter-30").orElseThrow();
    }

    private static Optional<LabelStock> find(String name) {
        return USUAL.stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /**
     * One by its name or its measurements, as {@link #EXPECTED} says.
     *
     * @throws IllegalArgumentException when it is neither, or when the measurements do not fit together, in words
     */
    public static LabelStock parse(String text) {
        String asked = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        LabelStock known = find(asked).orElse(null);
        if (known != null) {
            return known;
        }
        Matcher tape = TAPE.matcher(asked);
        if (tape.matches()) {
            double wide = Double.parseDouble(tape.group(1));
            double length = tape.group(2) == null ? TAPE_LABEL : Double.parseDouble(tape.group(2));
            if (wide < LEAST_TAPE || wide > MOST_TAPE || length < 10 || length > 300) {
                throw new IllegalArgumentException("A tape is 6 to 60 mm wide and a label on it 10 to 300 mm long");
            }
            return tape(wide, length);
        }
        Matcher sheet = SHEET.matcher(asked);
        if (!sheet.matches()) {
            throw new IllegalArgumentException("Labels are " + EXPECTED);
        }
        boolean own = sheet.group(2) != null;
        PageSize page = asked.startsWith("letter") ? PageSize.LETTER : PageSize.A4;
        return new LabelStock(
                asked,
                own ? number(sheet, 2) : page.width(),
                own ? number(sheet, 3) : page.height(),
                Integer.parseInt(sheet.group(4)),
                Integer.parseInt(sheet.group(5)),
                number(sheet, 6),
                number(sheet, 7),
                number(sheet, 8),
                number(sheet, 9),
                number(sheet, 10),
                number(sheet, 11));
    }

    private static double number(Matcher matcher, int group) {
        return Double.parseDouble(matcher.group(group));
    }

    private static LabelStock sheet(
            String name,
            PageSize page,
            int columns,
            int rows,
            double width,
            double height,
            double left,
            double top,
            double across,
            double down) {
        return new LabelStock(name, page.width(), page.height(), columns, rows, width, height, left, top, across, down);
    }

    private static LabelStock tape(double wide) {
        return tape(wide, TAPE_LABEL);
    }

    private static LabelStock tape(double wide, double length) {
        String name = "tape-" + said(wide) + (length == TAPE_LABEL ? "" : "x" + said(length));
        return new LabelStock(name, length, wide, 1, 1, length, wide, 0, 0, length, wide);
    }

    public boolean isTape() {
        return columns == 1 && rows == 1 && width == pageWidth && height == pageHeight;
    }

    public int perPage() {
        return columns * rows;
    }

    /** Of a label counted from 0 along the rows, from the left edge of its page. */
    double left(int number) {
        return left + number % perPage() % columns * across;
    }

    /** The same from the upper edge. */
    double top(int number) {
        int row = number % perPage() / columns;
        return top + row * down;
    }

    /** "4 x 11 labels of 48.5 x 25.4 mm". */
    public String said() {
        return isTape()
                ? "tape " + said(height) + " mm wide, labels " + said(width) + " mm long"
                : columns + " x " + rows + " labels of " + said(width) + " x " + said(height) + " mm on "
                        + said(pageWidth)
                        + " x " + said(pageHeight) + " mm, the first " + said(left) + " mm from the left and "
                        + said(top)
                        + " mm from the top";
    }

    private static String said(double mm) {
        return Say.number(mm, 2);
    }
}
