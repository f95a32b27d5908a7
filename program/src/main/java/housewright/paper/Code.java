package housewright.paper;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;

/**
 * A QR code (ISO/IEC 18004) of error correction level M.
 *
 * @param modules of a side, with the quiet zone
 * @param runs its dark modules
 */
public record Code(int modules, List<Run> runs) {
    /** Light modules around it (ISO/IEC 18004 asks for four). */
    private static final int QUIET = 4;

    /** Dark modules side by side in a row, counted from the upper left with the quiet zone. */
    public record Run(int column, int row, int length) {}

    public Code {
        runs = List.copyOf(runs);
    }

    /** @throws IllegalArgumentException when the text is too long for any code */
    public static Code of(String text) {
        ByteMatrix matrix;
        try {
            matrix = Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("Too long for a QR code: " + text, e);
        }
        List<Run> runs = new ArrayList<>();
        for (int row = 0; row < matrix.getHeight(); row++) {
            int from = -1;
            for (int column = 0; column <= matrix.getWidth(); column++) {
                boolean dark = column < matrix.getWidth() && matrix.get(column, row) == 1;
                if (dark && from < 0) {
                    from = column;
                } else if (!dark && from >= 0) {
                    runs.add(new Run(from + QUIET, row + QUIET, column - from));
                    from = -1;
                }
            }
        }
        return new Code(matrix.getWidth() + 2 * QUIET, runs);
    }

    /** For an SVG of {@link #modules} by {@link #modules}. */
    public String path() {
        StringBuilder path = new StringBuilder();
        for (Run run : runs) {
            path.append('M').append(run.column()).append(' ').append(run.row());
            path.append('h')
                    .append(run.length())
                    .append("v1h-")
                    .append(run.length())
                    .append('z');
        }
        return path.toString();
    }
}
