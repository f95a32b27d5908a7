package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Role;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/** Where the code on a printed label leads. */
class LabelLinkTest {
    @Test
    void aLabelLeadsToItsThingAndSaysWhenThatIsGone() {
        try (Hall hall = Hall.demo()) {
            String home = "/p/" + hall.job().id();
            Visitor helper = Visitor.of(hall, Role.HELPER);
            HttpResponse<String> cable = helper.get(home + "/label/cables.C101");
            assertThat(cable.statusCode()).isEqualTo(303);
            String page = cable.headers().firstValue("Location").orElseThrow();
            assertThat(page).endsWith("/table/cables?row=C101#C101");
            assertThat(helper.get(page.substring(page.indexOf("/p/"), page.indexOf('#')))
                            .body())
                    .contains("C101");
            assertThat(helper.get(home + "/label/equipment.desk").statusCode()).isEqualTo(303);
            for (String gone : new String[] {"cables.C999", "cables.", ".", "desk", "patch.desk"}) {
                HttpResponse<String> answer = helper.get(home + "/label/" + gone);
                assertThat(answer.statusCode()).as(gone).isEqualTo(404);
            }
            assertThat(Visitor.stranger(hall).get(home + "/label/cables.C101").statusCode())
                    .isEqualTo(401);
            assertThat(hall.faults()).isEmpty();
        }
    }
}
