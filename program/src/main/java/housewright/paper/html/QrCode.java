package housewright.paper.html;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** A QR code as vectors. */
final class QrCode {
    /** Light modules around it (ISO/IEC 18004 asks for four). */
    private static final int QUIET = 4;

    private QrCode() {}

    /**
     * @param side of the square with its quiet zone, in mm
     */
    static String svg(String text, double side) {
        ByteMatrix matrix;
        try {
            matrix = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("Too long for a QR code: " + text, e);
        }
        int all = matrix.getWidth() + 2 * QUIET;
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < matrix.getHeight(); y++) {
            for (int x = 0; x < matrix.getWidth(); x++) {
                if (matrix.get(x, y) == 1) {
                    path.append('M').append(x + QUIET).append(' ').append(y + QUIET).append("h1v1h-1z");
                }
            }
        }
        String mm = Html.num(side) + "mm";
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"code\" width=\"" + mm + "\" height=\"" + mm
                + "\" viewBox=\"0 0 " + all + " " + all + "\"><rect width=\"" + all + "\" height=\"" + all
                + "\" fill=\"#fff\"/><path fill=\"#000\" d=\"" + path + "\"/></svg>";
    }
}
