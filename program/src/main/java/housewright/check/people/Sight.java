package housewright.check.people;

import housewright.check.Evidence;
import housewright.check.Wording;
import housewright.finding.Subject;
import housewright.room.Obstacle;
import housewright.room.View;
import housewright.room.Workplace;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How rules about sightlines say things. */
final class Sight {
    private Sight() {}

    /** Height of the line of sight where the obstacle stands, in m above the building's zero. */
    static double line(double eye, View view, Obstacle obstacle) {
        return obstacle.top() + view.clear(eye, obstacle);
    }

    static List<Subject> subjects(Workplace work, @Nullable Obstacle screen) {
        List<Subject> subjects = new ArrayList<>();
        subjects.add(new Subject("place", work.place().id()));
        work.operated().forEach(desk -> subjects.add(Subject.equipment(desk)));
        if (screen != null && !screen.what().equals("screen")) {
            subjects.add(Subject.equipment(screen.what()));
        }
        return subjects;
    }

    /** "a seated eye 1.10 m up". */
    static String eye(Evidence evidence, Workplace work) {
        return eye(evidence, work, work.low());
    }

    static String eye(Evidence evidence, Workplace work, double eye) {
        boolean stands =
                work.operator() == null ? eye > work.low() : work.operator().stands();
        return (stands ? "a standing eye " : "a seated eye ") + Wording.length(evidence, eye - work.floor()) + " up";
    }
}
