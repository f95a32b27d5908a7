package housewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Lines of right angles, cut. */
final class Courses {
    private static final double GAP = 16;

    private Courses() {}

    /** The two pieces of a line that is broken in the middle of its last stretch. */
    static List<List<Laid.At>> withGap(List<Laid.At> corners) {
        int last = corners.size() - 2;
        Laid.At from = corners.get(last);
        Laid.At to = corners.get(last + 1);
        double whole = length(corners, last);
        double share = whole == 0 ? 0 : Math.min(GAP, whole / 2) / whole / 2;
        List<Laid.At> first = new ArrayList<>(corners.subList(0, last + 1));
        first.add(between(from, to, 0.5 - share));
        List<Laid.At> second = new ArrayList<>(List.of(between(from, to, 0.5 + share)));
        second.addAll(corners.subList(last + 1, corners.size()));
        return List.of(first, second);
    }

    private static double length(List<Laid.At> corners, int at) {
        Laid.At one = corners.get(at);
        Laid.At other = corners.get(at + 1);
        return Math.abs(one.x() - other.x()) + Math.abs(one.y() - other.y());
    }

    private static Laid.At between(Laid.At from, Laid.At to, double share) {
        return new Laid.At(from.x() + (to.x() - from.x()) * share, from.y() + (to.y() - from.y()) * share);
    }
}
