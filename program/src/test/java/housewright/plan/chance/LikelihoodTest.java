package housewright.plan.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import housewright.plan.Delivery;
import housewright.plan.Effort;
import housewright.plan.Event;
import housewright.plan.Job;
import housewright.plan.Length;
import housewright.plan.Limits;
import housewright.plan.Log;
import housewright.plan.Person;
import housewright.plan.Place;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.list.ListScheduler;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LikelihoodTest {

    /** The formulas (a + 4m + b) / 6 and (b - a) / 6 of Malcolm and others (1959), worked by hand. */
    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource({"60, 90, 180, 100, 20", "10, 10, 10, 10, 0", "30, 60, 90, 60, 10", "2, 5, 14, 6, 2"})
    void meanAndDeviationOfThreePoints(int a, int m, int b, double mean, double deviation) {
        Length length = new Length(a, m, b, false);
        assertThat(length.mean()).isEqualTo(mean);
        assertThat(length.deviation()).isEqualTo(deviation);
    }

    /** The beta distribution of shape 4 over three points has that mean exactly; its own deviation is checked by its formula. */
    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource({"60, 90, 180", "30, 60, 90", "20, 25, 200"})
    void drawsHaveTheMean(int a, int m, int b) {
        Length length = new Length(a, m, b, false);
        Random random = new Random(7);
        int draws = 40_000;
        double sum = 0;
        double squares = 0;
        for (int draw = 0; draw < draws; draw++) {
            double drawn = Beta.draw(length, random);
            assertThat(drawn).isBetween((double) a, (double) b);
            sum += drawn;
            squares += drawn * drawn;
        }
        double mean = sum / draws;
        double alpha = 1 + 4.0 * (m - a) / (b - a);
        double beta = 6 - alpha;
        double deviation = (b - a) * Math.sqrt(alpha * beta / (36 * 7));
        assertThat(mean).isCloseTo(length.mean(), within(4 * deviation / Math.sqrt(draws)));
        assertThat(Math.sqrt(squares / draws - mean * mean)).isCloseTo(deviation, within(deviation * 0.03));
    }

    private static Job job(Task... tasks) {
        return new Job(
                LocalDate.of(2027, 3, 1),
                2,
                15,
                List.of(new Person(
                        "ann", "Ann", Set.of(), List.of(new Window(540, 1020)), List.of(), Limits.NONE, List.of())),
                List.of(),
                List.of(),
                List.of(Place.of("hall")),
                List.of(new Delivery("part", "Part", 600, 1000, 0.3)),
                List.of(new Event("last", "Last", new Window(1020, 1080), null, true)),
                List.of(tasks),
                List.of());
    }

    private static Chance chance(Job job) {
        Schedule schedule = ListScheduler.schedule(Request.of(job, Effort.repeatable(1, 1)));
        return Likelihood.of(job, Log.NOTHING, schedule, 5, 4000).getFirst();
    }

    @Test
    void withoutDoubtItIsSure() {
        Chance chance =
                chance(job(Task.draft("a", 120).done(), Task.draft("b", 120).done()));
        assertThat(chance.likely()).isEqualTo(Likely.ALMOST_SURE);
        assertThat(chance.kept()).isEqualTo(4000);
        assertThat(chance.hangsOn()).isEmpty();
    }

    @Test
    void lateDeliveryIsAllThatItHangsOn() {
        // From 10:00 six hours and a half fit; the part is late by more than half an hour in 0.3 * (1 - 30/400) of all
        // draws.
        Chance chance = chance(job(Task.draft("a", 390).waitsFor("part").done()));
        assertThat(chance.kept() / 4000.0).isCloseTo(1 - 0.3 * (1 - 30 / 400.0), within(0.03));
        assertThat(chance.likely()).isEqualTo(Likely.MORE_LIKELY_THAN_NOT);
        assertThat(chance.hangsOn()).first().extracting(Chance.Cause::id).isEqualTo("part");
    }

    @Test
    void symmetricLengthThatJustFitsIsEven() {
        Task even =
                Task.draft("a", 480).length(new Length(420, 480, 540, false)).done();
        Task sure = Task.draft("x", 10).optional().done();
        Chance chance = chance(job(even, sure));
        assertThat(chance.kept() / 4000.0).isCloseTo(0.5, within(0.03));
        assertThat(chance.hangsOn()).first().extracting(Chance.Cause::id).isEqualTo("a");
    }

    @Test
    void eventThatIsOverIsNotAskedAbout() {
        Job job = job(Task.draft("a", 60).done());
        Log log = new Log(Job.DAY, List.of(), List.of(), java.util.Map.of(), java.util.Map.of());
        Schedule schedule = ListScheduler.schedule(new Request(job, log, null, Effort.repeatable(1, 1)));
        assertThat(Likelihood.of(job, log, schedule, 5, 10)).isEmpty();
    }

    @Test
    void sameSeedSameChance() {
        Job job = job(Task.draft("a", 390)
                .length(new Length(300, 400, 500, false))
                .waitsFor("part")
                .done());
        assertThat(chance(job)).isEqualTo(chance(job));
    }

    @ParameterizedTest
    @CsvSource({
        "0.96, ALMOST_SURE",
        "0.95, LIKELY",
        "0.81, LIKELY",
        "0.51, MORE_LIKELY_THAN_NOT",
        "0.5, DOUBTFUL",
        "0.2, UNLIKELY"
    })
    void rangesAreCoarse(double share, Likely likely) {
        assertThat(Likely.of(share)).isEqualTo(likely);
    }
}
