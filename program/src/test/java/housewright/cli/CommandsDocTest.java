package housewright.cli;

import housewright.check.Rule;
import housewright.finding.Severity;
import housewright.study.RuleCatalogue;
import housewright.testing.Golden;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The pages under docs that are made from the program. */
class CommandsDocTest {

    @Test
    void thePageOfCommandsIsCurrent() {
        StringBuilder page = new StringBuilder("""
                # Commands

                Made from the program by `CommandsDocTest`; `housewright help COMMAND` prints the same.
                """);
        CommandLine commands = Terminal.plain()
                .cli(Terminal.stream(new ByteArrayOutputStream()), Terminal.stream(new ByteArrayOutputStream()))
                .commands();
        page.append("\n```\n").append(usage(commands)).append("```\n");
        Map<String, CommandLine> shown = new LinkedHashMap<>(commands.getSubcommands());
        shown.values()
                .removeIf(command -> command.getCommandSpec().usageMessage().hidden());
        shown.forEach((name, command) -> page.append("\n## ")
                .append(name)
                .append("\n\n```\n")
                .append(usage(command))
                .append("```\n"));
        Golden.hold(Path.of("../docs/commands.md"), page.toString());
    }

    private static String usage(CommandLine command) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        command.usage(Terminal.stream(bytes), CommandLine.Help.Ansi.OFF);
        return bytes.toString(StandardCharsets.UTF_8)
                        .lines()
                        .map(String::stripTrailing)
                        .collect(Collectors.joining("\n"))
                + "\n";
    }

    @Test
    void thePageOfRulesIsCurrent() {
        StringBuilder page = new StringBuilder("""
                # Rules

                Made from the program by `CommandsDocTest`. **stop**: somebody could be hurt, something would be damaged, or the job fails
                on the day. **fix**: settle it before the visit. **note**: worth knowing. A finding is counted, and shown only from the
                stage of the job on at which it is due. A project switches a rule off for a subject under `exempt`, with the reason, and
                holds the first limit of a rule tighter under `project: {rules: {tighten: {rule: limit}}}`, in the unit given here.

                | rule | asks | limits | severity | due from | source |
                |---|---|---|---|---|---|
                """);
        for (Rule rule : RuleCatalogue.all()) {
            Rule.Card card = rule.card();
            String severities = Arrays.stream(Severity.values())
                    .filter(card.severities()::contains)
                    .map(Severity::word)
                    .collect(Collectors.joining(", "));
            page.append("| `")
                    .append(card.id())
                    .append("` | ")
                    .append(card.question())
                    .append(" | ")
                    .append(card.limits().stream().map(Rule.Limit::text).collect(Collectors.joining("; ")))
                    .append(" | ")
                    .append(severities)
                    .append(" | ")
                    .append(card.due().word())
                    .append(" | ")
                    .append(card.source().text())
                    .append(" |\n");
        }
        Golden.hold(Path.of("../docs/rules.md"), page.toString());
    }
}
