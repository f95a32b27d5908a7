package housewright.web.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Days and times as people say them; the same in every locale. */
public final class Dates {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("EEE d MMM uuuu, HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private Dates() {}

    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    public static String moment(LocalDateTime moment) {
        return MOMENT.format(moment);
    }

    /** As it is long ago: minutes, then today's time, then the day. */
    public static String ago(Instant then, Instant now, ZoneId zone) {
        long minutes = Duration.between(then, now).toMinutes();
        if (minutes < 1) {
            return "just now";
        }
        if (minutes < 60) {
            return minutes + (minutes == 1 ? " minute ago" : " minutes ago");
        }
        LocalDateTime at = LocalDateTime.ofInstant(then, zone);
        return at.toLocalDate().equals(LocalDate.ofInstant(now, zone)) ? "today at " + TIME.format(at) : moment(at);
    }

    /** "in 12 days", "tomorrow", "3 days ago". */
    public static String away(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, day);
        if (days == 0) {
            return "today";
        }
        if (days == 1) {
            return "tomorrow";
        }
        if (days == -1) {
            return "yesterday";
        }
        return days > 0 ? "in " + days + " days" : -days + " days ago";
    }
}
