package housewright.web.page;

import housewright.app.Now;
import housewright.finding.Subject;
import housewright.model.Question;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Questions to people, and what they answered.
 *
 * @param form where a question is sent
 * @param open the most urgent first
 * @param people whom one can ask
 */
public record QuestionsPage(String answer, String form, List<Row> open, List<Row> answered, List<String> people) {
    /** How much may be sent at once. */
    public static final int MOST_MB = 25;

    public QuestionsPage {
        open = List.copyOf(open);
        answered = List.copyOf(answered);
        people = List.copyOf(people);
    }

    /**
     * @param about the thing it is about, as the file names it; empty where it is about none
     * @param href where that is shown; null where it has no page
     * @param due in words; empty where it has no date
     * @param by who answered; empty where that is not known
     * @param form where an answer is sent
     */
    public record Row(
            String id,
            String to,
            String about,
            @Nullable String href,
            String asks,
            String due,
            boolean overdue,
            String answer,
            String by,
            String form,
            List<Photo> photos) {
        public Row {
            photos = List.copyOf(photos);
        }
    }

    /** @param href where it is kept; null where only its name is known */
    public record Photo(String name, @Nullable String href) {}

    /** @param job where the project's pages begin */
    public static QuestionsPage of(Now now, LocalDate today, Links links, String job) {
        List<Row> open = new ArrayList<>();
        List<Row> answered = new ArrayList<>();
        now.project().questions().values().stream()
                .sorted(Comparator.comparing(Question::due, Comparator.nullsLast(Comparator.naturalOrder())))
                .forEach(question -> {
                    Row row = row(question, today, links, job);
                    (row.answer().isEmpty() ? open : answered).add(row);
                });
        return new QuestionsPage(
                answer(open, answered),
                job + "/questions",
                open,
                answered,
                List.copyOf(now.project().people().keySet()));
    }

    private static String answer(List<Row> open, List<Row> answered) {
        if (open.isEmpty()) {
            return answered.isEmpty() ? "Nobody has been asked anything yet." : "Every question is answered.";
        }
        long late = open.stream().filter(Row::overdue).count();
        return (open.size() == 1 ? "One question is open" : open.size() + " questions are open")
                + (late == 0 ? "." : late == 1 ? "; one is overdue." : "; " + late + " are overdue.");
    }

    private static Row row(Question question, LocalDate today, Links links, String job) {
        LocalDate due = question.due();
        String about = question.about() == null ? "" : question.about();
        return new Row(
                question.id(),
                question.to() == null ? "" : question.to(),
                about,
                about.contains(".") ? links.of(Subject.at(about)) : null,
                question.asks() == null ? "" : question.asks(),
                due == null ? "" : Dates.day(due) + ", " + Dates.away(due, today),
                due != null && due.isBefore(today),
                question.answer() == null ? "" : question.answer().strip(),
                question.remarks().by() == null ? "" : question.remarks().by(),
                job + "/questions/" + question.id() + "/answer",
                question.remarks().photo().stream()
                        .map(name -> new Photo(
                                name, name.matches("[0-9a-f-]{8,64}\\.[a-z]{3,4}") ? job + "/photos/" + name : null))
                        .toList());
    }
}
