package housewright.sound;

import housewright.model.Equipment;
import housewright.model.Latency;
import housewright.model.LocalRef;
import housewright.model.LocalRef.Spot;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Ref.Address;
import housewright.model.Setting;
import housewright.model.Shape;
import housewright.model.Shape.Socket;
import housewright.signal.Present;
import housewright.unit.Delay;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** Looks up what stands at an address at a moment: the thing, its type, the socket, the gain that is set. */
final class Ports {
    private final Map<String, Present> things;
    private final Map<String, Map<Spot, Double>> gains = new ConcurrentHashMap<>();

    Ports(Map<String, Present> things) {
        this.things = things;
    }

    /** The thing as it is at the moment; null where it is not there. */
    @Nullable
    Equipment thing(String id) {
        Present present = things.get(id);
        return present == null ? null : present.equipment();
    }

    @Nullable
    Model model(String thing) {
        Shape shape = shape(thing);
        return shape == null ? null : shape.model();
    }

    @Nullable
    Shape shape(String thing) {
        Present present = things.get(thing);
        return present == null ? null : present.shape();
    }

    /** The socket; null at a point and where the type has no such socket. */
    @Nullable
    Port port(Address at) {
        Shape shape = shape(at.thing());
        Socket socket = shape == null ? null : shape.sockets().get(at.spot().name());
        return socket == null ? null : socket.port();
    }

    /** It states a latency for sound above 0, so it converts: the reading that levels go by. */
    boolean digitalInside(String thing) {
        Model model = model(thing);
        Latency latency = model == null ? null : model.latency();
        if (latency == null) {
            return false;
        }
        Delay own = latency.audio() != null ? latency.audio() : latency.all();
        return own != null && own.value() > 0;
    }

    /** Gain set at a port, channel or point, in dB; 0 where none is. */
    double gain(Address at) {
        Map<Spot, Double> set = gains.computeIfAbsent(at.thing(), this::gains);
        Double own = set.get(at.spot());
        if (own == null && at.spot().channel() != null) {
            own = set.get(new Spot(at.spot().name(), null));
        }
        return own == null ? 0 : own;
    }

    private Map<Spot, Double> gains(String thing) {
        Map<Spot, Double> all = new HashMap<>();
        Equipment equipment = thing(thing);
        if (equipment != null) {
            for (Map.Entry<LocalRef, Setting> each : equipment.set().entrySet()) {
                if (each.getValue().gain() != null) {
                    for (Spot spot : each.getKey().spots()) {
                        all.merge(spot, each.getValue().gain().decibels(), Double::sum);
                    }
                }
            }
        }
        return all;
    }
}
