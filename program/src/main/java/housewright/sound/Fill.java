package housewright.sound;

import housewright.signal.PairProof;

/**
 * A loudspeaker further back than another that the same sound comes from.
 *
 * @param main equipment nearer to the source
 * @param fill equipment further back
 * @param metres from one to the other
 * @param airMs time that sound takes through the air from one to the other, in ms
 * @param laterMs how much later the sound leaves the fill than the main, in ms
 * @param way to the fill
 * @param mainWay to the main
 */
public record Fill(
        String main, String fill, double metres, double airMs, double laterMs, PairProof way, PairProof mainWay) {
    /** How much later the fill's own sound is heard beside it than that of the main, in ms; below 0 it comes first. */
    public double behindMs() {
        return laterMs - airMs;
    }
}
