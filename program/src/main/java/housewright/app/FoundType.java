package housewright.app;

/**
 * A type of the library.
 *
 * @param section of a project file where it belongs: models, cable-types or adapters
 * @param kind of a model, else "cable" or "adapter"
 * @param name empty where it has none
 * @param note empty where it has none
 * @param figures where they come from, such as "typical"; empty where it is not said
 */
public record FoundType(String id, String section, String kind, String name, String note, String figures) {}
