package housewright.paper;

import housewright.model.Words;
import housewright.order.CutDrum;
import housewright.order.CutPlan;
import housewright.order.OrderLine;
import housewright.order.Orders;
import housewright.study.Study;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is bought or hired, a sheet for each supplier. */
final class OrderList extends Titled {
    OrderList() {
        super(
                "order-list",
                "Order list",
                "Who orders, and each supplier",
                "What is bought of whom, how many, by when, and at what price?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Orders orders = study.orders();
        String currency = currency(study);
        List<Sheet> sheets = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Map.Entry<String, List<OrderLine>> each : orders.bySupplier().entrySet()) {
            List<Row> rows = new ArrayList<>();
            each.getValue().stream().filter(line -> line.buy() > 0).forEach(line -> rows.add(row(line)));
            if (!rows.isEmpty()) {
                String supplier = each.getKey();
                sheets.add(Sheet.lying(
                        id(supplier, ids),
                        supplier.isEmpty() ? "No supplier chosen" : supplier,
                        recipient(),
                        List.of(lines(rows, currency))));
            }
        }
        if (!orders.cuts().isEmpty()) {
            sheets.add(cuts(orders.cuts(), Say.of(study.project())));
        }
        return sheets;
    }

    static String currency(Study study) {
        String currency = study.project().about().currency();
        return currency == null ? "" : ", " + currency;
    }

    private static String id(String supplier, Set<String> taken) {
        String word = supplier.isEmpty()
                ? "none"
                : supplier.toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9]+", "-")
                        .replaceAll("^-|-$", "");
        String id = "order-list-" + (word.isEmpty() ? "supplier" : word);
        for (int n = 2; !taken.add(id); n++) {
            id = "order-list-" + word + "-" + n;
        }
        return id;
    }

    private static Block.Table lines(List<Row> rows, String currency) {
        return new Block.Table(
                "orders",
                List.of(
                        Column.text("What", 30),
                        Column.number("How many", 8),
                        Column.text("Unit", 7),
                        Column.number("Of it spare", 8),
                        Column.text("For", 25),
                        Column.number("Each" + currency, 9),
                        Column.number("Together" + currency, 10),
                        Column.text("Order by", 11),
                        Column.text("Needed", 11),
                        Column.text("State", 15),
                        Column.text("Here", 6)),
                rows);
    }

    private static Row row(OrderLine line) {
        return new Row(
                line.id(),
                List.of(
                        Cell.of(line.name()),
                        Cell.of(Say.number(line.buy(), 1)),
                        Cell.of(line.unit()),
                        line.spares() == 0 ? Cell.NONE : Cell.of(Say.number(line.spares(), 1)),
                        Cell.of(String.join(", ", line.items())),
                        Cell.orBlank(money(line.unitPrice())),
                        Cell.orBlank(money(line.price())),
                        Cell.orBlank(line.latest()),
                        Cell.orBlank(line.need()),
                        Cell.of(state(line)),
                        line.state() == OrderLine.State.ARRIVED ? Cell.of("yes") : Cell.BOX));
    }

    static @Nullable String money(@Nullable BigDecimal amount) {
        return amount == null ? null : String.format(Locale.ROOT, "%.2f", amount);
    }

    private static String state(OrderLine line) {
        String promised = line.promised() == null ? "" : ", promised for " + line.promised();
        return switch (line.state()) {
            case IN_NO_ORDER -> "in no order";
            case TO_ORDER -> "to order";
            case PLACED -> "ordered" + promised;
            case LATE -> "late" + promised;
            case ARRIVED -> "arrived";
        };
    }

    /** How the drums are cut. */
    private Sheet cuts(List<CutPlan> plans, Say say) {
        List<Row> rows = new ArrayList<>();
        for (CutPlan plan : plans) {
            int number = 0;
            for (CutDrum drum : plan.drums()) {
                number++;
                List<String> pieces = new ArrayList<>();
                drum.pieces().forEach(piece -> pieces.add(piece.cable() + " " + say.length(piece.metres())));
                rows.add(Row.of(
                        plan.type() + " " + number,
                        plan.type(),
                        String.valueOf(number),
                        say.length(drum.metres()),
                        String.join(", ", pieces),
                        say.length(drum.left())));
            }
            for (String cable : plan.tooLong()) {
                rows.add(Row.of(
                        plan.type() + " too long " + cable,
                        plan.type(),
                        "",
                        "",
                        Words.said(cable) + ": longer than any drum",
                        ""));
            }
        }
        return Sheet.upright(
                "order-list-cuts",
                "Cable cut from its drums",
                recipient(),
                List.of(new Block.Table(
                        "cuts",
                        List.of(
                                Column.text("Type", 18),
                                Column.number("Drum", 7),
                                Column.number(say.lengthHead("Holds"), 9),
                                Column.text("Cut into", 56),
                                Column.number(say.lengthHead("Left"), 9)),
                        rows)));
    }
}
