package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Kind;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.picture.Jack;
import housewright.picture.Pass;
import housewright.picture.PicturePath;
import housewright.unit.VideoFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** An HDMI splitter before screens that take different formats: the source is told (EDID) of one set of them only. */
public final class SplitToUnlikeScreens implements Rule {
    private static final Card CARD = new Card(
            "split-to-unlike-screens",
            "Do all screens behind an HDMI splitter take the same formats?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, Map<String, Set<VideoFormat>>> screens = new LinkedHashMap<>();
        for (PicturePath path : evidence.pictures().paths()) {
            Pass last = path.passes().getLast();
            Jack in = last.in();
            boolean screen = last.is(Kind.DISPLAY) || last.is(Kind.PROJECTOR);
            if (in == null || !screen || in.port().formats().isEmpty()) {
                continue;
            }
            for (Pass pass : path.passes().reversed()) { // from the screen back, as far as it makes itself known
                if (!pass.equals(last) && !tellsOn(pass)) {
                    break;
                }
                if (pass.is(Kind.SPLITTER)) {
                    screens.computeIfAbsent(pass.thing(), key -> new LinkedHashMap<>())
                            .put(last.thing(), Set.copyOf(in.port().formats()));
                }
            }
        }
        return screens.entrySet().stream()
                .filter(each -> each.getValue().values().stream().distinct().count() > 1)
                .map(each -> finding(each.getKey(), each.getValue()));
    }

    /** What a screen takes is known before it: by HDMI and HDBaseT, and not through a mixer, which asks for itself. */
    private static boolean tellsOn(Pass pass) {
        return pass.isPassive()
                || (isTold(pass.in())
                        && isTold(pass.out())
                        && !pass.is(Kind.VISION_MIXER)
                        && !pass.is(Kind.MATRIX)
                        && (pass.model() == null || !pass.model().scales()));
    }

    private static boolean isTold(@Nullable Jack jack) {
        return jack != null
                && (jack.port().signal() == Signal.HDMI || jack.port().signal() == Signal.HDBASET);
    }

    private static Finding finding(String splitter, Map<String, Set<VideoFormat>> screens) {
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(splitter));
        Set<VideoFormat> all = null;
        for (Map.Entry<String, Set<VideoFormat>> screen : screens.entrySet()) {
            subjects.add(Subject.equipment(screen.getKey()));
            if (all == null) {
                all = new LinkedHashSet<>(screen.getValue());
            } else {
                all.retainAll(screen.getValue());
            }
        }
        List<VideoFormat> common = new ArrayList<>(all == null ? Set.of() : all);
        common.sort(Comparator.comparingInt(VideoFormat::height)
                .thenComparingDouble(VideoFormat::framesPerSecond)
                .reversed());
        String take = common.isEmpty() ? "and have none in common" : "and have " + Said.formats(common) + " in common";
        return CARD.finding(
                Severity.NOTE,
                subjects,
                "The screens behind " + Words.said(splitter) + " do not take the same formats ("
                        + Said.some(screens.keySet().stream().map(Words::said).toList(), 4) + ") " + take
                        + ": the source is told of one screen's only.",
                List.of(),
                List.of(Fix.of("Set the splitter, or the source, to one format that all of them take, and write it"
                        + " down; then no screen goes dark when another is switched on.")));
    }
}
