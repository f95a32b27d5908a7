package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.StoreException;
import housewright.app.plan.Acceptance;
import housewright.app.plan.Calendars;
import housewright.app.plan.Solve;
import housewright.app.plan.Standing;
import housewright.model.AcceptedPlan;
import housewright.model.Pin;
import housewright.model.Remarks;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.plan.Effort;
import housewright.plan.Plan;
import housewright.plan.report.Reports;
import housewright.study.PlanBasis;
import housewright.web.page.PlanPage;
import housewright.web.page.TaskPage;
import housewright.web.view.JteplanGenerated;
import housewright.web.view.JteplaneventsGenerated;
import housewright.web.view.JteplansearchGenerated;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The plan: looked at, searched for in the background, accepted, held to pins. */
final class PlanPages {
    private static final String AT = "/p/{project}/plan";
    private static final int MOST_SECONDS = 600;

    private PlanPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page(AT, Need.LOOK, PlanPages::show),
                Route.page(AT + "/search", Need.LOOK, PlanPages::progress),
                Route.page(AT + "/events", Need.LOOK, PlanPages::events),
                Route.page("/p/{project}/calendar/{person}", Need.LOOK, PlanPages::calendar),
                Route.change(AT + "/search", Need.LEAD, PlanPages::search),
                Route.change(AT + "/stop", Need.LEAD, PlanPages::stop),
                Route.change(AT + "/discard", Need.LEAD, PlanPages::discard),
                Route.change(AT + "/accept", Need.LEAD, PlanPages::accept),
                Route.change(AT + "/pins/{task}", Need.LEAD, PlanPages::pin));
    }

    private static PlanPage page(Visit visit, OpenProject job, Now now) {
        Solve solve = visit.common.solves().find(job.id()).orElse(null);
        return PlanPage.of(
                now,
                visit.common.standings().of(visit, job, now),
                visit.common.standings().knownLikelihood(visit, job, now),
                solve,
                !"accepted".equals(visit.ctx.queryParam("show")),
                Visit.home(job),
                visit.common.projects().clock().instant());
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        PlanPage page = page(visit, job, now);
        visit.show(
                job,
                now,
                Page.PLAN,
                "Plan",
                List.of("timeline.js"),
                (output, frame) -> JteplanGenerated.render(output, null, frame, page));
    }

    /** How far a search is; when it has ended, the page is loaded again. */
    private static void progress(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Optional<Solve> solve = visit.common.solves().find(job.id());
        if (solve.isEmpty() || solve.get().state() != Solve.State.RUNNING) {
            visit.ctx.header("HX-Redirect", Visit.home(job) + "/plan");
        }
        PlanPage.Search search = solve.map(each -> PlanPage.search(
                        each, now, visit.common.projects().clock().instant()))
                .orElse(null);
        boolean lead = visit.session.role.mayDoAll();
        Visit.write(
                visit.ctx,
                output -> JteplansearchGenerated.render(
                        output, null, search, Visit.home(job), visit.session.token, lead));
    }

    /** The events with how likely each is kept. */
    private static void events(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Standing standing = visit.common.standings().of(visit, job, now);
        Plan plan = standing.plan();
        List<PlanPage.EventRow> rows = plan == null
                ? List.of()
                : PlanPage.events(
                        standing.basis().job(),
                        plan,
                        visit.common.standings().likelihood(visit, job, now),
                        standing.holds());
        Visit.write(visit.ctx, output -> JteplaneventsGenerated.render(output, null, rows));
    }

    private static void search(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String typed = visit.field("seconds");
        long seconds = typed.isEmpty() ? 30 : visit.number("seconds");
        if (seconds < 1 || seconds > MOST_SECONDS) {
            throw Refused.wrong("A search takes 1 to " + MOST_SECONDS + " seconds.");
        }
        LocalDateTime at = visit.moment(now);
        PlanBasis basis = now.study().planBasis(at, now.project().log());
        if (!basis.unplanned().isEmpty()) {
            visit.goOn(Visit.home(job) + "/plan", new Session.Notice(basis.unplanned(), true, false));
            return;
        }
        Effort effort = Effort.quick(1, (double) seconds);
        visit.common
                .solves()
                .begin(
                        job.id(),
                        now.revision(),
                        basis,
                        visit.field("anew").isEmpty() ? basis.request(effort) : basis.anew(effort));
        visit.goOn(Visit.home(job) + "/plan", null);
    }

    private static void stop(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        visit.common.solves().find(job.id()).ifPresent(Solve::stop);
        visit.goOn(Visit.home(job) + "/plan", null);
    }

    private static void discard(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        visit.common.solves().forget(job.id());
        visit.goOn(Visit.home(job) + "/plan", null);
    }

    private static void accept(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Solve solve = visit.common.solves().find(job.id()).orElse(null);
        Plan plan = solve == null ? null : solve.plan();
        if (solve == null || plan == null) {
            visit.goOn(
                    Visit.home(job) + "/plan",
                    new Session.Notice("There is no plan to accept: search for one first.", true, false));
            return;
        }
        if (visit.number("solve") != solve.begun().toEpochMilli()) {
            visit.goOn(
                    Visit.home(job) + "/plan",
                    new Session.Notice(
                            "Nothing was accepted: another plan was found since this page was shown. This is it.",
                            true,
                            false));
            return;
        }
        Change change = Acceptance.of(solve.basis().job(), plan, visit.moment(now), null);
        Outcome outcome = job.edit(visit.author(), solve.revision(), "Accepted the plan", List.of(change));
        if (outcome instanceof Outcome.Accepted) {
            visit.common.solves().forget(job.id());
        }
        visit.goOn(Visit.home(job) + "/plan", Said.of(outcome, "Accepted the plan"));
    }

    /** Holds a task to people or a start; with neither, lets it go. */
    private static void pin(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String task = task(visit, now);
        AcceptedPlan plan = now.project().plan();
        Pin known = plan == null ? null : plan.pins().get(task);
        Pin pin = new Pin(
                task, at(visit.field("from")), people(visit, now), known == null ? Remarks.NONE : known.remarks());
        boolean gone = pin.holdsNothing();
        if (gone && known == null) {
            visit.goBack(
                    TaskPage.href(Visit.home(job), task),
                    new Session.Notice("A pin wants a person, a start, or both.", true, false));
            return;
        }
        Change change = gone ? new Change.Drop(Section.PINS, task) : new Change.Put(Section.PINS, task, pin);
        String says = gone ? "Unpinned " + task : "Pinned " + task;
        Outcome outcome = job.edit(visit.author(), visit.number("revision"), says, List.of(change));
        String cannot = gone || !(outcome instanceof Outcome.Accepted) ? "" : cannot(visit, job.now(), task);
        visit.goBack(
                TaskPage.href(Visit.home(job), task),
                cannot.isEmpty()
                        ? Said.of(outcome, says + ". Plan again to see what comes of it")
                        : new Session.Notice(says + ", but it cannot hold. " + cannot, false, true));
    }

    /** Why a task that is held so can be in no plan, where that shows without a search; else empty. */
    private static String cannot(Visit visit, Now now, String task) {
        PlanBasis basis = now.study().planBasis(visit.moment(now), now.project().log());
        return !basis.unplanned().isEmpty()
                ? ""
                : Reports.impossible(basis.anew(Effort.quick(1, 1)), task)
                        .map(clash ->
                                clash.what() + " These do not go together: " + String.join("; ", clash.wishes()) + ".")
                        .orElse("");
    }

    /** The task named in the address, which must be there. */
    static String task(Visit visit, Now now) {
        String task = visit.ctx.pathParam("task");
        if (now.study().work().find(task).isEmpty()) {
            throw Refused.notFound("There is no task " + task + " in this project.");
        }
        return task;
    }

    /** People typed or chosen, with commas between. */
    static List<String> people(Visit visit, Now now) {
        List<String> people = Arrays.stream(visit.field("people").split("[,\\s]+"))
                .filter(each -> !each.isEmpty())
                .distinct()
                .toList();
        for (String each : people) {
            if (!now.project().people().containsKey(each)) {
                throw Refused.wrong("There is nobody called " + each + "; the people are "
                        + String.join(", ", now.project().people().keySet()) + ".");
            }
        }
        return people;
    }

    /** A moment as a browser's field has it, or as the project file does; null for none. */
    static @Nullable LocalDateTime at(String text) {
        try {
            return text.isEmpty() ? null : LocalDateTime.parse(text.replace(' ', 'T'));
        } catch (DateTimeParseException e) {
            throw Refused.wrong("A time must be written like 2027-03-21 09:30, and is \"" + text + "\".");
        }
    }

    private static void calendar(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String person = visit.ctx.pathParam("person");
        Standing standing = visit.common.standings().of(visit, job, now);
        Plan plan = standing.plan();
        Map<String, ?> people = now.project().people();
        if (plan == null || !people.containsKey(person)) {
            throw Refused.notFound(
                    plan == null ? "No plan is accepted yet." : "There is nobody called " + person + " here.");
        }
        AcceptedPlan accepted = now.project().plan();
        LocalDateTime made = accepted == null || accepted.made() == null ? standing.now() : accepted.made();
        Calendars calendars = new Calendars(
                now.project().about().name(),
                now.project().about().timeZone(),
                standing.basis().job(),
                plan,
                made);
        visit.ctx
                .contentType("text/calendar; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + person + ".ics\"")
                .result(calendars.of(person));
    }
}
