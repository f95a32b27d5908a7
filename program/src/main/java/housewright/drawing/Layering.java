package housewright.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.EdgeLabelSideSelection;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeLabelPlacement;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.HierarchyHandling;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.NullElkProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkLabel;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Lays a diagram out by layers, from sources on the left to destinations on the right, with lines of right angles: the
 * layered method of the Eclipse Layout Kernel.
 */
final class Layering {
    private static final int SEED = 1;
    private static final double CAPTION = 26;
    private static final double GAP_ROOM = 44;

    static {
        LayoutMetaDataService.getInstance(); // teaches the kernel to copy its own values; once, before the first layout
    }

    private Layering() {}

    static Laid lay(Diagram diagram) {
        ElkNode root = ElkGraphUtil.createGraph();
        options(root, 4);
        Map<Diagram.Frame, ElkNode> frames = new LinkedHashMap<>();
        Map<String, ElkNode> parents = new HashMap<>();
        diagram.frames().forEach((place, keys) -> {
            ElkNode frame = ElkGraphUtil.createNode(root);
            options(frame, 14);
            frames.put(place, frame);
            keys.forEach(key -> parents.put(key, frame));
        });
        Map<String, ElkNode> nodes = new LinkedHashMap<>();
        Map<Diagram.Spot, ElkPort> ports = new HashMap<>();
        diagram.nodes().forEach((key, node) -> {
            ElkNode made = ElkGraphUtil.createNode(parents.getOrDefault(key, root));
            made.setDimensions(node.width(), node.height());
            made.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
            node.west()
                    .forEach((port, row) -> ports.put(
                            new Diagram.Spot(key, port, false), port(made, PortSide.WEST, 0, node.portY(row))));
            node.east()
                    .forEach((port, row) -> ports.put(
                            new Diagram.Spot(key, port, true),
                            port(made, PortSide.EAST, node.width(), node.portY(row))));
            nodes.put(key, made);
        });
        Folds folds = new Folds(diagram);
        List<ElkEdge> edges = new ArrayList<>();
        for (Diagram.Wire wire : diagram.wires()) {
            boolean back = folds.isBack(wire);
            ElkEdge edge = ElkGraphUtil.createSimpleEdge(
                    ports.get(back ? wire.to() : wire.from()), ports.get(back ? wire.from() : wire.to()));
            boolean gap = wire.link().sort() == Link.Sort.GAP;
            if (gap || !wire.text().isEmpty()) {
                ElkLabel label = ElkGraphUtil.createLabel(wire.link().id(), edge);
                label.setDimensions(
                        gap ? GAP_ROOM : Node.widest(Set.copyOf(wire.text())) + 4,
                        Math.max(4, wire.text().size() * Svg.LINE));
                label.setProperty(CoreOptions.EDGE_LABELS_PLACEMENT, EdgeLabelPlacement.CENTER);
            }
            edges.add(edge);
        }
        new LayeredLayoutProvider().layout(root, new NullElkProgressMonitor());
        Map<String, Laid.Area> areas = new LinkedHashMap<>();
        nodes.forEach((key, node) -> areas.put(key, area(node)));
        Map<Diagram.Frame, Laid.Area> places = new LinkedHashMap<>();
        frames.forEach((place, node) -> places.put(place, area(node)));
        List<Laid.Course> lines = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            Laid.Course course = course(edges.get(i));
            boolean back = folds.isBack(diagram.wires().get(i));
            lines.add(back ? new Laid.Course(course.corners().reversed(), course.text()) : course);
        }
        return new Laid(root.getWidth(), root.getHeight(), areas, places, lines);
    }

    private static void options(ElkNode node, double pad) {
        node.setProperty(CoreOptions.HIERARCHY_HANDLING, HierarchyHandling.INCLUDE_CHILDREN);
        node.setProperty(CoreOptions.DIRECTION, Direction.RIGHT);
        node.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        node.setProperty(CoreOptions.RANDOM_SEED, SEED);
        node.setProperty(CoreOptions.PADDING, new ElkPadding(pad < 10 ? pad : CAPTION, pad, pad, pad));
        node.setProperty(CoreOptions.SPACING_NODE_NODE, 20.0);
        node.setProperty(CoreOptions.SPACING_EDGE_NODE, 12.0);
        node.setProperty(CoreOptions.SPACING_EDGE_EDGE, 8.0);
        node.setProperty(CoreOptions.SPACING_EDGE_LABEL, 1.0);
        node.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 24.0);
        node.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 12.0);
        node.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 8.0);
        node.setProperty(LayeredOptions.EDGE_LABELS_SIDE_SELECTION, EdgeLabelSideSelection.ALWAYS_UP);
    }

    private static ElkPort port(ElkNode node, PortSide side, double x, double y) {
        ElkPort port = ElkGraphUtil.createPort(node);
        port.setDimensions(0, 0);
        port.setLocation(x, y);
        port.setProperty(CoreOptions.PORT_SIDE, side);
        return port;
    }

    private static Laid.Area area(ElkNode node) {
        Laid.At at = origin(node);
        return new Laid.Area(at.x(), at.y(), node.getWidth(), node.getHeight());
    }

    /** A node's place in the drawing; the kernel gives it within the node around it. */
    private static Laid.At origin(ElkNode node) {
        double x = 0;
        double y = 0;
        for (ElkNode each = node; each != null; each = each.getParent()) {
            x += each.getX();
            y += each.getY();
        }
        return new Laid.At(x, y);
    }

    private static Laid.Course course(ElkEdge edge) {
        Laid.At at = origin(edge.getContainingNode());
        List<Laid.At> corners = new ArrayList<>();
        for (ElkEdgeSection section : edge.getSections()) {
            corners.add(new Laid.At(at.x() + section.getStartX(), at.y() + section.getStartY()));
            for (ElkBendPoint bend : section.getBendPoints()) {
                corners.add(new Laid.At(at.x() + bend.getX(), at.y() + bend.getY()));
            }
            corners.add(new Laid.At(at.x() + section.getEndX(), at.y() + section.getEndY()));
        }
        Laid.At text = edge.getLabels().isEmpty()
                ? corners.getFirst()
                : new Laid.At(
                        at.x() + edge.getLabels().getFirst().getX() + 2,
                        at.y() + edge.getLabels().getFirst().getY());
        return new Laid.Course(corners, text);
    }
}
