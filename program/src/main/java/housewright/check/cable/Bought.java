package housewright.check.cable;

import housewright.cable.Lead;
import housewright.model.CableType;
import housewright.model.Connector;

/** Which cables somebody buys and puts plugs on; not the lead that belongs to a thing, nor a join inside one. */
final class Bought {
    private Bought() {}

    static boolean is(Lead lead) {
        CableType type = lead.type();
        return type != null
                && (type.perPair() != null
                        || (!type.ends().isEmpty() && !type.ends().contains(Connector.NONE)));
    }
}
