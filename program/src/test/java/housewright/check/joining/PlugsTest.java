package housewright.check.joining;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Connector;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plugs, adapters, cable types and runs through panels. What goes into what is common practice. */
class PlugsTest {
    private static final String FITS = "plug-does-not-fit";

    private static final Joined MIC = Joined.of("""
            equipment:
              mic:  {model: mic-dynamic-vocal}
              desk: {model: desk-digital-16-stage-a}
            cables:
              C1: {type: mic-cable, from: mic.out, to: desk.mic-1, length: 5 m, life: new}
            """);

    @Test
    void pinsGoIntoSocketsAndLikeIntoLike() {
        assertThat(Mating.goes(Connector.XLR_3F, Connector.XLR_3M)).isTrue();
        assertThat(Mating.goes(Connector.XLR_3M, Connector.XLR_3M)).isFalse();
        assertThat(Mating.goes(Connector.C13, Connector.C14)).isTrue();
        assertThat(Mating.goes(Connector.C14, Connector.C14)).isFalse();
        assertThat(Mating.goes(Connector.BNC, Connector.BNC)).isTrue();
        assertThat(Mating.goes(Connector.TS, Connector.TRS)).isTrue();
        assertThat(Mating.goes(Connector.SPEAKER_2, Connector.SPEAKER_4)).isTrue();
        assertThat(Mating.goes(Connector.SPEAKER_4, Connector.SPEAKER_2)).isFalse();
        assertThat(Mating.goes(null, Connector.BNC)).isTrue();
    }

    @Test
    void aPlugThatFitsIsLeftAloneAndOneThatDoesNotIsToldWithTheCableThatWould() {
        assertThat(MIC.lines(FITS)).isEmpty();
        Joined jack = MIC.but("to: desk.mic-1", "to: desk.line-1");
        assertThat(jack.lines(FITS))
                .containsExactly("fix: C1 does not go into desk, line 1: its XLR-3M end meets a socket for TRS.");
        assertThat(jack.findings(FITS).getFirst().fixes().getFirst().words())
                .startsWith("Take ")
                .contains("XLR-3F and TRS");
        assertThat(jack.afterFix(FITS)).isEmpty();
    }

    @Test
    void whatIsThereAlreadyGetsAnAdapter() {
        Joined kept = MIC.but("to: desk.mic-1", "to: desk.line-1").but(", life: new", "");
        assertThat(kept.findings(FITS).getFirst().fixes().getFirst().words()).isEqualTo("Put xlr-3f-to-trs between.");
        assertThat(kept.afterFix(FITS)).isEmpty();
        assertThat(kept.but("length: 5 m", "length: 5 m, adapters: [xlr-3f-to-trs]")
                        .lines(FITS))
                .isEmpty();
    }

    @Test
    void whatIsMadeUpOnSiteIsMadeUpToFit() {
        Joined site = MIC.but("to: desk.mic-1", "to: desk.line-1").but("life: new", "life: new, terminated: site");
        assertThat(site.findings(FITS).getFirst().fixes().getFirst().words())
                .isEqualTo("Make it up with XLR-3F and TRS.");
        assertThat(site.afterFix(FITS)).isEmpty();
    }

    @Test
    void aLeadDrawnTheOtherWayIsTurnedRoundByWhoeverPlugsIt() {
        assertThat(MIC.but("from: mic.out, to: desk.mic-1", "from: desk.mic-1, to: mic.out")
                        .lines(FITS))
                .isEmpty();
    }

    @Test
    void endsOfACableCountBeforeThoseOfItsType() {
        Joined ends = MIC.but("length: 5 m", "length: 5 m, ends: [XLR-3F, XLR-3F]");
        assertThat(ends.lines(FITS))
                .containsExactly("fix: C1 does not go into desk, mic 1: its XLR-3F end meets a socket for XLR-3M.");
    }

    @Test
    void aThingsOwnLeadHasTheThingsOwnPlug() {
        Joined phones = Joined.of("""
                equipment:
                  mixer: {model: personal-mixer-16}
                  ears:  {model: headphones-closed}
                cables:
                  C1: {type: own-lead, from: mixer.phones, to: ears.in, length: 3 m}
                """);
        assertThat(phones.lines(FITS))
                .containsExactly("fix: C1 does not go into mixer, phones: a TRS-3.5 plug meets a socket for TRS.");
        assertThat(phones.afterFix(FITS)).isEmpty();
    }

    @Test
    void anAdapterWithNothingToDoIsANoteAndOneForAnotherSignalIsToBeFixed() {
        assertThat(MIC.but("length: 5 m", "length: 5 m, adapters: [xlr-3f-to-trs]")
                        .lines("adapter-of-no-use"))
                .containsExactly("note: C1 names the adapter xlr-3f-to-trs, and both its ends go in without: it would"
                        + " be bought for nothing.");
        assertThat(MIC.but("to: desk.mic-1, length: 5 m", "to: desk.line-1, length: 5 m, adapters: [xlr-3f-to-trs]")
                        .lines("adapter-of-no-use"))
                .isEmpty();
        assertThat(MIC.but("length: 5 m", "length: 5 m, adapters: [xlr-3f-to-xlr-5m]")
                        .lines("adapter-of-no-use"))
                .containsExactly(
                        "fix: C1 carries analog-audio, and its adapter xlr-3f-to-xlr-5m is not made for that.");
    }

    /** Whether its supply is a plug-top, the type does not say: an adapter before it may be just what it needs. */
    @Test
    void anAdapterBeforeASupplyOfItsOwnIsLeftAlone() {
        Joined supply = Joined.of("""
                equipment:
                  ups: {model: ups-rack-1500}
                  panel: {model: wall-panel-6-dmx}
                cables:
                  C1: {type: own-lead, from: ups.out-1, to: panel.mains, length: 2 m, adapters: [c14-to-mains-socket]}
                """);
        assertThat(supply.lines("adapter-of-no-use")).isEmpty();
    }

    @Test
    void aCableCarriesWhatItsTypeIsFor() {
        String rule = "cable-wrong-for-signal";
        Joined link = Joined.of("""
                equipment:
                  box:  {model: stagebox-8x4-stage-a}
                  desk: {model: desk-digital-16-stage-a}
                  amp:  {model: amplifier-2x300}
                  left: {model: loudspeaker-passive-12}
                cables:
                  C1: {type: cat6-screened, from: box.link, to: desk.link, length: 20 m}
                  C2: {type: speaker-2x2.5, from: amp.out-1, to: left.in, length: 5 m}
                """);
        assertThat(link.lines(rule)).isEmpty();
        Joined unscreened = link.but("cat6-screened", "cat6");
        assertThat(unscreened.lines(rule))
                .containsExactly("fix: C1 carries stage-link on cat6, which is made for ethernet, hdbaset.");
        assertThat(unscreened.afterFix(rule)).isEmpty();
        assertThat(link.but("speaker-2x2.5", "instrument-cable").lines(rule))
                .containsExactly("stop: C2 carries speaker on instrument-cable, which is made for analog-audio.");
    }

    @Test
    void bothEndsOfARunThroughPanelsGoTogether() {
        String rule = "run-joins-nothing";
        Joined panels = Joined.of("""
                equipment:
                  box:   {model: stagebox-8x4-stage-a}
                  desk:  {model: desk-digital-16-stage-a}
                  net:   {model: switch-8}
                  plate: {model: wall-plate-2-rj45}
                cables:
                  C1: {type: cat6-screened, from: desk.link, to: plate.rear-1, length: 20 m}
                  C2: {type: cat6-screened, from: plate.front-1, to: box.link, length: 2 m}
                """);
        assertThat(panels.lines(rule)).isEmpty();
        assertThat(panels.but("to: box.link", "to: net.port-1").lines(rule))
                .containsExactly("stop: C1, C2 lead from desk, link to net, port 1, which do not go together: one is"
                        + " stage-link, the other ethernet.");
        assertThat(panels.but("stagebox-8x4-stage-a", "stagebox-8x4-stage-b").lines(rule))
                .singleElement()
                .asString()
                .endsWith("one speaks stage-a, the other stage-b.");
    }

    @Test
    void twoOutputsMeetBehindAPlate() {
        Joined wedge = Joined.of("""
                equipment:
                  desk:  {model: desk-digital-16-stage-a}
                  wedge: {model: monitor-wedge-powered-12}
                  plate: {model: wall-plate-2-xlr-out}
                cables:
                  C1: {type: line-cable-xlr-f-terminals, from: desk.out-1, to: plate.rear-1, length: 20 m}
                  C2: {type: mic-cable, from: plate.front-1, to: wedge.in, length: 5 m}
                """);
        assertThat(wedge.lines("run-joins-nothing")).isEmpty();
        assertThat(wedge.but("to: wedge.in", "to: wedge.through").lines("run-joins-nothing"))
                .singleElement()
                .asString()
                .endsWith("both are outputs.");
    }

    @Test
    void usbJoinsAHostAndADevice() {
        String rule = "usb-two-of-a-sort";
        Joined usb = Joined.of("""
                equipment:
                  pc:    {model: computer-media}
                  other: {model: computer-stream}
                  desk:  {model: desk-digital-16-stage-a}
                  two:   {model: desk-digital-16-stage-a}
                  pad:   {model: button-pad-15-usb}
                cables:
                  C1: {type: usb-2, from: pc.usb-1, to: desk.usb, length: 3 m}
                  C2: {type: own-lead, from: pad.usb, to: pc.usb-3, length: 1 m}
                """);
        assertThat(usb.lines(rule)).isEmpty();
        assertThat(usb.but("to: desk.usb", "to: other.usb-1").lines(rule))
                .containsExactly(
                        "stop: C1 joins pc, usb 1 and other, usb 1, which are both USB hosts: nothing passes.");
        assertThat(usb.but("from: pc.usb-1, to: desk.usb", "from: two.usb, to: desk.usb")
                        .lines(rule))
                .containsExactly("stop: C1 joins two, usb and desk, usb, which are both USB devices: nothing passes.");
    }

    @Test
    void aMainsLeadHasPinsAtOneEndOnly() {
        String rule = "mains-pins-live";
        Joined mains = Joined.of("""
                equipment:
                  strip: {model: power-distributor-rack-12}
                  desk:  {model: desk-digital-16-stage-a}
                cables:
                  C1: {type: mains-3x1.5, ends: [C14, C13], from: strip.out-1, to: desk.mains, length: 2 m}
                """);
        assertThat(mains.lines(rule)).isEmpty();
        assertThat(mains.but("[C14, C13]", "[C14, mains-plug]").lines(rule))
                .containsExactly("stop: C1 has pins at both ends (C14 and mains-plug): plug one in, and the pins of"
                        + " the other are live.");
    }

    @Test
    void mainsOfAFloorBoxIsJoinedToNoMicrophoneSocket() {
        String rule = "mains-into-signal";
        Joined box = Joined.of("""
                equipment:
                  box:  {model: floor-box-6-mixed}
                  wall: {model: floor-box-12}
                cables:
                  C1: {type: mic-cable-install, from: box.rear-1, to: wall.front-1, length: 2 m}
                """);
        assertThat(box.lines(rule)).isEmpty();
        assertThat(box.but("box.rear-1", "box.mains").lines(rule))
                .containsExactly("stop: C1 leads from the mains of box, mains into wall, front 1, which is no mains"
                        + " socket: whoever touches what is plugged in there touches mains.");
        assertThat(box.but("from: box.rear-1, to: wall.front-1", "from: wall.front-1, to: box.outlet-2")
                        .lines(rule))
                .hasSize(1);
    }

    /** Where the far terminals lead is not known, so nothing is said; a distributor's lead is mains at both ends. */
    @Test
    void mainsMayLeadToMainsAndToWhatNobodyKnows() {
        assertThat(Joined.of("""
                        equipment:
                          box:   {model: floor-box-6-mixed}
                          wall:  {model: floor-box-12}
                          strip: {model: power-distributor-rack-12}
                        cables:
                          C1: {type: mains-3x1.5, from: strip.out-1, to: box.mains, length: 2 m}
                          C2: {type: mains-3x1.5, from: box.outlet-1, length: 2 m}
                        """).lines("mains-into-signal")).isEmpty();
    }

    /** ANSI E1.11 does not permit XLR-3 on new equipment: DMX-22 of the reference values, read on a maker's page. */
    @Test
    void dmxOnThreePinsIsOneNoteForAll() {
        String rule = "dmx-on-three-pins";
        Joined lamps = Joined.of("""
                equipment:
                  split: {model: dmx-splitter-1x4}
                  up-1:  {model: led-par-3pin}
                  up-2:  {model: led-par-3pin}
                  par-1: {model: led-par}
                cables:
                  C1: {type: dmx-cable, from: split.dmx-out-1, to: par-1.dmx-in, length: 3 m}
                  C2: {type: dmx-cable-3pin, from: split.dmx-out-2, to: up-1.dmx-in, length: 3 m, adapters: [xlr-5m-to-xlr-3f]}
                  C3: {type: dmx-cable-3pin, from: up-1.dmx-out, to: up-2.dmx-in, length: 3 m}
                """);
        assertThat(lamps.findings(rule)).singleElement().satisfies(note -> {
            assertThat(note.message()).startsWith("up 1 and 1 more have DMX on three pins");
            assertThat(note.subjects()).hasSize(4);
        });
        assertThat(List.copyOf(lamps.lines(FITS))).isEmpty();
    }
}
