package housewright.cli;

import housewright.app.ProjectFile;
import housewright.app.WorkDocument;
import housewright.study.Study;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The tasks of a project. */
@Command(
        name = "work",
        header = "Lists the tasks that the change from today to the target implies, and the project's own.",
        description = {
            "Says of each task how long it takes (least, likely, most), who and what it needs, what comes first, and which feeds stop with it. With TASK: everything that is known of one. Lengths are sums of labour units, common practice where the project's practice says nothing else.",
            "Exit status: 0 listed, 2 there is no such file or task."
        })
final class WorkCommand extends FileCommand {
    @Parameters(index = "1", arity = "0..1", paramLabel = "TASK", description = "Id of a task, such as pull-C501.")
    @Nullable
    String task;

    @Option(names = "--all", description = "Leave nothing out of long lists.")
    boolean all;

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    WorkCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        Study study = desk.study(project, false);
        desk.during("Working the tasks out", study::work);
        String asked = task;
        if (asked != null && study.work().find(asked).isEmpty()) {
            return desk.refuse(project.name() + " has no task " + asked + "; "
                    + Desk.nearest(
                            asked,
                            study.work().tasks().stream().map(each -> each.id()).toList(),
                            "housewright work " + quoted() + " lists them."));
        }
        if (json) {
            desk.print(WorkDocument.of(study));
        } else if (asked != null) {
            desk.print(new WorkText(desk.page(), study, quoted(), all)
                    .one(study.work().find(asked).orElseThrow()));
        } else {
            desk.print(new WorkText(desk.page(), study, quoted(), all).write());
        }
        return Status.FINE;
    }
}
