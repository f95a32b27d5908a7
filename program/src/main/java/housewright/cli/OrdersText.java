package housewright.cli;

import housewright.app.Figures;
import housewright.order.Costs;
import housewright.order.CutDrum;
import housewright.order.CutPlan;
import housewright.order.OrderLine;
import housewright.order.OrderLine.State;
import housewright.order.Orders;
import housewright.order.Reuse;
import housewright.study.Study;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The answer of {@code orders}: what it comes to, what is urgent, then supplier by supplier. */
final class OrdersText {
    private static final int MOST_LINES = 6;
    private static final int MOST_DELAYED = 3;

    private final Page page;
    private final Orders orders;
    private final String name;
    private final @Nullable String currency;
    private final String file;
    private final boolean all;

    /** @param file as the user named it, for the commands that are suggested */
    OrdersText(Page page, Study study, String file, boolean all) {
        this.page = page;
        this.orders = study.orders();
        this.name = study.project().about().name();
        this.currency = study.project().about().currency();
        this.file = file;
        this.all = all;
    }

    /** It costs more than there is, or something comes later than it is needed. */
    static boolean fails(Orders orders) {
        BigDecimal left = orders.costs().left();
        return (left != null && left.signum() < 0)
                || orders.lines().stream().anyMatch(line -> line.state() == State.LATE);
    }

    Page write() {
        if (orders.lines().isEmpty()) {
            return page.wrapped(Ink.STRONG, name + ": nothing to buy.")
                    .wrapped("Nothing in the project is new or hired. Say so with life: new.");
        }
        costs(orders.costs());
        late();
        due();
        orders.bySupplier().forEach(this::supplier);
        cuts();
        reuse();
        assumed();
        if (!all) {
            page.blank().hanging("Every line: ", "housewright orders " + file + " --all");
        }
        return page;
    }

    private String money(BigDecimal amount) {
        return Figures.money(amount, currency);
    }

    private void costs(Costs costs) {
        BigDecimal left = costs.left();
        String within = left == null
                ? "no limit is stated"
                : left.signum() < 0
                        ? money(left.negate()) + " more than there is"
                        : money(left) + " of " + money(Objects.requireNonNull(costs.limit())) + " are left";
        page.wrapped(
                Ink.STRONG,
                name + ": " + money(costs.total()) + (costs.tax() == null ? " without tax; " : "; ") + within + ".");
        List<String> parts = new ArrayList<>(List.of(
                "Goods " + money(costs.goods()),
                "hires " + money(costs.hires()),
                "freight " + money(costs.freight()),
                "contingency " + money(costs.contingency())));
        if (costs.tax() != null) {
            parts.add("tax " + money(costs.tax()));
        }
        page.hanging("  ", String.join(", ", parts) + ".");
        if (!costs.unpriced().isEmpty()) {
            page.hanging(Ink.FIX, "▲ ", "Without a price, and left out: " + String.join(", ", costs.unpriced()) + ".");
        }
    }

    private void late() {
        for (OrderLine line : orders.lines()) {
            if (line.state() == State.LATE) {
                page.hanging(
                        Ink.STOP,
                        "■ ",
                        line.name() + " is promised for " + line.promised() + " and needed on " + line.need() + "."
                                + holdsUp(line));
            }
        }
    }

    private static String holdsUp(OrderLine line) {
        if (line.tasks().isEmpty()) {
            return "";
        }
        List<String> first =
                line.tasks().subList(0, Math.min(MOST_DELAYED, line.tasks().size()));
        int more = line.tasks().size() - first.size() + line.delays().size();
        return " It holds up " + String.join(", ", first) + (more == 0 ? "" : " and " + more + " more") + ".";
    }

    /** What still has to be ordered, by the latest day. */
    private void due() {
        Map<LocalDate, List<OrderLine>> days = new TreeMap<>();
        for (OrderLine line : orders.lines()) {
            boolean open = line.state() == State.TO_ORDER || line.state() == State.IN_NO_ORDER;
            if (open && line.latest() != null && line.buy() > 0) {
                days.computeIfAbsent(line.latest(), each -> new ArrayList<>()).add(line);
            }
        }
        if (days.isEmpty()) {
            return;
        }
        page.blank().wrapped(Ink.STRONG, "Still to order, at the latest on");
        days.forEach((day, lines) -> {
            Set<String> what = new LinkedHashSet<>();
            lines.forEach(line -> what.add(line.order() == null ? line.name() : "the rest of " + line.order()));
            int shown = all ? what.size() : Math.min(MOST_LINES, what.size());
            page.hanging(
                    "  " + day + "  ",
                    String.join(", ", List.copyOf(what).subList(0, shown))
                            + (what.size() > shown ? " and " + (what.size() - shown) + " more" : "") + ".");
        });
    }

    private void supplier(String supplier, List<OrderLine> lines) {
        BigDecimal sum =
                lines.stream().map(OrderLine::price).filter(Objects::nonNull).reduce(BigDecimal.ZERO, BigDecimal::add);
        page.blank()
                .wrapped(
                        Ink.STRONG,
                        (supplier.isEmpty() ? "No supplier chosen" : supplier) + ": " + lines.size()
                                + (lines.size() == 1 ? " line, " : " lines, ") + money(sum));
        int shown = all ? lines.size() : Math.min(MOST_LINES, lines.size());
        lines.subList(0, shown).forEach(line -> {
            if (line.buy() == 0) {
                page.hanging("  ", line.name() + ": no task needs it");
            } else {
                line(line);
            }
        });
        if (lines.size() > shown) {
            page.line("  … and " + (lines.size() - shown) + " more; --all shows them.");
        }
    }

    private void line(OrderLine line) {
        BigDecimal price = line.price();
        String spares = line.spares() == 0
                ? ""
                : " (" + amount(line, line.needed()) + " and " + amount(line, line.spares()) + " spare"
                        + (line.fromStruck() > 0
                                ? ", " + amount(line, line.fromStruck()) + " of it from what goes"
                                : "")
                        + (line.sort() == OrderLine.Sort.CABLE ? ", in whole drums" : "") + ")";
        page.hanging(
                "  ",
                amount(line, line.buy()) + " " + line.name() + spares + ": "
                        + (price == null ? "no price" : money(price)) + ", " + when(line)
                        + (all ? " [" + line.id() + "]" : ""));
        if (all && !line.tasks().isEmpty()) {
            page.hanging(
                    "      ",
                    "For " + String.join(", ", line.tasks()) + "; late, it holds up "
                            + (line.delays().isEmpty()
                                    ? "nothing else"
                                    : line.delays().size() + " more") + ".");
        }
    }

    private static String when(OrderLine line) {
        return switch (line.state()) {
            case ARRIVED -> "arrived";
            case PLACED, LATE -> "ordered" + (line.promised() == null ? "" : ", promised for " + line.promised());
            case TO_ORDER, IN_NO_ORDER ->
                (line.state() == State.IN_NO_ORDER ? "in no order, " : "")
                        + (line.latest() == null ? "latest day not known" : "order by " + line.latest());
        };
    }

    private static String amount(OrderLine line, double count) {
        String number = Figures.trimmed(count, 1);
        return switch (line.unit()) {
            case "m" -> number + "\u00A0m";
            case "days" -> number + (count == 1 ? "\u00A0day" : "\u00A0days");
            default -> number + "\u00A0×";
        };
    }

    private void cuts() {
        if (orders.cuts().isEmpty()) {
            return;
        }
        page.blank().wrapped(Ink.STRONG, "Cut from drums and boxes");
        for (CutPlan plan : orders.cuts()) {
            page.hanging(
                    "  ",
                    plan.type() + ": " + Figures.trimmed(plan.boughtM(), 1) + "\u00A0m for "
                            + Figures.trimmed(plan.wantedM(), 1) + "\u00A0m, "
                            + (plan.best()
                                    ? "and less cannot be bought"
                                    : "at least " + Figures.trimmed(plan.boundM(), 1) + "\u00A0m whatever one does")
                            + ".");
            for (CutDrum drum : plan.drums()) {
                List<String> pieces = new ArrayList<>();
                drum.pieces().forEach(piece -> pieces.add(piece.cable() + " " + Figures.trimmed(piece.metres(), 1)));
                page.hanging(
                        "    " + Figures.trimmed(drum.metres(), 1) + "\u00A0m: ",
                        String.join(", ", pieces) + "; " + Figures.trimmed(drum.left(), 1) + "\u00A0m left");
            }
            if (!plan.tooLong().isEmpty()) {
                page.hanging(
                        Ink.FIX, "    ▲ ", "No drum is long enough for " + String.join(", ", plan.tooLong()) + ".");
            }
        }
    }

    private void reuse() {
        if (orders.reuse().isEmpty()) {
            return;
        }
        page.blank().wrapped(Ink.STRONG, "Could be used instead of buying");
        for (Reuse each : orders.reuse()) {
            page.hanging("  ", each.words() + (each.saves() == null ? "" : " Saves " + money(each.saves()) + "."));
        }
    }

    private void assumed() {
        Set<String> assumed = new LinkedHashSet<>(orders.costs().assumed());
        orders.lines()
                .forEach(line -> line.assumed().stream()
                        .filter(each ->
                                all || each.startsWith("needed on the first day") || each.startsWith("no day of need"))
                        .forEach(assumed::add));
        if (!assumed.isEmpty()) {
            page.blank().hanging("Taken for granted: ", String.join("; ", assumed) + ".");
        }
    }
}
