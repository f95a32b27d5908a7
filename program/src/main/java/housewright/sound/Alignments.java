package housewright.sound;

import housewright.model.Carries;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.Signals;
import housewright.unit.Level;
import housewright.unit.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Carries the most that an output can give to the next converter. An output of a device that is digital inside gives
 * its clipping level whenever something plays at full scale. An analogue one is not driven there: it is counted with
 * 18 dB over its nominal level, as EBU R 68 leaves over alignment level, where that is less.
 */
final class Alignments {
    private static final double OVER_NOMINAL_DB = 18;

    private final Ports ports;
    private final Signals signals;
    private final Map<String, Alignment> found = new LinkedHashMap<>();

    Alignments(Ports ports, Signals signals) {
        this.ports = ports;
        this.signals = signals;
    }

    List<Alignment> find() {
        for (FeedProof proof : signals.proofs()) {
            Carries carries = proof.feed().carries();
            if (carries == null || carries == Carries.AUDIO) {
                proof.pairs().forEach(pair -> follow(signals.way(pair)));
            }
        }
        return List.copyOf(found.values());
    }

    private void follow(List<Hop> hops) {
        Double peak = null;
        Address out = null;
        for (int i = 0; i < hops.size(); i++) {
            Hop hop = hops.get(i);
            if (peak != null) {
                peak += hop.gainDb();
            }
            Port port = ports.port(hop.to());
            if (port == null || port.passive()) {
                continue;
            }
            boolean inside = hop.from().thing().equals(hop.to().thing());
            if (port.signal() != Signal.ANALOG_AUDIO) {
                peak = null;
            } else if (inside) {
                Double own = peak(port, hop.to());
                if (own != null) {
                    peak = own;
                    out = hop.to();
                } else if (ports.digitalInside(hop.to().thing())) {
                    peak = null;
                }
            } else if (ports.digitalInside(hop.to().thing())) {
                if (peak != null && out != null && port.max() != null && isElectrical(port.max())) {
                    double inputGain = i + 1 < hops.size() ? inputGain(hops.get(i + 1)) : 0;
                    found.putIfAbsent(
                            out + " " + hop.to(),
                            new Alignment(
                                    out,
                                    hop.to(),
                                    peak + inputGain,
                                    port.max().to(Unit.DBU).value()));
                }
                peak = null;
            }
        }
    }

    /** What is gained at the input itself; an amplifier's gain into its loudspeakers comes after it. */
    private double inputGain(Hop onward) {
        Port port = ports.port(onward.to());
        return port != null && port.signal() == Signal.SPEAKER ? 0 : onward.gainDb();
    }

    private @Nullable Double peak(Port port, Address at) {
        Level max = port.max();
        if (max == null || !isElectrical(max)) {
            return null;
        }
        double most = max.to(Unit.DBU).value();
        Level nominal = port.nominal();
        if (ports.digitalInside(at.thing()) || nominal == null || !isElectrical(nominal)) {
            return most;
        }
        return Math.min(most, nominal.to(Unit.DBU).value() + OVER_NOMINAL_DB);
    }

    private static boolean isElectrical(Level level) {
        return level.unit().convertsTo(Unit.DBU);
    }
}
