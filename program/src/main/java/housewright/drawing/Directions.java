package housewright.drawing;

import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Shape;
import housewright.model.Tie;
import housewright.study.Study;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which way signal runs in each cable: by the sockets at its ends, through panels by what comes in on their other side,
 * else as the project writes it.
 */
final class Directions {
    private final Map<String, Shape> shapes = new HashMap<>();
    /** Sockets of which it is known that signal arrives there out of a cable (false) or leaves into one (true). */
    private final Map<String, Boolean> leaves = new HashMap<>();

    private final Map<String, String> tied = new HashMap<>();

    Directions(Study study, Set<String> there) {
        for (String id : there) {
            Equipment each = study.project().equipment().get(id);
            if (each == null) {
                continue;
            }
            Equipment now = study.moment().isDone("equipment", id) ? each : each.today();
            Model model = study.types().findModel(now.model()).orElse(null);
            if (model != null) {
                shapes.put(id, Shape.of(model));
                for (Tie tie : model.ties()) {
                    for (Tie.Pair pair : tie.pairs()) {
                        tied.putIfAbsent(id + "." + pair.one(), id + "." + pair.other());
                        tied.putIfAbsent(id + "." + pair.other(), id + "." + pair.one());
                    }
                }
            }
        }
    }

    /** Turns every cable whose signal runs the other way. */
    void settle(Map<String, List<Link>> cables) {
        boolean more = true;
        while (more) {
            more = false;
            for (List<Link> links : cables.values()) {
                for (Link link : links) {
                    Boolean forward = forward(link);
                    if (forward != null) {
                        more |= know(link.from(), forward);
                        more |= know(link.to(), !forward);
                    }
                }
            }
        }
        cables.replaceAll((id, links) -> links.stream()
                .map(link -> Boolean.FALSE.equals(forward(link)) ? link.turned() : link)
                .toList());
    }

    private @Nullable Boolean forward(Link link) {
        Boolean one = leaves(link.from());
        if (one != null) {
            return one;
        }
        Boolean other = leaves(link.to());
        return other == null ? null : !other;
    }

    private @Nullable Boolean leaves(Link.End end) {
        for (String name : end.ports()) {
            Shape shape = shapes.get(end.box());
            Port port = shape == null
                    ? null
                    : shape.findSocket(name).map(Shape.Socket::port).orElse(null);
            if (port != null && port.out() != null) {
                return true;
            }
            if (port != null && port.in() != null) {
                return false;
            }
            Boolean known = leaves.get(end.box() + "." + name);
            if (known != null) {
                return known;
            }
        }
        return null;
    }

    /** What arrives at one side of a panel leaves at the other. */
    private boolean know(Link.End end, boolean leaving) {
        boolean news = false;
        for (String name : end.ports()) {
            String socket = end.box() + "." + name;
            String other = tied.get(socket);
            if (other != null) {
                news |= leaves.putIfAbsent(socket, leaving) == null;
                news |= leaves.putIfAbsent(other, !leaving) == null;
            }
        }
        return news;
    }
}
