package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.ProjectFiles;
import housewright.app.ProjectStore;
import housewright.app.Projects;
import housewright.app.Role;
import housewright.library.BuiltInLibrary;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.store.sqlite.SmallDisk;
import housewright.store.sqlite.SqliteStore;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages of a store that is not this server's alone to write. */
class StoreTest {
    @TempDir
    Path folder;

    @Test
    void whatAnotherProcessKeepsIsShownByTheNextPage() throws Exception {
        try (Hall hall = Hall.in(folder)) {
            hall.begin("demo.yaml", text -> text);
            String questions = "/p/" + hall.job().id() + "/questions";
            Visitor viewer = Visitor.of(hall, Role.VIEWER);
            assertThat(viewer.get(questions).body()).contains("id=\"q8\"");
            BuiltInLibrary library = BuiltInLibrary.of(1);
            try (ProjectStore store = SqliteStore.open(folder.resolve("projects.housewright"), Hall.TODAY)) {
                ProjectFiles files = new ProjectFiles(library, InputStream.nullInputStream());
                OpenProject theirs = new Projects(store, library, files, () -> Hall.TODAY)
                        .find(hall.job().id())
                        .orElseThrow();
                assertThat(theirs.edit(Hall.LEAD, 1, "Took q8 out", List.of(new Change.Drop(Section.QUESTIONS, "q8"))))
                        .isInstanceOf(Outcome.Accepted.class);
            }
            assertThat(viewer.get(questions).body()).doesNotContain("id=\"q8\"");
        }
    }

    @Test
    void aStoreThatCanOnlyBeLookedAtIsLookedAt() {
        try (SmallDisk disk = SmallDisk.mounted(folder, 16 * 1024)) {
            try (Hall hall = Hall.in(folder)) {
                hall.begin("demo.yaml", text -> text);
            }
            disk.makeReadOnly();
            try (Hall hall = Hall.in(folder)) {
                Visitor owner = Visitor.stranger(hall);
                owner.get(hall.server.openOnce().substring(hall.origin().length()));
                String job = "/p/" + hall.job().id();
                for (String page : List.of("/", job, job + "/questions", job + "/equipment", job + "/history")) {
                    assertThat(owner.get(page).statusCode()).as(page).isEqualTo(200);
                }
            }
            disk.makeWritable();
        }
    }
}
