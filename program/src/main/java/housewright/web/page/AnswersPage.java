package housewright.web.page;

import housewright.app.packet.Answering;
import housewright.app.packet.Answering.Does;
import java.util.ArrayList;
import java.util.List;

/**
 * The answers of a question packet on their way into a project.
 *
 * @param answer what they come to, as the title
 * @param trouble why the file cannot be read; empty where it can
 * @param people who can be sent a packet, and how much it would ask them
 */
public record AnswersPage(
        String answer, String file, String trouble, List<Row> rows, boolean takeable, long base, List<Asked> people) {
    public AnswersPage {
        rows = List.copyOf(rows);
        people = List.copyOf(people);
    }

    /** @param state as its mark is called */
    public record Row(
            String about,
            String field,
            String asked,
            String answer,
            String photos,
            String state,
            String does,
            String why) {}

    public record Asked(String person, int things) {}

    public static AnswersPage none(String file, String trouble, List<Asked> people) {
        String answer = trouble.isEmpty() ? "Questions for somebody on site" : "These answers cannot be taken";
        return new AnswersPage(answer, file, trouble, List.of(), false, 0, people);
    }

    public static AnswersPage of(String file, Answering answering, long base, List<Asked> people) {
        return new AnswersPage(
                answer(answering),
                file,
                "",
                answering.entries().stream().map(AnswersPage::row).toList(),
                !answering.changes().isEmpty(),
                base,
                people);
    }

    private static String answer(Answering answering) {
        List<String> parts = new ArrayList<>();
        part(answering.count(Does.TAKE), "can be taken", parts);
        part(answering.count(Does.CONFLICT), "in conflict", parts);
        part(answering.count(Does.REFUSE), "refused", parts);
        return parts.isEmpty()
                ? "Nothing in these answers is new"
                : "Answers of " + answering.file().to() + ": " + String.join(", ", parts);
    }

    private static void part(long count, String words, List<String> parts) {
        if (count > 0) {
            parts.add(count + " " + words);
        }
    }

    private static Row row(Answering.Entry entry) {
        return new Row(
                entry.about(),
                entry.field(),
                entry.asked(),
                entry.answer(),
                entry.photos() == 0 ? "" : entry.photos() == 1 ? "a photo" : entry.photos() + " photos",
                switch (entry.does()) {
                    case TAKE -> "proven";
                    case SAME -> "note";
                    case CONFLICT -> "fix";
                    case REFUSE -> "stop";
                },
                switch (entry.does()) {
                    case TAKE -> "new";
                    case SAME -> "as it is";
                    case CONFLICT -> "conflict";
                    case REFUSE -> "refused";
                },
                entry.why());
    }
}
