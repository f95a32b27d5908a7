package housewright.check.power;

import housewright.check.Rule;
import java.util.List;

/** The rules about power, racks and weight, written out: what hangs, then the mains, then the racks. */
public final class PowerRules {
    private PowerRules() {}

    public static List<Rule> all() {
        return List.of(
                new HangingDataMissing(),
                new HangingLimitToAsk(),
                new HangingOverloaded(),
                new SecondaryMissing(),
                new CircuitOverloaded(),
                new CircuitRatingMissing(),
                new CircuitVoltageOdd(),
                new CircuitNotAtPlace(),
                new PowerFigureMissing(),
                new SupplySaidTwice(),
                new OutletShared(),
                new OutletOverloaded(),
                new ConnectorOverloaded(),
                new StripIntoStrip(),
                new MainsVoltageDrop(),
                new InrushTogether(),
                new UpsOverloaded(),
                new UpsTimeShort(),
                new UpsFeedsHeavy(),
                new SoundOnTwoPhases(),
                new SoundWithDimmers(),
                new RackClash(),
                new RackTooSmall(),
                new RackTooShallow(),
                new RackUnitMissing(),
                new RackTopHeavy(),
                new RackHeat());
    }
}
