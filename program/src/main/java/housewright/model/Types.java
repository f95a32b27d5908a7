package housewright.model;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The types a project may use: its own first, then the library's. */
public record Types(Project project, Library library) {
    public Optional<Model> findModel(@Nullable String id) {
        return id == null
                ? Optional.empty()
                : Optional.ofNullable(project.models().get(id)).or(() -> library.findModel(id));
    }

    public Optional<CableType> findCableType(@Nullable String id) {
        return id == null
                ? Optional.empty()
                : Optional.ofNullable(project.cableTypes().get(id)).or(() -> library.findCableType(id));
    }

    public Optional<Adapter> findAdapter(String id) {
        return Optional.ofNullable(project.adapters().get(id)).or(() -> library.findAdapter(id));
    }

    /** How work is reckoned here: the project's own entries first, then the built-in ones. */
    public Practice practice() {
        return library.practice().overlaidBy(project.practice());
    }

    public List<String> modelIds() {
        return both(project.models().keySet(), library.modelIds());
    }

    public List<String> cableTypeIds() {
        return both(project.cableTypes().keySet(), library.cableTypeIds());
    }

    public List<String> adapterIds() {
        return both(project.adapters().keySet(), library.adapterIds());
    }

    private static List<String> both(Collection<String> own, Collection<String> library) {
        LinkedHashSet<String> ids = new LinkedHashSet<>(own);
        ids.addAll(library);
        return List.copyOf(ids);
    }
}
