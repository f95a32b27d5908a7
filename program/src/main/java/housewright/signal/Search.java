package housewright.signal;

import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/**
 * Paths of least delay from one node: Dijkstra's algorithm where most edges cost nothing, so nodes of one distance
 * wait in a plain queue and only those further away in a heap. The arrays serve one search after the other.
 */
final class Search {
    private final SignalGraph graph;
    /** A node's number among those reached, counted on from search to search, so that nothing need be cleared. */
    private final int[] number;

    /** The first number of this search; those below are of earlier ones. */
    private int first = 1;

    /** Of those reached in this search, by their number: the node, its delay, and the edge by which. */
    private int[] reached = new int[256];

    private long[] delay = new long[256];
    private int[] by = new int[256];
    private int reachedCount;
    private int source = -1;
    private boolean withContested;
    private int[] queue = new int[256];
    private long[] heapKey = new long[64];
    private int[] heapNode = new int[64];
    private int heapSize;

    Search(SignalGraph graph) {
        this.graph = graph;
        this.number = new int[graph.nodes];
    }

    /** Searches from a node, unless the last search was the same. */
    void from(int node, boolean contestedToo) {
        boolean contested = contestedToo && graph.anyContested;
        if (node == source && contested == withContested) {
            return;
        }
        source = node;
        withContested = contested;
        search(node, contestedToo, null);
    }

    /** Searches from a node, but passes none of those named, nor a contested patch. */
    void around(int node, BitSet avoided) {
        source = -1;
        search(node, false, avoided);
    }

    private void search(int node, boolean contestedToo, @Nullable BitSet avoided) {
        first += reachedCount;
        if (first > Integer.MAX_VALUE - graph.nodes) {
            Arrays.fill(number, 0);
            first = 1;
        }
        reachedCount = 0;
        heapSize = 0;
        reach(node, 0, -1);
        int head = 0;
        int tail = 0;
        queue[tail++] = node;
        long level = 0;
        boolean skipContested = graph.anyContested && !contestedToo;
        while (true) {
            while (head < tail) {
                int u = queue[head++];
                if (delayTo(u) != level) {
                    continue; // it has been reached sooner since
                }
                for (int e = graph.start[u], end = graph.start[u + 1]; e < end; e++) {
                    int v = graph.to[e];
                    long d = level + graph.delay[e];
                    if ((number[v] >= first && d >= delay[number[v] - first])
                            || (skipContested && graph.contested[e])
                            || (avoided != null && avoided.get(v))) {
                        continue;
                    }
                    reach(v, d, e);
                    if (d == level) {
                        if (tail == queue.length) {
                            queue = Arrays.copyOf(queue, tail * 2);
                        }
                        queue[tail++] = v;
                    } else {
                        push(d, v);
                    }
                }
            }
            if (heapSize == 0) {
                return;
            }
            level = heapKey[0];
            head = 0;
            tail = 0;
            while (heapSize > 0 && heapKey[0] == level) {
                if (tail == queue.length) {
                    queue = Arrays.copyOf(queue, tail * 2);
                }
                queue[tail++] = pop();
            }
        }
    }

    private void reach(int node, long distance, int edge) {
        int at = number[node] - first;
        if (at < 0) {
            at = reachedCount++;
            if (at == reached.length) {
                reached = Arrays.copyOf(reached, at * 2);
                delay = Arrays.copyOf(delay, at * 2);
                by = Arrays.copyOf(by, at * 2);
            }
            reached[at] = node;
            number[node] = first + at;
        }
        delay[at] = distance;
        by[at] = edge;
    }

    boolean reaches(int node) {
        return node >= 0 && number[node] >= first;
    }

    /** Delay in nanoseconds from the source, edges only, to a reached node. */
    long delayTo(int node) {
        return delay[number[node] - first];
    }

    /** The edge by which a reached node is reached; -1 at the source. */
    int edgeTo(int node) {
        return by[number[node] - first];
    }

    /** Everything reached, in the order first seen. */
    int[] reached() {
        return Arrays.copyOf(reached, reachedCount);
    }

    /** Edges from the source to a reached node. */
    int[] path(int node) {
        int hops = hops(node);
        int[] path = new int[hops];
        int at = node;
        for (int i = hops - 1; i >= 0; i--) {
            path[i] = edgeTo(at);
            at = graph.from[path[i]];
        }
        return path;
    }

    int hops(int node) {
        int hops = 0;
        for (int e = edgeTo(node); e >= 0; e = edgeTo(graph.from[e])) {
            hops++;
        }
        return hops;
    }

    /** The path to {@code node} comes by {@code over}. */
    boolean comesBy(int node, int over) {
        if (node == over) {
            return true;
        }
        for (int e = edgeTo(node); e >= 0; e = edgeTo(graph.from[e])) {
            if (graph.from[e] == over) {
                return true;
            }
        }
        return false;
    }

    private void push(long key, int node) {
        if (heapSize == heapKey.length) {
            heapKey = Arrays.copyOf(heapKey, heapSize * 2);
            heapNode = Arrays.copyOf(heapNode, heapSize * 2);
        }
        int i = heapSize++;
        while (i > 0) {
            int parent = (i - 1) >>> 1;
            if (heapKey[parent] <= key) {
                break;
            }
            heapKey[i] = heapKey[parent];
            heapNode[i] = heapNode[parent];
            i = parent;
        }
        heapKey[i] = key;
        heapNode[i] = node;
    }

    private int pop() {
        int top = heapNode[0];
        long key = heapKey[--heapSize];
        int node = heapNode[heapSize];
        int i = 0;
        while (true) {
            int child = 2 * i + 1;
            if (child >= heapSize) {
                break;
            }
            if (child + 1 < heapSize && heapKey[child + 1] < heapKey[child]) {
                child++;
            }
            if (heapKey[child] >= key) {
                break;
            }
            heapKey[i] = heapKey[child];
            heapNode[i] = heapNode[child];
            i = child;
        }
        heapKey[i] = key;
        heapNode[i] = node;
        return top;
    }
}
