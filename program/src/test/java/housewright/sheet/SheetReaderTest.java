package housewright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SheetReaderTest {
    private static final byte[] SOUND =
            Untidy.book(book -> book.newWorksheet("A").value(0, 0, "x"));

    /**
     * @param name of the file
     * @param why what the refusal must say
     */
    record Bad(String name, byte[] bytes, String why) {
        @Override
        public String toString() {
            return name + ": " + why;
        }
    }

    static Stream<Bad> bad() {
        String sheet = "xl/worksheets/sheet1.xml";
        byte[] blank = new byte[200 * 1024 * 1024];
        Arrays.fill(blank, (byte) ' ');
        byte[] some = Arrays.copyOf(blank, 900 * 1024);
        Map<String, byte[]> many = parts();
        IntStream.range(0, 160).forEach(n -> many.put("xl/worksheets/more" + n + ".xml", xml("<a/>", some)));
        String entities = "<!DOCTYPE a [<!ENTITY b \"bbbbbbbbbb\"><!ENTITY c \"&b;&b;&b;&b;&b;&b;\">]><a>&c;</a>";
        return Stream.of(
                new Bad("empty.csv", new byte[0], "empty"),
                new Bad("bomb.xlsx", with(sheet, blank), "unpacks to more than"),
                new Bad("bombs.xlsx", Untidy.zip(many), "unpacks to more than 120 MB"),
                new Bad("entities.xlsx", with(sheet, entities.getBytes(StandardCharsets.UTF_8)), "declares entities"),
                new Bad(
                        "outside.xlsx",
                        with(
                                sheet,
                                "<!DOCTYPE a SYSTEM \"file:///etc/hostname\"><a/>".getBytes(StandardCharsets.UTF_8)),
                        "declares entities"),
                new Bad(
                        "utf16.xlsx",
                        with(
                                sheet,
                                "<?xml version=\"1.0\" encoding=\"UTF-16\"?><a/>".getBytes(StandardCharsets.UTF_16)),
                        "UTF-8"),
                new Bad(
                        "links.xlsx",
                        with("xl/externalLinks/externalLink1.xml", xml("<a/>", new byte[0])),
                        "other workbooks"),
                new Bad("macros.xlsx", with("xl/vbaProject.bin", new byte[20]), "macros"),
                new Bad("macros.xlsm", SOUND, "macros"),
                new Bad("locked.xlsx", compound("EncryptedPackage"), "password"),
                new Bad("older.xlsx", compound("Workbook"), "older kind"),
                new Bad("older.xls", compound("Workbook"), "older kind"),
                new Bad("text.xlsx", "a,b\n1,2\n".getBytes(StandardCharsets.UTF_8), "looks like text"),
                new Bad("page.xlsx", "<html><table></table></html>".getBytes(StandardCharsets.UTF_8), "web page"),
                new Bad("book.csv", SOUND, "named as text"),
                new Bad("paper.csv", "%PDF-1.7 …".getBytes(StandardCharsets.UTF_8), "PDF"),
                new Bad("paper.pdf", "%PDF-1.7 …".getBytes(StandardCharsets.UTF_8), "does not say what it is"),
                new Bad("open.ods", SOUND, ".ods are not read"),
                new Bad(
                        "other.xlsx",
                        Untidy.zip(Map.of("mimetype", "application/epub+zip".getBytes(StandardCharsets.UTF_8))),
                        "another kind"),
                new Bad("archive.xlsx", Untidy.zip(Map.of("a.txt", new byte[3])), "no workbook"),
                new Bad("cut.xlsx", Arrays.copyOf(SOUND, SOUND.length / 2), "damaged"),
                new Bad(
                        "torn.xlsx",
                        with(sheet, "<worksheet><sheetData><row".getBytes(StandardCharsets.UTF_8)),
                        "damaged"),
                new Bad("far.xlsx", with(sheet, cell("ZZZZZ1")), "no sheet reaches"),
                new Bad("deep.xlsx", with(sheet, cell("A99999999")), "no sheet reaches"),
                new Bad("wide.csv", "a,".repeat(600).concat("b\n").getBytes(StandardCharsets.UTF_8), "500 columns"),
                new Bad("long.csv", "a\n".repeat(60_000).getBytes(StandardCharsets.UTF_8), "50000 filled rows"),
                new Bad("cell.csv", "a".repeat(40_000).getBytes(StandardCharsets.UTF_8), "32767"),
                new Bad("open-quote.csv", "a,\"b\n1,2\n".getBytes(StandardCharsets.UTF_8), "line 1 is not closed"),
                new Bad("bytes.csv", new byte[] {1, 2, 0, 3, 0, 0, 5}, "no text"),
                new Bad(
                        "lies.csv",
                        new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, (byte) 0xFF, (byte) 0xFF},
                        "is not"),
                new Bad("huge.csv", new byte[SheetReader.MOST_BYTES + 1], "25 MB"));
    }

    @ParameterizedTest
    @MethodSource("bad")
    void whatIsBadIsRefusedWithAReason(Bad bad) {
        assertThat(SheetReader.read(bad.name(), bad.bytes()))
                .isInstanceOfSatisfying(
                        SheetReading.Refused.class,
                        refused -> assertThat(refused.why()).contains(bad.why()).endsWith("."));
    }

    @Test
    void aSoundWorkbookIsNotRefused() {
        assertThat(SheetReader.read("sound.xlsx", SOUND)).isInstanceOf(SheetReading.Read.class);
        assertThat(SheetReader.read("sound.xlsx", Untidy.zip(parts()))).isInstanceOf(SheetReading.Read.class);
    }

    @Test
    void numbersAreWhatAPersonWouldType() {
        byte[] book = Untidy.book(workbook -> {
            Worksheet sheet = workbook.newWorksheet("A");
            sheet.value(0, 0, 0.1 + 0.2);
            sheet.value(0, 1, 12);
            sheet.value(0, 2, 0.7);
            sheet.style(0, 2).format("0%").set();
            sheet.value(0, 3, 12.5);
            sheet.style(0, 3).format("0.0&quot; m&quot;").set();
            sheet.value(0, 4, java.time.LocalDate.of(2027, 5, 31));
            sheet.style(0, 4).format("dd.mm.yyyy").set();
            sheet.value(0, 5, 0.4375);
            sheet.style(0, 5).format("hh:mm").set();
            sheet.value(0, 6, true);
            sheet.value(0, 7, 1e300);
        });
        List<String> row = read("a.xlsx", book).getFirst().cells();
        assertThat(row.subList(0, 7)).containsExactly("0.3", "12", "70 %", "12.5 m", "2027-05-31", "10:30", "yes");
        assertThat(row.get(7)).hasSizeLessThan(30);
    }

    @Test
    void aFormulaGivesTheValueThatWasKeptAndNeverAnother() throws IOException {
        String rows = "<row r=\"1\"><c r=\"A1\"><f>1+2</f><v>3</v></c><c r=\"B1\"><f>1+2</f></c>"
                + "<c r=\"C1\" t=\"e\"><f>1/0</f><v>#DIV/0!</v></c>"
                + "<c r=\"D1\" t=\"str\"><f>A1</f><v>three</v></c></row>";
        SheetReading reading = SheetReader.read("f.xlsx", with("xl/worksheets/sheet1.xml", worksheet(rows)));
        SheetReading.Read read = (SheetReading.Read) reading;
        Sheet.Row row = read.sheets().getFirst().rows().getFirst();
        assertThat(row.cells()).containsExactly("3", "", "", "three");
        assertThat(row.troubles()).containsOnlyKeys(1, 2);
        assertThat(read.remarks()).anyMatch(remark -> remark.contains("2 formulas"));
    }

    @Test
    void textIsReadInItsOwnEncodingAndSeparator() {
        assertThat(cells("a.csv", "Größe;Ort\n1,5;Söller\n"))
                .containsExactly(List.of("Größe", "Ort"), List.of("1,5", "Söller"));
        assertThat(cells("a.csv", "a\t\"b\nc\"\r\n\r\nd\te\n")).containsExactly(List.of("a", "b c"), List.of("d", "e"));
        assertThat(cells("a.csv", "title\na,b\n1,2\n"))
                .containsExactly(List.of("title"), List.of("a", "b"), List.of("1", "2"));
        assertThat(cells("a.csv", "sep=;\na,b;c\n")).containsExactly(List.of("a,b", "c"));
    }

    @Test
    void rowsKeepTheNumbersThatTheSpreadsheetShows() {
        assertThat(read("a.csv", "a,b\n\n\"c\nd\",e\nf,g\n".getBytes(StandardCharsets.UTF_8)))
                .extracting(Sheet.Row::number)
                .containsExactly(1, 3, 5);
    }

    private static List<Sheet.Row> read(String name, byte[] bytes) {
        return ((SheetReading.Read) SheetReader.read(name, bytes))
                .sheets()
                .getFirst()
                .rows();
    }

    private static List<List<String>> cells(String name, String text) {
        return read(name, text.getBytes(StandardCharsets.UTF_8)).stream()
                .map(Sheet.Row::cells)
                .toList();
    }

    private static byte[] cell(String at) {
        return worksheet("<row r=\"1\"><c r=\"" + at + "\"><v>1</v></c></row>");
    }

    private static byte[] worksheet(String rows) {
        return ("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>" + rows
                        + "</sheetData></worksheet>")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] xml(String text, byte[] behind) {
        byte[] start = text.getBytes(StandardCharsets.UTF_8);
        byte[] all = Arrays.copyOf(start, start.length + behind.length);
        System.arraycopy(behind, 0, all, start.length, behind.length);
        return all;
    }

    /** As spreadsheet programs begin a container of the older kind. */
    private static byte[] compound(String stream) {
        byte[] bytes = new byte[2048];
        int[] begins = {0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1};
        for (int i = 0; i < begins.length; i++) {
            bytes[i] = (byte) begins[i];
        }
        byte[] name = stream.getBytes(StandardCharsets.UTF_16LE);
        System.arraycopy(name, 0, bytes, 1024, name.length);
        return bytes;
    }

    /** A sound workbook with one part put in. */
    private static byte[] with(String part, byte[] content) {
        Map<String, byte[]> parts = parts();
        parts.put(part, content);
        return Untidy.zip(parts);
    }

    private static Map<String, byte[]> parts() {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipFile zip = Archive.open(SOUND)) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }
}
