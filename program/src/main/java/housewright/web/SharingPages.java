package housewright.web;

import housewright.app.ProjectStore.ShareLink;
import housewright.app.Role;
import housewright.app.StoreException;
import housewright.web.page.Dates;
import housewright.web.page.SharingPage;
import housewright.web.page.SharingPage.Code;
import housewright.web.view.JtehelpGenerated;
import housewright.web.view.JtesharingGenerated;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Links by which others come in; and the help page. */
final class SharingPages {
    private static final int LONGEST_NAME = 60;

    private SharingPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/sharing", Need.LEAD, visit -> show(visit, null)),
                Route.change("/sharing", Need.LEAD, SharingPages::make),
                Route.change("/sharing/{link}/revoke", Need.LEAD, SharingPages::revoke),
                Route.page("/help", Need.LOOK, SharingPages::help));
    }

    private static void show(Visit visit, @Nullable Code made) {
        Common common = visit.common;
        boolean shared = common.serving().share();
        List<String> addresses = shared
                ? common.addresses().shared()
                : List.of(common.addresses().local());
        Code site = shared && common.door().isSiteOpen() && !addresses.isEmpty()
                ? code(
                        "For helpers on site",
                        addresses.getFirst() + "/in/" + common.door().siteSecret())
                : null;
        List<SharingPage.Row> rows =
                common.links().list().stream().map(link -> row(visit, link)).toList();
        SharingPage page = new SharingPage(answer(shared, common), shared, addresses, site, made, rows);
        visit.show("Sharing", (output, frame) -> JtesharingGenerated.render(output, null, frame, page));
    }

    private static String answer(boolean shared, Common common) {
        if (!shared) {
            return "Only this machine can reach Housewright.";
        }
        long links =
                common.links().list().stream().filter(link -> !link.revoked()).count();
        return "Everybody on this network who has a link can come in; "
                + (links == 0
                        ? "no link for one person is out."
                        : links == 1 ? "one such link is out." : links + " links for one person are out.");
    }

    private static SharingPage.Row row(Visit visit, ShareLink link) {
        return new SharingPage.Row(
                link.id(),
                link.person(),
                link.role().word(),
                Dates.ago(link.madeAt(), visit.common.projects().clock().instant(), visit.common.zone()),
                link.revoked());
    }

    private static Code code(String what, String link) {
        QrCode.Drawing drawing = QrCode.drawing(link);
        return new Code(what, link, drawing.size(), drawing.path());
    }

    /** Answers with the page itself: the secret is nowhere to be read again. */
    private static void make(Visit visit) throws StoreException {
        String person = visit.field("person");
        if (person.isEmpty() || person.length() > LONGEST_NAME) {
            visit.goOn(
                    Typed.with(visit, "/sharing", "/sharing"),
                    new Session.Notice(
                            "A link is for somebody: give a name of at most " + LONGEST_NAME + " characters.",
                            true,
                            false));
            return;
        }
        if (visit.common.door().isTaken(person)) {
            visit.goOn(
                    Typed.with(visit, "/sharing", "/sharing"),
                    new Session.Notice(
                            person + " is in already. Two people of one name would undo each other's work, and history"
                                    + " could not tell them apart: give another name, or revoke their link first.",
                            true,
                            false));
            return;
        }
        Role role = role(visit.field("role"));
        SharedLinks.Made made = visit.common
                .links()
                .make(person, role, visit.common.projects().clock().instant());
        List<String> shared = visit.common.addresses().shared();
        String base = shared.isEmpty() ? visit.common.addresses().local() : shared.getFirst();
        show(visit, code("For " + person + ", " + role.word(), base + "/in/" + made.secret()));
    }

    private static Role role(String word) {
        for (Role role : Role.values()) {
            if (role.word().equals(word.toLowerCase(Locale.ROOT))) {
                return role;
            }
        }
        throw Refused.wrong("A role is lead, helper or viewer, not \"" + word + "\".");
    }

    private static void revoke(Visit visit) throws StoreException {
        String id = visit.ctx.pathParam("link");
        if (id.equals(Door.SITE)) {
            visit.common.door().revokeSite();
        } else {
            if (visit.common.links().list().stream().noneMatch(link -> link.id().equals(id))) {
                throw Refused.notFound("There is no such link.");
            }
            visit.common.links().revoke(id);
        }
        visit.goOn("/sharing", new Session.Notice("Revoked: whoever came in by that link is out.", false, false));
    }

    private static void help(Visit visit) {
        visit.show("Help", (output, frame) -> JtehelpGenerated.render(output, null, frame));
    }
}
