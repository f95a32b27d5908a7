package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Author;
import housewright.app.OpenProject;
import housewright.app.Role;
import housewright.model.About;
import housewright.model.Exemption;
import housewright.model.Feed;
import housewright.model.Project;
import housewright.model.Question;
import housewright.model.Remarks;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Words of a project are words on every page, whatever they look like. */
class EscapingTest {
    private static final String HOSTILE =
            "<hostile-tag a='1'>\" hostile-attribute=\"1\" ' hostile-attribute='1' & \u202E";

    private static final Pattern TAG = Pattern.compile("<[a-zA-Z/](?:\"[^\"]*\"|'[^']*'|[^>\"'])*>");

    /** Every tag without the values of its attributes. */
    private static List<String> tags(String html) {
        return TAG.matcher(html)
                .results()
                .map(found -> found.group().replaceAll("\"[^\"]*\"|'[^']*'", ""))
                .toList();
    }

    @Test
    void hostileWordsStayWordsOnEveryPage() throws Exception {
        try (Hall hall = Hall.demo()) {
            OpenProject job = hall.job();
            Project project = job.now().project();
            Remarks remarks = new Remarks(null, HOSTILE, List.of(HOSTILE), null, HOSTILE);
            Feed feed = project.feeds().get("lectern-to-hall");
            About about = project.about();
            Author hostile = new Author(HOSTILE, Role.LEAD);
            hall.edit(
                    hostile,
                    HOSTILE,
                    new Change.Put(
                            Section.QUESTIONS, "q9", new Question("q9", null, null, HOSTILE, null, HOSTILE, remarks)),
                    new Change.Put(
                            Section.FEEDS,
                            feed.id(),
                            new Feed(
                                    feed.id(),
                                    feed.never(),
                                    feed.from(),
                                    feed.to(),
                                    feed.carries(),
                                    feed.within(),
                                    feed.through(),
                                    feed.test(),
                                    remarks)),
                    new Change.Exempt(List.of(new Exemption("fire-class-too-low", null, HOSTILE))),
                    new Change.Describe(new About(
                            HOSTILE,
                            about.stage(),
                            about.library(),
                            about.currency(),
                            about.timeZone(),
                            about.mains(),
                            about.picture(),
                            about.air(),
                            about.rules(),
                            List.of(HOSTILE),
                            remarks)));
            hall.server.common().links().make(HOSTILE, Role.VIEWER, Hall.TODAY);
            hall.projects.store().see(job.id(), "lead", 1);
            Visitor lead = Visitor.of(hall, Role.LEAD);
            int shown = 0;
            for (Pages.Shown page : Pages.of(hall)) {
                String html = lead.get(page.path()).body();
                shown += html.contains("&lt;hostile-tag") ? 1 : 0;
                assertThat(html).as(page.name()).doesNotContain("<hostile-tag");
                assertThat(tags(html)).as(page.name()).isNotEmpty().noneMatch(tag -> tag.contains("hostile"));
            }
            assertThat(shown).as("pages that show the words at all").isGreaterThan(6);
            assertThat(hall.faults()).isEmpty();
        }
    }
}
