package housewright.unit;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The size and rate of a moving picture: {@code 1080p50}, {@code 1080i50}, {@code 720p59.94}, {@code 1920x1200p60}.
 *
 * <p>After {@code p} (progressive) stand frames a second. After {@code i} (interlaced) stand FIELDS a second, two to a
 * frame, as broadcasters and SMPTE ST 274 count them: {@code 1080i50} has 25 frames a second. The EBU also writes
 * 1080i/25 for the same; because one could be taken for the other, interlaced rates below 47 are refused. 23.98, 29.97,
 * 47.95, 59.94 and 119.88 are short for 24, 30, 48, 60 and 120 times 1000/1001.
 *
 * @param width pixels in a line, 10 to 99999
 * @param height lines, 10 to 99999
 * @param interlaced whether a frame comes as two fields
 * @param rate frames a second, fields where interlaced, as written: whole up to 300, or one of the short ones
 */
public record VideoFormat(int width, int height, boolean interlaced, double rate) {
    static final String EXAMPLE = "1080p50";
    static final List<String> USUAL = List.of(
            "576i50",
            "480i59.94",
            "720p50",
            "720p59.94",
            "1080i50",
            "1080i59.94",
            "1080p25",
            "1080p50",
            "2160p50",
            "1920x1200p60");
    static final String PATTERN = pattern();

    private static final int LEAST_SIZE = 10;
    private static final int MOST_SIZE = 99_999;
    private static final int MOST_RATE = 300;
    private static final int LEAST_FIELDS = 47;
    private static final List<Double> SHORT_RATES = List.of(23.98, 29.97, 47.95, 59.94, 119.88);
    private static final List<Double> FILM_TO_30 = List.of(23.98, 24.0, 25.0, 29.97, 30.0);
    private static final List<Double> TO_60 = List.of(50.0, 59.94, 60.0);
    private static final List<Double> FILM_DOUBLED = List.of(47.95, 48.0);

    /** @throws IllegalArgumentException if the size or rate is out of range */
    public VideoFormat {
        if (Math.min(width, height) < LEAST_SIZE || Math.max(width, height) > MOST_SIZE) {
            throw new IllegalArgumentException("no picture is " + width + "x" + height);
        }
        String trouble = findTrouble(interlaced, rate);
        if (trouble != null) {
            throw new IllegalArgumentException("a picture format " + trouble);
        }
    }

    /** Reads text such as {@code 1080p50}; throws a {@link UnitException} that says what is wrong with any other. */
    public static VideoFormat parse(String text) {
        int scan = Math.max(text.indexOf('p'), text.indexOf('i'));
        int by = text.indexOf('x');
        if (scan < 0) {
            throw wrong(text, "is no picture format: it takes lines, then p or i, then the rate");
        }
        boolean interlaced = text.charAt(scan) == 'i';
        String lines = text.substring(by + 1, Math.max(by + 1, scan));
        int height = size(lines);
        int width = by < 0 ? broadcastWidth(height) : size(text.substring(0, by));
        if (width < LEAST_SIZE || height < LEAST_SIZE) {
            throw wrong(
                    text,
                    by < 0
                            ? "has no broadcast number of lines; write other sizes as width x height"
                            : "has a size that no picture has");
        }
        double rate = rate(text.substring(scan + 1));
        String trouble = findTrouble(interlaced, rate);
        if (trouble != null) {
            throw wrong(text, trouble);
        }
        return new VideoFormat(width, height, interlaced, rate);
    }

    /** Reading it gives an equal format. Broadcast sizes are written by their lines alone. */
    public String text() {
        String size = broadcastWidth(height) == width ? Integer.toString(height) : width + "x" + height;
        return size + (interlaced ? "i" : "p") + QuantityWriter.number(rate);
    }

    /** Whole frames (not fields) a second, exact: 59.94 stands for 60000/1001. */
    public double framesPerSecond() {
        double exact = rate == Math.rint(rate) ? rate : Math.ceil(rate) * 1000 / 1001;
        return interlaced ? exact / 2 : exact;
    }

    /** How long one whole frame takes, to the nearest nanosecond. */
    public long frameNanos() {
        return Math.round(1e9 / framesPerSecond());
    }

    /**
     * The nominal rate of the one serial digital link that carries this format as 4:2:2, 10 bit (a rate over 1.001
     * counts with the whole one): 270 Mbit/s (SMPTE ST 259), 1.485 (ST 292-1), 2.97 (ST 424), 5.94 (ST 2081-1) or 11.88
     * Gbit/s (ST 2082-1). Empty where no such link does, as for the sizes of computers.
     */
    public Optional<DataRate> findSdiRate() {
        boolean simple = FILM_TO_30.contains(rate);
        boolean doubled = TO_60.contains(rate) || FILM_DOUBLED.contains(rate);
        String size = width + "x" + height + (interlaced ? "i" : "p");
        return switch (size) {
            case "720x576i" -> when(rate == 50, 270, Unit.MEGABIT_PER_SECOND);
            case "720x480i" -> when(rate == 59.94, 270, Unit.MEGABIT_PER_SECOND);
            case "1920x1080i" -> when(TO_60.contains(rate), 1.485, Unit.GIGABIT_PER_SECOND);
            case "1280x720p" -> when(simple || TO_60.contains(rate), 1.485, Unit.GIGABIT_PER_SECOND);
            case "1920x1080p", "2048x1080p" -> when(simple || doubled, simple ? 1.485 : 2.97, Unit.GIGABIT_PER_SECOND);
            case "3840x2160p", "4096x2160p" -> when(simple || doubled, simple ? 5.94 : 11.88, Unit.GIGABIT_PER_SECOND);
            default -> Optional.empty();
        };
    }

    @Override
    public String toString() {
        return text();
    }

    private static Optional<DataRate> when(boolean carried, double value, Unit unit) {
        return carried ? Optional.of(new DataRate(value, unit)) : Optional.empty();
    }

    private static int broadcastWidth(int lines) {
        return switch (lines) {
            case 480, 576 -> 720;
            case 720 -> 1280;
            case 1080 -> 1920;
            case 2160 -> 3840;
            case 4320 -> 7680;
            default -> 0;
        };
    }

    private static @Nullable String findTrouble(boolean interlaced, double rate) {
        boolean whole = rate == Math.rint(rate) && rate >= 1 && rate <= MOST_RATE;
        if (!whole && !SHORT_RATES.contains(rate)) {
            return "has a rate that no picture has; it is whole, up to 300, or 23.98, 29.97, 47.95, 59.94, 119.88";
        }
        if (interlaced && rate < LEAST_FIELDS) {
            return "has too few fields; after i stand fields a second, so 25 interlaced frames are i50";
        }
        return null;
    }

    /** Up to five digits; 0 for anything else. */
    private static int size(String digits) {
        return isNumber(digits, 5) ? Integer.parseInt(digits) : 0;
    }

    /** 0 for what is no rate. */
    private static double rate(String text) {
        if (text.equals("23.976")) {
            return 23.98;
        }
        for (Double rate : SHORT_RATES) {
            if (text.equals(QuantityWriter.number(rate))) {
                return rate;
            }
        }
        return isNumber(text, 3) ? Integer.parseInt(text) : 0;
    }

    private static boolean isNumber(String text, int mostDigits) {
        return !text.isEmpty()
                && text.length() <= mostDigits
                && text.charAt(0) != '0'
                && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    private static String pattern() {
        String from47 = "4[7-9]|[5-9][0-9]|[12][0-9]{2}|300|47\\.95|59\\.94|119\\.88";
        return "^(?:480|576|720|1080|2160|4320|[1-9][0-9]{1,4}x[1-9][0-9]{1,4})"
                + "(?:p(?:[1-9]|[1-3][0-9]|4[0-6]|23\\.98|23\\.976|29\\.97|" + from47 + ")|i(?:" + from47 + "))$";
    }

    private static UnitException wrong(String text, String problem) {
        return UnitException.ofFormat(text, problem, USUAL, EXAMPLE);
    }
}
