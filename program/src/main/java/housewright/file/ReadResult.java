package housewright.file;

import housewright.model.Project;
import java.util.List;

/** What came of reading a file: the whole project, or every error; never half of it. */
public sealed interface ReadResult {

    /** A project without errors, and its text for naming lines. */
    record Loaded(Project project, SourceText source) implements ReadResult {}

    /** @param errors by line and column; not empty */
    record Refused(List<FileError> errors) implements ReadResult {
        public Refused {
            errors = List.copyOf(errors);
        }
    }
}
