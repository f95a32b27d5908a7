package housewright.check.picture;

import housewright.finding.Subject;
import housewright.picture.Jack;
import housewright.picture.Stretch;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** How these rules say things. */
final class Said {
    private static final int NAMED = 4;

    private Said() {}

    /** "1080p25, 1080p50 and 3 more". */
    static String formats(Collection<VideoFormat> formats) {
        return some(formats.stream().map(VideoFormat::text).toList(), NAMED);
    }

    /** The names, or as many as are named and how many more there are. */
    static String some(Collection<String> names, int most) {
        if (names.size() <= most) {
            List<String> all = List.copyOf(names);
            int last = all.size() - 1;
            return last < 1 ? String.join("", all) : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
        }
        return names.stream().limit(most).collect(Collectors.joining(", ")) + " and " + (names.size() - most) + " more";
    }

    static String feeds(Stretch stretch) {
        return some(stretch.feeds(), 3);
    }

    /** The socket where it goes wrong in front, then the source, then the feeds. */
    static List<Subject> subjects(Jack where, Stretch stretch) {
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(where.at().thing()));
        if (!stretch.first().thing().equals(where.at().thing())) {
            subjects.add(Subject.equipment(stretch.first().thing()));
        }
        stretch.feeds().forEach(feed -> subjects.add(Subject.feed(feed)));
        return subjects;
    }
}
