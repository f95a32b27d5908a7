package housewright.picture;

import housewright.unit.VideoFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * From where a picture gets a format to where that ends: at a screen, a mixer, a scaler or a computer.
 *
 * @param first the device it leaves
 * @param last the device it comes to
 * @param jacks every socket on the way that says which formats it takes or gives, in order
 * @param feeds ids of the feeds that run along it
 */
public record Stretch(Pass first, Pass last, List<Jack> jacks, Set<String> feeds) {
    public Stretch {
        jacks = List.copyOf(jacks);
    }

    /** What every socket on the way has, in the order of the first. */
    public Set<VideoFormat> common() {
        return commonBefore(jacks.size());
    }

    /**
     * Where nothing is left in common.
     *
     * @param jack the socket that takes none of it
     * @param before what all sockets before it have
     */
    public record Break(Jack jack, Set<VideoFormat> before) {}

    /** The first socket that has none of what all before it have. */
    public Optional<Break> findBreak() {
        Set<VideoFormat> before = commonBefore(1);
        for (int i = 1; i < jacks.size(); i++) {
            Set<VideoFormat> with = commonBefore(i + 1);
            if (with.isEmpty()) {
                return Optional.of(new Break(jacks.get(i), before));
            }
            before = with;
        }
        return Optional.empty();
    }

    /** The same, with the feeds of another that shares it. */
    public Stretch with(Stretch other) {
        Set<String> all = new LinkedHashSet<>(feeds);
        all.addAll(other.feeds);
        return new Stretch(first, last, jacks, all);
    }

    /** The first socket that does not have this format. */
    public Optional<Jack> findWithout(VideoFormat format) {
        return jacks.stream()
                .filter(jack -> !jack.port().formats().contains(format))
                .findFirst();
    }

    private Set<VideoFormat> commonBefore(int end) {
        Set<VideoFormat> common = new LinkedHashSet<>();
        for (int i = 0; i < end; i++) {
            List<VideoFormat> formats = jacks.get(i).port().formats();
            if (i == 0) {
                common.addAll(formats);
            } else {
                common.retainAll(formats);
            }
        }
        return common;
    }
}
