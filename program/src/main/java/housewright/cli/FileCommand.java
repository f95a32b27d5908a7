package housewright.cli;

import housewright.app.ProjectFile;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Parameters;

/** A command on a project file. */
abstract class FileCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "Project file, YAML or JSON; - reads standard input.")
    String file = "";

    final Desk desk;

    FileCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        @Nullable ProjectFile project = desk.open(file);
        return project == null ? Status.CANNOT : run(project);
    }

    /** With the project read; its answer is the exit status. */
    abstract int run(ProjectFile project);

    String quoted() {
        return quoted(file);
    }

    /** As it must be typed in a shell. */
    static String quoted(String name) {
        return name.chars().allMatch(c -> c > 127 || Character.isLetterOrDigit(c) || "-_./+:@".indexOf(c) >= 0)
                ? name
                : "'" + name.replace("'", "'\\''") + "'";
    }
}
