package housewright.check.network;

import housewright.finding.Subject;
import housewright.model.Words;
import housewright.network.Link;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How these rules say things. */
final class Said {
    private Said() {}

    /** The names, or as many as are named and how many more there are. */
    static String some(Collection<String> names, int most) {
        if (names.size() <= most) {
            return Words.and(names);
        }
        return names.stream().limit(most).collect(Collectors.joining(", ")) + " and " + (names.size() - most) + " more";
    }

    static String things(Collection<String> things, int most) {
        return some(things.stream().map(Words::said).toList(), most);
    }

    /** "C523 between switch rear, port 4 and creche cam, net". */
    static String link(Link link) {
        return link.said() + " between " + link.one().at().saidPort() + " and "
                + link.other().at().saidPort();
    }

    /** "100 Mbit/s" or "1 Gbit/s". */
    static String rate(double bitsPerSecond) {
        return bitsPerSecond >= 1e9
                ? String.format(Locale.ROOT, "%.3g Gbit/s", bitsPerSecond / 1e9).replace(".00 ", " ")
                : String.format(Locale.ROOT, "%.4g Mbit/s", bitsPerSecond / 1e6).replaceFirst("\\.0+ ", " ");
    }

    static String watts(double watts) {
        return String.format(Locale.ROOT, watts == Math.rint(watts) ? "%.0f W" : "%.1f W", watts);
    }

    static List<Subject> equipment(Collection<String> things) {
        List<Subject> subjects = new ArrayList<>();
        things.forEach(thing -> subjects.add(Subject.equipment(thing)));
        return subjects;
    }

    static List<Subject> cables(Link link) {
        List<Subject> subjects = new ArrayList<>();
        link.line().leads().forEach(lead -> subjects.add(Subject.cable(lead.id())));
        return subjects;
    }
}
