package housewright.paper;

import housewright.study.Study;
import java.util.List;

/** One paper of the binder. Pure: equal studies and options give equal sheets. */
public interface Paper {
    /** Names it in commands and files, such as {@code cable-schedule}. */
    String id();

    String title();

    /** For whom it is, such as "Whoever pulls and plugs cable". */
    String recipient();

    /** The question that it answers. */
    String question();

    /** Whether it is printed on labels, and not on paper to be bound. */
    default boolean isOnLabels() {
        return false;
    }

    /** Its sheets in order; none where the project has nothing to put on them. */
    List<Sheet> sheets(Study study, PaperOptions options);
}
