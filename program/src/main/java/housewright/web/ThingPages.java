package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.StoreException;
import housewright.web.page.ThingPart;
import housewright.web.view.JtethingpartGenerated;
import java.util.List;

/** What is shown of one thing beside a drawing. */
final class ThingPages {
    private ThingPages() {}

    static List<Route> routes() {
        return List.of(Route.page("/p/{project}/thing", Need.LOOK, ThingPages::show));
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
