package housewright.drawing;

import housewright.finding.Subject;
import housewright.model.Model;
import housewright.model.Place;
import housewright.model.RackSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * One rack from its front, to scale: a rack unit is 44.45 mm and a front panel 482.6 mm wide (EIA-310, IEC 60297-3-100).
 * Units are counted from the bottom.
 */
final class Elevation {
    static final double UNIT_MM = 44.45;
    static final double PANEL_MM = 482.6;

    private static final double NUMBERS = 34;
    private static final double BESIDE = 250;
    private static final double CAPTION = 30;

    private final Place place;
    private final int units;
    private final List<Mounted> mounted = new ArrayList<>();
    private final List<String> beside = new ArrayList<>();
    private final Set<Subject> drawn = new TreeSet<>();

    /** What sits in the rack, from its lowest unit. */
    private record Mounted(Things.Thing thing, int unit, double high) {}

    Elevation(Place place, RackSpace rack, List<Things.Thing> things) {
        this.place = place;
        this.units = rack.units();
        drawn.add(new Subject("place", place.id()));
        for (Things.Thing thing : things) {
            Integer unit = thing.equipment().unit();
            Model model = thing.model();
            String why = null;
            if (thing.change() == Change.GOES) {
                why = thing.mark().replaceAll("[ ()]+", " ").strip();
            } else if (model == null) {
                why = "type not known";
            } else if (model.rack() == null) {
                why = unit == null ? "not for a rack" : "height not known";
            } else if (unit == null) {
                why = "unit not given";
            }
            drawn.add(Subject.equipment(thing.id()));
            if (why == null && unit != null && model != null && model.rack() != null) {
                mounted.add(new Mounted(thing, unit, model.rack().units()));
            } else {
                beside.add(thing.id() + ": " + why);
            }
        }
        troubles();
    }

    double widthMm() {
        return PANEL_MM;
    }

    double heightMm() {
        return units * UNIT_MM;
    }

    Set<Subject> drawn() {
        return drawn;
    }

    /** In units of the sheet, with what stands beside it. */
    double width(double perMm) {
        return NUMBERS + PANEL_MM * perMm + BESIDE;
    }

    double height(double perMm) {
        return CAPTION + Math.max(heightMm() * perMm + 12, lines().size() * Svg.LINE + 20);
    }

    void draw(Svg svg, double left, double top, double perMm) {
        double x = left + NUMBERS;
        double wide = PANEL_MM * perMm;
        double unit = UNIT_MM * perMm;
        double base = top + CAPTION + units * unit;
        svg.thing("place", place.id(), "rack", "Rack " + place.id() + ", " + units + " units");
        svg.words(x, top + 18, "start", 14, false, place.id() + ", " + units + " U");
        svg.leaf("rect", "x", x, "y", base - units * unit, "width", wide, "height", units * unit);
        for (int n = 1; n <= units; n++) {
            double y = base - n * unit;
            svg.words(x - 8, y + unit / 2 + 4, "end", Integer.toString(n));
            int upper = n;
            if (mounted.stream().noneMatch(each -> each.unit() <= upper && upper < each.unit() - 1 + each.high())) {
                svg.line(x, y, x + wide, y, Svg.HAIR);
            }
        }
        svg.close();
        for (Mounted each : mounted) {
            double y = base - (each.unit() - 1 + each.high()) * unit;
            Things.Thing thing = each.thing();
            svg.thing(
                    "equipment", thing.id(), "equipment " + thing.change().word, thing.said() + ", unit " + span(each));
            svg.leaf(
                    "rect",
                    "x",
                    x + 2,
                    "y",
                    y,
                    "width",
                    wide - 4,
                    "height",
                    each.high() * unit,
                    "stroke-width",
                    thing.change() == Change.STAYS ? Svg.HAIR : Svg.NORMAL);
            double middle = y + each.high() * unit / 2 + 4;
            svg.id(x + 10, middle, "start", thing.id());
            double after = x + 22 + TextWidth.mono(thing.id(), Svg.SMALL);
            svg.words(after, middle, "start", TextWidth.cut(thing.name(), Svg.SMALL, x + wide - 8 - after));
            svg.close();
        }
        double y = top + CAPTION + 12;
        svg.open("g", "class", "beside");
        for (String line : lines()) {
            svg.words(x + wide + 14, y, "start", line);
            y += Svg.LINE;
        }
        svg.close();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (!beside.isEmpty()) {
            lines.add("Not drawn in the rack:");
        }
        beside.forEach(each -> lines.addAll(TextWidth.wrap(each, Svg.SMALL, BESIDE - 30)));
        return lines;
    }

    /** Two things in one unit, and what does not fit. */
    private void troubles() {
        for (int i = 0; i < mounted.size(); i++) {
            Mounted one = mounted.get(i);
            if (one.unit() < 1 || one.unit() - 1 + one.high() > units) {
                beside.add(one.thing().id() + ": reaches beyond the rack, unit " + span(one));
            }
            for (Mounted other : mounted.subList(i + 1, mounted.size())) {
                if (one.unit() < other.unit() + other.high() && other.unit() < one.unit() + one.high()) {
                    beside.add(one.thing().id() + " and " + other.thing().id() + ": both in unit "
                            + Math.max(one.unit(), other.unit()));
                }
            }
        }
    }

    private static String span(Mounted each) {
        int last = (int) Math.ceil(each.unit() - 1 + each.high());
        return last <= each.unit() ? Integer.toString(each.unit()) : each.unit() + " to " + last;
    }
}
