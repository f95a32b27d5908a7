package housewright.file;

import java.util.ArrayList;
import java.util.List;

/** A list of words in one cell: commas between, quotation marks around a word that has a comma itself. */
final class CellList {
    private CellList() {}

    static String join(List<String> items) {
        List<String> written = new ArrayList<>();
        for (String item : items) {
            boolean plain = !item.startsWith("\"")
                    && !item.startsWith("[")
                    && isClosed(item)
                    && split(item).equals(List.of(item));
            written.add(plain ? item : "\"" + item.replace("\"", "\"\"") + "\"");
        }
        return String.join(", ", written);
    }

    /** An open bracket would take the comma after the word with it. */
    private static boolean isClosed(String item) {
        int depth = 0;
        for (int i = 0; i < item.length(); i++) {
            char c = item.charAt(i);
            depth += c == '{' || c == '[' ? 1 : (c == '}' || c == ']') && depth > 0 ? -1 : 0;
        }
        return depth == 0;
    }

    /** A comma within braces or brackets belongs to the word: {@code desk.play-{L,R}}. */
    static List<String> split(String text) {
        List<String> items = new ArrayList<>();
        StringBuilder item = new StringBuilder();
        int depth = 0;
        boolean quoted = false;
        boolean held = false; // what stood in quotation marks is kept as it is
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                boolean mark = c == '"';
                if (mark && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    item.append('"');
                    i++;
                } else if (mark) {
                    quoted = false;
                } else {
                    item.append(c);
                }
            } else if (c == '"' && item.toString().isBlank()) {
                item.setLength(0);
                quoted = true;
                held = true;
            } else if (c == ',' && depth == 0) {
                add(item, held, items);
                held = false;
            } else if (!held || !Character.isWhitespace(c)) {
                depth += c == '{' || c == '[' ? 1 : (c == '}' || c == ']') && depth > 0 ? -1 : 0;
                item.append(c);
            }
        }
        add(item, held, items);
        return items;
    }

    private static void add(StringBuilder item, boolean held, List<String> items) {
        String word = held ? item.toString() : item.toString().strip();
        if (held || !word.isEmpty()) {
            items.add(word);
        }
        item.setLength(0);
    }
}
