package housewright.cli;

import housewright.app.ProjectFile;
import housewright.app.Saving;
import housewright.file.ProjectBook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A whole project as a workbook. */
@Command(
        name = "workbook",
        header =
                "Writes a whole project as a workbook, a sheet for each section; reading it back gives the same project.",
        description = {
            "Every command that reads a project file reads such a workbook, too; changed in a spreadsheet program, it goes back into the project file with: housewright import FILE hall.xlsx --apply. The same project gives the same bytes.",
            "Exit status: 0 written, 2 there is no such file, or it cannot be written."
        })
final class WorkbookCommand extends FileCommand {
    @Option(names = "--out", required = true, paramLabel = "WORKBOOK", description = "The new file, such as hall.xlsx.")
    String out = "";

    WorkbookCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        if (!out.toLowerCase(java.util.Locale.ROOT).endsWith(".xlsx")) {
            return desk.refuse("A workbook's name ends in .xlsx, and --out is " + out + ".");
        }
        if (desk.files.create(out, ProjectBook.write(project.project())) instanceof Saving.NotSaved not) {
            return desk.refuse(not.why());
        }
        desk.print(desk.page()
                .wrapped(out + " is the whole project, a sheet for each section. What is changed in it goes back with:")
                .line("  housewright import " + quoted() + " " + quoted(out) + " --apply"));
        return Status.FINE;
    }
}
