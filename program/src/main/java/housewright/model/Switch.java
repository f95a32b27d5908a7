package housewright.model;

import java.util.List;

/** A switch of a type: while off nothing passes what it gates. */
public record Switch(@Key("default") @Default("off") boolean on, List<LocalRef> gates) {
    public Switch {
        gates = List.copyOf(gates);
    }
}
