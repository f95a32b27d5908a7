package housewright.check.people;

import housewright.check.Rule;
import java.util.List;

/** The rules about people in the room, written out: easy to find, and always in the same order. */
public final class PeopleRules {
    private PeopleRules() {}

    public static List<Rule> all() {
        return List.of(
                new DeskOutOfSight(),
                new ScreenHidesStage(),
                new HeadsHideStage(),
                new RowsHideStage(),
                new ScreenBehindHeads(),
                new WordsTooSmall(),
                new StandsInProjection(),
                new LightAngleOnFaces(),
                new LightInSeats(),
                new ControlOutOfReach(),
                new WorkSurfaceHeight(),
                new HearingExposure(),
                new LiftWithoutOperator(),
                new LiftOperatorNotFree(),
                new TaskWithoutSkill(),
                new NoWayUp(),
                new MainsWithoutElectrician());
    }
}
