package housewright.web.page;

import java.util.List;

/**
 * The projects kept here, or how to begin where there is none.
 *
 * @param rows the one changed last in front
 * @param keptIn where they are kept, in words
 * @param errors what is wrong with a file that was sent; empty where none was
 */
public record ProjectsPage(List<Row> rows, String keptIn, String fileName, List<String> errors) {
    public ProjectsPage {
        rows = List.copyOf(rows);
        errors = List.copyOf(errors);
    }

    /** @param origin the file that it was begun from; empty where it was begun here */
    public record Row(String href, String name, String changed, long revisions, String origin) {}
}
