package housewright.paper.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** Papers bound into one PDF whose pages are numbered through. Equal parts give equal bytes. */
public final class PdfBook {
    private static final float POINTS_PER_MM = 72 / 25.4f;
    private static final float FOOT = 6 * POINTS_PER_MM; // below the foot of a sheet and the frame of a drawing
    private static final float LETTERS = 9;

    private PdfBook() {}

    /** One paper, as {@link Pdf} prints it. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    public record Part(String id, String title, byte[] pdf) {}

    private record Start(String title, int page) {}

    private record Opened(Part part, PDDocument document, List<Start> starts) {}

    /**
     * @param title of the whole, in its properties
     * @param contents prints the contents page, given the page on which each sheet of a part begins, counted from 1, by
     *     the id of the part; it takes as many pages whatever the numbers, and where there are none yet
     */
    public static byte[] of(String title, List<Part> parts, Function<Map<String, List<Integer>>, byte[]> contents) {
        List<Opened> opened = new ArrayList<>();
        try (PDDocument book = new PDDocument()) {
            for (Part part : parts) {
                PDDocument document = Loader.loadPDF(part.pdf());
                opened.add(new Opened(part, document, starts(document)));
            }
            Map<String, List<Integer>> pages = new LinkedHashMap<>();
            int next = 1 + count(contents.apply(Map.of()));
            for (Opened each : opened) {
                int first = next;
                pages.put(
                        each.part().id(),
                        each.starts().stream()
                                .map(start -> first + start.page())
                                .toList());
                next += each.document().getNumberOfPages();
            }
            Part front = new Part("contents", "Contents", contents.apply(pages));
            opened.addFirst(new Opened(front, Loader.loadPDF(front.pdf()), List.of()));
            bind(book, opened);
            number(book);
            return saved(book, title);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            opened.forEach(each -> close(each.document()));
        }
    }

    private static int count(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    private static List<Start> starts(PDDocument document) throws IOException {
        List<Start> starts = new ArrayList<>();
        PDDocumentOutline outline = document.getDocumentCatalog().getDocumentOutline();
        if (outline != null) {
            for (PDOutlineItem item : outline.children()) {
                PDPage page = item.findDestinationPage(document);
                starts.add(new Start(item.getTitle(), document.getPages().indexOf(page)));
            }
        }
        return starts;
    }

    /** All pages one after the other, with an outline of papers and their sheets. */
    private static void bind(PDDocument book, List<Opened> parts) throws IOException {
        PDDocumentOutline outline = new PDDocumentOutline();
        PDFMergerUtility merger = new PDFMergerUtility();
        for (Opened each : parts) {
            int first = book.getNumberOfPages();
            each.document().getDocumentCatalog().setDocumentOutline(null); // of pages counted from this part's first
            merger.appendDocument(book, each.document());
            PDOutlineItem paper = add(outline, each.part().title(), book.getPage(first));
            if (each.starts().size() > 1) {
                for (Start start : each.starts()) {
                    add(paper, start.title(), book.getPage(first + start.page()));
                }
            }
        }
        book.getDocumentCatalog().setDocumentOutline(outline);
    }

    private static PDOutlineItem add(PDOutlineNode to, String title, PDPage page) {
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(title);
        item.setDestination(page);
        to.addLast(item);
        return item;
    }

    private static void number(PDDocument book) throws IOException {
        PDType0Font font = new Fonts(book).get(Fonts.SANS);
        int number = 0;
        for (PDPage page : book.getPages()) {
            String text = "Page " + ++number + " of " + book.getNumberOfPages();
            float width = font.getStringWidth(text) / 1000 * LETTERS;
            try (PDPageContentStream out = new PDPageContentStream(book, page, AppendMode.APPEND, true, true)) {
                out.beginText();
                out.setFont(font, LETTERS);
                out.setNonStrokingColor(PrintStyle.ink());
                out.newLineAtOffset((page.getMediaBox().getWidth() - width) / 2, FOOT);
                out.showText(text);
                out.endText();
            }
        }
    }

    private static byte[] saved(PDDocument book, String title) throws IOException {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        information.setProducer("Housewright");
        book.setDocumentInformation(information);
        book.setDocumentId(0L); // else from the clock
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        book.save(out);
        return out.toByteArray();
    }

    private static void close(PDDocument document) {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
