package housewright.app.packet;

import java.io.ByteArrayOutputStream;
import java.util.Optional;

/** A JPEG (ITU-T T.81, annex B) without the segments in which cameras and programs write beside the picture. */
final class Jpeg {
    private static final int START_OF_SCAN = 0xDA;
    private static final int COMMENT = 0xFE;

    private Jpeg() {}

    /** Empty where it is no JPEG that can be walked through to its picture. */
    static Optional<byte[]> plain(byte[] bytes) {
        if (bytes.length < 4 || at(bytes, 0) != 0xFF || at(bytes, 1) != 0xD8) {
            return Optional.empty();
        }
        ByteArrayOutputStream plain = new ByteArrayOutputStream(bytes.length);
        plain.write(bytes, 0, 2);
        int i = 2;
        while (i + 4 <= bytes.length && at(bytes, i) == 0xFF) {
            int marker = at(bytes, i + 1);
            int length = 2 + (at(bytes, i + 2) << 8 | at(bytes, i + 3));
            if (length < 4 || i + length > bytes.length) {
                return Optional.empty();
            }
            if (marker == START_OF_SCAN) {
                plain.write(bytes, i, bytes.length - i);
                return Optional.of(plain.toByteArray());
            }
            boolean beside = (marker >= 0xE1 && marker <= 0xEF && marker != 0xEE) || marker == COMMENT;
            if (!beside) { // 0xEE says how the colours are meant
                plain.write(bytes, i, length);
            }
            i += length;
        }
        return Optional.empty();
    }

    private static int at(byte[] bytes, int i) {
        return bytes[i] & 0xFF;
    }
}
