package housewright.web;

import housewright.app.FeedWords;
import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.StoreException;
import housewright.signal.FeedProof;
import housewright.signal.Mend;
import housewright.web.page.FeedPage;
import housewright.web.page.FeedsPage;
import housewright.web.page.Keys;
import housewright.web.view.JtefeedGenerated;
import housewright.web.view.JtefeedsGenerated;
import java.util.List;
import java.util.Optional;

/** What must arrive where: whether it does, where it stops, and the mends. */
final class FeedPages {
    private FeedPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}/feeds", Need.LOOK, FeedPages::list),
                Route.page("/p/{project}/feeds/{feed}", Need.LOOK, FeedPages::show),
                Route.change("/p/{project}/feeds/{feed}/mend", Need.LEAD, FeedPages::mend));
    }

    private static void list(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        FeedsPage page = FeedsPage.of(now, Visit.home(job) + "/feeds");
        visit.show(
                job, now, Page.FEEDS, "Feeds", (output, frame) -> JtefeedsGenerated.render(output, null, frame, page));
    }

    private static FeedProof proof(Visit visit, Now now) {
        String id = visit.ctx.pathParam("feed");
        return now.study()
                .findProof(id)
                .orElseThrow(() -> Refused.notFound("There is no feed " + id + " in this project."));
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        FeedProof proof = proof(visit, now);
        if (visit.waitsForMends()) {
            now.study().mends(proof);
        }
        FeedPage page = FeedPage.of(now, proof, new PageLinks(Visit.home(job)));
        visit.show(
                job, now, Page.FEEDS, page.id(), (output, frame) -> JtefeedGenerated.render(output, null, frame, page));
    }

    private static void mend(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        FeedProof proof = proof(visit, now);
        String key = visit.field("mend");
        Optional<Mend> mend = now.study().mends(proof).stream()
                .filter(each -> Keys.of(each.changes()).equals(key))
                .findFirst();
        String here = Visit.home(job) + "/feeds/" + proof.feed().id();
        if (mend.isEmpty()) {
            visit.goBack(
                    here,
                    new Session.Notice(
                            "That mend is not offered any more: the project has changed. "
                                    + (proof.proven() ? "The feed is proven." : FeedWords.trouble(proof) + "."),
                            true,
                            false));
            return;
        }
        String says = "Mended " + proof.feed().id();
        visit.settle(
                job, job.edit(visit.author(), now.revision(), says, mend.get().changes()), says);
    }
}
