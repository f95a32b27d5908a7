package housewright.app.paper;

import static java.nio.charset.StandardCharsets.UTF_8;

import housewright.paper.Labelling;
import housewright.paper.PageSize;
import housewright.paper.Paper;
import housewright.paper.PaperOptions;
import housewright.paper.Papers;
import housewright.paper.Sheet;
import housewright.paper.Spreadsheet;
import housewright.paper.csv.Csv;
import housewright.paper.html.HtmlPage;
import housewright.paper.html.Issued;
import housewright.paper.pdf.Pdf;
import housewright.paper.xlsx.Xlsx;
import housewright.study.Study;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Papers of one revision, made when they are asked for. Equal issues give equal bytes.
 *
 * @param revision as it is printed
 * @param date of the revision
 * @param earlier what was printed before
 */
public record Issue(Study study, PageSize size, Labelling labels, String revision, LocalDate date, Earlier earlier) {

    private String hall() {
        return study.project().about().name();
    }

    private List<Issued> sheets(Paper paper, Predicate<String> chosen) {
        PaperOptions options = new PaperOptions(size, hall(), revision, date.toString(), labels);
        List<Sheet> some = paper.sheets(study, options).stream()
                .filter(sheet -> chosen.test(sheet.id()))
                .toList();
        return earlier.marked(paper, some, options).stream()
                .map(sheet -> new Issued(sheet, revision, date.toString()))
                .toList();
    }

    private List<Spreadsheet> tables(Paper paper) {
        List<Sheet> sheets =
                sheets(paper, id -> true).stream().map(Issued::sheet).toList();
        return Spreadsheet.of(sheets);
    }

    /**
     * As a web page that needs nothing else.
     *
     * @param home the address of all papers
     */
    public String page(Paper paper, String home) {
        return HtmlPage.of(hall(), paper.title(), paper.question(), sheets(paper, id -> true), home);
    }

    /** @param chosen ids of the sheets to print */
    public byte[] pdf(Paper paper, Predicate<String> chosen) {
        return Pdf.of(hall(), paper.title(), paper.question(), size, sheets(paper, chosen));
    }

    /** All tables of a paper as a workbook; empty where it has none. */
    public Optional<byte[]> workbook(Paper paper) {
        List<Spreadsheet> tables = tables(paper);
        return tables.isEmpty() ? Optional.empty() : Optional.of(Xlsx.of(tables));
    }

    /** One table of a paper; empty where it has none of that name. */
    public Optional<byte[]> csv(Paper paper, String table) {
        return tables(paper).stream()
                .filter(each -> each.name().equals(table))
                .findFirst()
                .map(each -> Csv.of(each).getBytes(UTF_8));
    }

    /**
     * The whole binder as a ZIP.
     *
     * @throws IllegalStateException where the disk does not take it, in words
     */
    public byte[] binder() {
        try {
            Path folder = Files.createTempDirectory("housewright-binder-");
            try {
                Binder binder = new Binder(folder, size, labels, date.toString(), (what, step) -> step.run(), earlier);
                return switch (binder.bind(study, Papers.all(), revision)) {
                    case Binding.Bound bound -> zip(folder, bound.files());
                    case Binding.NotBound not -> throw new IllegalStateException(not.why());
                };
            } finally {
                delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * All papers that go on paper in one PDF, numbered through.
     *
     * @param binder as {@link #binder} gives it
     */
    public static byte[] book(byte[] binder) {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(binder), UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals(Binder.BOOK)) {
                    return zip.readAllBytes();
                }
            }
            throw new IllegalArgumentException("no binder");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] zip(Path folder, List<String> files) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<String> all = new ArrayList<>(files);
        all.add(Manifest.FILE);
        try (ZipOutputStream zip = new ZipOutputStream(out, UTF_8)) {
            for (String name : all) {
                ZipEntry entry = new ZipEntry(name);
                entry.setTimeLocal(date.atStartOfDay()); // else this moment's, and other bytes each time
                zip.putNextEntry(entry);
                Files.copy(folder.resolve(name), zip);
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
