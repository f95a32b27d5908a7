package housewright.web;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The way up of a photo, as its camera wrote it (Exif, CIPA DC-008, tag 0x0112), read and written by itself. */
final class Exif {
    static final int UPRIGHT = 1;
    private static final int TURNED_MOST = 8;
    private static final int ORIENTATION = 0x0112;
    private static final int SHORT = 3;
    private static final int ENTRY_BYTES = 12;

    private Exif() {}

    /** From 1, upright, to 8; upright where it is not said, or cannot be read. */
    static int orientation(byte[] content, int from, int length) {
        if (length < 8) {
            return UPRIGHT;
        }
        ByteBuffer tiff = ByteBuffer.wrap(content, from, length).slice();
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long first = tiff.getInt(4) & 0xFFFFFFFFL;
        if (first + 2 > length) {
            return UPRIGHT;
        }
        int count = tiff.getShort((int) first) & 0xFFFF;
        for (int i = 0; i < count; i++) {
            long at = first + 2 + (long) i * ENTRY_BYTES;
            if (at + ENTRY_BYTES > length) {
                return UPRIGHT;
            }
            if ((tiff.getShort((int) at) & 0xFFFF) == ORIENTATION && tiff.getShort((int) at + 2) == SHORT) {
                int said = tiff.getShort((int) at + 8);
                return said >= UPRIGHT && said <= TURNED_MOST ? said : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    /** A block that says the way up and nothing else. */
    static byte[] of(int orientation) {
        return ByteBuffer.allocate(26)
                .put((byte) 'M')
                .put((byte) 'M')
                .putShort((short) 42)
                .putInt(8)
                .putShort((short) 1)
                .putShort((short) ORIENTATION)
                .putShort((short) SHORT)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0)
                .putInt(0)
                .array();
    }
}
