package housewright.app.paper;

import housewright.paper.Paper;
import housewright.paper.PaperOptions;
import housewright.paper.Sheet;
import housewright.study.Study;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The states of the project from which sheets were printed before, to mark in the margin the rows that have changed since. */
public final class Earlier {
    /** Nothing was printed before. */
    public static final Earlier NONE = new Earlier(Map.of(), "First issue.");

    private final Map<String, Supplier<@Nullable Study>> bySheet;
    private final String said;

    private Earlier(Map<String, Supplier<@Nullable Study>> bySheet, String said) {
        this.bySheet = Map.copyOf(bySheet);
        this.said = said;
    }

    /**
     * @param bySheet the state from which a sheet was last printed, by its id, for those that say something else by now;
     *     it is asked for only where the sheet is made, and gives null where nobody knows it any more
     */
    public static Earlier of(Map<String, Supplier<@Nullable Study>> bySheet) {
        return new Earlier(
                bySheet,
                "A row of a table that has changed since its sheet was last printed has a bar in the margin; what is"
                        + " gone, and what is drawn, has none.");
    }

    /** What a contents page says of it, in a sentence. */
    String said() {
        return said;
    }

    /** The sheets of a paper with bars beside the rows that have changed. */
    List<Sheet> marked(Paper paper, List<Sheet> sheets, PaperOptions options) {
        Map<Study, List<Sheet>> then = new HashMap<>();
        return sheets.stream()
                .map(sheet -> {
                    Supplier<@Nullable Study> asked = bySheet.get(sheet.id());
                    Study study = asked == null ? null : asked.get();
                    return study == null
                            ? sheet
                            : then.computeIfAbsent(study, each -> paper.sheets(each, options)).stream()
                                    .filter(old -> old.id().equals(sheet.id()))
                                    .findFirst()
                                    .map(old -> Bars.marked(sheet, Hash.rows(old)))
                                    .orElse(sheet);
                })
                .toList();
    }
}
