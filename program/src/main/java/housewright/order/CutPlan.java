package housewright.order;

import java.util.List;

/**
 * How the cable of one type is cut.
 *
 * @param drums those to buy, longest first
 * @param wantedM all pieces together, in m
 * @param boughtM all drums together, in m
 * @param boundM no way of cutting buys less, in m
 * @param best nothing less can be bought; else nobody has shown it
 * @param tooLong cables that no drum is long enough for
 */
public record CutPlan(
        String type,
        List<CutDrum> drums,
        double wantedM,
        double boughtM,
        double boundM,
        boolean best,
        List<String> tooLong) {
    public CutPlan {
        drums = List.copyOf(drums);
        tooLong = List.copyOf(tooLong);
    }
}
