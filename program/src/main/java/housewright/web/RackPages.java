package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.StoreException;
import housewright.app.table.Edit;
import housewright.app.table.Edits;
import housewright.app.table.Table;
import housewright.drawing.Drawings;
import housewright.drawing.Sheet;
import housewright.drawing.State;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Place;
import housewright.signal.Moment;
import housewright.web.Sheets.Drawn;
import housewright.web.page.RacksPage;
import housewright.web.page.RacksPage.Asked;
import housewright.web.view.JteracksGenerated;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Racks from their front, what goes into them, and what hangs on which circuit. */
final class RackPages {
    private static final String AT = "/p/{project}/racks";

    private RackPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page(AT, Need.LOOK, RackPages::show),
                Route.page(AT + "/sheet.svg", Need.LOOK, RackPages::download),
                Route.change(AT + "/put", Need.LEAD, RackPages::put));
    }

    private static Asked asked(Visit visit, Drawings drawings) {
        List<String> racks = drawings.rackPlaces();
        String rack = Drawing.asked(visit, "rack");
        if (rack != null && !racks.contains(rack)) {
            throw Refused.notFound("There is no rack " + rack + " in this project.");
        }
        String shown = rack != null || racks.isEmpty() ? rack : racks.getFirst();
        return new Asked(Drawing.state(visit), shown, Drawing.asked(visit, "thing"));
    }

    private static Sheet sheet(Drawn drawn, Asked asked) {
        State state = asked.state();
        String rack = asked.rack();
        return rack == null
                ? drawn.sheet("racks " + state, all -> all.racks(state).getFirst())
                : drawn.sheet("rack " + state + ' ' + rack, all -> all.rack(rack, state));
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        Drawn drawn = visit.common.sheets().of(visit, job, now);
        Asked asked = asked(visit, drawn.drawings());
        String home = Visit.home(job);
        RacksPage page = RacksPage.of(
                now,
                asked,
                drawn.drawings().rackPlaces(),
                sheet(drawn, asked),
                new PageLinks(home),
                home,
                Typed.of(visit));
        visit.show(
                job,
                now,
                Page.RACKS,
                "Power and racks",
                Drawing.MODULES,
                (output, frame) -> JteracksGenerated.render(output, null, frame, page));
    }

    private static void download(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Drawn drawn = visit.common.sheets().of(visit, job, job.now());
        Drawing.download(visit, sheet(drawn, asked(visit, drawn.drawings())));
    }

    private static void put(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String page = Visit.home(job) + "/racks";
        String id = visit.field("thing-id");
        String rack = visit.field("rack-id");
        String unit = visit.field("unit");
        Optional<String> wrong = wrong(now, id, rack, unit);
        if (wrong.isPresent()) {
            Typed.refuse(visit, page, "put", wrong.get());
            return;
        }
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("at", rack);
        cells.put("unit", unit);
        Edit edit = Edits.of(now.study(), Table.EQUIPMENT).cells(List.of(id), cells);
        String says = unit.isEmpty() ? "Took " + id + " out of its unit" : "Put " + id + " into unit " + unit;
        Typed.settle(visit, job, edit, says, page, "put");
    }

    /** Why a thing does not go there; empty where it does. */
    private static Optional<String> wrong(Now now, String id, String rack, String unit) {
        Place place = now.project().venue().places().get(rack);
        Double high = high(now, now.project().equipment().get(id));
        if (place == null || place.rack() == null) {
            return Optional.of("There is no rack " + rack + ".");
        }
        if (high == null) {
            return Optional.of("It is not known how many units " + id + " takes.");
        }
        if (unit.isEmpty()) {
            return Optional.empty();
        }
        if (!unit.matches("[0-9]{1,3}")) {
            return Optional.of("A unit is a whole number, counted from the bottom.");
        }
        int units = place.rack().units();
        int lowest = Integer.parseInt(unit);
        String blocking = blocking(now, id, rack, units, lowest, high);
        if (blocking == null) {
            return Optional.empty();
        }
        int nearest = 0;
        for (int n = 1; n <= units; n++) {
            if (blocking(now, id, rack, units, n, high) == null
                    && (nearest == 0 || Math.abs(n - lowest) < Math.abs(nearest - lowest))) {
                nearest = n;
            }
        }
        return Optional.of(blocking + (nearest == 0 ? " Nothing is free for it." : " Unit " + nearest + " is free."));
    }

    private static @Nullable String blocking(Now now, String id, String rack, int units, int lowest, double high) {
        if (lowest < 1 || lowest - 1 + high > units) {
            return rack + " has the units 1 to " + units + ".";
        }
        for (Equipment other : now.project().equipment().values()) {
            Double taken = high(now, other);
            Integer unit = other.unit();
            if (!other.id().equals(id)
                    && rack.equals(other.at())
                    && unit != null
                    && taken != null
                    && Moment.target().isThere("equipment", other.id(), other.life())
                    && unit < lowest + high
                    && lowest < unit + taken) {
                return other.id() + " is in unit " + unit + ".";
            }
        }
        return null;
    }

    private static @Nullable Double high(Now now, @Nullable Equipment thing) {
        Model model = thing == null
                ? null
                : now.study().types().findModel(thing.model()).orElse(null);
        return model == null || model.rack() == null ? null : model.rack().units();
    }
}
