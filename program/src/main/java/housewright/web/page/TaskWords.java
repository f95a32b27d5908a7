package housewright.web.page;

import housewright.model.LogEntry;
import housewright.model.Project;
import housewright.model.SiteState;
import housewright.plan.Job;
import housewright.plan.Slot;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How tasks and times are said on the pages of the plan. */
final class TaskWords {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.ENGLISH);

    private TaskWords() {}

    /** Such as {@code 09:30}. */
    static String time(Job job, int minute) {
        return job.at(minute).format(TIME);
    }

    /** Such as {@code Sat 8 May, 09:30}. */
    static String moment(LocalDateTime at) {
        return at.format(SHORT);
    }

    static String when(Job job, Slot slot) {
        return moment(job.at(slot.start()));
    }

    /** Such as {@code 2 h 15 min}. */
    static String minutes(int minutes) {
        if (minutes < 60) {
            return minutes + " min";
        }
        int days = minutes / (24 * 60);
        int hours = minutes / 60 % 24;
        int rest = minutes % 60;
        if (days > 0) {
            return days + " d" + (hours == 0 ? "" : " " + hours + " h");
        }
        return hours + " h" + (rest == 0 ? "" : " " + rest + " min");
    }

    static String people(List<String> people) {
        return people.isEmpty() ? "nobody" : String.join(", ", people);
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    static @Nullable LogEntry entry(Project project, String task) {
        return project.orders().containsKey(task) ? null : project.log().get(task);
    }

    /** The word of {@code mark.jte} for how far a task is; empty where nothing is known. */
    static String mark(@Nullable LogEntry entry) {
        return entry == null
                ? ""
                : switch (entry.state()) {
                    case DONE -> "proven";
                    case BEGUN -> "note";
                    case LATE -> "late";
                    case BLOCKED -> "stop";
                };
    }

    /** How far it is, in words; empty where nothing is known. */
    static String said(@Nullable LogEntry entry) {
        if (entry == null) {
            return "";
        }
        String why = entry.why() == null ? "" : ": " + entry.why();
        return switch (entry.state()) {
            case DONE -> "done" + (entry.to() == null ? "" : " " + entry.to().format(TIME));
            case BEGUN ->
                "begun" + (entry.from() == null ? "" : " " + entry.from().format(TIME));
            case LATE, BLOCKED ->
                (entry.state() == SiteState.LATE ? "late" : "blocked")
                        + (entry.until() == null ? "" : " until " + moment(entry.until()))
                        + why;
        };
    }
}
