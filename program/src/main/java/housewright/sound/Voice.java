package housewright.sound;

import housewright.model.Ref.Address;
import housewright.unit.Level;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One microphone on its way into the system, as far as that leads.
 *
 * @param source where its sound begins
 * @param pressure the sound pressure at it
 * @param stated the project says so; else it is {@link Sound#TALKER}
 * @param tight where the least is left before it clips; null where that is known nowhere
 * @param headroomDb what is left there, in dB; below 0 it clips
 * @param gains set by the project along that way, in order
 * @param preamp the first microphone input that it meets; null where it meets none
 */
public record Voice(
        Address source,
        Level pressure,
        boolean stated,
        @Nullable Address tight,
        double headroomDb,
        List<GainAt> gains,
        @Nullable Preamp preamp) {
    public Voice {
        gains = List.copyOf(gains);
    }

    /** A gain that the project sets, in dB. */
    public record GainAt(Address at, double db) {}

    /**
     * A microphone input.
     *
     * @param arrives the level that arrives there
     * @param setDb gain that is set there, in dB; 0 where none is
     * @param maxDb most gain it has, in dB; null where that is not known
     * @param noise its own noise, referred to its input; null where that is not known
     */
    public record Preamp(
            Address at,
            Level arrives,
            double setDb,
            @Nullable Double maxDb,
            @Nullable Level noise) {}
}
