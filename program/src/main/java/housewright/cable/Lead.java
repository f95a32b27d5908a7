package housewright.cable;

import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Pathway;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A cable that is there at the moment.
 *
 * @param cable as it runs at the moment
 * @param type null where the cable names none
 * @param joints one, or one for each way of a multicore that the project names
 * @param span null where neither the project nor its pathways say how long it is
 * @param pathways those it runs along, in order
 */
public record Lead(
        Cable cable,
        @Nullable CableType type,
        List<Joint> joints,
        @Nullable Span span,
        List<Pathway> pathways) {
    public Lead {
        joints = List.copyOf(joints);
        pathways = List.copyOf(pathways);
    }

    public String id() {
        return cable.id();
    }

    /** It is joined within a thing and has no end to hold. */
    public boolean isInside() {
        return joints.stream()
                .flatMap(joint -> joint.plugs().stream())
                .anyMatch(plug -> plug.port() != null && plug.port().connector() == Connector.NONE);
    }
}
