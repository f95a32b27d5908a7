package housewright.signal;

import housewright.model.Ref.Address;
import java.util.List;

/**
 * What could be joined to a port.
 *
 * @param cables that are in it; with any, nothing more is offered
 * @param offers the nearest by pathway in front
 * @param missing why nothing, or not more, is offered: what is not known or does not fit, as sentences
 */
public record JoinOffers(Address port, List<String> cables, List<JoinOffer> offers, List<String> missing) {
    public JoinOffers {
        cables = List.copyOf(cables);
        offers = List.copyOf(offers);
        missing = List.copyOf(missing);
    }
}
