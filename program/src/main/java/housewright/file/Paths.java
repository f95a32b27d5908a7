package housewright.file;

import housewright.file.Node.Mapping;
import housewright.file.Node.Sequence;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Ways into a document: keys, and indexes from 0 of lists. */
final class Paths {
    private Paths() {}

    /** As people read it, list entries counted from 1: {@code patch.desk[3].to}. */
    static String text(List<?> path) {
        StringBuilder text = new StringBuilder();
        for (Object step : path) {
            if (step instanceof Integer index) {
                text.append('[').append(index + 1).append(']');
            } else {
                text.append(text.isEmpty() ? "" : ".").append(Shown.cut(step.toString()));
            }
        }
        return text.toString();
    }

    /** As above, without an index into what is a single scalar in the document. */
    static String text(Node root, List<?> path) {
        boolean indexed = !path.isEmpty() && path.getLast() instanceof Integer;
        List<?> holder = indexed ? path.subList(0, path.size() - 1) : path;
        return text(indexed && find(root, holder) instanceof Node.Scalar ? holder : path);
    }

    /** The node there, or the last one on the way: a short form stands for all that is in it. */
    static Node nearest(Node root, List<?> path) {
        Node node = root;
        for (Object step : path) {
            Node next = next(node, step);
            if (next == null) {
                return node;
            }
            node = next;
        }
        return node;
    }

    /** The node there, or null where nothing is. */
    static @Nullable Node find(Node root, List<?> path) {
        Node node = root;
        for (Object step : path) {
            node = next(node, step);
            if (node == null) {
                return null;
            }
        }
        return node;
    }

    private static @Nullable Node next(Node node, Object step) {
        if (step instanceof Integer index) {
            return node instanceof Sequence sequence && index < sequence.items().size()
                    ? sequence.items().get(index)
                    : null;
        }
        return node instanceof Mapping mapping ? mapping.find(step.toString()) : null;
    }
}
