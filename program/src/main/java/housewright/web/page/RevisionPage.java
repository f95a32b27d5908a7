package housewright.web.page;

import housewright.file.EntityText;
import housewright.model.Project;
import housewright.model.change.Change;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One step of the history, and what restoring the project as it was after it would change.
 *
 * @param made what the step changed
 * @param restored what restoring it would change; empty where nothing
 */
public record RevisionPage(
        long number, String answer, String under, List<Difference> made, List<Difference> restored, boolean newest) {
    private static final int LONGEST = 600;

    public RevisionPage {
        made = List.copyOf(made);
        restored = List.copyOf(restored);
    }

    /** @param subject as the file names it; the texts are null where it is not there */
    public record Difference(
            String subject, @Nullable String was, @Nullable String is) {}

    /** Each thing that differs, as the project file has it. */
    public static List<Difference> between(Project before, Project after) {
        Set<String> subjects = new LinkedHashSet<>();
        Change.between(before, after).forEach(change -> subjects.addAll(change.subjects()));
        List<Difference> differences = new ArrayList<>();
        for (String subject : subjects) {
            String was = EntityText.find(before, subject);
            String is = EntityText.find(after, subject);
            if (!Objects.equals(was, is)) {
                differences.add(new Difference(subject, cut(was), cut(is)));
            }
        }
        return differences;
    }

    private static @Nullable String cut(@Nullable String text) {
        return text == null || text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
    }
}
