package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Kind;
import housewright.model.Latency;
import housewright.model.Model;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.picture.Pass;
import housewright.picture.PicturePath;
import housewright.unit.Delay;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A vision mixer that holds no picture back for a frame has no frame synchronisers at its inputs: sources that each
 * run by their own clock then roll at every cut, unless each is locked to one reference or synchronised on the way.
 */
public final class MixerWithoutSynchroniser implements Rule {
    static final Limit LEAST = Limit.least("delay of a mixer that synchronises its inputs", 1, "frame");

    private static final Card CARD = new Card(
            "mixer-without-synchroniser",
            "Is every source of a vision mixer locked to the mixer, there or on the way?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(LEAST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        VideoFormat house = evidence.project().about().picture();
        double least = evidence.limit(CARD, LEAST);
        Map<String, Set<String>> loose = new LinkedHashMap<>();
        Map<String, Double> frames = new LinkedHashMap<>();
        for (PicturePath path : evidence.pictures().paths()) {
            boolean synchronised = false;
            for (Pass pass : path.passes()) {
                Double delay = frames(pass.model(), house);
                boolean frame = delay != null && delay >= least;
                if (pass.is(Kind.VISION_MIXER)) {
                    if (pass.in() != null && delay != null && !frame && !synchronised) {
                        frames.put(pass.thing(), delay);
                        loose.computeIfAbsent(pass.thing(), key -> new LinkedHashSet<>())
                                .add(path.passes().getFirst().thing());
                    }
                    break;
                }
                synchronised |= frame && pass.is(Kind.CONVERTER);
            }
        }
        return loose.entrySet().stream()
                .filter(each -> each.getValue().size() > 1)
                .map(each -> finding(each.getKey(), each.getValue(), frames.getOrDefault(each.getKey(), 0.0), least));
    }

    private static @Nullable Double frames(@Nullable Model model, @Nullable VideoFormat house) {
        Latency latency = model == null ? null : model.latency();
        Delay delay = latency == null ? null : latency.video() != null ? latency.video() : latency.all();
        if (delay == null) {
            return null;
        }
        if (delay.inFrames()) {
            return delay.value();
        }
        return house == null ? null : (Double) (delay.base() * house.framesPerSecond());
    }

    private static Finding finding(String mixer, Set<String> sources, double frames, double least) {
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(mixer));
        sources.forEach(source -> subjects.add(Subject.equipment(source)));
        return CARD.finding(
                Severity.FIX,
                subjects,
                Words.said(mixer) + " holds no picture back for a frame, so it does not synchronise its inputs, and "
                        + Said.some(sources.stream().map(Words::said).toList(), 4)
                        + " each run by their own clock: the picture rolls at every cut.",
                List.of(new Value("delay", frames, least, "frame")),
                List.of(Fix.of("Put a frame synchroniser before each of these inputs, lock the sources to one sync"
                        + " generator, or take a mixer with synchronisers.")));
    }
}
