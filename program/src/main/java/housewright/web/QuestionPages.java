package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Attachment;
import housewright.app.StoreException;
import housewright.model.Question;
import housewright.model.Remarks;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.web.page.QuestionsPage;
import housewright.web.view.JtequestionsGenerated;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Questions to people, their answers and photos. */
final class QuestionPages {
    private static final String FOR_LONG = "private, max-age=31536000, immutable";

    private QuestionPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}/questions", Need.LOOK, QuestionPages::show),
                Route.change("/p/{project}/questions", Need.SITE, QuestionPages::ask),
                Route.change("/p/{project}/questions/{question}/answer", Need.SITE, QuestionPages::answer),
                Route.page("/p/{project}/photos/{name}", Need.LOOK, QuestionPages::photo));
    }

    private static String home(OpenProject job) {
        return Visit.home(job) + "/questions";
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        QuestionsPage page = QuestionsPage.of(now, visit.today(), new PageLinks(Visit.home(job)), Visit.home(job));
        visit.show(
                job,
                now,
                Page.QUESTIONS,
                "Questions",
                (output, frame) -> JtequestionsGenerated.render(output, null, frame, page));
    }

    private static void ask(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String asks = visit.field("asks");
        if (asks.isEmpty()) {
            visit.goBack(home(job), new Session.Notice("A question wants words.", true, false));
            return;
        }
        LocalDate due;
        try {
            due = date(visit.field("due"));
        } catch (DateTimeParseException e) {
            visit.goBack(
                    home(job),
                    new Session.Notice(
                            "The day is written like 2027-03-21, not \"" + visit.field("due") + "\".", true, false));
            return;
        }
        String id = freeId(now);
        Question question = new Question(
                id, orNull(visit.field("to")), orNull(visit.field("about")), asks, due, null, Remarks.NONE);
        List<Change> changes = List.of(new Change.Put(Section.QUESTIONS, id, question));
        visit.settle(job, job.edit(visit.author(), now.revision(), "Asked " + id, changes), "Asked " + id);
    }

    private static String freeId(Now now) {
        for (int n = now.project().questions().size() + 1; ; n++) {
            if (!now.project().questions().containsKey("q" + n)) {
                return "q" + n;
            }
        }
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }

    private static @Nullable LocalDate date(String text) {
        return text.isEmpty() ? null : LocalDate.parse(text);
    }

    private static void answer(Visit visit) throws StoreException, IOException {
        OpenProject job = visit.job();
        Now now = job.now();
        String id = visit.ctx.pathParam("question");
        Question asked = now.project().questions().get(id);
        if (asked == null) {
            throw Refused.notFound("There is no question " + id + " in this project.");
        }
        List<String> photos = new ArrayList<>(asked.remarks().photo());
        List<String> leftOut = new ArrayList<>();
        for (UploadedFile sent : visit.ctx.uploadedFiles("photo")) {
            Optional<String> name = keep(visit, job, sent);
            if (name.isEmpty() && sent.size() > 0) {
                leftOut.add(ProjectPages.plain(sent.filename()));
            }
            name.filter(each -> !photos.contains(each)).ifPresent(photos::add);
        }
        String answer = visit.field("answer");
        Remarks old = asked.remarks();
        if (photos.equals(old.photo()) && (answer.isEmpty() || answer.equals(asked.answer()))) {
            Session.Notice nothing = new Session.Notice("An answer wants words or a photo.", true, false);
            visit.goBack(home(job) + "#" + id, leftOut.isEmpty() ? nothing : without(leftOut, nothing));
            return;
        }
        Remarks remarks = new Remarks(old.key(), old.note(), photos, old.known(), visit.session.person);
        Question answered = new Question(
                id,
                asked.to(),
                asked.about(),
                asked.asks(),
                asked.due(),
                answer.isEmpty() ? asked.answer() : answer,
                remarks);
        List<Change> changes = List.of(new Change.Put(Section.QUESTIONS, id, answered));
        long base = visit.number("revision");
        Outcome outcome = job.edit(visit.author(), base, "Answered " + id, changes);
        Session.Notice notice = Said.of(outcome, "Answered " + id);
        visit.goBack(home(job) + "#" + id, leftOut.isEmpty() ? notice : without(leftOut, notice));
    }

    /** What was typed is kept, whatever was sent with it. */
    private static Session.Notice without(List<String> leftOut, Session.Notice notice) {
        return new Session.Notice(
                notice.words() + "\nLeft out: "
                        + String.join(
                                "; ",
                                leftOut.stream()
                                        .map(name -> name + " is no photo, or not a whole one")
                                        .toList())
                        + ". JPEG, PNG and WebP are taken.",
                true,
                notice.undo());
    }

    /** The name under which the project knows a photo; empty where it is none. */
    private static Optional<String> keep(Visit visit, OpenProject job, UploadedFile sent)
            throws StoreException, IOException {
        byte[] content;
        try (InputStream in = sent.content()) {
            content = in.readAllBytes();
        }
        Optional<Pictures> picture = Pictures.find(content);
        Optional<byte[]> bare = picture.flatMap(kind -> BarePhoto.of(kind, content));
        if (bare.isEmpty()) {
            return Optional.empty();
        }
        Attachment kept = visit.common
                .projects()
                .store()
                .attach(
                        job.id(),
                        ProjectPages.plain(sent.filename()),
                        picture.get().mediaType,
                        bare.get(),
                        visit.session.person,
                        visit.common.projects().clock().instant());
        return Optional.of(kept.id() + "." + picture.get().ending);
    }

    private static void photo(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        String name = visit.ctx.pathParam("name");
        int dot = name.lastIndexOf('.');
        String id = dot < 0 ? name : name.substring(0, dot);
        ProjectStore store = visit.common.projects().store();
        byte[] content = store.findContent(job.id(), id)
                .orElseThrow(() -> Refused.notFound("There is no photo " + name + " in this project."));
        String type = Pictures.find(content)
                .map(picture -> picture.mediaType)
                .orElseThrow(() -> Refused.notFound("There is no photo " + name + " in this project."));
        visit.ctx
                .header("Content-Security-Policy", "default-src 'none'; sandbox")
                .header("Content-Disposition", "inline; filename=\"photo" + (dot < 0 ? "" : ending(name, dot)) + "\"")
                .header("Cache-Control", FOR_LONG)
                .contentType(type)
                .result(content);
    }

    private static String ending(String name, int dot) {
        String ending = name.substring(dot);
        return ending.matches("\\.[a-z]{3,4}") ? ending : "";
    }
}
