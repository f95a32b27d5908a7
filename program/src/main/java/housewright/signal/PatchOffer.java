package housewright.signal;

import housewright.model.LocalRef.Spot;
import java.util.List;

/**
 * A patch that a device allows.
 *
 * @param from where it comes from, and to where it goes, as a project names them
 * @param instead what is patched to the output already and would have to go; none elsewhere, for points sum
 */
public record PatchOffer(Spot from, Spot to, List<Spot> instead) {
    public PatchOffer {
        instead = List.copyOf(instead);
    }
}
