package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.stream.ImageInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Node;

/** Photos as a telephone takes them, made here; what is left of them is read by the JDK's own readers. */
class BarePhotoTest {
    private static final String WHERE = "51 deg 27 min N";

    /** @param turned as Exif says it, 6 where the telephone was held upright */
    static byte[] jpeg(int width, int height, int turned) {
        byte[] plain = plain("jpg", width, height);
        byte[] exif = bytes("Exif\0\0", exif(turned));
        ByteArrayOutputStream photo = new ByteArrayOutputStream();
        photo.write(plain, 0, 2);
        segment(photo, 0xE1, exif);
        segment(photo, 0xE1, bytes("http://ns.adobe.com/xap/1.0/\0<x>" + WHERE + "</x>"));
        segment(photo, 0xED, bytes("IPTC " + WHERE));
        segment(photo, 0xFE, bytes("taken at " + WHERE));
        photo.write(plain, 2, plain.length - 2);
        photo.writeBytes(bytes("a film behind it, taken at " + WHERE));
        return photo.toByteArray();
    }

    private static byte[] plain(String format, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 2, height / 2);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            assertThat(ImageIO.write(image, format, out)).isTrue();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    /** Little-endian, as most telephones write it: the way up behind another tag, and where it was taken. */
    private static byte[] exif(int turned) {
        byte[] where = bytes(WHERE);
        ByteBuffer tiff = ByteBuffer.allocate(50 + where.length).order(ByteOrder.LITTLE_ENDIAN);
        tiff.put(bytes("II")).putShort((short) 42).putInt(8).putShort((short) 3);
        tiff.putShort((short) 0x010F).putShort((short) 2).putInt(4).put(bytes("abc\0"));
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) turned)
                .putShort((short) 0);
        tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(50);
        tiff.putInt(0).put(where);
        return tiff.array();
    }

    private static void segment(ByteArrayOutputStream out, int marker, byte[] content) {
        out.write(0xFF);
        out.write(marker);
        out.write((content.length + 2) >> 8);
        out.write((content.length + 2) & 0xFF);
        out.writeBytes(content);
    }

    private static byte[] bytes(String text, byte[]... more) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(text.getBytes(StandardCharsets.ISO_8859_1));
        for (byte[] each : more) {
            out.writeBytes(each);
        }
        return out.toByteArray();
    }

    private static String text(byte[] content) {
        return new String(content, StandardCharsets.ISO_8859_1);
    }

    private static byte[] bare(Pictures kind, byte[] photo) {
        assertThat(text(photo)).contains(WHERE);
        byte[] bare = BarePhoto.of(kind, photo).orElseThrow();
        assertThat(text(bare)).doesNotContain(WHERE).doesNotContain("abc");
        assertThat(Pictures.find(bare)).contains(kind);
        assertThat(BarePhoto.of(kind, bare))
                .hasValueSatisfying(again -> assertThat(again).isEqualTo(bare));
        return bare;
    }

    @Test
    void aJpegKeepsItsPictureAndItsWayUpAndNothingElse() throws IOException {
        byte[] photo = jpeg(64, 48, 6);
        byte[] bare = bare(Pictures.JPEG, photo);
        assertSamePixels(photo, bare);
        assertThat(orientation(bare)).isEqualTo(6);
        assertThat(orientation(bare(Pictures.JPEG, jpeg(64, 48, 1)))).isZero();
    }

    /** As the JDK's reader sees its Exif segment; 0 where there is none. */
    private static int orientation(byte[] jpeg) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(jpeg))) {
            reader.setInput(in);
            IIOMetadata metadata = reader.getImageMetadata(0);
            Node sequence = metadata.getAsTree("javax_imageio_jpeg_image_1.0").getLastChild();
            for (Node each = sequence.getFirstChild(); each != null; each = each.getNextSibling()) {
                if (each instanceof javax.imageio.metadata.IIOMetadataNode node
                        && "225".equals(node.getAttribute("MarkerTag"))) {
                    byte[] exif = (byte[]) node.getUserObject();
                    return ByteBuffer.wrap(exif).getShort(6 + 18);
                }
            }
            return 0;
        } finally {
            reader.dispose();
        }
    }

    private static void assertSamePixels(byte[] one, byte[] other) throws IOException {
        BufferedImage a = ImageIO.read(new ByteArrayInputStream(one));
        BufferedImage b = ImageIO.read(new ByteArrayInputStream(other));
        assertThat(b.getRGB(0, 0, b.getWidth(), b.getHeight(), null, 0, b.getWidth()))
                .isEqualTo(a.getRGB(0, 0, a.getWidth(), a.getHeight(), null, 0, a.getWidth()));
    }

    @Test
    void aPngToo() throws IOException {
        byte[] plain = plain("png", 30, 20);
        int behindHead = 8 + 25;
        byte[] photo = bytes(
                "",
                Arrays.copyOf(plain, behindHead),
                chunk("eXIf", exif(8)),
                chunk("tEXt", bytes("Location\0" + WHERE)),
                Arrays.copyOfRange(plain, behindHead, plain.length));
        byte[] bare = bare(Pictures.PNG, photo);
        assertSamePixels(photo, bare);
        assertThat(text(bare)).contains("eXIf").doesNotContain("tEXt");
        assertThat(text(BarePhoto.of(Pictures.PNG, plain).orElseThrow())).doesNotContain("eXIf");
    }

    private static byte[] chunk(String name, byte[] content) {
        byte[] named = bytes(name, content);
        CRC32 sum = new CRC32();
        sum.update(named);
        return ByteBuffer.allocate(named.length + 8)
                .putInt(content.length)
                .put(named)
                .putInt((int) sum.getValue())
                .array();
    }

    /** RFC 9649, 2.7: the features of the whole file, the picture, then what is told of it. */
    @Test
    void aWebpToo() {
        byte[] chunks = bytes(
                "",
                riff("VP8X", new byte[] {0x08 | 0x04, 0, 0, 0, 29, 0, 0, 19, 0, 0}),
                riff("VP8 ", new byte[] {1, 2, 3}),
                riff("EXIF", exif(3)),
                riff("XMP ", bytes("<x>" + WHERE + "</x>")));
        byte[] photo = bytes("RIFF", little(chunks.length + 4), bytes("WEBP"), chunks);
        byte[] bare = bare(Pictures.WEBP, photo);
        assertThat(text(bare)).contains("VP8 ", "EXIF").doesNotContain("XMP ");
        assertThat(bare[20]).as("features").isEqualTo((byte) 0x08);
        assertThat(ByteBuffer.wrap(bare).order(ByteOrder.LITTLE_ENDIAN).getInt(4))
                .isEqualTo(bare.length - 8);
    }

    private static byte[] riff(String name, byte[] content) {
        return bytes(name, little(content.length), content, new byte[content.length % 2]);
    }

    private static byte[] little(int number) {
        return ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(number)
                .array();
    }

    @ParameterizedTest
    @EnumSource(Pictures.class)
    void whatIsCutShortIsNone(Pictures kind) {
        byte[] photo = switch (kind) {
            case JPEG -> Arrays.copyOf(plain("jpg", 64, 48), 400);
            case PNG -> Arrays.copyOf(plain("png", 64, 48), 60);
            case WEBP -> bytes("RIFF", little(400), bytes("WEBP"));
        };
        assertThat(Pictures.find(photo)).contains(kind);
        assertThat(BarePhoto.of(kind, photo)).isEmpty();
    }

    /** Nothing but a photo or none, whatever somebody sends. */
    @Test
    void damagedPhotosAreRead() {
        Random random = new Random(4);
        byte[] photo = jpeg(64, 48, 6);
        for (int i = 0; i < 3000; i++) {
            byte[] damaged = photo.clone();
            for (int k = 0; k < 3; k++) {
                damaged[3 + random.nextInt(damaged.length - 3)] = (byte) random.nextInt();
            }
            BarePhoto.of(Pictures.JPEG, damaged)
                    .ifPresent(bare -> assertThat(bare.length).isLessThan(damaged.length + 40));
        }
    }
}
