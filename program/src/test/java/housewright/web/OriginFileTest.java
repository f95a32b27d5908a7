package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Demo;
import housewright.app.Opening;
import housewright.app.Role;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file that a project was begun from. */
class OriginFileTest {
    @TempDir
    Path folder;

    @Test
    void whatChangedOnEitherSideIsToldAndCanBeTakenOrWritten() throws Exception {
        Path file = folder.resolve("hall.yaml");
        Files.write(file, Demo.bytes());
        try (Hall hall = Hall.empty()) {
            Opening opening = hall.projects.openFile(file.toString());
            assertThat(opening).isInstanceOf(Opening.Opened.class);
            hall.projects.begin(((Opening.Opened) opening).file(), Hall.LEAD);
            String job = "/p/" + hall.job().id();
            Visitor lead = Visitor.of(hall, Role.LEAD);
            assertThat(lead.get(job).body()).contains("It is as this project is.");

            hall.edit(Hall.LEAD, "Took q8 out", new Change.Drop(Section.QUESTIONS, "q8"));
            assertThat(lead.get(job).body()).contains("has changes that the file has not");
            lead.post(job + "/file/write", Map.of());
            assertThat(Files.readString(file)).contains("# Carrowfenn Hall").doesNotContain("  q8:");

            hall.edit(Hall.LEAD, "Took q7 out", new Change.Drop(Section.QUESTIONS, "q7"));
            assertThat(lead.get(job).body()).as("written meanwhile").contains("has changes that the file has not");

            Files.writeString(file, Files.readString(file).replace("Has the interpreter", "Had the interpreter"));
            assertThat(lead.get(job).body()).contains("It was changed outside");
            String elsewhere = Files.readString(file);
            lead.post(job + "/file/write", Map.of());
            assertThat(lead.get(job).body()).contains("was changed outside since this page was shown");
            assertThat(file).as("by whoever saw a page from before").hasContent(elsewhere);
            lead.post(
                    job + "/file/take-over",
                    Map.of("base", Long.toString(hall.job().now().revision())));
            assertThat(hall.job().now().project().questions().get("q6").asks()).startsWith("Had the interpreter");
            assertThat(lead.get(job).body()).contains("It is as this project is.");
            hall.edit(Hall.LEAD, "Took q5 out", new Change.Drop(Section.QUESTIONS, "q5"));
            assertThat(lead.get(job).body()).as("taken over meanwhile").contains("has changes that the file has not");
            assertThat(Visitor.of(hall, Role.HELPER).get(job).body()).doesNotContain(file.toString());
        }
    }
}
