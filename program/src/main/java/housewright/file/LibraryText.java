package housewright.file;

import housewright.model.Adapter;
import housewright.model.CableType;
import housewright.model.Model;
import java.util.ArrayList;
import java.util.List;

/** Reads single types of a library: the text of one entry, its key included, as it stands in a project file. */
public final class LibraryText {
    private LibraryText() {}

    /** @throws IllegalStateException where the text has errors; the message lists them, lines counted in the text */
    public static Model readModel(String fileName, String id, String entryText) {
        return read(Model.class, "models", fileName, id, entryText);
    }

    /** As {@link #readModel}. */
    public static CableType readCableType(String fileName, String id, String entryText) {
        return read(CableType.class, "cable-types", fileName, id, entryText);
    }

    /** As {@link #readModel}. */
    public static Adapter readAdapter(String fileName, String id, String entryText) {
        return read(Adapter.class, "adapters", fileName, id, entryText);
    }

    private static <T> T read(Class<T> type, String section, String fileName, String id, String entryText) {
        Errors errors = new Errors();
        Budget budget = new Budget();
        Object read = null;
        try {
            if (Documents.read("library.yaml", entryText) instanceof Node.Mapping document
                    && document.entries().size() == 1
                    && document.entries().getFirst().key().text().equals(id)
                    && Binder.isId(id, true)) {
                Node entry = document.entries().getFirst().value();
                read = new Binder(errors, budget).entity(type, section, id, entry);
                if (read instanceof Model model) {
                    for (TypeChecks.Trouble trouble : TypeChecks.of(model, budget)) {
                        List<Object> path = new ArrayList<>(List.of(section, id));
                        path.addAll(trouble.path());
                        Span span = Paths.nearest(entry, trouble.path()).span();
                        errors.add(span, Paths.text(path), trouble.found(), trouble.expected());
                    }
                }
            } else {
                errors.add(Span.NONE, section + "." + id, "something else", "one entry of that id");
            }
        } catch (DocumentException e) {
            throw new IllegalStateException(e.error(fileName).text(), e);
        }
        if (read == null || !errors.isEmpty()) {
            throw new IllegalStateException(String.join(
                    "\n", errors.list(fileName).stream().map(FileError::text).toList()));
        }
        return type.cast(read);
    }
}
