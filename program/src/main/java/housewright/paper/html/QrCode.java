package housewright.paper.html;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/** QR codes, of error correction level M. */
public final class QrCode {
    /** Light modules around it (ISO/IEC 18004 asks for four). */
    private static final int QUIET = 4;

    private QrCode() {}

    /** Its modules with the quiet zone, row by row; true is dark. */
    public static boolean[][] modules(String text) {
        ByteMatrix matrix;
        try {
            matrix = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("Too long for a QR code: " + text, e);
        }
        int all = matrix.getWidth() + 2 * QUIET;
        boolean[][] dark = new boolean[all][all];
        for (int y = 0; y < matrix.getHeight(); y++) {
            for (int x = 0; x < matrix.getWidth(); x++) {
                dark[y + QUIET][x + QUIET] = matrix.get(x, y) == 1;
            }
        }
        return dark;
    }

    /** @param side of the square with its quiet zone, in mm */
    static String svg(String text, double side) {
        boolean[][] dark = modules(text);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < dark.length; y++) {
            for (int x = 0; x < dark.length; x++) {
                if (dark[y][x]) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        String mm = Html.num(side) + "mm";
        int all = dark.length;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"code\" width=\"" + mm + "\" height=\"" + mm
                + "\" viewBox=\"0 0 " + all + " " + all + "\"><rect width=\"" + all + "\" height=\"" + all
                + "\" fill=\"#fff\"/><path fill=\"#000\" d=\"" + path + "\"/></svg>";
    }
}
