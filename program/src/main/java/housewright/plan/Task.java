package housewright.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One piece of work.
 *
 * @param id unique in the job
 * @param title what a person reads
 * @param kind such as pull, terminate, prove
 * @param mandatory whether the job fails without it
 */
public record Task(
        String id,
        String title,
        String kind,
        boolean mandatory,
        Length length,
        Crew crew,
        Site site,
        Means means,
        Timing timing) {

    public Task {
        if (site.remote() && means.hire() != null) {
            throw new IllegalArgumentException("Task " + id + " cannot be done from afar with hire " + means.hire());
        }
    }

    /** Begins a mandatory task of one person, which {@link Draft} makes into what is wanted. */
    public static Draft draft(String id, int minutes) {
        return new Draft(id, Length.of(minutes));
    }

    /** A task in the making. */
    public static final class Draft {
        private final String id;
        private Length length;
        private String title;
        private String kind = "task";
        private boolean mandatory = true;
        private int count = 1;
        private final List<String> skills = new ArrayList<>();
        private final List<String> pinned = new ArrayList<>();
        private @Nullable String place;
        private String spot = "";
        private boolean remote;
        private final Set<Condition> needs = EnumSet.noneOf(Condition.class);
        private final Set<Condition> spoils = EnumSet.noneOf(Condition.class);
        private @Nullable String hire;
        private final Map<String, Integer> tools = new LinkedHashMap<>();
        private final List<String> after = new ArrayList<>();
        private final List<String> deliveries = new ArrayList<>();
        private int earliest;
        private int due = Timing.NO_DUE;
        private @Nullable Integer start;

        private Draft(String id, Length length) {
            this.id = id;
            this.length = length;
            this.title = id;
        }

        public Draft title(String text) {
            title = text;
            return this;
        }

        public Draft kind(String word) {
            kind = word;
            return this;
        }

        public Draft optional() {
            mandatory = false;
            return this;
        }

        public Draft length(Length threePoints) {
            length = threePoints;
            return this;
        }

        /** Lets the task be laid down and taken up again. */
        public Draft mayPause() {
            length = new Length(length.optimistic(), length.likely(), length.pessimistic(), true);
            return this;
        }

        public Draft crew(int people) {
            count = people;
            return this;
        }

        public Draft skills(String... names) {
            skills.addAll(List.of(names));
            return this;
        }

        public Draft by(String... people) {
            pinned.addAll(List.of(people));
            return this;
        }

        public Draft at(@Nullable String placeId) {
            place = placeId;
            return this;
        }

        public Draft spot(String name) {
            spot = name;
            return this;
        }

        public Draft remote() {
            remote = true;
            return this;
        }

        public Draft needs(Condition... conditions) {
            needs.addAll(List.of(conditions));
            return this;
        }

        public Draft spoils(Condition... conditions) {
            spoils.addAll(List.of(conditions));
            return this;
        }

        public Draft hire(@Nullable String hireId) {
            hire = hireId;
            return this;
        }

        public Draft tool(String tool, int units) {
            tools.put(tool, units);
            return this;
        }

        public Draft after(String... tasks) {
            after.addAll(List.of(tasks));
            return this;
        }

        public Draft waitsFor(String... ids) {
            deliveries.addAll(List.of(ids));
            return this;
        }

        public Draft earliest(int minute) {
            earliest = minute;
            return this;
        }

        public Draft due(int minute) {
            due = minute;
            return this;
        }

        public Draft startsAt(int minute) {
            start = minute;
            return this;
        }

        /** The task, checked. */
        public Task done() {
            return new Task(
                    id,
                    title,
                    kind,
                    mandatory,
                    length,
                    new Crew(count, skills, pinned),
                    new Site(place, spot, remote, needs, spoils),
                    new Means(hire, tools),
                    new Timing(after, deliveries, earliest, due, start));
        }
    }
}
