package housewright.app.table;

import housewright.file.Mentions.Mention;
import housewright.model.change.Change;
import java.util.List;

/** What came of working an edit out. */
public sealed interface Edit {
    /**
     * What makes it.
     *
     * @param says what it does, for the history
     * @param rows ids of the rows it is about, as they are afterwards
     * @param notes what was done besides, or left for a person to do, as sentences
     */
    record Made(List<Change> changes, String says, List<String> rows, List<String> notes) implements Edit {
        public Made {
            changes = List.copyOf(changes);
            rows = List.copyOf(rows);
            notes = List.copyOf(notes);
        }
    }

    /** Cells that do not read. */
    record Wrong(List<CellError> errors) implements Edit {
        public Wrong {
            errors = List.copyOf(errors);
        }
    }

    /** Others name what would go. */
    record Held(List<Mention> mentions) implements Edit {
        public Held {
            mentions = List.copyOf(mentions);
        }
    }
}
