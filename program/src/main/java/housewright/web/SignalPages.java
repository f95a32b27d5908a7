package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.StoreException;
import housewright.drawing.Contents;
import housewright.drawing.Drawings;
import housewright.drawing.Sheet;
import housewright.drawing.State;
import housewright.drawing.Trade;
import housewright.finding.Subject;
import housewright.web.Sheets.Drawn;
import housewright.web.page.SignalPage;
import housewright.web.page.SignalPage.Asked;
import housewright.web.view.JtesignalGenerated;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Which way the signal runs: a system or a feed as it is, as it will be, and what changes. */
final class SignalPages {
    private static final int LONGEST_NUMBER = 5;

    private SignalPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page("/p/{project}/signal", Need.LOOK, SignalPages::show),
                Route.page("/p/{project}/signal/sheet.svg", Need.LOOK, SignalPages::download));
    }

    /** A sheet, and what it was chosen from. */
    private record Found(Asked asked, List<Contents> contents, Set<Subject> passed, Sheet sheet) {}

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Drawn drawn = visit.common.sheets().of(visit, job, now);
        Found found = find(visit, now, drawn);
        String home = Visit.home(job);
        String feed = found.asked().feed();
        if (feed != null && visit.waitsForMends()) {
            now.study().findProof(feed).ifPresent(now.study()::mends);
        }
        SignalPage page = SignalPage.of(
                now,
                drawn.drawings(),
                found.asked(),
                found.contents(),
                found.passed(),
                found.sheet(),
                new PageLinks(home),
                home);
        visit.show(
                job,
                now,
                Page.SIGNAL,
                found.sheet().title(),
                Drawing.MODULES,
                (output, frame) -> JtesignalGenerated.render(output, null, frame, page));
    }

    private static void download(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Drawing.download(
                visit,
                find(visit, now, visit.common.sheets().of(visit, job, now)).sheet());
    }

    private static Asked asked(Visit visit, Now now, Drawings drawings) {
        State state = Drawing.state(visit);
        String feed = Drawing.asked(visit, "feed");
        if (feed != null && !now.project().feeds().containsKey(feed)) {
            throw Refused.notFound("There is no feed " + feed + " in this project.");
        }
        String system = Drawing.asked(visit, "system");
        Trade trade;
        if (system != null) {
            trade = Drawing.word(Trade.values(), system, "system");
        } else if (feed != null) {
            trade = null;
        } else {
            trade = drawings.trades(state).stream().findFirst().orElse(Trade.SOUND);
        }
        return new Asked(trade, state, number(Drawing.asked(visit, "sheet")), feed, Drawing.asked(visit, "thing"));
    }

    private static int number(@Nullable String text) {
        return text != null && text.length() < LONGEST_NUMBER && text.chars().allMatch(c -> c >= '0' && c <= '9')
                ? Integer.parseInt(text)
                : 0;
    }

    private static Found find(Visit visit, Now now, Drawn drawn) {
        Drawings drawings = drawn.drawings();
        Asked asked = asked(visit, now, drawings);
        Trade trade = asked.trade();
        State state = asked.state();
        String feed = asked.feed();
        Set<Subject> passed = feed == null ? Set.of() : drawings.passed(feed, state);
        if (trade == null && feed != null) {
            Sheet sheet = drawn.sheet("feed " + state + ' ' + feed, all -> all.feed(feed, state));
            return new Found(asked, List.of(), passed, sheet);
        }
        Trade system = trade == null ? Trade.SOUND : trade;
        List<Contents> contents = drawings.contents(system, state);
        int number = asked.number(contents, passed);
        String key = "signal " + system + ' ' + state + ' ' + number;
        boolean lit = feed != null
                && !contents.isEmpty()
                && contents.get(number - 1).subjects().stream().anyMatch(passed::contains);
        Sheet sheet = lit && feed != null
                ? drawn.sheet(key + ' ' + feed, all -> all.signal(system, state, number, feed))
                : drawn.sheet(key, all -> all.signal(system, state, number));
        return new Found(asked, contents, passed, sheet);
    }
}
