package housewright.plan;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** When each task is done and by whom, in order of time; a task that is not here is left out. What has begun is here. */
public record Schedule(List<Slot> slots) {
    public Schedule {
        slots = slots.stream()
                .sorted(Comparator.comparingInt(Slot::start).thenComparing(Slot::task))
                .toList();
    }

    public Optional<Slot> find(String task) {
        return slots.stream().filter(slot -> slot.task().equals(task)).findFirst();
    }

    public Map<String, Slot> byTask() {
        Map<String, Slot> all = new LinkedHashMap<>();
        slots.forEach(slot -> all.put(slot.task(), slot));
        return all;
    }
}
