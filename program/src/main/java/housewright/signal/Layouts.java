package housewright.signal;

import housewright.model.Model;
import java.util.IdentityHashMap;

/** Layouts already made, by type: a project has many pieces of few types, and a mend asks for many graphs. */
final class Layouts {
    private final IdentityHashMap<Model, Layout> known = new IdentityHashMap<>();

    synchronized Layout of(Model model) {
        return known.computeIfAbsent(model, Layout::new);
    }
}
