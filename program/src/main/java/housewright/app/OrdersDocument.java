package housewright.app;

import housewright.model.Doc;
import housewright.order.Costs;
import housewright.order.CutDrum;
import housewright.order.CutPlan;
import housewright.order.OrderLine;
import housewright.order.Orders;
import housewright.order.Reuse;
import housewright.study.Study;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What {@code orders --json} prints. */
public record OrdersDocument(
        @Doc("Name of the project") String project,

        @Doc("Of every amount; null where the project does not say") @Nullable
        String currency,

        @Doc("In the order of the project's orders; last what is in none")
        List<LinePart> lines,

        @Doc("How cable is cut, type by type") List<CutPart> cuts,

        @Doc("What goes and could be used instead of buying; no line takes it for granted")
        List<ReusePart> reuse,

        CostsPart costs) {

    /** One line of what is bought or hired. */
    public record LinePart(
            @Doc("Stable: the order and the type, with the length of a lead")
            String id,

            OrderLine.Sort sort,

            @Doc("The project's order it is in; null where it is in none") @Nullable
            String order,

            @Nullable String supplier,
            OrderLine.State state,
            String type,
            String name,
            @Doc("Equipment and cables it is for") List<String> items,
            @Doc("Pieces, or metres of cable that is cut") double needed,

            @Doc("Beyond those needed, by the rule for its kind")
            double spares,

            @Doc("Of the spares, those that are there already among what goes")
            double fromStruck,

            @Doc("Pieces, or metres of whole drums") double buy,
            @Doc("pieces, m or days") String unit,

            @Doc("null where nobody has said") @Nullable BigDecimal unitPrice,

            @Doc("null where nobody has said") @Nullable BigDecimal price,

            @Doc("Days from order to delivery; null where nobody has said") @Nullable
            Integer leadDays,

            @Doc("Day it is needed; null where nobody knows") @Nullable
            String need,

            @Doc("The day of need is a plan's; else it is the first day on site")
            boolean planned,

            @Doc("Latest day to order it; null where lead or need is not known") @Nullable
            String latest,

            @Nullable String placed,
            @Nullable String promised,
            @Doc("Tasks that use it") List<String> tasks,
            @Doc("Tasks that wait for those, if it is late") List<String> delays,
            @Doc("What was taken for granted") List<String> assumed) {}

    /** How the cable of one type is cut. */
    public record CutPart(
            String type,

            @Doc("Longest first; empty where it is bought by the metre")
            List<DrumPart> drums,

            @Doc("All pieces together, in m") double wantedM,
            @Doc("All drums together, in m") double boughtM,
            @Doc("No way of cutting buys less, in m") double boundM,

            @Doc("Nothing less can be bought; else nobody has shown it")
            boolean best,

            @Doc("Cables that no drum is long enough for") List<String> tooLong) {}

    /** A drum or box. */
    public record DrumPart(
            double metres,
            List<PiecePart> pieces,
            @Doc("What is left of it, in m") double leftM) {}

    /** A piece of it. */
    public record PiecePart(
            @Doc("Id of the cable, or spare") String cable, double metres) {}

    /** Something that goes and could be used. */
    public record ReusePart(
            String struck,
            String type,
            @Doc("The new ones it could stand in for") List<String> instead,

            @Doc("null where a price is not known") @Nullable
            BigDecimal saves,

            String words) {}

    /** What it comes to. */
    public record CostsPart(
            BigDecimal goods,
            BigDecimal hires,
            BigDecimal freight,
            BigDecimal contingency,

            @Doc("null where the project does not say the rate") @Nullable
            BigDecimal tax,

            BigDecimal total,

            @Doc("What there is; null where the project does not say") @Nullable
            BigDecimal limit,

            @Doc("Less than nothing where the limit is broken; null where there is none") @Nullable
            BigDecimal left,

            @Doc("Lines without a price, left out of the sums")
            List<String> unpriced,

            @Doc("What was taken for granted") List<String> assumed) {}

    public static OrdersDocument of(Study study) {
        Orders orders = study.orders();
        return new OrdersDocument(
                study.project().about().name(),
                study.project().about().currency(),
                orders.lines().stream().map(OrdersDocument::line).toList(),
                orders.cuts().stream().map(OrdersDocument::cut).toList(),
                orders.reuse().stream().map(OrdersDocument::reuse).toList(),
                costs(orders.costs()));
    }

    private static LinePart line(OrderLine line) {
        return new LinePart(
                line.id(),
                line.sort(),
                line.order(),
                line.supplier(),
                line.state(),
                line.type(),
                line.name(),
                line.items(),
                Parts.rounded(line.needed()),
                Parts.rounded(line.spares()),
                Parts.rounded(line.fromStruck()),
                Parts.rounded(line.buy()),
                line.unit(),
                line.unitPrice(),
                line.price(),
                line.leadDays(),
                text(line.need()),
                line.planned(),
                text(line.latest()),
                text(line.placed()),
                text(line.promised()),
                line.tasks(),
                line.delays(),
                line.assumed());
    }

    private static @Nullable String text(@Nullable LocalDate day) {
        return day == null ? null : day.toString();
    }

    private static CutPart cut(CutPlan plan) {
        return new CutPart(
                plan.type(),
                plan.drums().stream().map(OrdersDocument::drum).toList(),
                Parts.rounded(plan.wantedM()),
                Parts.rounded(plan.boughtM()),
                Parts.rounded(plan.boundM()),
                plan.best(),
                plan.tooLong());
    }

    private static DrumPart drum(CutDrum drum) {
        return new DrumPart(
                Parts.rounded(drum.metres()),
                drum.pieces().stream()
                        .map(piece -> new PiecePart(piece.cable(), Parts.rounded(piece.metres())))
                        .toList(),
                Parts.rounded(drum.left()));
    }

    private static ReusePart reuse(Reuse reuse) {
        return new ReusePart(reuse.struck(), reuse.type(), reuse.instead(), reuse.saves(), reuse.words());
    }

    private static CostsPart costs(Costs costs) {
        return new CostsPart(
                costs.goods(),
                costs.hires(),
                costs.freight(),
                costs.contingency(),
                costs.tax(),
                costs.total(),
                costs.limit(),
                costs.left(),
                costs.unpriced(),
                costs.assumed());
    }
}
