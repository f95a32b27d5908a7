package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Opening;
import housewright.app.Outcome;
import housewright.app.ProjectStore.Kept;
import housewright.app.Saving;
import housewright.app.StoreException;
import housewright.model.Project;
import housewright.web.page.OverviewPage.FileNews;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The file on this machine that a project was begun from: whether it changed, taking it over, writing it back. */
final class OriginFile {
    private OriginFile() {}

    static List<Route> routes() {
        return List.of(
                Route.change("/p/{project}/file/take-over", Need.LEAD, OriginFile::takeOver),
                Route.change("/p/{project}/file/write", Need.LEAD, OriginFile::write));
    }

    private static Optional<String> name(Visit visit, OpenProject job) throws StoreException {
        return visit.common.projects().list().stream()
                .filter(kept -> kept.id().equals(job.id()))
                .map(Kept::origin)
                .filter(OriginFile::isPath)
                .findFirst();
    }

    /** What a browser sent has only a name. */
    private static boolean isPath(@Nullable String origin) {
        return origin != null && (origin.startsWith("/") || origin.matches("[A-Za-z]:[/\\\\].*"));
    }

    /** What the lead is told of the file; others do not see this machine's files. */
    static @Nullable FileNews news(Visit visit, OpenProject job) throws StoreException {
        Optional<String> name = visit.session.role.mayDoAll() ? name(visit, job) : Optional.empty();
        if (name.isEmpty()) {
            return null;
        }
        String file = name.get();
        Now now = job.now();
        return switch (visit.common.projects().openFile(file)) {
            case Opening.Unreadable unreadable -> new FileNews(file, unreadable.why(), false, false);
            case Opening.Refused refused ->
                new FileNews(
                        file,
                        "It is no project file any more: "
                                + refused.errors().getFirst().text(),
                        false,
                        false);
            case Opening.Opened opened ->
                told(visit, job, file, now, opened.file().project());
        };
    }

    private static FileNews told(Visit visit, OpenProject job, String file, Now now, Project onDisk)
            throws StoreException {
        if (onDisk.equals(now.project())) {
            return new FileNews(file, "It is as this project is.", false, false);
        }
        Optional<Now> known = job.findAt(Math.max(1, visit.common.projects().lastSame(job.id())));
        boolean changed = known.isPresent() && !known.get().project().equals(onDisk);
        return changed
                ? new FileNews(
                        file,
                        "It was changed outside since it was taken over. Take it over, or write this project over it.",
                        true,
                        true)
                : new FileNews(file, "This project has changes that the file has not.", false, true);
    }

    private static void takeOver(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        String file = name(visit, job).orElseThrow(() -> Refused.wrong("This project was not begun from a file."));
        switch (visit.common.projects().openFile(file)) {
            case Opening.Unreadable unreadable ->
                visit.goOn(Visit.home(job), new Session.Notice(unreadable.why(), true, false));
            case Opening.Refused refused ->
                visit.goOn(
                        Visit.home(job),
                        new Session.Notice(
                                "Nothing was taken over: "
                                        + refused.errors().getFirst().text(),
                                true,
                                false));
            case Opening.Opened opened -> {
                Outcome outcome = job.takeOver(
                        visit.author(),
                        visit.number("base"),
                        "Taken over from " + file,
                        opened.file().project());
                if (outcome instanceof Outcome.Accepted accepted) {
                    visit.common.projects().noteSame(job.id(), accepted.now().revision());
                }
                visit.settle(job, outcome, "Taken over from " + file);
            }
        }
    }

    private static void write(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        String file = name(visit, job).orElseThrow(() -> Refused.wrong("This project was not begun from a file."));
        FileNews news = news(visit, job);
        if (news != null && news.changed() && !visit.field("over").equals("yes")) {
            visit.goOn(
                    Visit.home(job),
                    new Session.Notice(
                            file + " was changed outside since this page was shown. Nothing was written; choose again.",
                            true,
                            false));
            return;
        }
        Now now = job.now();
        Saving saving = visit.common.projects().writeBack(file, now.project());
        if (saving instanceof Saving.Saved) {
            visit.common.projects().noteSame(job.id(), now.revision());
        }
        Session.Notice notice = switch (saving) {
            case Saving.Saved saved -> new Session.Notice("Written to " + file + ".", false, false);
            case Saving.NotSaved not -> new Session.Notice(not.why(), true, false);
        };
        visit.goOn(Visit.home(job), notice);
    }
}
