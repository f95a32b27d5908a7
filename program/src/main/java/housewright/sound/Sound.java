package housewright.sound;

import housewright.cable.Cabling;
import housewright.model.Equipment;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.PatchEntry;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.signal.Signals;
import housewright.unit.Level;
import housewright.unit.Sensitivity;
import housewright.unit.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sound of one project at one moment. */
public final class Sound {
    /** What a talker is taken to be at the microphone where the project states no level: 72 dB SPL. */
    public static final Level TALKER = new Level(72, Unit.DB_SPL);

    /** 1 Pa, to the nearest dB, as sensitivities are stated. */
    private static final double PASCAL_DB_SPL = 94;

    private final Ports ports;
    private final List<Patched> patched;
    private final List<Voice> voices;
    private final List<Alignment> alignments;
    private final List<Fill> fills;
    private final List<ClockDomain> clockDomains;

    private Sound(Project project, Map<String, Present> things, Signals signals, Cabling cabling) {
        Moment moment = signals.moment();
        ports = new Ports(things);
        patched = patched(project, moment);
        voices = new Voices(ports, signals).find();
        alignments = new Alignments(ports, signals).find();
        fills = new Fills(ports, project, signals).find();
        clockDomains = new ClockDomains(ports, project, moment).find(cabling);
    }

    public static Sound of(Project project, Map<String, Present> things, Signals signals, Cabling cabling) {
        return new Sound(project, things, signals, cabling);
    }

    private List<Patched> patched(Project project, Moment moment) {
        List<Patched> all = new ArrayList<>();
        project.patch().forEach((device, entries) -> {
            if (ports.thing(device) != null) {
                for (PatchEntry entry : entries) {
                    if (entry.life() == null || moment.isThere("patch", device, entry.life())) {
                        entry.join()
                                .pairs()
                                .forEach(pair -> all.add(new Patched(device, pair.from(), pair.to(), entry)));
                    }
                }
            }
        });
        return List.copyOf(all);
    }

    /** Every join that is set in a device that is there, in the order of the file. */
    public List<Patched> patched() {
        return patched;
    }

    /** The thing as it is at the moment; empty where it is not there. */
    public Optional<Equipment> findThing(String id) {
        return Optional.ofNullable(ports.thing(id));
    }

    /** The type of a thing that is there, with its ranges written out. */
    public Optional<Shape> findShape(String thing) {
        return Optional.ofNullable(ports.shape(thing));
    }

    public boolean isKind(String thing, Kind... kinds) {
        Model model = ports.model(thing);
        if (model != null) {
            for (Kind kind : kinds) {
                if (model.kind() == kind) {
                    return true;
                }
            }
        }
        return false;
    }

    /** It states a latency for sound above 0, so it works digitally inside and can delay. */
    public boolean isDigital(String thing) {
        return ports.digitalInside(thing);
    }

    /** Gain set at a port, channel or point, in dB; 0 where none is. */
    public double gain(Address at) {
        return ports.gain(at);
    }

    /**
     * Every microphone that a feed begins at, in the order of the feeds; of one that does not arrive as much of its way
     * as there is.
     */
    public List<Voice> voices() {
        return voices;
    }

    /** Every output that feeds a converter on the way of a feed, or to where it stops, and both state their levels. */
    public List<Alignment> alignments() {
        return alignments;
    }

    /** Loudspeakers over or beside the seats, behind others that play the same. */
    public List<Fill> fills() {
        return fills;
    }

    /** Those of which the project says anything about clocks or sample rates. */
    public List<ClockDomain> clockDomains() {
        return clockDomains;
    }

    /** What a microphone gives at a sound pressure: its sensitivity at 94 dB SPL, and the pressure over that. */
    public static Level output(Sensitivity sensitivity, Level pressure) {
        double dbv = 20 * Math.log10(sensitivity.millivoltsPerPascal() / 1000);
        return new Level(dbv + pressure.value() - PASCAL_DB_SPL, Unit.DBV).to(Unit.DBU);
    }

    /** Speed of sound in air in m/s at a temperature in degrees Celsius: 331.3 times the root of 1 + T/273.15. */
    public static double speed(double celsius) {
        return 331.3 * Math.sqrt(1 + celsius / 273.15);
    }
}
