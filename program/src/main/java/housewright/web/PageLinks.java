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
            case "venue.room", "room" -> table("rooms", id);
            case "venue.place", "place" -> table("places", id);
            case "venue.pathway", "pathway" -> table("pathways", id);
            case "venue.circuit", "circuit" -> table("circuits", id);
            case "network-send" -> table("network-sends", id);
            case "radio" -> table("radio", id);
            default -> null;
        };
    }

    private String table(String key, String id) {
        return job + "/table/" + key + "?row=" + id + "#" + id;
    }

    private @Nullable String row(String path, String id) {
        boolean there =
                Arrays.stream(Page.values()).anyMatch(page -> page.path().equals(path));
        return there ? job + path + "#" + id : null;
    }
}
