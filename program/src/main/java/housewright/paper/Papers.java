package housewright.paper;

import java.util.List;
import java.util.Optional;

/** All papers, in the order of the binder. */
public final class Papers {
    private static final List<Paper> ALL = List.of(
            new InputList(),
            new StagePlan(),
            new PatchSheets(),
            new CableSchedule(),
            new PullingSchedule(),
            new RackElevations(),
            new SignalDrawings(),
            new PowerSchedule(),
            new NetworkSheet(),
            new LightSheets(),
            new LookSheet(),
            new RadioSheet(),
            new OrderList(),
            new BudgetSheet(),
            new DailyCalls(),
            new LiftDays(),
            new AsBuilt(),
            new TestRecord(),
            new SnagList(),
            new CableLabels(),
            new EquipmentLabels(),
            new VolunteerCards());

    private Papers() {}

    public static List<Paper> all() {
        return ALL;
    }

    public static Optional<Paper> find(String id) {
        return ALL.stream().filter(paper -> paper.id().equals(id)).findFirst();
    }
}
