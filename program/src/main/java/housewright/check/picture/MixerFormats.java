package housewright.check.picture;

import housewright.check.Evidence;
import housewright.model.Kind;
import housewright.picture.Stretch;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A vision mixer works in one format, and what comes in without a scaler must be in it. */
final class MixerFormats {
    private MixerFormats() {}

    /** It ends at an input of a mixer that has no scaler: one whose formats are listed. */
    static boolean isFed(Stretch stretch) {
        return stretch.last().is(Kind.VISION_MIXER)
                && stretch.last().in() != null
                && !stretch.last().in().port().formats().isEmpty();
    }

    /** The input of the mixer that it ends at takes the format. */
    static boolean takes(Stretch stretch, VideoFormat format) {
        return stretch.last().in() != null
                && stretch.last().in().port().formats().contains(format);
    }

    /** A source that cannot come in in the mixer's format. */
    record Off(Stretch stretch, VideoFormat mixer) {
        /** It could come in at the rate of the mixer, in another size or scan. */
        boolean sameRate() {
            return stretch.common().stream()
                    .anyMatch(format ->
                            format.framesPerSecond() == mixer.framesPerSecond() || format.rate() == mixer.rate());
        }
    }

    /** The sources that are off their mixer's format, which is the house's where it takes that, else what most of them can send. */
    static List<Off> off(Evidence evidence) {
        Map<String, List<Stretch>> byMixer = new LinkedHashMap<>();
        for (Stretch stretch : evidence.pictures().stretches()) {
            if (isFed(stretch) && !stretch.common().isEmpty()) {
                byMixer.computeIfAbsent(stretch.last().thing(), key -> new ArrayList<>())
                        .add(stretch);
            }
        }
        List<Off> off = new ArrayList<>();
        VideoFormat house = evidence.project().about().picture();
        for (List<Stretch> stretches : byMixer.values()) {
            boolean inHouse = house != null && stretches.stream().anyMatch(stretch -> takes(stretch, house));
            VideoFormat mixer = inHouse ? house : most(stretches);
            for (Stretch stretch : stretches) {
                if (mixer != null && !stretch.common().contains(mixer)) {
                    off.add(new Off(stretch, mixer));
                }
            }
        }
        return off;
    }

    private static @Nullable VideoFormat most(List<Stretch> stretches) {
        Map<VideoFormat, Integer> counts = new LinkedHashMap<>();
        for (Stretch stretch : stretches) {
            Set<VideoFormat> common = stretch.common();
            common.forEach(format -> counts.merge(format, 1, Integer::sum));
        }
        VideoFormat best = null;
        int most = 0;
        for (Map.Entry<VideoFormat, Integer> each : counts.entrySet()) {
            if (each.getValue() > most) {
                most = each.getValue();
                best = each.getKey();
            }
        }
        return best;
    }
}
