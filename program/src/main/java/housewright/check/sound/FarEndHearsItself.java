package housewright.check.sound;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.model.Carries;
import housewright.model.Equipment;
import housewright.model.Feed;
import housewright.model.Kind;
import housewright.model.Ref;
import housewright.model.Ref.Address;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.sound.Sound;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A caller's voice comes out of a computer into the hall, and what is sent back to the caller has it again: he hears
 * himself late and stops talking. What a computer plays and what it records is left alone.
 */
final class FarEndHearsItself implements Rule {
    private static final Card CARD = new Card(
            "far-end-hears-itself",
            "Is everybody who is connected from afar sent a mix without their own voice?",
            Set.of(Severity.FIX),
            new Source.CommonPractice(),
            Stage.DESIGN);

    private record Asked(Feed feed, Address at) {}

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<String, List<Asked>> from = new LinkedHashMap<>();
        Map<String, List<Asked>> to = new LinkedHashMap<>();
        for (Feed feed : evidence.project().feeds().values()) {
            if (!feed.never() && (feed.carries() == null || feed.carries() == Carries.AUDIO)) {
                gather(evidence, feed, feed.from(), from, Set.of("play", "click", "film"));
                gather(evidence, feed, feed.to(), to, Set.of("record", "track", "stick"));
            }
        }
        List<Finding> findings = new ArrayList<>();
        from.forEach((host, heard) -> {
            List<Asked> sent = to.getOrDefault(host, List.of());
            for (Asked voice : sent.isEmpty() ? List.<Asked>of() : heard) {
                sent.stream()
                        .filter(each -> !asks(each.feed(), voice.at()))
                        .filter(each -> evidence.signals().reaches(voice.at(), each.at()::equals))
                        .findFirst()
                        .ifPresent(each -> findings.add(finding(host, voice, each)));
            }
        });
        return findings.stream();
    }

    private static boolean asks(Feed feed, Address source) {
        return feed.from().stream().anyMatch(ref -> ref.addresses().contains(source));
    }

    private static void gather(
            Evidence evidence, Feed feed, List<Ref> places, Map<String, List<Asked>> byHost, Set<String> own) {
        for (Ref ref : places) {
            for (Address at : ref.addresses()) {
                String name = at.spot().name();
                if (isConnected(evidence.sound(), at.thing()) && own.stream().noneMatch(name::startsWith)) {
                    byHost.computeIfAbsent(host(evidence.sound(), at.thing()), key -> new ArrayList<>(1))
                            .add(new Asked(feed, at));
                }
            }
        }
    }

    private static boolean isConnected(Sound sound, String thing) {
        return sound.isKind(thing, Kind.COMPUTER, Kind.PROGRAM, Kind.AUDIO_INTERFACE, Kind.ENCODER);
    }

    /** The computer that a program runs on, else the thing itself. */
    private static String host(Sound sound, String thing) {
        Equipment equipment = sound.findThing(thing).orElse(null);
        String on = equipment == null ? null : equipment.runsOn() != null ? equipment.runsOn() : equipment.partOf();
        return on == null ? thing : on;
    }

    private static Finding finding(String host, Asked voice, Asked sent) {
        return CARD.finding(
                Severity.FIX,
                List.of(
                        Subject.feed(sent.feed().id()),
                        Subject.feed(voice.feed().id()),
                        Subject.equipment(host)),
                "Whoever is heard from " + voice.at().said() + " is sent their own voice again at "
                        + sent.at().said() + ", and late.",
                List.of(),
                List.of(Fix.of(
                        "Send back a mix of its own that leaves out what comes from " + Words.said(host) + ".")));
    }
}
