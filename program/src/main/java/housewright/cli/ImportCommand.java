package housewright.cli;

import housewright.app.Opening;
import housewright.app.ProjectFile;
import housewright.app.ProjectFiles.Loading;
import housewright.app.Saving;
import housewright.app.table.FoundTable;
import housewright.app.table.ImportDocument;
import housewright.app.table.ListKind;
import housewright.app.table.ProjectDifference;
import housewright.app.table.SheetImport;
import housewright.app.table.SheetImport.Does;
import housewright.app.table.SheetImport.Row;
import housewright.file.ProjectBook;
import housewright.file.ProjectText;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.sheet.Sheet;
import housewright.sheet.SheetReader;
import housewright.sheet.SheetReading;
import housewright.study.Study;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A list from a spreadsheet, shown or taken into a project file. */
@Command(
        name = "import",
        header = "Takes a list from a spreadsheet into a project: equipment, cables, an input list, addresses.",
        description = {
            "Reads .xlsx, .csv, .tsv and .txt. Guesses which sheet and rows are the list and which column is what, shows the guess, and says row by row what would be added, changed or refused and why. A row whose id or label is in the project changes that thing; nothing is taken away. A workbook that the command workbook has written is taken whole, with what is missing in it.",
            "Exit status: 0 every row can be taken, 1 some are refused, 2 it cannot be read or written."
        })
final class ImportCommand extends FileCommand {
    @Parameters(index = "1", paramLabel = "SPREADSHEET", description = "The spreadsheet to take from.")
    String spreadsheet = "";

    @Option(names = "--sheet", paramLabel = "NAME", description = "The sheet of the workbook; else it is found.")
    String sheet = "";

    @Option(
            names = "--as",
            paramLabel = "LIST",
            description =
                    "What it is a list of: equipment (addresses, too), cables, input-list, patch, places … ; else it is guessed.")
    @Nullable
    String as;

    @Option(
            names = "--columns",
            paramLabel = "HEAD=FIELD",
            split = ",",
            description =
                    "What columns are, where the guess is wrong: by what stands over them or their letter; HEAD= leaves one out. Several with commas between.")
    List<String> columns = List.of();

    @Option(names = "--apply", description = "Write it into FILE as one edit; everything else in it stays as it is.")
    boolean apply;

    @Option(names = "--all", description = "Leave nothing out of long lists.")
    boolean all;

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    ImportCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        return switch (desk.files.load(spreadsheet, SheetReader.MOST_BYTES + 1)) {
            case Loading.NotLoaded not -> desk.refuse(not.why());
            case Loading.Loaded loaded ->
                switch (desk.during("Reading " + spreadsheet, () -> SheetReader.read(spreadsheet, loaded.bytes()))) {
                    case SheetReading.Refused refused ->
                        desk.refuse(spreadsheet + " cannot be taken. " + refused.why());
                    case SheetReading.Read read ->
                        as == null && ProjectBook.isProject(read.sheets())
                                ? whole(project, loaded.bytes(), read.remarks())
                                : list(project, read);
                };
        };
    }

    private int list(ProjectFile project, SheetReading.Read read) {
        List<String> names = read.sheets().stream().map(Sheet::name).toList();
        if (!sheet.isEmpty() && !names.contains(sheet)) {
            return desk.refuse(spreadsheet + " has no sheet " + sheet + "; "
                    + Desk.instead(sheet, names, "its sheets are ", "there are none."));
        }
        ListKind kind = null;
        String wanted = as;
        if (wanted != null) {
            Optional<ListKind> found = ListKind.find(wanted);
            if (found.isEmpty()) {
                List<String> words = ListKind.all().stream().map(ListKind::word).toList();
                return desk.refuse("There are no lists of " + wanted + "; "
                        + Desk.instead(wanted, words, "there are ", "there are none."));
            }
            kind = found.get();
        }
        Study study = desk.study(project, false);
        FoundTable.Wish wish = new FoundTable.Wish(sheet, kind);
        Optional<FoundTable> table = FoundTable.find(study, read.sheets(), wish);
        if (table.isEmpty()) {
            return desk.refuse(spreadsheet + " has no rows to take.");
        }
        Map<String, String> said = new LinkedHashMap<>();
        for (String each : columns) {
            String wrong = column(table.get(), each, said);
            if (wrong != null) {
                return desk.refuse(wrong);
            }
        }
        FoundTable found = table.get().with(said);
        SheetImport taken = desk.during("Reading the rows", () -> SheetImport.of(study, found));
        boolean written = apply && !taken.changes().isEmpty();
        if (written) {
            Project after = Change.apply(project.project(), taken.changes());
            if (save(project, after) instanceof Saving.NotSaved not) {
                return desk.refuse(not.why());
            }
        }
        if (json) {
            desk.print(ImportDocument.of(spreadsheet, taken, read.remarks(), written));
        } else {
            desk.print(new ImportText(desk.page(), all).list(spreadsheet, taken, read.remarks(), written, command()));
        }
        return taken.count(Does.REFUSE) > 0 ? Status.STOPS : Status.FINE;
    }

    private Saving save(ProjectFile project, Project after) {
        return desk.files.replace(project, ProjectText.edit(project.text(), project.name(), project.project(), after));
    }

    /** Takes what is said of a column; null, or what is wrong with it. */
    private static @Nullable String column(FoundTable table, String said, Map<String, String> into) {
        int mark = said.lastIndexOf('=');
        if (mark < 1) {
            return "--columns takes HEAD=FIELD, and found \"" + said + "\".";
        }
        String head = said.substring(0, mark).strip();
        String field = said.substring(mark + 1).strip();
        if (table.column(head) < 0) {
            return "No column of " + table.sheet() + " has the head \"" + head + "\"; "
                    + Desk.instead(head, table.guess().head(), "its heads are ", "there are none.");
        }
        List<String> fields =
                table.kind().columns().stream().map(column -> column.key()).toList();
        if (!field.isEmpty() && !fields.contains(field)) {
            return table.kind().title() + " has no field " + field + "; "
                    + Desk.instead(field, fields, "it has ", "there are none.");
        }
        into.put(head, field);
        return null;
    }

    private String command() {
        StringBuilder command = new StringBuilder("housewright import ");
        command.append(quoted()).append(' ').append(quoted(spreadsheet));
        if (!sheet.isEmpty()) {
            command.append(" --sheet ").append(quoted(sheet));
        }
        if (as != null) {
            command.append(" --as ").append(as);
        }
        if (!columns.isEmpty()) {
            command.append(" --columns ").append(quoted(String.join(",", columns)));
        }
        return command + " --apply";
    }

    private int whole(ProjectFile project, byte[] bytes, List<String> remarks) {
        return switch (desk.files.read(spreadsheet, bytes)) {
            case Opening.Unreadable unreadable -> desk.refuse(unreadable.why());
            case Opening.Refused refused ->
                desk.refuse(refused.errors().stream()
                        .limit(20)
                        .map(error -> error.text())
                        .collect(Collectors.joining("\n")));
            case Opening.Opened opened -> {
                Project after = opened.file().project();
                List<Row> things = ProjectDifference.of(project.project(), after);
                boolean written = apply && !things.isEmpty();
                if (written && save(project, after) instanceof Saving.NotSaved not) {
                    yield desk.refuse(not.why());
                }
                if (json) {
                    desk.print(ImportDocument.of(spreadsheet, things, remarks, written));
                } else {
                    desk.print(new ImportText(desk.page(), all).whole(spreadsheet, things, written, command()));
                }
                yield Status.FINE;
            }
        };
    }
}
