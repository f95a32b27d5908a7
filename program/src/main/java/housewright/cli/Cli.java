package housewright.cli;

import housewright.app.OwnProjects;
import housewright.app.ProjectFiles;
import housewright.app.Server;
import housewright.app.TypeSearch;
import housewright.model.Library;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The command line, for a program with one set of streams. */
public final class Cli {
    private final Desk desk;
    private final OwnProjects own;
    private final String version;

    /**
     * @param out takes UTF-8
     * @param err takes UTF-8
     * @param version as {@code --version} prints it
     */
    public Cli(
            Library library,
            ProjectFiles files,
            TypeSearch types,
            Server server,
            OwnProjects own,
            PrintStream out,
            PrintStream err,
            Screen screen,
            String version) {
        this.desk = new Desk(library, files, types, server, out, err, screen);
        this.own = own;
        this.version = version;
    }

    /** Runs a command and gives its exit status: 0 fine, 1 something stops the job, 2 it cannot be done. */
    public int run(List<String> arguments) {
        return commands().execute(arguments.toArray(new String[0]));
    }

    /** All commands, for running them and for describing them. */
    CommandLine commands() {
        RootCommand root = new RootCommand();
        CommandLine commands = new CommandLine(root)
                .addSubcommand(new ServeCommand(desk))
                .addSubcommand(new ExportCommand(desk, own))
                .addSubcommand(new CheckCommand(desk))
                .addSubcommand(new TraceCommand(desk))
                .addSubcommand(new MendCommand(desk))
                .addSubcommand(new WorkCommand(desk))
                .addSubcommand(new OrdersCommand(desk))
                .addSubcommand(new PlanCommand(desk))
                .addSubcommand(new PapersCommand(desk))
                .addSubcommand(new ImportCommand(desk))
                .addSubcommand(new WorkbookCommand(desk))
                .addSubcommand(new QuestionsCommand(desk))
                .addSubcommand(new AnswersCommand(desk))
                .addSubcommand(new DrawingsCommand(desk))
                .addSubcommand(new LibraryCommand(desk))
                .addSubcommand(new DemoCommand(desk))
                .addSubcommand(new RehearseCommand(desk, own));
        commands.getCommandSpec().version(version).addOption(help());
        spread(commands.getCommandSpec());
        commands.getSubcommands().values().forEach(each -> spread(each.getCommandSpec()));
        commands.getSubcommands().values().stream()
                .map(CommandLine::getCommandSpec)
                .filter(spec -> !spec.helpCommand())
                .forEach(spec -> spec.addOption(help()));
        return Said.read(commands)
                .setOut(new PrintWriter(desk.out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(desk.err, true, StandardCharsets.UTF_8))
                .setColorScheme(Help.defaultColorScheme(desk.screen.colour() ? Ansi.ON : Ansi.OFF))
                .setUsageHelpWidth(Page.WIDTH)
                .setExecutionExceptionHandler((e, line, result) -> fault(e, root.verbose))
                .setExecutionStrategy(this::execute);
    }

    /** Air between the parts of a help text. */
    private static void spread(CommandSpec spec) {
        spec.usageMessage()
                .synopsisHeading("%n")
                .descriptionHeading("%n")
                .parameterListHeading("%n")
                .optionListHeading("%n")
                .commandListHeading("%n");
    }

    private static OptionSpec help() {
        return OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description("Show what it does and what it takes.")
                .build();
    }

    /** Without a command, help is an answer only to who asked for it. */
    private int execute(ParseResult result) {
        if (!result.hasSubcommand() && !result.isUsageHelpRequested() && !result.isVersionHelpRequested()) {
            result.commandSpec()
                    .commandLine()
                    .usage(desk.err, result.commandSpec().commandLine().getColorScheme());
            return Status.CANNOT;
        }
        return new CommandLine.RunLast().execute(result);
    }

    private int fault(Exception e, boolean verbose) {
        if (verbose) {
            e.printStackTrace(desk.err);
        }
        return desk.refuse("This is a fault in Housewright, not in your file: " + e + ". Nothing was changed."
                + (verbose ? "" : " Run it again with --verbose to see where, and please report it."));
    }
}
