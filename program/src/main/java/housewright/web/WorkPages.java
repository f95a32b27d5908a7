package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.StoreException;
import housewright.app.plan.Standing;
import housewright.file.EntityCells;
import housewright.model.AcceptedPlan;
import housewright.model.Pin;
import housewright.model.Remarks;
import housewright.model.Task;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.web.page.TaskPage;
import housewright.web.page.WorkPage;
import housewright.web.view.JtetaskGenerated;
import housewright.web.view.JteworkGenerated;
import housewright.work.WorkTask;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Every task, and what a person changes of it. */
final class WorkPages {
    private static final String AT = "/p/{project}/work";

    private WorkPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page(AT, Need.LOOK, WorkPages::show),
                Route.page(AT + "/{task}", Need.LOOK, WorkPages::one),
                Route.change(AT + "/{task}", Need.LEAD, WorkPages::change));
    }

    private static String asked(Visit visit, String name) {
        return Objects.requireNonNullElse(visit.ctx.queryParam(name), "");
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Standing standing = visit.common.standings().of(visit, job, now);
        String home = Visit.home(job);
        WorkPage page = WorkPage.of(
                now,
                standing,
                new WorkPage.Filter(
                        asked(visit, "kind"),
                        asked(visit, "place"),
                        asked(visit, "person"),
                        asked(visit, "words"),
                        visit.session.role.mayDoAll() ? asked(visit, "edit") : ""),
                home);
        visit.show(job, now, Page.WORK, "Work", (output, frame) -> JteworkGenerated.render(output, null, frame, page));
    }

    private static void one(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        WorkTask task = now.study()
                .work()
                .find(PlanPages.task(visit, now))
                .orElseThrow(() -> Refused.notFound("There is no such task."));
        String home = Visit.home(job);
        TaskPage page = TaskPage.of(now, visit.common.standings().of(visit, job, now), task, new PageLinks(home), home);
        visit.show(
                job,
                now,
                Page.WORK,
                page.title(),
                (output, frame) -> JtetaskGenerated.render(output, null, frame, page));
    }

    /** What the project says of a task beside what is worked out, and its pin, in one edit. */
    private static void change(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String id = PlanPages.task(visit, now);
        String back = TaskPage.href(Visit.home(job), id);
        Task before = now.project().tasks().get(id);
        Map<String, String> cells = new LinkedHashMap<>();
        for (String cell : List.of("who", "takes", "least", "most", "crew", "note")) {
            if (visit.ctx.formParam(cell) != null) {
                cells.put(cell, visit.field(cell));
            }
        }
        cells.put("skip", visit.field("skip").isEmpty() ? "" : "yes");
        List<Change> changes = new ArrayList<>();
        switch (EntityCells.read(Section.TASKS, id, before, cells)) {
            case EntityCells.Reading.Refused refused -> {
                visit.goBack(
                        back,
                        new Session.Notice(
                                "Nothing was changed. "
                                        + refused.errors().getFirst().path() + ": found "
                                        + refused.errors().getFirst().found() + ", expected "
                                        + refused.errors().getFirst().expected() + ".",
                                true,
                                false));
                return;
            }
            case EntityCells.Reading.Read read -> {
                boolean says = !EntityCells.of(read.entity()).isEmpty();
                if (says) {
                    changes.add(new Change.Put(Section.TASKS, id, read.entity()));
                } else if (before != null) {
                    changes.add(new Change.Drop(Section.TASKS, id));
                }
            }
        }
        pin(visit, now, id, changes);
        Outcome outcome = job.edit(visit.author(), visit.number("revision"), "Changed " + id, changes);
        visit.goBack(back, Said.of(outcome, "Changed " + id));
    }

    private static void pin(Visit visit, Now now, String id, List<Change> changes) {
        if (visit.ctx.formParam("people") == null) {
            return;
        }
        AcceptedPlan plan = now.project().plan();
        Pin known = plan == null ? null : plan.pins().get(id);
        LocalDateTime from = PlanPages.at(visit.field("from"));
        Pin pin = new Pin(id, from, PlanPages.people(visit, now), known == null ? Remarks.NONE : known.remarks());
        if (!pin.holdsNothing()) {
            changes.add(new Change.Put(Section.PINS, id, pin));
        } else if (known != null) {
            changes.add(new Change.Drop(Section.PINS, id));
        }
    }
}
