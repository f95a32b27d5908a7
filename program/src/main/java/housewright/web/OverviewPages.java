package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Revision;
import housewright.app.StoreException;
import housewright.web.page.OverviewPage;
import housewright.web.view.JtefactsGenerated;
import housewright.web.view.JteoverviewGenerated;
import java.util.List;

/** How far the job is. */
final class OverviewPages {
    private OverviewPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}", Need.LOOK, OverviewPages::show),
                Route.page("/p/{project}/facts", Need.LOOK, OverviewPages::facts),
                Route.change("/p/{project}/seen", Need.LOOK, OverviewPages::seen));
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        ProjectStore store = visit.common.projects().store();
        long seen = store.lastSeen(job.id(), visit.session.person);
        if (seen == 0) { // the first look: nothing is news
            if (!store.isReadOnly()) {
                store.see(job.id(), visit.session.person, now.revision());
            }
            seen = now.revision();
        }
        List<Revision> since = store.listSince(job.id(), seen).reversed().stream()
                .filter(each -> !each.what().author().equals(visit.session.person))
                .toList();
        OverviewPage page = OverviewPage.of(
                now,
                visit.common.standings().knownLikelihood(visit, job, now),
                Visit.home(job),
                seen,
                since,
                OriginFile.news(visit, job),
                visit.common.projects().clock().instant(),
                visit.common.zone());
        visit.show(
                job,
                now,
                Page.OVERVIEW,
                "Overview",
                (output, frame) -> JteoverviewGenerated.render(output, null, frame, page));
    }

    /** The figures with those that take long to work out. */
    private static void facts(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        List<OverviewPage.Fact> facts = OverviewPage.facts(
                now,
                visit.common.standings().knownLikelihood(visit, job, now),
                Visit.home(job),
                visit.common.projects().clock().instant(),
                visit.common.zone(),
                true);
        Visit.write(visit.ctx, output -> JtefactsGenerated.render(output, null, facts, null));
    }

    private static void seen(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        long revision = Math.min(visit.number("revision"), job.now().revision());
        visit.common.projects().store().see(job.id(), visit.session.person, revision);
        visit.goOn(Visit.home(job), null);
    }
}
