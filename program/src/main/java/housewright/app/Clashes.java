package housewright.app;

import housewright.file.EntityCells;
import housewright.file.EntityText;
import housewright.model.Project;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts two edits of the same things side by side. */
final class Clashes {
    private Clashes() {}

    /**
     * @param was before both edits
     * @param kept with the other edit
     * @param yours with this edit made on the other
     * @param subjects that both touch; where both came to the same there is nothing to settle
     */
    static List<Clash> of(Project was, Project kept, Project yours, Set<String> subjects) {
        List<Clash> clashes = new ArrayList<>();
        for (String subject : subjects) {
            Clash clash = of(was, kept, yours, subject);
            if (!Objects.equals(clash.kept(), clash.yours())) {
                clashes.add(clash);
            }
        }
        return clashes;
    }

    private static Clash of(Project was, Project kept, Project yours, String subject) {
        for (Section section : Section.values()) {
            if (subject.startsWith(section.path() + ".")) {
                String id = subject.substring(section.path().length() + 1);
                return ofCells(
                        subject,
                        section.of(was).get(id),
                        section.of(kept).get(id),
                        section.of(yours).get(id));
            }
        }
        return new Clash(
                subject,
                EntityText.find(was, subject),
                EntityText.find(kept, subject),
                EntityText.find(yours, subject));
    }

    private static Clash ofCells(String subject, @Nullable Record was, @Nullable Record kept, @Nullable Record yours) {
        List<Map<String, String>> there = Stream.of(was, kept, yours)
                .filter(Objects::nonNull)
                .map(EntityCells::of)
                .toList();
        Set<String> differing = new LinkedHashSet<>();
        there.forEach(cells -> differing.addAll(cells.keySet()));
        differing.removeIf(
                key -> there.stream().map(cells -> cells.get(key)).distinct().count() == 1);
        return new Clash(subject, only(was, differing), only(kept, differing), only(yours, differing));
    }

    private static @Nullable String only(@Nullable Record entity, Set<String> keys) {
        if (entity == null) {
            return null;
        }
        Map<String, String> cells = EntityCells.of(entity);
        return keys.stream()
                .filter(cells::containsKey)
                .map(key -> key + ": " + cells.get(key))
                .collect(Collectors.joining("; "));
    }
}
