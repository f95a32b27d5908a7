package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Demo;
import housewright.app.ProjectStore;
import housewright.app.Role;
import housewright.app.StoreException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every route, asked by everybody, with what no page of ours would send. */
class RoutesTest {
    private static final Pattern PARAMETER = Pattern.compile("\\{[^}]*}");
    private static final int TRIES = 6;
    /** The server takes 8 KiB of a request's head; an address almost as long is refused before anybody is asked. */
    private static final int LONGEST = 8000;

    /** What may stand in an address or a field. */
    private static final List<String> ODD = List.of(
            "0",
            "1",
            "-1",
            "99999999999999999999",
            "no-such",
            "..",
            "../../etc/passwd",
            "a/b",
            "\u0000",
            "<script>alert(1)</script>",
            "' or 1=1 --",
            "%",
            "ü\uD83D\uDE00",
            "x".repeat(3000),
            "",
            "true",
            "2027-02-30",
            "null",
            "{}",
            "//elsewhere.example/");

    private static final List<String> FIELDS = List.of(
            "name",
            "finding",
            "fix",
            "why",
            "rule",
            "subject",
            "mend",
            "asks",
            "to",
            "about",
            "due",
            "answer",
            "revision",
            "back",
            "theme",
            "person",
            "role",
            "file",
            "photo",
            "rows",
            "id",
            "cell",
            "base",
            "place",
            "x",
            "y",
            "z",
            "thing-id",
            "rack-id",
            "unit",
            "width",
            "depth",
            "from",
            "kind",
            "length",
            "along",
            "bends",
            "state",
            "until",
            "people",
            "seconds",
            "solve",
            "anew",
            "who",
            "takes",
            "crew",
            "skip",
            "day",
            "promised",
            "take-back",
            "line",
            "supplier",
            "which",
            "size",
            "labels",
            "first",
            "site");

    /** Who asks; null is somebody without a link. */
    enum Who {
        STRANGER(null),
        VIEWER(Role.VIEWER),
        HELPER(Role.HELPER),
        LEAD(Role.LEAD);

        final @Nullable Role role;

        Who(@Nullable Role role) {
            this.role = role;
        }

        boolean may(Route route) {
            return route.need() == Need.NOBODY || (role != null && route.need().met(role));
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"STRANGER", "VIEWER"})
    void noRouteFailsAndNobodyDoesWhatTheyMayNot(Who who) throws StoreException {
        fuzz(who);
    }

    @Tag("slow")
    @ParameterizedTest
    @EnumSource(names = {"HELPER", "LEAD"})
    void noRouteFailsForThoseWhoMayChangeThings(Who who) throws StoreException {
        fuzz(who);
    }

    private static void fuzz(Who who) throws StoreException {
        try (Hall hall = Hall.demo()) {
            Visitor visitor = who.role == null ? Visitor.stranger(hall) : Visitor.of(hall, who.role);
            String token = visitor.token();
            Random random = new Random(20270321);
            List<String> troubles = new ArrayList<>();
            for (Route route : Routes.all()) {
                for (int i = 0; i < TRIES; i++) {
                    String before = state(hall);
                    String path = path(route, hall, i, random);
                    HttpResponse<String> answer = ask(visitor, route, path, token, random);
                    String what =
                            who + " " + (route.changes() ? "POST " : "GET ") + cut(path) + " -> " + answer.statusCode();
                    if (answer.statusCode() >= 500) {
                        troubles.add(what);
                    }
                    if (!who.may(route)) {
                        if (answer.statusCode() != (who.role == null ? 401 : 403)
                                && !isNoAddress(answer.statusCode(), path, i == 0 && isThere(route, hall))) {
                            troubles.add(what + ", though it is not for them");
                        }
                        if (answer.body().contains("Carrowfenn")
                                || answer.body().contains(Demo.FEED)) {
                            troubles.add(what + " tells of the project");
                        }
                        if (!state(hall).equals(before)) {
                            troubles.add(what + " changed something");
                        }
                    }
                    if (!route.changes()
                            && !route.path().startsWith("/in/")
                            && !state(hall).equals(before)) {
                        troubles.add(what + " changed something by being looked at");
                    }
                }
            }
            assertThat(troubles).as("faults: %s", hall.faults()).isEmpty();
        }
    }

    /** An address that is none of any route's, or longer than any may be, says so to everybody. */
    private static boolean isNoAddress(int status, String path, boolean there) {
        return switch (status) {
            case 400, 404 -> !there;
            case 414 -> path.length() > LONGEST;
            default -> false;
        };
    }

    /** Nothing odd is put into its path at the first try. */
    private static boolean isThere(Route route, Hall hall) {
        return !PARAMETER.matcher(known(route.path(), hall)).find();
    }

    /** All that a request might change. */
    private static String state(Hall hall) throws StoreException {
        ProjectStore store = hall.projects.store();
        List<ProjectStore.Printed> printed = store.listProjects().isEmpty()
                ? List.of()
                : store.listPrinted(hall.job().id());
        return store.listProjects() + "\n" + store.listLinks() + "\n" + printed;
    }

    /** The first try has what is there, as far as it is known; the others have what may come. */
    private static String path(Route route, Hall hall, int attempt, Random random) {
        String path = route.path();
        if (attempt < TRIES - 2) {
            path = path.replace("{project}", hall.job().id());
        }
        if (attempt == 0) {
            path = known(path, hall);
        }
        Matcher matcher = PARAMETER.matcher(path);
        String filled = matcher.replaceAll(
                found -> Matcher.quoteReplacement(Visitor.encoded(odd(random)).replace(".", "%2E")));
        return random.nextBoolean()
                ? filled
                : filled + "?before=" + Visitor.encoded(odd(random)) + "&about=" + Visitor.encoded(odd(random))
                        + "&thing=" + Visitor.encoded(odd(random)) + "&person=" + Visitor.encoded(odd(random)) + "&day="
                        + Visitor.encoded(odd(random)) + "&edit=" + Visitor.encoded(odd(random)) + "&t-id="
                        + Visitor.encoded(odd(random)) + "&size=letter&labels="
                        + Visitor.encoded(odd(random)) + "&first=" + Visitor.encoded(odd(random));
    }

    private static String known(String path, Hall hall) {
        return path.replace("{project}", hall.job().id())
                .replace("{feed}", Demo.FEED)
                .replace("{question}", "q5")
                .replace("{revision}", "1")
                .replace("{task}", "prove-" + Demo.FEED)
                .replace("{entry}", "prove-" + Demo.FEED)
                .replace("{person}", "lead")
                .replace("{paper}", "order-list")
                .replace("{table}", "orders");
    }

    private static HttpResponse<String> ask(Visitor visitor, Route route, String path, String token, Random random) {
        if (!route.changes()) {
            return visitor.get(path);
        }
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("token", token);
        for (String field : FIELDS) {
            if (random.nextBoolean()) {
                fields.put(field, odd(random));
            }
        }
        return switch (random.nextInt(4)) {
            case 0 ->
                visitor.send(
                        visitor.request(path, "application/json", "{\"name\":").header("X-Housewright-Token", token));
            case 1 ->
                visitor.send(visitor.request(path, "multipart/form-data; boundary=x", multipart(fields))
                        .header("X-Housewright-Token", token));
            default -> visitor.send(visitor.request(path, "application/x-www-form-urlencoded", Visitor.form(fields)));
        };
    }

    private static String multipart(Map<String, String> fields) {
        StringBuilder body = new StringBuilder();
        fields.forEach((name, value) -> body.append("--x\r\nContent-Disposition: form-data; name=\"")
                .append(name)
                .append(name.equals("file") || name.equals("photo") ? "\"; filename=\"../odd\"" : "\"")
                .append("\r\n\r\n")
                .append(value)
                .append("\r\n"));
        return body.append("--x--\r\n").toString();
    }

    private static String odd(Random random) {
        return ODD.get(random.nextInt(ODD.size()));
    }

    private static String cut(String path) {
        return path.length() < 120 ? path : path.substring(0, 120) + "…";
    }

    /** A viewer who may not, and a route that is new: both are noticed by the test above only if it can fail. */
    @Test
    void everyChangeOfAProjectIsForTheLeadOrForWorkOnSite() {
        List<String> open = Routes.all().stream()
                .filter(route -> route.changes() && route.need().met(Role.VIEWER))
                .map(Route::path)
                .toList();
        assertThat(open).containsExactlyInAnyOrder("/theme", "/p/{project}/seen");
        List<String> unguarded = Routes.all().stream()
                .filter(route -> route.need() == Need.NOBODY)
                .map(Route::path)
                .toList();
        assertThat(unguarded).containsExactlyInAnyOrder("/in/{secret}", "/static/{version}/{name}");
    }
}
