package housewright.cli;

import housewright.app.OrdersDocument;
import housewright.app.ProjectFile;
import housewright.study.Study;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What is bought. */
@Command(
        name = "orders",
        header = "Lists what is to be bought and hired, of whom, by when, and what it comes to.",
        description = {
            "Groups the lines by supplier, with spares by a rule for each kind, the latest day to order, and what a late line holds up; says how cable is cut from its drums with the least left over, and what of that which goes could be used instead of buying. Spares, drums, freight and contingency are common practice where the project's practice says nothing else.",
            "Exit status: 0 listed and within the budget, 1 it costs more than there is or a delivery comes too late, 2 the file cannot be read."
        })
final class OrdersCommand extends FileCommand {
    @Option(names = "--all", description = "Leave nothing out of long lists.")
    boolean all;

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    OrdersCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        Study study = desk.study(project, false);
        desk.during("Working the orders out", study::orders);
        if (json) {
            desk.print(OrdersDocument.of(study));
        } else {
            desk.print(new OrdersText(desk.page(), study, quoted(), all).write());
        }
        return OrdersText.fails(study.orders()) ? Status.STOPS : Status.FINE;
    }
}
