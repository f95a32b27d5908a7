package housewright.order;

import housewright.cable.Cabling;
import housewright.model.Budget;
import housewright.model.Order;
import housewright.model.Practice;
import housewright.model.Types;
import housewright.order.OrderLine.Sort;
import housewright.unit.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is bought and hired for a project, of whom, by when, and what it comes to. Immutable. */
public final class Orders {
    private final List<OrderLine> lines;
    private final List<CutPlan> cuts;
    private final List<Reuse> reuse;
    private final Costs costs;

    private Orders(List<OrderLine> lines, List<CutPlan> cuts, List<Reuse> reuse, Costs costs) {
        this.lines = lines;
        this.cuts = cuts;
        this.reuse = reuse;
        this.costs = costs;
    }

    /**
     * @param needs when each piece of equipment and cable is wanted and what for, by its id
     * @param firstDay the day on which whatever has no such day is wanted; null where nobody knows
     */
    public static Orders of(
            Types types, Cabling today, Cabling target, Map<String, Need> needs, @Nullable LocalDate firstDay) {
        Bill bill = new Bill(types, target, needs, firstDay);
        List<OrderLine> lines = bill.lines();
        return new Orders(
                lines,
                List.copyOf(bill.cuts().values()),
                List.copyOf(new Struck(types, today, target).find()),
                costs(types, lines));
    }

    private static Costs costs(Types types, List<OrderLine> lines) {
        Practice practice = types.practice();
        Budget budget = types.project().budget();
        BigDecimal goods = BigDecimal.ZERO;
        BigDecimal hires = BigDecimal.ZERO;
        List<String> unpriced = new ArrayList<>();
        Map<String, BigDecimal> byOrder = new LinkedHashMap<>();
        for (OrderLine line : lines) {
            BigDecimal price = line.price();
            if (price == null) {
                unpriced.add(line.id());
            } else if (line.sort() == Sort.HIRE) {
                hires = hires.add(price);
            } else {
                goods = goods.add(price);
                byOrder.merge(String.valueOf(line.order()), price, BigDecimal::add);
            }
        }
        List<String> assumed = new ArrayList<>();
        BigDecimal freight = BigDecimal.ZERO;
        for (Map.Entry<String, BigDecimal> each : byOrder.entrySet()) {
            Order order = types.project().orders().get(each.getKey());
            BigDecimal said = order == null ? null : order.freight();
            freight = freight.add(said != null ? said : share(each.getValue(), practice.freight()));
        }
        if (practice.freight() != null
                && types.project().orders().values().stream().anyMatch(order -> order.freight() == null)) {
            assumed.add("freight of " + practice.freight().text() + " where no order states it");
        }
        BigDecimal contingency = share(goods.add(hires), practice.contingency());
        if (practice.contingency() != null) {
            assumed.add("contingency of " + practice.contingency().text() + " of goods and hires");
        }
        BigDecimal net = goods.add(hires).add(freight).add(contingency);
        Ratio rate = budget == null ? null : budget.tax();
        BigDecimal tax = rate == null ? null : share(net, rate);
        if (rate == null) {
            assumed.add("no tax: the project does not say the rate (budget: {tax: 20 %})");
        }
        if (types.project().hires().values().stream().anyMatch(hire -> hire.perDay() != null)) {
            assumed.add("each hire for one day: the plan says for how many");
        }
        return new Costs(
                money(goods),
                money(hires),
                money(freight),
                money(contingency),
                tax,
                money(net.add(tax == null ? BigDecimal.ZERO : tax)),
                budget == null ? null : budget.limit(),
                unpriced,
                assumed);
    }

    private static BigDecimal share(BigDecimal of, @Nullable Ratio share) {
        return share == null ? BigDecimal.ZERO : money(of.multiply(BigDecimal.valueOf(share.fraction())));
    }

    private static BigDecimal money(BigDecimal amount) {
        return amount.setScale(2, RoundingMode.HALF_UP);
    }

    /** In the order of the project's orders; last what is in none. */
    public List<OrderLine> lines() {
        return lines;
    }

    public Optional<OrderLine> find(String id) {
        return lines.stream().filter(line -> line.id().equals(id)).findFirst();
    }

    /** The lines by supplier, in the order of the first of each; what has none, under a blank. */
    public Map<String, List<OrderLine>> bySupplier() {
        Map<String, List<OrderLine>> by = new LinkedHashMap<>();
        for (OrderLine line : lines) {
            by.computeIfAbsent(Objects.requireNonNullElse(line.supplier(), ""), each -> new ArrayList<>())
                    .add(line);
        }
        return by;
    }

    /** How cable is cut, type by type. */
    public List<CutPlan> cuts() {
        return cuts;
    }

    /** What goes and could be used instead of buying; suggestions, none of which the lines take for granted. */
    public List<Reuse> reuse() {
        return reuse;
    }

    public Costs costs() {
        return costs;
    }
}
