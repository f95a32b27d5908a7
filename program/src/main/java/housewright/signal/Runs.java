package housewright.signal;

import housewright.model.Adapter;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Equipment;
import housewright.model.Pathway;
import housewright.model.Place;
import housewright.model.Port;
import housewright.model.Project;
import housewright.model.Signal;
import housewright.model.SpacePoint;
import housewright.model.Types;
import housewright.unit.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How long a new cable between two pieces would be, which type would do, and what it would cost. */
final class Runs {
    /** Slack at each end, beyond the way itself: common practice. */
    static final double SLACK_M = 2.0;

    /** Between two places of one room no further apart than this a lead is laid loose: common practice. */
    static final double NEAR_M = 3.0;

    static final double NEAR_SLACK_M = 0.5;

    /** What is taken where a place is not known: said with the mend. */
    static final double UNKNOWN_M = 10.0;

    private static final int PLUGGING_MINUTES = 10;

    private final Project project;
    private final Types types;
    private final Map<String, Map<String, Way>> ways = new HashMap<>();
    private final Map<Signal, List<CableType>> carrying = new HashMap<>();

    /** Along pathways from one place. */
    private record Way(double metres, List<String> via) {}

    /** A run between two places. */
    record Run(double metres, List<String> via, boolean guessed) {}

    /**
     * A cable for a run.
     *
     * @param ends connectors to be made up where the type has others; empty where it has the right ones
     */
    record Choice(CableType type, Run run, List<Connector> ends, boolean priced, BigDecimal price) {
        long cost() {
            return Cost.of(Cost.hundredths(price), minutes(), 1);
        }

        int minutes() {
            return PLUGGING_MINUTES + (int) Math.round(run.metres() / 2);
        }

        Length length() {
            return Length.ofMetres(Math.ceil(run.metres() * 2) / 2);
        }
    }

    Optional<CableType> findType(String id) {
        return types.findCableType(id);
    }

    Runs(Project project, Types types) {
        this.project = project;
        this.types = types;
    }

    Run between(Equipment one, Equipment other) {
        String from = place(one);
        String to = place(other);
        if (from != null && from.equals(to)) {
            return new Run(SLACK_M, List.of(), false);
        }
        if (from == null || to == null) {
            return new Run(UNKNOWN_M, List.of(), true);
        }
        Double near = inOneRoom(from, to) ? straight(from, to) : null;
        if (near != null && near <= NEAR_M) {
            return new Run(near + 2 * NEAR_SLACK_M, List.of(), true);
        }
        Way way = ways.computeIfAbsent(from, this::from).get(to);
        if (way != null) {
            return new Run(way.metres() + 2 * SLACK_M, way.via(), false);
        }
        Double straight = straight(from, to);
        return straight == null
                ? new Run(UNKNOWN_M, List.of(), true)
                : new Run(straight + 2 * SLACK_M, List.of(), true);
    }

    /** Where a piece stands: where it says, or what it is a part of does; null where neither does. */
    @Nullable
    String place(Equipment piece) {
        Equipment whole = piece.partOf() == null ? null : project.equipment().get(piece.partOf());
        return piece.at() != null || whole == null ? piece.at() : whole.at();
    }

    private boolean inOneRoom(String from, String to) {
        Place one = project.venue().places().get(from);
        Place other = project.venue().places().get(to);
        return one != null && other != null && one.room() != null && one.room().equals(other.room());
    }

    /** Along walls and up and down: the sum of the three distances; null where a place has no coordinates. */
    private @Nullable Double straight(String from, String to) {
        Place one = project.venue().places().get(from);
        Place other = project.venue().places().get(to);
        SpacePoint a = one == null ? null : one.at();
        SpacePoint b = other == null ? null : other.at();
        if (a == null || b == null) {
            return null;
        }
        return Math.abs(a.x().metres() - b.x().metres())
                + Math.abs(a.y().metres() - b.y().metres())
                + Math.abs(a.z().metres() - b.z().metres());
    }

    private Map<String, Way> from(String place) {
        Map<String, Way> found = new LinkedHashMap<>();
        PriorityQueue<Map.Entry<String, Way>> queue = new PriorityQueue<>((a, b) -> {
            int byLength = Double.compare(a.getValue().metres(), b.getValue().metres());
            return byLength != 0 ? byLength : a.getKey().compareTo(b.getKey());
        });
        queue.add(Map.entry(place, new Way(0, List.of())));
        while (!queue.isEmpty()) {
            Map.Entry<String, Way> at = queue.remove();
            if (found.putIfAbsent(at.getKey(), at.getValue()) != null) {
                continue;
            }
            for (Pathway pathway : project.venue().pathways().values()) {
                String next = at.getKey().equals(pathway.from())
                        ? pathway.to()
                        : at.getKey().equals(pathway.to()) ? pathway.from() : null;
                Double metres = metres(pathway);
                if (next != null && metres != null && !found.containsKey(next)) {
                    List<String> via = new ArrayList<>(at.getValue().via());
                    via.add(pathway.id());
                    queue.add(Map.entry(next, new Way(at.getValue().metres() + metres, via)));
                }
            }
        }
        return found;
    }

    private @Nullable Double metres(Pathway pathway) {
        Length length = pathway.length();
        String from = pathway.from();
        String to = pathway.to();
        return length != null ? (Double) length.metres() : from == null || to == null ? null : straight(from, to);
    }

    /** The cheapest type that carries the signal, fits both ports and is long enough; null where no type carries it. */
    @Nullable
    Choice choose(Port from, Port to, Run run) {
        return choose(from.signal(), from, to, run);
    }

    /** As above, where a passive port does not say the signal itself. */
    @Nullable
    Choice choose(@Nullable Signal signal, Port from, Port to, Run run) {
        if (signal == null) {
            return null;
        }
        Choice best = null;
        for (CableType type : carrying.computeIfAbsent(signal, this::carrying)) {
            Length longest = type.longest();
            if (longest != null && longest.metres() < run.metres()) {
                continue;
            }
            Choice choice = choice(type, from.connector(), to.connector(), run);
            if (choice == null) {
                continue;
            }
            if (best == null || choice.price().compareTo(best.price()) < 0) {
                best = choice;
            }
        }
        return best;
    }

    /** Null where the type's ends do not go into both ports and cannot be made up to. */
    private @Nullable Choice choice(CableType type, @Nullable Connector from, @Nullable Connector to, Run run) {
        BigDecimal perMetre = type.perMetre();
        BigDecimal perPair = type.perPair();
        BigDecimal metre = perMetre == null ? BigDecimal.ZERO : perMetre;
        BigDecimal pair = perPair == null ? BigDecimal.ZERO : perPair;
        boolean fits = fits(type, from, to);
        if (!fits && from != null && to != null && !canBeMadeUp(type, from, to)) {
            return null;
        }
        List<Connector> ends = fits || from == null || to == null ? List.of() : List.of(from.mate(), to.mate());
        BigDecimal price = metre.multiply(BigDecimal.valueOf(Math.ceil(run.metres() * 2) / 2))
                .add(fits ? pair : pair.multiply(BigDecimal.valueOf(2))) // ends made up on purpose cost about twice
                .setScale(2, RoundingMode.HALF_UP);
        return new Choice(type, run, ends, perMetre != null || perPair != null, price);
    }

    /**
     * A cable with an adapter at one end.
     *
     * @param first it sits at the end where the signal leaves
     */
    record Adapted(Choice choice, boolean first) {}

    /** Cables as they come made up that go into both sockets with this adapter between at one end. */
    List<Adapted> byAdapter(Signal signal, Connector from, Connector to, Adapter adapter, Run run) {
        List<Adapted> found = new ArrayList<>();
        for (CableType type : carrying.computeIfAbsent(signal, this::carrying)) {
            Length longest = type.longest();
            if ((longest != null && longest.metres() < run.metres())
                    || type.ends().size() != 2) {
                continue;
            }
            for (boolean first : new boolean[] {true, false}) {
                Connector socket = first ? from : to;
                Connector back = adapter.from() == socket.mate()
                        ? adapter.to()
                        : adapter.to() == socket.mate() ? adapter.from() : null;
                Choice choice = back == null ? null : choice(type, first ? back : from, first ? to : back, run);
                if (choice != null && choice.ends().isEmpty()) {
                    found.add(new Adapted(choice, first));
                }
            }
        }
        return found;
    }

    /** Plugs soldered or screwed to pairs, those of coaxial cable, those of category cable: made up on site. */
    private static final List<Set<Connector>> MADE_UP = List.of(
            EnumSet.of(
                    Connector.XLR_3M,
                    Connector.XLR_3F,
                    Connector.XLR_5M,
                    Connector.XLR_5F,
                    Connector.TRS,
                    Connector.TS,
                    Connector.TRS_3_5,
                    Connector.RCA,
                    Connector.SPEAKER_2,
                    Connector.SPEAKER_4,
                    Connector.TERMINALS),
            EnumSet.of(Connector.BNC, Connector.RCA),
            EnumSet.of(Connector.RJ45));

    private static boolean canBeMadeUp(CableType type, Connector from, Connector to) {
        return MADE_UP.stream()
                .anyMatch(like ->
                        like.containsAll(type.ends()) && like.contains(from.mate()) && like.contains(to.mate()));
    }

    private static boolean fits(CableType type, @Nullable Connector from, @Nullable Connector to) {
        if (from == null || to == null || type.ends().size() != 2) {
            return true;
        }
        Connector one = type.ends().getFirst();
        Connector other = type.ends().getLast();
        return (one == from.mate() && other == to.mate()) || (one == to.mate() && other == from.mate());
    }

    private List<CableType> carrying(Signal signal) {
        List<CableType> fitting = new ArrayList<>();
        for (String id : types.cableTypeIds()) {
            types.findCableType(id)
                    .filter(type -> type.carries().contains(signal) && type.ways() == null)
                    .ifPresent(fitting::add);
        }
        return fitting;
    }
}
