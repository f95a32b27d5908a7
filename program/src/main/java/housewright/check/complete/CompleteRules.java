package housewright.check.complete;

import housewright.check.Rule;
import java.util.List;

/** The rules about what is missing, written out: easy to find, and always in the same order. */
public final class CompleteRules {
    private CompleteRules() {}

    public static List<Rule> all() {
        return List.of(
                new TypeMissing(),
                new PlaceMissing(),
                new PowerMissing(),
                new PriceMissing(),
                new BoughtNotConnected(),
                new StruckStillNeeded(),
                new ComputerNotCopied(),
                new InNoOrder(),
                new ComesTooLate(),
                new PasswordNotNoted(),
                new LicenceNotNoted(),
                new FirmwareNotNoted(),
                new FeedNotTestable());
    }
}
