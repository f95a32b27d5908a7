package housewright.check.volunteers;

import housewright.check.Rule;
import java.util.List;

/** The rules about who runs a service, written out: easy to find, and always in the same order. */
public final class VolunteerRules {
    private VolunteerRules() {}

    public static List<Rule> all() {
        return List.of(
                new ManyThingsToStart(),
                new SwitchedOnOverhead(),
                new CutWhileRunning(),
                new NoButtonEndsIt(),
                new BatteryTooShort());
    }
}
