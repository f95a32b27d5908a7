package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.StoreException;
import housewright.app.table.Edit;
import housewright.app.table.Ports;
import housewright.app.table.Table;
import housewright.model.WordingException;
import housewright.signal.JoinOffer;
import housewright.signal.JoinOffers;
import housewright.signal.PatchOffer;
import housewright.web.page.TableDetails;
import housewright.web.page.TablePage;
import housewright.web.page.TablePage.Answer;
import housewright.web.view.JtetableoffersGenerated;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a free port can be joined to, and what a place in a device can be patched to; picking one does it. */
final class JoinPages {
    private static final String PORT = "/p/{project}/join/{thing}/{port}";
    private static final String PLACE = "/p/{project}/patching/{thing}/{place}";

    private JoinPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page(PORT, Need.LOOK, JoinPages::offers),
                Route.change(PORT, Need.LEAD, JoinPages::join),
                Route.page(PLACE, Need.LOOK, JoinPages::patches),
                Route.change(PLACE, Need.LEAD, JoinPages::patch));
    }

    private static JoinOffers find(Visit visit, Now now) {
        return Ports.of(now.study()).offers(visit.ctx.pathParam("thing"), visit.ctx.pathParam("port"));
    }

    private static void offers(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        TablePage.Offers page =
                TableDetails.offers(find(visit, job.now()), Visit.home(job), visit.session.role.mayDoAll());
        Visit.write(visit.ctx, output -> JtetableoffersGenerated.render(output, null, page));
    }

    private static void join(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String wanted = visit.field("take");
        JoinOffer offer = find(visit, now).offers().stream()
                .filter(each -> each.far().toString().equals(wanted))
                .findFirst()
                .orElse(null);
        settle(
                visit,
                job,
                now,
                Table.CABLES,
                offer == null ? null : Ports.of(now.study()).join(offer),
                wanted);
    }

    private static boolean isFrom(Visit visit) {
        return !"to".equals(visit.ctx.queryParam("way"));
    }

    private static List<PatchOffer> findPatches(Visit visit, Now now, boolean from) {
        try {
            return Ports.of(now.study()).patches(visit.ctx.pathParam("thing"), visit.ctx.pathParam("place"), from);
        } catch (WordingException e) {
            throw Refused.notFound("There is no such place: " + e.found());
        }
    }

    private static void patches(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        boolean from = isFrom(visit);
        TablePage.Offers page = TableDetails.patches(
                visit.ctx.pathParam("thing"),
                visit.ctx.pathParam("place"),
                from,
                findPatches(visit, job.now(), from),
                Visit.home(job),
                visit.session.role.mayDoAll());
        Visit.write(visit.ctx, output -> JtetableoffersGenerated.render(output, null, page));
    }

    private static void patch(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String wanted = visit.field("take");
        PatchOffer offer = findPatches(visit, now, isFrom(visit)).stream()
                .filter(each -> (each.from() + " -> " + each.to()).equals(wanted))
                .findFirst()
                .orElse(null);
        String thing = visit.ctx.pathParam("thing");
        settle(
                visit,
                job,
                now,
                Table.PATCH,
                offer == null ? null : Ports.of(now.study()).patch(thing, offer),
                wanted);
    }

    private static void settle(
            Visit visit, OpenProject job, Now now, Table table, Edit.@Nullable Made made, String wanted)
            throws StoreException {
        String why = wanted + " is not offered any more: the project has changed.";
        if (made != null) {
            Outcome outcome = job.edit(visit.author(), now.revision(), made.says(), made.changes());
            if (outcome instanceof Outcome.Accepted accepted) {
                TablePages.write(visit, TablePages.accepted(visit, job, table, made, accepted, List.of()));
                return;
            }
            why = Said.of(outcome, made.says()).words();
        }
        TablePages.write(
                visit,
                new Answer(
                        "not-done",
                        now.revision(),
                        List.of(),
                        null,
                        List.of(),
                        List.of(),
                        List.of(),
                        why,
                        "",
                        null,
                        0));
    }
}
