package housewright.check.network;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.check.Small;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each rule about the network on a hall that breaks it in one place, and on the nearest one that does not. */
class NetworkRulesTest {
    private static final Small CLEAN = new Small("""
            housewright: 1
            project: {name: Small network, stage: live}
            models:
              switch:
                kind: switch
                ports:
                  "p-{1..8}": {both: ethernet, connector: RJ45, rate: 1 Gbit/s, poe: {gives: 30 W}}
                poe: {gives: 30 W, budget: 60 W}
                igmp: yes
              camera:
                kind: camera
                ports:
                  net: {both: ethernet, connector: RJ45, rate: 1 Gbit/s}
                points: [lens]
                routes: ["lens -> net:v"]
                poe: {takes: 12 W}
              screen:
                kind: display
                ports:
                  net: {both: ethernet, connector: RJ45, rate: 1 Gbit/s}
                  mains: {in: mains, connector: C14}
                points: [picture]
                routes: ["net:v -> picture"]
              box:
                kind: computer
                ports: {"net-{1..2}": {both: ethernet, connector: RJ45, rate: 1 Gbit/s}}
                points: [play]
                patch: free
              router:
                kind: internet-router
                ports: {lan: {both: ethernet, connector: RJ45, rate: 1 Gbit/s}}
            equipment:
              hub: {model: switch, ip: 10.0.1.2, vlans: {p-1: [20], p-2: [20], p-8: [1, 20]}}
              far: {model: switch, ip: 10.0.1.3, vlans: {p-1: [20], p-8: [1, 20]}}
              cam: {model: camera, ip: 10.0.20.11}
              near: {model: screen, ip: 10.0.20.12}
              away: {model: screen, ip: 10.0.20.13}
              pc: {model: box, ip: 10.0.1.14}
              router: {model: router, ip: 10.0.1.1}
            cables:
              C1: {from: cam.net, to: hub.p-1}
              C2: {from: near.net, to: hub.p-2}
              C3: {from: away.net, to: far.p-1}
              C4: {from: pc.net-1, to: hub.p-4}
              C5: {from: router.lan, to: far.p-4}
              C8: {from: hub.p-8, to: far.p-8}
            network-sends:
              one: {from: cam.net:v, to: near.net:v, as: ip-video, rate: 100 Mbit/s, vlan: 20}
              two: {from: cam.net:v, to: away.net:v, as: ip-video, rate: 100 Mbit/s, vlan: 20}
            feeds:
              one: {from: cam.lens, to: near.picture, carries: picture}
              two: {from: cam.lens, to: away.picture, carries: picture}
            """);

    private static Small withEquipment(String line) {
        return CLEAN.but("\ncables:\n", "\n  " + line + "\ncables:\n");
    }

    static List<String> rules() {
        return NetworkRules.all().stream().map(rule -> rule.card().id()).toList();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aCleanNetworkHasNoFinding(String rule) {
        assertThat(CLEAN.lines(rule)).isEmpty();
    }

    @Test
    void twoThingsWithOneAddress() {
        assertThat(CLEAN.but("10.0.20.13", "10.0.20.12").lines("address-twice"))
                .containsExactly(
                        "fix [equipment near, equipment away] near and away have the same address, 10.0.20.12.");
    }

    @Test
    void theSameAddressOnNetworksThatAreApartIsNoFault() {
        assertThat(CLEAN.but("10.0.1.14", "10.0.20.12").lines("address-twice")).isEmpty();
        assertThat(CLEAN.but("10.0.1.14", "10.0.20.12")
                        .but("  C4: {from: pc.net-1, to: hub.p-4}\n", "")
                        .lines("address-twice"))
                .as("nobody knows where it is plugged in")
                .hasSize(1);
    }

    @Test
    void anAddressWithASlip() {
        assertThat(CLEAN.but("10.0.20.13", "10.0.20.1300").lines("address-unusable"))
                .containsExactly("fix [equipment away] away has the address 10.0.20.1300, which is no address: four"
                        + " numbers from 0 to 255 are due.");
        assertThat(CLEAN.but("10.0.20.13", "10.0.20.255").lines("address-unusable"))
                .singleElement()
                .asString()
                .contains("stands for the whole network 10.0.20.0/24 (no mask is given)");
        assertThat(CLEAN.but("10.0.20.13", "10.0.20.255/16").lines("address-unusable"))
                .isEmpty();
        assertThat(CLEAN.but("10.0.20.13", "\"fd00::1\"").lines("address-unusable"))
                .isEmpty();
    }

    @Test
    void anAddressInAnotherRange() {
        assertThat(CLEAN.but("10.0.20.13", "10.0.21.13").lines("address-off-subnet"))
                .containsExactly(
                        "fix [equipment away, equipment cam] away has 10.0.21.13, and on VLAN 20 cam and near are"
                                + " in 10.0.20.0/24 (taken as /24, since no mask is given): they do not hear each other.");
        assertThat(CLEAN.but("10.0.20.11", "10.0.20.11/16")
                        .but("10.0.20.12", "10.0.20.12/16")
                        .but("10.0.20.13", "10.0.21.13/16")
                        .lines("address-off-subnet"))
                .isEmpty();
    }

    @Test
    void noAddressWrittenDown() {
        assertThat(CLEAN.but(", ip: 10.0.20.13", "").lines("address-missing"))
                .containsExactly("note [equipment away] away has no network address written down.");
        assertThat(CLEAN.but(", ip: 10.0.1.14", "").lines("address-missing"))
                .as("nothing is sent to or from it")
                .isEmpty();
    }

    @Test
    void theEndsOfALinkBetweenSwitchesDiffer() {
        assertThat(CLEAN.but("p-1: [20], p-8: [1, 20]}}\n  cam", "p-1: [20], p-8: [1, 20, 30]}}\n  cam")
                        .lines("trunk-ends-differ"))
                .containsExactly(
                        "fix [equipment hub, equipment far, cable C8] C8 carries VLAN 1 and 20 at hub and 1, 20"
                                + " and 30 at far, so VLAN 30 does not get through.");
        assertThat(CLEAN.but("p-1: [20], p-8: [1, 20]}}\n  cam", "p-1: [20], p-8: [1]}}\n  cam")
                        .lines("trunk-ends-differ"))
                .as("a send fails by it, which is reported")
                .isEmpty();
    }

    @Test
    void aLinkIsLoadedUpToItsLimits() {
        Small most = CLEAN.but("near.net:v, as: ip-video, rate: 100", "near.net:v, as: ip-video, rate: 600");
        assertThat(most.lines("link-overloaded")).as("700 of 1000").isEmpty();
        assertThat(most.but("rate: 100", "rate: 101").lines("link-overloaded"))
                .containsExactly(
                        "note [cable C1, network-send one, network-send two] C1 between cam, net and hub, p 1 is"
                                + " loaded to 70.1 % by one and two from cam (701 Mbit/s of 1 Gbit/s); plan no more than 70 %.");
        Small full = CLEAN.but("near.net:v, as: ip-video, rate: 100", "near.net:v, as: ip-video, rate: 400")
                .but("rate: 100", "rate: 600");
        assertThat(full.lines("link-overloaded")).singleElement().asString().startsWith("note ");
        assertThat(full.but("rate: 600", "rate: 602").lines("link-overloaded"))
                .containsExactly(
                        "stop [cable C1, network-send one, network-send two] C1 between cam, net and hub, p 1 is"
                                + " overloaded by 2 Mbit/s: one and two put 1 Gbit/s from cam on a link that passes 1 Gbit/s.");
    }

    @Test
    void linksOnOneWayAreOneFinding() {
        assertThat(CLEAN.but("near.net:v, as: ip-video, rate: 100", "near.net:v, as: ip-video, rate: 1")
                        .but("rate: 100 Mbit", "rate: 800 Mbit")
                        .findings("link-overloaded"))
                .extracting(finding -> finding.message())
                .containsExactlyInAnyOrder(
                        "C1 between cam, net and hub, p 1 is loaded to 80.1 % by one and two from cam (801 Mbit/s of 1 Gbit/s);"
                                + " plan no more than 70 %.",
                        "C8 between hub, p 8 and far, p 8 is loaded to 80.0 % by two from hub (800 Mbit/s of 1 Gbit/s); plan"
                                + " no more than 70 % (1 more on the way).");
    }

    @Test
    void aLinkHasTheRateOfItsSlowerPortAndEachWayItsOwn() {
        Small slow = CLEAN.but(
                "kind: display\n    ports:\n      net: {both: ethernet, connector: RJ45, rate: 1 Gbit/s}",
                "kind: display\n    ports:\n      net: {both: ethernet, connector: RJ45, rate: 100 Mbit/s}");
        assertThat(slow.findings("link-overloaded"))
                .extracting(finding -> finding.evidence().getFirst().found())
                .containsExactly(100.0, 100.0);
        Small back = CLEAN.but(
                "feeds:\n", "  back: {from: near.net:x, to: cam.net:x, rate: 600 Mbit/s, vlan: 20}\nfeeds:\n");
        assertThat(back.lines("link-overloaded")).isEmpty();
    }

    @Test
    void aProjectMayPlanForLess() {
        assertThat(CLEAN.but("stage: live", "stage: live, rules: {tighten: {link-overloaded: 15 %}}")
                        .lines("link-overloaded"))
                .singleElement()
                .asString()
                .contains("20.0 % by one and two from cam (200 Mbit/s of 1 Gbit/s); plan no more than 15 %");
    }

    @Test
    void aMulticastLoadsALinkOnce() {
        Small many = CLEAN.but(
                        "rate: 100 Mbit/s, vlan: 20}\n  two", "rate: 600 Mbit/s, vlan: 20, multicast: yes}\n  two")
                .but("rate: 100 Mbit/s, vlan: 20}", "rate: 600 Mbit/s, vlan: 20, multicast: yes}");
        assertThat(many.lines("link-overloaded")).isEmpty();
        assertThat(many.but("multicast: yes}\n  two", "multicast: no}\n  two").lines("link-overloaded"))
                .hasSize(1);
    }

    @Test
    void aPictureWithoutARate() {
        assertThat(CLEAN.but("near.net:v, as: ip-video, rate: 100 Mbit/s,", "near.net:v, as: ip-video,")
                        .lines("send-rate-missing"))
                .containsExactly("note [network-send one] No rate is given for one, so the load of the links is summed"
                        + " without it.");
        assertThat(CLEAN.but("feeds:\n", "  keys: {from: pc.net-1:button-1, to: router.lan:x}\nfeeds:\n")
                        .lines("send-rate-missing"))
                .isEmpty();
    }

    @Test
    void aSwitchSlowerThanWhatIsPluggedIn() {
        assertThat(CLEAN.but("rate: 1 Gbit/s, poe: {gives: 30 W}", "rate: 100 Mbit/s, poe: {gives: 30 W}")
                        .lines("slow-port"))
                .containsExactlyInAnyOrder(
                        "note [equipment hub, equipment cam, equipment near, equipment pc] hub passes 100 Mbit/s where cam,"
                                + " near and pc could do 1 Gbit/s.",
                        "note [equipment far, equipment away, equipment router] far passes 100 Mbit/s where away and router"
                                + " could do 1 Gbit/s.");
    }

    @Test
    void aMulticastFloodsWhatDoesNotSnoop() {
        Small many = CLEAN.but(
                        "rate: 100 Mbit/s, vlan: 20}\n  two", "rate: 100 Mbit/s, vlan: 20, multicast: yes}\n  two")
                .but("  two: {from: cam.net:v, to: away.net:v, as: ip-video, rate: 100 Mbit/s, vlan: 20}\n", "");
        assertThat(many.lines("multicast-floods")).isEmpty();
        Small blind = many.but("igmp: yes", "igmp: no");
        assertThat(blind.lines("multicast-floods"))
                .containsExactly(
                        "fix [equipment far, network-send one] far does no IGMP snooping, so the multicast one also comes to"
                                + " away (up to 100 Mbit/s on one port).",
                        "fix [equipment hub, network-send one] hub does no IGMP snooping, so the multicast one also comes to"
                                + " far (up to 100 Mbit/s on one port).");
        assertThat(blind.but("as: ip-video", "as: lighting-data").lines("multicast-floods"))
                .allMatch(line -> line.startsWith("note "));
        assertThat(many.but("igmp: yes", "lead: 1 d").lines("multicast-floods"))
                .as("not known: nothing is claimed")
                .isEmpty();
    }

    @Test
    void aPortThatGivesNoPower() {
        Small none = CLEAN.but(", poe: {gives: 30 W}}\n", "}\n");
        assertThat(none.lines("network-power-not-given"))
                .containsExactly(
                        "stop [equipment cam, equipment hub] cam takes 12 W from the network, and hub, p 1 gives none:"
                                + " it stays off.");
        Small inlet = none.but(
                "kind: camera\n    ports:\n", "kind: camera\n    ports:\n      mains: {in: mains, connector: C14}\n");
        assertThat(inlet.lines("network-power-not-given"))
                .singleElement()
                .asString()
                .startsWith("fix ")
                .endsWith("gives none; no other supply is entered.");
        assertThat(inlet.but("equipment:\n", "venue: {circuits: {db1-1: {rating: 16 A, voltage: 230 V}}}\nequipment:\n")
                        .but("cam: {model: camera,", "cam: {model: camera, circuit: db1-1,")
                        .lines("network-power-not-given"))
                .isEmpty();
        assertThat(none.but("  C1: {from: cam.net, to: hub.p-1}\n", "").lines("network-power-not-given"))
                .as("not plugged in yet")
                .isEmpty();
    }

    /** IEEE 802.3at: a port of 30 W serves 25.5 W at the device (class 4). */
    @Test
    void aPortTooWeakForTheClass() {
        assertThat(CLEAN.but("takes: 12 W", "takes: 25.5 W").lines("network-power-too-weak"))
                .isEmpty();
        assertThat(CLEAN.but("takes: 12 W", "takes: 25.6 W").lines("network-power-too-weak"))
                .containsExactly(
                        "stop [equipment cam, equipment hub] cam takes 25.6 W, which is class 5 and needs 45 W at the"
                                + " port; hub, p 1 gives 30 W.");
    }

    @Test
    void aBudgetSpent() {
        Small two = withEquipment("cam-2: {model: camera}")
                .but("cables:\n", "cables:\n  C9: {from: cam-2.net, to: hub.p-5}\n")
                .but("takes: 12 W", "takes: 20 W");
        assertThat(two.lines("network-power-budget")).as("60 of 60 W").isEmpty();
        assertThat(two.but("budget: 60 W", "budget: 59 W").lines("network-power-budget"))
                .containsExactly(
                        "fix [equipment hub, equipment cam, equipment cam-2] hub is asked for 60 W by the power"
                                + " classes of cam and cam 2, and has 59 W for all its ports.");
    }

    @Test
    void switchesInARow() {
        assertThat(row(7).lines("switches-in-a-row")).isEmpty();
        assertThat(row(8).lines("switches-in-a-row"))
                .singleElement()
                .asString()
                .startsWith("fix [network-send two, ")
                .contains("two passes 8 switches one after the other");
    }

    private static Small row(int switches) {
        String things = IntStream.rangeClosed(1, switches - 2)
                .mapToObj(n -> "  s-" + n + ": {model: switch, vlans: {\"p-{7..8}\": [1, 20]}}\n")
                .collect(Collectors.joining());
        String cables = IntStream.rangeClosed(1, switches - 1)
                .mapToObj(n -> "  R" + n + ": {from: " + (n == 1 ? "hub" : "s-" + (n - 1)) + ".p-8, to: "
                        + (n == switches - 1 ? "far.p-8" : "s-" + n + ".p-7") + "}\n")
                .collect(Collectors.joining());
        return CLEAN.but("  C8: {from: hub.p-8, to: far.p-8}\n", cables)
                .but("\ncables:\n", "\n" + things + "cables:\n");
    }

    @Test
    void aLoopOfSwitches() {
        Small loop = CLEAN.but("network-sends:\n", "  C9: {from: hub.p-7, to: far.p-7}\nnetwork-sends:\n");
        assertThat(loop.lines("switch-loop"))
                .containsExactly(
                        "fix [cable C9, equipment hub, equipment far] C9 is a second way between hub and far in VLAN 1:"
                                + " packets go round in it and the network stands still.");
        assertThat(loop.but("to: far.p-7}", "to: far.p-7, note: \"Reserve, spanning tree is on.\"}")
                        .lines("switch-loop"))
                .isEmpty();
        assertThat(loop.but("p-2: [20], p-8", "p-2: [20], p-7: [30], p-8")
                        .but("p-1: [20], p-8: [1, 20]}}\n  cam", "p-1: [20], p-7: [30], p-8: [1, 20]}}\n  cam")
                        .lines("switch-loop"))
                .as("in a VLAN of its own it is no second way")
                .isEmpty();
        assertThat(CLEAN.but("network-sends:\n", "  C9: {from: hub.p-6, to: hub.p-7}\nnetwork-sends:\n")
                        .lines("switch-loop"))
                .singleElement()
                .asString()
                .contains("C9 joins hub to itself");
    }

    @Test
    void aBoxThatHandsNothingOn() {
        Small chain = withEquipment("pc-2: {model: box}")
                .but("network-sends:\n", "  C9: {from: pc-2.net-1, to: pc.net-2}\nnetwork-sends:\n");
        assertThat(chain.lines("box-passes-no-network"))
                .containsExactly(
                        "fix [equipment pc-2, equipment pc] pc 2 hangs on pc, which is no switch and hands no network"
                                + " on: it is not on the network.");
        assertThat(chain.but("to: pc.net-2", "to: hub.p-5").lines("box-passes-no-network"))
                .isEmpty();
    }

    @Test
    void muchHangsOnOneSwitch() {
        Small three = CLEAN.but("feeds:\n", "feeds:\n  again: {from: cam.lens, to: near.picture, carries: picture}\n");
        assertThat(three.lines("all-hangs-on-one"))
                .containsExactly(
                        "note [equipment hub, feed again, feed one, feed two] 3 feeds stop when hub does: again, one and"
                                + " two.");
    }

    @Test
    void picturesBesideTheInternet() {
        assertThat(CLEAN.but("  C5: {from: router.lan, to: far.p-4}", "  C5: {from: router.lan, to: far.p-5}")
                        .but("p-1: [20], p-8: [1, 20]}}\n  cam", "p-1: [20], p-5: [20], p-8: [1, 20]}}\n  cam")
                        .lines("media-with-internet"))
                .containsExactly(
                        "note [network-send one, network-send two, equipment router] one and two share VLAN 20 with"
                                + " router: a guest's download or a stray update meets sound and pictures there.");
    }
}
