package housewright.cli;

/** Text in lines of at most {@value #WIDTH} columns, or as many as a narrower terminal has. A no-break space holds a number and its unit together. */
final class Page {
    static final int WIDTH = 100;

    /** No terminal is taken for narrower: what is indented must have room. */
    static final int LEAST_WIDTH = 40;

    private final StringBuilder text = new StringBuilder();
    private final boolean colour;
    private final int width;

    Page(boolean colour) {
        this(colour, WIDTH);
    }

    /** @param columns what the terminal has */
    Page(boolean colour, int columns) {
        this.colour = colour;
        this.width = Math.clamp(columns, LEAST_WIDTH, WIDTH);
    }

    Page blank() {
        text.append('\n');
        return this;
    }

    /** One line as it stands, however long. */
    Page line(String line) {
        text.append(line).append('\n');
        return this;
    }

    Page line(Ink ink, String line) {
        return line(ink.on(colour, line));
    }

    /** Wrapped, each line in that ink. */
    Page wrapped(Ink ink, String words) {
        for (String line : new Page(false, width).wrapped(words).text.toString().split("\n", 0)) {
            line(ink, line);
        }
        return this;
    }

    Page wrapped(String words) {
        return hanging("", "", words);
    }

    Page hanging(String label, String words) {
        return hanging(label, label, words);
    }

    Page hanging(Ink ink, String label, String words) {
        return hanging(label, ink.on(colour, label), words);
    }

    /** Words wrapped at the width, all lines indented by the label's length, the label before the first. */
    private Page hanging(String label, String shownLabel, String words) {
        String indent = " ".repeat(label.length());
        int room = width - label.length();
        int start = 0;
        String before = shownLabel;
        while (words.length() - start > room) {
            int end = words.lastIndexOf(' ', start + room);
            if (end <= start) {
                end = words.indexOf(' ', start); // a word longer than the line
                if (end < 0) {
                    break;
                }
            }
            text.append(before).append(words, start, end).append('\n');
            before = indent;
            start = end + 1;
        }
        text.append(before).append(words, start, words.length()).append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString().replace('\u00A0', ' ');
    }
}
