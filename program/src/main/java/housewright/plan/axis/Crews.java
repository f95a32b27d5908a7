package housewright.plan.axis;

import housewright.plan.Job;
import housewright.plan.Task;
import java.util.ArrayList;
import java.util.List;

/** Crews as bits, one for each person in the order of the job. */
final class Crews {
    private Crews() {}

    /** Every set of people of the right number with all the skills; sorted by bits. */
    static long[] of(Job job, Task task) {
        int count = task.crew().count();
        if (count == 0) {
            return new long[] {0};
        }
        List<Long> holders = new ArrayList<>();
        List<String> wanted = new ArrayList<>(task.crew().skills());
        if (task.means().hire() != null) {
            String operator = job.hire(task.means().hire()).skill();
            if (operator != null) {
                wanted.add(operator);
            }
        }
        for (String skill : wanted) {
            long who = 0;
            for (int person = 0; person < job.people().size(); person++) {
                if (job.people().get(person).skills().contains(skill)) {
                    who |= 1L << person;
                }
            }
            holders.add(who);
        }
        long pinned = bits(job, task.crew().pinned());
        List<Long> found = new ArrayList<>();
        combine(job.people().size(), 0, count - Long.bitCount(pinned), pinned, pinned, holders, found);
        return found.stream().mapToLong(Long::longValue).sorted().toArray();
    }

    private static void combine(
            int people, int from, int left, long crew, long pinned, List<Long> holders, List<Long> found) {
        if (left == 0) {
            for (long who : holders) {
                if ((who & crew) == 0) {
                    return;
                }
            }
            found.add(crew);
            return;
        }
        for (int person = from; person <= people - left; person++) {
            if ((pinned >> person & 1) == 0) {
                combine(people, person + 1, left - 1, crew | 1L << person, pinned, holders, found);
            }
        }
    }

    static long bits(Job job, List<String> people) {
        long crew = 0;
        for (int person = 0; person < job.people().size(); person++) {
            if (people.contains(job.people().get(person).id())) {
                crew |= 1L << person;
            }
        }
        return crew;
    }

    static List<String> names(Job job, long crew) {
        List<String> names = new ArrayList<>();
        for (int person = 0; person < job.people().size(); person++) {
            if ((crew >> person & 1) == 1) {
                names.add(job.people().get(person).id());
            }
        }
        return names;
    }
}
