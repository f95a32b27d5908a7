package housewright.paper;

import housewright.order.Costs;
import housewright.order.OrderLine;
import housewright.order.Orders;
import housewright.study.Study;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What the job comes to, and what is left. */
final class BudgetSheet extends Titled {
    BudgetSheet() {
        super("budget", "Budget", "Who answers for the money", "What does the job cost, and is there enough?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Orders orders = study.orders();
        if (orders.lines().isEmpty()) {
            return List.of();
        }
        String currency = OrderList.currency(study);
        Costs costs = orders.costs();
        List<Block> blocks = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        add(rows, "Goods", costs.goods());
        add(rows, "Hires", costs.hires());
        add(rows, "Freight", costs.freight());
        add(rows, "Contingency", costs.contingency());
        add(rows, "Tax", costs.tax());
        add(rows, costs.tax() == null ? "Total without tax" : "Total", costs.total());
        add(rows, "What there is", costs.limit());
        add(rows, "Left", costs.left());
        blocks.add(new Block.Table(
                "budget", List.of(Column.text("What", 60), Column.number("Amount" + currency, 20)), rows));
        if (!costs.unpriced().isEmpty()) {
            blocks.add(new Block.Heading("Without a price, and left out of the sums"));
            List<String> names = new ArrayList<>();
            costs.unpriced()
                    .forEach(
                            id -> names.add(orders.find(id).map(OrderLine::name).orElse(id)));
            blocks.add(new Block.Text(String.join("; ", names) + "."));
        }
        if (!costs.assumed().isEmpty()) {
            blocks.add(new Block.Heading("Taken for granted"));
            blocks.add(new Block.Text(String.join("; ", costs.assumed()) + "."));
        }
        blocks.add(new Block.Heading("By supplier"));
        List<Row> suppliers = new ArrayList<>();
        orders.bySupplier().forEach((supplier, lines) -> {
            BigDecimal sum = lines.stream()
                    .map(OrderLine::price)
                    .filter(Objects::nonNull)
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            suppliers.add(Row.of(
                    supplier.isEmpty() ? "none" : supplier,
                    supplier.isEmpty() ? "No supplier chosen" : supplier,
                    String.valueOf(lines.size()),
                    Objects.requireNonNull(OrderList.money(sum))));
        });
        blocks.add(new Block.Table(
                "suppliers",
                List.of(
                        Column.text("Supplier", 50),
                        Column.number("Lines", 10),
                        Column.number("Goods and hires" + currency, 20)),
                suppliers));
        return List.of(Sheet.upright("budget", "What it comes to", recipient(), blocks));
    }

    private static void add(List<Row> rows, String what, @Nullable BigDecimal amount) {
        rows.add(new Row(what, List.of(Cell.of(what), Cell.orBlank(OrderList.money(amount)))));
    }
}
