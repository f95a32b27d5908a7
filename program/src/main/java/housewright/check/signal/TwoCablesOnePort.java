package housewright.check.signal;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Cable;
import housewright.model.Connector;
import housewright.model.End;
import housewright.model.Equipment;
import housewright.model.Model;
import housewright.model.Ref.Address;
import housewright.model.Shape;
import housewright.model.Stage;
import housewright.model.Way;
import housewright.signal.Moment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A socket takes one plug. Terminals take several wires, so they are left alone. */
public final class TwoCablesOnePort implements Rule {
    private static final Card CARD = new Card(
            "two-cables-one-port",
            "Does every socket have one plug in it at most?",
            Set.of(Severity.STOP),
            new Source.CommonPractice(),
            Stage.SURVEY);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Map<Address, Set<String>> plugged = new LinkedHashMap<>();
        Moment moment = evidence.moment();
        for (Cable cable : evidence.project().cables().values()) {
            if (moment.isThere("cables", cable.id(), cable.life())) {
                Cable now = moment.isDone("cables", cable.id()) ? cable : cable.today();
                for (Address place : places(now)) {
                    plugged.computeIfAbsent(place, port -> new LinkedHashSet<>())
                            .add(cable.id());
                }
            }
        }
        Map<String, Shape> shapes = new HashMap<>();
        return plugged.entrySet().stream()
                .filter(each -> each.getValue().size() > 1 && isSocket(evidence, shapes, each.getKey()))
                .map(each -> finding(each.getKey(), List.copyOf(each.getValue())));
    }

    private static Finding finding(Address port, List<String> cables) {
        List<Subject> subjects = new ArrayList<>();
        cables.forEach(cable -> subjects.add(Subject.cable(cable)));
        subjects.add(Subject.equipment(port.thing()));
        return CARD.finding(
                Severity.STOP,
                subjects,
                port.said() + " has " + cables.size() + " cables in it: " + String.join(", ", cables) + ".",
                List.of(new Value("plugs in one socket", cables.size(), 1.0, "")),
                List.of(Fix.of("Plug one of them elsewhere, or put a splitter between.")));
    }

    private static List<Address> places(Cable cable) {
        List<Address> places = new ArrayList<>();
        add(places, cable.from());
        add(places, cable.to());
        for (Way way : cable.ways()) {
            places.addAll(way.from().addresses());
            places.addAll(way.to().addresses());
        }
        return places;
    }

    private static void add(List<Address> places, @Nullable End end) {
        if (end != null && end.ref() != null) {
            places.addAll(end.ref().addresses());
        }
    }

    /** The thing is there at the moment, and the port is one that takes a single plug. */
    private static boolean isSocket(Evidence evidence, Map<String, Shape> shapes, Address place) {
        Equipment equipment = evidence.project().equipment().get(place.thing());
        Moment moment = evidence.moment();
        if (equipment == null || !moment.isThere("equipment", equipment.id(), equipment.life())) {
            return false;
        }
        Equipment now = moment.isDone("equipment", equipment.id()) ? equipment : equipment.today();
        Model model = evidence.types().findModel(now.model()).orElse(null);
        if (model == null) {
            return false;
        }
        return shapes.computeIfAbsent(model.id(), id -> Shape.of(model))
                .findSocket(place.spot().name())
                .filter(socket -> takesOnePlug(socket.port().connector()))
                .isPresent();
    }

    private static boolean takesOnePlug(@Nullable Connector connector) {
        return connector != Connector.TERMINALS && connector != Connector.NONE && connector != Connector.ANTENNA;
    }
}
