package housewright.file;

/**
 * A stretch of a text.
 *
 * @param line from 1; 0 where there is no text
 * @param column from 1
 * @param start first code point, from 0
 * @param end code point after the last
 */
record Span(int line, int column, int start, int end) {
    static final Span NONE = new Span(0, 0, 0, 0);
}
