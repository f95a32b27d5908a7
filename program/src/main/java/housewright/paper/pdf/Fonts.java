package housewright.paper.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The packed fonts, and those of one document. */
final class Fonts {
    static final String SANS = "DejaVuSansCondensed.ttf";
    static final String BOLD = "DejaVuSansCondensed-Bold.ttf";
    static final String MONO = "DejaVuSansMono.ttf";

    private static final String FOLDER = "/housewright/paper/fonts/";
    private static final char MISSING = '\u25A1';

    private final PDDocument document;
    private final Map<String, PDType0Font> loaded = new HashMap<>();

    Fonts(PDDocument document) {
        this.document = document;
    }

    static InputStream open(String file) {
        return new ByteArrayInputStream(Packed.bytes(file));
    }

    /** Read once, however many papers are printed. */
    private static final class Packed {
        private static final Map<String, byte[]> READ = Map.of(SANS, read(SANS), BOLD, read(BOLD), MONO, read(MONO));

        static byte[] bytes(String file) {
            return Objects.requireNonNull(READ.get(file), file);
        }

        private static byte[] read(String file) {
            try (InputStream in = Fonts.class.getResourceAsStream(FOLDER + file)) {
                if (in == null) {
                    throw new IllegalStateException("The program was packed without its font " + file);
                }
                return in.readAllBytes();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    PDType0Font get(String file) throws IOException {
        PDType0Font font = loaded.get(file);
        if (font == null) {
            font = PDType0Font.load(document, open(file), true);
            loaded.put(file, font);
        }
        return font;
    }

    /** The text with a box for each letter that the font does not have. */
    static String shown(PDType0Font font, String text) throws IOException {
        StringBuilder shown = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); ) {
            int letter = text.codePointAt(i);
            i += Character.charCount(letter);
            shown.appendCodePoint(has(font, letter) ? letter : MISSING);
        }
        return shown.toString();
    }

    private static boolean has(PDType0Font font, int letter) throws IOException {
        try {
            font.encode(Character.toString(letter));
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
