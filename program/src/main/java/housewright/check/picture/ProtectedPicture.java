package housewright.check.picture;

import housewright.cable.Line;
import housewright.cable.Plug;
import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.LocalRef.Spot;
import housewright.model.Ref.Address;
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
import org.jspecify.annotations.Nullable;

/** A picture with copy protection (HDCP) on, into SDI or into what refuses it: it stays black. */
public final class ProtectedPicture implements Rule {
    private static final Card CARD = new Card(
            "protected-picture",
            "Does every picture with copy protection stay on plugs that accept it?",
            Set.of(Severity.STOP, Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    private record Refusal(Address source, Address at, boolean sdi) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<Refusal, Set<String>> refused = new LinkedHashMap<>();
        for (PicturePath path : evidence.pictures().paths()) {
            Refusal refusal = find(path);
            if (refusal != null) {
                refused.computeIfAbsent(refusal, key -> new LinkedHashSet<>()).add(path.feed());
            }
        }
        for (Line line : evidence.cabling().lines()) {
            Plug from = line.source();
            Plug to = line.sink();
            if (from != null && to != null && isOn(from) && isOff(to)) {
                refused.computeIfAbsent(new Refusal(of(from), of(to), false), key -> new LinkedHashSet<>());
            }
        }
        return refused.entrySet().stream()
                .filter(each -> !each.getValue().isEmpty() || isNew(each.getKey(), refused))
                .map(each -> finding(each.getKey(), each.getValue()));
    }

    private static boolean isOn(Plug plug) {
        return plug.port() != null
                && plug.port().out() != null
                && Boolean.TRUE.equals(plug.port().hdcp());
    }

    private static boolean isOff(Plug plug) {
        return plug.port() != null && Boolean.FALSE.equals(plug.port().hdcp());
    }

    private static Address of(Plug plug) {
        return new Address(plug.at().thing(), new Spot(plug.at().spot().name(), null));
    }

    /** No feed says the same of these two already, channel and all. */
    private static boolean isNew(Refusal plain, Map<Refusal, Set<String>> refused) {
        return refused.entrySet().stream()
                .filter(each -> !each.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .noneMatch(each -> each.source().thing().equals(plain.source().thing())
                        && each.at().thing().equals(plain.at().thing())
                        && each.at().spot().name().equals(plain.at().spot().name()));
    }

    private static @Nullable Refusal find(PicturePath path) {
        Jack source = null;
        for (Pass pass : path.passes()) {
            Jack in = pass.in();
            Jack out = pass.out();
            if (source != null && in != null && Boolean.FALSE.equals(in.port().hdcp())) {
                return new Refusal(source.at(), in.at(), false);
            }
            if (source != null && out != null && out.port().signal() == Signal.SDI) {
                return new Refusal(source.at(), out.at(), true);
            }
            if (source == null && out != null && Boolean.TRUE.equals(out.port().hdcp())) {
                source = out;
            }
        }
        return null;
    }

    private static Finding finding(Refusal refusal, Set<String> feeds) {
        List<Subject> subjects = new ArrayList<>();
        subjects.add(Subject.equipment(refusal.at().thing()));
        subjects.add(Subject.equipment(refusal.source().thing()));
        feeds.forEach(feed -> subjects.add(Subject.feed(feed)));
        String why = refusal.sdi() ? ", which is SDI and carries no protected picture" : ", which refuses it";
        String black = feeds.isEmpty()
                ? "it stays black there"
                : Said.some(feeds, 3) + (feeds.size() == 1 ? " stays" : " stay") + " black";
        return CARD.finding(
                feeds.isEmpty() ? Severity.FIX : Severity.STOP, // no feed asks for it yet
                subjects,
                Words.said(refusal.source().thing()) + " sends a protected picture (HDCP) into "
                        + refusal.at().said() + why + ": " + black + ".",
                List.of(),
                List.of(Fix.of("Take it to the screen by HDMI and HDBaseT alone, or play the film from a source that is"
                        + " allowed to send it unprotected.")));
    }
}
