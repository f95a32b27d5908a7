package housewright.plan;

import java.util.List;

/**
 * When a task is done and by whom.
 *
 * @param pieces stretches of work in order; more than one only for a task that may pause
 * @param people ids in alphabetic order
 */
public record Slot(String task, List<Window> pieces, List<String> people) {
    public Slot {
        pieces = List.copyOf(pieces);
        people = people.stream().sorted().toList();
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("Task " + task + " has no time");
        }
    }

    public int start() {
        return pieces.getFirst().from();
    }

    public int end() {
        return pieces.getLast().to();
    }
}
