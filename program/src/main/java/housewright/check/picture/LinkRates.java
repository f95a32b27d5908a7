package housewright.check.picture;

import housewright.unit.DataRate;
import housewright.unit.VideoFormat;
import java.util.Collection;
import java.util.stream.DoubleStream;

/** The serial digital link that picture formats need, in Gbit/s; 0 where none carries them. */
final class LinkRates {
    private LinkRates() {}

    static double least(Collection<VideoFormat> formats) {
        return rates(formats).min().orElse(0);
    }

    static double most(Collection<VideoFormat> formats) {
        return rates(formats).max().orElse(0);
    }

    private static DoubleStream rates(Collection<VideoFormat> formats) {
        return formats.stream()
                .flatMap(format -> format.findSdiRate().stream())
                .mapToDouble(DataRate::bitsPerSecond)
                .map(rate -> rate / 1e9);
    }
}
