package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Look;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;
import housewright.file.RecordForm.Part;
import housewright.file.ValueType.Many;
import housewright.file.ValueType.Of;
import housewright.file.ValueType.Table;
import housewright.model.Project;
import housewright.sheet.Sheet;
import housewright.sheet.SheetReader;
import housewright.sheet.SheetReading;
import housewright.sheet.SheetWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A project as a workbook: a sheet for each section, an entity in each row, its keys in columns as in
 * {@link EntityCells}; what has no rows is in the sheet {@value #REST}. Reading what is written gives an equal project,
 * its entries in the same order.
 */
public final class ProjectBook {
    /** The sheet of what is no section. */
    static final String REST = "project";

    private static final String ID = "id";
    private static final int LONGEST = 32_000;

    private ProjectBook() {}

    /** The same project gives the same bytes. */
    public static byte[] write(Project project) {
        RecordForm form = RecordForm.of(Project.class);
        List<Sheet> sheets = new ArrayList<>();
        Map<String, String> rest = new LinkedHashMap<>();
        for (Part part : form.parts()) {
            Object value = form.get(part, project);
            if (value == null || value.equals(form.absence(part).value())) {
                continue;
            }
            if (part.type() instanceof Table table) {
                sheets.add(section(part.key(), table, (Map<?, ?>) value));
            } else if (part.type() instanceof Of of && isHolder(of.form())) {
                for (Part inner : of.form().parts()) {
                    Map<?, ?> entities = (Map<?, ?>) of.form().get(inner, value);
                    if (entities != null
                            && (!entities.isEmpty() || form.absence(part).value() == null)) {
                        sheets.add(section(inner.key(), (Table) inner.type(), entities));
                    }
                }
            } else {
                rest(part, value, rest);
            }
        }
        List<Sheet.Row> rows = new ArrayList<>();
        add(rows, List.of("key", "value"));
        rest.forEach((key, text) -> {
            List<String> cells = new ArrayList<>(List.of(key));
            cells.addAll(pieces(held(text)));
            add(rows, cells);
        });
        sheets.addFirst(new Sheet(REST, rows));
        return SheetWriter.workbook(sheets);
    }

    /** A section that only holds sections: venue and lighting. */
    private static boolean isHolder(RecordForm form) {
        return form.parts().stream()
                .allMatch(part -> part.type() instanceof Table table
                        && table.value() instanceof Of of
                        && of.form().isEntity());
    }

    private static void rest(Part part, Object value, Map<String, String> rest) {
        Map<String, String> cells = new LinkedHashMap<>();
        Node node = ModelNodes.of(part.type(), value);
        if (part.type() instanceof Of of && node instanceof Mapping mapping) {
            EntityCells.cells(of.form(), part.key() + ".", mapping, cells);
        }
        if (cells.isEmpty()) {
            cells.put(part.key(), node instanceof Mapping ? "{}" : EntityCells.text(part.type(), node));
        }
        rest.putAll(cells);
    }

    private static Sheet section(String name, Table table, Map<?, ?> entities) {
        List<Map<String, String>> rows = new ArrayList<>();
        entities.forEach((id, value) -> {
            if (table.value() instanceof Many many && many.element() instanceof Of of) {
                List<?> entries = (List<?>) value;
                entries.forEach(entry -> rows.add(cells(id.toString(), explicit(of.form(), entry), of.form())));
                if (entries.isEmpty()) {
                    rows.add(new LinkedHashMap<>(Map.of(ID, id.toString())));
                }
            } else if (table.value() instanceof Of of) {
                rows.add(cells(id.toString(), (Mapping) ModelNodes.of(table.value(), value), of.form()));
            } else {
                Map<String, String> cells = new LinkedHashMap<>(Map.of(ID, id.toString()));
                cells.put("channels", EntityCells.text(table.value(), ModelNodes.of(table.value(), value)));
                rows.add(cells);
            }
        });
        return sheet(name, head(name), rows);
    }

    private static String head(String section) {
        return section.equals("patch") ? "device" : ID;
    }

    private static Map<String, String> cells(String id, Mapping mapping, RecordForm form) {
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put(ID, id);
        EntityCells.cells(form, "", mapping, cells);
        return cells;
    }

    /** Key by key, though it could be written shorter. */
    private static Mapping explicit(RecordForm form, Object value) {
        List<Entry> entries = new ArrayList<>();
        for (Part part : form.parts()) {
            Object each = form.get(part, value);
            if (each != null && !each.equals(form.absence(part).value())) {
                entries.add(new Entry(new Scalar(part.key(), Look.TEXT), ModelNodes.of(part.type(), each)));
            }
        }
        return new Mapping(entries, Layout.COMPACT, Span.NONE);
    }

    private static Sheet sheet(String name, String id, List<Map<String, String>> rows) {
        Map<String, Integer> widths = new LinkedHashMap<>(); // in pieces
        for (Map<String, String> row : rows) {
            row.forEach((key, text) -> widths.merge(key, pieces(held(text)).size(), Math::max));
        }
        widths.putIfAbsent(ID, 1);
        List<String> head = new ArrayList<>();
        widths.forEach((key, width) -> {
            for (int n = 1; n <= width; n++) {
                head.add((key.equals(ID) ? id : key) + (n == 1 ? "" : " (" + n + ")"));
            }
        });
        List<Sheet.Row> all = new ArrayList<>();
        add(all, head);
        for (Map<String, String> row : rows) {
            List<String> cells = new ArrayList<>();
            widths.forEach((key, width) -> {
                String text = row.get(key);
                List<String> pieces = text == null ? List.of("") : pieces(held(text));
                for (int n = 0; n < width; n++) {
                    cells.add(n < pieces.size() ? pieces.get(n) : "");
                }
            });
            add(all, cells);
        }
        return new Sheet(name, all);
    }

    private static void add(List<Sheet.Row> rows, List<String> cells) {
        rows.add(new Sheet.Row(rows.size() + 1, cells));
    }

    /** What a workbook's cell would lose, held by quotation marks: blanks around, odd signs, a text of nothing. */
    private static String held(String text) {
        boolean quoted = text.length() > 1 && text.startsWith("'") && text.endsWith("'");
        boolean plain = !text.isEmpty() && !quoted && text.equals(text.strip());
        if (plain && text.chars().noneMatch(ProjectBook::isOdd)) {
            return text;
        }
        StringBuilder held = new StringBuilder("'");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\') {
                held.append("\\\\");
            } else if (isOdd(c)) {
                held.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                held.append(c);
            }
        }
        return held.append('\'').toString();
    }

    /** What XML has no place for, or reads as another. */
    private static boolean isOdd(int c) {
        return (c < ' ' && c != '\n' && c != '\t') || c == 0xFFFE || c == 0xFFFF;
    }

    private static String free(String cell) {
        if (cell.length() < 2 || !cell.startsWith("'") || !cell.endsWith("'")) {
            return cell;
        }
        StringBuilder text = new StringBuilder();
        for (int i = 1; i < cell.length() - 1; i++) {
            char c = cell.charAt(i);
            boolean escaped = c == '\\' && i + 1 < cell.length() - 1;
            if (escaped && cell.charAt(i + 1) == '\\') {
                text.append('\\');
                i++;
            } else if (escaped && cell.substring(i + 1).matches("(?s)u[0-9a-f]{4}.*")) {
                text.append((char) Integer.parseInt(cell.substring(i + 2, i + 6), 16));
                i += 5;
            } else {
                text.append(c);
            }
        }
        return text.toString();
    }

    /** No more than a cell holds each. */
    private static List<String> pieces(String text) {
        List<String> pieces = new ArrayList<>();
        for (int from = 0; from == 0 || from < text.length(); from += LONGEST) {
            pieces.add(text.substring(from, Math.min(text.length(), from + LONGEST)));
        }
        return pieces;
    }

    /** Whether a workbook is a project that was written as one. */
    public static boolean isProject(List<Sheet> sheets) {
        return sheets.stream()
                .filter(sheet -> sheet.name().equals(REST))
                .anyMatch(sheet ->
                        sheet.rows().stream().anyMatch(row -> row.cell(0).equals("housewright")));
    }

    /** As a mapping like that of a project file; errors name row and column of the sheet that their path begins with. */
    static Mapping read(byte[] bytes) throws DocumentException {
        return switch (SheetReader.read("project.xlsx", bytes)) {
            case SheetReading.Refused refused ->
                throw new DocumentException(1, 1, "a workbook that is refused: " + refused.why(), "");
            case SheetReading.Read read -> {
                if (!isProject(read.sheets())) {
                    throw new DocumentException(
                            1,
                            1,
                            "a workbook that was not written from a project",
                            "one with a sheet \"" + REST + "\"; a list of things goes into a project with import");
                }
                yield document(read.sheets());
            }
        };
    }

    private static Mapping document(List<Sheet> sheets) throws DocumentException {
        RecordForm form = RecordForm.of(Project.class);
        Map<String, List<Entry>> holders = new LinkedHashMap<>();
        List<Entry> entries = new ArrayList<>();
        for (Sheet sheet : sheets) {
            if (sheet.name().equals(REST)) {
                entries.addAll(0, rest(form, sheet));
                continue;
            }
            Part top = form.find(sheet.name());
            Part holder = top == null ? holder(form, sheet.name()) : null;
            Scalar name = new Scalar(sheet.name(), Look.TEXT, new Span(1, 1, 0, 0));
            if (top != null && top.type() instanceof Table table) {
                entries.add(new Entry(name, section(sheet, table)));
            } else if (holder != null) {
                RecordForm inner = ((Of) holder.type()).form();
                Table table = (Table) java.util.Objects.requireNonNull(inner.find(sheet.name()))
                        .type();
                List<Entry> held = holders.computeIfAbsent(holder.key(), key -> new ArrayList<>());
                held.add(new Entry(name, section(sheet, table)));
            } else {
                entries.add(new Entry(name, mapping(List.of()))); // an unknown key, which the binder names
            }
        }
        holders.forEach((key, held) -> entries.add(new Entry(new Scalar(key, Look.TEXT), mapping(held))));
        return mapping(entries);
    }

    private static Mapping mapping(List<Entry> entries) {
        return new Mapping(entries, Layout.COMPACT, Span.NONE);
    }

    private static @Nullable Part holder(RecordForm form, String section) {
        return form.parts().stream()
                .filter(part -> part.type() instanceof Of of
                        && isHolder(of.form())
                        && of.form().find(section) != null)
                .findFirst()
                .orElse(null);
    }

    private static List<Entry> rest(RecordForm form, Sheet sheet) throws DocumentException {
        Mapping mapping = mapping(List.of());
        for (Sheet.Row row : sheet.rows()) {
            if (row.number() == 1) {
                continue;
            }
            String key = row.cell(0);
            String text = free(String.join(
                    "",
                    row.cells()
                            .subList(
                                    Math.min(1, row.cells().size()), row.cells().size())));
            mapping = EntityCells.with(mapping, form, key, text, true, new Span(row.number(), 2, 0, 0));
        }
        return mapping.entries();
    }

    private static Mapping section(Sheet sheet, Table table) throws DocumentException {
        List<String> head =
                sheet.rows().isEmpty() ? List.of() : sheet.rows().getFirst().cells();
        Map<String, List<Node>> lists = new LinkedHashMap<>();
        List<Entry> entries = new ArrayList<>();
        for (Sheet.Row row : sheet.rows()) {
            if (row.number() == 1) {
                continue;
            }
            Map<String, String> cells = new LinkedHashMap<>();
            Map<String, Integer> columns = new LinkedHashMap<>();
            for (int i = 0; i < Math.min(head.size(), row.cells().size()); i++) {
                String key = head.get(i).replaceFirst(" \\(\\d+\\)$", "");
                if (!row.cell(i).isEmpty()) {
                    cells.merge(key, row.cell(i), String::concat);
                    columns.putIfAbsent(key, i + 1);
                }
            }
            String id = cells.remove(head(sheet.name()));
            Scalar name = new Scalar(id == null ? "" : id, Look.TEXT, new Span(row.number(), 1, 0, 0));
            if (table.value() instanceof Many many && many.element() instanceof Of of) {
                List<Node> list = lists.computeIfAbsent(name.text(), key -> new ArrayList<>());
                if (list.isEmpty()
                        && entries.stream()
                                .noneMatch(entry -> entry.key().text().equals(name.text()))) {
                    entries.add(new Entry(name, mapping(List.of())));
                }
                if (!cells.isEmpty()) {
                    list.add(row(of.form(), row.number(), cells, columns));
                }
            } else if (table.value() instanceof Of of) {
                entries.add(new Entry(name, row(of.form(), row.number(), cells, columns)));
            } else {
                Span span = new Span(row.number(), 2, 0, 0);
                String text = free(cells.getOrDefault("channels", ""));
                entries.add(new Entry(name, EntityCells.at(EntityCells.value(table.value(), text), span)));
            }
        }
        if (!lists.isEmpty()) {
            entries.replaceAll(entry -> new Entry(
                    entry.key(),
                    new Sequence(
                            lists.getOrDefault(entry.key().text(), List.of()),
                            Layout.COMPACT,
                            entry.key().span())));
        }
        return mapping(entries);
    }

    private static Mapping row(RecordForm form, int number, Map<String, String> cells, Map<String, Integer> columns)
            throws DocumentException {
        Mapping mapping = new Mapping(List.of(), Layout.COMPACT, new Span(number, 1, 0, 0));
        for (Map.Entry<String, String> cell : cells.entrySet()) {
            Span span = new Span(number, columns.getOrDefault(cell.getKey(), 1), 0, 0);
            mapping = EntityCells.with(mapping, form, cell.getKey(), free(cell.getValue()), true, span);
        }
        return mapping;
    }
}
