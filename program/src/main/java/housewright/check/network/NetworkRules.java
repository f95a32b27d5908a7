package housewright.check.network;

import housewright.check.Rule;
import java.util.List;

/** The rules about the network, written out: easy to find, and always in the same order. */
public final class NetworkRules {
    private NetworkRules() {}

    public static List<Rule> all() {
        return List.of(
                new AddressTwice(),
                new AddressUnusable(),
                new AddressOffSubnet(),
                new AddressMissing(),
                new TrunkEndsDiffer(),
                new LinkOverloaded(),
                new SendRateMissing(),
                new SlowPort(),
                new MulticastFloods(),
                new PowerNotGiven(),
                new PowerTooWeak(),
                new PowerBudget(),
                new SwitchesInARow(),
                new SwitchLoop(),
                new BoxPassesNoNetwork(),
                new AllHangsOnOne(),
                new MediaWithInternet());
    }
}
