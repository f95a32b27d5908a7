package housewright.file;

import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** What the YAML parser could not read, in words for who wrote the file. */
final class YamlTrouble {
    private YamlTrouble() {}

    static DocumentException explain(MarkedYamlEngineException e, String text) {
        String problem = e.getProblem() == null ? "" : e.getProblem();
        String context = e.getContext() == null ? "" : e.getContext();
        Mark at = e.getProblemMark().or(e::getContextMark).orElse(null);
        Mark began = e.getContextMark().orElse(at);
        int line = at == null ? 1 : at.getLine() + 1;
        int column = at == null ? 1 : at.getColumn() + 1;
        int beganLine = began == null ? line : began.getLine() + 1;
        int beganColumn = began == null ? column : began.getColumn() + 1;
        String next = at == null ? "" : nextWord(text, at.getIndex());
        String since = began == null || began == at ? "" : " (it begins on line " + (began.getLine() + 1) + ")";

        if (problem.contains("TAB")) {
            return at(line, column, "a tab", "spaces, which alone indent a line");
        }
        if (problem.startsWith("mapping values are not allowed")) {
            int stop = at == null ? 0 : charOf(text, at.getIndex());
            String before = text.substring(text.lastIndexOf('\n', stop - 1) + 1, stop);
            return before.contains(": ")
                    ? at(
                            line,
                            column,
                            "a second colon in one line",
                            "quotation marks around text with a colon and a space in it")
                    : at(
                            line,
                            column,
                            "a colon after more than one line",
                            "a key and its colon on one line: the line before may lack its own");
        }
        if (context.contains("quoted scalar") && problem.contains("escape")) {
            int stop = at == null ? 0 : charOf(text, at.getIndex());
            int escape = Math.max(0, text.lastIndexOf('\\', stop));
            String found = "the escape " + Shown.cut(text.substring(escape, Math.min(text.length(), escape + 2)));
            return at(line, column, found, "one such as \\\\, \\\", \\n, \\t or \\u00E9");
        }
        if (context.contains("quoted scalar")) {
            return at(beganLine, beganColumn, "an opening quotation mark", "a closing one");
        }
        if (context.contains("simple key") || problem.contains("could not find expected ':'")) {
            return at(
                    beganLine,
                    beganColumn,
                    began == null ? next : nextWord(text, began.getIndex()),
                    "a colon after the key");
        }
        if (problem.startsWith("expected ',' or")) {
            String opening = problem.contains("'}'") ? "{" : "[";
            String closing = problem.contains("'}'") ? "}" : "]";
            if (next.isEmpty()) {
                return at(beganLine, beganColumn, "an opening " + opening, "a closing " + closing + " for it");
            }
            String range = next.startsWith("\"{") ? "; a name with a range in braces goes in quotes" : "";
            return at(line, column, next, "a comma or the closing " + closing + since + range);
        }
        if (problem.startsWith("expected <block end>")) {
            return at(
                    line,
                    column,
                    next.isEmpty() ? "the end of the file" : next,
                    context.contains("mapping")
                            ? "a key as far in as those before it" + since
                            : "a list item as far in as those before it" + since);
        }
        if (problem.contains("cannot start any token")) {
            return at(line, column, next, "a value; text that begins with such a character goes in quotes");
        }
        return at(line, column, next.isEmpty() ? "the end of the file" : next, "YAML 1.2 (" + problem + ")");
    }

    private static DocumentException at(int line, int column, String found, String expected) {
        return new DocumentException(line, column, found, expected);
    }

    private static int charOf(String text, int codePoints) {
        return text.offsetByCodePoints(0, Math.min(codePoints, text.codePointCount(0, text.length())));
    }

    /** Up to the end of a word, in quotes; empty at the end of the text. */
    private static String nextWord(String text, int codePoints) {
        int at = charOf(text, codePoints);
        int end = at;
        while (end < text.length() && end - at < 40 && !isSpace(text.charAt(end))) {
            end++;
        }
        if (end == at) {
            return at == text.length() ? "" : "the end of the line";
        }
        return Shown.quoted(text.substring(at, end));
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r';
    }
}
