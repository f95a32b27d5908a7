package housewright.picture;

import housewright.model.Carries;
import housewright.model.Feed;
import housewright.model.Join;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.PatchEntry;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Shape.Socket;
import housewright.model.Types;
import housewright.signal.Cause;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.Media;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Present;
import housewright.signal.Signals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The ways of all pictures that arrive at a moment. */
public final class Pictures {
    private final Types types;
    private final Moment moment;
    private final Map<String, Present> things;
    private final Map<String, List<Join.Pair>> patched = new ConcurrentHashMap<>();
    private final List<PicturePath> paths = new ArrayList<>();
    private final Map<List<Object>, Stretch> stretches = new LinkedHashMap<>();

    private Pictures(Types types, Map<String, Present> things, Signals signals) {
        this.types = types;
        this.moment = signals.moment();
        this.things = things;
        for (FeedProof proof : signals.proofs()) {
            if (!proof.feed().never()) {
                for (PairProof pair : proof.pairs()) {
                    if (!pair.hops().isEmpty() && isPicture(signals, proof.feed(), pair)) {
                        add(new PicturePath(proof.feed().id(), passes(pair.hops())));
                    }
                }
            }
        }
    }

    public static Pictures of(Types types, Map<String, Present> things, Signals signals) {
        return new Pictures(types, things, signals);
    }

    /** As the feed says, else by the first socket on the way that carries one thing only. */
    private static boolean isPicture(Signals signals, Feed feed, PairProof pair) {
        return feed.carries() != null
                ? feed.carries() == Carries.PICTURE
                : pair.hops().stream()
                        .flatMap(hop -> signals.findMedia(hop.to()).stream())
                        .findFirst()
                        .filter(media -> media == Media.VIDEO)
                        .isPresent();
    }

    /** One for each source and screen of each picture feed that arrives, in the order of the feeds. */
    public List<PicturePath> paths() {
        return List.copyOf(paths);
    }

    /** Every stretch in one format, each once. */
    public List<Stretch> stretches() {
        return List.copyOf(stretches.values());
    }

    /** What is there, in the order of the file. */
    public List<Present> things() {
        return List.copyOf(things.values());
    }

    /** What is set in a device at the moment, join by join. */
    public List<Join.Pair> patched(String device) {
        return patched.computeIfAbsent(device, id -> {
            List<Join.Pair> pairs = new ArrayList<>();
            for (PatchEntry entry : types.project().patch().getOrDefault(id, List.of())) {
                if (entry.life() == null || moment.isThere("patch", id, entry.life())) {
                    pairs.addAll(entry.join().pairs());
                }
            }
            return List.copyOf(pairs);
        });
    }

    private List<Pass> passes(List<Hop> hops) {
        List<Pass> passes = new ArrayList<>();
        Jack in = null;
        String thing = hops.getFirst().from().thing();
        for (Hop hop : hops) {
            String by = outside(hop.cause());
            if (by != null) {
                passes.add(new Pass(thing, model(thing), in, jack(hop.from()), by));
                thing = hop.to().thing();
                in = jack(hop.to());
            }
        }
        passes.add(new Pass(thing, model(thing), in, null, null));
        return passes;
    }

    /** The cable or link that leads from one device to the next; null for what is inside one. */
    private static @Nullable String outside(Cause cause) {
        return switch (cause) {
            case Cause.ByCable cable -> cable.id();
            case Cause.BySend send -> send.id();
            case Cause.ByRadio radio -> radio.id();
            case Cause.ByRoute route -> null;
            case Cause.ByTie tie -> null;
            case Cause.ByPatch patch -> null;
        };
    }

    private @Nullable Model model(String thing) {
        Present present = things.get(thing);
        return present == null ? null : present.model();
    }

    private @Nullable Jack jack(Address at) {
        Present present = things.get(at.thing());
        Shape shape = present == null ? null : present.shape();
        return shape == null
                ? null
                : shape.findSocket(at.spot().name())
                        .map(Socket::port)
                        .map(port -> new Jack(
                                new Address(at.thing(), new Spot(at.spot().name(), null)), port))
                        .orElse(null);
    }

    private void add(PicturePath path) {
        paths.add(path);
        Pass first = null;
        List<Jack> jacks = new ArrayList<>();
        for (Pass pass : path.passes()) {
            if (first != null && pass.in() != null && !pass.isPassive()) {
                say(jacks, pass.in());
            }
            if (pass.breaksFormat()) {
                if (first != null) {
                    add(first, pass, jacks, path.feed());
                }
                first = pass;
                jacks.clear();
            }
            if (pass.out() != null && !pass.isPassive()) {
                say(jacks, pass.out());
            }
        }
    }

    private static void say(List<Jack> jacks, Jack jack) {
        if (!jack.port().formats().isEmpty()) {
            jacks.add(jack);
        }
    }

    /** A stretch whose first device does not say what it gives shows nothing. */
    private void add(Pass first, Pass last, List<Jack> jacks, String feed) {
        Jack out = first.out();
        if (out == null || jacks.isEmpty() || !jacks.getFirst().equals(out)) {
            return;
        }
        List<Object> way = new ArrayList<>(List.of(last.thing()));
        jacks.forEach(jack -> way.add(jack.at()));
        stretches
                .computeIfAbsent(way, key -> new Stretch(first, last, jacks, new LinkedHashSet<>()))
                .feeds()
                .add(feed);
    }
}
