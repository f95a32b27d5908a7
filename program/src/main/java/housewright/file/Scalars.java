package housewright.file;

import housewright.file.Node.Look;
import housewright.file.ValueType.One;
import housewright.model.Word;
import housewright.model.WordingException;
import housewright.model.Words;
import housewright.model.Written;
import housewright.unit.Quantities;
import housewright.unit.Quantity;
import housewright.unit.VideoFormat;
import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;

/** Single values: how each is read and written, and what is said where it does not read. */
final class Scalars {
    private static final ClassValue<Method> PARSERS = new ClassValue<>() {
        @Override
        protected Method computeValue(Class<?> type) {
            try {
                return type.getMethod("parse", String.class);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(type.getName() + " lacks parse(String)", e);
            }
        }
    };

    private static final int MOST_MONEY_DIGITS = 15;
    private static final int MOST_WORDS_SHOWN = 12;

    private Scalars() {}

    /** @throws IllegalArgumentException where the text does not read as such a value */
    static Object parse(One one, String text) {
        return switch (one.notation()) {
            case TEXT -> text;
            case WHOLE -> whole(text, one);
            case DECIMAL -> decimal(text, one);
            case MONEY -> money(text, one);
            case YES_NO, ON_OFF -> {
                Boolean yes = Words.yesOrNo(text);
                if (yes == null) {
                    throw new WordingException(text, expected(one));
                }
                yield yes;
            }
            case WORD -> {
                Object word = one.words().get(text);
                if (word == null) {
                    throw new WordingException(text, expected(one));
                }
                yield word;
            }
            case QUANTITY -> Quantities.parse(one.type().asSubclass(Quantity.class), text);
            case PICTURE_FORMAT -> VideoFormat.parse(text);
            case WRITTEN -> RecordForm.invoke(PARSERS.get(one.type()), text);
            case MOMENT -> moment(text, one);
            case DATE -> date(text, 0, text.length(), one);
            case TIME -> time(text, 0, one);
            case ZONE -> zone(text, one);
        };
    }

    private static Integer whole(String text, One one) {
        int digits = text.startsWith("-") ? 1 : 0;
        if (!isDigits(text, digits, text.length()) || text.length() - digits > 9) {
            throw new WordingException(text, expected(one));
        }
        return Integer.valueOf(text);
    }

    private static Double decimal(String text, One one) {
        boolean known = !text.isEmpty() && text.length() <= 40;
        for (int i = 0; known && i < text.length(); i++) {
            known = "0123456789.+-eE".indexOf(text.charAt(i)) >= 0;
        }
        try {
            double value = known ? Double.parseDouble(text) : Double.NaN;
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw new WordingException(text, expected(one));
    }

    private static BigDecimal money(String text, One one) {
        int point = text.indexOf('.');
        int wholeEnd = point < 0 ? text.length() : point;
        if (text.length() > MOST_MONEY_DIGITS
                || !isDigits(text, 0, wholeEnd)
                || (point >= 0 && !isDigits(text, point + 1, text.length()))) {
            throw new WordingException(text, expected(one));
        }
        return new BigDecimal(text);
    }

    private static LocalDateTime moment(String text, One one) {
        if (text.length() < 16 || (text.charAt(10) != ' ' && text.charAt(10) != 'T')) {
            throw new WordingException(text, expected(one));
        }
        return LocalDateTime.of(date(text, 0, 10, one), time(text, 11, one));
    }

    private static LocalDate date(String text, int from, int to, One one) {
        if (to - from == 10
                && text.charAt(from + 4) == '-'
                && text.charAt(from + 7) == '-'
                && isDigits(text, from, from + 4)
                && isDigits(text, from + 5, from + 7)
                && isDigits(text, from + 8, to)) {
            try {
                return LocalDate.of(
                        Integer.parseInt(text, from, from + 4, 10),
                        Integer.parseInt(text, from + 5, from + 7, 10),
                        Integer.parseInt(text, from + 8, to, 10));
            } catch (DateTimeException e) {
                // no such day: said below
            }
        }
        throw new WordingException(text, expected(one));
    }

    /** Hours and minutes, and seconds where they are not 0. */
    private static LocalTime time(String text, int from, One one) {
        int length = text.length() - from;
        if ((length == 5 || (length == 8 && text.charAt(from + 5) == ':' && isDigits(text, from + 6, from + 8)))
                && text.charAt(from + 2) == ':'
                && isDigits(text, from, from + 2)
                && isDigits(text, from + 3, from + 5)) {
            try {
                return LocalTime.of(
                        Integer.parseInt(text, from, from + 2, 10),
                        Integer.parseInt(text, from + 3, from + 5, 10),
                        length == 5 ? 0 : Integer.parseInt(text, from + 6, from + 8, 10));
            } catch (DateTimeException e) {
                // no such time: said below
            }
        }
        throw new WordingException(text, expected(one));
    }

    private static ZoneId zone(String text, One one) {
        try {
            if (text.equals("UTC") || text.indexOf('/') > 0) {
                return ZoneId.of(text);
            }
        } catch (DateTimeException e) {
            // said below
        }
        throw new WordingException(text, expected(one));
    }

    private static boolean isDigits(String text, int from, int to) {
        for (int i = from; i < to; i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return to > from;
    }

    /** As the file has it; reading it gives an equal value. */
    static String text(One one, Object value) {
        return switch (one.notation()) {
            case TEXT, WHOLE, ZONE -> value.toString();
            case DECIMAL -> {
                String text = value.toString();
                yield text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
            }
            case MONEY -> ((BigDecimal) value).toPlainString();
            case YES_NO -> (Boolean) value ? "yes" : "no";
            case ON_OFF -> (Boolean) value ? "on" : "off";
            case WORD -> ((Word) value).word();
            case QUANTITY -> ((Quantity) value).text();
            case PICTURE_FORMAT -> ((VideoFormat) value).text();
            case WRITTEN -> ((Written) value).text();
            case MOMENT, DATE, TIME -> value.toString().replace('T', ' ');
        };
    }

    static Look look(One one) {
        return switch (one.notation()) {
            case TEXT, WRITTEN, TIME -> Look.TEXT;
            case WHOLE, DECIMAL, MONEY -> Look.NUMBER;
            case YES_NO, ON_OFF -> Look.TRUTH;
            case WORD, QUANTITY, PICTURE_FORMAT, MOMENT, DATE, ZONE -> Look.PLAIN;
        };
    }

    /** What is due, as a noun phrase. */
    static String expected(One one) {
        return switch (one.notation()) {
            case TEXT -> "text";
            case WHOLE -> "a whole number";
            case DECIMAL -> "a number such as 0.7";
            case MONEY -> "an amount as a plain number, such as 2900 or 12.50, in the project's currency";
            case YES_NO -> "yes or no";
            case ON_OFF -> "on or off";
            case WORD -> wordExpected(one);
            case QUANTITY, PICTURE_FORMAT ->
                withArticle(Quantities.dimension(one.type())) + " such as " + Quantities.example(one.type());
            case WRITTEN -> Phrases.of(one.type());
            case MOMENT -> "a day and time such as 2027-02-15 09:00";
            case DATE -> "a day such as 2027-02-15";
            case TIME -> "a time such as \"19:00\"";
            case ZONE -> "a time zone such as Europe/London";
        };
    }

    /** The words that a slip may be compared with. */
    static Collection<String> candidates(One one) {
        return switch (one.notation()) {
            case WORD -> one.words().keySet();
            case ZONE -> ZoneId.getAvailableZoneIds().stream().sorted().toList();
            case YES_NO -> List.of("yes", "no");
            case ON_OFF -> List.of("on", "off");
            default -> List.of();
        };
    }

    private static String wordExpected(One one) {
        String what = withArticle(Phrases.words(one.type()));
        return one.words().size() > MOST_WORDS_SHOWN
                ? what
                : what + ": " + Phrases.oneOf(List.copyOf(one.words().keySet()));
    }

    static String withArticle(String noun) {
        return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }
}
