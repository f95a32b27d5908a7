package housewright.app.table;

import housewright.model.Doc;
import housewright.model.Ref;
import java.util.List;

/** Channels that belong together. */
public record PairRow(String id, @Doc("Left first") List<Ref> channels) {
    public PairRow {
        channels = List.copyOf(channels);
    }
}
