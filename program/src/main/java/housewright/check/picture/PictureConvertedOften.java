package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.picture.Jack;
import housewright.picture.Pass;
import housewright.picture.PicturePath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The same picture turned from one kind of link into another again and again: each box is a power pack, a delay and one
 * more thing to agree on the format. HDBaseT is HDMI over another cable and does not count; scaling counts.
 */
public final class PictureConvertedOften implements Rule {
    static final Limit MOST = Limit.most("conversions of one picture", 2, "");

    private static final Card CARD = new Card(
            "picture-converted-often",
            "Is every picture converted no more often than it must be?",
            Set.of(Severity.NOTE),
            new Source.CommonPractice(),
            Stage.DESIGN,
            List.of(MOST));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, MOST);
        Map<List<String>, Set<String>> often = new LinkedHashMap<>();
        for (PicturePath path : evidence.pictures().paths()) {
            List<String> converters = converters(path);
            if (converters.size() > most) {
                often.computeIfAbsent(converters, key -> new LinkedHashSet<>()).add(path.feed());
            }
        }
        return often.entrySet().stream().map(each -> finding(each.getKey(), each.getValue(), most));
    }

    private static List<String> converters(PicturePath path) {
        List<String> converters = new ArrayList<>();
        for (Pass pass : path.passes()) {
            Jack in = pass.in();
            Jack out = pass.out();
            if (in != null && out != null && !pass.isPassive()) {
                boolean scales = pass.model() != null && pass.model().scales();
                if (scales || !link(in).equals(link(out))) {
                    converters.add(pass.thing());
                }
            }
        }
        return converters;
    }

    private static String link(Jack jack) {
        Signal signal = jack.port().signal();
        return signal == null ? "" : signal == Signal.HDBASET ? Signal.HDMI.word() : signal.word();
    }

    private static Finding finding(List<String> converters, Set<String> feeds, double most) {
        List<Subject> subjects = new ArrayList<>();
        feeds.forEach(feed -> subjects.add(Subject.feed(feed)));
        converters.forEach(thing -> subjects.add(Subject.equipment(thing)));
        return CARD.finding(
                Severity.NOTE,
                subjects,
                Said.some(feeds, 3) + (feeds.size() == 1 ? " is" : " are") + " converted " + converters.size()
                        + " times on the way: in "
                        + Said.some(converters.stream().map(Words::said).toList(), 6) + ".",
                List.of(new Value("conversions", converters.size(), most, "")),
                List.of(Fix.of("See whether it can stay SDI, or HDMI, for longer.")));
    }
}
