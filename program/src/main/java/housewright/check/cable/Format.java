package housewright.check.cable;

import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The format that a run has to carry.
 *
 * @param used the house picture format where both ends do it, else the highest that both do, none above the house's
 * @param house it is the project's house picture format
 * @param least the lowest that both ends do: what the run must carry in any case
 * @param most the highest that both ends do
 */
record Format(VideoFormat used, boolean house, VideoFormat least, VideoFormat most) {
    private static final Comparator<VideoFormat> BY_PIXELS =
            Comparator.comparingDouble(Format::pixelRate).thenComparing(VideoFormat::text);

    /** Empty where neither the ends nor the project say, or the ends have none in common. */
    static Optional<Format> of(Evidence evidence, Line line) {
        VideoFormat house = evidence.project().about().picture();
        List<VideoFormat> common = common(formats(line.from()), formats(line.to()));
        if (common == null) {
            return house == null ? Optional.empty() : Optional.of(new Format(house, true, house, house));
        }
        if (house != null && common.contains(house)) {
            return Optional.of(new Format(
                    house, true, house, common.stream().max(BY_PIXELS).orElse(house)));
        }
        Optional<VideoFormat> least = common.stream().min(BY_PIXELS);
        return least.map(lowest -> new Format(
                common.stream()
                        .filter(each -> house == null || pixelRate(each) <= pixelRate(house))
                        .max(BY_PIXELS)
                        .orElse(lowest),
                false,
                lowest,
                common.stream().max(BY_PIXELS).orElse(lowest)));
    }

    /** Pixels shown in a second. */
    static double pixelRate(VideoFormat format) {
        return format.width() * (double) format.height() * format.framesPerSecond();
    }

    /** "1080p50, the house picture format". */
    String said() {
        String which = house
                ? "the house picture format"
                : used.equals(most)
                        ? "the highest that both ends do"
                        : used.equals(least)
                                ? "the lowest that both ends do"
                                : "the highest not above the house's that both ends do";
        return used.text() + ", " + which;
    }

    /** Null where neither end says any. */
    private static @Nullable List<VideoFormat> common(List<VideoFormat> one, List<VideoFormat> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() && other.isEmpty() ? null : one.isEmpty() ? other : one;
        }
        List<VideoFormat> common = new ArrayList<>(one);
        common.retainAll(other);
        return common;
    }

    private static List<VideoFormat> formats(@Nullable Plug plug) {
        return plug == null || plug.port() == null ? List.of() : plug.port().formats();
    }
}
