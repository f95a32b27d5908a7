package housewright.web;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A link as a QR code. */
final class QrCode {
    /** What readers want around the code, in modules. */
    private static final int QUIET = 4;

    private QrCode() {}

    /** @throws IllegalArgumentException where it is too long for a code */
    private static BitMatrix matrix(String text, int quiet) {
        try {
            return new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.MARGIN, quiet));
        } catch (WriterException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    /** Two modules in a character, light on dark: terminals mostly are, and readers take either. */
    static List<String> blocks(String text) {
        BitMatrix code = matrix(text, QUIET);
        List<String> lines = new ArrayList<>();
        for (int y = 0; y < code.getHeight(); y += 2) {
            StringBuilder line = new StringBuilder();
            for (int x = 0; x < code.getWidth(); x++) {
                boolean upper = !code.get(x, y);
                boolean lower = y + 1 >= code.getHeight() || !code.get(x, y + 1);
                line.append(upper ? lower ? '█' : '▀' : lower ? '▄' : ' ');
            }
            lines.add(line.toString());
        }
        return lines;
    }

    /** @param size of its side, in modules */
    record Drawing(int size, String path) {}

    /** The dark modules as one path. */
    static Drawing drawing(String text) {
        BitMatrix code = matrix(text, 0);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < code.getHeight(); y++) {
            for (int x = 0; x < code.getWidth(); x++) {
                if (code.get(x, y)) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        return new Drawing(code.getWidth(), path.toString());
    }
}
