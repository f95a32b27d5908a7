package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Role;
import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Names that are refused stay typed, with the reason above them. */
class KeptTypingTest {
    private static final String TOO_LONG = "x".repeat(121);

    private static String answer(Visitor visitor, String path, Map<String, String> fields) {
        HttpResponse<String> sent = visitor.post(path, fields);
        return visitor.get(sent.headers().firstValue("Location").orElseThrow()).body();
    }

    @Test
    void aPersonWhoIsInAlreadyIsTypedThereStillWithTheRole() {
        try (Hall hall = Hall.demo()) {
            Visitor lead = Visitor.of(hall, Role.LEAD);
            assertThat(lead.post("/sharing", Map.of("person", "Maria", "role", "viewer"))
                            .body())
                    .contains("For Maria, viewer");
            String page = answer(lead, "/sharing", Map.of("person", "Maria", "role", "lead"));
            assertThat(page)
                    .contains("Maria is in already")
                    .containsPattern("id=\"person\"[^>]*value=\"Maria\"")
                    .containsPattern("<option value=\"lead\" selected");
            assertThat(lead.get("/sharing").body())
                    .doesNotContain("value=\"Maria\"")
                    .doesNotContain("selected");
        }
    }

    @Test
    void aNameOfAProjectThatIsTooLongIsTypedThereStill() {
        try (Hall hall = Hall.demo()) {
            Visitor lead = Visitor.of(hall, Role.LEAD);
            assertThat(answer(lead, "/projects", Map.of("name", TOO_LONG)))
                    .contains("at most 120 characters")
                    .contains("value=\"" + TOO_LONG + "\"");
            assertThat(lead.get("/").body()).doesNotContain(TOO_LONG);
            assertThat(answer(lead, "/projects", Map.of("name", "A second hall")))
                    .contains("A second hall")
                    .doesNotContain("at most 120 characters");
        }
    }
}
