package housewright.check.picture;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Join;
import housewright.model.Kind;
import housewright.model.Ref.Address;
import housewright.model.Signal;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.picture.Jack;
import housewright.picture.Pass;
import housewright.picture.PicturePath;
import housewright.signal.FeedProof;
import housewright.signal.Hop;
import housewright.signal.PairProof;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Sound put on a channel of SDI above 8 that meets HDMI, which ends at 8, on its way. Where a feed says where that
 * channel is heard, its proof says whether it is, so only what no feed asks for is said here.
 */
public final class EmbeddedChannelLost implements Rule {
    static final Limit MOST = Limit.most("channels of sound in HDMI", 8, "");

    private static final Card CARD = new Card(
            "embedded-channel-lost",
            "Does sound that is put into a picture stay on channels that its way carries to the end?",
            Set.of(Severity.NOTE),
            new Source.Published("SMPTE ST 299-1 and HDMI 1.x, as quoted", "16 channels in SDI, 8 in HDMI"),
            Stage.DESIGN,
            List.of(MOST));

    private record Loss(Address put, Address lost) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        double most = evidence.limit(CARD, MOST);
        Map<Loss, Set<Integer>> losses = new LinkedHashMap<>();
        for (PicturePath path : evidence.pictures().paths()) {
            follow(evidence, path, most, losses);
        }
        if (losses.isEmpty()) {
            return Stream.empty();
        }
        Set<String> asked = asked(evidence);
        losses.forEach((loss, channels) -> channels.removeIf(n -> asked.contains(loss.put() + ":" + n)));
        return losses.entrySet().stream()
                .filter(each -> !each.getValue().isEmpty())
                .map(each -> finding(each.getKey(), each.getValue(), most));
    }

    private static void follow(Evidence evidence, PicturePath path, double most, Map<Loss, Set<Integer>> losses) {
        Address put = null;
        Set<Integer> high = Set.of();
        for (Pass pass : path.passes()) {
            Jack out = pass.out();
            if (out != null && pass.is(Kind.EMBEDDER)) {
                put = out.at();
                high = high(evidence, put, most);
            } else if (pass.is(Kind.COMPUTER) || pass.is(Kind.VISION_MIXER)) {
                high = Set.of(); // what goes on from here is put in here
            }
            if (put != null && out != null && isShort(out) && !high.isEmpty()) {
                losses.computeIfAbsent(new Loss(put, out.at()), key -> new TreeSet<>())
                        .addAll(high);
                return;
            }
        }
    }

    private static boolean isShort(Jack out) {
        return out.port().signal() == Signal.HDMI || out.port().signal() == Signal.HDBASET;
    }

    private static Set<Integer> high(Evidence evidence, Address out, double most) {
        Set<Integer> high = new TreeSet<>();
        for (Join.Pair pair : evidence.pictures().patched(out.thing())) {
            int n = EmbeddedPairSplit.channel(pair.to());
            if (pair.to().name().equals(out.spot().name()) && n > most) {
                high.add(n);
            }
        }
        return high;
    }

    /** Every channel that the proof of a sound feed passes. */
    private static Set<String> asked(Evidence evidence) {
        Set<String> asked = new HashSet<>();
        for (FeedProof proof : evidence.signals().proofs()) {
            if (!proof.feed().never()) {
                for (PairProof pair : proof.pairs()) {
                    for (Hop hop : pair.hops()) {
                        asked.add(hop.to().toString());
                    }
                }
            }
        }
        return asked;
    }

    private static Finding finding(Loss loss, Set<Integer> channels, double most) {
        List<String> numbers = new ArrayList<>();
        channels.forEach(n -> numbers.add(Integer.toString(n)));
        return CARD.finding(
                Severity.NOTE,
                List.of(
                        Subject.equipment(loss.put().thing()),
                        Subject.equipment(loss.lost().thing())),
                "Sound that " + Words.said(loss.put().thing()) + " puts on channel " + Said.some(numbers, 4)
                        + " ends at " + loss.lost().said() + ", which carries " + Math.round(most)
                        + " channels, and no feed says where it is heard.",
                List.of(new Value("channel", channels.iterator().next(), most, "")),
                List.of(Fix.of("Put it on a channel up to " + Math.round(most) + ", or take it out before.")));
    }
}
