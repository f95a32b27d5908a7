package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.StoreException;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Subject;
import housewright.model.Exemption;
import housewright.model.change.Change;
import housewright.web.page.FindingsPage;
import housewright.web.page.Keys;
import housewright.web.view.JtefindingsGenerated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the rules find; applying a fix; switching a rule off where it does not fit, with the reason. */
final class FindingPages {
    private static final int SHORT = 60;

    private FindingPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}/findings", Need.LOOK, FindingPages::show),
                Route.change("/p/{project}/findings/apply", Need.LEAD, FindingPages::apply),
                Route.change("/p/{project}/findings/off", Need.LEAD, FindingPages::switchOff),
                Route.change("/p/{project}/findings/on", Need.LEAD, FindingPages::switchOn));
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        FindingsPage page = FindingsPage.of(now, visit.ctx.queryParam("about"), new PageLinks(Visit.home(job)));
        visit.show(
                job,
                now,
                Page.FINDINGS,
                "Findings",
                (output, frame) -> JtefindingsGenerated.render(output, null, frame, page));
    }

    private static Optional<Finding> find(Now now, String key) {
        return Stream.of(now.study().findings().due(), now.study().findings().notYetDue())
                .flatMap(List::stream)
                .filter(finding -> Keys.of(finding).equals(key))
                .findFirst();
    }

    private static Session.Notice gone() {
        return new Session.Notice("That finding is not there any more: the project has changed.", true, false);
    }

    private static void apply(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Optional<Finding> finding = find(now, visit.field("finding"));
        if (finding.isEmpty()) {
            visit.goBack(Visit.home(job) + "/findings", gone());
            return;
        }
        List<Fix> fixes = finding.get().fixes();
        long number = visit.number("fix");
        if (number < 0
                || number >= fixes.size()
                || fixes.get((int) number).changes().isEmpty()) {
            throw Refused.wrong("This finding has no such fix.");
        }
        Fix fix = fixes.get((int) number);
        Outcome outcome = job.edit(visit.author(), now.revision(), brief(fix.words()), fix.changes());
        visit.settle(job, outcome, brief(fix.words()));
    }

    /** The first sentence, as the history shows it. */
    static String brief(String words) {
        int end = words.indexOf(". ");
        String first = end < 0 ? words : words.substring(0, end);
        String plain = first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
        return plain.length() <= SHORT ? plain : plain.substring(0, SHORT).strip() + "…";
    }

    private static void switchOff(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String why = visit.field("why");
        Optional<Finding> finding = find(now, visit.field("finding"));
        if (finding.isEmpty()) {
            visit.goBack(Visit.home(job) + "/findings", gone());
            return;
        }
        if (why.isEmpty()) {
            visit.goBack(
                    Visit.home(job) + "/findings",
                    new Session.Notice("Say why it does not matter here; nothing was switched off.", true, false));
            return;
        }
        Subject subject = finding.get().subjects().getFirst();
        List<Exemption> exempt = new ArrayList<>(now.project().exempt());
        exempt.add(new Exemption(finding.get().rule(), subject.path(), why));
        String says = "Switched off " + finding.get().rule() + " for " + subject.id();
        visit.settle(job, job.edit(visit.author(), now.revision(), says, List.of(new Change.Exempt(exempt))), says);
    }

    private static void switchOn(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String rule = visit.field("rule");
        String subject = visit.field("subject");
        List<Exemption> exempt = new ArrayList<>(now.project().exempt());
        boolean any = exempt.removeIf(each ->
                each.rule().equals(rule) && (each.subject() == null ? "everything" : each.subject()).equals(subject));
        if (!any) {
            visit.goBack(
                    Visit.home(job) + "/findings", new Session.Notice("That is switched on already.", true, false));
            return;
        }
        String says = "Switched on " + rule + " for " + subject;
        visit.settle(job, job.edit(visit.author(), now.revision(), says, List.of(new Change.Exempt(exempt))), says);
    }
}
