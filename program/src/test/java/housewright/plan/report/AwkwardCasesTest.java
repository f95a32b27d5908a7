package housewright.plan.report;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.plan.AwkwardCase;
import housewright.plan.Clash;
import housewright.plan.Goal;
import housewright.plan.Move;
import housewright.plan.Plan;
import housewright.plan.Planned;
import housewright.plan.Progress;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Solved;
import housewright.plan.axis.Grid;
import housewright.plan.check.PlanChecker;
import housewright.plan.check.Verdict;
import housewright.plan.cpsat.CpSatSolver;
import housewright.plan.list.ListScheduler;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cases of {@code awkward.yaml}: by the list scheduler alone, and, slower, by the exact solver. */
class AwkwardCasesTest {

    static List<AwkwardCase> cases() {
        return AwkwardCase.all();
    }

    private static Schedule listed(Request request) {
        return ListScheduler.schedule(request, Grid.of(request.job(), request.log()), 30);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void listSchedulerGivesWhatIsExpected(AwkwardCase given) {
        asExpected(given, new Solved(listed(given.request()), List.of(), Solved.Ended.LIMIT, ""));
    }

    @Tag("slow")
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void exactSolverGivesWhatIsExpectedAndProvesIt(AwkwardCase given) {
        Request request = given.request();
        Solved solved = new CpSatSolver().solve(request, listed(request), Progress.NONE);
        asExpected(given, solved);
        assertThat(solved.levels().getFirst().goal()).isEqualTo(Goal.MISSED);
        assertThat(solved.levels().getFirst().proved())
                .as("what is missed is proved least")
                .isTrue();
    }

    private static void asExpected(AwkwardCase given, Solved solved) {
        Request request = given.request();
        Verdict verdict = PlanChecker.check(request, solved.schedule());
        assertThat(verdict.breaches()).isEmpty();
        Plan plan = Reports.plan(request, solved);
        List<String> missed = new ArrayList<>(verdict.out());
        missed.addAll(verdict.late());
        if (given.expect().containsKey("count")) {
            assertThat(missed).hasSize((Integer) given.expect().get("count"));
        } else if (!given.expect().containsKey("clashes")) {
            assertThat(missed).containsExactlyInAnyOrderElementsOf(given.words("missed"));
        }
        if (given.expect().containsKey("broken")) {
            assertThat(verdict.broken().stream().map(each -> each.event() + "/" + each.capability()))
                    .containsExactlyInAnyOrderElementsOf(given.words("broken"));
        }
        Map<String, Slot> slots = solved.schedule().byTask();
        given.table("starts")
                .forEach((task, at) -> assertThat(slots.get(task).start())
                        .as("%s starts", task)
                        .isEqualTo(AwkwardCase.minute(at)));
        given.table("ends")
                .forEach((task, at) ->
                        assertThat(slots.get(task).end()).as("%s ends", task).isEqualTo(AwkwardCase.minute(at)));
        given.table("who")
                .forEach((task, who) -> assertThat(slots.get(task).people().toString())
                        .as("who does %s", task)
                        .isEqualTo(who.toString()));
        if (given.expect().containsKey("finish")) {
            assertThat(verdict.values().get(Goal.FINISH))
                    .isEqualTo((long) AwkwardCase.minute(given.expect().get("finish")));
        }
        if (given.expect().containsKey("moved")) {
            assertThat(plan.moves().stream().map(Move::from).map(Slot::task))
                    .containsExactlyInAnyOrderElementsOf(given.words("moved"));
        }
        Map<String, String> why = plan.tasks().stream()
                .collect(Collectors.toMap(planned -> planned.slot().task(), Planned::why));
        given.table("why")
                .forEach((task, words) -> assertThat(why.get(task))
                        .as("why %s is not earlier", task)
                        .contains(words.toString()));
        explained(given, plan, verdict);
    }

    private static void explained(AwkwardCase given, Plan plan, Verdict verdict) {
        boolean all = verdict.out().isEmpty()
                && verdict.late().isEmpty()
                && verdict.broken().isEmpty();
        assertThat(plan.clashes().isEmpty()).as("clashes %s", plan.clashes()).isEqualTo(all);
        assertThat(plan.missed().isEmpty()).isEqualTo(all);
        List<String> wishes = plan.clashes().stream()
                .flatMap(clash -> clash.wishes().stream())
                .toList();
        List<String> ways =
                plan.clashes().stream().map(Clash::ways).flatMap(List::stream).toList();
        for (String words : given.words("wishes")) {
            assertThat(wishes).anySatisfy(wish -> assertThat(wish).contains(words));
        }
        for (String words : given.words("ways")) {
            assertThat(ways).anySatisfy(way -> assertThat(way).contains(words));
        }
    }
}
