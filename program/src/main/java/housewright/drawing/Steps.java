package housewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** The steps of a feed as a numbered list in columns under its drawing. */
final class Steps {
    private static final double COLUMN = 460;
    private static final double GAP = 24;
    private static final double ABOVE = 40;

    private final List<List<String>> columns = new ArrayList<>();

    Steps(List<String> steps, double width) {
        List<List<String>> entries = new ArrayList<>();
        int lines = 0;
        for (int i = 0; i < steps.size(); i++) {
            List<String> entry =
                    TextWidth.wrap((i + 1) + "  " + steps.get(i).replace('\u00A0', ' '), Svg.SMALL, COLUMN);
            entries.add(entry);
            lines += entry.size();
        }
        int count = Math.max(1, (int) ((width + GAP) / (COLUMN + GAP)));
        int rows = (lines + count - 1) / count;
        List<String> column = new ArrayList<>();
        for (List<String> entry : entries) {
            if (!column.isEmpty() && column.size() + entry.size() > rows + 1) {
                columns.add(column);
                column = new ArrayList<>();
            }
            column.addAll(entry);
        }
        if (!column.isEmpty()) {
            columns.add(column);
        }
    }

    double width() {
        return columns.isEmpty() ? 0 : columns.size() * (COLUMN + GAP) - GAP;
    }

    double height() {
        int most = columns.stream().mapToInt(List::size).max().orElse(0);
        return most == 0 ? 0 : ABOVE + most * Svg.LINE;
    }

    void draw(Svg svg, double left, double top) {
        if (columns.isEmpty()) {
            return;
        }
        svg.open("g", "class", "steps");
        svg.words(left, top + ABOVE - 10, "start", "Steps in order");
        for (int i = 0; i < columns.size(); i++) {
            double y = top + ABOVE + 8;
            for (String line : columns.get(i)) {
                svg.words(left + i * (COLUMN + GAP), y, "start", line);
                y += Svg.LINE;
            }
        }
        svg.close();
    }
}
