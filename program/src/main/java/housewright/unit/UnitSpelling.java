package housewright.unit;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Finds the unit that was probably meant by a word that is none. Asked only when there is an error to report. */
final class UnitSpelling {
    /**
     * Words that are not read, because there would be no end to them, but known well enough to say what to write
     * instead.
     */
    private static final String WORDS = """
            mm millimetres millimeters
            cm centimetres centimeters
            m metres meters mtr
            km kilometres kilometers
            in inches " \u2033 ''
            ft feet foot ' \u2032
            yd yards
            us microseconds usec
            ms milliseconds msec
            s seconds secs
            min minutes
            h hours hrs
            d days
            g grams grammes
            kg kilograms kilos
            t tonnes
            oz ounces
            lb pounds lbs
            W watts
            kW kilowatts
            V volts
            A amps amperes
            mA milliamps
            ohm ohms
            Hz hertz
            MHz megahertz
            bit/s bps b/s
            kbit/s kbps kb/s
            Mbit/s Mbps Mb/s
            Gbit/s Gbps Gb/s
            lx lux
            fc footcandles
            cd candelas
            deg degrees
            % percent
            degC C celsius
            degF F fahrenheit
            K kelvin
            mm2 sqmm mm^2
            AWG gauge
            dB decibels
            dBA dB(A)
            N newtons
            lm lumens
            cd/m2 nits
            """;

    /** Of what a person mistypes, at most so large a share differs from what was meant. */
    private static final double MOST_WRONG = 0.4;

    private static final int LONGEST_WORD = 20;

    private static final Map<String, Unit> KNOWN = words();

    private UnitSpelling() {}

    /** The unit of any kind that this word names in full, in whatever case; null for none. */
    static @Nullable Unit findNamed(String word) {
        Unit exact = Unit.findBySymbol(word);
        return exact != null ? exact : KNOWN.get(lower(word));
    }

    /** The unit of the due kind whose symbol or name is nearest; null when nothing is near. */
    static @Nullable Unit findNearest(String word, Dimension due) {
        if (word.length() > LONGEST_WORD) {
            return null;
        }
        Unit nearest = null;
        double least = MOST_WRONG;
        for (var entry : KNOWN.entrySet()) {
            String known = entry.getKey();
            double share = (double) editDistance(lower(word), known) / Math.max(word.length(), known.length());
            if (due.takes(entry.getValue()) && (share < least || (nearest == null && share == least))) {
                nearest = entry.getValue();
                least = share;
            }
        }
        return nearest;
    }

    /**
     * Symbols first, so that they win over names that are as near. Where case alone tells two apart (mW, MW), the first
     * wins.
     */
    private static Map<String, Unit> words() {
        var words = new LinkedHashMap<String, Unit>();
        for (Unit unit : Unit.values()) {
            words.putIfAbsent(lower(unit.symbol()), unit);
        }
        for (String line : WORDS.lines().toList()) {
            String[] names = line.split(" ");
            for (int i = 1; i < names.length; i++) {
                words.putIfAbsent(lower(names[i]), Objects.requireNonNull(Unit.findBySymbol(names[0])));
            }
        }
        return words;
    }

    private static String lower(String word) {
        return word.toLowerCase(Locale.ROOT);
    }

    /** Levenshtein: the fewest letters to put in, drop or change. */
    private static int editDistance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
