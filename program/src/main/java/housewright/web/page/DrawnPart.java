package housewright.web.page;

import housewright.drawing.Sheet;
import housewright.finding.Subject;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A drawing in a page.
 *
 * @param key the same as long as it is the same drawing, whatever is edited
 * @param name as it is read out
 * @param svg the drawing itself; its writer has escaped whatever comes from a project
 * @param download where it is had as a file
 * @param page which page it stands in, as the part beside it is told
 * @param chosen the thing shown beside it, as drawings name it; empty where none is
 * @param listed everything on it, by kind
 */
public record DrawnPart(
        String key, String name, String svg, String download, String page, String chosen, List<Group> listed) {
    public DrawnPart {
        listed = List.copyOf(listed);
    }

    /** Things of one kind. */
    public record Group(String title, List<Entry> entries) {
        public Group {
            entries = List.copyOf(entries);
        }
    }

    /** @param href the page with this thing chosen */
    public record Entry(String subject, String id, String href, boolean chosen) {}

    static DrawnPart of(Sheet sheet, Query here, String page, @Nullable String chosen) {
        List<Group> groups = new ArrayList<>();
        String kind = "";
        List<Entry> entries = new ArrayList<>();
        for (Subject subject : sheet.subjects()) {
            if (!subject.kind().equals(kind)) {
                add(groups, kind, entries);
                kind = subject.kind();
                entries = new ArrayList<>();
            }
            String key = key(subject);
            entries.add(new Entry(key, subject.id(), here.with("thing", key).href(), key.equals(chosen)));
        }
        add(groups, kind, entries);
        String name = sheet.title() + (sheet.of() > 1 ? ", sheet " + sheet.number() + " of " + sheet.of() : "");
        return new DrawnPart(
                sheet.id(),
                name,
                sheet.svg(),
                here.at(here.path() + "/sheet.svg").with("thing", null).href(),
                page,
                chosen == null ? "" : chosen,
                groups);
    }

    private static void add(List<Group> groups, String kind, List<Entry> entries) {
        if (!entries.isEmpty()) {
            groups.add(new Group(title(kind), entries));
        }
    }

    private static String title(String kind) {
        return switch (kind) {
            case "equipment" -> "Equipment";
            case "network-send" -> "Network sends";
            case "radio" -> "Radio links";
            default -> kind.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + kind.substring(1) + "s";
        };
    }

    /** As drawings name a thing. */
    public static String key(Subject subject) {
        return subject.kind() + ":" + subject.id();
    }
}
