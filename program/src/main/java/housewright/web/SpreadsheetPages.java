package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Opening;
import housewright.app.StoreException;
import housewright.app.table.FoundTable;
import housewright.app.table.ListKind;
import housewright.app.table.ProjectDifference;
import housewright.app.table.SheetImport;
import housewright.file.ProjectBook;
import housewright.model.Project;
import housewright.sheet.Sheet;
import housewright.sheet.SheetReader;
import housewright.sheet.SheetReading;
import housewright.web.page.SpreadsheetPage;
import housewright.web.view.JtespreadsheetGenerated;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Lists from spreadsheets: sent, shown as they are read, put right, and taken as one step. The whole project as a workbook. */
final class SpreadsheetPages {
    private static final String AT = "/p/{project}/spreadsheet";
    private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private SpreadsheetPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page(AT, Need.LEAD, SpreadsheetPages::show),
                Route.change(AT, Need.LEAD, SpreadsheetPages::send),
                Route.change(AT + "/take", Need.LEAD, SpreadsheetPages::take),
                Route.page("/p/{project}/workbook", Need.LOOK, SpreadsheetPages::workbook));
    }

    private static String home(OpenProject job) {
        return Visit.home(job) + "/spreadsheet";
    }

    private static void send(Visit visit) throws StoreException, IOException {
        OpenProject job = visit.job();
        UploadedFile sent = visit.ctx.uploadedFile("spreadsheet");
        if (sent == null || sent.size() == 0) {
            visit.goOn(home(job), new Session.Notice("Choose a spreadsheet first.", true, false));
            return;
        }
        try (InputStream in = sent.content()) {
            visit.session.keep(new Session.Upload(
                    job.id(), ProjectPages.plain(sent.filename()), in.readNBytes(SheetReader.MOST_BYTES + 1)));
        }
        visit.goOn(home(job), null);
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Session.Upload upload = visit.session.upload(job.id());
        SpreadsheetPage page = upload == null
                ? SpreadsheetPage.none("", "")
                : page(visit, now, upload, name -> {
                    String text = visit.ctx.queryParam(name);
                    return text == null ? null : text.strip();
                });
        visit.show(
                job,
                now,
                Page.EQUIPMENT,
                "Spreadsheet",
                (output, frame) -> JtespreadsheetGenerated.render(output, null, frame, page));
    }

    private static SpreadsheetPage page(
            Visit visit, Now now, Session.Upload upload, Function<String, @Nullable String> said) {
        return switch (SheetReader.read(upload.name(), upload.bytes())) {
            case SheetReading.Refused refused -> SpreadsheetPage.none(upload.name(), refused.why());
            case SheetReading.Read read -> {
                if (said.apply("as") == null && ProjectBook.isProject(read.sheets())) {
                    yield whole(visit, now, upload);
                }
                Optional<FoundTable> found = found(now, read, said);
                List<String> sheets = read.sheets().stream().map(Sheet::name).toList();
                yield found.isEmpty()
                        ? SpreadsheetPage.none(upload.name(), "There are no rows in it.")
                        : SpreadsheetPage.of(
                                upload.name(),
                                sheets,
                                read.remarks(),
                                SheetImport.of(now.study(), found.get()),
                                now.revision());
            }
        };
    }

    private static SpreadsheetPage whole(Visit visit, Now now, Session.Upload upload) {
        return switch (visit.common.projects().read(upload.name(), upload.bytes())) {
            case Opening.Opened opened ->
                SpreadsheetPage.whole(
                        upload.name(),
                        ProjectDifference.of(now.project(), opened.file().project()),
                        now.revision());
            case Opening.Refused refused ->
                SpreadsheetPage.none(upload.name(), refused.errors().getFirst().text());
            case Opening.Unreadable unreadable -> SpreadsheetPage.none(upload.name(), unreadable.why());
        };
    }

    /** The list as it is said to be; columns count only where they were said of this sheet and kind. */
    private static Optional<FoundTable> found(
            Now now, SheetReading.Read read, Function<String, @Nullable String> said) {
        String sheet = said.apply("sheet") == null ? "" : String.valueOf(said.apply("sheet"));
        String as = said.apply("as") == null ? "" : String.valueOf(said.apply("as"));
        boolean known = read.sheets().stream().anyMatch(each -> each.name().equals(sheet));
        FoundTable.Wish wish =
                new FoundTable.Wish(known ? sheet : "", ListKind.find(as).orElse(null));
        String was = said.apply("was");
        boolean other = was != null && !was.equals(sheet + "/" + as);
        Optional<FoundTable> found = FoundTable.find(now.study(), read.sheets(), wish);
        if (other || found.isEmpty()) {
            return found;
        }
        Map<String, String> columns = new LinkedHashMap<>();
        List<String> fields = found.get().kind().columns().stream()
                .map(column -> column.key())
                .toList();
        for (int i = 0; i < found.get().guess().columns().size(); i++) {
            String field = said.apply("c-" + FoundTable.letter(i));
            if (field != null && (field.isEmpty() || fields.contains(field))) {
                columns.put(FoundTable.letter(i), field);
            }
        }
        return found.map(each -> each.with(columns));
    }

    private static void take(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Session.Upload upload = visit.session.upload(job.id());
        if (upload == null || !(SheetReader.read(upload.name(), upload.bytes()) instanceof SheetReading.Read read)) {
            visit.goOn(
                    home(job), new Session.Notice("The spreadsheet is not here any more. Send it again.", true, false));
            return;
        }
        long base = visit.number("base");
        if (visit.field("as").isEmpty() && ProjectBook.isProject(read.sheets())) {
            if (visit.common.projects().read(upload.name(), upload.bytes()) instanceof Opening.Opened opened) {
                Project other = opened.file().project();
                String says = "Took over " + upload.name();
                visit.goOn(home(job), Said.of(job.takeOver(visit.author(), base, says, other), says));
                return;
            }
            visit.goOn(home(job), new Session.Notice("The workbook does not read as a project.", true, false));
            return;
        }
        Optional<FoundTable> found = found(now, read, name -> visit.ctx.formParam(name));
        if (found.isEmpty()) {
            visit.goOn(home(job), new Session.Notice("There are no rows in it.", true, false));
            return;
        }
        SheetImport taken = SheetImport.of(now.study(), found.get());
        visit.goOn(home(job), Said.of(job.edit(visit.author(), base, taken.says(), taken.changes()), taken.says()));
    }

    private static void workbook(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        visit.ctx
                .header("Content-Disposition", "attachment; filename=\"" + job.id() + ".xlsx\"")
                .contentType(TYPE)
                .result(ProjectBook.write(job.now().project()));
    }
}
