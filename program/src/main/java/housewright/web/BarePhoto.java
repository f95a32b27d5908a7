package housewright.web;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * A photo with nothing but its picture: where and when it was taken, by which telephone, and whatever else was written
 * into it or hung on behind it is left out; only the way up and the colours stay. The picture itself is not encoded again.
 *
 * <p>Markers of JPEG: ITU-T T.81, table B.1. Chunks of PNG: W3C Portable Network Graphics, chapter 11. Chunks of WebP: RFC
 * 9649.
 */
final class BarePhoto {
    private static final int START_OF_IMAGE = 0xD8;
    private static final int END_OF_IMAGE = 0xD9;
    private static final int START_OF_SCAN = 0xDA;
    private static final int APP_0 = 0xE0;
    private static final int APP_1 = 0xE1;
    private static final int APP_2 = 0xE2;
    private static final int APP_14 = 0xEE;
    private static final int APP_15 = 0xEF;
    private static final int COMMENT = 0xFE;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] COLOURS = "ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII);

    private static final int PNG_HEAD = 8;
    /** What every reader must know, and what colours and transparency need. */
    private static final Set<String> OF_PNG =
            Set.of("IHDR", "PLTE", "IDAT", "IEND", "tRNS", "cHRM", "gAMA", "iCCP", "sBIT", "sRGB", "cICP", "bKGD");

    private static final int RIFF_HEAD = 12;
    private static final Set<String> OF_WEBP = Set.of("VP8 ", "VP8L", "VP8X", "ALPH", "ICCP", "ANIM", "ANMF");
    private static final int HAS_EXIF = 0x08;
    private static final int HAS_XMP = 0x04;

    private BarePhoto() {}

    /** Empty where it is cut short, or is not what it begins as. */
    static Optional<byte[]> of(Pictures kind, byte[] content) {
        try {
            return Optional.of(
                    switch (kind) {
                        case JPEG -> jpeg(content);
                        case PNG -> png(content);
                        case WEBP -> webp(content);
                    });
        } catch (IndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    private static byte[] jpeg(byte[] content) {
        ByteArrayOutputStream kept = new ByteArrayOutputStream(content.length);
        int orientation = Exif.UPRIGHT;
        int at = 2;
        while (true) {
            require(u8(content, at) == 0xFF);
            while (u8(content, at + 1) == 0xFF) {
                at++; // filled up
            }
            int marker = u8(content, at + 1);
            if (marker == END_OF_IMAGE) {
                kept.write(content, at, 2);
                break;
            }
            int length = u16(content, at + 2);
            require(length >= 2);
            int end = at + 2 + length;
            require(end <= content.length);
            if (marker == APP_1 && begins(content, at + 4, EXIF)) {
                int from = at + 4 + EXIF.length;
                orientation = Math.max(orientation, Exif.orientation(content, from, end - from));
            }
            if (marker == START_OF_SCAN) {
                end = endOfScan(content, end);
            }
            if (isKept(marker, content, at)) {
                kept.write(content, at, end - at);
            }
            at = end;
        }
        byte[] rest = kept.toByteArray();
        ByteArrayOutputStream whole = new ByteArrayOutputStream(rest.length + 40);
        whole.write(0xFF);
        whole.write(START_OF_IMAGE);
        int head = u8(rest, 1) == APP_0 ? 2 + u16(rest, 2) : 0; // JFIF wants to be the first
        whole.write(rest, 0, head);
        if (orientation != Exif.UPRIGHT) {
            byte[] exif = Exif.of(orientation);
            whole.write(0xFF);
            whole.write(APP_1);
            whole.write(0);
            whole.write(2 + EXIF.length + exif.length);
            whole.writeBytes(EXIF);
            whole.writeBytes(exif);
        }
        whole.write(rest, head, rest.length - head);
        return whole.toByteArray();
    }

    private static boolean isKept(int marker, byte[] content, int at) {
        return marker == APP_0
                || marker == APP_14
                || (marker == APP_2 && begins(content, at + 4, COLOURS))
                || !(marker == COMMENT || (marker > APP_0 && marker <= APP_15));
    }

    /** Where the next marker is that is neither a restart nor a byte of the picture. */
    private static int endOfScan(byte[] content, int from) {
        int at = from;
        while (true) {
            int next = u8(content, at + 1);
            if (u8(content, at) == 0xFF && next != 0 && next != 0xFF && (next < 0xD0 || next > 0xD7)) {
                return at;
            }
            at++;
        }
    }

    private static byte[] png(byte[] content) {
        ByteArrayOutputStream kept = new ByteArrayOutputStream(content.length);
        kept.write(content, 0, PNG_HEAD);
        int at = PNG_HEAD;
        String name;
        do {
            long length = u32(content, at);
            name = name(content, at + 4);
            long end = at + 12 + length;
            require(end <= content.length);
            if (OF_PNG.contains(name)) {
                kept.write(content, at, (int) end - at);
            }
            int orientation = name.equals("eXIf") ? Exif.orientation(content, at + 8, (int) length) : Exif.UPRIGHT;
            if (orientation != Exif.UPRIGHT) {
                kept.writeBytes(chunk(Exif.of(orientation)));
            }
            at = (int) end;
        } while (!name.equals("IEND"));
        return kept.toByteArray();
    }

    private static byte[] chunk(byte[] exif) {
        ByteBuffer chunk = ByteBuffer.allocate(exif.length + 12)
                .putInt(exif.length)
                .put("eXIf".getBytes(StandardCharsets.US_ASCII))
                .put(exif);
        CRC32 sum = new CRC32();
        sum.update(chunk.array(), 4, exif.length + 4);
        return chunk.putInt((int) sum.getValue()).array();
    }

    private static byte[] webp(byte[] content) {
        ByteArrayOutputStream kept = new ByteArrayOutputStream(content.length);
        int orientation = Exif.UPRIGHT;
        long whole = 8 + little(content, 4);
        require(whole <= content.length);
        int features = -1;
        int at = RIFF_HEAD;
        while (at < whole) {
            String name = name(content, at);
            long length = little(content, at + 4);
            long end = at + 8 + length;
            require(end <= whole);
            if (name.equals("VP8X")) {
                features = kept.size() + 8;
            } else if (name.equals("EXIF")) {
                int from = begins(content, at + 8, EXIF) ? EXIF.length : 0; // some write the mark of JPEG before it
                orientation = Exif.orientation(content, at + 8 + from, (int) length - from);
            }
            if (OF_WEBP.contains(name)) {
                kept.write(content, at, (int) end - at);
                if (length % 2 == 1) {
                    kept.write(0);
                }
            }
            at = (int) (end + length % 2);
        }
        boolean turned = orientation != Exif.UPRIGHT && features >= 0;
        if (turned) {
            byte[] exif = Exif.of(orientation);
            kept.writeBytes("EXIF".getBytes(StandardCharsets.US_ASCII));
            kept.writeBytes(little(exif.length));
            kept.writeBytes(exif);
        }
        byte[] chunks = kept.toByteArray();
        if (features >= 0) {
            chunks[features] = (byte) ((chunks[features] & ~(HAS_EXIF | HAS_XMP)) | (turned ? HAS_EXIF : 0));
        }
        ByteArrayOutputStream photo = new ByteArrayOutputStream(chunks.length + RIFF_HEAD);
        photo.write(content, 0, 4);
        photo.writeBytes(little(chunks.length + 4));
        photo.write(content, 8, 4);
        photo.writeBytes(chunks);
        return photo.toByteArray();
    }

    private static void require(boolean so) {
        if (!so) {
            throw new IndexOutOfBoundsException();
        }
    }

    private static boolean begins(byte[] content, int at, byte[] with) {
        for (int i = 0; i < with.length; i++) {
            if (at + i >= content.length || content[at + i] != with[i]) {
                return false;
            }
        }
        return true;
    }

    private static int u8(byte[] content, int at) {
        return content[at] & 0xFF;
    }

    private static int u16(byte[] content, int at) {
        return u8(content, at) << 8 | u8(content, at + 1);
    }

    private static long u32(byte[] content, int at) {
        return (long) u16(content, at) << 16 | u16(content, at + 2);
    }

    private static long little(byte[] content, int at) {
        return u8(content, at)
                | u8(content, at + 1) << 8
                | u8(content, at + 2) << 16
                | (long) u8(content, at + 3) << 24;
    }

    private static byte[] little(int number) {
        return ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(number)
                .array();
    }

    private static String name(byte[] content, int at) {
        require(at + 4 <= content.length);
        return new String(content, at, 4, StandardCharsets.ISO_8859_1);
    }
}
