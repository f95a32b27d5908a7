package housewright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Project;
import housewright.model.change.Change;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Hop;
import housewright.signal.Mend;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Signals;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever single thing is put wrong in the demo is found, where it is, and mended without harm.
 */
class SeededBreaksTest {
    static List<SeededBreak> breaks() {
        return SeededBreak.all();
    }

    @Test
    void thereAreEnoughOfThemAndNoneTwice() {
        assertThat(breaks()).hasSizeGreaterThanOrEqualTo(34);
        assertThat(toMend()).hasSizeGreaterThanOrEqualTo(30);
        assertThat(breaks()).extracting(SeededBreak::name).doesNotHaveDuplicates();
    }

    static List<SeededBreak> toMend() {
        return breaks().stream().filter(each -> each.noMend() == null).toList();
    }

    static List<SeededBreak> leftToPeople() {
        return breaks().stream().filter(each -> each.noMend() != null).toList();
    }

    @ParameterizedTest
    @MethodSource("breaks")
    void itBreaksJustTheFeedsThatHangOnIt(SeededBreak seeded) {
        Map<String, String> unproven = new LinkedHashMap<>();
        for (FeedProof proof : signals(seeded.made()).proofs()) {
            if (!proof.proven()) {
                unproven.put(proof.feed().id(), proof.state().word());
            }
        }
        assertThat(unproven).isEqualTo(seeded.feeds());
    }

    @ParameterizedTest
    @MethodSource("breaks")
    void theProofSaysWhereAndWhy(SeededBreak seeded) {
        FeedProof proof = proof(signals(seeded.made()), seeded.look());
        PairProof pair = proof.pairs().stream()
                .filter(each -> each.state() == proof.state())
                .findFirst()
                .orElseThrow();
        if (proof.state() == FeedState.ARRIVES) {
            Set<String> passed = new LinkedHashSet<>();
            for (Hop hop : pair.hops()) {
                passed.add(hop.from().toString());
                passed.add(hop.to().toString());
            }
            assertThat(passed).containsAnyElementsOf(seeded.at());
            assertThat(pair.hops()).extracting(Hop::text).anyMatch(text -> text.contains(seeded.why()));
        } else {
            assertThat(pair.stop()).isNotNull();
            assertThat(String.valueOf(pair.stop().at())).isIn(seeded.at());
            assertThat(pair.stop().why()).contains(seeded.why());
        }
    }

    static List<SeededBreak> mendedSoon() {
        return toMend().stream().filter(each -> !each.slow()).toList();
    }

    static List<SeededBreak> mendedSlowly() {
        return toMend().stream().filter(SeededBreak::slow).toList();
    }

    @ParameterizedTest
    @MethodSource("mendedSlowly")
    @Tag("slow")
    void aMendLookedForLongDoesSo(SeededBreak seeded) {
        aMendProvesTheFeedAgainAndHarmsNoOther(seeded);
    }

    @ParameterizedTest
    @MethodSource("mendedSoon")
    void aMendProvesTheFeedAgainAndHarmsNoOther(SeededBreak seeded) {
        Project broken = seeded.made();
        Signals before = signals(broken);
        List<Mend> mends = before.mends(proof(before, seeded.look()));
        assertThat(mends).isNotEmpty();
        for (Mend mend : mends) {
            assertThat(mend.steps()).isNotEmpty();
            Signals after = signals(Change.apply(broken, mend.changes()));
            assertThat(proven(after)).contains(seeded.look()).containsAll(proven(before));
            assertThat(after.loops()).isEmpty();
            assertThat(proven(Signals.of(after.project(), Demo.LIBRARY, Moment.today())))
                    .as("nobody has touched the hall yet")
                    .isEqualTo(proven(Signals.of(broken, Demo.LIBRARY, Moment.today())));
        }
        if (seeded.mend() != null) {
            assertThat(mends.stream().flatMap(mend -> mend.steps().stream()).toList())
                    .anyMatch(step -> step.contains(seeded.mend()));
        }
    }

    @ParameterizedTest
    @MethodSource("leftToPeople")
    void whatCouldDoDamageOrIsNotKnownIsNotMendedByGuess(SeededBreak seeded) {
        Signals before = signals(seeded.made());
        assertThat(before.mends(proof(before, seeded.look()))).isEmpty();
    }

    private static List<String> proven(Signals signals) {
        return signals.proofs().stream()
                .filter(FeedProof::proven)
                .map(proof -> proof.feed().id())
                .toList();
    }

    private static Signals signals(Project project) {
        return Signals.of(project, Demo.LIBRARY, Moment.target());
    }

    private static FeedProof proof(Signals signals, String feed) {
        return signals.findProof(feed).orElseThrow(() -> new AssertionError("There is no feed " + feed));
    }
}
