package housewright.cli;

import housewright.app.Demo;
import housewright.app.Opening;
import housewright.app.ProjectFile;
import housewright.app.Saving;
import housewright.app.Server;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The demo project, for whoever sees Housewright for the first time. */
@Command(
        name = "demo",
        header = "Opens the demo project in a browser: an invented hall, today and after its refit.",
        description = {
            "Nothing of what is changed in it is kept. With --check, --today, --json or --all it is checked and the result printed;",
            "with --write it gives you the file to read, to trace, and to break and mend."
        })
final class DemoCommand implements Callable<Integer> {
    @Option(names = "--write", paramLabel = "FILE", description = "Write the demo project into a new file.")
    @Nullable
    String write;

    @Option(names = "--check", description = "Check it and print the result, without a browser.")
    boolean check;

    @Option(names = "--today", description = "Ask about the hall as it is today, before the work.")
    boolean today;

    @Option(names = "--json", description = "Print the result as JSON, for programs.")
    boolean json;

    @Option(names = "--all", description = "Leave nothing out of long lists.")
    boolean all;

    @Mixin
    ServeOptions options = new ServeOptions();

    private final Desk desk;

    DemoCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        byte[] bytes = Demo.bytes();
        if (write != null) {
            if (desk.files.create(write, new String(bytes, StandardCharsets.UTF_8)) instanceof Saving.NotSaved not) {
                return desk.refuse(not.why());
            }
            String name = FileCommand.quoted(write);
            desk.print(desk.page()
                    .wrapped(write + " is the demo project. Break it, and see what becomes of it:")
                    .line("  housewright check " + name)
                    .line("  housewright trace " + name + " " + Demo.FEED));
            return Status.FINE;
        }
        if (!check && !today && !json && !all) {
            String wrong = options.wrong();
            return wrong != null
                    ? desk.refuse(wrong)
                    : Serving.serve(desk, new Server.Wish(null, true, options.port, options.share), !options.noBrowser);
        }
        return switch (desk.files.read(Demo.FILE_NAME, bytes)) {
            case Opening.Opened opened -> show(opened.file());
            case Opening.Refused refused ->
                throw new IllegalStateException(refused.errors().toString());
            case Opening.Unreadable unreadable -> throw new IllegalStateException(unreadable.why());
        };
    }

    private int show(ProjectFile demo) {
        int status = CheckCommand.show(desk, demo, Demo.FILE_NAME, today, json, all);
        if (!json) {
            desk.print(desk.page().line("First: housewright demo --write " + Demo.FILE_NAME + "   gives you the file"));
        }
        return status;
    }
}
