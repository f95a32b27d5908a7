package housewright.file;

import java.util.Optional;

/** The text a project was read from, for naming lines and for changing it. */
public final class SourceText {

    /** Line and column, from 1. */
    public record Position(int line, int column) {}

    private final String fileName;
    private final String text;
    private final Node root;

    SourceText(String fileName, String text, Node root) {
        this.fileName = fileName;
        this.text = text;
        this.root = root;
    }

    public String fileName() {
        return fileName;
    }

    public String text() {
        return text;
    }

    /**
     * Where an entity stands.
     *
     * @param section as the file names it, such as {@code equipment} or {@code looks}; {@code venue.rooms} is
     *     {@code rooms}
     */
    public Optional<Position> find(String section, String id) {
        if (Paths.find(root, Sections.holder(section.substring(section.indexOf('.') + 1)))
                instanceof Node.Mapping holder) {
            for (Node.Entry entry : holder.entries()) {
                if (entry.key().text().equals(id)) {
                    Span span = entry.key().span();
                    return Optional.of(new Position(span.line(), span.column()));
                }
            }
        }
        return Optional.empty();
    }
}
