package housewright.signal;

import java.util.List;

/** Finds mends. */
final class Mender {
    Mender(Signals signals) {}

    List<Mend> mends(FeedProof proof) {
        return List.of();
    }
}
