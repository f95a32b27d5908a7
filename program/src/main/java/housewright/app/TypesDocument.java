package housewright.app;

import housewright.model.Doc;
import java.util.List;

/** What {@code library --json} prints. */
public record TypesDocument(@Doc("The best match first") List<TypePart> types) {

    /** A type of the built-in library. */
    public record TypePart(
            String id,

            @Doc("Where it belongs in a project file: models, cable-types or adapters")
            String section,

            @Doc("Kind of a model; else cable or adapter") String kind,
            String name,
            String note,

            @Doc("Where its figures come from, such as typical; empty where it is not said")
            String figures,

            @Doc("Its entry in YAML, as in a project file") String text) {}

    public static TypesDocument of(TypeSearch search, List<FoundType> types) {
        return new TypesDocument(types.stream()
                .map(type -> new TypePart(
                        type.id(),
                        type.section(),
                        type.kind(),
                        type.name(),
                        type.note(),
                        type.figures(),
                        search.text(type)))
                .toList());
    }
}
