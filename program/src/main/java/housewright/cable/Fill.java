package housewright.cable;

import java.util.List;

/**
 * How full a round pathway is.
 *
 * @param cables that lie in it
 * @param share of its inside area that their outside diameters take; 1 is all
 */
public record Fill(int cables, double share) {
    /** A cable of several cores counts as one, by its outside diameter. All in mm. */
    public static Fill of(double bore, List<Double> diameters) {
        double sum = 0;
        for (double diameter : diameters) {
            sum += diameter * diameter;
        }
        return new Fill(diameters.size(), sum / (bore * bore));
    }
}
