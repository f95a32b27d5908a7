package housewright.check.power;

import housewright.check.Evidence;
import housewright.model.Kind;
import housewright.model.Model;
import housewright.model.Port;
import housewright.model.Signal;
import housewright.power.Supplies;
import housewright.power.Supply;
import housewright.signal.Present;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The UPSs and what hangs on them. */
final class Upses {
    /**
     * One of them.
     *
     * @param watts on its outlets
     * @param rating of its outlets together in W; 0 where its type does not say
     */
    record Ups(Present thing, List<Supply> on, double watts, double rating) {}

    private Upses() {}

    static List<Ups> all(Evidence evidence) {
        List<Ups> all = new ArrayList<>();
        Supplies supplies = evidence.supplies();
        for (Present each : supplies.things().values()) {
            Model model = each.model();
            List<Supply> on = supplies.below(each.id());
            if (model == null || model.kind() != Kind.UPS || on.isEmpty()) {
                continue;
            }
            double watts =
                    on.stream().mapToDouble(one -> supplies.through(one.id())).sum();
            double rating = 0;
            for (Port port : model.ports().values()) {
                if (port.in() == Signal.MAINS && port.power() != null) {
                    rating = port.power().watts();
                }
            }
            all.add(new Ups(each, on, watts, rating));
        }
        return all;
    }

    /** Everything below, through strips. */
    static List<Supply> below(Evidence evidence, String thing) {
        List<Supply> all = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        List<Supply> row = evidence.supplies().below(thing);
        while (!row.isEmpty()) {
            List<Supply> next = new ArrayList<>();
            for (Supply each : row) {
                if (seen.add(each.id())) {
                    all.add(each);
                    next.addAll(evidence.supplies().below(each.id()));
                }
            }
            row = next;
        }
        return all;
    }
}
