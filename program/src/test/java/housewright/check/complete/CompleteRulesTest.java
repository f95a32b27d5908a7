package housewright.check.complete;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.check.Rule;
import housewright.check.Small;
import housewright.finding.Finding;
import housewright.model.change.Change;
import housewright.study.Study;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule about what is missing on a hall that breaks it in one place, and on the nearest one that does not. */
class CompleteRulesTest {
    private static final Small WHOLE = new Small("""
            housewright: 1
            project: {name: Small, stage: live}
            models:
              box:
                kind: stage-box
                price: 100
                ports:
                  link: {both: stage-link, protocol: stage-a, connector: RJ45, channels: 8}
                  mains: {in: mains, connector: C14}
              strip:
                kind: power-distributor
                price: 20
                ports: {mains: {in: mains, connector: C14}, "out-{1..4}": {out: mains, connector: C13}}
              eye:
                kind: camera
                poe: {takes: 12 W}
                ports: {mains: {in: mains, connector: adapter}, net: {both: ethernet, connector: RJ45}}
              pc:
                kind: computer
                ports: {mains: {in: mains, connector: C14}, net: {both: ethernet, connector: RJ45}}
              song:
                kind: program
              loop:
                kind: hearing-loop
                ports: {in: {in: analog-audio, connector: XLR-3F}}
                points: [field]
                routes: [in -> field]
              mic:
                kind: microphone
                ports: {out: {out: analog-audio, connector: XLR-3M, level: mic}}
                points: [pickup]
                routes: [pickup -> out]
            venue:
              rooms: {hall: {}}
              places: {rack: {room: hall}, stage: {room: hall}}
              circuits: {c1: {rating: 16 A, voltage: 230 V, places: [rack, stage]}}
            equipment:
              strip: {model: strip, at: rack, life: new, circuit: c1}
              box-1: {model: box, at: rack, life: new, powered-by: strip.out-1, handover: {firmware: "1.2"}}
              box-2: {model: box, at: stage, life: new, circuit: c1, handover: {firmware: "1.2"}}
              pc: {model: pc, at: rack, circuit: c1, handover: {password: in the safe}}
              song: {model: song, runs-on: pc, handover: {licence: to the hall}}
              loop: {model: loop, at: stage}
              mic: {model: mic}
              old: {model: pc, at: stage, life: strike}
            cables:
              C1: {type: link, from: box-1.link, to: box-2.link, life: new}
              C2: {type: lead, from: mic.out, to: loop.in}
            cable-types: {link: {carries: [stage-link], ends: [RJ45, RJ45]}, lead: {carries: [analog-audio], ends: [XLR-3F, XLR-3M]}}
            feeds:
              voice: {from: mic.pickup, to: loop.field, test: with the receiver in the drawer}
            tasks:
              copy: {name: Copy it, needs: [old]}
            orders:
              one: {for: [strip, box-1, box-2, link], placed: 2027-01-01}
              two: {for: []}
            """);

    @Test
    void aWholeProjectIsLeftAlone() {
        assertThat(CompleteRules.all().stream()
                        .map(Rule::card)
                        .map(Rule.Card::id)
                        .flatMap(id -> WHOLE.lines(id).stream()))
                .isEmpty();
    }

    private record Broken(String rule, String passage, String other, String line) {
        @Override
        public String toString() {
            return rule;
        }
    }

    static List<Broken> broken() {
        return List.of(
                new Broken(
                        "type-missing",
                        "loop: {model: loop, at: stage}",
                        "loop: {at: stage}",
                        "fix [equipment loop] loop has no type"),
                new Broken(
                        "place-missing",
                        "pc: {model: pc, at: rack,",
                        "pc: {model: pc,",
                        "fix [equipment pc] pc has no place"),
                new Broken("power-missing", "powered-by: strip.out-1, ", "", "fix [equipment box-1] box 1 takes mains"),
                new Broken(
                        "power-missing",
                        "  pc: {model: pc, at: rack, circuit: c1",
                        "  eye: {model: eye, at: rack}\n  pc: {model: pc, at: rack, circuit: c1",
                        "fix [equipment eye] eye takes mains"),
                new Broken(
                        "price-missing",
                        "price: 100",
                        "weight: 1 kg",
                        "note [equipment box-1, equipment box-2] box has no price: 2 new things are"),
                new Broken(
                        "bought-not-connected",
                        "  mic: {model: mic}",
                        "  mic-2: {model: mic, life: new}\n  mic: {model: mic}",
                        "fix [equipment mic-2] mic 2 is to be bought"),
                new Broken(
                        "struck-still-needed",
                        "strip: {model: strip, at: rack, life: new",
                        "strip: {model: strip, at: rack, life: strike",
                        "fix [equipment strip] strip is to be struck, and box 1 has its supply from it."),
                new Broken(
                        "struck-still-needed",
                        "pc: {model: pc, at: rack,",
                        "pc: {model: pc, at: rack, life: strike,",
                        "fix [equipment pc] pc is to be struck, and song runs on it."),
                new Broken(
                        "in-no-order",
                        "for: [strip, box-1, box-2, link]",
                        "for: [strip, box-1, link]",
                        "fix [equipment box-2] box 2 is new and in no order."),
                new Broken("in-no-order", "box-2, link]", "box-2]", ""),
                new Broken(
                        "computer-not-copied",
                        "needs: [old]",
                        "needs: []",
                        "fix [equipment old] old goes, and no task says"),
                new Broken(
                        "computer-not-copied",
                        "name: Copy it",
                        "name: Take it to the tip",
                        "fix [equipment old] old goes, and no task says"),
                new Broken(
                        "password-not-noted",
                        ", handover: {password: in the safe}",
                        "",
                        "note [equipment pc] Nobody has noted who keeps the password of pc."),
                new Broken("licence-not-noted", ", handover: {licence: to the hall}", "", "note [equipment song] "),
                new Broken(
                        "firmware-not-noted",
                        "circuit: c1, handover: {firmware: \"1.2\"}",
                        "circuit: c1",
                        "note [equipment box-2] "),
                new Broken(
                        "feed-not-testable",
                        ", test: with the receiver in the drawer",
                        "",
                        "note [feed voice] voice ends where nobody"));
    }

    @ParameterizedTest
    @MethodSource("broken")
    void isFoundAndItsChangeClearsIt(Broken broken) {
        Small small = WHOLE.but(broken.passage(), broken.other());
        List<String> lines = small.lines(broken.rule());
        if (broken.line().isEmpty()) {
            assertThat(lines).as("cable is not listed in any order").isEmpty();
            return;
        }
        assertThat(lines).singleElement().asString().startsWith(broken.line());
        Finding found = small.findings(broken.rule()).getFirst();
        List<Change> changes =
                found.fixes().isEmpty() ? List.of() : found.fixes().getFirst().changes();
        if (!changes.isEmpty()) {
            Study study = small.study();
            assertThat(study.with(Change.apply(study.project(), changes))
                            .findings()
                            .due())
                    .noneMatch(each -> each.rule().equals(broken.rule()));
        }
    }

    @Test
    void whatIsSpareNeedsNoCable() {
        assertThat(WHOLE.but(
                                "  mic: {model: mic}",
                                "  mic-2: {model: mic, life: new, note: A spare.}\n  mic: {model: mic}")
                        .lines("bought-not-connected"))
                .isEmpty();
    }

    @Test
    void withoutPlacesCircuitsOrOrdersNobodyAsksForThem() {
        Small bare = WHOLE.but("powered-by: strip.out-1, ", "")
                .but("  circuits: {c1: {rating: 16 A, voltage: 230 V, places: [rack, stage]}}\n", "")
                .but(
                        "strip: {model: strip, at: rack, life: new, circuit: c1}",
                        "strip: {model: strip, at: rack, life: new}")
                .but("life: new, circuit: c1, handover", "life: new, handover")
                .but("pc: {model: pc, at: rack, circuit: c1,", "pc: {model: pc, at: rack,");
        assertThat(bare.lines("power-missing")).isEmpty();
        assertThat(WHOLE.but("  one: {for: [strip, box-1, box-2, link], placed: 2027-01-01}\n", "")
                        .but("  two: {for: []}\n", "")
                        .but("orders:\n", "")
                        .lines("in-no-order"))
                .isEmpty();
    }

    @Test
    void whatComesAfterTheDayThatCannotMoveComesTooLate() {
        String event = "events: {opening: {from: 2027-02-01 10:00, to: 2027-02-01 12:00, deadline: yes}}\n";
        String one = "one: {for: [strip, box-1, box-2, link], placed: 2027-01-01";
        Small dated = new Small(WHOLE.text() + event);
        assertThat(dated.findings("comes-too-late")).isEmpty();
        assertThat(dated.but(one, one + ", lead: 30 d").findings("comes-too-late"))
                .isEmpty();
        assertThat(dated.but(one, one + ", lead: 31 d").lines("comes-too-late"))
                .containsExactly(
                        "fix [order one] The order one comes about 2027-02-01, and opening on 2027-02-01 cannot"
                                + " move: strip, box 1, box 2 and link are not there.");
        assertThat(dated.but(one, one + ", lead: 60 d, promised: 2027-01-31").findings("comes-too-late"))
                .isEmpty();
        assertThat(dated.but(one, one + ", promised: 2027-02-03").findings("comes-too-late"))
                .hasSize(1);
        assertThat(dated.but(one, one + ", promised: 2027-02-03, arrived: 2027-01-20")
                        .findings("comes-too-late"))
                .isEmpty();
        String hire = "hires: {lift: {kind: aerial-lift, offered: [2027-01-31, 2027-02-04], skill: lift}}\n";
        Small hired = new Small(dated.text() + hire);
        assertThat(hired.findings("comes-too-late")).isEmpty();
        assertThat(hired.but("offered: [2027-01-31", "offered: [2027-02-02").lines("comes-too-late"))
                .containsExactly(
                        "fix [hire lift] lift can be had from 2027-02-02 on, and opening on 2027-02-01 cannot move.");
    }
}
