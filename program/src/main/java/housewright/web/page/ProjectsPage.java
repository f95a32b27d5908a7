package housewright.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The projects kept here, or how to begin where there is none.
 *
 * @param rows the one changed last in front
 * @param keptIn where they are kept, in words
 * @param errors what is wrong with a file that was sent; empty where none was
 * @param backups null for whoever may not make them, and where nothing is kept
 */
public record ProjectsPage(
        List<Row> rows,
        String keptIn,
        String fileName,
        List<String> errors,
        @Nullable Backups backups) {
    public ProjectsPage {
        rows = List.copyOf(rows);
        errors = List.copyOf(errors);
    }

    /**
     * The copies of everything kept, newest first.
     *
     * @param folder where they lie; empty where there is none yet
     * @param store the name of the file that they are copies of
     * @param remarks why the last one failed, and the like
     * @param mayMake false where the store can only be looked at
     */
    public record Backups(List<BackupRow> rows, String folder, String store, List<String> remarks, boolean mayMake) {
        public Backups {
            rows = List.copyOf(rows);
            remarks = List.copyOf(remarks);
        }
    }

    public record BackupRow(String made, String size, String file) {}

    /** @param origin the file that it was begun from; empty where it was begun here */
    public record Row(String href, String name, String changed, long revisions, String origin) {}
}
