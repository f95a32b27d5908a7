package housewright.signal;

import housewright.model.Model;
import housewright.model.Shape;
import housewright.model.Types;
import java.util.IdentityHashMap;

/**
 * What is known of types, made once for each: a project has many pieces of few types, a mend asks for many graphs, and an
 * edit leaves most types as they are. Safe to ask from several threads.
 */
public final class Layouts {
    private final IdentityHashMap<Model, Layout> known = new IdentityHashMap<>();

    /** The same, for a project of which these may be another version: of types that it no longer has, nothing is kept. */
    public synchronized Layouts keptFor(Types types) {
        Layouts kept = new Layouts();
        known.forEach((model, layout) -> {
            if (types.findModel(model.id()).orElse(null) == model) {
                kept.known.put(model, layout);
            }
        });
        return kept;
    }

    synchronized Layout of(Model model) {
        return known.computeIfAbsent(model, Layout::new);
    }

    /** The type with its ranges written out. */
    Shape shape(Model model) {
        return model.portsKnown() ? of(model).shape : Shape.of(model);
    }
}
