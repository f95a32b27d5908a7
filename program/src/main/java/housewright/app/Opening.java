package housewright.app;

import housewright.file.FileError;
import java.util.List;

/** What came of opening a project file. */
public sealed interface Opening {

    record Opened(ProjectFile file) implements Opening {}

    /** @param errors what is wrong with it; not empty */
    record Refused(List<FileError> errors) implements Opening {
        public Refused {
            errors = List.copyOf(errors);
        }
    }

    /** @param why it could not be read at all, as a sentence */
    record Unreadable(String why) implements Opening {}
}
