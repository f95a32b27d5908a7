package housewright.cli;

import housewright.app.Opening;
import housewright.app.ProjectFile;
import housewright.app.ProjectFiles;
import housewright.app.Server;
import housewright.app.TypeSearch;
import housewright.file.FileError;
import housewright.file.Nearest;
import housewright.model.Library;
import housewright.signal.FeedProof;
import housewright.signal.Moment;
import housewright.study.Study;
import java.io.PrintStream;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What all commands share: the use cases they call, and where their lines go. */
final class Desk {
    private static final int MOST_ERRORS = 50;

    final ProjectFiles files;
    final TypeSearch types;
    final Server server;
    final PrintStream out;
    final PrintStream err;
    final Screen screen;
    final Library library;

    Desk(
            Library library,
            ProjectFiles files,
            TypeSearch types,
            Server server,
            PrintStream out,
            PrintStream err,
            Screen screen) {
        this.library = library;
        this.files = files;
        this.types = types;
        this.server = server;
        this.out = out;
        this.err = err;
        this.screen = screen;
    }

    Page page() {
        return new Page(screen.colour(), screen.columns());
    }

    void print(Page page) {
        out.print(page);
        out.flush();
    }

    void print(Record document) {
        out.print(Json.write(document));
        out.flush();
    }

    /** Says that something cannot be done. */
    int refuse(String why) {
        err.print(new Page(false, screen.columns()).wrapped(why));
        err.flush();
        return Status.CANNOT;
    }

    /** The project of the file, or null with everything said that is wrong with it. */
    @Nullable
    ProjectFile open(String name) {
        return opened(name, during("Reading " + name, () -> files.open(name)));
    }

    /** The project with the log of a file of its own, or null with everything said that is wrong with it. */
    @Nullable
    ProjectFile openLog(String name, ProjectFile project) {
        return opened(name, files.openLog(name, project));
    }

    private @Nullable ProjectFile opened(String name, Opening opening) {
        return switch (opening) {
            case Opening.Opened opened -> opened.file();
            case Opening.Unreadable unreadable -> {
                refuse(unreadable.why());
                yield null;
            }
            case Opening.Refused refused -> {
                report(name, refused.errors());
                yield null;
            }
        };
    }

    private void report(String name, List<FileError> errors) {
        StringBuilder lines = new StringBuilder();
        for (FileError error : errors.subList(0, Math.min(MOST_ERRORS, errors.size()))) {
            lines.append(error.text()).append('\n');
        }
        if (errors.size() > MOST_ERRORS) {
            lines.append("… and ").append(errors.size() - MOST_ERRORS).append(" more.\n");
        }
        String what = name.equals(ProjectFiles.STANDARD_INPUT) ? "Standard input" : name;
        lines.append(what).append(errors.size() == 1 ? " has an error; " : " has " + errors.size() + " errors; ");
        lines.append("nothing was checked.\n");
        err.print(lines);
        err.flush();
    }

    Study study(ProjectFile file, boolean today) {
        Study study = Study.of(file.project(), library);
        return today ? study.at(Moment.today()) : study;
    }

    /** Does work that may take a while, and says so to whoever waits. */
    <T extends @Nullable Object> T during(String what, Supplier<T> work) {
        return Progress.during(err, screen.watched(), what, Progress.PATIENCE, work);
    }

    /** The proof of a feed, or null with the nearest feed named. */
    @Nullable
    FeedProof find(Study study, ProjectFile file, String feed) {
        Optional<FeedProof> proof = study.findProof(feed);
        if (proof.isEmpty()) {
            refuse(file.name() + " has no feed " + feed + "; "
                    + instead(feed, file.project().feeds().keySet(), "its feeds are ", "it has no feeds yet."));
        }
        return proof.orElse(null);
    }

    /**
     * What is said after a word that stands for nothing: the nearest that does, else all.
     *
     * @param are goes before them, such as {@code "its sheets are "}
     * @param none where there are none at all
     */
    static String instead(String word, Collection<String> words, String are, String none) {
        List<String> known = words.stream().filter(each -> !each.isEmpty()).toList();
        return nearest(word, known, known.isEmpty() ? none : are + String.join(", ", known) + ".");
    }

    /** The same where all are too many to say. */
    static String nearest(String word, Collection<String> words, String otherwise) {
        String nearest = Nearest.find(word, List.copyOf(words));
        return nearest != null ? "did you mean " + nearest + "?" : otherwise;
    }
}
