package housewright.web;

import java.util.Optional;

/** Tells pictures by their first bytes, whatever a browser says they are. */
enum Pictures {
    JPEG("image/jpeg", "jpg"),
    PNG("image/png", "png"),
    WEBP("image/webp", "webp");

    final String mediaType;
    final String ending;

    Pictures(String mediaType, String ending) {
        this.mediaType = mediaType;
        this.ending = ending;
    }

    static Optional<Pictures> find(byte[] content) {
        if (begins(content, 0, 0xFF, 0xD8, 0xFF)) {
            return Optional.of(JPEG);
        }
        if (begins(content, 0, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
            return Optional.of(PNG);
        }
        return begins(content, 0, 'R', 'I', 'F', 'F') && begins(content, 8, 'W', 'E', 'B', 'P')
                ? Optional.of(WEBP)
                : Optional.empty();
    }

    private static boolean begins(byte[] content, int at, int... bytes) {
        if (content.length < at + bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if ((content[at + i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
