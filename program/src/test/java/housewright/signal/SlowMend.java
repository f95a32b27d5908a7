package housewright.signal;

import housewright.model.Cable;
import housewright.model.CableToday;
import housewright.model.CableType;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Feed;
import housewright.model.Join;
import housewright.model.Kind;
import housewright.model.Library;
import housewright.model.Life;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.PatchEntry;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Route;
import housewright.model.Setting;
import housewright.model.Signal;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Mends by trying every small set of what could be done. What could be done is written down here once more, from what
 * the engine says it does: entries that a type allows (2 minutes, and 1 for each that they replace), switches and mutes
 * (1), contested entries down to one (1 each), new cables between free ports (10 minutes and half a minute a metre),
 * far ends moved within a device (5), two plugs exchanged (5), cables kept that were to be struck (1), converters between free ports (20 and
 * their cables). No cable goes into a port that has one. Equipment without a place is 10 m away, and what is beside it 2 m.
 */
final class SlowMend {
    private static final int APART = 10;
    private static final int BESIDE = 2;

    private final Project project;
    private final Library library;

    SlowMend(Project project, Library library) {
        this.project = project;
        this.library = library;
    }

    /** Cheapest first: price, minutes, number of changes. */
    record Price(BigDecimal price, int minutes, int changes) implements Comparable<Price> {
        Price {
            price = price.setScale(2, RoundingMode.HALF_UP);
        }

        static final Price NOTHING = new Price(BigDecimal.ZERO, 0, 0);

        static Price of(Mend mend) {
            return new Price(
                    mend.price(), mend.minutes(), changed(mend.changes()).size());
        }

        /** What is changed: an entry taken out and put back as one to be struck is one thing. */
        private static Set<String> changed(List<Change> changes) {
            Set<String> changed = new TreeSet<>();
            for (Change change : changes) {
                switch (change) {
                    case Change.Put put -> changed.add(changed.size() + " " + put.section() + "." + put.id());
                    case Change.Drop drop -> changed.add(drop.section() + "." + drop.id());
                    case Change.Patch patch ->
                        changed.add(patch.device() + " " + patch.entry().join().pairs());
                    case Change.Unpatch out ->
                        changed.add(out.device() + " " + List.of(new Join.Pair(out.from(), out.to())));
                    default -> throw new IllegalArgumentException("A mend does not make " + change);
                }
            }
            return changed;
        }

        Price plus(Price other) {
            return new Price(price.add(other.price), minutes + other.minutes, changes + other.changes);
        }

        @Override
        public int compareTo(Price other) {
            return Comparator.comparing(Price::price)
                    .thenComparingInt(Price::minutes)
                    .thenComparingInt(Price::changes)
                    .compare(this, other);
        }
    }

    /**
     * One thing that could be done.
     *
     * @param changes on the project as others have left it
     * @param takes what no other may take at the same time: free ports, and the one thing that is changed
     * @param serves it lies on the way of the feed: a mend is made of nothing else
     */
    record Candidate(Function<Project, List<Change>> changes, Price price, Set<String> takes, Predicate<Hop> serves) {
        boolean serves(PairProof pair) {
            return pair.hops().stream().anyMatch(serves);
        }
    }

    // ---- what could be added

    List<Candidate> joining() {
        List<Candidate> all = new ArrayList<>();
        SlowGraph graph = new SlowGraph(project, Moment.target());
        for (String id : graph.things()) {
            Model model = graph.inside(id);
            if (model != null) {
                patches(graph, id, model, all);
                settings(id, model, all);
            }
        }
        cables(graph, all);
        exchanges(graph, all);
        return all;
    }

    private static boolean isPort(Model model, Spot spot) {
        return !SlowGraph.points(model).contains(spot.name());
    }

    private static Candidate free(int minutes, List<Change> changes, Predicate<Hop> serves) {
        Price price = new Price(BigDecimal.ZERO, minutes, changes.size());
        return new Candidate(now -> changes, price, Set.of(), serves);
    }

    private static Predicate<Hop> over(Cause cause) {
        return hop -> hop.cause().equals(cause);
    }

    private void patches(SlowGraph graph, String id, Model model, List<Candidate> all) {
        if (model.patch() == null) {
            return;
        }
        List<Spot> in = new ArrayList<>();
        List<Spot> out = new ArrayList<>();
        SlowGraph.points(model).forEach(point -> {
            in.add(new Spot(point, null));
            out.add(new Spot(point, null));
        });
        SlowGraph.ports(model).forEach((name, port) -> {
            List<String> arriving = SlowGraph.channels(port, true);
            List<String> leaving = SlowGraph.channels(port, false);
            arriving.forEach(channel -> in.add(new Spot(name, arriving.size() == 1 ? null : channel)));
            leaving.forEach(channel -> out.add(new Spot(name, leaving.size() == 1 ? null : channel)));
        });
        List<Join.Pair> set = project.patch().getOrDefault(id, List.of()).stream()
                .flatMap(entry -> entry.join().pairs().stream())
                .toList();
        for (Spot from : in) {
            for (Spot to : out) {
                Join.Pair pair = new Join.Pair(from, to);
                boolean allowed = model.patch().free()
                        || model.patch().joins().stream()
                                .anyMatch(join -> join.pairs().contains(pair));
                boolean past = model.kind() == Kind.MIXER && isPort(model, from) && isPort(model, to);
                if (from.equals(to)
                        || !allowed
                        || set.contains(pair)
                        || (past
                                && set.stream()
                                        .noneMatch(each -> isPort(model, each.from()) && isPort(model, each.to())))) {
                    continue; // no input of a desk is led straight to an output, unless it is used that way
                }
                List<Change> changes = new ArrayList<>();
                for (Join.Pair other : set) {
                    if (other.to().equals(to) && !SlowGraph.points(model).contains(to.name())) {
                        changes.add(new Change.Unpatch(id, other.from(), other.to()));
                    }
                }
                int minutes = 2 + changes.size();
                changes.add(new Change.Patch(id, PatchEntry.ofText(from + " -> " + to)));
                all.add(free(minutes, changes, over(new Cause.ByPatch(id, from, to))));
                List<Join.Pair> into = set.stream()
                        .filter(each -> each.to().equals(to))
                        .distinct()
                        .toList();
                List<Join.Pair> like = set.stream()
                        .filter(each -> each.from().equals(from) && !each.to().equals(to))
                        .filter(each -> Words.stem(each.to().name()).equals(Words.stem(to.name())))
                        .distinct()
                        .toList();
                if (like.size() == 1) { // moved from its like
                    List<Change> moved = new ArrayList<>(changes.subList(0, changes.size() - 1));
                    moved.add(new Change.Unpatch(id, from, like.getFirst().to()));
                    moved.add(changes.getLast());
                    all.add(free(minutes + 1, moved, over(new Cause.ByPatch(id, from, to))));
                }
                if (!isPort(model, to) && into.size() == 1) { // instead of what sums there
                    List<Change> instead = List.of(
                            new Change.Unpatch(id, into.getFirst().from(), to),
                            new Change.Patch(id, PatchEntry.ofText(from + " -> " + to)));
                    all.add(free(3, instead, over(new Cause.ByPatch(id, from, to))));
                }
            }
        }
        for (Join.Pair kept : set) {
            List<Change> others = new ArrayList<>();
            for (Join.Pair other : set) {
                if (!other.from().equals(kept.from())
                        && other.to().equals(kept.to())
                        && !SlowGraph.points(model).contains(kept.to().name())) {
                    others.add(new Change.Unpatch(id, other.from(), other.to()));
                }
            }
            if (!others.isEmpty()) {
                all.add(free(others.size(), others, over(new Cause.ByPatch(id, kept.from(), kept.to()))));
            }
        }
    }

    private void settings(String id, Model model, List<Candidate> all) {
        Equipment equipment = project.equipment().get(id);
        model.switches().forEach((name, gate) -> {
            Setting setting = equipment.set().get(new LocalRef(name));
            if (setting == null ? !gate.on() : Boolean.FALSE.equals(setting.on())) {
                all.add(set(id, new LocalRef(name), Setting.ofText("on"), gate.gates()));
            }
        });
        equipment.set().forEach((ref, setting) -> {
            if (setting.mute()) {
                Setting open = new Setting(null, setting.gain(), null, setting.delay(), false, null);
                all.add(set(id, ref, open, List.of(ref)));
            }
        });
    }

    private static Candidate set(String id, LocalRef ref, Setting setting, List<LocalRef> acts) {
        Function<Project, List<Change>> changes = now -> {
            Equipment was = now.equipment().get(id);
            Map<LocalRef, Setting> set = new LinkedHashMap<>(was.set());
            set.put(ref, setting);
            Equipment is = Hall.equipment(id, was.model(), was.life(), set, was.vlans(), was.was());
            return List.of(new Change.Put(Section.EQUIPMENT, id, is));
        };
        return new Candidate(changes, new Price(BigDecimal.ZERO, 1, 1), Set.of(), hop -> touches(hop, id, acts));
    }

    private static boolean touches(Hop hop, String id, List<LocalRef> acts) {
        return List.of(hop.from(), hop.to()).stream()
                .anyMatch(place -> place.thing().equals(id)
                        && acts.stream()
                                .flatMap(ref -> ref.spots().stream())
                                .anyMatch(
                                        spot -> spot.name().equals(place.spot().name())));
    }

    private record Jack(String thing, String name, Port port) {
        String place() {
            return thing + "." + name;
        }
    }

    private void cables(SlowGraph graph, List<Candidate> all) {
        List<Jack> free = new ArrayList<>();
        Set<String> plugged = plugged(graph);
        for (String id : graph.things()) {
            Model model = graph.inside(id);
            if (model != null) {
                SlowGraph.ports(model).forEach((name, port) -> {
                    if (!plugged.contains(id + "." + name)) {
                        free.add(new Jack(id, name, port));
                    }
                });
            }
        }
        int number = 1000 * project.cables().size(); // ids that are not in use
        for (Jack one : free) {
            for (Jack other : free) {
                boolean both = one.port().both() != null && other.port().both() != null;
                if (one.thing().equals(other.thing())
                        || !one.port().leaves()
                        || !other.port().arrives()
                        || (both && one.place().compareTo(other.place()) > 0)) {
                    continue;
                }
                number++;
                if (fits(one.port(), other.port())) {
                    Price price = cablePrice(one.port().signal(), APART);
                    if (price != null) {
                        Cable cable = cable("X" + number, one.place(), other.place(), Life.NEW);
                        all.add(new Candidate(
                                now -> List.of(put(cable)),
                                price,
                                Set.of(one.place(), other.place()),
                                over(new Cause.ByCable(cable.id()))));
                    }
                }
                converters(one, other, number, all);
            }
        }
        for (Cable cable : project.cables().values()) {
            if (cable.life() == Life.STRIKE) {
                Set<String> ends =
                        new TreeSet<>(List.of(cable.from().text(), cable.to().text()));
                Cable kept = cable(cable.id(), cable.from().text(), cable.to().text(), Life.KEEP);
                if (cable.to().ref() != null && Collections.disjoint(plugged, ends)) {
                    Price price = new Price(BigDecimal.ZERO, 1, 1);
                    all.add(new Candidate(now -> List.of(put(kept)), price, ends, over(new Cause.ByCable(kept.id()))));
                }
            } else if (cable.life().target() && graph.isThere(thing(cable.from())) && isThere(graph, cable.to())) {
                move(graph, cable, cable.from(), cable.to(), free, all);
                if (cable.to().ref() != null) {
                    move(graph, cable, cable.to(), cable.from(), free, all);
                }
            }
        }
    }

    /** Two cables of a type that change places at one end, where they are side by side at either. */
    private void exchanges(SlowGraph graph, List<Candidate> all) {
        List<Cable> plain = project.cables().values().stream()
                .filter(cable -> cable.life().target() && cable.was() == null)
                .filter(cable -> cable.from().ref() != null && cable.to().ref() != null)
                .filter(cable -> graph.isThere(thing(cable.from())) && graph.isThere(thing(cable.to())))
                .toList();
        for (Cable first : plain) {
            for (Cable second : plain) {
                if (first != second && Objects.equals(first.type(), second.type())) {
                    for (End one : List.of(first.from(), first.to())) {
                        for (End other : List.of(second.from(), second.to())) {
                            exchange(graph, first, one, second, other, all);
                        }
                    }
                }
            }
        }
    }

    private void exchange(SlowGraph graph, Cable first, End one, Cable second, End other, List<Candidate> all) {
        End firstFar = one == first.from() ? first.to() : first.from();
        End secondFar = other == second.from() ? second.to() : second.from();
        Port out = port(graph, one);
        Port in = port(graph, other);
        boolean sideBySide = thing(one).equals(thing(secondFar)) || thing(other).equals(thing(firstFar));
        if (out == null
                || in == null
                || !out.leaves()
                || !in.arrives()
                || !fits(out, in)
                || !sideBySide
                || thing(one).equals(thing(other))
                || cablesAt(graph, one.text()) != 1
                || cablesAt(graph, other.text()) != 1) {
            return;
        }
        Cable joined = cable(first.id(), one.text(), other.text(), first.life());
        Cable rest = cable(second.id(), secondFar.text(), firstFar.text(), second.life());
        all.add(new Candidate(
                now -> List.of(put(joined), put(rest)),
                new Price(BigDecimal.ZERO, 5, 2),
                Set.of("cable " + first.id(), "cable " + second.id()),
                over(new Cause.ByCable(first.id()))));
    }

    private static boolean isThere(SlowGraph graph, End end) {
        return end.ref() == null || graph.isThere(thing(end));
    }

    private static String thing(End end) {
        return end.ref().addresses().getFirst().thing();
    }

    /** The far end to another jack of the device that it is in; a loose one into any. */
    private void move(SlowGraph graph, Cable cable, End stays, End far, List<Jack> free, List<Candidate> all) {
        Port port = port(graph, stays);
        if (port == null || cablesAt(graph, stays.text()) != 1) {
            return;
        }
        for (Jack jack : free) {
            boolean here = far.ref() == null || thing(far).equals(jack.thing());
            boolean turns = (port.leaves() && jack.port().arrives())
                    || (port.arrives() && jack.port().leaves());
            if (here && turns && fits(port, jack.port()) && !jack.thing().equals(thing(stays))) {
                boolean first = cable.from() == stays;
                Cable moved = first
                        ? cable(cable.id(), stays.text(), jack.place(), cable.life())
                        : cable(cable.id(), jack.place(), stays.text(), cable.life());
                Price price = new Price(BigDecimal.ZERO, 5, 1);
                all.add(new Candidate(
                        now -> List.of(put(moved)),
                        price,
                        Set.of(jack.place(), cable.id()),
                        over(new Cause.ByCable(moved.id()))));
            }
        }
    }

    private static @Nullable Port port(SlowGraph graph, End end) {
        Model model = end.ref() == null ? null : graph.inside(thing(end));
        return model == null
                ? null
                : SlowGraph.ports(model)
                        .get(end.ref().addresses().getFirst().spot().name());
    }

    private int cablesAt(SlowGraph graph, String place) {
        int count = 0;
        for (Cable cable : project.cables().values()) {
            boolean holds = cable.life().target() && isThere(graph, cable.from()) && isThere(graph, cable.to());
            count += holds
                            && (cable.from().text().equals(place)
                                    || cable.to().text().equals(place))
                    ? 1
                    : 0;
        }
        return count;
    }

    private Set<String> plugged(SlowGraph graph) {
        Set<String> plugged = new TreeSet<>();
        for (Cable cable : project.cables().values()) {
            if (cable.life().target() && isThere(graph, cable.from()) && isThere(graph, cable.to())) {
                plugged.add(cable.from().text());
                plugged.add(cable.to().text());
            }
        }
        return plugged;
    }

    private static boolean fits(Port one, Port other) {
        return one.signal() == other.signal()
                && one.signal() != Signal.RADIO
                && one.signal() != Signal.ETHERNET
                && (one.protocol() == null
                        || other.protocol() == null
                        || one.protocol().equals(other.protocol()));
    }

    private @Nullable Price cablePrice(Signal signal, int metres) {
        Price best = null;
        for (CableType type : project.cableTypes().values()) {
            if (type.carries().contains(signal)) {
                BigDecimal price =
                        type.perMetre().multiply(BigDecimal.valueOf(metres)).add(type.perPair());
                Price each = new Price(price, 10 + metres / 2, 1);
                best = best == null || each.compareTo(best) < 0 ? each : best;
            }
        }
        return best;
    }

    private void converters(Jack one, Jack other, int number, List<Candidate> all) {
        List<Model> models = new ArrayList<>(project.models().values());
        library.modelIds().forEach(id -> library.findModel(id).ifPresent(models::add));
        for (Model model : models) {
            if (model.kind() != Kind.CONVERTER) {
                continue;
            }
            Set<String> ways = new LinkedHashSet<>();
            for (Route route : model.routes()) {
                for (Join.Pair pair : new Join(route.from(), route.to()).pairs()) {
                    ways.add(pair.from().name() + " " + pair.to().name());
                }
            }
            for (String way : ways) {
                String in = way.split(" ")[0];
                String out = way.split(" ")[1];
                Map<String, Port> ports = SlowGraph.ports(model);
                if (!fits(one.port(), ports.get(in)) || !fits(ports.get(out), other.port())) {
                    continue;
                }
                Price before = cablePrice(one.port().signal(), APART);
                Price after = cablePrice(other.port().signal(), BESIDE);
                if (before == null || after == null) {
                    continue;
                }
                String id = "x-" + model.id() + "-" + number;
                List<Change> changes = List.of(
                        new Change.Put(
                                Section.EQUIPMENT,
                                id,
                                Hall.equipment(id, model.id(), Life.NEW, Map.of(), Map.of(), null)),
                        put(cable("Y" + number, one.place(), id + "." + in, Life.NEW)),
                        put(cable("Z" + number, id + "." + out, other.place(), Life.NEW)));
                Price price = new Price(model.price(), 20, 1).plus(before).plus(after);
                all.add(new Candidate(
                        now -> changes,
                        price,
                        Set.of(one.place(), other.place()),
                        over(new Cause.ByCable("Y" + number))));
            }
        }
    }

    private static Cable cable(String id, String from, String to, Life life) {
        return Hall.cable(id, null, new End(new Ref(from)), End.parse(to), List.of(), life, (CableToday) null);
    }

    private static Change put(Cable cable) {
        return new Change.Put(Section.CABLES, cable.id(), cable);
    }

    // ---- what could be taken away

    List<Candidate> cutting() {
        List<Candidate> all = new ArrayList<>();
        project.patch().forEach((id, entries) -> {
            Set<Join.Pair> pairs = new LinkedHashSet<>();
            entries.forEach(entry -> pairs.addAll(entry.join().pairs()));
            pairs.forEach(pair ->
                    all.add(free(1, List.of(new Change.Unpatch(id, pair.from(), pair.to())), hop -> true)));
        });
        for (Equipment each : project.equipment().values()) {
            Model model = project.models().get(each.model());
            if (model != null) {
                model.switches()
                        .keySet()
                        .forEach(name -> all.add(set(each.id(), new LocalRef(name), Setting.ofText("off"), List.of())));
            }
        }
        project.cables()
                .keySet()
                .forEach(id -> all.add(free(5, List.of(new Change.Drop(Section.CABLES, id)), hop -> true)));
        return all;
    }

    // ---- trying

    /** A set of candidates that does what is wanted. */
    record Found(Price price, Project after) {}

    /** Says of a changed project whether it is as wanted. */
    interface Wanted {
        boolean by(Signals after, List<Candidate> chosen);
    }

    /** Every cheapest set that mends and harms nothing, of so many at most; none dearer than the limit. */
    List<Found> cheapest(List<Candidate> candidates, int most, @Nullable Price limit, Wanted wanted) {
        List<Candidate> byPrice = new ArrayList<>(candidates);
        byPrice.sort(Comparator.comparing(Candidate::price));
        List<Found> found = new ArrayList<>();
        Signals before = Signals.of(project, library, Moment.target());
        grow(byPrice, 0, most, new ArrayList<>(), Price.NOTHING, limit, before, wanted, found);
        Price least =
                found.stream().map(Found::price).min(Comparator.naturalOrder()).orElse(Price.NOTHING);
        return found.stream().filter(each -> each.price().compareTo(least) == 0).toList();
    }

    private void grow(
            List<Candidate> candidates,
            int first,
            int most,
            List<Candidate> chosen,
            Price price,
            @Nullable Price limit,
            Signals before,
            Wanted wanted,
            List<Found> found) {
        if (!chosen.isEmpty()) {
            Project changed = project;
            for (Candidate each : chosen) {
                changed = Change.apply(changed, each.changes().apply(changed));
            }
            Signals after = Signals.of(changed, library, Moment.target());
            if (wanted.by(after, chosen) && harmsNothing(before, after)) {
                found.add(new Found(price, changed));
                return; // with more of them it would only be dearer
            }
        }
        for (int i = first; i < candidates.size() && chosen.size() < most; i++) {
            Candidate next = candidates.get(i);
            Price sum = price.plus(next.price());
            if (limit != null && sum.compareTo(limit) > 0) {
                return; // those that follow are dearer still
            }
            if (!clashes(chosen, next)) {
                chosen.add(next);
                grow(candidates, i + 1, most, chosen, sum, limit, before, wanted, found);
                chosen.removeLast();
            }
        }
    }

    private static boolean clashes(List<Candidate> chosen, Candidate next) {
        return chosen.stream().anyMatch(each -> !Collections.disjoint(each.takes(), next.takes()));
    }

    /** An added join lies on a way round. */
    private static boolean addsARound(SignalGraph before, SignalGraph after) {
        Set<String> known = new TreeSet<>();
        for (int e = 0; e < before.to.length; e++) {
            known.add(before.address(before.from[e]) + " " + before.address(before.to[e]));
        }
        for (int e = 0; e < after.to.length; e++) {
            boolean added = !known.contains(after.address(after.from[e]) + " " + after.address(after.to[e]));
            if (added && leads(after, after.to[e], after.from[e], new java.util.HashSet<>())) {
                return true;
            }
        }
        return false;
    }

    private static boolean leads(SignalGraph graph, int from, int to, Set<Integer> seen) {
        if (from == to) {
            return true;
        }
        seen.add(from);
        for (int e = graph.start[from]; e < graph.start[from + 1]; e++) {
            if (!seen.contains(graph.to[e]) && leads(graph, graph.to[e], to, seen)) {
                return true;
            }
        }
        return false;
    }

    /** Every pair that held still does, and nothing comes round at unity that did not. */
    static boolean harmsNothing(Signals before, Signals after) {
        if (before.loops().isEmpty() ? !after.loops().isEmpty() : addsARound(before.graph(), after.graph())) {
            return false;
        }
        for (FeedProof was : before.proofs()) {
            List<PairProof> are = after.findProof(was.feed().id()).orElseThrow().pairs();
            for (int i = 0; i < are.size(); i++) {
                if (was.pairs().get(i).proven() && !are.get(i).proven()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The pair is proven, and every candidate serves it. */
    static Wanted proves(Feed feed, int pair) {
        return (after, chosen) -> {
            PairProof proof = pair(after, feed, pair);
            return proof.proven() && chosen.stream().allMatch(each -> each.serves(proof));
        };
    }

    static PairProof pair(Signals at, Feed feed, int pair) {
        return at.findProof(feed.id()).orElseThrow().pairs().get(pair);
    }
}
