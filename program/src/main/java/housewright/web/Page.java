package housewright.web;

import housewright.web.page.Frame;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The pages of a project, in the order of the job; the rail shows those that are there. */
enum Page {
    OVERVIEW("Overview", "", 0),
    VENUE("Venue", "/venue", 1),
    EQUIPMENT("Equipment", "/equipment", 1),
    CABLES("Cables", "/cables", 1),
    PATCH("Patch", "/patch", 1),
    FEEDS("Feeds", "/feeds", 1),
    SIGNAL("Signal", "/signal", 2),
    RACKS("Power and racks", "/racks", 2),
    FINDINGS("Findings", "/findings", 2),
    QUESTIONS("Questions", "/questions", 2),
    ORDERS("Orders", "/orders", 3),
    WORK("Work", "/work", 3),
    PLAN("Plan", "/plan", 3),
    PEOPLE("People and dates", "/people", 3),
    CALL("Daily call", "/call", 4),
    READY("What now", "/now", 4),
    PAPERS("Papers", "/papers", 6),
    HISTORY("History", "/history", 6);

    private final String label;
    private final String path;
    private final int group;

    Page(String label, String path, int group) {
        this.label = label;
        this.path = path;
        this.group = group;
    }

    String label() {
        return label;
    }

    /** After the address of the project. */
    String path() {
        return path;
    }

    static List<Frame.Group> rail(String job, @Nullable Page here, Counts counts) {
        return Arrays.stream(values())
                .collect(Collectors.groupingBy(page -> page.group, TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(pages -> new Frame.Group(pages.stream()
                        .map(page -> new Frame.Entry(page.label, job + page.path, page == here, counts.of(page)))
                        .toList()))
                .toList();
    }

    /** What waits on each page, in figures. */
    interface Counts {
        String of(Page page);
    }
}
