package housewright.work;

import housewright.model.RoomCondition;
import housewright.model.TaskKind;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A task in the making. */
final class Draft {
    final String id;
    final TaskKind kind;
    final Set<TaskKind> does = new LinkedHashSet<>();
    String title;
    String why;
    final Set<String> about = new LinkedHashSet<>();
    /** Of its own where the project states it; else null, and the length is that of the portions. */
    @Nullable
    Minutes stated;

    private final Map<String, Portion> portions = new LinkedHashMap<>();
    double leastSeconds;
    double likelySeconds;
    double mostSeconds;
    int crew = 1;
    final Set<String> skills = new LinkedHashSet<>();
    final Set<String> who = new LinkedHashSet<>();
    final Set<String> hires = new LinkedHashSet<>();
    final Set<String> places = new LinkedHashSet<>();
    final Set<String> rooms = new LinkedHashSet<>();

    @Nullable
    Double heightM;

    boolean overhead;
    boolean remote;
    boolean beforehand;
    final Set<RoomCondition> conditions = new LinkedHashSet<>();
    final Set<String> deliveries = new LinkedHashSet<>();
    final Set<String> unordered = new LinkedHashSet<>();
    final Set<String> after = new LinkedHashSet<>();
    final Set<String> takesApart = new LinkedHashSet<>();

    final Set<String> proves = new LinkedHashSet<>();
    final Set<String> parts = new LinkedHashSet<>();

    @Nullable
    String event;

    boolean mayWait;
    boolean mayPause;
    boolean own;
    boolean changed;
    final Set<String> cautions = new LinkedHashSet<>();
    final Set<String> assumed = new LinkedHashSet<>();

    Draft(String id, TaskKind kind, String title, String why) {
        this.id = id;
        this.kind = kind;
        this.title = title;
        this.why = why;
        does.add(kind);
    }

    void count(String unit, double count, String per) {
        portions.merge(
                unit,
                new Portion(unit, count, per),
                (one, other) -> new Portion(unit, one.count() + other.count(), per));
    }

    /** The length of another as well. */
    void count(Draft other) {
        other.portions.values().forEach(each -> count(each.unit(), each.count(), each.per()));
        leastSeconds += other.leastSeconds;
        likelySeconds += other.likelySeconds;
        mostSeconds += other.mostSeconds;
    }

    Draft about(String section, String entity) {
        about.add(section + "." + entity);
        return this;
    }

    Draft after(@Nullable Draft other) {
        if (other != null && other != this) {
            after.add(other.id);
        }
        return this;
    }

    Draft after(Iterable<Draft> others) {
        others.forEach(this::after);
        return this;
    }

    Draft at(@Nullable String place) {
        if (place != null) {
            places.add(place);
        }
        return this;
    }

    void high(double metres) {
        Double known = heightM;
        heightM = known == null ? metres : Math.max(known, metres);
    }

    Minutes takes() {
        Minutes own = stated;
        if (own != null) {
            return own;
        }
        int least = Math.max(1, (int) Math.floor(leastSeconds / 60));
        int likely = Math.max(least, (int) Math.round(likelySeconds / 60));
        return new Minutes(least, likely, Math.max(likely, (int) Math.ceil(mostSeconds / 60)));
    }

    WorkTask finish(List<String> first) {
        return new WorkTask(
                id,
                kind,
                List.copyOf(does),
                title,
                why,
                List.copyOf(about),
                takes(),
                stated == null ? List.copyOf(portions.values()) : List.of(),
                crew,
                List.copyOf(skills),
                List.copyOf(who),
                List.copyOf(hires),
                List.copyOf(places),
                List.copyOf(rooms),
                heightM,
                overhead,
                remote,
                beforehand,
                conditions.stream().sorted().toList(),
                List.copyOf(deliveries),
                List.copyOf(unordered),
                first,
                takesApart.stream().sorted().toList(),
                List.copyOf(proves),
                event,
                mayWait,
                mayPause,
                own,
                changed,
                List.copyOf(parts),
                List.copyOf(cautions),
                List.copyOf(assumed));
    }
}
