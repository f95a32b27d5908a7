package housewright.web;

import housewright.app.Demo;
import housewright.app.OpenProject;
import housewright.app.Opening;
import housewright.app.ProjectFile;
import housewright.app.ProjectStore;
import housewright.app.ProjectStore.Backup;
import housewright.app.ProjectStore.Kept;
import housewright.app.Projects;
import housewright.app.StoreException;
import housewright.file.FileError;
import housewright.web.page.Dates;
import housewright.web.page.ProjectsPage;
import housewright.web.view.JteprojectsGenerated;
import io.javalin.http.UploadedFile;
import io.javalin.http.sse.SseHandler;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;

/** The list of projects, beginning one, and what holds for a whole project: undo, redo, export, live news. */
final class ProjectPages {
    private static final int LONGEST_NAME = 120;
    private static final int MOST_ERRORS = 50;

    private ProjectPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/", Need.LOOK, ProjectPages::list),
                Route.change("/projects", Need.LEAD, ProjectPages::begin),
                Route.change("/projects/demo", Need.LEAD, ProjectPages::demo),
                Route.change("/projects/file", Need.LEAD, ProjectPages::file),
                Route.change("/backups", Need.LEAD, ProjectPages::backUp),
                Route.change("/p/{project}/undo", Need.LEAD, ProjectPages::undo),
                Route.change("/p/{project}/redo", Need.LEAD, ProjectPages::redo),
                Route.page("/p/{project}/export", Need.LOOK, ProjectPages::export),
                Route.page("/p/{project}/live", Need.LOOK, ProjectPages::live));
    }

    private static void list(Visit visit) throws StoreException {
        list(visit, "", List.of());
    }

    private static void list(Visit visit, String fileName, List<String> errors) throws StoreException {
        List<ProjectsPage.Row> rows = visit.common.projects().list().stream()
                .map(kept -> row(visit, kept))
                .toList();
        Path keptIn = visit.common.serving().keptIn();
        ProjectsPage page = new ProjectsPage(
                rows,
                keptIn == null ? "in memory only, and gone when Housewright ends" : where(visit, keptIn),
                fileName,
                errors,
                visit.session.role.mayDoAll() && keptIn != null ? backups(visit, keptIn) : null);
        String title = rows.isEmpty() ? "Begin" : "Projects";
        visit.show(title, (output, frame) -> JteprojectsGenerated.render(output, null, frame, page));
    }

    private static ProjectsPage.Row row(Visit visit, Kept kept) {
        String origin = kept.origin() == null || !visit.session.role.mayDoAll() ? "" : kept.origin();
        return new ProjectsPage.Row(
                "/p/" + kept.id(),
                kept.name(),
                Dates.ago(kept.changedAt(), visit.common.projects().clock().instant(), visit.common.zone()),
                kept.head(),
                origin);
    }

    /** The folders of the machine are for nobody but the lead. */
    private static String where(Visit visit, Path keptIn) {
        return visit.session.role.mayDoAll() ? "in " + keptIn : "on the machine that shares them";
    }

    private static ProjectsPage.Backups backups(Visit visit, Path keptIn) throws StoreException {
        ProjectStore store = visit.common.projects().store();
        List<Backup> made = store.listBackups();
        List<ProjectsPage.BackupRow> rows = made.stream()
                .map(each -> new ProjectsPage.BackupRow(
                        Dates.moment(LocalDateTime.ofInstant(each.at(), visit.common.zone())),
                        size(each.bytes()),
                        String.valueOf(each.file().getFileName())))
                .toList();
        String folder =
                made.isEmpty() ? "" : String.valueOf(made.getFirst().file().getParent());
        return new ProjectsPage.Backups(
                rows, folder, String.valueOf(keptIn.getFileName()), store.listRemarks(), !store.isReadOnly());
    }

    private static String size(long bytes) {
        double kilobytes = bytes / 1000.0;
        return kilobytes < 1000
                ? String.format(Locale.ROOT, "%.0f kB", kilobytes)
                : String.format(Locale.ROOT, "%.1f MB", kilobytes / 1000);
    }

    private static void backUp(Visit visit) throws StoreException {
        Projects projects = visit.common.projects();
        Backup made = projects.store().backUp(projects.clock().instant());
        visit.goOn(
                "/#backups", new Session.Notice("Made the backup " + made.file().getFileName() + ".", false, false));
    }

    private static void begin(Visit visit) throws StoreException {
        String name = visit.field("name");
        if (name.isEmpty() || name.length() > LONGEST_NAME) {
            visit.goOn(
                    Typed.with(visit, "/projects", "/"),
                    new Session.Notice(
                            name.isEmpty()
                                    ? "A project wants the hall's name first."
                                    : "A name has at most " + LONGEST_NAME + " characters.",
                            true,
                            false));
            return;
        }
        OpenProject job = visit.common.projects().begin(name, visit.author());
        String with = visit.field("with");
        visit.goOn(
                List.of("list", "paste").contains(with)
                        ? Visit.home(job) + "/equipment?begin=" + with
                        : Visit.home(job),
                null);
    }

    private static void demo(Visit visit) throws StoreException {
        Projects projects = visit.common.projects();
        switch (projects.read(Demo.FILE_NAME, Demo.bytes())) {
            case Opening.Opened opened -> visit.goOn(Visit.home(projects.begin(opened.file(), visit.author())), null);
            case Opening.Refused refused ->
                throw new IllegalStateException(refused.errors().toString());
            case Opening.Unreadable unreadable -> throw new IllegalStateException(unreadable.why());
        }
    }

    private static void file(Visit visit) throws StoreException, IOException {
        UploadedFile sent = visit.ctx.uploadedFile("file");
        if (sent == null || sent.size() == 0) {
            visit.goOn("/", new Session.Notice("Choose a project file first.", true, false));
            return;
        }
        byte[] bytes;
        try (InputStream in = sent.content()) {
            bytes = in.readAllBytes();
        }
        String name = plain(sent.filename());
        switch (visit.common.projects().read(name, bytes)) {
            case Opening.Opened opened -> {
                ProjectFile read = opened.file();
                visit.goOn(Visit.home(visit.common.projects().begin(read, visit.author())), null);
            }
            case Opening.Refused refused ->
                list(
                        visit,
                        name,
                        refused.errors().stream()
                                .limit(MOST_ERRORS)
                                .map(FileError::text)
                                .toList());
            case Opening.Unreadable unreadable -> list(visit, name, List.of(unreadable.why()));
        }
    }

    /** Only the last part of whatever path a browser sends, as it is shown and kept. */
    static String plain(String fileName) {
        String name = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1)
                .replaceAll("\\p{Cntrl}", "");
        return name.isBlank() ? "file" : name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name;
    }

    private static void undo(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        String what = job.findToUndo(visit.author())
                .map(revision -> ": " + revision.what().says())
                .orElse("");
        Session.Notice notice = Said.of(job.undo(visit.author()), "Undone" + what);
        // beside these words Undo would take back the step before
        visit.goBack(Visit.home(job), new Session.Notice(notice.words(), notice.trouble(), false));
    }

    private static void redo(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        visit.settle(job, job.redo(visit.author()), "Done again");
    }

    private static void export(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        visit.ctx
                .header("Content-Disposition", "attachment; filename=\"" + job.id() + ".yaml\"")
                .contentType("application/yaml; charset=utf-8")
                .result(Projects.text(job.now().project()).getBytes(StandardCharsets.UTF_8));
    }

    private static void live(Visit visit) throws Exception {
        OpenProject job = visit.job();
        new SseHandler(client -> visit.common.live().join(job, client, visit.session)).handle(visit.ctx);
    }
}
