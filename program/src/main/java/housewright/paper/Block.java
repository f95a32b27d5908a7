package housewright.paper;

import java.util.List;

/** One part of a sheet. */
public sealed interface Block {
    /** A heading within the sheet. */
    record Heading(String text) implements Block {}

    /** A paragraph. */
    record Text(String text) implements Block {}

    /** Where somebody could be hurt: what to mind, and whose word counts. */
    record Caution(String text) implements Block {}

    /**
     * @param name names it among the tables of its paper; tables of one name have the same columns and become one
     *     spreadsheet
     */
    record Table(String name, List<Column> columns, List<Row> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            for (Row row : rows) {
                if (row.cells().size() != columns.size()) {
                    throw new IllegalArgumentException("Table " + name + " has " + columns.size() + " columns, but row "
                            + row.key() + " has " + row.cells().size() + " cells");
                }
            }
        }
    }

    /**
     * A drawing on a page of its own size, with its own frame and title block.
     *
     * @param svg one {@code svg} element; where its title block has the revision and the date, {@link
     *     PaperOptions#REVISION} and {@link PaperOptions#DATE} stand for them until they are known
     * @param width in mm of paper
     * @param height likewise
     */
    record Drawing(String title, String svg, double width, double height) implements Block {}

    /** What to do, one after the other. */
    record Steps(List<Step> steps) implements Block {
        public Steps {
            steps = List.copyOf(steps);
        }
    }

    /**
     * One thing to do.
     *
     * @param where to go; empty to stay
     * @param act what to do there
     * @param see what is seen when it is right; empty where nothing is
     * @param blank what is to be written in by hand; empty where nothing is
     */
    record Step(String where, String act, String see, String blank) {}

    /**
     * A page of labels, each in its place.
     *
     * @param width of the page, in mm
     * @param height likewise
     * @param outlined whether the edge of each label is drawn
     */
    record Labels(double width, double height, boolean outlined, List<Label> labels) implements Block {
        public Labels {
            labels = List.copyOf(labels);
        }
    }
}
