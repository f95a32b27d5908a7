package housewright.cli;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.OwnProjects;
import housewright.app.ProjectStore.Kept;
import housewright.app.Projects;
import housewright.app.Saving;
import housewright.app.StoreException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A kept project as a file. */
@Command(
        name = "export",
        header = "Writes a project that is kept for the browser as a project file.",
        description = {
            "Without an option it is printed. PROJECT is a name or id as the list of projects shows it; it may be left"
                    + " out where there is only one.",
            "It can be used while serve runs."
        })
final class ExportCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PROJECT", arity = "0..1", description = "Its name or id.")
    @Nullable
    String project;

    @Option(names = "--to", paramLabel = "FILE", description = "Write it into a new file.")
    @Nullable
    String to;

    @Option(
            names = "--back",
            description = "Write it over the file that it was begun from; comments and order of the file stay.")
    boolean back;

    private final Desk desk;
    private final OwnProjects own;

    ExportCommand(Desk desk, OwnProjects own) {
        this.desk = desk;
        this.own = own;
    }

    @Override
    public Integer call() {
        try {
            Projects projects = own.open();
            try {
                return export(projects);
            } finally {
                projects.store().close();
            }
        } catch (StoreException e) {
            return desk.refuse(e.why());
        }
    }

    private int export(Projects projects) throws StoreException {
        List<Kept> all = projects.list();
        Optional<Kept> kept = all.stream()
                .filter(each -> project == null
                        ? all.size() == 1
                        : each.id().equals(project) || each.name().equals(project))
                .findFirst();
        if (kept.isEmpty()) {
            return desk.refuse(missing(all));
        }
        OpenProject opened = projects.find(kept.get().id()).orElseThrow();
        if (back) {
            String origin = kept.get().origin();
            if (origin == null) {
                return desk.refuse("This project was not begun from a file; name one with --to.");
            }
            Now now = opened.now();
            Saving saving = projects.writeBack(origin, now.project());
            if (saving instanceof Saving.Saved) {
                projects.noteSame(opened.id(), now.revision());
            }
            return said(saving, origin);
        }
        String text = Projects.text(opened.now().project());
        if (to != null) {
            return said(desk.files.create(to, text), to);
        }
        desk.out.print(text);
        desk.out.flush();
        return Status.FINE;
    }

    private int said(Saving saving, String file) {
        return switch (saving) {
            case Saving.NotSaved not -> desk.refuse(not.why());
            case Saving.Saved saved -> {
                desk.print(desk.page().line("Written to " + file + "."));
                yield Status.FINE;
            }
        };
    }

    private String missing(List<Kept> all) {
        if (all.isEmpty()) {
            return "No project is kept yet; housewright serve begins one.";
        }
        List<String> ids = all.stream().map(Kept::id).toList();
        if (project == null) {
            return "Say which project: " + String.join(", ", ids) + ".";
        }
        return "No project " + project + " is kept; " + Desk.instead(project, ids, "there are ", "there are none.");
    }
}
