package housewright.drawing;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes SVG. Any text is safe: it is escaped, and what XML cannot hold becomes the replacement character. */
final class Svg {
    /** 9 pt, the least size of text. */
    static final double SMALL = 12;

    static final double LINE = 15;
    static final double HAIR = 0.5;
    static final double NORMAL = 1;
    static final double CHOSEN = 2;

    private static final String MONO = "ui-monospace, monospace";
    private static final char REPLACEMENT = '\uFFFD';

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter out;

    Svg() {
        try {
            out = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** @param attributes names and values in turn; numbers are rounded to hundredths */
    Svg open(String tag, Object... attributes) {
        try {
            out.writeStartElement(tag);
            attributes(attributes);
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    Svg leaf(String tag, Object... attributes) {
        try {
            out.writeEmptyElement(tag);
            attributes(attributes);
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    Svg close() {
        try {
            out.writeEndElement();
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    Svg chars(String content) {
        try {
            out.writeCharacters(clean(content));
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A group for a thing of the project, with its name for those who point at it or listen. */
    Svg thing(String kind, String id, String classes, String name, Object... attributes) {
        open("g", "class", classes, "data-subject", kind + ":" + id, "role", "graphics-symbol", "aria-label", name);
        try {
            attributes(attributes);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return open("title").chars(name).close();
    }

    /** @param anchor start, middle or end */
    Svg words(double x, double y, String anchor, String content) {
        return words(x, y, anchor, SMALL, false, content);
    }

    Svg id(double x, double y, String anchor, String content) {
        return words(x, y, anchor, SMALL, true, content);
    }

    Svg words(double x, double y, String anchor, double size, boolean mono, String content) {
        open("text", "x", x, "y", y, "font-size", size, "fill", "currentColor", "stroke", "none");
        try {
            if (!anchor.equals("start")) {
                out.writeAttribute("text-anchor", anchor);
            }
            if (mono) {
                out.writeAttribute("font-family", MONO);
            }
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return chars(content).close();
    }

    Svg line(double x1, double y1, double x2, double y2, double weight) {
        return leaf("path", "d", "M" + num(x1) + " " + num(y1) + "L" + num(x2) + " " + num(y2), "stroke-width", weight);
    }

    String finish() {
        try {
            out.flush();
            return text.toString();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private void attributes(Object... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            Object value = attributes[i + 1];
            String written = value instanceof Number number ? num(number.doubleValue()) : clean(value.toString());
            out.writeAttribute(attributes[i].toString(), written);
        }
    }

    /** With at most two decimals, alike in every locale. */
    static String num(double value) {
        long hundredths = Math.round(value * 100);
        long whole = Math.abs(hundredths) / 100;
        long rest = Math.abs(hundredths) % 100;
        String sign = hundredths < 0 ? "-" : "";
        if (rest == 0) {
            return sign + whole;
        }
        return sign + whole + "." + (rest % 10 == 0 ? "" + rest / 10 : (rest < 10 ? "0" : "") + rest);
    }

    /** What an XML 1.0 document may hold (production 2, "Char"), with every white space a plain one. */
    static String clean(String content) {
        StringBuilder clean = new StringBuilder(content.length());
        for (int i = 0; i < content.length(); ) {
            int each = content.codePointAt(i);
            i += Character.charCount(each);
            if (each == '\t' || each == '\n' || each == '\r') {
                clean.append(' ');
            } else if (each < 0x20
                    || (each >= 0x7F && each < 0xA0)
                    || (each >= 0xD800 && each <= 0xDFFF)
                    || each == 0xFFFE
                    || each == 0xFFFF) {
                clean.append(REPLACEMENT);
            } else {
                clean.appendCodePoint(each);
            }
        }
        return clean.toString();
    }
}
