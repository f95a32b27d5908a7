package housewright.web.page;

import housewright.app.Now;
import housewright.model.LogEntry;
import housewright.model.SiteState;
import housewright.plan.Event;
import housewright.plan.Job;
import housewright.plan.Move;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Slot;
import housewright.plan.Window;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A plan drawn: people down the side, hours along the top. Only days on which something is done or held are drawn, and of
 * those only the hours from the first to the last; all lengths in px.
 *
 * @param now where this moment is; null where it is on none of the days
 */
public record PlanChart(
        int width,
        int height,
        List<String> people,
        List<DayColumn> days,
        List<Label> labels,
        List<Hour> hours,
        List<Band> bands,
        List<Bar> bars,
        List<Ghost> ghosts,
        @Nullable Integer now) {
    static final int HEAD = 44;
    static final int ROW = 56;
    private static final int PX_PER_HOUR = 132;
    private static final int GAP = 12;
    private static final int LINK_PX = 26; // narrower ones are no target for a hand
    private static final int WORDS_PX = 22;
    private static final int LABEL_PX = 4 * PX_PER_HOUR;
    private static final int LEAST_HOURS = 3;

    public PlanChart {
        people = List.copyOf(people);
        days = List.copyOf(days);
        labels = List.copyOf(labels);
        hours = List.copyOf(hours);
        bands = List.copyOf(bands);
        bars = List.copyOf(bars);
        ghosts = List.copyOf(ghosts);
    }

    /** A day's column. */
    public record DayColumn(int x, int width) {}

    /** A day's name, which stands again and again over a long day. */
    public record Label(int x, String label, String href) {}

    /** An hour's line. */
    public record Hour(int x, String label) {}

    /** A service or the like, over the full height. */
    public record Band(int x, int width, String name) {}

    /**
     * A stretch of a task in one person's row.
     *
     * @param slack length of its tail; 0 for none
     * @param kind {@code done}, {@code begun}, {@code blocked} or {@code planned}
     * @param href null where it is too narrow to be pressed; the list below has it, too
     */
    public record Bar(
            int x,
            int y,
            int width,
            int slack,
            String kind,
            boolean words,
            String title,
            String says,
            @Nullable String href) {}

    /** Where a task was before. */
    public record Ghost(int x, int y, int width, String says) {}

    /** One day on the axis. */
    private record Span(int day, int from, int to, int x) {
        int at(int minute) {
            int within = Math.clamp(minute - day * Job.DAY, from, to);
            return x + (within - from) * PX_PER_HOUR / 60;
        }

        int end() {
            return x + (to - from) * PX_PER_HOUR / 60;
        }
    }

    static @Nullable PlanChart of(Now now, Job job, Plan plan, String home, LocalDateTime at) {
        Map<Integer, int[]> hours = new TreeMap<>();
        plan.tasks().forEach(task -> task.slot().pieces().forEach(piece -> widen(hours, piece)));
        plan.moves().forEach(move -> move.from().pieces().forEach(piece -> widen(hours, piece)));
        if (hours.isEmpty()) {
            return null;
        }
        List<Event> held = job.events();
        held.forEach(event -> widen(hours, event.when()));
        Map<Integer, Span> spans = new LinkedHashMap<>();
        int x = 0;
        for (Map.Entry<Integer, int[]> each : hours.entrySet()) {
            int from = each.getValue()[0] / 60 * 60;
            int to = Math.min(Job.DAY, Math.max(Math.ceilDiv(each.getValue()[1], 60) * 60, from + LEAST_HOURS * 60));
            Span span = new Span(each.getKey(), Math.min(from, to - LEAST_HOURS * 60), to, x);
            spans.put(each.getKey(), span);
            x = span.end() + GAP;
        }
        Map<String, Integer> rows = new LinkedHashMap<>();
        plan.tasks().forEach(task -> task.slot().people().forEach(each -> rows.putIfAbsent(each, 0)));
        plan.moves().forEach(move -> move.from().people().forEach(each -> rows.putIfAbsent(each, 0)));
        List<String> people = job.people().stream()
                .map(each -> each.id())
                .filter(rows::containsKey)
                .toList();
        for (int i = 0; i < people.size(); i++) {
            rows.put(people.get(i), HEAD + i * ROW);
        }
        List<Bar> bars = new ArrayList<>();
        for (Planned task : plan.tasks()) {
            bars(now, job, task, home, spans, rows, bars);
        }
        List<Ghost> ghosts = new ArrayList<>();
        plan.moves().forEach(move -> ghosts(job, move, spans, rows, ghosts));
        List<Band> bands = new ArrayList<>();
        for (Event event : held) {
            for (Window piece : byDay(event.when())) {
                Span span = spans.get(piece.from() / Job.DAY);
                if (span != null) {
                    int left = span.at(piece.from());
                    bands.add(new Band(left, Math.max(4, endOf(span, piece) - left), event.name()));
                }
            }
        }
        return new PlanChart(
                x - GAP + 1,
                HEAD + people.size() * ROW + 1,
                people,
                spans.values().stream()
                        .map(span -> new DayColumn(span.x(), span.end() - span.x()))
                        .toList(),
                spans.values().stream()
                        .flatMap(span -> labels(job, span).stream())
                        .toList(),
                spans.values().stream().flatMap(span -> hours(span).stream()).toList(),
                bands,
                bars,
                ghosts,
                at(job, spans, at));
    }

    private static void widen(Map<Integer, int[]> hours, Window when) {
        for (Window piece : byDay(when)) {
            int day = piece.from() / Job.DAY;
            int from = piece.from() - day * Job.DAY;
            int to = piece.to() - day * Job.DAY;
            int[] known = hours.computeIfAbsent(day, key -> new int[] {from, to});
            known[0] = Math.min(known[0], from);
            known[1] = Math.max(known[1], to);
        }
    }

    private static List<Window> byDay(Window when) {
        List<Window> days = new ArrayList<>();
        for (int from = when.from(); from < when.to(); ) {
            int to = Math.min(when.to(), (from / Job.DAY + 1) * Job.DAY);
            days.add(new Window(from, to));
            from = to;
        }
        return days;
    }

    private static int endOf(Span span, Window piece) {
        return piece.to() % Job.DAY == 0 && piece.to() / Job.DAY > span.day() ? span.end() : span.at(piece.to());
    }

    private static List<Label> labels(Job job, Span span) {
        List<Label> labels = new ArrayList<>();
        for (int x = span.x(); x == span.x() || x + LABEL_PX < span.end(); x += LABEL_PX) {
            labels.add(new Label(
                    x, job.spokenDay(span.day()), "#day-" + job.firstDay().plusDays(span.day())));
        }
        return labels;
    }

    private static List<Hour> hours(Span span) {
        List<Hour> hours = new ArrayList<>();
        for (int minute = span.from(); minute < span.to(); minute += 60) {
            hours.add(new Hour(span.at(span.day() * Job.DAY + minute), Integer.toString(minute / 60)));
        }
        return hours;
    }

    private static @Nullable Integer at(Job job, Map<Integer, Span> spans, LocalDateTime at) {
        int minute = job.minute(at);
        Span span = spans.get(Math.floorDiv(minute, Job.DAY));
        return span == null ? null : span.at(minute);
    }

    private static void bars(
            Now now,
            Job job,
            Planned task,
            String home,
            Map<Integer, Span> spans,
            Map<String, Integer> rows,
            List<Bar> bars) {
        Slot slot = task.slot();
        LogEntry entry = TaskWords.entry(now.project(), slot.task());
        String kind = entry == null
                ? "planned"
                : entry.state() == SiteState.LATE ? "blocked" : entry.state().word();
        for (Window whole : slot.pieces()) {
            for (Window piece : byDay(whole)) {
                Span span = spans.get(piece.from() / Job.DAY);
                if (span == null) {
                    continue;
                }
                int left = span.at(piece.from());
                int right = endOf(span, piece);
                int tail = slot.end() == piece.to() && task.slackMinutes() > 0
                        ? span.at(Math.min(piece.to() + task.slackMinutes(), span.day() * Job.DAY + span.to())) - right
                        : 0;
                int width = Math.max(3, right - left - 1);
                String says = task.title() + ", " + TaskWords.time(job, piece.from()) + " to "
                        + TaskWords.time(job, piece.to()) + ", " + TaskWords.people(slot.people())
                        + (entry == null ? "" : ", " + TaskWords.said(entry));
                for (String person : slot.people()) {
                    Integer y = rows.get(person);
                    if (y != null) {
                        bars.add(new Bar(
                                left,
                                y + 6,
                                width,
                                entry == null ? Math.max(0, tail) : 0,
                                kind,
                                width >= WORDS_PX,
                                task.title(),
                                says,
                                width >= LINK_PX ? TaskPage.href(home, slot.task()) : null));
                    }
                }
            }
        }
    }

    private static void ghosts(
            Job job, Move move, Map<Integer, Span> spans, Map<String, Integer> rows, List<Ghost> ghosts) {
        for (Window whole : move.from().pieces()) {
            for (Window piece : byDay(whole)) {
                Span span = spans.get(piece.from() / Job.DAY);
                for (String person : move.from().people()) {
                    Integer y = rows.get(person);
                    if (span != null && y != null) {
                        int left = span.at(piece.from());
                        ghosts.add(new Ghost(
                                left,
                                y + 2,
                                Math.max(3, endOf(span, piece) - left - 1),
                                job.task(move.from().task()).title() + " was here, "
                                        + TaskWords.time(job, piece.from())));
                    }
                }
            }
        }
    }
}
