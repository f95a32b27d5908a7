package housewright.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.List;

/** Light paper, dim paper, or what the system asks for: each browser keeps its own. */
final class Theme {
    private static final String COOKIE = "housewright-theme";
    private static final List<String> ALL = List.of("auto", "light", "dim");
    private static final int YEAR = 365 * 24 * 60 * 60;

    private Theme() {}

    static String of(Context ctx) {
        String theme = ctx.cookie(COOKIE);
        return theme != null && ALL.contains(theme) ? theme : ALL.getFirst();
    }

    static void turn(Visit visit) {
        String next = visit.field("theme");
        if (!ALL.contains(next)) {
            throw Refused.wrong("The paper is auto, light or dim.");
        }
        visit.ctx.cookie(new Cookie(COOKIE, next, "/", YEAR, false, true, null, SameSite.STRICT));
        visit.goBack("/", null);
    }
}
