package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.drawing.Drawings;
import housewright.drawing.Imprint;
import housewright.drawing.Plan;
import housewright.drawing.Sheet;
import java.util.List;
import java.util.function.Function;

/** The drawings that pages show, each drawn once a revision; the last ones are kept. */
final class Sheets {
    private static final int MOST_STATES = 8;
    private static final int MOST_SHEETS = 64;
    private static final int MOST_PLANS = 16;

    private final Kept<Drawings> drawings = new Kept<>(MOST_STATES);
    private final Kept<Sheet> sheets = new Kept<>(MOST_SHEETS);
    private final Kept<List<Plan>> plans = new Kept<>(MOST_PLANS);

    /** A revision of a project as it is drawn on one day. */
    final class Drawn {
        private final String key;
        private final Drawings of;

        private Drawn(String key, Drawings of) {
            this.key = key;
            this.of = of;
        }

        Drawings drawings() {
            return of;
        }

        /** @param what the same for the same drawing */
        Sheet sheet(String what, Function<Drawings, Sheet> draw) {
            return sheets.get(key + ' ' + what, () -> draw.apply(of));
        }

        List<Plan> plans(String what, Function<Drawings, List<Plan>> draw) {
            return plans.get(key + ' ' + what, () -> draw.apply(of));
        }
    }

    Drawn of(Visit visit, OpenProject job, Now now) {
        String day = visit.today().toString();
        String key = job.id() + ' ' + now.revision() + ' ' + day;
        Imprint imprint = new Imprint(Long.toString(now.revision()), day);
        return new Drawn(key, drawings.get(key, () -> Drawings.of(now.study(), imprint)));
    }
}
