package housewright.paper.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * Puts one of our own drawings on a page: lines as lines, text as text, so that it can be searched and stays small. It
 * knows the part of SVG that the drawings use (g, path of straight lines, rect, circle, text) and refuses any other, so
 * that nothing is left out unseen.
 */
final class DrawingPage {
    private static final double POINTS_PER_UNIT = 72 / 96.0;
    private static final double ROUND = 0.5523; // handle of a quarter circle by one cubic, (4/3)(sqrt 2 - 1)
    private static final Pattern PATH = Pattern.compile("([MLHVZhvz])|(-?[0-9.]+)");
    private static final Pattern TRANSFORM = Pattern.compile("(translate|rotate)\\(([-0-9. ,]+)\\)");

    private final PDPageContentStream out;
    private final Fonts fonts;
    private final double height;
    private final Deque<Style> styles = new ArrayDeque<>();

    /** What an element hands down to those within it. */
    private record Style(
            boolean fill, boolean stroke, double weight, String dashes, double opacity, double size, boolean mono) {
        static final Style PLAIN = new Style(false, true, 1, "none", 1, 12, false);

        Style of(XMLStreamReader in) {
            String fill = in.getAttributeValue(null, "fill");
            String stroke = in.getAttributeValue(null, "stroke");
            String weight = in.getAttributeValue(null, "stroke-width");
            String dashes = in.getAttributeValue(null, "stroke-dasharray");
            String opacity = in.getAttributeValue(null, "stroke-opacity");
            String size = in.getAttributeValue(null, "font-size");
            String family = in.getAttributeValue(null, "font-family");
            return new Style(
                    fill == null ? this.fill : !fill.equals("none"),
                    stroke == null ? this.stroke : !stroke.equals("none"),
                    weight == null ? this.weight : Double.parseDouble(weight),
                    dashes == null ? this.dashes : dashes,
                    opacity == null ? this.opacity : Double.parseDouble(opacity),
                    size == null ? this.size : Double.parseDouble(size),
                    family == null ? mono : family.contains("monospace"));
        }
    }

    private DrawingPage(PDPageContentStream out, Fonts fonts, double height) {
        this.out = out;
        this.fonts = fonts;
        this.height = height;
    }

    /** @param page of the drawing's own size */
    static void draw(String svg, PDDocument document, PDPage page, Fonts fonts) throws IOException {
        double height = page.getMediaBox().getHeight() / POINTS_PER_UNIT;
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
            out.transform(Matrix.getScaleInstance((float) POINTS_PER_UNIT, (float) POINTS_PER_UNIT));
            out.setStrokingColor(PrintStyle.ink());
            out.setNonStrokingColor(PrintStyle.ink());
            new DrawingPage(out, fonts, height).read(svg);
        } catch (XMLStreamException e) {
            throw new IllegalArgumentException("Not a drawing of ours", e);
        }
    }

    private void read(String svg) throws XMLStreamException, IOException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        XMLStreamReader in = factory.createXMLStreamReader(new StringReader(svg));
        styles.push(Style.PLAIN);
        while (in.hasNext()) {
            switch (in.next()) {
                case XMLStreamConstants.START_ELEMENT -> start(in);
                case XMLStreamConstants.END_ELEMENT -> {
                    if (in.getLocalName().equals("g")) {
                        out.restoreGraphicsState();
                    }
                    styles.pop();
                }
                default -> {}
            }
        }
    }

    private void start(XMLStreamReader in) throws XMLStreamException, IOException {
        Style style = styles.getFirst().of(in);
        styles.push(style);
        switch (in.getLocalName()) {
            case "svg" -> {}
            case "title" -> {
                in.getElementText();
                styles.pop();
            }
            case "g" -> {
                out.saveGraphicsState();
                transform(in.getAttributeValue(null, "transform"));
            }
            case "path" -> {
                path(in.getAttributeValue(null, "d"));
                paint(style);
            }
            case "rect" -> {
                double x = number(in, "x");
                double y = number(in, "y");
                double high = number(in, "height");
                out.addRect((float) x, (float) (height - y - high), (float) number(in, "width"), (float) high);
                paint(style);
            }
            case "circle" -> {
                circle(number(in, "cx"), number(in, "cy"), number(in, "r"));
                paint(style);
            }
            case "text" -> text(in, style);
            default -> throw new IllegalArgumentException("A drawing has what cannot be printed: " + in.getLocalName());
        }
    }

    private static double number(XMLStreamReader in, String name) {
        String value = in.getAttributeValue(null, name);
        return value == null ? 0 : Double.parseDouble(value);
    }

    /** The page's up is the drawing's down, so what turns or moves does so the other way. */
    private void transform(@Nullable String all) throws IOException {
        if (all == null) {
            return;
        }
        Matcher each = TRANSFORM.matcher(all);
        int end = 0;
        while (each.find()) {
            String[] numbers = each.group(2).strip().split("[ ,]+");
            double first = Double.parseDouble(numbers[0]);
            if (each.group(1).equals("translate")) {
                double second = numbers.length > 1 ? Double.parseDouble(numbers[1]) : 0;
                out.transform(Matrix.getTranslateInstance((float) first, (float) -second));
            } else {
                out.transform(Matrix.getTranslateInstance(0, (float) height));
                out.transform(Matrix.getRotateInstance(Math.toRadians(-first), 0, 0));
                out.transform(Matrix.getTranslateInstance(0, (float) -height));
            }
            end = each.end();
        }
        if (!all.substring(end).isBlank() || end == 0) {
            throw new IllegalArgumentException("A drawing is moved in a way that cannot be printed: " + all);
        }
    }

    private void path(String d) throws IOException {
        Matcher token = PATH.matcher(d);
        char command = 'M';
        double x = 0;
        double y = 0;
        boolean begins = true;
        double[] pair = new double[2];
        int known = 0;
        while (token.find()) {
            if (token.group(1) != null) {
                command = token.group(1).charAt(0);
                known = 0;
                begins |= command == 'M';
                if (command == 'Z' || command == 'z') {
                    out.closePath();
                }
                continue;
            }
            double value = Double.parseDouble(token.group(2));
            switch (command) {
                case 'H' -> x = value;
                case 'V' -> y = value;
                case 'h' -> x += value;
                case 'v' -> y += value;
                default -> {
                    pair[known++] = value;
                    if (known < 2) {
                        continue;
                    }
                    known = 0;
                    x = pair[0];
                    y = pair[1];
                }
            }
            if (command == 'M' && begins) {
                out.moveTo((float) x, (float) (height - y));
                begins = false;
            } else {
                out.lineTo((float) x, (float) (height - y));
            }
        }
    }

    private void circle(double x, double yDown, double r) throws IOException {
        double y = height - yDown;
        double k = r * ROUND;
        out.moveTo((float) (x + r), (float) y);
        curve(x + r, y + k, x + k, y + r, x, y + r);
        curve(x - k, y + r, x - r, y + k, x - r, y);
        curve(x - r, y - k, x - k, y - r, x, y - r);
        curve(x + k, y - r, x + r, y - k, x + r, y);
        out.closePath();
    }

    private void curve(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        out.curveTo((float) x1, (float) y1, (float) x2, (float) y2, (float) x3, (float) y3);
    }

    private void paint(Style style) throws IOException {
        if (style.stroke()) {
            out.setLineWidth((float) style.weight());
            out.setLineDashPattern(dashes(style.dashes()), 0);
        }
        boolean faint = style.opacity() < 1 && style.stroke();
        if (faint) {
            out.saveGraphicsState();
            PDExtendedGraphicsState state = new PDExtendedGraphicsState();
            state.setStrokingAlphaConstant((float) style.opacity());
            out.setGraphicsStateParameters(state);
        }
        if (style.fill() && style.stroke()) {
            out.fillAndStroke();
        } else if (style.fill()) {
            out.fill();
        } else if (style.stroke()) {
            out.stroke();
        }
        if (faint) {
            out.restoreGraphicsState();
        }
    }

    private static float[] dashes(String text) {
        if (text.equals("none")) {
            return new float[0];
        }
        String[] parts = text.strip().split("[ ,]+");
        float[] dashes = new float[parts.length];
        for (int i = 0; i < parts.length; i++) {
            dashes[i] = Float.parseFloat(parts[i]);
        }
        return dashes;
    }

    private void text(XMLStreamReader in, Style style) throws XMLStreamException, IOException {
        double x = number(in, "x");
        double y = number(in, "y");
        String anchor =
                String.valueOf(in.getAttributeValue(null, "text-anchor")).toLowerCase(Locale.ROOT);
        String words = in.getElementText();
        styles.pop(); // reading its text has passed its end
        if (words.isEmpty() || !style.fill()) {
            return;
        }
        PDType0Font font = fonts.get(style.mono() ? Fonts.MONO : Fonts.SANS);
        String shown = Fonts.shown(font, words);
        double width = font.getStringWidth(shown) / 1000 * style.size();
        double left = anchor.equals("end") ? x - width : anchor.equals("middle") ? x - width / 2 : x;
        out.beginText();
        out.setFont(font, (float) style.size());
        out.newLineAtOffset((float) left, (float) (height - y));
        out.showText(shown);
        out.endText();
    }
}
