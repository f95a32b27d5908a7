package housewright.app.packet;

import java.io.ByteArrayOutputStream;
import java.util.Optional;

/** A JPEG (ITU-T T.81, annex B) without the segments in which cameras and programs write beside the picture. */
final class Jpeg {
    private static final int START_OF_SCAN = 0xDA;
    private static final int COMMENT = 0xFE;
    private static final int END = 0xD9;
    private static final int FILL = 0xFF;

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
            if (marker == FILL) {
                i++;
                continue;
            }
            int length = 2 + (at(bytes, i + 2) << 8 | at(bytes, i + 3));
            if (length < 4 || i + length > bytes.length) {
                return Optional.empty();
            }
            boolean beside = (marker >= 0xE1 && marker <= 0xEF && marker != 0xEE) || marker == COMMENT;
            int end = marker == START_OF_SCAN ? endOfScan(bytes, i + length) : i + length;
            if (!beside) { // 0xEE says how the colours are meant
                plain.write(bytes, i, end - i);
            }
            i = end;
            if (marker == START_OF_SCAN && (i >= bytes.length || at(bytes, i + 1) == END)) {
                plain.write(0xFF); // what comes behind the end is another picture, or none
                plain.write(END);
                return Optional.of(plain.toByteArray());
            }
        }
        return Optional.empty();
    }

    /** Where the next marker is that is none of the picture's own; the length of all where it is cut off before. */
    private static int endOfScan(byte[] bytes, int from) {
        for (int i = from; i + 1 < bytes.length; i++) {
            int next = at(bytes, i + 1);
            if (at(bytes, i) == 0xFF && next != 0 && next != FILL && (next < 0xD0 || next > 0xD7)) {
                return i;
            }
        }
        return bytes.length;
    }

    private static int at(byte[] bytes, int i) {
        return bytes[i] & 0xFF;
    }
}
