package housewright.model;

import housewright.unit.DataRate;
import housewright.unit.Gain;
import housewright.unit.Level;
import housewright.unit.Power;
import housewright.unit.Resistance;
import housewright.unit.VideoFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A socket or plug, or several alike. */
public record Port(
        @Doc("The signal that arrives here") @Key("in") @Nullable
        Signal in,

        @Doc("The signal that leaves here") @Nullable Signal out,

        @Doc("The signal that goes both ways here") @Nullable
        Signal both,

        @Doc("Passive: joined straight through by a tie, carries what it is given")
        boolean passive,

        @Doc("Which digital protocol the link speaks; both ends must speak the same") @Nullable
        String protocol,

        @Nullable Connector connector,

        @Doc("Channels, where the signal does not say") @Nullable
        Channels channels,

        @Doc("The level range it is made for") @Nullable LevelClass level,
        @Doc("Nominal level") @Nullable Level nominal,

        @Doc("Level at which it clips; at a converter this is 0 dBFS") @Nullable
        Level max,

        @Doc("Its own noise, referred to this port") @Nullable
        Level noise,

        @Doc("Most gain of its preamplifier") @Nullable Gain maxGain,
        @Nullable Resistance impedance,
        @Doc("Least load it may drive") @Nullable Resistance minLoad,
        @Doc("Power it gives or takes") @Nullable Power power,
        @Nullable Boolean balanced,
        @Nullable Phantom phantom,
        @Doc("Pictures it takes or gives") List<VideoFormat> formats,
        @Nullable DataRate rate,
        @Doc("Copy protection is on, or accepted") @Nullable Boolean hdcp,
        @Nullable Poe poe) {
    public Port {
        formats = List.copyOf(formats);
    }

    /** The signal, or null at a passive port, which carries what it is given. */
    public @Nullable Signal signal() {
        return in != null ? in : out != null ? out : both;
    }

    public boolean arrives() {
        return in != null || both != null || passive;
    }

    public boolean leaves() {
        return out != null || both != null || passive;
    }
}
