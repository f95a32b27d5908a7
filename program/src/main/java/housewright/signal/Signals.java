package housewright.signal;

import housewright.model.Feed;
import housewright.model.Library;
import housewright.model.Project;
import housewright.model.Types;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The signal graph of one project at one moment, and what it shows. Everything is worked out on first asking and
 * kept; safe to ask from several threads.
 */
public final class Signals {
    private final Types types;
    private final SignalGraph graph;
    private final Layouts layouts;
    private @Nullable Map<String, FeedProof> proofs;

    private Signals(Project project, Types types, Moment moment, Layouts layouts) {
        this.types = types;
        this.layouts = layouts;
        this.graph = new GraphBuilder(project, types, moment, layouts).finish();
    }

    public static Signals of(Project project, Library library, Moment moment) {
        return new Signals(project, new Types(project, library), moment, new Layouts());
    }

    /** The same question on a changed project, with what is known of its types kept. */
    Signals with(Project changed) {
        return new Signals(changed, new Types(changed, types.library()), graph.moment, layouts);
    }

    public Project project() {
        return graph.project;
    }

    public Moment moment() {
        return graph.moment;
    }

    /** Every feed's proof, in the order of the file. */
    public List<FeedProof> proofs() {
        return List.copyOf(all().values());
    }

    public Optional<FeedProof> findProof(String feed) {
        return Optional.ofNullable(all().get(feed));
    }

    private synchronized Map<String, FeedProof> all() {
        Map<String, FeedProof> known = proofs;
        if (known == null) {
            known = new Proofs(graph).all();
            proofs = known;
        }
        return known;
    }

    public int nodeCount() {
        return graph.nodes;
    }

    public int edgeCount() {
        return graph.to.length;
    }

    /** Where the out-edges of each node start in {@link #linkTargets}; one more entry than there are nodes. */
    public int[] linkStarts() {
        return graph.start.clone();
    }

    /** The nodes that out-edges lead to: for measuring, and for checking against other programs. */
    public int[] linkTargets() {
        return graph.to.clone();
    }

    /** The nodes where a feed begins: for measuring, and for checking against other programs. */
    public int[] startNodes(Feed feed) {
        return Prover.pairs(feed).stream()
                .mapToInt(pair -> graph.end(pair.from(), true))
                .toArray();
    }

    /** The nodes where a feed must arrive, in the order of {@link #startNodes}. */
    public int[] endNodes(Feed feed) {
        return Prover.pairs(feed).stream()
                .mapToInt(pair -> graph.end(pair.to(), false))
                .toArray();
    }

    SignalGraph graph() {
        return graph;
    }

    Types types() {
        return types;
    }
}
