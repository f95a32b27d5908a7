package housewright.web;

import housewright.drawing.Sheet;
import housewright.drawing.State;
import housewright.model.Word;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What all pages with a drawing do alike. */
final class Drawing {
    static final List<String> MODULES = List.of("drawing.js");

    private Drawing() {}

    /** What the address asks for; null where it does not. */
    static @Nullable String asked(Visit visit, String name) {
        String text = visit.ctx.queryParam(name);
        return text == null || text.isBlank() ? null : text.strip();
    }

    static State state(Visit visit) {
        String word = asked(visit, "state");
        return word == null ? State.TARGET : word(State.values(), word, "state");
    }

    static <W extends Word> W word(W[] words, String asked, String what) {
        return Stream.of(words)
                .filter(each -> each.word().equals(asked))
                .findFirst()
                .orElseThrow(() -> Refused.notFound("There is no " + what + " of that name."));
    }

    /** As a file that any program for drawings opens. */
    static void download(Visit visit, Sheet sheet) {
        String name = sheet.id().replaceAll("[^A-Za-z0-9-]", "-");
        visit.ctx
                .contentType("image/svg+xml; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + name + ".svg\"")
                .result("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + sheet.svg() + "\n");
    }
}
