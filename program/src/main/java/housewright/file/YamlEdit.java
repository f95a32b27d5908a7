package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Mapping;
import housewright.file.Node.Sequence;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One change of a YAML text. Three trees of one shape are gone through together: the text's own, and what the writer
 * would write before and after; where the last two differ, the stretch of the first is changed.
 */
final class YamlEdit {

    /** How small the stretches are that are written anew; the next larger where a smaller could not be placed. */
    enum Grain {
        VALUE,
        ENTITY,
        SECTION;

        boolean splits(List<String> path) {
            boolean nested = !path.isEmpty()
                    && (path.getFirst().equals("venue") || path.getFirst().equals("lighting"));
            return switch (this) {
                case VALUE -> true;
                case ENTITY -> path.size() < (nested ? 3 : 2);
                case SECTION -> path.isEmpty();
            };
        }
    }

    /** The text is laid out so that a change of this grain has no place. */
    static final class Unplaced extends RuntimeException {
        private static final long serialVersionUID = 1;

        Unplaced(String message) {
            super(message, null, false, false);
        }
    }

    private final String text;
    private final Grain grain;
    private final Offsets offsets;
    private final String lineEnd;
    private final TextChanges changes = new TextChanges();
    private final List<String> path = new ArrayList<>();

    YamlEdit(String text, Grain grain) {
        this.text = text;
        this.grain = grain;
        this.offsets = new Offsets(text);
        this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** @throws Unplaced where that cannot be done */
    String edit(Mapping document, Mapping before, Mapping after) {
        mapping(document, before, after);
        return changes.applyTo(text);
    }

    private void mapping(Mapping own, Mapping before, Mapping after) {
        boolean flow = isFlow(own);
        List<Entry> entries = own.entries();
        boolean[] kept = new boolean[entries.size()];
        for (int i = 0; i < kept.length; i++) {
            Entry entry = entries.get(i);
            String key = entry.key().text();
            Node to = after.find(key);
            Node from = before.find(key);
            // A key that the writer leaves out, since it says the default, stays as long as that holds.
            kept[i] = to != null || from == null;
            if (to != null && !to.equals(from)) {
                path.add(key);
                value(entry, from, to, flow, indentOf(own));
                path.removeLast();
            }
        }
        for (int i = 0; i < kept.length; i++) {
            if (!kept[i]) {
                remove(memberOf(entries, i), i, kept, entries.size(), flow, each -> memberOf(entries, each));
            }
        }
        add(own, after, kept, flow);
    }

    private void add(Mapping own, Mapping after, boolean[] kept, boolean flow) {
        int anchor = -1;
        int lastKept = lastKept(kept);
        boolean table = after.layout() == Node.Layout.LINES;
        for (Entry entry : after.entries()) {
            int there = indexOf(own, entry.key().text());
            if (there >= 0) {
                anchor = there;
                continue;
            }
            int at = anchor < 0 || table ? lastKept : anchor;
            if (at < 0) {
                throw new Unplaced("nothing is left of " + Paths.text(path));
            }
            Span value = own.entries().get(at).value().span();
            Span key = own.entries().get(at).key().span();
            int end = Math.max(end(value), offsets.of(key.end()));
            if (flow) {
                String flat = YamlText.flow(new Mapping(List.of(entry), Node.Layout.COMPACT, Span.NONE));
                changes.replace(end, end, ", " + flat.substring(1, flat.length() - 1));
            } else {
                insertLines(end, (path.isEmpty() ? lineEnd : "") + YamlText.entry(entry, indentOf(own), lineEnd));
            }
        }
    }

    private static int indexOf(Mapping own, String key) {
        for (int i = 0; i < own.entries().size(); i++) {
            if (own.entries().get(i).key().text().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    private static int lastKept(boolean[] kept) {
        for (int i = kept.length - 1; i >= 0; i--) {
            if (kept[i]) {
                return i;
            }
        }
        return -1;
    }

    /** Puts another value behind a key. */
    private void value(Entry own, @Nullable Node from, Node to, boolean flow, int indent) {
        if (from != null && descend(own.value(), from, to)) {
            return;
        }
        int keyEnd = offsets.of(own.key().span().end());
        int colon = afterColon(keyEnd, own.value());
        if (flow) {
            changes.replace(colon, Math.max(colon, end(own.value().span())), " " + YamlText.flow(to));
        } else {
            String entry = YamlText.entry(new Entry(own.key(), to), indent, lineEnd);
            String rendered = entry.substring(
                    indent + YamlText.key(own.key(), false).length() + 1, entry.length() - lineEnd.length());
            replaceLines(colon, Math.max(colon, end(own.value().span())), rendered);
        }
    }

    /** Changes members of a list or mapping alone, where that can be done; else it is to be written anew as a whole. */
    private boolean descend(Node own, Node from, Node to) {
        if (!grain.splits(path)) {
            return false;
        }
        int mark = changes.mark();
        int depth = path.size();
        try {
            return members(own, from, to);
        } catch (Unplaced e) {
            changes.backTo(mark);
            path.subList(depth, path.size()).clear();
            return false;
        }
    }

    /** False where it has not the same form before, after and in the text, or nothing of it stays. */
    private boolean members(Node own, Node from, Node to) {
        if (own instanceof Mapping mapping && from instanceof Mapping before && to instanceof Mapping after) {
            boolean rest = false;
            for (Entry entry : mapping.entries()) {
                String key = entry.key().text();
                rest |= after.find(key) != null || before.find(key) == null;
            }
            if (rest) {
                mapping(mapping, before, after);
            }
            return rest;
        }
        return own instanceof Sequence list
                && from instanceof Sequence before
                && to instanceof Sequence after
                && list.items().size() == before.items().size()
                && sequence(list, before.items(), after.items());
    }

    private boolean sequence(Sequence own, List<Node> before, List<Node> after) {
        boolean flow = isFlow(own);
        List<ListDiff.Step> steps = ListDiff.of(before, after);
        boolean[] kept = new boolean[before.size()];
        for (ListDiff.Step step : steps) {
            if (step.from() >= 0 && step.to() >= 0) {
                kept[step.from()] = true;
            }
        }
        if (lastKept(kept) < 0) {
            return false;
        }
        int anchor = -1;
        for (ListDiff.Step step : steps) {
            if (step.to() < 0) {
                continue;
            }
            Node to = after.get(step.to());
            if (step.from() >= 0) {
                anchor = step.from();
                Node from = before.get(step.from());
                if (!from.equals(to)) {
                    path.add(Integer.toString(step.from()));
                    item(own.items().get(step.from()), from, to, flow);
                    path.removeLast();
                }
            } else {
                insertItem(own, anchor, to, flow, kept);
            }
        }
        for (int i = 0; i < kept.length; i++) {
            if (!kept[i]) {
                remove(itemOf(own, i, flow), i, kept, kept.length, flow, each -> itemOf(own, each, flow));
            }
        }
        return true;
    }

    private void item(Node own, Node from, Node to, boolean flow) {
        if (descend(own, from, to)) {
            return;
        }
        int start = offsets.of(own.span().start());
        if (flow) {
            changes.replace(start, end(own.span()), YamlText.flow(to));
        } else {
            int dash = dashBefore(start);
            int indent = columnOf(dash);
            String rendered = YamlText.item(to, indent, lineEnd);
            replaceLines(dash, end(own.span()), rendered.substring(indent, rendered.length() - lineEnd.length()));
        }
    }

    private void insertItem(Sequence own, int anchor, Node item, boolean flow, boolean[] kept) {
        if (flow && anchor < 0) {
            int first = 0;
            while (!kept[first]) {
                first++;
            }
            int start = offsets.of(own.items().get(first).span().start());
            changes.replace(start, start, YamlText.flow(item) + ", ");
        } else if (flow) {
            int end = end(own.items().get(anchor).span());
            changes.replace(end, end, ", " + YamlText.flow(item));
        } else {
            int dash = dashBefore(offsets.of(own.items().getFirst().span().start()));
            String rendered = YamlText.item(item, columnOf(dash), lineEnd);
            if (anchor < 0) {
                int line = lineStart(dash);
                requireBlank(line, dash);
                changes.replace(line, line, rendered);
            } else {
                insertLines(end(own.items().get(anchor).span()), rendered);
            }
        }
    }

    /** A member of a list or mapping, from its key or hyphen to its end. */
    private record Member(int start, int end) {}

    private interface Members {
        Member get(int index);
    }

    private Member memberOf(List<Entry> entries, int index) {
        Entry entry = entries.get(index);
        int end = Math.max(
                end(entry.value().span()), offsets.of(entry.key().span().end()));
        return new Member(offsets.of(entry.key().span().start()), end);
    }

    private Member itemOf(Sequence own, int index, boolean flow) {
        Span span = own.items().get(index).span();
        int start = offsets.of(span.start());
        return new Member(flow ? start : dashBefore(start), end(span));
    }

    private void remove(Member gone, int index, boolean[] kept, int count, boolean flow, Members members) {
        if (!flow) {
            int from = lineStart(gone.start());
            requireBlank(from, gone.start());
            changes.replace(from, afterLine(gone.end()), "");
            return;
        }
        boolean before = false;
        for (int i = 0; i < index; i++) {
            before |= kept[i];
        }
        if (before) {
            changes.replace(members.get(index - 1).end(), gone.end(), "");
        } else if (index + 1 < count) {
            changes.replace(gone.start(), members.get(index + 1).start(), "");
        } else {
            throw new Unplaced("nothing is left of " + Paths.text(path));
        }
    }

    /** Puts lines after the line that something ends in. */
    private void insertLines(int end, String lines) {
        int at = afterLine(end);
        boolean open = at == text.length() && !text.endsWith("\n");
        changes.replace(at, at, open ? lineEnd + lines.substring(0, lines.length() - lineEnd.length()) : lines);
    }

    /** Puts lines in place of what may be followed by a comment, which then goes to the end of the first. */
    private void replaceLines(int start, int end, String with) {
        int lineStop = end;
        while (lineStop < text.length() && text.charAt(lineStop) != '\n' && text.charAt(lineStop) != '\r') {
            lineStop++;
        }
        String rest = text.substring(end, lineStop);
        int firstEnd = with.indexOf(lineEnd);
        if (firstEnd < 0 || !rest.stripLeading().startsWith("#")) {
            changes.replace(start, end, with);
        } else {
            changes.replace(start, lineStop, with.substring(0, firstEnd) + rest + with.substring(firstEnd));
        }
    }

    /** Where a value ends, without the line breaks that a block scalar takes in. */
    private int end(Span span) {
        int start = offsets.of(span.start());
        int end = offsets.of(span.end());
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    /** The place right after the colon between a key and its value. */
    private int afterColon(int keyEnd, Node value) {
        int colon = keyEnd;
        while (colon < text.length() && text.charAt(colon) == ' ') {
            colon++;
        }
        if (colon == text.length()
                || text.charAt(colon) != ':'
                || offsets.of(value.span().start()) < colon) {
            throw new Unplaced("a key without its colon beside it at " + Paths.text(path));
        }
        return colon + 1;
    }

    /** The hyphen of a list item, on its line or on one before, with nothing but comments between. */
    private int dashBefore(int start) {
        int line = lineStart(start);
        String before = text.substring(line, start).stripTrailing();
        while (before.isEmpty() && line > 0) {
            int stop = line - 1;
            line = lineStart(stop);
            int comment = text.indexOf('#', line);
            before = text.substring(line, comment < 0 || comment > stop ? stop : comment)
                    .stripTrailing();
        }
        if (!before.endsWith("-")) {
            throw new Unplaced("a list item without its hyphen before it at " + Paths.text(path));
        }
        return line + before.length() - 1;
    }

    private int lineStart(int at) {
        return text.lastIndexOf('\n', at - 1) + 1;
    }

    private int afterLine(int at) {
        int newline = text.indexOf('\n', at);
        return newline < 0 ? text.length() : newline + 1;
    }

    private int columnOf(int at) {
        return text.codePointCount(lineStart(at), at);
    }

    private void requireBlank(int from, int to) {
        for (int i = from; i < to; i++) {
            if (text.charAt(i) != ' ') {
                throw new Unplaced("no line of its own at " + Paths.text(path));
            }
        }
    }

    private boolean isFlow(Node own) {
        char first = text.charAt(offsets.of(own.span().start()));
        return own instanceof Mapping ? first == '{' : first == '[';
    }

    private static int indentOf(Mapping own) {
        return own.span().column() - 1;
    }
}
