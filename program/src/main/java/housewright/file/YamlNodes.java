package housewright.file;

import housewright.file.Node.Entry;
import housewright.file.Node.Layout;
import housewright.file.Node.Look;
import housewright.file.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** YAML 1.2 as nodes, every scalar as the text it is. Straight from the parser's events: there is nothing to compose. */
final class YamlNodes {
    private static final int SMALL_BUFFER = 4 * 1024;
    private static final int LARGE_BUFFER = 1024 * 1024;
    private static final LoadSettings SMALL = settings(SMALL_BUFFER);

    private final ParserImpl parser;

    private YamlNodes(String text) {
        // The parser grows its window by a buffer at a time and copies it each time: quadratic in a long scalar.
        LoadSettings settings =
                text.length() < SMALL_BUFFER ? SMALL : settings(Math.min(text.length() + 1, LARGE_BUFFER));
        parser = new ParserImpl(settings, new StreamReader(settings, text));
    }

    private static LoadSettings settings(int buffer) {
        return LoadSettings.builder()
                .setBufferSize(buffer)
                .setCodePointLimit(Integer.MAX_VALUE)
                .build();
    }

    static Node read(String text) throws DocumentException {
        try {
            return new YamlNodes(text).document();
        } catch (MarkedYamlEngineException e) {
            throw YamlTrouble.explain(e, text);
        } catch (ReaderException e) {
            throw character(e, text);
        } catch (YamlEngineException e) {
            throw new DocumentException(1, 1, "what is no YAML 1.2: " + Shown.cut(String.valueOf(e.getMessage())), "");
        }
    }

    private Node document() throws DocumentException {
        parser.next(); // the start of the stream
        if (parser.peekEvent().getEventId() == Event.ID.StreamEnd) {
            throw Documents.empty();
        }
        parser.next(); // the start of the document
        Node root = node(parser.next(), 0);
        parser.next(); // its end
        Event after = parser.next();
        if (after.getEventId() != Event.ID.StreamEnd) {
            Span span = span(after, after);
            throw new DocumentException(
                    span.line(),
                    span.column(),
                    "a second document",
                    "one document in a file: nothing after --- or ...");
        }
        return root;
    }

    private Node node(Event event, int depth) throws DocumentException {
        if (depth > Documents.DEEPEST) {
            throw Documents.tooDeep(span(event, event));
        }
        if (event instanceof AliasEvent alias) {
            throw refused(alias, "the alias *" + alias.getAlias().getValue(), "the value itself: write it out");
        }
        NodeEvent start = (NodeEvent) event;
        if (start.getAnchor().isPresent()) {
            throw refused(
                    start,
                    "the anchor &" + start.getAnchor().get().getValue(),
                    "the value alone: anchors are not used");
        }
        if (start instanceof ScalarEvent scalar) {
            refuseTag(scalar.getTag(), scalar);
            Look look = scalar.getScalarStyle() == ScalarStyle.PLAIN ? Look.PLAIN : Look.TEXT;
            return new Scalar(scalar.getValue(), look, span(scalar, scalar));
        }
        CollectionStartEvent collection = (CollectionStartEvent) start;
        refuseTag(collection.getTag(), collection);
        return collection instanceof MappingStartEvent ? mapping(collection, depth) : sequence(collection, depth);
    }

    private Node sequence(CollectionStartEvent start, int depth) throws DocumentException {
        List<Node> items = new ArrayList<>();
        Event event = parser.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(event, depth + 1));
            event = parser.next();
        }
        Span span = start.isFlow() ? span(start, event) : upTo(start, items.isEmpty() ? null : items.getLast());
        return new Node.Sequence(items, Layout.COMPACT, span);
    }

    private Node mapping(CollectionStartEvent start, int depth) throws DocumentException {
        List<Entry> entries = new ArrayList<>();
        Event event = parser.next();
        while (event.getEventId() != Event.ID.MappingEnd) {
            Node key = node(event, depth + 1);
            if (!(key instanceof Scalar name)) {
                throw new DocumentException(
                        key.span().line(), key.span().column(), key.found() + " before a colon", "a key");
            }
            if (name.look() == Look.PLAIN && name.text().equals("<<")) {
                throw new DocumentException(
                        name.span().line(),
                        name.span().column(),
                        "the merge key <<",
                        "the keys themselves: write them out");
            }
            entries.add(new Entry(name, node(parser.next(), depth + 1)));
            event = parser.next();
        }
        Span span = start.isFlow()
                ? span(start, event)
                : upTo(start, entries.isEmpty() ? null : entries.getLast().value());
        return new Node.Mapping(entries, Layout.COMPACT, span);
    }

    private static void refuseTag(Optional<String> tag, Event event) throws DocumentException {
        if (tag.isPresent()) {
            throw refused(
                    event,
                    "the tag " + tag.get().replace("tag:yaml.org,2002:", "!!"),
                    "the value alone: tags are not used");
        }
    }

    private static DocumentException refused(Event event, String found, String expected) {
        Span span = span(event, event);
        return new DocumentException(span.line(), span.column(), Shown.cut(found), expected);
    }

    private static Span span(Event from, Event to) {
        Mark start = from.getStartMark().orElseThrow();
        Mark end = to.getEndMark().orElseThrow();
        return new Span(start.getLine() + 1, start.getColumn() + 1, start.getIndex(), end.getIndex());
    }

    /** A block's own end mark lies after the comments that follow it; its last member knows better. */
    private static Span upTo(Event from, @Nullable Node last) {
        Mark start = from.getStartMark().orElseThrow();
        int end = last == null ? start.getIndex() : last.span().end();
        return new Span(start.getLine() + 1, start.getColumn() + 1, start.getIndex(), end);
    }

    private static DocumentException character(ReaderException e, String text) {
        int at = text.offsetByCodePoints(0, Math.min(e.getPosition(), text.codePointCount(0, text.length())));
        int[] place = Documents.lineAndColumn(text, at);
        return new DocumentException(
                place[0],
                place[1],
                String.format(java.util.Locale.ROOT, "the character U+%04X", e.getCodePoint()),
                "text without control characters");
    }
}
