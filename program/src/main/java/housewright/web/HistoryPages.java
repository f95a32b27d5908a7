package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.ProjectStore.Revision;
import housewright.app.StoreException;
import housewright.model.Project;
import housewright.web.page.Dates;
import housewright.web.page.HistoryPage;
import housewright.web.page.RevisionPage;
import housewright.web.page.RevisionPage.Difference;
import housewright.web.view.JtehistoryGenerated;
import housewright.web.view.JterevisionGenerated;
import java.time.Instant;
import java.util.List;

/** What changed, by whom; going back to any of it. */
final class HistoryPages {
    private static final int MOST = 100;

    private HistoryPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}/history", Need.LOOK, HistoryPages::list),
                Route.page("/p/{project}/history/{revision}", Need.LOOK, HistoryPages::show),
                Route.change("/p/{project}/history/{revision}/restore", Need.LEAD, HistoryPages::restore));
    }

    private static void list(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String asked = visit.ctx.queryParam("before");
        long before = asked == null ? Long.MAX_VALUE : Visit.number("before", asked);
        List<Revision> steps = job.history(before, MOST);
        HistoryPage page = HistoryPage.of(
                steps,
                Visit.home(job) + "/history",
                visit.common.projects().clock().instant(),
                visit.common.zone(),
                steps.isEmpty() || steps.getLast().number() == 1);
        visit.show(
                job,
                now,
                Page.HISTORY,
                "History",
                (output, frame) -> JtehistoryGenerated.render(output, null, frame, page));
    }

    private static long number(Visit visit) {
        return Visit.number("A revision", visit.ctx.pathParam("revision"));
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        long number = number(visit);
        Now then = job.findAt(number).orElseThrow(() -> missing(number));
        Revision step = job.history(number + 1, 1).getFirst();
        Project before = number == 1
                ? then.project()
                : job.findAt(number - 1).orElseThrow(() -> missing(number - 1)).project();
        List<Difference> restored = RevisionPage.between(now.project(), then.project());
        Instant at = visit.common.projects().clock().instant();
        RevisionPage page = new RevisionPage(
                number,
                step.what().says() + ".",
                "Revision " + number + ", by " + step.what().author() + ", "
                        + Dates.ago(step.what().at(), at, visit.common.zone()) + ".",
                RevisionPage.between(before, then.project()),
                restored,
                number == now.revision());
        visit.show(
                job,
                now,
                Page.HISTORY,
                "Revision " + number,
                (output, frame) -> JterevisionGenerated.render(output, null, frame, page));
    }

    private static Refused missing(long number) {
        return Refused.notFound("There is no revision " + number + " of this project.");
    }

    private static void restore(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        long number = number(visit);
        visit.settle(job, job.restore(visit.author(), visit.number("base"), number), "Restored revision " + number);
    }
}
