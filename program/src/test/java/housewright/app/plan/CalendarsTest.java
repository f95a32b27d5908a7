package housewright.app.plan;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import housewright.plan.Effort;
import housewright.plan.Job;
import housewright.plan.Limits;
import housewright.plan.Person;
import housewright.plan.Plan;
import housewright.plan.Request;
import housewright.plan.Task;
import housewright.plan.Window;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Read back with the library, and the lines held against RFC 5545, section 3.1 (folding) and 3.6 (what an event needs). */
class CalendarsTest {
    private static final LocalDateTime NOW = LocalDateTime.parse("2027-03-20T07:30");
    private static final LocalDate SATURDAY = LocalDate.parse("2027-03-27"); // the clocks change in the night after it

    private static Job job() {
        List<Window> free = Stream.of(0, 1)
                .map(day -> new Window(day * Job.DAY + 540, day * Job.DAY + 1020))
                .toList();
        Person ada = new Person("ada", "Ada", Set.of(), free, List.of(), Limits.NONE, List.of());
        return new Job(
                SATURDAY,
                3,
                5,
                List.of(ada),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(
                        Task.draft("hang", 60)
                                .title("Häng die Lautsprecher über der Bühne auf; größte Vorsicht, "
                                        + "die Stütze trägt höchstens 40 kg – 📐 zweimal messen")
                                .by("ada")
                                .done(),
                        Task.draft("tune", 45)
                                .startsAt(Job.DAY + 600)
                                .after("hang")
                                .by("ada")
                                .done()),
                List.of());
    }

    private static String calendar(@Nullable ZoneId zone) {
        Job job = job();
        Plan plan = Planning.quick(Request.of(job, Effort.quick(1, 1)));
        return new Calendars("Mill Lane – Kapelle", zone, job, plan, NOW).of("ada");
    }

    @Test
    void everyLineEndsAsTheStandardHasItAndIsAtMost75Octets() {
        String text = calendar(ZoneId.of("Europe/Berlin"));

        assertThat(text).endsWith("END:VCALENDAR\r\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
        for (String line : text.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).as(line).isLessThanOrEqualTo(75);
            assertThat(StandardCharsets.UTF_8.newEncoder().canEncode(line))
                    .as(line)
                    .isTrue();
        }
    }

    @Test
    void itIsReadBackAsItWasMeant() {
        ICalendar calendar =
                Biweekly.parse(calendar(ZoneId.of("Europe/Berlin"))).first();

        VEvent hang = calendar.getEvents().getFirst();
        VEvent tune = calendar.getEvents().get(1);
        assertThat(hang.getSummary().getValue()).contains("Bühne auf; größte").contains("40 kg – 📐");
        assertThat(hang.getUid().getValue()).isEqualTo("hang-1.ada@mill-lane-kapelle.housewright");
        // Berlin is an hour ahead of UTC on Saturday, and two on Sunday, 28 March 2027
        assertThat(hang.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2027-03-27T08:00:00Z"));
        assertThat(tune.getDateStart().getValue().toInstant()).isEqualTo(Instant.parse("2027-03-28T08:00:00Z"));
        assertThat(tune.getDateEnd().getValue().toInstant()).isEqualTo(Instant.parse("2027-03-28T08:45:00Z"));
        assertThat(tune.getDateTimeStamp().getValue().toInstant()).isEqualTo(Instant.parse("2027-03-20T06:30:00Z"));
        assertThat(calendar.validate(biweekly.ICalVersion.V2_0).isEmpty()).isTrue();
    }

    @Test
    void withoutAZoneTimesAreThoseOfWhereverItIsRead() {
        String text = calendar(null);

        assertThat(text).contains("DTSTART:20270327T090000\r\n").doesNotContain("TZID");
        assertThat(text).contains("DTSTAMP:20270320T073000Z\r\n");
    }

    @Test
    void theSamePlanAtTheSameMomentIsTheSameBytes() {
        UnaryOperator<String> zone = id -> calendar(ZoneId.of(id));
        assertThat(zone.apply("America/Chicago")).isEqualTo(zone.apply("America/Chicago"));
        assertThat(calendar(ZoneId.of("Asia/Kolkata"))).contains("TZID=Asia/Kolkata:20270327T090000");
    }
}
