package housewright.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Spreadsheets as people keep them, invented, by file name; the demo hall is what they speak of. */
public final class Untidy {
    private static final Map<String, byte[]> ALL = new LinkedHashMap<>();

    static {
        text("notes-above.csv", """
                Carrowfenn Hall,,,,
                Cable schedule rev C,,,,
                printed 3 May,,,,

                Cable no.,From,To,Length (m),Notes
                X1,lectern-mic.out,desk.mic-9,12.5,new run
                X2,table-mic.out,desk.mic-10,8,
                """);
        text("semicolons-decimal-commas.csv", """
                Kabel;Cable type;From;To;Length
                X1;mic-cable;lectern-mic.out;desk.mic-9;12,5 m
                X2;mic-cable;table-mic.out;desk.mic-10;7,25 m
                X3;mic-cable;vocal-1.out;desk.mic-11;1,234 m
                """);
        bytes("bom.csv", "\uFEFFId,Type,Location\nspot-9,camera-ptz-20x,Rack rear\n".getBytes(StandardCharsets.UTF_8));
        bytes(
                "utf-16.txt",
                ("\uFEFFName\tType\tLocation\nCamera Söller\tcamera-ptz-20x\tRack rear\n")
                        .getBytes(StandardCharsets.UTF_16LE));
        bytes(
                "windows-1252.csv",
                "Name;Type;Location;Remarks\nCamera Söller;camera-ptz-20x;Rack rear;für später – prüfen\n"
                        .getBytes(Charset.forName("windows-1252")));
        text("quoted.csv", """
                Cable no.,From,To,Comments
                X1,lectern-mic.out,desk.mic-9,"says ""left"", and
                has a second line"
                X2,"Table mic, out",desk.mic-10,plain
                """);
        text("totals-and-blanks.csv", """
                Cable no.,From,To,Length (m)
                FLOOR,,,
                X1,lectern-mic.out,desk.mic-9,12

                ,,,
                X2,table-mic.out,desk.mic-10,8
                Cable no.,From,To,Length (m)
                X3,vocal-1.out,desk.mic-11,3
                Total,,,23
                ,,,23
                checked by the lead,,,
                """);
        text("no-head.csv", """
                spot-1,Camera,desk,192.168.10.77
                spot-2,camera-ptz-20x,bar-1-mid,192.168.10.78
                """);
        text(
                "tabs.tsv",
                "Place\tRoom\tPosition\nbalcony-front\thall\t[2 m, 3 m, 4 m]\nbalcony-rear\tnowhere\t[2 m, 1 m, 4 m]\n");
        text("twice-and-wrong.csv", """
                Tag;Model;Where;Status;Colour of case
                spot-3;camera-ptz-20x;desk;New;red
                spot-3;camera-ptz-20x;desk;New;blue
                spot-4;camara-ptz-20x;desk;New;blue
                spot-5;camera-ptz-20x;dask;Maybe;
                desk;;;;
                """);
        text("addresses.csv", """
                sep=;
                DMX address list;;;
                Fixture;Universe;Start address;Mode
                front-1;1;41;
                front-2;1;x;
                """);
        book("two-row-head.xlsx", book -> {
            Worksheet sheet = book.newWorksheet("Cable schedule");
            rows(sheet, 0, new Object[][] {
                {"Carrowfenn Hall"},
                {null},
                {"Cable no", "From", null, "To", null, "Length", "Remarks"},
                {null, "Device", "Port", "Device", "Port", "m", null},
                {"X1", "Lectern mic", "Out", "Desk", "Mic 9", 12.5, "merged heads"},
                {"X2", "table-mic", "out", "desk", "Input 10", 8, null},
                {"X3", "table-mic", "out", "No such desk", "1", 8, null},
                {"Total", null, null, null, null, 28.5, null},
            });
            sheet.range(2, 1, 2, 2).merge();
            sheet.range(2, 3, 2, 4).merge();
        });
        book("several-sheets.xlsx", book -> {
            rows(book.newWorksheet("Read me"), 0, new Object[][] {{"What this is"}, {"Lists of the hall, ask the lead"}
            });
            rows(book.newWorksheet("Budget"), 0, new Object[][] {{"What", "Sum"}, {"Paint", 300}, {"Timber", 200}});
            rows(book.newWorksheet("Kit"), 0, new Object[][] {
                {"Asset", "Device name", "Type", "Location", "IP address"},
                {1, "Camera Balcony", "camera-ptz-20x", "Rack rear", "192.168.10.79"},
            });
        });
        book("formats-and-formulas.xlsx", book -> {
            Worksheet sheet = book.newWorksheet("Orders");
            rows(sheet, 0, new Object[][] {
                {"Order", "Items", "Supplier", "Ordered", "Lead time (d)", "Notes"},
                {"o91", "desk", "Supplier A", null, 14, null}
            });
            sheet.value(1, 3, LocalDate.of(2027, 1, 11));
            sheet.style(1, 3).format("dd/mm/yyyy").set();
            rows(sheet, 2, new Object[][] {{"o92", "desk", "Supplier A", "2027-01-12", 10, null}});
            sheet.formula(2, 5, "A1"); // a value was never worked out
        });
        book(
                "input-list.xlsx",
                book -> rows(book.newWorksheet("Input list"), 0, new Object[][] {
                    {"Sunday band", null, null, null, null, null, null, null},
                    {"Ch", "Source", "Mic/DI", "Stand", "48V", "Stage box", "Monitor sends", "Notes"},
                    {
                        11,
                        "Lead vocal",
                        "Dynamic vocal microphone, cardioid",
                        "tall boom",
                        "no",
                        "3",
                        "IEM 1, 2",
                        "brings own"
                    },
                    {12, "Choir left", "mic-condenser-small", "tall", "yes", "4", null, null},
                    {13, "Cajon", "Somebody's favourite", "short", null, "60", null, null},
                    {14, "Spare", null, null, null, null, null, null},
                    {15, "Guest ribbon", "mic-ribbon", null, "yes", null, null, null},
                }));
        StringBuilder many = new StringBuilder("Cable no.;Type;From;To;Length\n");
        for (int i = 1; i <= 20_000; i++) {
            many.append(String.format(
                            java.util.Locale.ROOT,
                            "Z%05d;mic-cable;%s;unknown;%d,5 m%n",
                            i,
                            i % 1000 == 0 ? "nobody.out" : "unknown",
                            i % 40 + 1)
                    .replace("\r", ""));
        }
        text("twenty-thousand.csv", many.toString());
    }

    private Untidy() {}

    public static byte[] get(String name) {
        byte[] bytes = ALL.get(name);
        if (bytes == null) {
            throw new AssertionError("no spreadsheet " + name);
        }
        return bytes.clone();
    }

    public static java.util.Set<String> names() {
        return ALL.keySet();
    }

    private static void text(String name, String text) {
        bytes(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void bytes(String name, byte[] bytes) {
        ALL.put(name, bytes);
    }

    private static void book(String name, Consumer<Workbook> sheets) {
        bytes(name, book(sheets));
    }

    /** A workbook as a program of the common kind writes it. */
    public static byte[] book(Consumer<Workbook> sheets) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(bytes, "Test", null)) {
            sheets.accept(book);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    static void rows(Worksheet sheet, int from, Object[][] rows) {
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < rows[i].length; j++) {
                if (rows[i][j] instanceof Number number) {
                    sheet.value(from + i, j, number);
                } else if (rows[i][j] instanceof String text) {
                    sheet.value(from + i, j, text);
                }
            }
        }
    }

    /** A zip archive of these parts. */
    static byte[] zip(Map<String, byte[]> parts) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
