package housewright.check.light;

import housewright.check.Rule;
import java.util.List;

/** The rules about light, written out: what hurts first, then addresses, lines, looks and buttons. */
public final class LightRules {
    private LightRules() {}

    public static List<Rule> all() {
        return List.of(
                new NotForADimmer(),
                new NeedsADimmer(),
                new AddressClash(),
                new AddressPast512(),
                new ModeMissing(),
                new AddressMissing(),
                new GangApart(),
                new UniverseNotFed(),
                new TwoUniversesOneLine(),
                new LineOverloaded(),
                new LineForked(),
                new TerminatorMissing(),
                new TerminatorMidLine(),
                new LookFixtureNotThere(),
                new LookLevelPastFull(),
                new LookColourNotPossible(),
                new SaturatedFaces(),
                new ControlReachesNothing(),
                new ControlDoesNothing(),
                new ButtonWithTwoLooks(),
                new LookNotCalled(),
                new TwoSendersOneNode());
    }
}
