package housewright.drawing;

import housewright.finding.Subject;
import housewright.model.Place;
import housewright.model.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Draws a diagram that is laid out. */
final class SignalInk {
    private final Project project;
    private final Diagram diagram;
    private final Laid laid;
    /** What is lit, as kind and id; nothing is chosen where it is empty. */
    private final Set<Subject> lit;

    SignalInk(Project project, Diagram diagram, Laid laid, Set<Subject> lit) {
        this.project = project;
        this.diagram = diagram;
        this.laid = laid;
        this.lit = lit;
    }

    /** Everything that is drawn, places included. */
    Set<Subject> subjects() {
        Set<Subject> subjects = new TreeSet<>();
        diagram.frames().keySet().stream()
                .filter(frame -> !frame.place().isEmpty())
                .forEach(frame -> subjects.add(new Subject("place", frame.place())));
        diagram.nodes().values().forEach(node -> {
            if (node.box() != null) {
                subjects.add(Subject.equipment(node.box().id()));
            }
        });
        diagram.wires().forEach(wire -> subjects.add(wire.link().subject()));
        return subjects;
    }

    double width() {
        return laid.width();
    }

    double height() {
        return laid.height();
    }

    /** What the lines mean, of those that are on the sheet. */
    static List<String> legend(State state, Part part) {
        List<String> said = new ArrayList<>();
        if (state == State.CHANGE) {
            said.add("Thin: stays. Normal: new. Dashed: struck.");
        }
        for (Link.Sort sort : Link.Sort.values()) {
            if (part.net().links().stream().anyMatch(link -> link.sort() == sort)) {
                switch (sort) {
                    case CABLE -> {}
                    case SEND -> said.add("Dash and dot: sent over the network.");
                    case RADIO -> said.add("Dotted: radio.");
                    case GAP -> said.add("Gap in a line: nothing passes.");
                }
            }
        }
        if (!part.elsewhere().isEmpty()) {
            said.add("A box with a double edge is on the sheet that it names.");
        }
        return said.isEmpty() ? List.of() : List.of(String.join(" ", said));
    }

    void draw(Svg svg, double left, double top) {
        svg.open("g", "class", "drawing", "transform", "translate(" + Svg.num(left) + " " + Svg.num(top) + ")");
        laid.frames().forEach((frame, area) -> frame(svg, frame.place(), area));
        for (int i = 0; i < diagram.wires().size(); i++) {
            wire(svg, i);
        }
        diagram.nodes().values().forEach(node -> node(svg, node));
        svg.close();
    }

    private void frame(Svg svg, String place, Laid.Area area) {
        Place known = project.venue().places().get(place);
        String room = known == null || known.room() == null ? "" : ", " + known.room();
        String caption = place.isEmpty() ? "No place yet" : place + room;
        if (place.isEmpty()) {
            svg.open("g", "class", "place");
        } else {
            svg.thing("place", place, "place", "Place " + caption);
        }
        rect(svg, area.x(), area.y(), area.width(), area.height(), Svg.HAIR);
        svg.words(area.x() + 8, area.y() + 17, "start", TextWidth.cut(caption, Svg.SMALL, area.width() - 12));
        svg.close();
    }

    private static void rect(Svg svg, double x, double y, double width, double height, double weight) {
        svg.leaf("rect", "x", x, "y", y, "width", width, "height", height, "stroke-width", weight);
    }

    private double weight(boolean isLit, Change change) {
        return isLit ? Svg.CHOSEN : lit.isEmpty() ? change.weight : Svg.HAIR;
    }

    private void wire(Svg svg, int index) {
        Diagram.Wire wire = diagram.wires().get(index);
        Laid.Course course = laid.lines().get(index);
        Link link = wire.link();
        boolean isLit = lit.contains(link.subject()) && link.change() != Change.GOES;
        double weight = weight(isLit, link.change());
        svg.thing(
                link.sort().kind,
                link.id(),
                link.sort() == Link.Sort.GAP
                        ? "gap"
                        : link.sort().kind + " " + link.change().word + (isLit ? " lit" : ""),
                link.said());
        String dashes = link.change() == Change.GOES
                ? "8 5"
                : switch (link.sort()) {
                    case CABLE -> "none";
                    case SEND -> "12 3 2 3";
                    case RADIO -> "2 4";
                    case GAP -> "none";
                };
        if (link.sort() == Link.Sort.GAP) {
            boolean leadsOn = wire.from().node().startsWith("stop ");
            List<List<Laid.At>> pieces = leadsOn ? List.of(course.corners()) : Courses.withGap(course.corners());
            for (List<Laid.At> piece : pieces) {
                svg.leaf("path", "d", path(piece), "stroke-width", leadsOn ? Svg.HAIR : Svg.NORMAL);
            }
        } else {
            svg.leaf("path", "d", path(course.corners()), "stroke-width", weight, "stroke-dasharray", dashes);
            arrow(svg, course.corners(), weight);
            if (link.both()) {
                arrow(svg, course.corners().reversed(), weight);
            }
        }
        double y = course.text().y() + 11.5;
        for (String line : wire.text()) {
            svg.words(course.text().x(), y, "start", line);
            y += Svg.LINE;
        }
        svg.close();
    }

    private static String path(List<Laid.At> corners) {
        StringBuilder path = new StringBuilder();
        for (Laid.At at : corners) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(Svg.num(at.x()))
                    .append(' ')
                    .append(Svg.num(at.y()));
        }
        return path.toString();
    }

    /** Where signal arrives. */
    private static void arrow(Svg svg, List<Laid.At> corners, double weight) {
        Laid.At tip = corners.getLast();
        Laid.At before = corners.get(corners.size() - 2);
        double dx = Math.signum(tip.x() - before.x());
        double dy = Math.signum(tip.y() - before.y());
        double half = 2.5 + weight / 2;
        double baseX = tip.x() - dx * 7;
        double baseY = tip.y() - dy * 7;
        svg.leaf(
                "path",
                "d",
                "M" + Svg.num(tip.x()) + " " + Svg.num(tip.y()) + "L" + Svg.num(baseX - dy * half) + " "
                        + Svg.num(baseY + dx * half) + "L" + Svg.num(baseX + dy * half) + " "
                        + Svg.num(baseY - dx * half) + "Z",
                "fill",
                "currentColor",
                "stroke",
                "none");
    }

    private void node(Svg svg, Node node) {
        Laid.Area area = laid.nodes().get(node.key());
        if (area == null) {
            return;
        }
        Box box = node.box();
        boolean isLit = false;
        if (box == null) {
            svg.open("g", "class", node.sort().name().toLowerCase(java.util.Locale.ROOT));
            beside(svg, node, area);
        } else {
            isLit = lit.contains(Subject.equipment(box.id())) && box.change() != Change.GOES;
            svg.thing(
                    "equipment",
                    box.id(),
                    "equipment " + box.change().word + (isLit ? " lit" : ""),
                    "Equipment " + box.id() + ", " + box.name() + box.change().said,
                    "stroke-dasharray",
                    box.change() == Change.GOES ? "8 5" : "none");
            rect(svg, area.x(), area.y(), area.width(), area.height(), weight(isLit, box.change()));
        }
        double y = area.y() + Node.TOP + 11;
        for (int i = 0; i < node.head().size(); i++) {
            String line = node.head().get(i);
            if (i == 0 && node.sort() != Node.Sort.STOP && node.sort() != Node.Sort.LOOSE) {
                svg.id(area.x() + Node.PAD, y, "start", line);
            } else {
                svg.words(area.x() + Node.PAD, y, "start", line);
            }
            y += Svg.LINE;
        }
        ports(svg, node, area);
        if (box != null) {
            insides(svg, node, box, area, isLit ? Svg.CHOSEN : Svg.NORMAL);
        }
        svg.close();
    }

    /** The ways through a box, each in a row of its own: from its socket, past its points, to its socket. */
    private static void insides(Svg svg, Node node, Box box, Laid.Area area, double weight) {
        double left = area.x() + node.insideX();
        for (int row = 0; row < box.insides().size(); row++) {
            Box.Inside inside = box.insides().get(row);
            double y = area.y() + node.portY(row);
            double textEnd = left + (inside.over().isEmpty() ? 0 : TextWidth.of(inside.over(), Svg.SMALL) + 6);
            if (!inside.over().isEmpty()) {
                svg.words(left, y + 4, "start", inside.over());
            }
            for (String port : List.of(inside.in(), inside.out())) {
                if (inside.over().isEmpty()
                        && (inside.in().isEmpty() || inside.out().isEmpty())) {
                    continue;
                }
                Integer west = node.west().get(port);
                Integer east = node.east().get(port);
                if (west != null) {
                    double from = area.x() + Node.PAD + TextWidth.of(port, Svg.SMALL) + 3;
                    double fromY = area.y() + node.portY(west);
                    double turn = left - 9;
                    way(svg, from, fromY, turn, left - 3, y, weight);
                } else if (east != null) {
                    double from = area.x() + area.width() - Node.PAD - TextWidth.of(port, Svg.SMALL) - 3;
                    double fromY = area.y() + node.portY(east);
                    double turn = area.x()
                            + area.width()
                            - Node.PAD
                            - Node.widest(node.east().keySet())
                            - 9;
                    way(svg, from, fromY, turn, textEnd, y, weight);
                }
            }
        }
    }

    private static void way(Svg svg, double from, double fromY, double turn, double to, double y, double weight) {
        List<Laid.At> corners = fromY == y
                ? List.of(new Laid.At(from, y), new Laid.At(to, y))
                : List.of(new Laid.At(from, fromY), new Laid.At(turn, fromY), new Laid.At(turn, y), new Laid.At(to, y));
        svg.leaf("path", "d", path(corners), "stroke-width", weight);
    }

    /** What is no equipment of this sheet: an open shape, pointed to where the line goes on. */
    private static void beside(Svg svg, Node node, Laid.Area area) {
        double right = area.x() + area.width();
        double bottom = area.y() + area.height();
        if (node.sort() == Node.Sort.ELSEWHERE) {
            double inset = 6;
            rect(svg, area.x(), area.y(), area.width(), area.height(), Svg.HAIR);
            if (node.east().isEmpty()) {
                svg.line(right - inset, area.y(), right - inset, bottom, Svg.HAIR);
            } else {
                svg.line(area.x() + inset, area.y(), area.x() + inset, bottom, Svg.HAIR);
            }
        } else {
            svg.line(area.x(), area.y(), area.x(), bottom, Svg.CHOSEN);
        }
    }

    private static void ports(Svg svg, Node node, Laid.Area area) {
        node.west().forEach((port, row) -> {
            if (!port.isEmpty()) {
                svg.words(area.x() + Node.PAD, area.y() + node.portY(row) + 4, "start", port);
            }
        });
        node.east().forEach((port, row) -> {
            if (!port.isEmpty()) {
                svg.words(area.x() + area.width() - Node.PAD, area.y() + node.portY(row) + 4, "end", port);
            }
        });
    }
}
