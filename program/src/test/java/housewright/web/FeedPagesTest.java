package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Author;
import housewright.app.Demo;
import housewright.app.Role;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.net.URI;
import java.net.http.HttpRequest;
import org.junit.jupiter.api.Test;

/** The page of a feed, asked without a browser. */
class FeedPagesTest {
    @Test
    void aBrokenFeedIsShownAtOnceAndItsMendsComeWhenTheyAreFound() throws Exception {
        try (Hall hall = Hall.demo()) {
            Visitor lead = Visitor.of(hall, Role.LEAD);
            String home = "/p/" + hall.job().id();
            for (String at : new String[] {"/feeds/" + Demo.FEED, "/signal?feed=" + Demo.FEED}) {
                hall.edit(
                        new Author("lead", Role.LEAD),
                        "Take a cable out",
                        new Change.Drop(
                                Section.CABLES,
                                hall.job()
                                        .now()
                                        .project()
                                        .cables()
                                        .keySet()
                                        .iterator()
                                        .next()));
                assertThat(lead.get(home + at).body())
                        .as(at)
                        .contains("Looking for the cheapest way", "hx-select=\"#mends\"")
                        .doesNotContain("Apply this mend");
                String whole = lead.send(HttpRequest.newBuilder(URI.create(hall.origin() + home + at))
                                .header("X-Housewright-Part", "mends"))
                        .body();
                assertThat(whole).as(at).contains("Apply this mend").doesNotContain("Looking for the cheapest way");
                assertThat(lead.get(home + at).body()).as(at).contains("Apply this mend");
            }
        }
    }
}
