package housewright.file;

import housewright.file.Node.Mapping;
import housewright.model.Project;

/** Writes project files; reading what is written gives an equal project, its entries in the same order. */
public final class ProjectWriter {
    private ProjectWriter() {}

    /** As YAML: an entity on one line where it fits into 110 columns, else a line for each key. */
    public static String yaml(Project project) {
        return YamlText.document((Mapping) ModelNodes.of(project));
    }

    /** The same document as JSON, with numbers and true and false where YAML has them plain. */
    public static String json(Project project) {
        return JsonText.document(ModelNodes.of(project));
    }

    /** One entity, or one type of a library, as it stands in its section under its id. */
    public static String yaml(String id, Record entity) {
        return YamlText.entry(new Node.Entry(ModelNodes.key(id), ModelNodes.of(entity)), 0, "\n");
    }
}
