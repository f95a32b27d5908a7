package housewright.drawing;

import housewright.finding.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Racks beside each other, as many on a sheet as it holds. */
final class RackSheets {
    private static final int ACROSS = 3;
    private static final double GAP = 20;

    private final List<Elevation> racks;
    private final boolean us;
    private final Scale scale;

    /** Gives a sheet its title block. */
    interface Naming {
        Page.Heading heading(String scale, int number, int of);
    }

    RackSheets(List<Elevation> racks, boolean us) {
        this.racks = racks;
        this.us = us;
        double tallest = racks.stream().mapToDouble(Elevation::heightMm).max().orElse(0);
        this.scale = Scale.fit(us, Elevation.PANEL_MM / 1000, tallest / 1000, 80);
    }

    List<Sheet> draw(String id, Naming naming) {
        double perMm = scale.unitsPerMetre() / 1000;
        int of = (racks.size() + ACROSS - 1) / ACROSS;
        List<Sheet> sheets = new ArrayList<>();
        for (int n = 1; n <= of; n++) {
            List<Elevation> here = racks.subList((n - 1) * ACROSS, Math.min(n * ACROSS, racks.size()));
            double width = -GAP;
            double height = 0;
            for (Elevation rack : here) {
                width += rack.width(perMm) + GAP;
                height = Math.max(height, rack.height(perMm));
            }
            Page page =
                    Page.fit(us, 1, width, height, List.of("Units are counted from the bottom. Seen from the front."));
            Page.Heading heading = naming.heading(scale.name(), n, of);
            Svg svg = page.begin(heading);
            double x = page.left();
            Set<Subject> drawn = new TreeSet<>();
            for (Elevation rack : here) {
                rack.draw(svg, x, page.top(), perMm);
                drawn.addAll(rack.drawn());
                x += rack.width(perMm) + GAP;
            }
            sheets.add(page.end(svg, id + "-" + n, heading, drawn));
        }
        return sheets;
    }
}
