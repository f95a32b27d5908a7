package housewright.plan.cpsat;

import housewright.plan.Goal;
import housewright.plan.Person;
import housewright.plan.Request;
import housewright.plan.Schedule;
import housewright.plan.Slot;
import housewright.plan.Task;
import housewright.plan.Window;
import housewright.plan.check.PlanChecker;
import housewright.plan.check.Verdict;
import java.util.ArrayList;
import java.util.List;

/** Tries every start and every crew of a few tasks, and lets the checker judge: slow and obviously right. */
final class BruteForce {
    private final Request request;
    private long missed = Long.MAX_VALUE;
    private long finish = Long.MAX_VALUE;

    private BruteForce(Request request) {
        this.request = request;
    }

    /** The least that is missed, and with that the earliest finish. */
    static long[] best(Request request) {
        BruteForce search = new BruteForce(request);
        search.place(0, new ArrayList<>());
        return new long[] {search.missed, search.finish};
    }

    private void place(int index, List<Slot> slots) {
        if (index == request.job().tasks().size()) {
            Verdict verdict = PlanChecker.check(request, new Schedule(slots));
            if (verdict.legal()) {
                long out = verdict.values().get(Goal.MISSED);
                long end = verdict.values().get(Goal.FINISH);
                if (out < missed || (out == missed && end < finish)) {
                    missed = out;
                    finish = end;
                }
            }
            return;
        }
        place(index + 1, slots);
        Task task = request.job().tasks().get(index);
        int length = task.length().planned(request.job().tick());
        for (int from = 0;
                from + length <= request.job().end();
                from += request.job().tick()) {
            for (List<String> crew : crews(task.crew().count())) {
                slots.add(new Slot(task.id(), List.of(new Window(from, from + length)), crew));
                // What is wrong with one task stays wrong whatever the others do, but for what must come first.
                boolean hopeless = PlanChecker.check(request, new Schedule(slots)).breaches().stream()
                        .anyMatch(breach -> !breach.rule().equals("after"));
                if (!hopeless) {
                    place(index + 1, slots);
                }
                slots.removeLast();
            }
        }
    }

    private List<List<String>> crews(int count) {
        List<String> all = request.job().people().stream().map(Person::id).toList();
        if (count == 1) {
            return all.stream().map(List::of).toList();
        }
        List<List<String>> pairs = new ArrayList<>();
        for (int one = 0; one < all.size(); one++) {
            for (int two = one + 1; two < all.size(); two++) {
                pairs.add(List.of(all.get(one), all.get(two)));
            }
        }
        return pairs;
    }
}
