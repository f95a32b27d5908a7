package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.ProjectStore.Attachment;
import housewright.app.StoreException;
import housewright.app.packet.Answering;
import housewright.app.packet.AnswersReader;
import housewright.app.packet.Packet;
import housewright.web.page.AnswersPage;
import housewright.web.view.JteanswersGenerated;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Question packets for people on site, and their answers: shown as they would be taken, then taken as one step. */
final class PacketPages {
    private static final String AT = "/p/{project}/answers";

    private PacketPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}/questions/packet", Need.SITE, PacketPages::packet),
                Route.page(AT, Need.LEAD, PacketPages::show),
                Route.change(AT, Need.LEAD, PacketPages::send),
                Route.change(AT + "/take", Need.LEAD, PacketPages::take));
    }

    private static String home(OpenProject job) {
        return Visit.home(job) + "/answers";
    }

    private static void packet(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String to = visit.ctx.queryParam("to");
        if (to == null || !now.project().people().containsKey(to)) {
            throw Refused.notFound("There is no person " + to + " in this project.");
        }
        visit.ctx
                .header("Content-Disposition", "attachment; filename=\"questions-" + to + ".html\"")
                .contentType("text/html; charset=utf-8")
                .result(Packet.html(now.study(), to).getBytes(StandardCharsets.UTF_8));
    }

    private static void send(Visit visit) throws StoreException, IOException {
        OpenProject job = visit.job();
        UploadedFile sent = visit.ctx.uploadedFile("answers");
        if (sent == null || sent.size() == 0) {
            visit.goOn(home(job), new Session.Notice("Choose an answers file first.", true, false));
            return;
        }
        try (InputStream in = sent.content()) {
            visit.session.keep(new Session.Upload(
                    slot(job), ProjectPages.plain(sent.filename()), in.readNBytes(AnswersReader.MOST_BYTES + 1)));
        }
        visit.goOn(home(job), null);
    }

    private static String slot(OpenProject job) {
        return job.id() + "/answers";
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Session.Upload upload = visit.session.upload(slot(job));
        List<AnswersPage.Asked> people = now.project().people().keySet().stream()
                .map(person -> new AnswersPage.Asked(person, Packet.count(now.study(), person)))
                .toList();
        AnswersPage page = upload == null
                ? AnswersPage.none("", "", people)
                : switch (AnswersReader.read(upload.bytes())) {
                    case AnswersReader.Reading.Refused refused ->
                        AnswersPage.none(upload.name(), refused.why(), people);
                    case AnswersReader.Reading.Read read ->
                        AnswersPage.of(
                                upload.name(),
                                Answering.of(now.study(), read.file(), (name, jpeg) -> "to-be-kept.jpg"),
                                now.revision(),
                                people);
                };
        visit.show(
                job,
                now,
                Page.QUESTIONS,
                "Answers",
                (output, frame) -> JteanswersGenerated.render(output, null, frame, page));
    }

    private static void take(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Session.Upload upload = visit.session.upload(slot(job));
        if (upload == null || !(AnswersReader.read(upload.bytes()) instanceof AnswersReader.Reading.Read read)) {
            visit.goOn(
                    home(job), new Session.Notice("The answers are not here any more. Send them again.", true, false));
            return;
        }
        try {
            Answering answering = Answering.of(now.study(), read.file(), (name, jpeg) -> keep(visit, job, name, jpeg));
            String says = "Took " + answering.count(Answering.Does.TAKE) + " answers of "
                    + read.file().to();
            visit.goOn(
                    home(job),
                    Said.of(job.edit(visit.author(), visit.number("base"), says, answering.changes()), says));
        } catch (UncheckedIOException e) {
            throw new StoreException("A photo could not be kept: " + e.getMessage());
        }
    }

    private static String keep(Visit visit, OpenProject job, String name, byte[] jpeg) {
        try {
            Attachment kept = visit.common
                    .projects()
                    .store()
                    .attach(
                            job.id(),
                            ProjectPages.plain(name),
                            Pictures.JPEG.mediaType,
                            jpeg,
                            visit.session.person,
                            visit.common.projects().clock().instant());
            return kept.id() + "." + Pictures.JPEG.ending;
        } catch (StoreException e) {
            throw new UncheckedIOException(new IOException(e.why()));
        }
    }
}
