package housewright.cli;

import housewright.app.OrdersDocument;
import housewright.app.ProjectFile;
import housewright.study.Study;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is bought. */
@Command(
        name = "orders",
        header = "Lists what is to be bought and hired, of whom, by when, and what it comes to.",
        description = {
            "Groups the lines by supplier, with spares by a rule for each kind, the latest day to order, and what a late line holds up; says how cable is cut from its drums with the least left over, and what of that which goes could be used instead of buying. Spares, drums, freight and contingency are common practice where the project's practice says nothing else.",
            "Exit status: 0 listed and within the budget, 1 it costs more than there is or a delivery comes too late, 2 the file cannot be read."
        })
final class OrdersCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "Project file, YAML or JSON; - reads standard input.")
    String file = "";

    @Option(names = "--all", description = "Leave nothing out of long lists.")
    boolean all;

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    private final Desk desk;

    OrdersCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        @Nullable ProjectFile project = desk.open(file);
        if (project == null) {
            return Status.CANNOT;
        }
        Study study = desk.study(project, false);
        desk.during("Working the orders out", study::orders);
        if (json) {
            desk.print(OrdersDocument.of(study));
        } else {
            desk.print(new OrdersText(desk.page(), study, FileCommand.quoted(file), all).write());
        }
        return OrdersText.fails(study.orders()) ? Status.STOPS : Status.FINE;
    }
}
