package housewright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ProjectWriter;
import housewright.model.Equipment;
import housewright.model.Feed;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Project;
import housewright.model.Ref;
import housewright.model.Signal;
import housewright.model.Types;
import housewright.signal.FeedProof;
import housewright.signal.FeedState;
import housewright.signal.Moment;
import housewright.signal.PairProof;
import housewright.signal.Signals;
import housewright.signal.SoundToPicture;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The demo is as large as a real job, whole in the target, and wrong today. */
class DemoTest {
    private static final Project PROJECT = Demo.project();
    private static final Types TYPES = new Types(PROJECT, Demo.LIBRARY);
    private static final Signals TARGET = Signals.of(PROJECT, Demo.LIBRARY, Moment.target());
    private static final Signals TODAY = Signals.of(PROJECT, Demo.LIBRARY, Moment.today());

    /** ITU-R BT.1359-1, considering g): beyond these, viewers notice. */
    private static final double SOUND_EARLY_MS = 45;

    private static final double SOUND_LATE_MS = 125;

    @Test
    void itIsAsLargeAsARealJob() {
        assertThat(there().size()).isGreaterThanOrEqualTo(95);
        assertThat(PROJECT.cables().values().stream().filter(each -> each.life().target()))
                .hasSizeGreaterThanOrEqualTo(170);
        assertThat(PROJECT.feeds()).hasSizeGreaterThanOrEqualTo(28);
        assertThat(PROJECT.feeds().values().stream().filter(Feed::never)).hasSizeGreaterThanOrEqualTo(5);
        assertThat(ofKind(Kind.FIXTURE)).hasSizeGreaterThanOrEqualTo(32);
    }

    @Test
    void mostOfItsCablesCarrySignalAndNotMains() {
        assertThat(PROJECT.cables().values().stream()
                        .filter(each -> each.life().target())
                        .filter(each -> TYPES.findCableType(each.type()).orElseThrow().carries().stream()
                                .noneMatch(Signal.MAINS::equals)))
                .hasSizeGreaterThanOrEqualTo(160);
    }

    @Test
    void threeRoomsBesidesTheHallAreFedAndAStream() {
        Set<String> fed = PROJECT.feeds().values().stream()
                .filter(feed -> !feed.never())
                .flatMap(feed -> feed.to().stream())
                .flatMap(to -> to.addresses().stream())
                .map(Ref.Address::thing)
                .collect(Collectors.toSet());
        assertThat(fed).extracting(DemoTest::room).contains("hall", "foyer", "creche", "lounge");
        assertThat(fed).extracting(DemoTest::kind).contains(Kind.INTERNET_ROUTER);
    }

    @Test
    void itHasInEarMixesRadioMicrophonesAndPersonalMixers() {
        assertThat(radioFrom(Kind.RADIO_TRANSMITTER, Kind.RADIO_RECEIVER))
                .as("four microphones, three in-ear mixes")
                .hasSizeGreaterThanOrEqualTo(7);
        assertThat(ofKind(Kind.PERSONAL_MIXER)).hasSizeGreaterThanOrEqualTo(4);
        assertThat(ofKind(Kind.HEARING_LOOP)).isNotEmpty();
    }

    @Test
    void itHasEmbeddedPairsAndPictureOnANetwork() {
        assertThat(ofKind(Kind.EMBEDDER)).isNotEmpty();
        assertThat(ofKind(Kind.DE_EMBEDDER)).hasSizeGreaterThanOrEqualTo(2);
        assertThat(PROJECT.networkSends().values())
                .extracting(send -> String.valueOf(send.as()))
                .contains("ip-video", "lighting-data", "control");
        assertThat(PROJECT.networkSends().values())
                .extracting(send -> String.valueOf(send.vlan()))
                .contains("1", "20", "30");
    }

    @Test
    void inTheTargetEveryFeedIsProven() {
        assertThat(TARGET.proofs())
                .allSatisfy(proof -> assertThat(proof.state())
                        .as(proof.feed().id() + ": "
                                + proof.pairs().stream().map(PairProof::stop).toList())
                        .isEqualTo(FeedState.PROVEN));
    }

    @Test
    void noProofInTheTargetLacksAFigure() {
        assertThat(TARGET.proofs())
                .flatExtracting(FeedProof::pairs)
                .flatExtracting(PairProof::lacking)
                .isEmpty();
    }

    @Test
    void inTheTargetNothingGoesRoundAndNothingIsPatchedTwiceOrInVain() {
        assertThat(TARGET.loops()).isEmpty();
        assertThat(TARGET.contested()).isEmpty();
        assertThat(TARGET.unjoined()).isEmpty();
    }

    @Test
    void inTheTargetSoundAndPictureMeetInTime() {
        assertThat(TARGET.soundToPicture()).isNotEmpty();
        assertThat(TARGET.soundToPicture())
                .extracting(SoundToPicture::soundEarlyMs)
                .allSatisfy(early -> assertThat(early).isBetween(-SOUND_LATE_MS, SOUND_EARLY_MS));
    }

    @Test
    void todayTheHallHearsAndSeesAndLittleElseArrives() {
        List<String> proven = TODAY.proofs().stream()
                .filter(proof -> proof.proven() && !proof.feed().never())
                .map(proof -> proof.feed().id())
                .toList();
        assertThat(proven).contains("lectern-to-hall", "piano-to-hall", "words-to-screen");
        assertThat(TODAY.proofs().stream().filter(proof -> !proof.proven())).hasSizeGreaterThanOrEqualTo(20);
        assertThat(TODAY.proofs())
                .filteredOn(proof -> proof.feed().id().equals("lectern-to-foyer"))
                .extracting(FeedProof::state)
                .containsExactly(FeedState.BROKEN);
    }

    @Test
    void whatTheServicesBeforeNeedArrivesToday() {
        List<String> needed = Stream.of("sunday-before", "midweek")
                .flatMap(event -> PROJECT.events().get(event).needs().feeds().stream())
                .toList();
        assertThat(needed).isNotEmpty();
        assertThat(needed)
                .allSatisfy(
                        feed -> assertThat(TODAY.findProof(feed).orElseThrow().proven())
                                .as(feed)
                                .isTrue());
    }

    @Test
    void writtenAndReadAgainItIsTheSame() {
        assertThat(Demo.read(ProjectWriter.yaml(PROJECT))).isEqualTo(PROJECT);
        assertThat(ProjectReader.FORMAT).isEqualTo(PROJECT.format());
    }

    private static List<Equipment> there() {
        return PROJECT.equipment().values().stream()
                .filter(each -> each.life().target())
                .toList();
    }

    private static Set<String> ofKind(Kind kind) {
        return there().stream()
                .map(Equipment::id)
                .filter(id -> kind(id) == kind)
                .collect(Collectors.toSet());
    }

    private static Kind kind(String thing) {
        Equipment equipment = PROJECT.equipment().get(thing);
        return TYPES.findModel(equipment.model()).map(Model::kind).orElse(Kind.OTHER);
    }

    private static String room(String thing) {
        String place = PROJECT.equipment().get(thing).at();
        return place == null
                ? ""
                : String.valueOf(PROJECT.venue().places().get(place).room());
    }

    private static List<String> radioFrom(Kind from, Kind to) {
        return PROJECT.radio().values().stream()
                .filter(each -> each.frequency() != null)
                .filter(each ->
                        kind(each.from().thing()) == from && kind(each.to().thing()) == to)
                .map(each -> each.id())
                .toList();
    }
}
