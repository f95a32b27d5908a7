package housewright.cli;

import picocli.CommandLine.Option;

/** A command on what is proven of a project, in the target or today. */
abstract class ProofCommand extends FileCommand {
    @Option(names = "--today", description = "Ask about the hall as it is today, before the work.")
    boolean today;

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    ProofCommand(Desk desk) {
        super(desk);
    }
}
