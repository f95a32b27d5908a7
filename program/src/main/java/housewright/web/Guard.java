package housewright.web;

import housewright.app.Role;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Stands before every route: headers, host, session, role, and whether a change comes from a page of ours. */
final class Guard {
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self';"
            + " img-src 'self' data: blob:; connect-src 'self'; form-action 'self'; frame-ancestors 'none';"
            + " base-uri 'none'";
    static final String TOKEN_FIELD = "token";
    private static final String TOKEN_HEADER = "X-Housewright-Token";

    private final Door door;
    private final Addresses addresses;
    /** Cookies do not tell ports apart: two servers on one machine must not take each other's. */
    private final String cookieName;

    Guard(Door door, Addresses addresses) {
        this.door = door;
        this.addresses = addresses;
        this.cookieName = "housewright-" + addresses.port();
    }

    /** For every answer, whatever is asked for. */
    void before(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin") // with none, forms of our own come from nowhere
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Permissions-Policy", "camera=(), microphone=(), geolocation=()")
                .header("Cache-Control", "no-store");
        if (!addresses.hosts().allow(ctx.header("Host"))) {
            throw new Refused(HttpStatus.MISDIRECTED_REQUEST, "This server does not answer to that name.");
        }
    }

    /** Who asks, where they may; throws where they may not. */
    Session admit(Context ctx, Route route) {
        if (route.need() == Need.NOBODY) {
            return Session.stranger();
        }
        Session session = door.find(cookie(ctx))
                .orElseThrow(() -> new Refused(
                        HttpStatus.UNAUTHORIZED,
                        "Open the link that Housewright printed when it was started, or the one you were sent."));
        if (!route.need().met(session.role)) {
            throw new ForbiddenResponse(
                    route.need() == Need.LEAD
                            ? "Only the lead may do this."
                            : "A viewer may look; changing something takes a link for a helper.");
        }
        if (route.changes()) {
            fromOurPage(ctx, session);
        }
        String cookie = cookie(ctx);
        if (cookie != null && door.seeAgain(cookie)) {
            remember(ctx, cookie);
        }
        return session;
    }

    private void fromOurPage(Context ctx, Session session) {
        String origin = ctx.header("Origin");
        String site = ctx.header("Sec-Fetch-Site");
        if ((origin != null && !addresses.hosts().allowOrigin(origin))
                || (site != null && !site.equals("same-origin"))) {
            throw new ForbiddenResponse("This came from a page of another site, so nothing was done.");
        }
        String token = Optional.ofNullable(ctx.header(TOKEN_HEADER)).orElseGet(() -> formToken(ctx));
        if (!Secrets.same(token, session.token)) {
            throw new ForbiddenResponse("This page is out of date, so nothing was done. Load it again.");
        }
    }

    private static String formToken(Context ctx) {
        boolean form = ctx.isFormUrlencoded() || ctx.isMultipartFormData();
        String token = form ? ctx.formParam(TOKEN_FIELD) : null;
        return token == null ? "" : token;
    }

    @Nullable
    String cookie(Context ctx) {
        return ctx.cookie(cookieName);
    }

    boolean knows(Context ctx) {
        return door.find(cookie(ctx)).isPresent();
    }

    /** Of whoever asks; a viewer's for whoever is not known. */
    Role role(Context ctx) {
        return door.find(cookie(ctx)).map(session -> session.role).orElse(Role.VIEWER);
    }

    void remember(Context ctx, String cookie) {
        ctx.cookie(new Cookie(
                cookieName, cookie, "/", (int) Door.LONGEST_AWAY.toSeconds(), false, true, null, SameSite.STRICT));
    }
}
