package housewright.app.paper;

import housewright.paper.Block;
import housewright.paper.Cell;
import housewright.paper.Row;
import housewright.paper.Sheet;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Short names of contents: equal contents have equal ones. */
final class Hash {
    private static final int BYTES = 8;
    private static final int REVISION_LETTERS = 7;

    private Hash() {}

    /** As a person reads it out. */
    static String revision(String content) {
        return of(content).substring(0, REVISION_LETTERS);
    }

    static String of(String content) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash, 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    /** Of all that a sheet says. */
    static String of(Sheet sheet) {
        StringBuilder content = new StringBuilder();
        add(content, sheet.title());
        add(content, sheet.recipient());
        for (Block block : sheet.blocks()) {
            add(content, block.getClass().getSimpleName());
            switch (block) {
                case Block.Heading heading -> add(content, heading.text());
                case Block.Text text -> add(content, text.text());
                case Block.Caution caution -> add(content, caution.text());
                case Block.Table table -> {
                    table.columns().forEach(column -> add(content, column.head()));
                    table.rows().forEach(row -> add(content, words(row)));
                }
                case Block.Drawing drawing -> add(content, drawing.svg());
                case Block.Steps steps -> steps.steps().forEach(step -> add(content, step.toString()));
                case Block.Labels labels -> add(content, labels.toString());
            }
        }
        return of(content.toString());
    }

    /** Of each row, by table and row. */
    static Map<String, String> rows(Sheet sheet) {
        Map<String, String> rows = new LinkedHashMap<>();
        sheet.tables().forEach(table -> rows.putAll(rows(table)));
        return rows;
    }

    static Map<String, String> rows(Block.Table table) {
        Map<String, String> rows = new LinkedHashMap<>();
        table.rows().forEach(row -> rows.put(key(table, row), of(words(row))));
        return rows;
    }

    static String key(Block.Table table, Row row) {
        return table.name() + " " + row.key();
    }

    private static String words(Row row) {
        StringBuilder words = new StringBuilder();
        List<Cell> cells = row.cells();
        cells.forEach(cell -> add(words, cell.mark() + " " + cell.text()));
        return words.toString();
    }

    /** With its length before it, so that no two lists of texts run together into one. */
    private static void add(StringBuilder content, String text) {
        content.append(text.length()).append(':').append(text);
    }
}
