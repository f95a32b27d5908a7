package housewright.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The files that pages load: packed with the program, listed here, and kept by browsers for good, since their address
 * changes with their content.
 */
final class Assets {
    private static final String OURS = "/housewright/web/";

    /** What may be asked for, and where it lies; nothing else is ever looked up. */
    private static final List<String> NAMES = List.of(
            "look.css",
            "app.js",
            "live.js",
            "keys.js",
            "mark.svg",
            "grid.css",
            "grid.js",
            "choices.js",
            "drawing.css",
            "drawing.js",
            "plan.js",
            "time.css",
            "timeline.js");

    private static final Map<String, String> LIBRARIES =
            Map.of("htmx.js", "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js");

    private final Map<String, Asset> files = new LinkedHashMap<>();
    private final String version;

    /** A file and its media type, as the browser is told. */
    static final class Asset {
        private final byte[] bytes;
        private final String mediaType;

        Asset(byte[] bytes, String mediaType) {
            this.bytes = bytes;
            this.mediaType = mediaType;
        }

        byte[] bytes() {
            return bytes;
        }

        String mediaType() {
            return mediaType;
        }
    }

    Assets() {
        MessageDigest digest = sha256();
        NAMES.forEach(name -> add(name, OURS + name, digest));
        LIBRARIES.forEach((name, path) -> add(name, path, digest));
        version = HexFormat.of().formatHex(digest.digest()).substring(0, 12);
    }

    private void add(String name, String path, MessageDigest digest) {
        try (InputStream in = Assets.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + path);
            }
            byte[] bytes = in.readAllBytes();
            digest.update(bytes);
            files.put(name, new Asset(bytes, mediaType(name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String mediaType(String name) {
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "css" -> "text/css; charset=utf-8";
            case "js" -> "text/javascript; charset=utf-8";
            case "svg" -> "image/svg+xml; charset=utf-8";
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    /** Where pages find their files. */
    String base() {
        return "/static/" + version + "/";
    }

    Optional<Asset> find(String asked, String name) {
        return asked.equals(version) ? Optional.ofNullable(files.get(name)) : Optional.empty();
    }
}
