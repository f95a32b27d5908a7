package housewright.app.paper;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a binder's folder holds, as it was last issued.
 *
 * @param version of this format
 * @param revision of the project
 * @param date of that revision
 * @param before the revision that this one takes the place of; null for the first
 * @param sheets in the order of the binder
 * @param withdrawn those of the revision before that are no more
 */
record Manifest(
        int version, String revision, String date, @Nullable String before, List<Entry> sheets, List<Entry> withdrawn) {
    static final int VERSION = 1;
    static final String FILE = "manifest.json";

    Manifest {
        sheets = List.copyOf(sheets);
        withdrawn = List.copyOf(withdrawn);
    }

    /**
     * One sheet.
     *
     * @param id of the sheet
     * @param paper it belongs to
     * @param content a hash of what it says
     * @param revision in which it last changed
     * @param date of that revision
     * @param rows a hash of each row of its tables, by table and row
     * @param before the issue that this one takes the place of; null for the first
     */
    record Entry(
            String id,
            String paper,
            String title,
            String content,
            String revision,
            String date,
            Map<String, String> rows,
            @Nullable Before before) {
        Entry {
            rows = new LinkedHashMap<>(rows);
        }
    }

    /** The issue before, against which changes are marked. */
    record Before(String revision, String date, Map<String, String> rows) {
        Before {
            rows = new LinkedHashMap<>(rows);
        }
    }

    @Nullable
    Entry find(String sheet) {
        return sheets.stream()
                .filter(each -> each.id().equals(sheet))
                .findFirst()
                .orElse(null);
    }

    String json() {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(lines);
        printer.indentObjectsWith(lines);
        try {
            return new ObjectMapper().writer(printer).writeValueAsString(this) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** @throws IllegalArgumentException where the text is no manifest that this version can read */
    static Manifest read(String text) {
        try {
            Manifest read = new ObjectMapper().readValue(text, Manifest.class);
            if (read == null || read.version() != VERSION) {
                throw new IllegalArgumentException("it is of another version");
            }
            return read;
        } catch (JsonProcessingException | NullPointerException e) {
            throw new IllegalArgumentException("it is not as it was written", e);
        }
    }
}
