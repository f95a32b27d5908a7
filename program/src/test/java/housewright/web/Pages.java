package housewright.web;

import housewright.app.Author;
import housewright.app.Demo;
import housewright.app.OpenProject;
import housewright.app.Role;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.List;

/** The pages there are, for the tests that look at each. */
final class Pages {
    /** The lectern's lead: without it the demo's first feed is broken. */
    private static final String BROKEN_BY = "C101";

    private Pages() {}

    /** @param name of its picture */
    record Shown(String name, String path) {}

    /** A server with the demo, and something to see on each page. */
    static Hall inUse() {
        Hall hall = Hall.demo();
        OpenProject job = hall.job();
        Project project = job.now().project();
        Author helper = new Author("ben", Role.HELPER);
        Question q5 = project.questions().get("q5");
        Question answered = new Question(
                q5.id(), q5.to(), q5.about(), q5.asks(), q5.due(), "Yes, on phase L1 with db1-4.", q5.remarks());
        hall.edit(helper, "Answered q5", new Change.Put(Section.QUESTIONS, "q5", answered));
        hall.edit(Hall.LEAD, "Took C101 out", new Change.Drop(Section.CABLES, BROKEN_BY));
        return hall;
    }

    static List<Shown> of(Hall hall) {
        String job = "/p/" + hall.job().id();
        return List.of(
                new Shown("overview", job),
                new Shown("table-places", job + "/table/places"),
                new Shown("table-equipment", job + "/equipment"),
                new Shown("table-cables", job + "/cables"),
                new Shown("table-patch", job + "/patch"),
                new Shown("table-feeds", job + "/table/feeds"),
                new Shown("table-people", job + "/people"),
                new Shown("feeds", job + "/feeds"),
                new Shown("feed-proven", job + "/feeds/words-to-screen"),
                new Shown("feed-broken", job + "/feeds/" + Demo.FEED),
                new Shown("signal-lit", job + "/signal?system=sound&feed=words-to-screen&thing=equipment:desk"),
                new Shown("signal-broken", job + "/signal?feed=" + Demo.FEED),
                new Shown("signal", job + "/signal"),
                new Shown("venue", job + "/venue?thing=place:desk"),
                new Shown("venue-side", job + "/venue?side=hall"),
                new Shown("racks", job + "/racks"),
                new Shown("findings", job + "/findings"),
                new Shown("questions", job + "/questions"),
                new Shown("spreadsheet", job + "/spreadsheet"),
                new Shown("answers", job + "/answers"),
                new Shown("papers", job + "/papers"),
                new Shown("paper", job + "/papers/cable-schedule"),
                new Shown("history", job + "/history"),
                new Shown("revision", job + "/history/2"),
                new Shown("sharing", "/sharing"),
                new Shown("help", "/help"),
                new Shown("projects", "/"));
    }

    static List<Shown> ofEmpty() {
        return List.of(new Shown("begin", "/"));
    }
}
