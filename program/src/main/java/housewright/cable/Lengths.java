package housewright.cable;

import housewright.model.Cable;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Project;
import housewright.model.SpacePoint;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How long cables are. */
final class Lengths {
    private final Project project;

    Lengths(Project project) {
        this.project = project;
    }

    @Nullable
    Span of(Cable cable) {
        if (cable.length() != null) {
            return new Span(cable.length().metres(), Span.Basis.STATED);
        }
        if (cable.via().isEmpty()) {
            return null;
        }
        double sum = 2 * Span.SLACK_M;
        for (String id : cable.via()) {
            Pathway pathway = project.venue().pathways().get(id);
            Double metres = pathway == null ? null : metres(pathway);
            if (metres == null) {
                return null;
            }
            sum += metres;
        }
        return new Span(sum, Span.Basis.ALONG_PATHWAYS);
    }

    List<Pathway> pathways(Cable cable) {
        List<Pathway> along = new ArrayList<>();
        for (String id : cable.via()) {
            Pathway pathway = project.venue().pathways().get(id);
            if (pathway != null) {
                along.add(pathway);
            }
        }
        return along;
    }

    /** As stated, else along walls and up and down between its two places. */
    @Nullable
    Double metres(Pathway pathway) {
        if (pathway.length() != null) {
            return pathway.length().metres();
        }
        SpacePoint from = point(pathway.from());
        SpacePoint to = point(pathway.to());
        return from == null || to == null
                ? null
                : (Double) (Math.abs(from.x().metres() - to.x().metres())
                        + Math.abs(from.y().metres() - to.y().metres())
                        + Math.abs(from.z().metres() - to.z().metres()));
    }

    private @Nullable SpacePoint point(@Nullable String id) {
        Place place = id == null ? null : project.venue().places().get(id);
        return place == null ? null : place.at();
    }
}
