package housewright.file;

import housewright.file.Node.Mapping;
import housewright.model.Project;

/** Changes the text of a project file where it must and nowhere else: comments, order and spelling stay. */
public final class ProjectText {
    private ProjectText() {}

    /**
     * The text with what the second project has instead of what the first has. In YAML what differs is put in place, key
     * by key and list entry by list entry; what is new goes to the end of its section; where a text is laid out so
     * that this cannot be done, its whole entity or section is written anew. JSON is written anew whole.
     *
     * @param before the project that the text reads as
     * @throws IllegalArgumentException if the text reads as anything else
     * @throws IllegalStateException if the change could not be placed; nothing known brings that about
     */
    public static String edit(String originalText, String fileName, Project before, Project after) {
        String mark = originalText.startsWith("\uFEFF") ? "\uFEFF" : "";
        String text = originalText.substring(mark.length());
        try {
            if (Documents.isJson(fileName, text)) {
                requireSame(bind(JsonNodes.read(text)), before);
                return mark + ProjectWriter.json(after);
            }
            Mapping document = (Mapping) YamlNodes.read(text);
            requireSame(bind(document), before);
            return mark + edit(text, document, before, after);
        } catch (DocumentException e) {
            throw new IllegalArgumentException(e.error(fileName).text(), e);
        }
    }

    private static String edit(String text, Mapping document, Project before, Project after) {
        Mapping from = (Mapping) ModelNodes.of(before);
        Mapping to = (Mapping) ModelNodes.of(after);
        String trouble = "";
        for (YamlEdit.Grain grain : YamlEdit.Grain.values()) {
            try {
                String edited = new YamlEdit(text, grain).edit(document, from, to);
                if (after.equals(bind(YamlNodes.read(edited)))) {
                    return edited;
                }
                trouble = "read again it is another project";
            } catch (YamlEdit.Unplaced e) {
                trouble = String.valueOf(e.getMessage());
            } catch (DocumentException e) {
                trouble = e.error("edited text").text();
            }
        }
        throw new IllegalStateException("The change could not be placed in the text: " + trouble);
    }

    private static void requireSame(Project read, Project before) {
        if (!read.equals(before)) {
            throw new IllegalArgumentException("The text is not that of the project before the change");
        }
    }

    /** The project of a document, its references not looked at: those of a good project stay good. */
    private static Project bind(Node document) {
        Errors errors = new Errors();
        Project project = new Binder(errors, new Budget()).project((Mapping) document);
        if (!errors.isEmpty()) {
            throw new IllegalArgumentException(errors.list("text").getFirst().text());
        }
        return project;
    }
}
