package housewright.cli;

import housewright.app.CheckDocument;
import housewright.app.ProjectFile;
import housewright.study.Study;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The verdict on a project. */
@Command(
        name = "check",
        header = "Says whether every feed arrives, and what is wrong with the rest.",
        description = {
            "Proves on paper, for every feed of the project, that its signal arrives, or, for a never-feed, that it does not; and runs all rules.",
            "Exit status: 0 nothing stops the job, 1 a finding stops it or a feed is broken, 2 the file cannot be read."
        })
final class CheckCommand extends ProofCommand {
    @Option(names = "--all", description = "Leave nothing out of long lists.")
    boolean all;

    CheckCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        return show(desk, project, quoted(), today, json, all);
    }

    static int show(Desk desk, ProjectFile project, String name, boolean today, boolean json, boolean all) {
        Study study = desk.study(project, today);
        String what = "Proving " + project.project().feeds().size() + " feeds";
        if (json) {
            desk.print(desk.during(what, () -> CheckDocument.of(study)));
        } else {
            desk.print(desk.during(what, () -> new CheckText(desk.page(), study, name, all).write()));
        }
        return study.verdict().fails() ? Status.STOPS : Status.FINE;
    }
}
