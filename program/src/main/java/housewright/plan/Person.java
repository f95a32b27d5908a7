package housewright.plan;

import java.util.List;
import java.util.Set;

/**
 * Somebody who works.
 *
 * @param skills and licences
 * @param onSite when free to be there
 * @param remote when free to work from afar
 * @param visits when not empty, {@code onSite} counts only within one of these
 */
public record Person(
        String id,
        String name,
        Set<String> skills,
        List<Window> onSite,
        List<Window> remote,
        Limits limits,
        List<Visit> visits) {
    public Person {
        skills = Set.copyOf(skills);
        onSite = onSite.stream().sorted().toList();
        remote = remote.stream().sorted().toList();
        visits = List.copyOf(visits);
    }
}
