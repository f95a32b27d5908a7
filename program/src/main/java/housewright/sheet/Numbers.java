package housewright.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;
import org.jspecify.annotations.Nullable;

/** Numbers of a workbook as a person would type them: days as days, percentages with their sign, units that are shown. */
final class Numbers {
    /** What a workbook keeps of a number: the digits beyond are left over from its binary form. */
    private static final MathContext DIGITS = new MathContext(15);

    private static final Pattern SHOWN = Pattern.compile("\"([^\"]*)\"");

    private Numbers() {}

    static String text(@Nullable String raw, Cell cell) {
        if (raw == null) {
            return "";
        }
        BigDecimal number;
        try {
            number = new BigDecimal(raw.strip());
        } catch (NumberFormatException e) {
            return raw.strip();
        }
        if (number.precision() - number.scale() > 30 || number.scale() > 400) {
            return raw.strip(); // nothing in a hall is so large or so small, and its digits would be many
        }
        String format = cell.getDataFormatString();
        if (format == null || format.equalsIgnoreCase("General") || format.equals("@")) {
            return plain(number);
        }
        String codes = SHOWN.matcher(format.replaceAll("\\[[^]]*]|\\\\.", "")).replaceAll("");
        if (codes.matches("(?s).*[yYdD].*|(?s).*[hH].*[mM].*|(?s).*[mM]+.*[sS].*")) {
            return moment(cell, number);
        }
        if (codes.contains("%")) {
            return plain(number.movePointRight(2)) + " %";
        }
        Matcher shown = SHOWN.matcher(format.split(";", 2)[0]);
        String unit = shown.find() ? shown.group(1).strip() : "";
        return unit.matches("[\\p{L}°²Ω/]{1,8}") ? plain(number) + " " + unit : plain(number);
    }

    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String moment(Cell cell, BigDecimal number) {
        try {
            LocalDateTime moment = cell.asDate();
            LocalTime time = moment.toLocalTime().withNano(0);
            if (number.signum() >= 0 && number.compareTo(BigDecimal.ONE) < 0) {
                return time.toString();
            }
            return time.equals(LocalTime.MIDNIGHT)
                    ? moment.toLocalDate().toString()
                    : moment.toLocalDate() + " " + time;
        } catch (RuntimeException noDate) { // the library's word for a number that is no day
            return plain(number);
        }
    }
}
