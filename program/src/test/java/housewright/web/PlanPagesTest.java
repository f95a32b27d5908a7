package housewright.web;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.Role;
import housewright.app.plan.Solve;
import housewright.model.LogEntry;
import housewright.model.Order;
import housewright.model.Remarks;
import housewright.model.SiteState;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of plan, work, orders and site, asked without a browser. */
class PlanPagesTest {
    private static Hall hall;

    @BeforeAll
    static void open() {
        hall = Hall.planned();
    }

    @AfterAll
    static void close() {
        hall.close();
    }

    private static String job() {
        return "/p/" + hall.job().id();
    }

    private static int post(Role role, String path, Map<String, String> fields) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("revision", Long.toString(hall.job().now().revision()));
        return Visitor.of(hall, role).post(job() + path, all).statusCode();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/plan | All 13 tasks are done by",
                "/plan/events | whole",
                "/call | needed",
                "/call?person=visitor&day=2027-05-08 | visitor, Sat 8 May 2027: needed 10:00",
                "/now?person=visitor | visitor can begin",
                "/orders | Supplier A",
                "/work | 13 tasks lead from today to the target",
                "/work?kind=prove&words=foyer | prove-at-foyer-audio",
                "/work/mount-desk | Set up desk",
                "/calendar/lead | BEGIN:VCALENDAR",
                "/ | planned tasks done",
            })
    void everybodyMayLook(String path, String says) {
        String answer = Visitor.of(hall, Role.VIEWER)
                .get(job() + (path.equals("/") ? "" : path))
                .body();
        assertThat(answer).contains(says);
        assertThat(hall.faults()).isEmpty();
    }

    @Test
    void aHelperTicksAndAViewerDoesNot() {
        assertThat(post(Role.VIEWER, "/log/print-labels", Map.of("state", "done")))
                .isEqualTo(403);
        assertThat(post(Role.HELPER, "/log/print-labels", Map.of("state", "done")))
                .isLessThan(400);
        LogEntry entry = hall.job().now().project().log().get("print-labels");
        assertThat(entry).isNotNull();
        assertThat(entry.state()).isEqualTo(SiteState.DONE);
        assertThat(entry.remarks().by()).isEqualTo("helper");
        assertThat(entry.people()).containsExactly("visitor");
        assertThat(post(Role.HELPER, "/log/print-labels/take-back", Map.of())).isLessThan(400);
        assertThat(hall.job().now().project().log()).doesNotContainKey("print-labels");
        assertThat(post(Role.HELPER, "/log/no-such-task", Map.of("state", "done")))
                .isEqualTo(404);
        assertThat(post(Role.HELPER, "/log/print-labels", Map.of("state", "finished")))
                .isEqualTo(400);
    }

    @Test
    void aBlockedTaskWantsAReason() {
        long before = hall.job().now().revision();
        assertThat(post(Role.HELPER, "/log/train-desk", Map.of("state", "blocked")))
                .isLessThan(400);
        assertThat(hall.job().now().revision()).isEqualTo(before);
    }

    @Test
    void aHelperSaysWhatArrivedAndNotWhatWasPromised() {
        assertThat(post(Role.HELPER, "/orders/desk/arrived", Map.of("day", "2027-05-06", "promised", "2027-05-20")))
                .isLessThan(400);
        Order order = hall.job().now().project().orders().get("desk");
        assertThat(order.arrived()).isEqualTo("2027-05-06");
        assertThat(order.promised()).isNotEqualTo(LocalDate.parse("2027-05-20"));
        assertThat(post(Role.HELPER, "/orders/desk/arrived", Map.of("take-back", "yes")))
                .isLessThan(400);
    }

    @Test
    void onlyTheLeadPlansPinsAndChanges() {
        for (String path : List.of(
                "/plan/search", "/plan/accept", "/plan/pins/train-desk", "/work/train-desk", "/orders/desk/placed")) {
            assertThat(post(Role.HELPER, path, Map.of())).as(path).isEqualTo(403);
        }
        assertThat(post(Role.LEAD, "/plan/pins/train-desk", Map.of("people", "visitor")))
                .isLessThan(400);
        assertThat(hall.job().now().project().plan())
                .isNotNull()
                .satisfies(plan -> assertThat(plan.pins()).containsKey("train-desk"));
        assertThat(post(Role.LEAD, "/plan/pins/train-desk", Map.of("people", "")))
                .isLessThan(400);
        assertThat(post(Role.LEAD, "/plan/pins/train-desk", Map.of("people", "nobody-known")))
                .isEqualTo(400);
    }

    @Test
    void aPinThatCannotHoldIsToldBeforeAnySearch() {
        Visitor lead = Visitor.of(hall, Role.LEAD);
        String pin = "/plan/pins/configure-desk";
        String revision = Long.toString(hall.job().now().revision());
        lead.post(job() + pin, Map.of("people", "lead", "revision", revision));
        assertThat(lead.get(job() + "/work/configure-desk").body())
                .contains("Pinned configure-desk, but it cannot hold")
                .contains("audio");
        assertThat(post(Role.LEAD, pin, Map.of("people", ""))).isLessThan(400);

        revision = Long.toString(hall.job().now().revision());
        lead.post(job() + pin, Map.of("people", "visitor", "revision", revision));
        assertThat(lead.get(job() + "/work/configure-desk").body())
                .contains("Pinned configure-desk")
                .doesNotContain("cannot hold");
        assertThat(post(Role.LEAD, pin, Map.of("people", ""))).isLessThan(400);
    }

    @Test
    void aPlanFoundOnTheDayShowsWhatMoved() throws InterruptedException {
        try (Hall onTheDay = Hall.planned()) {
            onTheDay.now = Instant.parse("2027-05-08T07:35:00Z"); // 9:35 in Berlin
            Visitor lead = Visitor.of(onTheDay, Role.LEAD);
            String at = "/p/" + onTheDay.job().id();
            onTheDay.edit( // over five days, as somebody may have typed it
                    Hall.LEAD,
                    "Did print-labels",
                    new Change.Put(
                            Section.LOG,
                            "print-labels",
                            new LogEntry(
                                    "print-labels",
                                    SiteState.DONE,
                                    LocalDateTime.parse("2027-05-03T09:00"),
                                    LocalDateTime.parse("2027-05-08T09:35"),
                                    List.of("visitor"),
                                    null,
                                    null,
                                    null,
                                    Remarks.NONE)));
            for (String done : List.of("copy-old-desk", "receive-desk")) {
                lead.post(at + "/log/" + done, revised(onTheDay, Map.of("state", "done")));
            }
            lead.post(at + "/log/strike-old-desk", revised(onTheDay, Map.of("state", "begun")));
            lead.post(
                    at + "/log/replug-at-hall-later",
                    revised(onTheDay, Map.of("state", "blocked", "why", "no key", "until", "2027-05-08T11:00")));
            assertThat(lead.get(at + "/plan").body())
                    .contains("does not hold any more")
                    .contains("replug-at-hall-later is blocked when it begins");
            lead.post(at + "/plan/search", Map.of("seconds", "3"));
            Solve solve =
                    onTheDay.server.common().solves().find(onTheDay.job().id()).orElseThrow();
            while (solve.state() == Solve.State.RUNNING) {
                Thread.sleep(50);
            }
            String found = lead.get(at + "/plan").body();
            assertThat(onTheDay.faults()).isEmpty();
            assertThat(found)
                    .contains("Found, and not accepted yet: all 13 tasks")
                    .contains("tasks moved")
                    .contains("class=\"ghost\"")
                    .contains("is blocked until Sat 8 May 11:00");

            long before = onTheDay.job().now().revision();
            lead.post(
                    at + "/plan/accept",
                    Map.of("solve", Long.toString(solve.begun().toEpochMilli() - 1)));
            assertThat(onTheDay.job().now().revision())
                    .as("another than the page showed")
                    .isEqualTo(before);
            lead.post(
                    at + "/plan/accept",
                    Map.of("solve", Long.toString(solve.begun().toEpochMilli())));
            assertThat(onTheDay.job().now().revision()).isEqualTo(before + 1);
        }
    }

    private static Map<String, String> revised(Hall of, Map<String, String> fields) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("revision", Long.toString(of.job().now().revision()));
        return all;
    }
}
