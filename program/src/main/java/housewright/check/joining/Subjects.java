package housewright.check.joining;

import housewright.cable.SoundRun;
import housewright.finding.Subject;
import java.util.ArrayList;
import java.util.List;

/** What findings about a run are about. */
final class Subjects {
    private Subjects() {}

    /** Its cables, the first in front, then both things. */
    static List<Subject> of(SoundRun run) {
        List<Subject> subjects = new ArrayList<>();
        run.line().leads().forEach(lead -> subjects.add(Subject.cable(lead.id())));
        subjects.add(Subject.equipment(run.source().at().thing()));
        subjects.add(Subject.equipment(run.input().at().thing()));
        return subjects;
    }
}
