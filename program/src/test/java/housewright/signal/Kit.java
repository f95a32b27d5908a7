package housewright.signal;

import housewright.model.Channels;
import housewright.model.Connector;
import housewright.model.Kind;
import housewright.model.Latency;
import housewright.model.LevelClass;
import housewright.model.LocalRef;
import housewright.model.Model;
import housewright.model.NamePattern;
import housewright.model.Patchable;
import housewright.model.Port;
import housewright.model.Remarks;
import housewright.model.Route;
import housewright.model.Signal;
import housewright.model.Switch;
import housewright.model.Tie;
import housewright.unit.Delay;
import housewright.unit.Gain;
import housewright.unit.Level;
import housewright.unit.VideoFormat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A type of equipment put together in a test, in the words of the file. */
final class Kit {
    private final String id;
    private final Kind kind;
    private final Map<NamePattern, Port> ports = new LinkedHashMap<>();
    private final List<NamePattern> points = new ArrayList<>();
    private final List<Route> routes = new ArrayList<>();
    private final List<Tie> ties = new ArrayList<>();
    private final Map<String, Switch> switches = new LinkedHashMap<>();
    private @Nullable Patchable patch;
    private @Nullable Latency latency;
    private @Nullable BigDecimal price;
    private boolean portsKnown = true;

    Kit(String id) {
        this(id, Kind.OTHER);
    }

    Kit(String id, Kind kind) {
        this.id = id;
        this.kind = kind;
    }

    Kit in(String name, Signal signal) {
        return port(name, new Plug(signal, null, null));
    }

    Kit out(String name, Signal signal) {
        return port(name, new Plug(null, signal, null));
    }

    Kit both(String name, Signal signal) {
        return port(name, new Plug(null, null, signal));
    }

    Kit port(String name, Plug plug) {
        ports.put(new NamePattern(name), plug.port());
        return this;
    }

    Kit points(String... names) {
        Arrays.stream(names).map(NamePattern::new).forEach(points::add);
        return this;
    }

    Kit routes(String... joins) {
        Arrays.stream(joins).map(Route::ofText).forEach(routes::add);
        return this;
    }

    Kit route(String join, @Nullable String gain, @Nullable String delay) {
        Route plain = Route.ofText(join);
        routes.add(new Route(
                plain.from(),
                plain.to(),
                gain == null ? null : Gain.parse(gain),
                delay == null ? null : Delay.parse(delay)));
        return this;
    }

    Kit ties(String... texts) {
        Arrays.stream(texts).map(Tie::parse).forEach(ties::add);
        return this;
    }

    Kit patchFree() {
        patch = Patchable.FREE;
        return this;
    }

    Kit patchList(String... joins) {
        patch = new Patchable(
                false, Arrays.stream(joins).map(housewright.model.Join::parse).toList());
        return this;
    }

    Kit gate(String name, boolean on, String... gates) {
        switches.put(
                name, new Switch(on, Arrays.stream(gates).map(LocalRef::new).toList()));
        return this;
    }

    Kit latency(String all) {
        latency = Latency.ofText(all);
        return this;
    }

    Kit latency(@Nullable String audio, @Nullable String video) {
        latency = new Latency(
                null, audio == null ? null : Delay.parse(audio), video == null ? null : Delay.parse(video), null);
        return this;
    }

    Kit price(int amount) {
        price = BigDecimal.valueOf(amount);
        return this;
    }

    /** Nobody has counted its sockets. */
    Kit sketch() {
        portsKnown = false;
        return this;
    }

    Model model() {
        return new Model(
                id,
                null,
                kind,
                null,
                portsKnown,
                ports,
                points,
                routes,
                ties,
                patch,
                switches,
                latency,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                price,
                null,
                null,
                null,
                null,
                false,
                null,
                Remarks.NONE);
    }

    /** A port with more than a signal. */
    static final class Plug {
        private final @Nullable Signal in;
        private final @Nullable Signal out;
        private final @Nullable Signal both;
        private @Nullable String protocol;
        private @Nullable Channels channels;
        private @Nullable Connector connector;
        private @Nullable LevelClass level;
        private @Nullable Level nominal;
        private @Nullable Level max;
        private List<VideoFormat> formats = List.of();
        private boolean passive;

        private Plug(@Nullable Signal in, @Nullable Signal out, @Nullable Signal both) {
            this.in = in;
            this.out = out;
            this.both = both;
        }

        static Plug in(Signal signal) {
            return new Plug(signal, null, null);
        }

        static Plug out(Signal signal) {
            return new Plug(null, signal, null);
        }

        static Plug both(Signal signal) {
            return new Plug(null, null, signal);
        }

        static Plug passive() {
            Plug plug = new Plug(null, null, null);
            plug.passive = true;
            return plug;
        }

        Plug protocol(@Nullable String name) {
            protocol = name;
            return this;
        }

        Plug channels(int in, int out) {
            channels = new Channels(in, out);
            return this;
        }

        Plug connector(Connector plug) {
            connector = plug;
            return this;
        }

        Plug formats(String... texts) {
            formats = Arrays.stream(texts).map(VideoFormat::parse).toList();
            return this;
        }

        Plug level(LevelClass range) {
            level = range;
            return this;
        }

        Plug nominal(String level) {
            nominal = Level.parse(level);
            return this;
        }

        Plug max(String level) {
            max = Level.parse(level);
            return this;
        }

        Port port() {
            return new Port(
                    in, out, both, passive, protocol, connector, channels, level, nominal, max, null, null, null, null,
                    null, null, null, formats, null, null, null);
        }
    }
}
