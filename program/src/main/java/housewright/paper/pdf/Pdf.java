package housewright.paper.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import housewright.paper.Block;
import housewright.paper.PageSize;
import housewright.paper.html.Issued;
import housewright.paper.html.Markup;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.jspecify.annotations.Nullable;

/** Prints papers, with an outline of their sheets; equal input gives equal bytes. Safe to use from several threads. */
public final class Pdf {
    /** The link that marks the page which a block has to itself. */
    static final String OWN = "own:";

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
        List<Block> ownBlocks = new ArrayList<>();
        StringBuilder outline = new StringBuilder();
        for (int i = 0; i < sheets.size(); i++) {
            Issued issued = sheets.get(i);
            String name = "sheet-" + i;
            new Sheets(issued, name, hall + " · " + title, question, pages, body, ownBlocks).write();
            outline.append(
                    "<bookmark name=\"" + Markup.escaped(issued.sheet().title()) + "\" href=\"#" + name + "\"/>");
        }
        String html = "<html><head><title>" + Markup.escaped(title) + "</title><style>" + Markup.escaped(pages.style())
                + "</style><bookmarks>" + outline + "</bookmarks></head><body>" + body + "</body></html>";
        return render(html, title + ", " + hall, ownBlocks);
    }

    private static byte[] render(String html, String title, List<Block> ownBlocks) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.withHtmlContent(html, null);
        font(builder, Fonts.SANS, PrintStyle.SANS, 400);
        font(builder, Fonts.BOLD, PrintStyle.SANS, 700);
        font(builder, Fonts.MONO, PrintStyle.MONO, 400);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        builder.toStream(out);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            try (PDDocument document = renderer.getPdfDocument()) {
                draw(ownBlocks, document);
                PDDocumentInformation information = new PDDocumentInformation();
                information.setTitle(title);
                information.setProducer("Housewright");
                document.setDocumentInformation(information);
                document.setDocumentId(0L); // else from the clock
                document.save(out);
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void draw(List<Block> ownBlocks, PDDocument document) throws IOException {
        Fonts fonts = new Fonts(document);
        for (PDPage page : document.getPages()) {
            Integer number = number(page);
            if (number == null) {
                continue;
            }
            page.setAnnotations(List.of());
            switch (ownBlocks.get(number)) {
                case Block.Drawing drawing -> DrawingPage.draw(drawing.svg(), document, page, fonts);
                case Block.Labels labels -> LabelPage.draw(labels, document, page, fonts);
                default -> throw new IllegalStateException("no page of its own");
            }
        }
    }

    /** The number of the block that has this page to itself. */
    private static @Nullable Integer number(PDPage page) throws IOException {
        for (PDAnnotation each : page.getAnnotations()) {
            if (each instanceof PDAnnotationLink link
                    && link.getAction() instanceof PDActionURI to
                    && to.getURI() != null
                    && to.getURI().startsWith(OWN)) {
                return Integer.valueOf(to.getURI().substring(OWN.length()));
            }
        }
        return null;
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight) {
        builder.useFont(() -> Fonts.open(file), family, weight, FontStyle.NORMAL, true);
    }
}
