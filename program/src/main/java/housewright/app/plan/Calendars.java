package housewright.app.plan;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.DaylightSavingsTime;
import biweekly.component.Observance;
import biweekly.component.StandardTime;
import biweekly.component.VEvent;
import biweekly.component.VTimezone;
import biweekly.io.TimezoneAssignment;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.util.DateTimeComponents;
import biweekly.util.UtcOffset;
import housewright.plan.Job;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Window;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.jspecify.annotations.Nullable;

/**
 * One person's part of a plan as an iCalendar file (RFC 5545): an event for each stretch of each task. The ids of the events
 * stay the same from plan to plan, so that a calendar that takes the file again moves what has moved.
 */
public final class Calendars {
    private static final int MOST_OCTETS = 75;
    private static final String PRODUCT = "-//Housewright//Plan//EN";

    private final String project;
    private final @Nullable ZoneId zone;
    private final Job job;
    private final Plan plan;
    private final LocalDateTime now;

    /**
     * @param project its name, part of the events' ids
     * @param zone of all times; null for times that are read where the calendar is
     * @param now when the file is made; the same plan and moment give the same bytes
     */
    public Calendars(String project, @Nullable ZoneId zone, Job job, Plan plan, LocalDateTime now) {
        this.project = project;
        this.zone = zone;
        this.job = job;
        this.plan = plan;
        this.now = now;
    }

    /** The person's calendar, its lines ended and folded as the standard has it. */
    public String of(String person) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId(PRODUCT);
        calendar.setMethod("PUBLISH");
        calendar.setName(project);
        for (Planned task : plan.tasks()) {
            if (task.slot().people().contains(person)) {
                int piece = 0;
                for (Window when : task.slot().pieces()) {
                    calendar.addEvent(event(calendar, task, when, ++piece, person));
                }
            }
        }
        if (zone != null && !calendar.getEvents().isEmpty()) {
            calendar.getTimezoneInfo()
                    .setDefaultTimezone(new TimezoneAssignment(TimeZone.getTimeZone(zone), rules(zone, person)));
        }
        String text = Biweekly.write(calendar).version(ICalVersion.V2_0).go();
        return folded(text.replace("\r\n ", "")); // the library counts characters, and the standard octets
    }

    /** Lines of at most 75 octets, as RFC 5545, 3.1, has it; no character is cut in two. */
    private static String folded(String text) {
        StringBuilder folded = new StringBuilder();
        for (String line : text.split("\r\n")) {
            int octets = 0;
            for (int i = 0; i < line.length(); i += Character.charCount(line.codePointAt(i))) {
                String character = Character.toString(line.codePointAt(i));
                int length = character.getBytes(StandardCharsets.UTF_8).length;
                if (octets + length > MOST_OCTETS) {
                    folded.append("\r\n ");
                    octets = 1;
                }
                folded.append(character);
                octets += length;
            }
            folded.append("\r\n");
        }
        return folded.toString();
    }

    private VEvent event(ICalendar calendar, Planned task, Window when, int piece, String person) {
        VEvent event = new VEvent();
        event.setUid(task.slot().task() + "-" + piece + "." + person + "@" + slug(project) + ".housewright");
        event.setDateTimeStamp(
                Date.from(now.atZone(zone == null ? ZoneOffset.UTC : zone).toInstant()));
        DateStart start = new DateStart(date(when.from()), true);
        DateEnd end = new DateEnd(date(when.to()), true);
        if (zone == null) {
            calendar.getTimezoneInfo().setFloating(start, true);
            calendar.getTimezoneInfo().setFloating(end, true);
        }
        event.setDateStart(start);
        event.setDateEnd(end);
        event.setSummary(task.title());
        if (task.place() != null) {
            event.setLocation(task.place());
        }
        event.addCategories(task.kind());
        event.setDescription(says(task, person));
        return event;
    }

    private String says(Planned task, String person) {
        List<String> says = new ArrayList<>();
        List<String> others = task.slot().people().stream()
                .filter(each -> !each.equals(person))
                .toList();
        if (!others.isEmpty()) {
            says.add("With " + String.join(", ", others) + ".");
        }
        if (task.hire() != null) {
            says.add("Uses " + task.hire() + ".");
        }
        if (!task.after().isEmpty()) {
            says.add("After " + String.join(", ", task.after()) + ".");
        }
        says.add(task.slackMinutes() == 0 ? "It cannot slip." : "It may slip by " + task.slackMinutes() + " min.");
        says.add("Task " + task.slot().task() + ".");
        return String.join("\n", says);
    }

    /** A date of the zone; a floating one is read back in the zone of this machine, which is the one it is written in. */
    private Date date(int minute) {
        return Date.from(job.at(minute)
                .atZone(zone == null ? ZoneId.systemDefault() : zone)
                .toInstant());
    }

    private static String slug(String name) {
        String words = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String trimmed = words.replaceAll("^-|-$", "");
        return trimmed.isEmpty() ? "project" : trimmed;
    }

    /** The zone's offsets from before the person's first task to after the last, so that no table of zones is needed to read it. */
    private VTimezone rules(ZoneId of, String person) {
        VTimezone rules = new VTimezone(of.getId());
        LocalDateTime first = null;
        LocalDateTime last = null;
        for (Planned task : plan.tasks()) {
            if (task.slot().people().contains(person)) {
                LocalDateTime from = job.at(task.slot().start());
                LocalDateTime to = job.at(task.slot().end());
                first = first == null || from.isBefore(first) ? from : first;
                last = last == null || to.isAfter(last) ? to : last;
            }
        }
        if (first == null || last == null) {
            return rules;
        }
        ZoneOffsetTransition at =
                of.getRules().previousTransition(first.atZone(of).toInstant());
        if (at == null) {
            ZoneOffset offset = of.getRules().getOffset(first);
            rules.addStandardTime(filled(new StandardTime(), LocalDateTime.of(1970, 1, 1, 0, 0), offset, offset));
            return rules;
        }
        while (at != null && at.getDateTimeBefore().isBefore(last.plusDays(1))) {
            boolean summer = of.getRules().isDaylightSavings(at.getInstant());
            if (summer) {
                rules.addDaylightSavingsTime(filled(
                        new DaylightSavingsTime(), at.getDateTimeBefore(), at.getOffsetBefore(), at.getOffsetAfter()));
            } else {
                rules.addStandardTime(
                        filled(new StandardTime(), at.getDateTimeBefore(), at.getOffsetBefore(), at.getOffsetAfter()));
            }
            at = of.getRules().nextTransition(at.getInstant());
        }
        return rules;
    }

    private static <T extends Observance> T filled(T observance, LocalDateTime at, ZoneOffset from, ZoneOffset to) {
        observance.setDateStart(new DateTimeComponents(
                at.getYear(),
                at.getMonthValue(),
                at.getDayOfMonth(),
                at.getHour(),
                at.getMinute(),
                at.getSecond(),
                false));
        observance.setTimezoneOffsetFrom(offset(from));
        observance.setTimezoneOffsetTo(offset(to));
        return observance;
    }

    private static UtcOffset offset(ZoneOffset offset) {
        return new UtcOffset(offset.getTotalSeconds() * 1000L);
    }
}
