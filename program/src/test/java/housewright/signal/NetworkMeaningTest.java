package housewright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Signal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** FORMAT "Meaning": network-send. */
class NetworkMeaningTest {
    private static Hall network() {
        return new Hall()
                .type(new Kit("player", Kind.COMPUTER)
                        .both("net", Signal.ETHERNET)
                        .points("play", "hear")
                        .patchFree())
                .type(new Kit("switch", Kind.SWITCH).both("p-{1..4}", Signal.ETHERNET))
                .type(new Kit("panel", Kind.PANEL).ties("front-1 = rear-1"))
                .type(new Kit("desk", Kind.MIXER).both("link", Signal.STAGE_LINK))
                .things("player", "a", "b", "c")
                .things("switch", "s-1", "s-2", "s-3")
                .things("panel", "panel")
                .things("desk", "desk")
                .patch("a", "play -> net:1")
                .patch("b", "net:1 -> hear")
                .feed("f", "a.play", "b.hear");
    }

    private static Hall send(Hall hall) {
        return hall.send("S", "a.net:1", "b.net:1");
    }

    private static @Nullable List<String> over(Hall hall) {
        return hall.proof("f").pairs().getFirst().hops().stream()
                .map(Hop::cause)
                .filter(Cause.BySend.class::isInstance)
                .map(cause -> ((Cause.BySend) cause).over())
                .findFirst()
                .orElse(null);
    }

    @Test
    void itHoldsThroughCablesAndSwitches() {
        Hall hall = send(network().cable("C1", "a.net", "s-1.p-1").cable("C2", "s-1.p-4", "b.net"));
        assertThat(over(hall)).containsExactly("C1", "s-1", "C2");
    }

    @Test
    void itHoldsAlongOneCable() {
        assertThat(over(send(network().cable("C1", "a.net", "b.net")))).containsExactly("C1");
    }

    @Test
    void itHoldsThroughAPassivePanel() {
        Hall hall = send(network().cable("C1", "a.net", "panel.front-1").cable("C2", "panel.rear-1", "b.net"));
        assertThat(over(hall)).containsExactly("C1", "panel", "C2");
    }

    @Test
    void withoutACommonNetworkItDoesNotHoldAndSaysSo() {
        Hall hall = send(network().cable("C1", "a.net", "s-1.p-1").cable("C2", "s-2.p-4", "b.net"));
        PairProof pair = hall.proof("f").pairs().getFirst();
        assertThat(pair.proven()).isFalse();
        assertThat(pair.stop().at()).hasToString("a.net:1");
        assertThat(pair.stop().why()).contains("S", "a.net and b.net are not on one network");
        assertThat(hall.target().unjoined()).hasSize(1);
    }

    @Test
    void aCableAloneCarriesNoChannelThatNoSendNames() {
        Hall hall = network().cable("C1", "a.net", "b.net");
        assertThat(hall.proof("f").proven()).isFalse();
    }

    @Test
    void aDeviceThatIsNoSwitchDoesNotPassItOn() {
        Hall hall = send(network().cable("C1", "a.net", "c.net").cable("C2", "c.net", "b.net"));
        assertThat(hall.proof("f").proven()).isFalse();
    }

    @Test
    void aCableBetweenPortsThatDoNotAgreeIsNoNetwork() {
        Hall hall = network()
                .cable("C1", "a.net", "desk.link")
                .send("S", "a.net:1", "desk.link")
                .feed("f", "a.play", "desk.link");
        assertThat(hall.proof("f").proven()).isFalse();
    }

    @Test
    void aSwitchThatIsStruckIsNotThere() {
        Hall hall = send(network().cable("C1", "a.net", "s-1.p-1").cable("C2", "s-1.p-4", "b.net"))
                .thing("s-1", "switch", Life.STRIKE);
        assertThat(hall.proof("f").proven()).isFalse();
        assertThat(hall.today().findProof("f").orElseThrow().proven()).isTrue();
    }

    private static Hall oneSwitch() {
        return network().cable("C1", "a.net", "s-1.p-1").cable("C2", "s-1.p-2", "b.net");
    }

    @Test
    void aPortOfASwitchThatSaysNothingCarriesTheDefaultNetwork() {
        assertThat(send(oneSwitch().vlans("s-1", "p-1", 2)).proof("f").proven())
                .as("one port in VLAN 2, the other in none")
                .isFalse();
        assertThat(send(oneSwitch().vlans("s-1", "p-{1..2}", 2)).proof("f").proven())
                .isTrue();
        assertThat(send(oneSwitch().vlans("s-1", "p-1", 1, 2)).proof("f").proven())
                .isTrue();
    }

    @Test
    void oneVlanMustHoldAllTheWay() {
        Hall hall = network()
                .cable("C1", "a.net", "s-1.p-1")
                .cable("C2", "s-1.p-2", "s-2.p-1")
                .cable("C3", "s-2.p-2", "b.net")
                .vlans("s-1", "p-1", 2)
                .vlans("s-1", "p-2", 2, 3)
                .vlans("s-2", "p-1", 2, 3)
                .vlans("s-2", "p-2", 3);
        assertThat(send(hall).proof("f").proven()).isFalse();
        assertThat(send(hall.vlans("s-2", "p-2", 2)).proof("f").proven()).isTrue();
    }

    @Test
    void aSendMayNameItsVlan() {
        Hall hall = oneSwitch().vlans("s-1", "p-{1..2}", 2);
        assertThat(hall.send("S", "a.net:1", "b.net:1", 2, null, Life.KEEP)
                        .proof("f")
                        .proven())
                .isTrue();
        PairProof other = hall.send("S", "a.net:1", "b.net:1", 3, null, Life.KEEP)
                .proof("f")
                .pairs()
                .getFirst();
        assertThat(other.proven()).isFalse();
        assertThat(other.stop().why()).contains("VLAN 3");
    }

    private static Hall ring() {
        return network()
                .cable("C1", "a.net", "s-1.p-1")
                .cable("C2", "s-3.p-1", "b.net")
                .cable("C5", "s-1.p-2", "s-2.p-1")
                .cable("C6", "s-2.p-2", "s-3.p-2");
    }

    @Test
    void theWayOfFewestHopsIsTaken() {
        assertThat(over(send(ring()))).containsExactly("C1", "s-1", "C5", "s-2", "C6", "s-3", "C2");
        Hall direct = ring().cable("C9", "s-1.p-3", "s-3.p-3");
        assertThat(over(send(direct))).containsExactly("C1", "s-1", "C9", "s-3", "C2");
    }

    /** FORMAT: ties by id, not by the order of the file. */
    @Test
    void ofWaysAsShortTheIdsDecide() {
        Hall hall = ring().cable("C9", "s-1.p-3", "s-3.p-3").cable("C8", "s-3.p-4", "s-1.p-4");
        assertThat(over(send(hall))).containsExactly("C1", "s-1", "C8", "s-3", "C2");
    }

    @Test
    void aSwitchOfTheDeviceMayGateItsWholeNetworkPort() {
        Hall hall = send(network().cable("C1", "a.net", "d.net"))
                .type(new Kit("streamer", Kind.COMPUTER)
                        .both("net", Signal.ETHERNET)
                        .points("hear")
                        .patchFree()
                        .gate("on-air", false, "net"))
                .things("streamer", "d")
                .patch("d", "net:7 -> hear")
                .send("S7", "a.net:1", "d.net:7")
                .feed("f", "a.play", "d.hear");
        assertThat(hall.proof("f").proven()).isFalse();
        assertThat(hall.proof("f").pairs().getFirst().stop().why()).contains("on-air", "off");
        assertThat(hall.set("d", "on-air", "on").proof("f").proven()).isTrue();
        assertThat(hall.set("d", "net:7", "mute").proof("f").proven()).isFalse();
    }
}
