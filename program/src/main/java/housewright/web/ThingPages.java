package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.StoreException;
import housewright.finding.Subject;
import housewright.model.Project;
import housewright.web.page.ThingPart;
import housewright.web.view.JtethingpartGenerated;
import java.util.List;

/** What is shown of one thing beside a drawing. */
final class ThingPages {
    private ThingPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}/thing", Need.LOOK, ThingPages::show),
                Route.page("/p/{project}/label/{thing}", Need.LOOK, ThingPages::lead));
    }

    /** Where the code on a label leads; the label stays good wherever the page of its thing moves. */
    private static void lead(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Project project = job.now().study().project();
        String path = visit.ctx.pathParam("thing");
        boolean there = (path.startsWith("cables.") && project.cables().containsKey(path.substring("cables.".length())))
                || (path.startsWith("equipment.")
                        && project.equipment().containsKey(path.substring("equipment.".length())));
        String page = there ? new PageLinks(Visit.home(job)).of(Subject.at(path)) : null;
        if (page == null) {
            throw Refused.notFound("What this label was printed for is not in this project any more: " + path + ".");
        }
        visit.goOn(page, null);
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String subject = Drawing.asked(visit, "thing");
        String home = Visit.home(job);
        boolean moves = visit.session.role.mayDoAll() && "venue".equals(Drawing.asked(visit, "page"));
        ThingPart part = ThingPart.of(now, new PageLinks(home), home, subject == null ? "" : subject, moves)
                .orElseThrow(() -> Refused.notFound("There is no such thing in this project any more."));
        Visit.write(visit.ctx, output -> JtethingpartGenerated.render(output, null, part, home, visit.session.token));
    }
}
