package housewright.web;

import housewright.web.view.JteinGenerated;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;

/** Coming in, and the files that every page loads. */
final class DoorPages {
    private static final String FOR_GOOD = "public, max-age=31536000, immutable";

    private DoorPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/in/{secret}", Need.NOBODY, DoorPages::comeIn),
                Route.page("/static/{version}/{name}", Need.NOBODY, DoorPages::asset),
                Route.change("/theme", Need.LOOK, Theme::turn));
    }

    /**
     * Answers with a page that leads on, not with a redirect: a strict cookie does not go along with a redirect that a
     * link in a message began.
     */
    private static void comeIn(Visit visit) {
        Context ctx = visit.ctx;
        String cookie = visit.common
                .door()
                .comeIn(ctx.pathParam("secret"), visit.common.guard().cookie(ctx))
                .orElseGet(() -> known(visit, ctx));
        if (!cookie.isEmpty()) {
            visit.common.guard().remember(ctx, cookie);
        }
        String start = visit.common.serving().start();
        String to = start == null ? "/" : "/p/" + start;
        Visit.write(
                ctx,
                output -> JteinGenerated.render(
                        output, null, to, visit.common.assets().base(), Theme.of(ctx)));
    }

    /** Whoever is in already may press the link again. */
    private static String known(Visit visit, Context ctx) {
        if (visit.common.guard().knows(ctx)) {
            return "";
        }
        throw new Refused(
                HttpStatus.UNAUTHORIZED,
                "This link was used already, was revoked, or is from an earlier start. Start Housewright again for a"
                        + " new one, or ask whoever sent it.");
    }

    private static void asset(Visit visit) {
        Assets.Asset asset = visit.common
                .assets()
                .find(visit.ctx.pathParam("version"), visit.ctx.pathParam("name"))
                .orElseThrow(() -> Refused.notFound("There is no such file."));
        visit.ctx
                .header("Cache-Control", FOR_GOOD)
                .contentType(asset.mediaType())
                .result(asset.bytes());
    }
}
