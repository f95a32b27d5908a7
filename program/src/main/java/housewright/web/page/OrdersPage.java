package housewright.web.page;

import housewright.app.Now;
import housewright.model.LogEntry;
import housewright.model.Order;
import housewright.order.Costs;
import housewright.order.OrderLine;
import housewright.order.Orders;
import housewright.order.Reuse;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is bought and hired, of whom, and by when.
 *
 * @param answer in a sentence
 * @param under what the days rest on
 * @param costs label and amount, the sum last
 * @param budget what is left of it, as a sentence; empty where there is none
 */
public record OrdersPage(
        String answer,
        String under,
        List<Supplier> suppliers,
        List<Amount> costs,
        String budget,
        boolean over,
        List<String> assumed,
        List<String> reuse,
        String today) {
    public OrdersPage {
        suppliers = List.copyOf(suppliers);
        costs = List.copyOf(costs);
        assumed = List.copyOf(assumed);
        reuse = List.copyOf(reuse);
    }

    /** One of whom things are bought; last what is in no order. */
    public record Supplier(String name, List<Group> orders) {
        public Supplier {
            orders = List.copyOf(orders);
        }
    }

    /**
     * Lines of one order of the project.
     *
     * @param id null for lines that are in none
     * @param state how far it is, in words
     * @param mark the word of {@code mark.jte} for it; empty for none
     * @param due by when it must be ordered, in words; empty where it is ordered or nobody knows
     * @param delays what waits for it, in words; empty where nothing does
     */
    public record Group(
            @Nullable String id,
            String state,
            String mark,
            String due,
            String delays,
            boolean placed,
            boolean arrived,
            String late,
            List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /** One line. */
    public record Line(
            String id,
            String name,
            String type,
            String buy,
            String spares,
            String price,
            String need,
            String latest,
            String forWhat,
            List<String> items) {}

    /** An amount of money. */
    public record Amount(String label, String sum, boolean total) {}

    public static OrdersPage of(Now now, LocalDate today) {
        Orders orders = now.study().orders();
        List<Supplier> suppliers = new ArrayList<>();
        int late = 0;
        int due = 0;
        int open = 0;
        for (Map.Entry<String, List<OrderLine>> each : orders.bySupplier().entrySet()) {
            Map<String, List<OrderLine>> byOrder = new java.util.LinkedHashMap<>();
            each.getValue()
                    .forEach(line -> byOrder.computeIfAbsent(
                                    line.order() == null ? "" : line.order(), key -> new ArrayList<>())
                            .add(line));
            List<Group> groups = new ArrayList<>();
            byOrder.forEach((id, lines) -> groups.add(group(now, id.isEmpty() ? null : id, lines, today)));
            suppliers.add(new Supplier(each.getKey().isBlank() ? "Of nobody yet" : each.getKey(), groups));
        }
        for (OrderLine line : orders.lines()) {
            boolean waits = line.state() == OrderLine.State.TO_ORDER || line.state() == OrderLine.State.IN_NO_ORDER;
            open += waits ? 1 : 0;
            due += waits && line.latest() != null && !line.latest().isAfter(today.plusDays(SOON)) ? 1 : 0;
            late += line.state() == OrderLine.State.LATE
                            || (waits && line.latest() != null && line.latest().isBefore(today))
                    ? 1
                    : 0;
        }
        Costs costs = orders.costs();
        String currency = now.project().about().currency() == null
                ? ""
                : " " + now.project().about().currency();
        BigDecimal left = costs.left();
        return new OrdersPage(
                answer(orders, open, due, late),
                planned(orders)
                        ? "Days of need are those of the accepted plan."
                        : "No plan is accepted yet: everything is wanted on the first day on site.",
                suppliers,
                amounts(costs, currency),
                left == null
                        ? ""
                        : left.signum() < 0
                                ? "It costs " + money(left.negate()) + currency + " more than there is."
                                : money(left) + currency + " of the budget are left.",
                left != null && left.signum() < 0,
                costs.assumed(),
                orders.reuse().stream().map(Reuse::words).toList(),
                today.toString());
    }

    /** Within so many days what is due is said in the title. */
    static final int SOON = 7;

    private static boolean planned(Orders orders) {
        return orders.lines().stream().anyMatch(OrderLine::planned);
    }

    private static String answer(Orders orders, int open, int due, int late) {
        if (orders.lines().isEmpty()) {
            return "Nothing is to be bought or hired yet";
        }
        if (late > 0) {
            return late
                    + (late == 1
                            ? " line comes too late, or should be ordered already"
                            : " lines come too late, or should be ordered already");
        }
        if (open == 0) {
            return "All " + orders.lines().size() + " lines are ordered";
        }
        return open + " of " + orders.lines().size() + " lines are to be ordered"
                + (due == 0 ? "" : ", " + due + " of them within a week");
    }

    private static Group group(Now now, @Nullable String id, List<OrderLine> lines, LocalDate today) {
        Order order = id == null ? null : now.project().orders().get(id);
        LogEntry happened = id == null ? null : now.project().log().get(id);
        LocalDate came = order == null ? null : order.arrived();
        boolean arrived = came != null;
        LocalDate placed = order == null ? null : order.placed();
        boolean late = lines.stream().anyMatch(line -> line.state() == OrderLine.State.LATE);
        LocalDate latest = lines.stream()
                .map(OrderLine::latest)
                .filter(java.util.Objects::nonNull)
                .min(java.util.Comparator.naturalOrder())
                .orElse(null);
        String state;
        String mark = "";
        if (order == null) {
            state = "in no order";
            mark = "fix";
        } else if (came != null) {
            state = "arrived " + Dates.day(came);
            mark = "proven";
        } else if (placed != null) {
            state = "ordered " + Dates.day(placed)
                    + (order.promised() == null ? "" : ", promised for " + Dates.day(order.promised()));
            mark = late ? "late" : "note";
            state = late ? state + ": later than it is needed" : state;
        } else {
            state = "to be ordered";
            mark = latest != null && latest.isBefore(today) ? "stop" : "";
        }
        long delays = lines.stream()
                .flatMap(line -> java.util.stream.Stream.concat(line.tasks().stream(), line.delays().stream()))
                .distinct()
                .count();
        return new Group(
                id,
                state,
                mark,
                arrived || placed != null || latest == null
                        ? ""
                        : "by " + Dates.day(latest) + ", " + Dates.away(latest, today),
                arrived || delays == 0 ? "" : delays + (delays == 1 ? " task waits" : " tasks wait") + " if it is late",
                placed != null,
                arrived,
                happened == null || arrived ? "" : TaskWords.said(happened),
                lines.stream().map(OrdersPage::line).toList());
    }

    private static Line line(OrderLine line) {
        BigDecimal price = line.price();
        List<String> waiting = new ArrayList<>(line.tasks());
        return new Line(
                line.id(),
                line.name(),
                line.type(),
                figure(line.buy()) + " "
                        + (line.buy() == 1 && line.unit().endsWith("s")
                                ? line.unit().substring(0, line.unit().length() - 1)
                                : line.unit()),
                line.spares() > 0 ? figure(line.spares()) + " spare" : "",
                price == null ? "not known" : money(price),
                line.need() == null ? "" : Dates.day(line.need()),
                line.latest() == null ? "" : Dates.day(line.latest()),
                waiting.isEmpty()
                        ? ""
                        : waiting.size()
                                + (waiting.size() == 1 ? " task uses it" : " tasks use it")
                                + (line.delays().isEmpty()
                                        ? ""
                                        : ", " + line.delays().size() + " more wait"),
                line.items());
    }

    private static List<Amount> amounts(Costs costs, String currency) {
        List<Amount> amounts = new ArrayList<>();
        amounts.add(new Amount("Goods", money(costs.goods()), false));
        amounts.add(new Amount("Hires", money(costs.hires()), false));
        amounts.add(new Amount("Freight", money(costs.freight()), false));
        amounts.add(new Amount("For what nobody foresees", money(costs.contingency()), false));
        if (costs.tax() != null) {
            amounts.add(new Amount("Tax", money(costs.tax()), false));
        }
        amounts.add(new Amount(
                "Total" + (costs.tax() == null ? ", without tax" : ""), money(costs.total()) + currency, true));
        if (costs.limit() != null) {
            amounts.add(new Amount("Budget", money(costs.limit()) + currency, false));
        }
        if (!costs.unpriced().isEmpty()) {
            amounts.add(new Amount(
                    costs.unpriced().size() == 1
                            ? "One line has no price and is left out"
                            : costs.unpriced().size() + " lines have no price and are left out",
                    "",
                    false));
        }
        return amounts;
    }

    private static String money(BigDecimal amount) {
        return String.format(Locale.ROOT, "%,.2f", amount).replace(',', '\u202f');
    }

    private static String figure(double count) {
        return count == Math.rint(count) ? Long.toString((long) count) : String.format(Locale.ROOT, "%.1f", count);
    }
}
