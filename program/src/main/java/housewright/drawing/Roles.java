package housewright.drawing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Which part a box plays at its place: what hangs together there gives, takes, or passes on. */
final class Roles {
    enum Role {
        GIVES,
        PASSES,
        TAKES
    }

    private final Map<String, String> root = new HashMap<>();
    private final Set<String> gives = new HashSet<>();
    private final Set<String> takes = new HashSet<>();

    Roles(Net net) {
        for (Link link : net.links()) {
            Box from = net.boxes().get(link.from().box());
            Box to = net.boxes().get(link.to().box());
            if (from != null && to != null && from.place().equals(to.place())) {
                root.put(root(from.id()), root(to.id()));
            }
        }
        for (Link link : net.links()) {
            Box from = net.boxes().get(link.from().box());
            Box to = net.boxes().get(link.to().box());
            boolean inside = from != null && to != null && from.place().equals(to.place());
            if (from != null && !inside) {
                gives.add(root(from.id()));
            }
            if (to != null && !inside) {
                takes.add(root(to.id()));
            }
        }
    }

    Role of(String box) {
        String all = root(box);
        return !takes.contains(all) ? Role.GIVES : gives.contains(all) ? Role.PASSES : Role.TAKES;
    }

    private String root(String box) {
        String at = box;
        for (String next = root.get(at); next != null && !next.equals(at); next = root.get(at)) {
            at = next;
        }
        return at;
    }
}
