package housewright.plan.axis;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.Effort;
import housewright.plan.Goal;
import housewright.plan.Hire;
import housewright.plan.Job;
import housewright.plan.Limits;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Place;
import housewright.plan.RandomJobs;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.list.ListScheduler;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LeastTest {
    private static Job job(List<Task> tasks) {
        List<Window> days = IntStream.range(0, 4)
                .mapToObj(day -> new Window(day * Job.DAY + 8 * 60, day * Job.DAY + 16 * 60))
                .toList();
        return new Job(
                LocalDate.of(2027, 3, 1),
                4,
                5,
                List.of(
                        new Person("one", "One", Set.of("height"), days, List.of(), Limits.USUAL, List.of()),
                        new Person("two", "Two", Set.of(), days, List.of(), Limits.USUAL, List.of())),
                List.of(new Hire("lift", "Lift", Set.of(0, 1, 2, 3), "height")),
                List.of(),
                List.of(Place.of("hall")),
                List.of(),
                List.of(),
                tasks,
                List.of());
    }

    @Test
    void whatIsHeldAtATimeOfItsOwnEndsNoEarlier() {
        int rehearsal = 2 * Job.DAY + 10 * 60;
        Job job = job(List.of(
                Task.draft("work", 30).done(),
                Task.draft("rehearse", 120).startsAt(rehearsal).done()));
        assertThat(Least.of(job, Log.NOTHING))
                .containsEntry(Goal.FINISH, rehearsal + 120L)
                .containsEntry(Goal.HIRE_DAYS, 0L);
    }

    @Test
    void aLiftDoesOneThingAfterAnotherWhileItsOperatorIsThere() {
        Job job = job(IntStream.range(0, 5)
                .mapToObj(each ->
                        Task.draft("hang-" + each, 200).at("hall").hire("lift").done())
                .toList());
        // 1000 minutes, and whoever may operate it is there 480 a day
        assertThat(Least.of(job, Log.NOTHING)).containsEntry(Goal.HIRE_DAYS, 3L);
    }

    @Test
    void noPlanThatMissesNothingIsBetter() {
        int whole = 0;
        for (long seed = 1; seed <= 60; seed++) {
            Request request = Request.of(RandomJobs.of(8, seed), Effort.repeatable(seed, 1));
            Schedule schedule = ListScheduler.schedule(request);
            Map<Goal, Long> is = Measures.of(request.job(), request.log(), null, schedule);
            if (is.get(Goal.MISSED) == 0) {
                whole++;
                Map<Goal, Long> least = Least.of(request.job(), request.log());
                least.forEach((goal, bound) ->
                        assertThat(is.get(goal)).as(goal.name()).isGreaterThanOrEqualTo(bound));
            }
        }
        assertThat(whole).isPositive();
    }
}
