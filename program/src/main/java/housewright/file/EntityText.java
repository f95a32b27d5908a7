package housewright.file;

import housewright.model.AcceptedPlan;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.change.Section;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What stands in the project file for one thing. */
public final class EntityText {
    private EntityText() {}

    /**
     * The text on one line, or null where there is no such thing.
     *
     * @param subject as a change names what it touches: {@code equipment.desk-1}, {@code patch.desk-1},
     *     {@code patch.desk-1.ch-3}, {@code pairs.mains}, {@code project}, {@code exempt}
     */
    public static @Nullable String find(Project project, String subject) {
        if (subject.equals("project")) {
            return YamlText.flow(ModelNodes.of(project.about()));
        }
        if (subject.equals("exempt")) {
            return lines(project.exempt());
        }
        if (subject.equals("plan.times")) {
            AcceptedPlan plan = project.plan();
            return plan == null || plan.times().isEmpty()
                    ? null
                    : plan.times().size() + " tasks, accepted " + (plan.made() == null ? "once" : plan.made());
        }
        if (subject.startsWith("pairs.")) {
            var channels = project.pairs().get(subject.substring("pairs.".length()));
            return channels == null
                    ? null
                    : channels.stream().map(ref -> ref.text()).collect(Collectors.joining(", "));
        }
        if (subject.startsWith("patch.")) {
            return patch(project, subject.substring("patch.".length()));
        }
        for (Section section : Section.values()) {
            if (subject.startsWith(section.path() + ".")) {
                Record entity =
                        section.of(project).get(subject.substring(section.path().length() + 1));
                return entity == null ? null : YamlText.flow(ModelNodes.of(entity));
            }
        }
        throw new IllegalArgumentException("Nothing in a project is called " + Shown.quoted(subject));
    }

    private static @Nullable String patch(Project project, String rest) {
        int dot = rest.indexOf('.');
        Map<String, List<PatchEntry>> patch = project.patch();
        if (dot < 0) {
            return patch.containsKey(rest) ? lines(patch.get(rest)) : null;
        }
        String to = rest.substring(dot + 1);
        List<PatchEntry> into = patch.getOrDefault(rest.substring(0, dot), List.of()).stream()
                .filter(entry -> entry.join().pairs().stream()
                        .anyMatch(pair -> pair.to().toString().equals(to)))
                .toList();
        return into.isEmpty() ? null : lines(into);
    }

    private static String lines(List<? extends Record> records) {
        return records.stream().map(each -> YamlText.flow(ModelNodes.of(each))).collect(Collectors.joining("; "));
    }
}
