package housewright.check.sound;

import housewright.check.Rule;
import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.finding.Finding;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.model.Project;
import housewright.model.change.Change;
import housewright.study.Study;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A small invented hall of library types without a fault in its sound, to be changed in one place by each test. */
final class Halls {
    static final Library LIBRARY = BuiltInLibrary.of(1);

    static final String HALL = """
            housewright: 1
            project: {name: Small hall, stage: live, picture: 1080p50, air: {temperature: 20 degC}}
            venue:
              rooms:
                hall:
                  outline: [[0 m, 0 m], [30 m, 0 m], [30 m, 10 m], [0 m, 10 m]]
                  floor: 0 m
                  seats: {area: [[6 m, 1 m], [26 m, 1 m], [26 m, 9 m], [6 m, 9 m]], rows: 12, ear: 1.2 m}
              places:
                platform: {room: hall, at: [2 m, 5 m, 1.5 m]}
                front: {room: hall, at: [4 m, 5 m, 3 m]}
                back: {room: hall, at: [16 m, 5 m, 3 m]}
            equipment:
              voice: {model: mic-dynamic-vocal, at: platform}
              speech: {model: condenser-gooseneck, at: platform}
              box: {model: stagebox-16x8-stage-a, set: {in-1: {gain: 40 dB}, in-2: {gain: 46 dB}}}
              desk: {model: desk-digital-32-stage-a}
              main: {model: loudspeaker-powered-12, at: front}
              fill: {model: loudspeaker-powered-8, at: back}
              transmitter: {model: in-ear-transmitter}
              pack: {model: in-ear-beltpack, at: platform}
              ears: {model: earphones-in-ear, at: platform}
              loop: {model: hearing-loop-amplifier}
              recorder: {model: recorder-usb-stick, set: {"in-{L,R}": {gain: -2 dB}}}
            cables:
              C1: {from: voice.out, to: box.in-1}
              C2: {from: speech.out, to: box.in-2}
              C3: {from: box.link, to: desk.link}
              C4: {from: box.out-1, to: main.in}
              C5: {from: box.out-2, to: fill.in}
              C6: {from: box.out-3, to: transmitter.in-L}
              C7: {from: box.out-4, to: transmitter.in-R}
              C8: {from: pack.phones, to: ears.in}
              C9: {from: box.out-5, to: loop.line-in}
              C10: {from: desk.out-1, to: recorder.in-L}
              C11: {from: desk.out-2, to: recorder.in-R}
            radio:
              ears: {from: transmitter.radio, to: pack.radio, frequency: 606.5 MHz}
            patch:
              desk:
                - link:1 -> ch-1
                - link:2 -> ch-2
                - "ch-{1..2} -> main-L"
                - "ch-{1..2} -> main-R"
                - main-L -> link:1
                - {from: main-R, to: "link:2", delay: 45 ms}
                - ch-1 -> mix-1, mix-2
                - "mix-{1..2} -> link:{3..4}"
                - "ch-{1..2} -> mix-3"
                - mix-3 -> link:5
                - {from: main-L, to: out-1, tap: after-fader}
                - {from: main-R, to: out-2, tap: after-fader}
            pairs: {hall: [desk.main-L, desk.main-R]}
            feeds:
              hall: {from: [voice.pickup, speech.pickup], to: [main.sound], carries: audio}
              back: {from: [voice.pickup, speech.pickup], to: [fill.sound], carries: audio}
              own: {from: voice.pickup, to: "ears.sound-{L,R}", carries: audio}
              record: {from: speech.pickup, to: "recorder.record-{L,R}", carries: audio}
            """;

    private Halls() {}

    /** The hall with passages replaced, each of which must be there once. */
    static String but(String... replace) {
        String text = HALL;
        for (int i = 0; i < replace.length; i += 2) {
            int at = text.indexOf(replace[i]);
            if (at < 0 || text.indexOf(replace[i], at + 1) >= 0) {
                throw new AssertionError("Not once in the hall: " + replace[i]);
            }
            text = text.replace(replace[i], replace[i + 1]);
        }
        return text;
    }

    static Project project(String text) {
        return switch (ProjectReader.read("hall.yaml", text.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors() + "\n" + text);
        };
    }

    static Study study(String text) {
        return Study.of(project(text), LIBRARY);
    }

    static List<Finding> find(Rule rule, String text) {
        return rule.check(study(text)).toList();
    }

    static List<String> said(Rule rule, String text) {
        return find(rule, text).stream()
                .map(finding -> finding.severity().word() + " " + finding.message())
                .toList();
    }

    /** What is left of the rule's findings when the first fix of each is made. */
    static List<Finding> mended(Rule rule, String text) {
        Project project = project(text);
        for (Finding finding : rule.check(Study.of(project, LIBRARY)).toList()) {
            List<Change> changes = finding.fixes().getFirst().changes();
            if (changes.isEmpty()) {
                throw new AssertionError("No change in " + finding);
            }
            project = Change.apply(project, changes);
        }
        return rule.check(Study.of(project, LIBRARY)).toList();
    }
}
