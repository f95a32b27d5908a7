package housewright.app;

import housewright.file.FileError;
import java.util.List;

/** What came of an edit. */
public sealed interface Outcome {

    /**
     * It is kept, and stays so.
     *
     * @param before what was there when it came
     * @param revision its own; 0 where it changed nothing
     */
    record Accepted(Now before, Now now, long revision) implements Outcome {
        /** What it did to feeds and findings; worked out when asked for. */
        public Effect effect() {
            return Effect.of(before.study(), now.study());
        }
    }

    /** It would leave a project that no file may hold. Nothing was changed. */
    record Refused(List<FileError> errors) implements Outcome {
        public Refused {
            errors = List.copyOf(errors);
        }
    }

    /** Somebody else edited the same since the revision it was made on. Nothing was changed. */
    record Conflict(Now now, List<Clash> clashes) implements Outcome {
        public Conflict {
            clashes = List.copyOf(clashes);
        }
    }

    /**
     * It could not be done, or not be kept. Nothing was changed.
     *
     * @param why as a sentence
     */
    record NotDone(String why) implements Outcome {}
}
