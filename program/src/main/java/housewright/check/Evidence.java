package housewright.check;

import housewright.model.Project;
import housewright.model.Types;
import housewright.signal.FeedProof;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.Signals;
import java.util.List;

/** What a rule may ask: the project, and each trade's results, worked out when first asked for. */
public interface Evidence {
    Project project();

    /** The types the project may use: its own and the library's. */
    Types types();

    /** The state of the hall that is being checked. */
    Moment moment();

    /** The signals at that moment. */
    Signals signals();

    /** The same project at another moment. */
    Evidence at(Moment other);

    /** The cheapest mends of a feed that is not proven, cheapest first; empty where none is known. */
    List<Mend> mends(FeedProof proof);
}
