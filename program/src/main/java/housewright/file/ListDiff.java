package housewright.file;

import java.util.ArrayList;
import java.util.List;

/** How one list becomes another. */
final class ListDiff {
    /** The most pairs of items that are compared; beyond, what lies between the equal ends counts as changed. */
    private static final long MOST = 4_000_000;

    /** An item from the one that is kept or changed into one of the other; -1 where there is none on that side. */
    record Step(int from, int to) {}

    private ListDiff() {}

    /** Steps in the order of both lists: the longest common part is kept; in a gap, items are changed one for one. */
    static List<Step> of(List<?> before, List<?> after) {
        int start = 0;
        while (start < before.size()
                && start < after.size()
                && before.get(start).equals(after.get(start))) {
            start++;
        }
        int end = 0;
        while (end < before.size() - start
                && end < after.size() - start
                && before.get(before.size() - 1 - end).equals(after.get(after.size() - 1 - end))) {
            end++;
        }
        int rows = before.size() - start - end;
        int columns = after.size() - start - end;
        int[][] common = (long) rows * columns <= MOST ? common(before, after, start, rows, columns) : new int[0][0];

        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < start; i++) {
            steps.add(new Step(i, i));
        }
        int row = 0;
        int column = 0;
        int gapRow = 0;
        int gapColumn = 0;
        while (common.length > 0 && row < rows && column < columns) {
            if (before.get(start + row).equals(after.get(start + column))) {
                gap(steps, start + gapRow, start + row, start + gapColumn, start + column);
                steps.add(new Step(start + row, start + column));
                row++;
                column++;
                gapRow = row;
                gapColumn = column;
            } else if (common[row + 1][column] >= common[row][column + 1]) {
                row++;
            } else {
                column++;
            }
        }
        gap(steps, start + gapRow, start + rows, start + gapColumn, start + columns);
        for (int i = 0; i < end; i++) {
            steps.add(new Step(before.size() - end + i, after.size() - end + i));
        }
        return steps;
    }

    private static void gap(List<Step> steps, int from, int fromEnd, int to, int toEnd) {
        int row = from;
        int column = to;
        while (row < fromEnd && column < toEnd) {
            steps.add(new Step(row++, column++));
        }
        while (row < fromEnd) {
            steps.add(new Step(row++, -1));
        }
        while (column < toEnd) {
            steps.add(new Step(-1, column++));
        }
    }

    /** Lengths of the longest common part of what follows each pair of places. */
    private static int[][] common(List<?> before, List<?> after, int start, int rows, int columns) {
        int[][] common = new int[rows + 1][columns + 1];
        for (int i = rows - 1; i >= 0; i--) {
            for (int j = columns - 1; j >= 0; j--) {
                common[i][j] = before.get(start + i).equals(after.get(start + j))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        return common;
    }
}
