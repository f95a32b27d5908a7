package housewright.web;

import housewright.app.Role;
import housewright.app.StoreException;
import java.io.IOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Somebody with a browser of their own, without its window. */
final class Visitor {
    private static final Pattern TOKEN = Pattern.compile("data-token=\"([^\"]*)\"");
    private static final Duration LONGEST = Duration.ofSeconds(60);

    private final Hall hall;
    private final HttpClient client;

    private Visitor(Hall hall) {
        this.hall = hall;
        this.client = HttpClient.newBuilder()
                .cookieHandler(new CookieManager(null, CookiePolicy.ACCEPT_ALL))
                .build();
    }

    /** Has no link. */
    static Visitor stranger(Hall hall) {
        return new Visitor(hall);
    }

    static Visitor of(Hall hall, Role role) {
        Visitor visitor = new Visitor(hall);
        try {
            String secret = hall.server
                    .common()
                    .links()
                    .make(role.word(), role, Hall.TODAY)
                    .secret();
            visitor.get("/in/" + secret);
            return visitor;
        } catch (StoreException e) {
            throw new AssertionError(e);
        }
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(hall.origin() + path)).GET());
    }

    /** What is downloaded there. */
    byte[] getBytes(String path) {
        return bytes(HttpRequest.newBuilder(URI.create(hall.origin() + path)).GET());
    }

    byte[] bytes(HttpRequest.Builder request) {
        try {
            HttpResponse<byte[]> answer = client.send(request.timeout(LONGEST).build(), BodyHandlers.ofByteArray());
            if (answer.statusCode() != 200) {
                throw new AssertionError(new String(answer.body(), StandardCharsets.UTF_8));
            }
            return answer.body();
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** A form with the token that pages of this visitor have, not sent yet. */
    HttpRequest.Builder form(String path, Map<String, String> fields) {
        return request(path, "application/x-www-form-urlencoded", "token=" + encoded(token()) + "&" + form(fields));
    }

    /** A form with the token that pages of this visitor have. */
    HttpResponse<String> post(String path, Map<String, String> fields) {
        return send(form(path, fields));
    }

    static String form(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    HttpRequest.Builder request(String path, String type, String body) {
        return HttpRequest.newBuilder(URI.create(hall.origin() + path))
                .header("Content-Type", type)
                .POST(BodyPublishers.ofString(body));
    }

    /** Once more where the server has just closed the line it was sent on, as a client must expect (RFC 9112, 9.3.1). */
    HttpResponse<String> send(HttpRequest.Builder request) {
        HttpRequest built = request.timeout(LONGEST).build();
        try {
            try {
                return client.send(built, BodyHandlers.ofString());
            } catch (IOException closed) {
                return client.send(built, BodyHandlers.ofString());
            }
        } catch (IOException e) {
            throw new AssertionError(request.build().uri().toString(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** What the pages shown to this visitor carry; empty for whoever is shown none. */
    String token() {
        Matcher matcher = TOKEN.matcher(get("/help").body());
        return matcher.find() ? matcher.group(1) : "";
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
