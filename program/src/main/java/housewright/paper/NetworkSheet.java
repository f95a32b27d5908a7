package housewright.paper;

import housewright.cable.Plug;
import housewright.model.Kind;
import housewright.model.NetworkSend;
import housewright.model.Words;
import housewright.network.Link;
import housewright.network.Networks;
import housewright.signal.Moment;
import housewright.signal.Present;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Every thing on a network: its address, the switch port it is in, its networks; and what is sent over them. */
final class NetworkSheet extends Titled {
    NetworkSheet() {
        super(
                "network-addresses",
                "Network address sheet",
                "Who sets the network up, and who looks for a fault in it",
                "Which address has each thing, in which switch port is it, and on which network?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Study target = study.at(Moment.target());
        Networks networks = target.networks();
        List<Row> things = new ArrayList<>();
        for (Present thing : networks.things()) {
            List<Link> links = networks.linksOf(thing.id());
            if (!links.isEmpty() || thing.equipment().ip() != null) {
                things.add(thing(thing, links, networks));
            }
        }
        List<Row> ports = new ArrayList<>();
        for (Present thing : networks.things()) {
            if (networks.isSwitch(thing.id())) {
                networks.linksOf(thing.id()).forEach(link -> ports.add(port(thing, link, networks)));
            }
        }
        List<Row> sends = new ArrayList<>();
        for (NetworkSend send : study.project().networkSends().values()) {
            if (target.moment().isThere("network-sends", send.id(), send.life())) {
                sends.add(send(send));
            }
        }
        List<Block> blocks = new ArrayList<>();
        if (!things.isEmpty()) {
            blocks.add(new Block.Text("Passwords do not stand here: who keeps them is in the as-built register."));
            blocks.add(new Block.Table(
                    "addresses",
                    List.of(
                            Column.text("Thing", 18),
                            Column.text("Type", 26),
                            Column.text("At", 13),
                            Column.id("Address", 16),
                            Column.text("Switch port", 20),
                            Column.text("Network", 9),
                            Column.text("Set", 5)),
                    things));
        }
        if (!ports.isEmpty()) {
            blocks.add(new Block.Heading("Switches, port by port"));
            blocks.add(new Block.Table(
                    "ports",
                    List.of(
                            Column.text("Switch", 16),
                            Column.text("Port", 12),
                            Column.text("Networks", 14),
                            Column.text("Goes to", 30),
                            Column.text("Cables", 22),
                            Column.text("Set", 5)),
                    ports));
        }
        if (!sends.isEmpty()) {
            blocks.add(new Block.Heading("What is sent"));
            blocks.add(new Block.Table(
                    "sends",
                    List.of(
                            Column.text("Send", 18),
                            Column.text("From", 26),
                            Column.text("To", 26),
                            Column.text("As", 14),
                            Column.text("Rate", 12),
                            Column.text("Network", 8),
                            Column.text("Multicast", 8)),
                    sends));
        }
        return blocks.isEmpty()
                ? List.of()
                : List.of(Sheet.lying("network-addresses", "Network addresses", recipient(), blocks));
    }

    private static Row thing(Present thing, List<Link> links, Networks networks) {
        List<String> ports = new ArrayList<>();
        TreeSet<Integer> vlans = new TreeSet<>();
        for (Link link : links) {
            Plug far = link.far(thing.id());
            if (Link.isSwitch(far)) {
                ports.add(far.at().saidPort());
                vlans.addAll(networks.vlans(link));
            }
        }
        boolean isSwitch = thing.model() != null && thing.model().kind() == Kind.SWITCH;
        return new Row(
                thing.id(),
                List.of(
                        Cell.of(Words.said(thing.id())),
                        thing.model() == null ? Cell.BLANK : Cell.of(Say.type(thing.model())),
                        Cell.orBlank(Say.name(thing.equipment().at())),
                        Cell.orBlank(thing.equipment().ip()),
                        Cell.of(String.join("; ", ports)),
                        isSwitch ? Cell.NONE : Cell.of(vlans(vlans)),
                        Cell.BOX));
    }

    private static Row port(Present thing, Link link, Networks networks) {
        Plug near = link.near(thing.id());
        return new Row(
                near.at() + " " + link.said(),
                List.of(
                        Cell.of(Words.said(thing.id())),
                        Cell.of(Words.said(near.at().spot().name())),
                        Cell.of(vlans(networks.vlans(near))),
                        Cell.of(link.far(thing.id()).at().saidPort()),
                        Cell.of(String.join(", ", link.line().ids())),
                        Cell.BOX));
    }

    private static Row send(NetworkSend send) {
        return new Row(
                send.id(),
                List.of(
                        Cell.of(Words.said(send.id())),
                        Cell.of(send.from().text()),
                        Cell.of(send.to().text()),
                        Cell.orBlank(send.as()),
                        Cell.orBlank(send.rate()),
                        Cell.of(vlan(send.vlan())),
                        Cell.of(send.multicast() ? "yes" : "no")));
    }

    private static String vlan(@Nullable Integer vlan) {
        return String.valueOf(vlan == null ? Networks.DEFAULT_VLAN : vlan);
    }

    private static String vlans(java.util.Set<Integer> vlans) {
        return String.join(
                ", ", new TreeSet<>(vlans).stream().map(String::valueOf).toList());
    }
}
