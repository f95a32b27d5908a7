package housewright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Option;

/** What is shown without a command. */
@Command(
        name = "housewright",
        header =
                "Plans the refit of a hall's sound, light, picture and streaming, and proves on paper that every feed arrives.",
        synopsisSubcommandLabel = "COMMAND",
        description = "Begin with: housewright demo",
        subcommands = HelpCommand.class)
final class RootCommand {
    @Option(names = "--version", versionHelp = true, description = "Show the version.")
    boolean version;

    @Option(
            names = "--verbose",
            description = "Where Housewright itself fails, show where in the program.",
            scope = picocli.CommandLine.ScopeType.INHERIT)
    boolean verbose;
}
