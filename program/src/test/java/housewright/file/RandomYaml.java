package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Look;
import housewright.file.Node.Mapping;
import housewright.file.Node.Scalar;
import housewright.file.Node.Sequence;
import java.util.Random;

/** A document as many hands would write it: in flow and block style, over several lines, quoted or not, with comments. */
final class RandomYaml {
    private final Random random;
    private final StringBuilder out = new StringBuilder();
    private final String lineEnd;
    private final int step;
    private final boolean flat;
    private int comments;

    private RandomYaml(Random random) {
        this.random = random;
        this.lineEnd = random.nextInt(5) == 0 ? "\r\n" : "\n";
        this.step = random.nextBoolean() ? 2 : 4;
        this.flat = random.nextInt(4) == 0;
    }

    static String document(Mapping root, Random random) {
        RandomYaml yaml = new RandomYaml(random);
        if (random.nextInt(4) == 0) {
            yaml.out.append("--- # the project").append(yaml.lineEnd);
        }
        yaml.mapping(root, 0, 0);
        String text = yaml.out.toString();
        return random.nextInt(4) == 0 ? text.stripTrailing() : text;
    }

    private void mapping(Mapping mapping, int indent, int depth) {
        for (Entry entry : mapping.entries()) {
            ownLine(indent);
            out.repeat(' ', indent);
            entry(entry, indent, depth);
        }
    }

    private void entry(Entry entry, int indent, int depth) {
        out.append(scalar(entry.key(), false)).append(':');
        value(entry.value(), indent, depth, false);
    }

    /** Ends the line. */
    private void value(Node node, int indent, int depth, boolean inList) {
        boolean block = depth < 2 ? random.nextInt(12) > 0 : random.nextInt(3) == 0;
        switch (node) {
            case Mapping mapping
            when block && !mapping.entries().isEmpty() -> {
                if (inList && random.nextBoolean()) {
                    out.append(' ');
                    boolean first = true;
                    for (Entry entry : mapping.entries()) {
                        if (!first) {
                            ownLine(indent + 2);
                            out.repeat(' ', indent + 2);
                        }
                        first = false;
                        entry(entry, indent + 2, depth + 1);
                    }
                } else {
                    endLine();
                    mapping(mapping, indent + step, depth + 1);
                }
            }
            case Sequence sequence
            when block && !sequence.items().isEmpty() -> {
                endLine();
                int dash = !inList && random.nextBoolean() ? indent : indent + step;
                for (Node item : sequence.items()) {
                    ownLine(dash);
                    out.repeat(' ', dash).append('-');
                    value(item, dash, depth + 1, true);
                }
            }
            case Scalar scalar -> {
                String[] lines = YamlScalars.lines(scalar.text());
                if (lines != null && scalar.look() == Look.TEXT && random.nextBoolean()) {
                    out.append(scalar.text().endsWith("\n") ? " |" : " |-").append(lineEnd);
                    for (String line : lines) {
                        out.append(line.isEmpty() ? "" : " ".repeat(indent + step) + line)
                                .append(lineEnd);
                    }
                } else {
                    out.append(" ".repeat(1 + random.nextInt(3))).append(scalar(scalar, false));
                    endLine();
                }
            }
            default -> {
                out.append(" ".repeat(1 + random.nextInt(3)));
                flow(node, indent + step, random.nextInt(4) == 0);
                endLine();
            }
        }
    }

    private void flow(Node node, int indent, boolean lines) {
        switch (node) {
            case Scalar scalar -> out.append(scalar(scalar, true));
            case Sequence sequence -> {
                out.append('[');
                for (Node item : sequence.items()) {
                    separate(item != sequence.items().getFirst(), indent, lines);
                    flow(item, indent, lines);
                }
                out.append(!sequence.items().isEmpty() && random.nextInt(8) == 0 ? ", ]" : "]");
            }
            case Mapping mapping -> {
                out.append('{');
                for (Entry entry : mapping.entries()) {
                    separate(entry != mapping.entries().getFirst(), indent, lines);
                    out.append(scalar(entry.key(), true)).append(": ");
                    flow(entry.value(), indent, lines);
                }
                out.append(random.nextInt(5) == 0 ? " }" : "}");
            }
        }
    }

    private void separate(boolean comma, int indent, boolean lines) {
        out.append(comma ? random.nextInt(6) == 0 ? " , " : ", " : random.nextInt(5) == 0 ? " " : "");
        if (lines && random.nextInt(3) == 0) {
            endLine();
            out.repeat(' ', indent);
        }
    }

    private String scalar(Scalar scalar, boolean flow) {
        String text = scalar.text();
        boolean quotable = text.chars().allMatch(c -> c >= ' ' && c < 0x7F);
        if (quotable && random.nextInt(6) == 0) {
            return "'" + text.replace("'", "''") + "'";
        }
        return random.nextInt(8) == 0 ? YamlScalars.quoted(text) : YamlScalars.text(scalar, flow);
    }

    private void endLine() {
        if (random.nextInt(6) == 0) {
            out.append(" ".repeat(1 + random.nextInt(3))).append("# end ").append(++comments);
        }
        out.append(lineEnd);
    }

    private void ownLine(int indent) {
        if (flat) {
            return;
        }
        switch (random.nextInt(9)) {
            case 0 -> out.append(lineEnd);
            case 1 ->
                out.append(" ".repeat(indent))
                        .append("# line ")
                        .append(++comments)
                        .append(lineEnd);
            default -> {
                // nothing between
            }
        }
    }
}
