package housewright.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.app.table.Ports.PortRow;
import housewright.check.joining.JoiningRules;
import housewright.finding.Finding;
import housewright.finding.Severity;
import housewright.model.Project;
import housewright.model.Ref.Address;
import housewright.signal.JoinOffer;
import housewright.signal.JoinOffers;
import housewright.signal.PatchOffer;
import housewright.study.Study;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PortsTest {
    private static final Project DEMO = Halls.demo();

    private static final Project HALL = Halls.of("""
            venue:
              rooms: {hall: {}}
              places:
                here:  {room: hall, at: [0 m, 0 m, 0 m]}
                near:  {room: hall, at: [0 m, 8 m, 0 m]}
                far:   {room: hall, at: [0 m, 30 m, 0 m]}
              pathways:
                p1: {from: here, to: near, length: 9 m}
                p2: {from: near, to: far, length: 25 m}
            models:
              source: {kind: other, ports: {"out-{1..2}": {out: analog-audio, connector: XLR-3M}, odd: {out: speaker}}}
              box: {kind: stage-box, ports: {"in-{1..2}": {in: analog-audio, connector: XLR-3F}, "out-{1..2}": {out: analog-audio, connector: XLR-3M}}}
              amp: {kind: amplifier, ports: {out-1: {out: speaker, connector: speaker-4, min-load: 4 ohm}, out-2: {out: speaker, connector: speaker-4}}}
              horn: {kind: loudspeaker, ports: {in: {in: speaker, connector: speaker-4, impedance: 8 ohm}}, points: [sound]}
              weak: {kind: loudspeaker, ports: {in: {in: speaker, connector: speaker-4, impedance: 2 ohm}}, points: [sound]}
            equipment:
              a: {model: source, at: here}
              far-box: {model: box, at: far}
              near-box: {model: box, at: near}
              amp: {model: amp, at: here}
              amp-2: {model: amp, at: here}
              horn: {model: horn, at: near}
              weak: {model: weak, at: near}
              unsaid: {at: near}
            cables:
              C017: {type: mic-cable, from: a.out-2, to: near-box.in-2}
            """);

    private static List<String> far(JoinOffers offers) {
        return offers.offers().stream().map(offer -> offer.far().toString()).toList();
    }

    @Test
    void aFreeOutputIsOfferedFreeInputsTheNearestByPathwayFirst() {
        JoinOffers offers = Ports.of(Halls.study(HALL)).offers("a", "out-1");
        assertThat(far(offers)).containsExactly("near-box.in-1", "far-box.in-1", "far-box.in-2");
        JoinOffer first = offers.offers().getFirst();
        assertThat(first.type().id()).startsWith("mic-cable");
        assertThat(first.via()).containsExactly("p1");
        // the way, and 2 m of slack and service loop at each end: common practice
        assertThat(first.length().metres()).isEqualTo(13);
        assertThat(offers.offers().get(1).length().metres()).isEqualTo(9 + 25 + 4);
    }

    /** The demo's floor box has microphone lines, and mains terminals behind its outlets that say nothing of themselves. */
    @Test
    void mainsInAPanelIsOfferedToNothingAndNothingToIt() {
        Ports ports = Ports.of(Halls.study(DEMO));
        assertThat(far(ports.offers("floor-right", "front-10")))
                .isNotEmpty()
                .noneMatch(port -> port.equals("floor-left.mains") || port.startsWith("floor-left.outlet-"));
        JoinOffers mains = ports.offers("floor-left", "mains");
        assertThat(mains.offers()).isEmpty();
        assertThat(mains.missing())
                .containsExactly("floor left, mains is mains in a panel, wired by a licensed electrician: nothing is"
                        + " offered for it.");
    }

    @Test
    void pickingOneMakesTheCableNumberedOn() {
        Ports ports = Ports.of(Halls.study(HALL));
        Edit.Made made = ports.join(ports.offers("near-box", "in-1").offers().getFirst());
        Project after = Halls.made(HALL, made);
        assertThat(made.rows()).containsExactly("C018");
        assertThat(after.cables().get("C018").from().text()).isEqualTo("a.out-1");
        assertThat(after.cables().get("C018").to().text()).isEqualTo("near-box.in-1");
        assertThat(after.cables().get("C018").via()).containsExactly("p1");
    }

    @Test
    void aTakenPortSaysByWhat() {
        Ports ports = Ports.of(Halls.study(HALL));
        assertThat(ports.offers("a", "out-2").cables()).containsExactly("C017");
        assertThat(ports.offers("a", "out-2").offers()).isEmpty();
        PortRow row = ports.list("a").get(1);
        assertThat(row.free()).isFalse();
        assertThat(row.far()).containsExactly("near-box.in-2");
    }

    @Test
    void loudspeakerLinesAreOfferedOnlyWhereTheLoadIsSurelyRight() {
        Ports ports = Ports.of(Halls.study(HALL));
        assertThat(far(ports.offers("amp", "out-1"))).containsExactly("horn.in");
        JoinOffers unknown = ports.offers("amp", "out-2");
        assertThat(unknown.offers()).isEmpty();
        assertThat(unknown.missing()).anyMatch(text -> text.contains("least load"));
        JoinOffers noConnector = ports.offers("a", "odd");
        assertThat(noConnector.offers()).isEmpty();
        assertThat(noConnector.missing()).anyMatch(text -> text.contains("connector"));
        assertThat(far(ports.offers("horn", "in"))).containsExactly("amp.out-1", "amp-2.out-1");
    }

    @Test
    void whatIsNotKnownIsSaid() {
        assertThat(Ports.of(Halls.study(HALL)).offers("unsaid", "in-1").missing())
                .singleElement()
                .asString()
                .contains("model");
    }

    /** Of each thing of the demo one free port of each sort, and the first offers of each. */
    @Test
    void everyJoinOfferedInTheDemoReadsAndStopsNothing() {
        Study study = Halls.study(DEMO);
        Set<Finding> before = stops(study);
        Ports ports = Ports.of(study);
        int offered = 0;
        for (String thing : DEMO.equipment().keySet()) {
            Set<String> sorts = new HashSet<>();
            for (PortRow port : ports.list(thing)) {
                if (!port.free() || !sorts.add(port.signal() + port.way() + port.connector())) {
                    continue;
                }
                Set<String> far = new HashSet<>();
                for (JoinOffer offer : ports.offers(thing, port.name()).offers()) {
                    if (far.size() < 3 && far.add(offer.far().thing())) {
                        Project after = Halls.made(DEMO, ports.join(offer));
                        Set<Finding> stops = stops(study.with(after));
                        stops.removeAll(before);
                        assertThat(stops).as(offer.from() + " to " + offer.to()).isEmpty();
                        offered++;
                    }
                }
            }
        }
        assertThat(offered).isGreaterThan(100);
    }

    private static Set<Finding> stops(Study study) {
        Set<Finding> stops = new HashSet<>();
        JoiningRules.all()
                .forEach(rule -> rule.check(study)
                        .filter(finding -> finding.severity() == Severity.STOP)
                        .forEach(stops::add));
        return stops;
    }

    @Test
    void everyPatchOfferedToADeskInputReads() {
        Ports ports = Ports.of(Halls.study(DEMO));
        List<PatchOffer> offers = ports.patches("desk", "mic-5", true);
        assertThat(offers).isNotEmpty();
        for (PatchOffer offer : offers) {
            Halls.made(DEMO, ports.patch("desk", offer));
        }
        assertThat(ports.patches("desk", "out-1", false)).isNotEmpty();
        assertThat(ports.patches("lectern-mic", "out", false)).isEmpty();
    }

    @Test
    void aDisplayHasNoMatchForALineOutput() {
        assertThat(Ports.of(Halls.study(DEMO)).offers("desk", "out-9").offers())
                .extracting(JoinOffer::far)
                .extracting(Address::thing)
                .doesNotContain("vision");
    }
}
