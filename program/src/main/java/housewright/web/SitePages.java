package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.StoreException;
import housewright.app.plan.Standing;
import housewright.model.LogEntry;
import housewright.model.Remarks;
import housewright.model.SiteState;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.plan.Plan;
import housewright.plan.Ready;
import housewright.plan.Slot;
import housewright.plan.report.Reports;
import housewright.web.page.CallPage;
import housewright.web.page.ReadyPage;
import housewright.web.page.TaskPage;
import housewright.web.view.JtecallGenerated;
import housewright.web.view.JtereadyGenerated;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** On site: the daily call, what somebody can do now, and ticking off. */
final class SitePages {
    private SitePages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}/call", Need.LOOK, SitePages::call),
                Route.page("/p/{project}/now", Need.LOOK, SitePages::ready),
                Route.change("/p/{project}/log/{entry}", Need.SITE, SitePages::tick),
                Route.change("/p/{project}/log/{entry}/take-back", Need.SITE, SitePages::takeBack));
    }

    private static void call(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        CallPage page = CallPage.of(
                now,
                visit.common.standings().of(visit, job, now),
                person(visit, now),
                day(visit.ctx.queryParam("day")),
                Visit.home(job));
        visit.show(
                job,
                now,
                Page.CALL,
                "Daily call",
                (output, frame) -> JtecallGenerated.render(output, null, frame, page));
    }

    /** Asked for; else who looks, where the project has somebody of that name. */
    private static @Nullable String person(Visit visit, Now now) {
        String asked = visit.ctx.queryParam("person");
        if (asked != null && now.project().people().containsKey(asked)) {
            return asked;
        }
        String own = visit.session.person;
        return now.project().people().containsKey(own) ? own : null;
    }

    private static @Nullable LocalDate day(@Nullable String text) {
        try {
            return text == null || text.isEmpty() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            return null;
        }
    }

    private static void ready(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Standing standing = visit.common.standings().of(visit, job, now);
        String asked = person(visit, now);
        String who = asked != null
                ? asked
                : now.project().people().keySet().stream().findFirst().orElse("");
        boolean known = !who.isEmpty() && standing.basis().unplanned().isEmpty();
        List<Ready> able = known
                ? Reports.ready(
                        standing.basis().job(),
                        standing.basis().log(),
                        standing.basis().accepted(),
                        who)
                : List.of();
        ReadyPage page = ReadyPage.of(now, standing, who, able, Visit.home(job));
        visit.show(
                job,
                now,
                Page.READY,
                "What now",
                (output, frame) -> JtereadyGenerated.render(output, null, frame, page));
    }

    private static String entry(Visit visit, Now now) {
        String id = visit.ctx.pathParam("entry");
        if (!now.project().orders().containsKey(id)
                && now.study().work().find(id).isEmpty()) {
            throw Refused.notFound("There is no task or order " + id + " in this project.");
        }
        return id;
    }

    private static SiteState state(String word) {
        for (SiteState state : SiteState.values()) {
            if (state.word().equals(word)) {
                return state;
            }
        }
        throw Refused.wrong("How far it is must be begun, done, late or blocked, and is \"" + word + "\".");
    }

    private static void tick(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String id = entry(visit, now);
        SiteState state = state(visit.field("state"));
        LocalDateTime until = PlanPages.at(visit.field("until"));
        String why = visit.field("why");
        String back = now.project().orders().containsKey(id)
                ? Visit.home(job) + "/orders"
                : TaskPage.href(Visit.home(job), id);
        boolean held = state == SiteState.LATE || state == SiteState.BLOCKED;
        if (held && (why.isEmpty() || (state == SiteState.LATE && until == null))) {
            visit.goBack(
                    back,
                    new Session.Notice(
                            state == SiteState.LATE
                                    ? "Say why it is late and when it comes; what nobody knows is blocked."
                                    : "Say why it is blocked, so that somebody can help.",
                            true,
                            false));
            return;
        }
        LogEntry made = made(visit, job, now, id, state, held ? why : null, held ? until : null);
        String says = switch (state) {
            case BEGUN -> "Began " + id;
            case DONE -> "Did " + id;
            case LATE -> id + " is late";
            case BLOCKED -> id + " is blocked";
        };
        Outcome outcome = job.edit(
                visit.author(), visit.number("revision"), says, List.of(new Change.Put(Section.LOG, id, made)));
        visit.goBack(back, Said.of(outcome, says));
    }

    private static LogEntry made(
            Visit visit,
            OpenProject job,
            Now now,
            String id,
            SiteState state,
            @Nullable String why,
            @Nullable LocalDateTime until) {
        LocalDateTime at = visit.moment(now);
        LogEntry known = now.project().log().get(id);
        LocalDateTime from = state == SiteState.BEGUN && (known == null || known.from() == null)
                ? at
                : known == null ? null : known.from();
        LocalDateTime to = state == SiteState.DONE ? at : null;
        if (from != null && to != null && !to.isAfter(from)) {
            from = null;
        }
        List<String> people = known == null ? List.of() : known.people();
        if (people.isEmpty() && (state == SiteState.BEGUN || state == SiteState.DONE)) {
            people = crew(visit, job, now, id);
        }
        Remarks old = known == null ? Remarks.NONE : known.remarks();
        return new LogEntry(
                id,
                state,
                from,
                to,
                people,
                known == null || state == SiteState.DONE ? null : known.left(),
                why,
                until,
                new Remarks(old.key(), old.note(), old.photo(), old.known(), visit.session.person));
    }

    /** Whom the plan has at it; else who ticks it, where the project knows them. */
    private static List<String> crew(Visit visit, OpenProject job, Now now, String id) {
        Plan plan = visit.common.standings().of(visit, job, now).plan();
        Slot slot = plan == null ? null : plan.schedule().byTask().get(id);
        if (slot != null) {
            return slot.people();
        }
        String own = visit.session.person;
        return now.project().people().containsKey(own) ? List.of(own) : List.of();
    }

    private static void takeBack(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String id = entry(visit, now);
        String says = "Took back what the log says of " + id;
        Outcome outcome =
                job.edit(visit.author(), visit.number("revision"), says, List.of(new Change.Drop(Section.LOG, id)));
        visit.goBack(TaskPage.href(Visit.home(job), id), Said.of(outcome, says));
    }
}
