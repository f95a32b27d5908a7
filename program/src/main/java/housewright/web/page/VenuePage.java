package housewright.web.page;

import housewright.app.Now;
import housewright.app.table.Edits;
import housewright.app.table.Table;
import housewright.app.table.Tables;
import housewright.drawing.Plan;
import housewright.drawing.State;
import housewright.model.PathwayKind;
import housewright.model.RuleSet;
import housewright.model.Rules;
import housewright.model.Venue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The venue from above or a room of it from the side.
 *
 * @param empty nothing has a position yet: the page says what belongs there
 * @param views from above, and each room from the side
 * @param tables where what is drawn is listed
 * @param perMetre units of the sheet that stand for a metre
 * @param plan it is seen from above, so places can be moved and things added by pointing
 * @param us lengths are said in feet
 * @param places that a pathway may join
 * @param typed what somebody typed into a form that could not be done
 */
public record VenuePage(
        String answer,
        boolean empty,
        List<Choice> views,
        List<Choice> states,
        List<Choice> tables,
        @Nullable DrawnPart drawn,
        double perMetre,
        double originX,
        double originY,
        boolean plan,
        boolean us,
        List<String> places,
        List<String> rooms,
        List<String> kinds,
        String nextPathway,
        long base,
        Map<String, String> typed,
        @Nullable ThingPart thing) {
    public VenuePage {
        views = List.copyOf(views);
        states = List.copyOf(states);
        tables = List.copyOf(tables);
        places = List.copyOf(places);
        rooms = List.copyOf(rooms);
        kinds = List.copyOf(kinds);
        typed = Map.copyOf(typed);
    }

    /** @param side the room seen from the side; null from above */
    public record Asked(
            State state, @Nullable String side, @Nullable String thing) {}

    /** What was typed into a field before; empty where nothing was. */
    public String was(String field) {
        return typed.getOrDefault(field, "");
    }

    /** Whether a pathway that was refused had been drawn by hand; its way along the plan is kept for the next try. */
    public boolean wasDrawn() {
        return was("form").equals("pathway") && !was("along").isEmpty();
    }

    public static boolean isUs(Now now) {
        Rules rules = now.project().about().rules();
        return rules != null && rules.set() == RuleSet.US;
    }

    /** @param sides the rooms that can be seen from the side */
    public static VenuePage of(
            Now now,
            Asked asked,
            @Nullable Plan plan,
            List<String> sides,
            Links links,
            String job,
            boolean lead,
            Map<String, String> typed) {
        Venue venue = now.project().venue();
        boolean above = asked.side() == null;
        Query here = Query.of(job + "/venue")
                .with("side", asked.side())
                .with(
                        "state",
                        asked.state() == State.TARGET ? "" : asked.state().word());
        List<Choice> views = new ArrayList<>();
        Query kept = here.with("thing", asked.thing());
        views.add(new Choice("From above", kept.with("side", "").href(), above));
        for (String room : sides) {
            views.add(
                    new Choice(room + " from the side", kept.with("side", room).href(), room.equals(asked.side())));
        }
        List<Choice> states = new ArrayList<>();
        for (State each : State.values()) {
            String label = each.title().substring(0, 1).toUpperCase(Locale.ROOT)
                    + each.title().substring(1);
            states.add(new Choice(label, kept.with("state", each.word()).href(), each == asked.state()));
        }
        return new VenuePage(
                answer(venue, plan),
                plan == null,
                views,
                states,
                tables(now, job),
                plan == null ? null : DrawnPart.of(plan.sheet(), here, "venue", asked.thing()),
                plan == null ? 1 : plan.mapping().unitsPerMetre(),
                plan == null ? 0 : plan.mapping().originX(),
                plan == null ? 0 : plan.mapping().originY(),
                above,
                isUs(now),
                List.copyOf(venue.places().keySet()),
                List.copyOf(venue.rooms().keySet()),
                Stream.of(PathwayKind.values()).map(PathwayKind::word).toList(),
                Edits.of(now.study(), Table.PATHWAYS).proposedId(Map.of()),
                now.revision(),
                typed,
                asked.thing() == null
                        ? null
                        : ThingPart.of(now, links, job, asked.thing(), lead).orElse(null));
    }

    private static List<Choice> tables(Now now, String job) {
        return TablePage.together(Table.ROOMS).stream()
                .map(table -> new Choice(
                        table.title() + " (" + Tables.count(now.project(), table) + ")",
                        job + "/table/" + table.key(),
                        false))
                .toList();
    }

    private static String answer(Venue venue, @Nullable Plan plan) {
        if (plan == null) {
            return "Nothing of the venue has a position yet: begin with one room.";
        }
        int lacking = plan.missing().size();
        return count(venue.rooms().size(), "room") + ", " + count(venue.places().size(), "place") + ", "
                + count(venue.pathways().size(), "pathway")
                + (lacking == 0
                        ? "."
                        : "; " + lacking + (lacking == 1 ? " thing is" : " things are")
                                + " not drawn for want of a position.");
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
