package housewright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Findings;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.study.RuleCatalogue;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Single mistakes made in sound projects: each gives its rule, its subject and a fix, and no two hide each other. */
class MistakesTest {
    private static final int PAIRS = 150;
    private static final Map<String, Study> SOUND = new HashMap<>();

    static List<Mistake> mistakes() {
        return Mistake.all();
    }

    private static Study sound(String on) {
        return SOUND.computeIfAbsent(on, key -> Mistake.study(Demo.read(Mistake.text(key))));
    }

    static List<Mistake> quick() {
        return mistakes().stream().filter(each -> !each.slow()).toList();
    }

    static List<Mistake> slow() {
        return mistakes().stream().filter(Mistake::slow).toList();
    }

    @ParameterizedTest
    @MethodSource("slow")
    @Tag("slow")
    void isFoundWithItsSubjectAndAFixThatIsLookedForLong(Mistake mistake) {
        isFoundWithItsSubjectAndAFixThatClearsIt(mistake);
    }

    @ParameterizedTest
    @MethodSource("quick")
    void isFoundWithItsSubjectAndAFixThatClearsIt(Mistake mistake) {
        assertThat(mistake.in(sound(mistake.on()))).as("before").isEmpty();
        Study wrong = Mistake.study(mistake.project());
        List<Finding> found = mistake.in(wrong);
        assertThat(found).as(() -> said(wrong.findings())).isNotEmpty();
        assertThat(found.getFirst().severity()).isEqualTo(mistake.severity());
        assertThat(found.getFirst().fixes()).isNotEmpty();
        if (mistake.change()) {
            List<Change> changes = found.getFirst().fixes().getFirst().changes();
            assertThat(changes).isNotEmpty();
            assertThat(mistake.in(wrong.with(Change.apply(wrong.project(), changes))))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    @Tag("slow")
    void makesNoRuleFail(Mistake mistake) {
        assertThat(Mistake.study(mistake.project()).findings().failures()).isEmpty();
    }

    private record Pair(Mistake one, Mistake other, Project project) {
        /** Those of the two that are no longer found. */
        Stream<String> hidden() {
            Study study = Mistake.study(project);
            return Stream.of(one, other)
                    .filter(each -> each.in(study).isEmpty())
                    .filter(each -> !(each == one ? other : one).toString().equals(MOOT.get(each.toString())))
                    .filter(each -> !(ALONG_A_FEED.contains(each.rule()) && breaksAFeed(each == one ? other : one)))
                    .map(each -> each + " beside " + (each == one ? other : one));
        }
    }

    /**
     * Asked of what arrives, or of what a device further on is given: silent while the feed itself is reported as one
     * that does not arrive, or stops before.
     */
    private static final Set<String> ALONG_A_FEED = Set.of("performer-hears-late", "full-scale-differs");

    /**
     * What is not found beside one that takes away what it is about: no desk at its place, no skill to be free for, no panel
     * to reach. That other one is.
     */
    private static final Map<String, String> MOOT = Map.of(
            "the desk in the store behind the stage", "the desk in the rack of the store",
            "the lift comes when its operator is away", "a lift of which nobody says who may drive it",
            "buttons at the skirting board", "the panel struck whose buttons are planned");

    private static boolean breaksAFeed(Mistake mistake) {
        return Mistake.everything(Mistake.study(mistake.project()).findings())
                .anyMatch(finding -> finding.rule().equals("feed-does-not-arrive"));
    }

    @Test
    @Tag("slow")
    void twoMistakesDoNotHideEachOther() {
        Random random = new Random(20261125);
        List<Mistake> all = mistakes();
        Map<String, List<Mistake>> byProject =
                all.stream().collect(Collectors.groupingBy(Mistake::on, LinkedHashMap::new, Collectors.toList()));
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < PAIRS; i++) {
            Mistake one = all.get(random.nextInt(all.size()));
            List<Mistake> others = byProject.get(one.on());
            Mistake other = others.get(random.nextInt(others.size()));
            Project both = both(one, other);
            if (both != null) { // they do not touch the same words
                pairs.add(new Pair(one, other, both));
            }
        }
        assertThat(pairs).hasSizeGreaterThan(PAIRS / 2);
        assertThat(pairs.parallelStream().flatMap(Pair::hidden)).isEmpty();
    }

    private static Project both(Mistake one, Mistake other) {
        if (one == other || one.damage().touches(other.damage())) {
            return null;
        }
        try {
            return one.damage().and(other.damage()).in(Mistake.text(one.on()));
        } catch (AssertionError overlapping) {
            return null;
        }
    }

    @Test
    void everyRuleHasAMistakeOfItsOwn() {
        Set<String> made = mistakes().stream().map(Mistake::rule).collect(Collectors.toCollection(TreeSet::new));
        Set<String> rules = RuleCatalogue.all().stream()
                .map(Rule::card)
                .map(Rule.Card::id)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(rules).containsAll(made);
        rules.removeAll(made);
        assertThat(rules).isEmpty();
    }

    private static String said(Findings findings) {
        return Mistake.everything(findings)
                .map(finding -> finding.rule() + " " + finding.subjects() + " " + finding.message())
                .collect(Collectors.joining("\n"));
    }
}
