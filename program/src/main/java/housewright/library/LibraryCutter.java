package housewright.library;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Cuts the files of a library into entries without parsing them. A file has {@code models:}, {@code cable-types:} or
 * {@code adapters:} at the beginning of a line, and under it, indented by two spaces, an id for each entry.
 */
final class LibraryCutter {
    private final Map<String, Map<String, LibraryIndex.Entry>> sections = new LinkedHashMap<>();

    private String file = "";
    private String text = "";
    private @Nullable Map<String, LibraryIndex.Entry> section;
    private @Nullable String id;
    private int entryStart;
    private int entryEnd;

    /** Where the comment right before the next id begins, or -1. */
    private int comment;

    LibraryCutter() {
        for (String name : new String[] {"models", "cable-types", "adapters"}) {
            sections.put(name, new LinkedHashMap<>());
        }
    }

    LibraryIndex index() {
        return new LibraryIndex(get("models"), get("cable-types"), get("adapters"));
    }

    private Map<String, LibraryIndex.Entry> get(String name) {
        Map<String, LibraryIndex.Entry> found = sections.get(name);
        if (found == null) {
            throw new IllegalStateException(file + " has the section " + name + ", which no library has");
        }
        return found;
    }

    /** @throws IllegalStateException where the file is not of that form, or an id is there a second time */
    void cut(String fileName, String fileText) {
        file = fileName;
        text = fileText;
        section = null;
        id = null;
        comment = -1;
        int lineStart = 0;
        while (lineStart < text.length()) {
            int newline = text.indexOf('\n', lineStart);
            int lineEnd = newline < 0 ? text.length() : newline + 1;
            line(lineStart, lineEnd);
            lineStart = lineEnd;
        }
        endEntry();
    }

    private void line(int start, int end) {
        int indent = start;
        while (indent < end && text.charAt(indent) == ' ') {
            indent++;
        }
        boolean blank = indent == end || text.charAt(indent) == '\n';
        if (blank) {
            comment = -1;
        } else if (indent - start > 2) {
            entryEnd = end;
            comment = -1;
        } else if (text.charAt(indent) == '#') {
            comment = comment < 0 ? start : comment;
        } else if (indent == start) {
            endEntry();
            section = get(key(start, end));
            comment = -1;
        } else {
            endEntry();
            id = key(indent, end);
            entryStart = comment < 0 ? start : comment;
            entryEnd = end;
            comment = -1;
        }
    }

    private String key(int start, int end) {
        int colon = text.indexOf(':', start);
        if (colon < 0 || colon >= end) {
            throw new IllegalStateException(file + " has a line without a key: "
                    + text.substring(start, end).strip());
        }
        return text.substring(start, colon);
    }

    private void endEntry() {
        if (id == null) {
            return;
        }
        if (section == null) {
            throw new IllegalStateException(file + " has " + id + " before any section");
        }
        LibraryIndex.Entry entry = new LibraryIndex.Entry(file, text.substring(entryStart, entryEnd));
        if (section.putIfAbsent(id, entry) != null) {
            throw new IllegalStateException(file + " has " + id + ", which is in the library already");
        }
        id = null;
    }
}
