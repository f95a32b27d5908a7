package housewright.plan;

import java.util.List;

/**
 * Who a task takes.
 *
 * @param count people at once; 0 for what needs nobody
 * @param skills each must be held by at least one of the crew
 * @param pinned people who must be of the crew, by id
 */
public record Crew(int count, List<String> skills, List<String> pinned) {
    /** Nobody. */
    public static final Crew NONE = new Crew(0, List.of(), List.of());

    public Crew {
        skills = List.copyOf(skills);
        pinned = List.copyOf(pinned);
        if (count < 0 || pinned.size() > count || (count == 0 && !skills.isEmpty())) {
            throw new IllegalArgumentException(
                    "A crew of %s cannot have the skills %s and the people %s".formatted(count, skills, pinned));
        }
    }
}
