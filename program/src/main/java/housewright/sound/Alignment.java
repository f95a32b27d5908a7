package housewright.sound;

import housewright.model.Ref.Address;

/**
 * An output and the converter input that it feeds.
 *
 * @param peakDbu the most that arrives at the input, its gain counted, in dBu
 * @param clipsDbu where the input clips, in dBu
 */
public record Alignment(Address out, Address in, double peakDbu, double clipsDbu) {
    /** By how much the loudest clips, in dB; below 0 that much of the input's range is never used. */
    public double overDb() {
        return peakDbu - clipsDbu;
    }
}
