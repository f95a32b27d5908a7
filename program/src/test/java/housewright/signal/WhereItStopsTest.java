package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Kind;
import housewright.model.LevelClass;
import housewright.model.Life;
import housewright.model.Signal;
import housewright.signal.Kit.Plug;
import org.junit.jupiter.api.Test;

/** A feed that does not arrive stops where a person would have to look. */
class WhereItStopsTest {
    private static Hall hall() {
        return new Hall()
                .type(new Kit("player")
                        .out("out-{1..2}", Signal.ANALOG_AUDIO)
                        .points("play-{1..2}")
                        .routes("play-{1..2} -> out-{1..2}"))
                .type(new Kit("amplifier", Kind.AMPLIFIER)
                        .in("in-{1..2}", Signal.ANALOG_AUDIO)
                        .out("through-{1..2}", Signal.ANALOG_AUDIO)
                        .out("out-{1..4}", Signal.SPEAKER)
                        .routes("in-{1..2} -> out-{1..2}", "in-{1..2} -> through-{1..2}"))
                .type(new Kit("speaker", Kind.LOUDSPEAKER)
                        .in("in", Signal.SPEAKER)
                        .out("link", Signal.SPEAKER)
                        .points("sound")
                        .routes("in -> sound", "in -> link"))
                .things("player", "player")
                .things("amplifier", "amp")
                .things("speaker", "left", "right")
                .cable("C1", "player.out-1", "amp.in-1")
                .cable("C2", "player.out-2", "amp.in-2")
                .feed("f", "player.play-1", "left.sound")
                .feed("g", "player.play-2", "right.sound");
    }

    private static Stop stop(Hall hall, String feed) {
        return stop(hall.target(), feed);
    }

    private static Stop stop(Signals signals, String feed) {
        Stop stop = signals.findProof(feed).orElseThrow().pairs().stream()
                .filter(pair -> !pair.proven())
                .findFirst()
                .orElseThrow()
                .stop();
        assertThat(stop).isNotNull();
        return stop;
    }

    // ---- what is not there ----

    @Test
    void itStopsBeforeAThingThatIsStruckAndSaysSo() {
        Hall hall = hall().thing("amp", "amplifier", Life.STRIKE)
                .cable("C3", "amp.out-1", "left.in")
                .cable("C4", "amp.out-2", "right.in");
        assertThat(stop(hall, "g").at()).hasToString("player.out-2");
        assertThat(stop(hall, "g").why()).contains("C2", "amp is not there in the target", "to be struck");
    }

    @Test
    void itStopsBeforeACableThatIsStruckOrNotYetThere() {
        Hall struck = hall().cable("C3", "amp.out-1", "left.in", Life.STRIKE);
        assertThat(stop(struck, "f").at()).hasToString("amp.out-1");
        assertThat(stop(struck, "f").why()).contains("C3", "to be struck");
        Signals today = hall().cable("C3", "amp.out-1", "left.in", Life.NEW).today();
        assertThat(stop(today, "f").at()).hasToString("amp.out-1");
        assertThat(stop(today, "f").why()).contains("C3", "not there today").doesNotContain("struck");
    }

    @Test
    void whatHasBeenReplacedIsNotMissed() {
        Hall hall = hall().thing("old", "amplifier", Life.STRIKE)
                .cable("O1", "player.out-1", "old.in-1", Life.STRIKE)
                .cable("O2", "old.out-1", "left.in", Life.STRIKE)
                .things("amplifier", "new")
                .cable("C3", "new.out-1", "left.in");
        assertThat(stop(hall, "f").why()).doesNotContain("old");
    }

    @Test
    void aThingOfUnknownInsideOnTheWayIsNamed() {
        Hall hall = hall().type(new Kit("sketch").sketch())
                .things("sketch", "box")
                .cable("C3", "amp.out-1", "box.a")
                .cable("C4", "box.b", "left.in");
        assertThat(stop(hall, "f").at()).hasToString("amp.out-1");
        assertThat(stop(hall, "f").why()).contains("box", "not known");
    }

    // ---- ports ----

    @Test
    void anOutputThatServesNothingIsLookedAtBeforeThePortThatAChainEndsWith() {
        Stop stop = stop(hall().cable("C3", "amp.out-1", "left.in").feed("both", "player.play-2", "right.sound"), "g");
        assertThat(stop.at()).hasToString("amp.out-2");
        assertThat(stop.why()).contains("nothing is plugged into amp, out 2", "right, in waits for it");
    }

    @Test
    void whereTheAmplifierHasNothingLeftTheChainIsLookedAt() {
        Stop stop = stop(
                hall().cable("C3", "amp.out-1", "left.in").feed("f", "player.play-1", "left.sound, right.sound"), "f");
        assertThat(stop.at()).hasToString("left.link");
    }

    @Test
    void aCableThatJoinsNothingIsLookedAtBeforeASocketThatNobodyMeantToUse() {
        Stop stop = stop(hall().cable("C3", "amp.out-1", "left.link"), "f");
        assertThat(stop.at()).hasToString("amp.out-1");
        assertThat(stop.why()).contains("cable C3 does not join");
    }

    @Test
    void aSocketThatCouldNotServeIsNotTheOneThatIsOpen() {
        Hall hall = hall().type(new Kit("recorder", Kind.RECORDER)
                        .in("in", Signal.ANALOG_AUDIO)
                        .points("record")
                        .routes("in -> record"))
                .things("recorder", "recorder")
                .cable("C3", "amp.out-1", "left.in")
                .cable("C4", "amp.out-2", "right.in")
                .cable("C5", "amp.through-2", "recorder.in")
                .feed("h", "player.play-1", "recorder.record");
        assertThat(stop(hall, "h").at()).as("not the link of the loudspeaker").hasToString("amp.through-1");
    }

    @Test
    void aCableWhoseEndNobodyKnowsIsLookedAtBeforeThePortThatAChainEndsWith() {
        Stop stop = stop(
                hall().cable("C3", "amp.out-1", "left.in")
                        .cable("C4", "amp.out-2", "unknown")
                        .cable("C5", "player.out-2", "left.in"),
                "g");
        assertThat(stop.at()).hasToString("amp.out-2");
        assertThat(stop.why()).contains("C4", "not known");
    }

    @Test
    void whereSeveralPortsWouldDoNoneIsClaimedToWait() {
        Hall hall = new Hall()
                .type(new Kit("mic")
                        .out("out", Signal.ANALOG_AUDIO)
                        .points("pickup")
                        .routes("pickup -> out"))
                .type(new Kit("box")
                        .in("in-{1..3}", Signal.ANALOG_AUDIO)
                        .points("sum")
                        .routes("in-{1..3} -> sum"))
                .things("mic", "mic")
                .things("box", "box")
                .feed("f", "mic.pickup", "box.sum");
        assertThat(stop(hall, "f").why()).contains("one of 3").doesNotContain("waits");
    }

    private static Hall screens() {
        return new Hall()
                .type(new Kit("camera")
                        .out("sdi", Signal.SDI)
                        .out("hdmi", Signal.HDMI)
                        .points("lens")
                        .routes("lens -> sdi:v", "lens -> hdmi:v"))
                .type(new Kit("splitter", Kind.SPLITTER)
                        .in("in", Signal.SDI)
                        .out("out-{1..4}", Signal.SDI)
                        .routes("in -> out-{1..4}"))
                .type(new Kit("converter", Kind.CONVERTER)
                        .in("in", Signal.SDI)
                        .out("through", Signal.SDI)
                        .out("out", Signal.HDMI)
                        .routes("in:v -> out:v", "in -> through"))
                .type(new Kit("screen", Kind.DISPLAY)
                        .in("hdmi", Signal.HDMI)
                        .points("picture")
                        .routes("hdmi:v -> picture"))
                .things("camera", "camera")
                .things("splitter", "split")
                .things("converter", "to-one", "to-two", "to-three")
                .things("screen", "one", "two", "three")
                .cable("C1", "camera.sdi", "split.in")
                .cable("C2", "split.out-1", "to-one.in")
                .cable("C3", "split.out-2", "to-two.in")
                .cable("C4", "to-one.out", "one.hdmi")
                .cable("C5", "to-two.out", "two.hdmi");
    }

    @Test
    void itStopsWhereTheOtherDestinationsAreLedOn() {
        Stop stop = stop(screens().feed("f", "camera.lens", "one.picture, two.picture, three.picture"), "f");
        assertThat(stop.at()).hasToString("split.out-3:v");
        assertThat(stop.why()).contains("plugged", "the feed's other destinations");
    }

    @Test
    void butAtTheConverterThatIsThereWhereOnlyItsLeadIsPulled() {
        Stop stop = stop(
                screens()
                        .cable("C6", "split.out-3", "to-three.in")
                        .feed("f", "camera.lens", "one.picture, two.picture, three.picture"),
                "f");
        assertThat(stop.at()).hasToString("to-three.out:v");
        assertThat(stop.why()).contains("three, hdmi waits for it");
    }

    @Test
    void aSplitterIsLookedAtBeforeTheThroughPortOfAnother() {
        Stop stop = stop(
                screens()
                        .cable("C7", "to-three.out", "three.hdmi")
                        .feed("f", "camera.lens", "three.picture")
                        .feed("g", "camera.lens", "one.picture"),
                "f");
        assertThat(stop.at()).hasToString("split.out-3:v");
    }

    private static Hall lamps() {
        return new Hall()
                .type(new Kit("node").out("dmx-{1..2}", Signal.DMX).points("u").routes("u -> dmx-{1..2}"))
                .type(new Kit("lamp", Kind.FIXTURE)
                        .in("dmx-in", Signal.DMX)
                        .out("dmx-out", Signal.DMX)
                        .points("lamp")
                        .routes("dmx-in -> lamp", "dmx-in -> dmx-out"))
                .things("node", "node")
                .things("lamp", "a", "b", "c", "x")
                .cable("C1", "node.dmx-1", "a.dmx-in")
                .cable("C2", "a.dmx-out", "b.dmx-in")
                .cable("C4", "node.dmx-2", "x.dmx-in")
                .feed("f", "node.u", "c.lamp")
                .feed("g", "node.u", "b.lamp, x.lamp");
    }

    @Test
    void aLineOfLampsIsOpenWhereItHasNoTerminator() {
        assertThat(stop(lamps().terminated("x"), "f").at()).hasToString("b.dmx-out");
        assertThat(stop(lamps().terminated("b"), "f").at()).hasToString("x.dmx-out");
    }

    @Test
    void byRadioTheSenderThatItsLikeListensToIsNamed() {
        Hall hall = new Hall()
                .type(new Kit("sender")
                        .port("radio", Plug.out(Signal.RADIO).protocol("infra-red"))
                        .points("in")
                        .routes("in -> radio"))
                .type(new Kit("receiver")
                        .port("radio", Plug.in(Signal.RADIO).protocol("infra-red"))
                        .points("sound")
                        .routes("radio -> sound"))
                .things("sender", "sender")
                .things("receiver", "one", "two")
                .radio("r1", "sender.radio", "one.radio")
                .feed("f", "sender.in", "one.sound, two.sound");
        assertThat(stop(hall, "f").at()).hasToString("sender.radio");
        assertThat(stop(hall, "f").why()).contains("radio link", "two, radio has no link");
        assertThat(hall.radio("r2", "sender.radio", "two.radio").proof("f").proven())
                .isTrue();
    }

    @Test
    void whatGoesOutAndComesBackByOnePortStopsThere() {
        Hall hall = new Hall()
                .type(new Kit("box")
                        .port("link", Plug.both(Signal.STAGE_LINK).channels(8, 8))
                        .points("in", "out")
                        .in("aux", Signal.ANALOG_AUDIO)
                        .routes("in -> link:1", "link:2 -> out"))
                .type(new Kit("di").out("out", Signal.ANALOG_AUDIO).out("through", Signal.ANALOG_AUDIO))
                .things("box", "box")
                .things("di", "di")
                .feed("f", "box.in", "box.out");
        assertThat(stop(hall, "f").at()).hasToString("box.link:1");
        assertThat(stop(hall, "f").why()).contains("nothing is plugged into box, link", "comes back by it");
    }

    @Test
    void headphonesGoWithTheirOwnOutputAndALoudspeakerWithTheOther() {
        Hall hall = new Hall()
                .type(new Kit("mixer")
                        .port("phones", Plug.out(Signal.ANALOG_AUDIO).level(LevelClass.PHONES))
                        .out("line", Signal.ANALOG_AUDIO)
                        .points("mix")
                        .routes("mix -> phones", "mix -> line"))
                .type(new Kit("headphones", Kind.HEADPHONES).in("in", Signal.ANALOG_AUDIO))
                .type(new Kit("speaker", Kind.LOUDSPEAKER).in("in", Signal.ANALOG_AUDIO))
                .things("mixer", "mixer")
                .things("headphones", "ears")
                .things("speaker", "speaker")
                .feed("f", "mixer.mix", "ears.in")
                .feed("g", "mixer.mix", "speaker.in");
        assertThat(stop(hall, "f").at()).hasToString("mixer.phones");
        assertThat(stop(hall, "g").at()).hasToString("mixer.line");
    }

    @Test
    void twoJoinsInARowThatDoNotHoldStopAtTheFirst() {
        Hall hall = new Hall()
                .type(new Kit("device")
                        .both("net", Signal.ETHERNET)
                        .points("a", "b")
                        .patchFree())
                .things("device", "panel", "control", "node")
                .patch("panel", "a -> net:x")
                .patch("control", "net:x -> a", "a -> net:y")
                .patch("node", "net:y -> b")
                .send("s1", "panel.net:x", "control.net:x")
                .send("s2", "control.net:y", "node.net:y")
                .feed("f", "panel.a", "node.b");
        assertThat(stop(hall, "f").at()).hasToString("panel.net:x");
        assertThat(stop(hall, "f").why()).contains("s1 does not join", "not on one network");
    }

    // ---- patch ----

    private static Hall desk(String... patch) {
        return new Hall()
                .type(new Kit("desk", Kind.MIXER)
                        .in("in-{1..4}", Signal.ANALOG_AUDIO)
                        .out("out-{1..4}", Signal.ANALOG_AUDIO)
                        .out("phones", Signal.ANALOG_AUDIO)
                        .points("ch-{1..4}", "mix-{1..2}", "matrix-{1..2}", "listen", "stick")
                        .routes("listen -> phones")
                        .patchFree())
                .type(new Kit("mic").out("out", Signal.ANALOG_AUDIO))
                .type(new Kit("speaker").in("in", Signal.ANALOG_AUDIO))
                .things("desk", "desk")
                .things("mic", "mic-1", "mic-2")
                .things("speaker", "s-1", "s-2")
                .cable("M1", "mic-1.out", "desk.in-1")
                .cable("M2", "mic-2.out", "desk.in-2")
                .cable("S1", "desk.out-1", "s-1.in")
                .cable("S2", "desk.out-2", "s-2.in")
                .patch("desk", patch);
    }

    @Test
    void aPointThatLeadsNowhereIsMissingItsPatch() {
        Hall hall = desk(
                        "in-{1..2} -> ch-{1..2}",
                        "ch-1 -> mix-1, mix-2",
                        "mix-{1..2} -> matrix-{1..2}",
                        "ch-1 -> listen")
                .patch("desk", "matrix-2 -> out-2", "ch-1 -> stick")
                .feed("f", "mic-1.out", "s-1.in")
                .feed("g", "mic-1.out", "s-2.in")
                .feed("h", "mic-1.out", "desk.stick");
        assertThat(stop(hall, "f").at()).hasToString("desk.matrix-1");
        assertThat(stop(hall, "f").why()).contains("patched from matrix-1 to out-1");
        assertThat(hall.proof("g").proven()).isTrue();
    }

    @Test
    void whereAllOfAKindEndTheyAreMeantToEnd() {
        Hall hall = new Hall()
                .type(new Kit("computer")
                        .in("in-{1..2}", Signal.ANALOG_AUDIO)
                        .out("out-{1..2}", Signal.ANALOG_AUDIO)
                        .points("track-{1..2}", "stream-{1..2}")
                        .patchFree())
                .type(new Kit("mic").out("out", Signal.ANALOG_AUDIO))
                .things("computer", "pc")
                .things("mic", "mic-1", "mic-2")
                .cable("C1", "mic-1.out", "pc.in-1")
                .cable("C2", "mic-2.out", "pc.in-2")
                .patch("pc", "in-{1..2} -> track-{1..2}", "in-2 -> stream-2", "stream-{1..2} -> out-{1..2}")
                .feed("f", "mic-1.out", "pc.stream-1");
        assertThat(stop(hall, "f").at()).hasToString("pc.in-1");
        assertThat(stop(hall, "f").why()).contains("in-1 to stream-1");
    }

    @Test
    void aPortThatWouldLeadBackIsNotLookedAt() {
        Hall hall = desk("in-1 -> ch-1", "ch-1 -> mix-1", "mix-1 -> out-1", "in-3 -> mix-2", "mix-2 -> out-2")
                .type(new Kit("powered")
                        .in("in", Signal.ANALOG_AUDIO)
                        .out("through", Signal.ANALOG_AUDIO)
                        .points("sound")
                        .routes("in -> sound", "in -> through"))
                .things("powered", "s-1")
                .feed("f", "mic-1.out", "s-2.in")
                .feed("g", "mic-1.out", "s-1.sound");
        assertThat(stop(hall, "f").at().thing()).isEqualTo("desk");
        assertThat(stop(hall, "f").why()).contains("patched");
    }

    @Test
    void aFeedStopsWhereItLeavesTheWayThroughThePlaceThatItShouldPass() {
        Hall hall = desk("in-2 -> ch-2", "in-1 -> mix-1", "ch-2 -> mix-1", "ch-1 -> mix-1", "mix-1 -> out-1")
                .patch("desk", "mix-1 -> stick", "mix-1 -> listen")
                .feed("f", "mic-1.out", "s-1.in", null, "desk.ch-1")
                .feed("h", "mic-2.out", "desk.stick");
        assertThat(stop(hall, "f").at()).hasToString("desk.in-1");
        assertThat(stop(hall, "f").why()).contains("patched from in-1 to ch-1");
    }

    // ---- crossed ----

    private static Hall stereo(String left, String right) {
        return hall().cable("C3", "amp.out-1", left + ".in")
                .cable("C4", "amp.out-2", right + ".in")
                .feed("s", "player.play-{1..2}", "left.sound, right.sound");
    }

    @Test
    void twoLoudspeakersChangeOverAtTheAmplifier() {
        assertThat(stereo("left", "right").proof("s").proven()).isTrue();
        assertThat(stop(stereo("right", "left"), "s").at()).hasToString("amp.out-1");
        assertThat(stop(stereo("right", "left"), "s").why()).contains("crosses over here: cable C3");
    }

    @Test
    void theyChangeOverWhereOneIsPluggedInTheOthersPlace() {
        Hall hall =
                stereo("left", "right").cable("C1", "player.out-1", "amp.in-2").cable("C2", "player.out-2", "amp.in-1");
        assertThat(stop(hall, "s").at()).hasToString("player.out-1");
        assertThat(stop(hall, "s").why()).contains("crosses over here: cable C1");
    }

    @Test
    void whereTheyMeetRatherThanChangeOverNoCrossingIsClaimed() {
        Hall hall = new Hall()
                .type(new Kit("box").points("a", "b", "c", "d").patchFree())
                .things("box", "box")
                .patch("box", "a -> d", "b -> d")
                .feed("s", "box.a, box.b", "box.c, box.d");
        assertThat(stop(hall, "s").at()).hasToString("box.d");
        assertThat(stop(hall, "s").why())
                .contains("where another source of the feed belongs")
                .doesNotContain("crosses");
    }
}
