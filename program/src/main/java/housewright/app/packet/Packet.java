package housewright.app.packet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import housewright.study.Study;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;

/**
 * A question packet: one page that holds its style, its script and its questions, and may load nothing else. The same
 * project and person give the same bytes.
 */
public final class Packet {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** What the page's script reads. */
    public record Content(String id, String project, String to, List<PacketItem> items) {}

    private Packet() {}

    public static String html(Study study, String person) {
        List<PacketItem> items = Survey.of(study, person);
        String name = study.project().about().name();
        String id = hash(name + person + items).substring(0, 12);
        String script = resource("packet.js");
        String style = resource("packet.css");
        String data = json(new Content(id, name, person, items));
        return """
                <!doctype html>
                <html lang="en">
                <head>
                <meta charset="utf-8">
                <meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'sha256-%s'; style-src 'sha256-%s'; img-src data: blob:; base-uri 'none'; form-action 'none'">
                <meta name="viewport" content="width=device-width, initial-scale=1">
                <title>Questions for %s: %s</title>
                <style>%s</style>
                </head>
                <body>
                <main>
                <h1>%s: what is asked of %s</h1>
                <p class="second">%s Everything stays on this phone until you save the answers and send that file back.</p>
                <noscript><p class="caution">This page needs scripts: open it in the phone's browser, not in a preview.</p></noscript>
                <section><h2>Questions</h2><ol id="questions"></ol></section>
                <section><h2>To be looked at and measured</h2><p class="second">Only what you can see or reach safely from the floor. Leave the rest empty.</p><ol id="survey"></ol></section>
                </main>
                <footer><div><p><strong id="state" role="status"></strong><br><span id="kept" role="status"></span></p><button class="first" id="save" type="button">Save answers</button></div></footer>
                <script type="application/json" id="packet">%s</script>
                <script>%s</script>
                </body>
                </html>
                """.formatted(
                        sourceHash(script),
                        sourceHash(style),
                        escaped(person),
                        escaped(name),
                        style,
                        escaped(name),
                        escaped(person),
                        items.isEmpty() ? "There is nothing to be asked at the moment." : "",
                        data,
                        script);
    }

    /** How many things a packet would ask. */
    public static int count(Study study, String person) {
        return Survey.of(study, person).size();
    }

    private static String json(Content content) {
        try {
            return JSON.writeValueAsString(content)
                    .replace("<", "\\u003c")
                    .replace("\u2028", "\\u2028")
                    .replace("\u2029", "\\u2029");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(Packet.class.getResourceAsStream("/housewright/packet/" + name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] digest(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    private static String hash(String text) {
        return HexFormat.of().formatHex(digest(text));
    }

    /** As a content security policy names a script that stands in its page (W3C CSP3, 2.3.1). */
    private static String sourceHash(String text) {
        return Base64.getEncoder().encodeToString(digest(text));
    }
}
