package housewright.paper.pdf;

import housewright.paper.PageSize;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;

/** Ink on paper: hairlines, no tint, nothing under 9 pt. */
final class PrintStyle {
    static final String INK = "#1D2226";
    static final String SANS = "Sheet Sans";
    static final String MONO = "Sheet Mono";

    private PrintStyle() {}

    /** The colour of {@link #INK}. */
    static PDColor ink() {
        return new PDColor(new float[] {0x1D / 255f, 0x22 / 255f, 0x26 / 255f}, PDDeviceRGB.INSTANCE);
    }

    /** The pages of sheets, by what stands in their foot and whether they lie, and those of drawings, by size. */
    static final class Pages {
        private final PageSize size;
        private final Map<String, String> names = new LinkedHashMap<>();

        Pages(PageSize size) {
            this.size = size;
        }

        /** The name of a page with this foot. */
        String sheet(boolean lying, String left, String right) {
            double width = lying ? size.height() : size.width();
            double height = lying ? size.width() : size.height();
            String rule =
                    "size: " + mm(width) + " " + mm(height) + "; margin: 12mm " + RIGHT + "mm 19mm " + LEFT + "mm;"
                            + box("left", quoted(left))
                            + box("right", "\"Sheet \" counter(page) \" of \" counter(pages) " + quoted(" · " + right));
            return name(rule, lying ? "lying" : "upright");
        }

        /** The name of a page of its own size without a foot. */
        String own(double width, double height) {
            return name("size: " + mm(width) + " " + mm(height) + "; margin: 0;", "own");
        }

        /** How wide the text on a sheet is, in mm; the renderer takes the first page's for all. */
        double width(boolean lying) {
            return (lying ? size.height() : size.width()) - LEFT - RIGHT;
        }

        private String name(String rule, String kind) {
            return names.computeIfAbsent(rule, each -> kind + names.size());
        }

        private static String box(String where, String content) {
            return " @bottom-" + where + " { content: " + content + "; text-align: " + where + "; " + FOOT + " }";
        }

        String style() {
            StringBuilder style = new StringBuilder();
            names.forEach((rule, name) -> style.append("@page ")
                    .append(name)
                    .append(" { ")
                    .append(rule)
                    .append(" }\n"));
            return style + STYLE;
        }
    }

    private static final double LEFT = 16; // room to punch
    private static final double RIGHT = 12;

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.2fmm", value);
    }

    /** A CSS string; what could end it is written by its number. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(letter -> {
            if (Character.isLetterOrDigit(letter) || " ·,.-()".indexOf(letter) >= 0) {
                quoted.appendCodePoint(letter);
            } else {
                quoted.append('\\').append(String.format(Locale.ROOT, "%06x", letter));
            }
        });
        return quoted.append('"').toString();
    }

    private static final String FOOT = "font-family: 'Sheet Sans'; font-size: 9pt; color: #1D2226;"
            + " vertical-align: top; padding-top: 1.5mm; margin-top: 2mm; border-top: 0.2mm solid #1D2226;";

    private static final String STYLE = """
            body { margin: 0; font-family: 'Sheet Sans'; font-size: 10pt; line-height: 1.3; color: #1D2226; }
            .section { page-break-before: always; }
            .first { page-break-before: avoid; }
            h1 { font-size: 16pt; margin: 0; font-weight: 700; }
            h2 { font-size: 11pt; margin: 4mm 0 1mm; font-weight: 700; page-break-after: avoid; }
            p { margin: 0 0 2mm; }
            .for { margin: 0 0 3mm; }
            .caution { border: 0.4mm solid #1D2226; padding: 1.5mm 2.5mm; margin: 2mm 0; page-break-inside: avoid; }
            table { width: 100%; border-collapse: separate; border-spacing: 0; table-layout: fixed; -fs-table-paginate: paginate; margin: 2mm 0 3mm; font-size: 9pt; line-height: 1.2; }
            th { text-align: left; font-weight: 700; padding: 0.8mm 1.5mm 0.8mm 1mm; border-bottom: 0.4mm solid #1D2226; vertical-align: bottom; }
            td { padding: 0.7mm 1.5mm 0.7mm 1mm; border-bottom: 0.15mm solid #8d8d88; vertical-align: top; word-wrap: break-word; }
            tr { page-break-inside: avoid; }
            td.id { font-family: 'Sheet Mono'; }
            .number { text-align: right; }
            tr.changed td:first-child { border-left: 1mm solid #1D2226; }
            .blank { display: inline-block; width: 80%; border-bottom: 0.2mm dotted #1D2226; }
            .box { display: inline-block; width: 3.2mm; height: 3.2mm; border: 0.2mm solid #1D2226; }
            a { color: white; text-decoration: none; font-size: 1pt; }
            .large { font-size: 13pt; line-height: 1.25; }
            .large h1 { font-size: 24pt; }
            .large h2 { font-size: 13pt; margin: 3mm 0 0; }
            .large p { margin: 0 0 1mm; }
            .large .for { font-size: 9pt; margin: 0 0 2mm; }
            .large .caution { margin: 1.5mm 0; padding: 1mm 2mm; font-size: 11pt; line-height: 1.2; }
            .large table { font-size: 12pt; margin: 1mm 0 2mm; }
            .large table.steps { font-size: 14pt; line-height: 1.2; border-top: 0.4mm solid #1D2226; }
            .steps .number { font-weight: 700; padding-right: 3mm; }
            .steps .blank { width: 35%; }
            """;
}
