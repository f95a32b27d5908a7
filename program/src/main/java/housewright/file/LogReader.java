package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Look;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.model.Library;
import housewright.model.LogEntry;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads what happened on site from a file of its own, which is written as the section {@code log} of a project file. */
public final class LogReader {
    private static final String LOG = "log";

    private LogReader() {}

    /**
     * The project with the log of that file in place of its own.
     *
     * @param bytes the entries of a log by their ids; all of them may stand under {@code log}
     */
    public static ReadResult read(String fileName, byte[] bytes, Project project, Library library) {
        try {
            String text = Documents.decode(bytes);
            Node root = Documents.read(fileName, text);
            Mapping document = document(root);
            Errors errors = new Errors();
            Budget budget = new Budget();
            Binder binder = new Binder(errors, budget);
            Project logged = with(project, binder.log(document.find(LOG)));
            new References(logged, library, binder, () -> document, errors, budget).check();
            return errors.isEmpty()
                    ? new ReadResult.Loaded(logged, new SourceText(fileName, text, document))
                    : new ReadResult.Refused(errors.list(fileName));
        } catch (DocumentException e) {
            return new ReadResult.Refused(List.of(e.error(fileName)));
        }
    }

    private static Mapping document(Node root) {
        if (root instanceof Mapping mapping
                && mapping.entries().size() == 1
                && mapping.entries().getFirst().key().text().equals(LOG)) {
            return mapping;
        }
        return new Mapping(List.of(new Entry(new Scalar(LOG, Look.TEXT), root)), Layout.SECTION, root.span());
    }

    private static Project with(Project project, Map<String, LogEntry> log) {
        List<Change> changes = new ArrayList<>();
        project.log().keySet().forEach(id -> changes.add(new Change.Drop(Section.LOG, id)));
        log.forEach((id, entry) -> changes.add(new Change.Put(Section.LOG, id, entry)));
        return Change.apply(project, changes);
    }
}
