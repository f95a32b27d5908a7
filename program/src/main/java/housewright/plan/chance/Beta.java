package housewright.plan.chance;

import housewright.plan.Length;
import java.util.Random;

/** Draws lengths from the beta distribution over three points. */
final class Beta {
    private Beta() {}

    /** Minutes between the optimistic and the pessimistic. */
    static double draw(Length length, Random random) {
        double low = length.optimistic();
        double range = length.pessimistic() - low;
        if (range == 0) {
            return low;
        }
        double alpha = 1 + 4 * (length.likely() - low) / range;
        double beta = 1 + 4 * (length.pessimistic() - length.likely()) / range;
        double x = gamma(alpha, random);
        double y = gamma(beta, random);
        return low + range * x / (x + y);
    }

    /**
     * From the gamma distribution of scale 1.
     *
     * @param shape 1 or more
     * @see <a href="https://doi.org/10.1145/358407.358414">G. Marsaglia, W. W. Tsang, "A simple method for generating gamma
     *     variables", ACM Transactions on Mathematical Software 26 (2000) 363-372</a> (cited from memory)
     */
    private static double gamma(double shape, Random random) {
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double normal = random.nextGaussian();
            double v = 1 + c * normal;
            if (v <= 0) {
                continue;
            }
            v = v * v * v;
            if (Math.log(1 - random.nextDouble()) < normal * normal / 2 + d - d * v + d * Math.log(v)) {
                return d * v;
            }
        }
    }
}
