package housewright.signal;

import housewright.model.Adapter;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.End;
import housewright.model.Life;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Remarks;
import housewright.model.Signal;
import housewright.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A cable that could be run between two free ports.
 *
 * @param from where the signal leaves; where it goes both ways, the port that was asked about
 * @param far the end that was not asked about
 * @param length along the way, with slack and service loop at both ends, up to the next half metre
 * @param via pathways it runs along; none between neighbours, and where no pathway is known
 * @param guessed no pathway leads there, so the length is a guess
 * @param ends made up to fit where the type has others; none where it has the right ones
 * @param adapter between a plug and its socket; null where none is needed
 * @param price typical, in the project's currency
 * @param assumed what is taken for granted, in words
 */
public record JoinOffer(
        Address from,
        Address to,
        Address far,
        Signal signal,
        CableType type,
        Length length,
        List<String> via,
        boolean guessed,
        List<Connector> ends,
        @Nullable Adapter adapter,
        BigDecimal price,
        List<String> assumed) {
    public JoinOffer {
        via = List.copyOf(via);
        ends = List.copyOf(ends);
        assumed = List.copyOf(assumed);
    }

    /** The cable itself; its length is left to its pathways where there are any. */
    public Cable cable(String id) {
        return new Cable(
                id,
                type.id(),
                new End(new Ref(from.toString())),
                new End(new Ref(to.toString())),
                List.of(),
                via,
                Life.NEW,
                via.isEmpty() ? length : null,
                ends,
                adapter == null ? List.of() : List.of(adapter.id()),
                null,
                null,
                null,
                null,
                Remarks.NONE);
    }
}
