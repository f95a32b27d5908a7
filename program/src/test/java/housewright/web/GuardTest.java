package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Role;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who comes in, and what every answer says to the browser. */
class GuardTest {
    private static Hall hall;

    @BeforeAll
    static void open() {
        hall = Hall.demo();
    }

    @AfterAll
    static void close() {
        hall.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/help", "/no/such/page", "/in/wrong", "/static/x/look.css"})
    void everyAnswerTellsTheBrowserToTrustNobody(String path) {
        HttpResponse<String> answer = Visitor.of(hall, Role.LEAD).get(path);
        assertThat(answer.headers().firstValue("Content-Security-Policy"))
                .hasValueSatisfying(policy -> assertThat(policy)
                        .contains(
                                "default-src 'none'", "script-src 'self'", "style-src 'self'", "frame-ancestors 'none'")
                        .doesNotContain("unsafe"));
        assertThat(answer.headers().firstValue("X-Content-Type-Options")).hasValue("nosniff");
        assertThat(answer.headers().firstValue("Referrer-Policy")).hasValue("same-origin");
        assertThat(answer.headers().firstValue("Cache-Control")).hasValue("no-store");
        assertThat(answer.headers().firstValue("Server")).isEmpty();
    }

    @Test
    void theFirstLinkLetsOneBrowserInOnce() {
        String link = hall.server.openOnce().substring(hall.origin().length());
        Visitor first = Visitor.stranger(hall);
        assertThat(first.get(link).statusCode()).isEqualTo(200);
        assertThat(first.get("/").statusCode()).isEqualTo(200);
        assertThat(first.get(link).statusCode()).as("the same browser again").isEqualTo(200);
        Visitor second = Visitor.stranger(hall);
        assertThat(second.get(link).statusCode()).isEqualTo(401);
        assertThat(second.get("/").statusCode()).isEqualTo(401);
    }

    @Test
    void aCookieIsForThisServerAlone() {
        HttpResponse<String> answer = Visitor.stranger(hall)
                .get(hall.server.openOnce().substring(hall.origin().length()));
        assertThat(answer.headers().allValues("Set-Cookie"))
                .singleElement()
                .asString()
                .startsWith("housewright-" + hall.server.port() + "=")
                .contains("HttpOnly", "SameSite=Strict", "Path=/");
    }

    @Test
    void aRevokedLinkPutsOutWhoCameInByIt() throws Exception {
        SharedLinks links = hall.server.common().links();
        SharedLinks.Made made = links.make("eve", Role.HELPER, Hall.TODAY);
        Visitor eve = Visitor.stranger(hall);
        eve.get("/in/" + made.secret());
        assertThat(eve.get("/").statusCode()).isEqualTo(200);
        links.revoke(made.link().id());
        assertThat(eve.get("/").statusCode()).isEqualTo(401);
        assertThat(eve.get("/in/" + made.secret()).statusCode()).isEqualTo(401);
        assertThat(hall.projects.store().listLinks().toString()).doesNotContain(made.secret());
    }

    @Test
    void aChangeWantsTheTokenOfItsPage() {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        String form = "name=Another&token=";
        String type = "application/x-www-form-urlencoded";
        assertThat(lead.send(lead.request("/projects", type, form)).statusCode())
                .isEqualTo(403);
        assertThat(lead.send(lead.request("/projects", type, form + "guessed")).statusCode())
                .isEqualTo(403);
        String others = Visitor.of(hall, Role.LEAD).token();
        assertThat(lead.send(lead.request("/projects", type, form + others)).statusCode())
                .isEqualTo(403);
    }

    @ParameterizedTest
    @CsvSource({
        "Origin, http://elsewhere.example",
        "Origin, null",
        "Sec-Fetch-Site, cross-site",
        "Sec-Fetch-Site, same-site"
    })
    void aChangeFromAnotherSiteIsRefusedEvenWithTheToken(String header, String value) {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        HttpRequest.Builder request = lead.request(
                        "/projects", "application/x-www-form-urlencoded", "name=Another&token=" + lead.token())
                .header(header, value);
        assertThat(lead.send(request).statusCode()).isEqualTo(403);
    }

    @Test
    void aChangeIsNoLink() {
        assertThat(Visitor.of(hall, Role.LEAD).get("/projects/demo").statusCode())
                .isIn(404, 405);
    }

    @ParameterizedTest
    @CsvSource({
        "127.0.0.1, 401",
        "localhost, 401",
        "LOCALHOST, 401",
        "elsewhere.example, 421",
        "127.0.0.1.elsewhere.example, 421"
    })
    void answersOnlyToItsOwnNames(String name, int status) throws IOException {
        assertThat(raw("GET / HTTP/1.1\r\nHost: " + name + ":" + hall.server.port() + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 " + status + " ");
    }

    @Test
    void aNameWithAnotherPortIsAnotherName() throws IOException {
        assertThat(raw("GET / HTTP/1.1\r\nHost: 127.0.0.1:1\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 421 ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/static/",
                "/static/../housewright/web/look.css",
                "/static/%2e%2e/%2e%2e/META-INF/MANIFEST.MF",
                "/static/x/..%2f..%2flook.css",
                "/META-INF/MANIFEST.MF",
                "/look.css"
            })
    void filesAreNotLookedUpByPath(String path) throws IOException {
        String answer = raw(
                "GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + hall.server.port() + "\r\nConnection: close\r\n\r\n");
        assertThat(answer).matches("(?s)HTTP/1\\.1 (400|404) .*").doesNotContain("--ground");
    }

    @Test
    void filesOfPagesAreKeptForGoodAndPacked() {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        String base = hall.server.common().assets().base();
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(hall.origin() + base + "htmx.js"))
                .header("Accept-Encoding", "gzip");
        HttpResponse<String> answer = lead.send(request);
        assertThat(answer.headers().firstValue("Cache-Control")).hasValue("public, max-age=31536000, immutable");
        assertThat(answer.headers().firstValue("Content-Encoding")).hasValue("gzip");
    }

    @Test
    void whatIsTooLargeIsRefused() {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        String large = "name=" + "x".repeat((WebServer.MOST_UPLOAD_MB + 2) * 1024 * 1024);
        HttpRequest.Builder request = lead.request("/projects", "application/x-www-form-urlencoded", large)
                .header("X-Housewright-Token", lead.token());
        assertThat(lead.send(request).statusCode()).isEqualTo(413);
    }

    @Test
    void aPhotoIsWhatItsBytesAre() {
        Visitor helper = Visitor.of(hall, Role.HELPER);
        String job = "/p/" + hall.job().id();
        String body = "--x\r\nContent-Disposition: form-data; name=\"revision\"\r\n\r\n1\r\n"
                + "--x\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\n"
                + "Content-Type: image/jpeg\r\n\r\n<html><script>alert(1)</script>\r\n--x--\r\n";
        helper.send(helper.request(job + "/questions/q5/answer", "multipart/form-data; boundary=x", body)
                .header("X-Housewright-Token", helper.token()));
        assertThat(hall.job().now().project().questions().get("q5").remarks().photo())
                .isEmpty();
        assertThat(helper.get(job + "/questions").body()).contains("a.jpg is no photo");
    }

    @Test
    void whatIsNoPhotoDoesNotTakeTheAnswerWithIt() {
        try (Hall own = Hall.demo()) {
            Visitor helper = Visitor.of(own, Role.HELPER);
            String job = "/p/" + own.job().id();
            String body = "--x\r\n"
                    + "Content-Disposition: form-data; name=\"revision\"\r\n\r\n"
                    + "1\r\n"
                    + "--x\r\n"
                    + "Content-Disposition: form-data; name=\"answer\"\r\n\r\n"
                    + "Two of them, both dead\r\n"
                    + "--x\r\n"
                    + "Content-Disposition: form-data; name=\"photo\"; filename=\"a.heic\"\r\n\r\n"
                    + "no\r\n"
                    + "--x--\r\n";
            helper.send(helper.request(job + "/questions/q5/answer", "multipart/form-data; boundary=x", body)
                    .header("X-Housewright-Token", helper.token()));
            assertThat(own.job().now().project().questions().get("q5").answer()).isEqualTo("Two of them, both dead");
            assertThat(helper.get(job + "/questions").body()).contains("Answered q5", "a.heic is no photo");
        }
    }

    @Test
    void anEmptyAnswerPutsNobodysNameUnderAnother() {
        Visitor helper = Visitor.of(hall, Role.HELPER);
        long before = hall.job().now().revision();
        helper.post("/p/" + hall.job().id() + "/questions/q5/answer", Map.of("revision", "1", "answer", " "));
        assertThat(hall.job().now().revision()).isEqualTo(before);
    }

    @Test
    void twoPeopleOfOneNameAreNotLetIn() throws Exception {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        SharedLinks links = hall.server.common().links();
        String eva = links.make("Eva", Role.LEAD, Hall.TODAY).link().id();
        int before = links.list().size();
        for (String taken : List.of("Eva", "eva", Hall.LEAD.person(), "helper on site")) {
            lead.post("/sharing", Map.of("person", taken, "role", "lead"));
            assertThat(lead.get("/sharing").body()).contains(taken + " is in already");
        }
        assertThat(links.list()).hasSize(before);
        links.revoke(eva);
        assertThat(lead.post("/sharing", Map.of("person", "Eva", "role", "lead"))
                        .statusCode())
                .isEqualTo(200);
        assertThat(links.list()).hasSize(before + 1);
    }

    @Test
    void whoeverMayDoEverythingDoesNotLoseThatByTryingAHelpersLink() throws Exception {
        Visitor owner = Visitor.stranger(hall);
        owner.get(hall.server.openOnce().substring(hall.origin().length()));
        SharedLinks links = hall.server.common().links();
        String viewer = links.make("Vera", Role.VIEWER, Hall.TODAY).secret();
        owner.get("/in/" + viewer);
        owner.get("/in/" + hall.server.common().door().siteSecret());
        assertThat(owner.get("/sharing").statusCode()).isEqualTo(200);
        Visitor vera = Visitor.stranger(hall);
        vera.get("/in/" + viewer);
        vera.get("/in/" + links.make("Lea", Role.LEAD, Hall.TODAY).secret());
        assertThat(vera.get("/sharing").statusCode()).as("more than before").isEqualTo(200);
    }

    @Test
    void aRequestWithoutEndIsNotReadToItsEnd() throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), hall.server.port())) {
            socket.setSoTimeout(60_000);
            OutputStream out = socket.getOutputStream();
            out.write(("POST /projects HTTP/1.1\r\nHost: 127.0.0.1:" + hall.server.port()
                            + "\r\nContent-Type: text/plain\r\nTransfer-Encoding: chunked\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            byte[] piece = ("10000\r\n" + "x".repeat(0x10000) + "\r\n").getBytes(StandardCharsets.US_ASCII);
            for (int i = 0; i < 17; i++) { // more than is read of what is refused, and no end
                out.write(piece);
            }
            out.flush();
            byte[] begins = socket.getInputStream().readNBytes(12);
            assertThat(new String(begins, StandardCharsets.US_ASCII)).isEqualTo("HTTP/1.1 401");
        }
    }

    @Test
    void rowsThatAreTooManyAreRefusedAndNotCutShort() {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        HttpResponse<String> answer = lead.post(
                "/p/" + hall.job().id() + "/table/cables/read", Map.of("text", "id,note\n" + "C1,x\n".repeat(5001)));
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("These are 5001 rows", "Nothing was taken");
    }

    @Test
    void goesBackOnlyToItsOwnPages() {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        for (String back : List.of("//elsewhere.example/", "http://elsewhere.example/", "/\\elsewhere.example")) {
            HttpResponse<String> answer = lead.post("/theme", Map.of("theme", "dim", "back", back));
            assertThat(answer.headers().firstValue("Location")).hasValue("/");
        }
    }

    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), hall.server.port())) {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
