package housewright.power;

import housewright.cable.Cabling;
import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.model.Circuit;
import housewright.model.Kind;
import housewright.model.Mains;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Port;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.network.Networks;
import housewright.network.Powered;
import housewright.signal.Present;
import housewright.unit.Power;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The mains of a project at a moment. */
public final class Supplies {
    /** Of equipment with corrected supplies, as the worked examples of the trade take it; from memory. */
    public static final double POWER_FACTOR = 0.95;

    /** BTU/h in a watt. */
    public static final double BTU_PER_HOUR = 3.412;

    /** Copper at 20 degrees C, in ohm mm2/m (IEC 60028). */
    private static final double COPPER = 0.017241;

    private final Map<String, Present> things;
    private final Map<String, Supply> supplies = new LinkedHashMap<>();
    private final Map<String, List<Supply>> fedBy = new LinkedHashMap<>();
    private final Map<String, List<Supply>> fedByThing = new HashMap<>();
    private final Map<String, Double> through = new HashMap<>();
    private final Map<String, CircuitLoad> byCircuit = new LinkedHashMap<>();

    private Supplies(Types types, Map<String, Present> things, Cabling cabling, Networks networks) {
        this.things = things;
        Map<String, Line> leads = leads(cabling);
        Map<String, Double> besides = besides(networks);
        Map<String, Address> outlets = new HashMap<>();
        for (Present each : things.values()) {
            Address outlet = outlet(each, leads.get(each.id()));
            if (outlet != null) {
                outlets.put(each.id(), outlet);
            }
        }
        for (Present each : things.values()) {
            String circuit = circuit(each.id(), outlets);
            Address outlet = outlets.get(each.id());
            Line lead = leads.get(each.id());
            if (circuit == null && outlet == null && lead == null) {
                continue;
            }
            Model model = each.model();
            Power stated = model == null ? null : model.power();
            boolean figure = stated != null;
            double own = (stated == null ? 0 : stated.watts()) + besides.getOrDefault(each.id(), 0.0);
            Supply supply = new Supply(each, own, figure || takesNothing(model), outlet, lead, circuit);
            supplies.put(each.id(), supply);
            if (outlet != null) {
                fedBy.computeIfAbsent(socket(outlet), key -> new ArrayList<>()).add(supply);
                fedByThing
                        .computeIfAbsent(outlet.thing(), key -> new ArrayList<>())
                        .add(supply);
            }
        }
        load(types);
    }

    public static Supplies of(Types types, Map<String, Present> things, Cabling cabling, Networks networks) {
        return new Supplies(types, things, cabling, networks);
    }

    /** Everything that has its mains from somewhere, in the order of the file. */
    public List<Supply> supplies() {
        return List.copyOf(supplies.values());
    }

    public Optional<Supply> find(String thing) {
        return Optional.ofNullable(supplies.get(thing));
    }

    /** What is there, by id, in the order of the file. */
    public Map<String, Present> things() {
        return things;
    }

    /** What is plugged into each outlet, such as {@code strip.out-3}. */
    public Map<String, List<Supply>> byOutlet() {
        return fedBy;
    }

    /** What is plugged into the outlets of a thing. */
    public List<Supply> below(String thing) {
        return fedByThing.getOrDefault(thing, List.of());
    }

    /** What goes through the inlet of a thing, in W: its own and all that hangs on its outlets. */
    public double through(String thing) {
        return through(thing, new HashSet<>());
    }

    private double through(String thing, Set<String> onTheWay) {
        Double known = through.get(thing);
        if (known != null) {
            return known;
        }
        if (!onTheWay.add(thing)) {
            return 0; // it feeds itself: on paper only
        }
        Supply supply = supplies.get(thing);
        double watts = supply == null ? 0 : supply.own();
        for (Supply each : below(thing)) {
            watts += through(each.id(), onTheWay);
        }
        through.put(thing, watts);
        return watts;
    }

    /** Every part of {@link #through} has a figure. */
    public boolean isKnownThrough(String thing) {
        return isKnownThrough(thing, new HashSet<>());
    }

    private boolean isKnownThrough(String thing, Set<String> seen) {
        Supply supply = supplies.get(thing);
        return !seen.add(thing)
                || ((supply == null || supply.known())
                        && below(thing).stream().allMatch(each -> isKnownThrough(each.id(), seen)));
    }

    /** Every circuit, in the order of the file. */
    public List<CircuitLoad> circuits() {
        return List.copyOf(byCircuit.values());
    }

    /** Voltage at a thing: its circuit's, else the building's; null where neither is known. */
    public @Nullable Double volts(Supply supply) {
        CircuitLoad load = supply.circuit() == null ? null : byCircuit.get(supply.circuit());
        return load == null ? null : load.volts();
    }

    /** A strip, a rack distributor or a wall outlet, which only hands mains on. */
    public static boolean handsOn(@Nullable Model model) {
        return model != null && model.kind() == Kind.POWER_DISTRIBUTOR;
    }

    /** Current on one phase: I = P / (V x power factor). */
    public static double amperes(double watts, double volts, double powerFactor) {
        return watts / (volts * powerFactor);
    }

    /** Voltage lost both ways along a copper lead, in V. */
    public static double drop(double amperes, double metresOneWay, double squareMillimetres) {
        return amperes * 2 * metresOneWay * COPPER / squareMillimetres;
    }

    /**
     * How long a battery lasts, in minutes.
     *
     * @param wattHours as printed on it
     * @param efficiency of what makes mains of it, 0 to 1
     * @param usable share of its charge that can be had at this rate, 0 to 1
     */
    public static double minutes(double wattHours, double efficiency, double usable, double watts) {
        return 60 * wattHours * efficiency * usable / watts;
    }

    private static Map<String, Line> leads(Cabling cabling) {
        Map<String, Line> leads = new HashMap<>();
        for (Line line : cabling.lines()) {
            if (line.signal() == Signal.MAINS) {
                Plug sink = line.sink();
                if (sink != null && sink.port() != null && sink.port().in() == Signal.MAINS) {
                    leads.putIfAbsent(sink.at().thing(), line);
                }
            }
        }
        return leads;
    }

    private Map<String, Double> besides(Networks networks) {
        Map<String, Double> besides = new HashMap<>();
        for (Powered each : networks.powered()) {
            Plug by = each.by();
            if (by != null && each.gives() > 0 && !each.otherwise()) {
                besides.merge(by.at().thing(), each.takes(), Double::sum);
            }
        }
        for (Present each : things.values()) {
            String host = each.equipment().partOf();
            if (host != null && each.model() != null && each.model().power() != null) {
                besides.merge(host, each.model().power().watts(), Double::sum);
            }
        }
        return besides;
    }

    private @Nullable Address outlet(Present thing, @Nullable Line lead) {
        Ref said = thing.equipment().poweredBy();
        if (said != null) {
            return said.addresses().getFirst();
        }
        Plug source = lead == null ? null : lead.source();
        return source == null || source.port() == null || source.port().out() != Signal.MAINS ? null : source.at();
    }

    private @Nullable String circuit(String thing, Map<String, Address> outlets) {
        Set<String> seen = new HashSet<>();
        String at = thing;
        while (seen.add(at)) {
            Address outlet = outlets.get(at);
            Present present = things.get(at);
            if (outlet == null) {
                return present == null ? null : present.equipment().circuit();
            }
            at = outlet.thing();
        }
        return null;
    }

    private static boolean takesNothing(@Nullable Model model) {
        if (model == null) {
            return false;
        }
        if (handsOn(model)) {
            return true;
        }
        for (Map.Entry<NamePattern, Port> port : model.ports().entrySet()) {
            if (port.getValue().in() == Signal.MAINS) {
                return false;
            }
        }
        return model.portsKnown();
    }

    private void load(Types types) {
        Mains mains = types.project().about().mains();
        Double house = mains == null || mains.voltage() == null
                ? null
                : Double.valueOf(mains.voltage().volts());
        Map<String, List<Supply>> on = new HashMap<>();
        for (Supply each : supplies.values()) {
            if (each.circuit() != null) {
                on.computeIfAbsent(each.circuit(), key -> new ArrayList<>()).add(each);
            }
        }
        for (Circuit circuit : types.project().venue().circuits().values()) {
            List<Supply> these = on.getOrDefault(circuit.id(), List.of());
            double watts = these.stream().mapToDouble(Supply::own).sum();
            Double volts = circuit.voltage() == null
                    ? house
                    : Double.valueOf(circuit.voltage().volts());
            byCircuit.put(circuit.id(), new CircuitLoad(circuit, List.copyOf(these), watts, volts));
        }
    }

    private static String socket(Address outlet) {
        return outlet.thing() + "." + outlet.spot().name();
    }
}
