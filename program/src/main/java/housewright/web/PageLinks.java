package housewright.web;

import housewright.finding.Subject;
import housewright.web.page.Links;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
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
            case "equipment" -> row("/equipment", id);
            case "cable" -> row("/cables", id);
            case "patch" -> row("/patch", id);
            case "venue.room", "venue.place", "venue.pathway", "venue.circuit", "place", "room", "pathway", "circuit" ->
                row("/venue", id);
            default -> null;
        };
    }

    private @Nullable String row(String path, String id) {
        boolean there =
                Arrays.stream(Page.values()).anyMatch(page -> page.path().equals(path));
        return there ? job + path + "#" + id : null;
    }
}
