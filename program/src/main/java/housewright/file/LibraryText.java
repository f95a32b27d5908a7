package housewright.file;

import housewright.model.Adapter;
import housewright.model.CableType;
import housewright.model.Model;
import housewright.model.Practice;
import housewright.model.Project;
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

    /**
     * Reads how work is reckoned: a document with {@code practice} alone.
     *
     * @throws IllegalStateException where it has errors; the message lists them
     */
    public static Practice readPractice(String fileName, String text) {
        Errors errors = new Errors();
        Object read = null;
        try {
            if (Documents.read(fileName, text) instanceof Node.Mapping document
                    && document.entries().size() == 1
                    && document.entries().getFirst().key().text().equals("practice")) {
                read = new Binder(errors, new Budget())
                        .whole(
                                Practice.class,
                                "practice",
                                document.entries().getFirst().value());
            } else {
                errors.add(Span.NONE, "practice", "something else", "practice and nothing else");
            }
        } catch (DocumentException e) {
            throw new IllegalStateException(e.error(fileName).text(), e);
        }
        if (!(read instanceof Practice practice) || !errors.isEmpty()) {
            List<String> lines =
                    errors.list(fileName).stream().map(FileError::text).toList();
            throw new IllegalStateException(String.join("\n", lines));
        }
        return practice;
    }

    /**
     * Every error of a whole file of a library, {@code models}, {@code cable-types} and {@code adapters}, with what its
     * types say of their inside; none where it is sound. For tests and authors: reading single types trusts them.
     */
    public static List<FileError> listErrors(String fileName, String fileText) {
        Errors errors = new Errors();
        Budget budget = new Budget();
        try {
            if (!(Documents.read(fileName, fileText) instanceof Node.Mapping document)) {
                return List.of(
                        new FileError(fileName, 1, 1, "", "no mapping", "models, cable-types or adapters", null));
            }
            Project types = new Binder(errors, budget).types(document);
            types.models().forEach((id, model) -> {
                for (TypeChecks.Trouble trouble : TypeChecks.of(model, budget)) {
                    List<Object> path = new ArrayList<>(List.of("models", id));
                    path.addAll(trouble.path());
                    Span span = Paths.nearest(document, path).span();
                    errors.add(span, Paths.text(document, path), trouble.found(), trouble.expected());
                }
            });
            return errors.list(fileName);
        } catch (DocumentException e) {
            return List.of(e.error(fileName));
        }
    }

    private static <T> T read(Class<T> type, String section, String fileName, String id, String entryText) {
        Errors errors = new Errors();
        Object read = null;
        try {
            if (Documents.read(fileName, entryText) instanceof Node.Mapping document
                    && document.entries().size() == 1
                    && document.entries().getFirst().key().text().equals(id)
                    && Binder.isId(id, true)) {
                Node entry = document.entries().getFirst().value();
                read = new Binder(errors, new Budget()).entity(type, section, id, entry);
            } else {
                errors.add(Span.NONE, section + "." + id, "something else", "one entry of that id");
            }
        } catch (DocumentException e) {
            throw new IllegalStateException(e.error(fileName).text(), e);
        }
        if (read == null || !errors.isEmpty()) {
            List<String> lines =
                    errors.list(fileName).stream().map(FileError::text).toList();
            throw new IllegalStateException(String.join("\n", lines));
        }
        return type.cast(read);
    }
}
