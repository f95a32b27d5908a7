package housewright.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Somebody on the job. */
public record Person(
        String id,
        @Nullable String role,
        List<String> skills,
        List<Free> free,
        @Doc("Free for work from afar") List<Free> remote,

        @Doc("Stays of somebody who travels to the job; without any, all free times count")
        List<Stay> visits,

        Remarks remarks) {
    public Person {
        skills = List.copyOf(skills);
        free = List.copyOf(free);
        remote = List.copyOf(remote);
        visits = List.copyOf(visits);
    }
}
