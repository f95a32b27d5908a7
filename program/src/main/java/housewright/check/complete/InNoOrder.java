package housewright.check.complete;

import housewright.check.Evidence;
import housewright.check.Rule;
import housewright.check.Wording;
import housewright.finding.Finding;
import housewright.finding.Fix;
import housewright.finding.Severity;
import housewright.finding.Source;
import housewright.finding.Subject;
import housewright.finding.Value;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Equipment;
import housewright.model.Life;
import housewright.model.Order;
import housewright.model.Stage;
import housewright.model.Words;
import housewright.model.change.Change;
import housewright.model.change.Section;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** New equipment that no order asks for, where the project has orders. */
public final class InNoOrder implements Rule {
    private static final Card CARD = new Card(
            "in-no-order",
            "Is everything that is to be bought in an order?",
            Set.of(Severity.FIX),
            new Source.TheProject(),
            Stage.ORDER);

    @Override
    public Card card() {
        return CARD;
    }

    @Override
    public Stream<Finding> check(Evidence evidence) {
        Collection<Order> orders = evidence.project().orders().values();
        if (orders.isEmpty()) {
            return Stream.empty(); // they are kept elsewhere
        }
        Set<String> ordered = new HashSet<>();
        orders.forEach(order -> ordered.addAll(order.items()));
        List<String> left = new ArrayList<>();
        for (Equipment each : evidence.project().equipment().values()) {
            if (each.life() == Life.NEW
                    && !ordered.contains(each.id())
                    && !ordered.contains(String.valueOf(each.model()))) {
                left.add(each.id());
            }
        }
        List<String> types = cableTypes(evidence, ordered);
        if (left.isEmpty() && types.isEmpty()) {
            return Stream.empty();
        }
        List<Subject> subjects = new ArrayList<>();
        left.forEach(each -> subjects.add(Subject.equipment(each)));
        types.forEach(each -> subjects.add(new Subject("cable-type", each)));
        List<String> items = new ArrayList<>(left);
        items.addAll(types);
        return Stream.of(CARD.finding(
                Severity.FIX,
                subjects,
                Stream.of(Wording.things(left, 5), Wording.some(types, 5))
                                .filter(s -> !s.isEmpty())
                                .collect(Collectors.joining(" and "))
                        + (items.size() == 1 ? " is" : " are") + " new and in no order.",
                List.of(new Value("in no order", items.size(), null, "")),
                List.of(fix(orders, items))));
    }

    /** Types of new cable, where the orders list cable at all. */
    private static List<String> cableTypes(Evidence evidence, Set<String> ordered) {
        Set<String> types = new LinkedHashSet<>();
        boolean listed = false;
        for (Cable cable : evidence.project().cables().values()) {
            if (cable.type() != null && cable.life() == Life.NEW && CableType.isBought(cable.type())) {
                boolean here = ordered.contains(cable.type()) || ordered.contains(cable.id());
                listed |= here;
                if (!here) {
                    types.add(cable.type());
                }
            }
        }
        return listed ? List.copyOf(types) : List.of();
    }

    private static Fix fix(Collection<Order> orders, List<String> items) {
        for (Order order : orders) {
            if (order.placed() == null && order.arrived() == null) {
                List<String> more = new ArrayList<>(order.items());
                more.addAll(items);
                return new Fix(
                        "Add to the order " + Words.said(order.id()) + ", which is not placed yet.",
                        List.of(new Change.Put(
                                Section.ORDERS,
                                order.id(),
                                new Order(
                                        order.id(),
                                        more,
                                        order.supplier(),
                                        order.placed(),
                                        order.lead(),
                                        order.promised(),
                                        order.arrived(),
                                        order.freight(),
                                        order.remarks()))));
            }
        }
        return Fix.of("Put it into a new order; all there are have been placed.");
    }
}
