package housewright.paper;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A QR code (ISO/IEC 18004) of middling redundancy.
 *
 * @param modules of a side, with the quiet zone
 * @param path of its dark modules, for an SVG of {@code modules} by {@code modules}
 */
public record Code(int modules, String path) {
    /** Light modules around it (ISO/IEC 18004 asks for four). */
    private static final int QUIET = 4;

    /** @throws IllegalArgumentException when the text is too long for any code */
    public static Code of(String text) {
        ByteMatrix matrix;
        try {
            matrix = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("Too long for a QR code: " + text, e);
        }
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < matrix.getHeight(); y++) {
            for (int x = 0; x < matrix.getWidth(); x++) {
                int run = 0;
                while (x + run < matrix.getWidth() && matrix.get(x + run, y) == 1) {
                    run++;
                }
                if (run > 0) {
                    path.append('M').append(x + QUIET).append(' ').append(y + QUIET);
                    path.append('h').append(run).append("v1h-").append(run).append('z');
                    x += run;
                }
            }
        }
        return new Code(matrix.getWidth() + 2 * QUIET, path.toString());
    }
}
