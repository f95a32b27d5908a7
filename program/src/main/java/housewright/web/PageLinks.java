package housewright.web;

import housewright.app.table.Table;
import housewright.finding.Subject;
import housewright.web.page.Links;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * Where the things of one project are shown.
 *
 * @param job where its pages begin
 */
record PageLinks(String job) implements Links {
    @Override
    public @Nullable String of(Subject subject) {
        String id = URLEncoder.encode(subject.id(), StandardCharsets.UTF_8).replace("+", "%20");
        return switch (subject.kind()) {
            case "feed" -> job + "/feeds/" + id;
            case "question" -> job + "/questions#" + id;
            case "patch" -> job + "/table/patch?words=" + id;
            default -> row(subject, id);
        };
    }

    private @Nullable String row(Subject subject, String id) {
        String path = subject.path();
        String section = path.substring(0, path.length() - subject.id().length() - 1);
        return Table.find(section.substring(section.lastIndexOf('.') + 1))
                .map(table -> job + "/table/" + table.key() + "?row=" + id + "#" + id)
                .orElse(null);
    }
}
