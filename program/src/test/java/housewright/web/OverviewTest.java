package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Author;
import housewright.app.Role;
import housewright.model.change.Change;
import housewright.model.change.Section;
import org.junit.jupiter.api.Test;

/** The overview, asked without a browser. */
class OverviewTest {
    @Test
    void whatTakesLongComesAfterTheRestAndIsSaidAtOnceWhenItIsKnown() throws Exception {
        try (Hall hall = Hall.demo()) {
            Visitor viewer = Visitor.of(hall, Role.VIEWER);
            String at = "/p/" + hall.job().id();
            String id = hall.job().now().project().cables().keySet().iterator().next();
            hall.edit(new Author("lead", Role.LEAD), "Take " + id + " out", new Change.Drop(Section.CABLES, id));
            assertThat(viewer.get(at).body())
                    .contains("what is to be ordered is being worked out", "hx-get=\"" + at + "/facts\"")
                    .doesNotContain("lines to order");
            assertThat(viewer.get(at + "/facts").body())
                    .contains("lines to order")
                    .doesNotContain("being worked out", "hx-get=");
            assertThat(viewer.get(at).body())
                    .contains("lines to order")
                    .doesNotContain("being worked out", "hx-get=\"" + at + "/facts\"");
        }
    }
}
