package housewright.paper.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import housewright.paper.PageSize;
import housewright.paper.html.Issued;
import housewright.paper.html.Markup;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** Prints papers; equal input gives equal bytes. Safe to use from several threads. */
public final class Pdf {
    private static final String FONTS = "/housewright/paper/fonts/";

    static {
        XRLog.setLoggingEnabled(false);
    }

    private Pdf() {}

    /**
     * @param hall as it stands in the foot of each page
     * @param title of the paper
     * @param question that it answers
     */
    public static byte[] of(String hall, String title, String question, PageSize size, List<Issued> sheets) {
        PrintStyle.Pages pages = new PrintStyle.Pages(size);
        Markup body = new Markup();
        for (Issued issued : sheets) {
            new Sheets(issued, hall + " · " + title, question, pages, body).write();
        }
        String html = "<html><head><title>" + Markup.escaped(title) + "</title><style>"
                + Markup.escaped(pages.style()) + "</style></head><body>" + ink(body.toString()) + "</body></html>";
        return render(html, title + ", " + hall);
    }

    /** What a page of the screen leaves to its surroundings: colour and letters. */
    private static String ink(String markup) {
        return markup.replace("=\"currentColor\"", "=\"" + PrintStyle.INK + "\"")
                .replace("=\"system-ui, sans-serif\"", "=\"" + PrintStyle.SANS + "\"")
                .replace("=\"ui-monospace, monospace\"", "=\"" + PrintStyle.MONO + "\"");
    }

    private static byte[] render(String html, String title) {
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFastMode();
            builder.withHtmlContent(html, null);
            builder.useSVGDrawer(drawer);
            builder.withProducer("Housewright");
            font(builder, "DejaVuSansCondensed.ttf", PrintStyle.SANS, 400);
            font(builder, "DejaVuSansCondensed-Bold.ttf", PrintStyle.SANS, 700);
            font(builder, "DejaVuSansMono.ttf", PrintStyle.MONO, 400);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            builder.toStream(out);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.layout();
                renderer.createPDFWithoutClosing();
                PDDocument document = renderer.getPdfDocument();
                PDDocumentInformation information = new PDDocumentInformation();
                information.setTitle(title);
                information.setProducer("Housewright");
                document.setDocumentInformation(information);
                document.setDocumentId(0L);
                document.save(out);
                document.close();
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight) {
        builder.useFont(() -> open(file), family, weight, FontStyle.NORMAL, true);
    }

    private static InputStream open(String file) {
        InputStream in = Pdf.class.getResourceAsStream(FONTS + file);
        if (in == null) {
            throw new IllegalStateException("The program was packed without its font " + file);
        }
        return in;
    }
}
