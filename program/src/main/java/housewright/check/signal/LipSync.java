package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.signal.PairProof;
import housewright.signal.Signals;
import housewright.signal.SoundToPicture;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Lips that move before or after the words: the delay of the sound against that of the picture. */
public final class LipSync implements Rule {
    /** From here on people notice (considering g). */
    static final Limit NOTICED_EARLY = Limit.most("sound early, before people notice,", 45, "ms");

    static final Limit NOTICED_LATE = Limit.most("sound late, before people notice,", 125, "ms");

    /** From here on people object (considering g; recommends 2). */
    static final Limit REFUSED_EARLY = Limit.most("sound early, before people object,", 90, "ms");

    static final Limit REFUSED_LATE = Limit.most("sound late, before people object,", 185, "ms");

    private static final Card CARD = new Card(
            "lip-sync",
            "Do lips and words agree wherever picture and sound arrive together?",
            Set.of(Severity.FIX, Severity.NOTE),
            new Source.Published("ITU-R BT.1359-1", "considering g), recommends 2"),
            Stage.DESIGN,
            List.of(NOTICED_EARLY, NOTICED_LATE, REFUSED_EARLY, REFUSED_LATE));

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Signals signals = evidence.signals();
        double noticedEarly = evidence.limit(CARD, NOTICED_EARLY);
        return signals.soundToPicture().stream().flatMap(meeting -> finding(signals, meeting, noticedEarly).stream());
    }

    private static Optional<Finding> finding(Signals signals, SoundToPicture meeting, double noticedEarly) {
        double early = meeting.soundEarlyMs();
        double size = Math.abs(early);
        double noticed = early > 0 ? noticedEarly : NOTICED_LATE.value();
        double refused = early > 0 ? REFUSED_EARLY.value() : REFUSED_LATE.value();
        if (size <= noticed) {
            return Optional.empty();
        }
        boolean bad = size > refused;
        String which = early > 0 ? "early" : "late";
        String message = String.format(
                Locale.ROOT,
                "At %s the sound of %s is %.0f ms %s against the picture of %s; people %s%s.",
                Words.said(meeting.equipment()),
                meeting.soundFeed(),
                size,
                which,
                meeting.pictureFeed(),
                bad ? "object beyond " : "notice beyond ",
                String.format(Locale.ROOT, "%.0f ms", bad ? refused : noticed)
                        + (isGuess(signals, meeting) ? ", and some delays on the way are not known" : ""));
        String words = early > 0
                ? String.format(Locale.ROOT, "Delay the sound of %s by %.0f ms.", meeting.soundFeed(), size)
                : String.format(
                        Locale.ROOT,
                        "Take delay out of the sound of %s, or delay the picture by %.0f ms.",
                        meeting.soundFeed(),
                        size);
        return Optional.of(CARD.finding(
                bad ? Severity.FIX : Severity.NOTE,
                List.of(
                        Subject.equipment(meeting.equipment()),
                        Subject.feed(meeting.soundFeed()),
                        Subject.feed(meeting.pictureFeed())),
                message,
                List.of(new Value("sound " + which, size, bad ? refused : noticed, "ms")),
                List.of(Fix.of(words))));
    }

    private static boolean isGuess(Signals signals, SoundToPicture meeting) {
        return Stream.of(meeting.soundFeed(), meeting.pictureFeed())
                .flatMap(feed -> signals.findProof(feed).stream())
                .flatMap(proof -> proof.pairs().stream())
                .map(PairProof::lacking)
                .anyMatch(lacking -> !lacking.isEmpty());
    }
}
