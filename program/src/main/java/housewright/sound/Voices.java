package housewright.sound;

import housewright.model.Equipment;
import housewright.model.LevelClass;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Setting;
import housewright.model.Signal;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.LevelAt;
import housewright.signal.PairProof;
import housewright.signal.Signals;
import housewright.sound.Voice.GainAt;
import housewright.sound.Voice.Preamp;
import housewright.unit.Gain;
import housewright.unit.Level;
import housewright.unit.Sensitivity;
import housewright.unit.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Follows every microphone along its feeds and keeps the way on which the least is left before it clips. */
final class Voices {
    private final Ports ports;
    private final Signals signals;

    Voices(Ports ports, Signals signals) {
        this.ports = ports;
        this.signals = signals;
    }

    List<Voice> find() {
        Map<Address, Voice> bySource = new LinkedHashMap<>();
        for (FeedProof proof : signals.proofs()) {
            if (proof.feed().never()) {
                continue;
            }
            for (PairProof pair : proof.pairs()) {
                Model model = ports.model(pair.from().thing());
                Sensitivity sensitivity = model == null ? null : model.sensitivity();
                Voice voice = sensitivity == null ? null : follow(pair.from(), signals.way(pair), sensitivity);
                if (voice != null) {
                    bySource.merge(pair.from(), voice, Voices::tighter);
                }
            }
        }
        return List.copyOf(bySource.values());
    }

    private static Voice tighter(Voice one, Voice other) {
        return other.tight() != null && (one.tight() == null || other.headroomDb() < one.headroomDb()) ? other : one;
    }

    private @Nullable Voice follow(Address source, List<Hop> way, Sensitivity sensitivity) {
        if (way.isEmpty() || sensitivity.millivoltsPerPascal() <= 0) {
            return null;
        }
        Level stated = pressure(source);
        Level pressure = stated == null ? Sound.TALKER : stated;
        List<LevelAt> levels = signals.levels(way, Sound.output(sensitivity, pressure));
        Address tight = null;
        double least = Double.MAX_VALUE;
        List<GainAt> gains = new ArrayList<>();
        Preamp preamp = null;
        boolean digital = false;
        for (int i = 0; i < levels.size(); i++) {
            Hop hop = way.get(i);
            double set = ports.gain(hop.from());
            if (set != 0) {
                gains.add(new GainAt(hop.from(), set));
            }
            LevelAt at = levels.get(i);
            Port port = ports.port(at.at());
            if (port != null && (port.signal() == Signal.RADIO || (digital && port.signal() == Signal.ANALOG_AUDIO))) {
                break; // a new level begins at a receiver; behind a converter it is a matter of faders
            }
            digital |= at.level() != null && at.level().unit() == Unit.DBFS;
            if (preamp == null) {
                preamp = preamp(port, at);
            }
            Double left = headroom(at);
            if (left != null && left < least) {
                least = left;
                tight = at.at();
            }
        }
        return new Voice(source, pressure, stated != null, tight, tight == null ? 0 : least, gains, preamp);
    }

    private static @Nullable Double headroom(LevelAt at) {
        Gain headroom = at.headroom();
        if (headroom != null) {
            return headroom.decibels();
        }
        Level level = at.level();
        return level != null && level.unit() == Unit.DBFS ? -level.value() : null;
    }

    private @Nullable Preamp preamp(@Nullable Port port, LevelAt at) {
        if (port == null || port.in() != Signal.ANALOG_AUDIO || port.level() != LevelClass.MIC) {
            return null;
        }
        Level arrives = at.level();
        if (arrives != null && arrives.unit() == Unit.DBFS && port.max() != null && at.headroom() != null) {
            arrives = port.max().plus(at.headroom().negated());
        }
        if (arrives == null || arrives.unit() == Unit.DBFS) {
            return null;
        }
        Double most = port.maxGain() == null ? null : port.maxGain().decibels();
        return new Preamp(at.at(), arrives.to(Unit.DBU), ports.gain(at.at()), most, port.noise());
    }

    /** What the project says of the sound at the microphone; null where it says nothing. */
    private @Nullable Level pressure(Address source) {
        Equipment equipment = ports.thing(source.thing());
        if (equipment != null) {
            for (Map.Entry<LocalRef, Setting> each : equipment.set().entrySet()) {
                Level level = each.getValue().level();
                if (level != null
                        && level.unit() == Unit.DB_SPL
                        && each.getKey().spots().contains(source.spot())) {
                    return level;
                }
            }
        }
        return null;
    }
}
