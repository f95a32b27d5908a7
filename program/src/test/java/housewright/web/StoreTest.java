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
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
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

    /** A phone on site need not scan the code again, and what was typed on an open page is still taken. */
    @Test
    void whoeverCameInIsInAfterARestart() throws Exception {
        Visitor owner;
        Visitor site;
        Visitor ben;
        String owners;
        String sites;
        int port;
        try (Hall hall = Hall.in(folder)) {
            hall.begin("demo.yaml", text -> text);
            port = hall.server.port();
            owner = Visitor.stranger(hall);
            owner.get(hall.server.openOnce().substring(hall.origin().length()));
            site = Visitor.stranger(hall);
            site.get("/in/" + hall.server.common().door().siteSecret());
            ben = Visitor.of(hall, Role.HELPER);
            owners = owner.token();
            sites = site.token();
            assertThat(owners).isNotEmpty().isNotEqualTo(sites);
        }
        try (Hall hall = Hall.in(folder, port)) {
            assertThat(owner.get("/sharing").statusCode()).isEqualTo(200);
            assertThat(owner.token()).isEqualTo(owners);
            assertThat(ben.get("/").statusCode()).isEqualTo(200);
            assertThat(site.get("/").statusCode())
                    .as("nobody on site while it is not shared")
                    .isEqualTo(401);
            hall.server.common().door().siteSecret();
            assertThat(site.get("/").statusCode()).isEqualTo(200);
            assertThat(site.get("/sharing").statusCode()).isEqualTo(403);
            assertThat(site.token()).isEqualTo(sites);
            hall.server
                    .common()
                    .links()
                    .revoke(hall.server.common().links().list().getFirst().id());
            assertThat(ben.get("/").statusCode()).isEqualTo(401);
            hall.server.common().door().revokeSite();
        }
        try (Hall hall = Hall.in(folder, port)) {
            hall.server.common().door().siteSecret();
            assertThat(site.get("/").statusCode()).as("revoked for good").isEqualTo(401);
            assertThat(ben.get("/").statusCode()).isEqualTo(401);
            assertThat(owner.get("/").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void whatABrowserShowsIsKeptAsAHashAndForgottenAfterAMonthAway() throws Exception {
        Door door;
        String cookie;
        AtomicReference<Instant> now = new AtomicReference<>(Hall.TODAY);
        try (ProjectStore store = SqliteStore.open(folder.resolve("projects.housewright"), Hall.TODAY)) {
            door = new Door("ada", new SharedLinks(store), store, now::get);
            cookie = door.comeIn(door.openOnce(), null).orElseThrow();
            assertThat(store.listEntrances())
                    .singleElement()
                    .satisfies(each -> assertThat(each.cookieHash()).isEqualTo(Secrets.hash(cookie)));
            assertThat(door.seeAgain(cookie)).isFalse();
            now.set(Hall.TODAY.plus(Duration.ofDays(29)));
            assertThat(door.seeAgain(cookie)).isTrue();
            now.set(Hall.TODAY.plus(Duration.ofDays(58)));
            assertThat(door.find(cookie)).isPresent();
            now.set(Hall.TODAY.plus(Duration.ofDays(60)));
            assertThat(door.find(cookie)).isEmpty();
            assertThat(new Door("ada", new SharedLinks(store), store, now::get).find(cookie))
                    .isEmpty();
            assertThat(store.listEntrances()).isEmpty();
        }
        assertThat(Files.readString(folder.resolve("projects.housewright"), StandardCharsets.ISO_8859_1))
                .doesNotContain(cookie);
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
                Visitor helper = Visitor.stranger(hall);
                helper.get("/in/" + hall.server.common().door().siteSecret());
                for (Visitor each : List.of(owner, helper)) {
                    String told = each.get(each.post(
                                            job + "/questions",
                                            Map.of("asks", "Who has the key?", "back", job + "/questions"))
                                    .headers()
                                    .firstValue("Location")
                                    .orElseThrow())
                            .body();
                    assertThat(told).contains("Nothing can be changed").contains("Who has the key?");
                    assertThat(told.contains(folder.toString()))
                            .as("a path, to the lead alone")
                            .isEqualTo(each == owner);
                }
                for (String page : List.of("/", job, job + "/questions", job + "/equipment", job + "/history")) {
                    assertThat(owner.get(page).statusCode()).as(page).isEqualTo(200);
                }
            }
            disk.makeWritable();
        }
    }
}
