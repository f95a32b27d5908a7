package housewright.order;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Project;
import housewright.order.OrderLine.Sort;
import housewright.order.OrderLine.State;
import housewright.study.Study;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is bought, on jobs of a few lines and on the demo. */
class OrdersTest {
    private static final BuiltInLibrary LIBRARY = BuiltInLibrary.of(1);

    private static final String TYPES = """
            models:
              box:  {name: A box, kind: converter, price: 100, lead: 10 d}
              free: {name: A thing nobody has priced, kind: other}
            cable-types:
              wire: {name: Wire, carries: [analog-audio], ends: [XLR-3F, XLR-3M], per-metre: 2, per-pair: 8, lead: 5 d}
            """;

    private static Project read(String name, String text) {
        return switch (ProjectReader.read(name, text.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> loaded.project();
            case ReadResult.Refused refused -> throw new AssertionError(refused.errors());
        };
    }

    private static Study study(String sections) {
        return Study.of(
                read("job.yaml", "housewright: 1\nproject: {name: A job, currency: EUR}\n" + TYPES + sections),
                LIBRARY);
    }

    private static OrderLine line(Orders orders, String id) {
        return orders.find(id)
                .orElseThrow(() -> new AssertionError(id + " is not among "
                        + orders.lines().stream().map(OrderLine::id).toList()));
    }

    @Test
    void whatIsThereIsNotBought() {
        Orders orders = study("equipment: {a: {model: box}, b: {model: box, life: strike}}\n")
                .orders();
        assertThat(orders.lines()).isEmpty();
        assertThat(orders.costs().total()).isEqualByComparingTo("0");
    }

    @Test
    void sparesFollowTheRuleAndWhatGoesIsUsedFirst() {
        String two = "equipment: {a: {model: box, life: new}, b: {model: box, life: new}%s}\n";
        Orders plain = study(two.formatted("")).orders(); // a converter: one spare from two on
        assertThat(line(plain, "open.box").needed()).isEqualTo(2);
        assertThat(line(plain, "open.box").spares()).isEqualTo(1);
        assertThat(line(plain, "open.box").buy()).isEqualTo(3);
        assertThat(line(plain, "open.box").price()).isEqualByComparingTo("300");
        Orders struck =
                study(two.formatted(", old: {model: box, life: strike}")).orders();
        assertThat(line(struck, "open.box").fromStruck()).isEqualTo(1);
        assertThat(line(struck, "open.box").buy()).isEqualTo(2);
        assertThat(struck.reuse()).singleElement().satisfies(reuse -> {
            assertThat(reuse.struck()).isEqualTo("old");
            assertThat(reuse.instead()).containsExactly("a");
            assertThat(reuse.saves()).isEqualByComparingTo("100");
        });
        Orders own = study(two.formatted("") + "practice: {spares: {converter: {share: 100 %, source: ours}}}\n")
                .orders();
        assertThat(line(own, "open.box").spares()).isEqualTo(2);
    }

    @Test
    void theLatestDayIsTheNeedLessTheLeadLessTheMargin() {
        String sections = """
                equipment: {a: {model: box, life: new}}
                people: {ann: {skills: [], free: [{days: mon-sun, from: "09:00", to: "17:00", between: [2027-03-15, 2027-03-20]},
                         {days: mon-sun, from: "19:00", to: "21:00", between: [2027-02-01, 2027-03-20]}]}}
                """;
        Study study = study(sections);
        OrderLine first = line(study.orders(), "open.box");
        assertThat(first.need()).isEqualTo("2027-03-15"); // an evening is no day on site
        assertThat(first.planned()).isFalse();
        assertThat(first.latest()).isEqualTo("2027-03-02"); // 10 days of lead and 3 of margin
        assertThat(first.assumed()).anyMatch(each -> each.contains("no plan yet"));
        assertThat(first.tasks()).containsExactly("mount-a");
        OrderLine planned = line(study.orders(Map.of("mount-a", LocalDate.parse("2027-03-18"))), "open.box");
        assertThat(planned.need()).isEqualTo("2027-03-18");
        assertThat(planned.planned()).isTrue();
        assertThat(planned.latest()).isEqualTo("2027-03-05");
        OrderLine nobody =
                line(study("equipment: {a: {model: box, life: new}}\n").orders(), "open.box");
        assertThat(nobody.latest()).isNull();
        assertThat(nobody.assumed()).anyMatch(each -> each.startsWith("no day of need"));
    }

    @Test
    void anOrderHasItsOwnLeadAndMayBeLate() {
        String sections = """
                equipment: {a: {model: box, life: new}, b: {model: free, life: new}}
                people: {ann: {skills: [], free: [{days: mon-sun, from: "09:00", to: "17:00", between: [2027-03-15, 2027-03-20]}]}}
                orders: {one: {for: [a], supplier: Supplier A, placed: 2027-03-01, lead: 21 d, promised: %s}}
                """;
        assertThat(line(study(sections.formatted("2027-03-22")).orders(), "one.box")
                        .state())
                .isEqualTo(State.LATE);
        OrderLine intime = line(study(sections.formatted("2027-03-10")).orders(), "one.box");
        assertThat(intime.state()).isEqualTo(State.PLACED);
        assertThat(intime.leadDays()).isEqualTo(21);
        assertThat(line(study(sections.formatted("2027-03-10")).orders(), "open.free")
                        .state())
                .isEqualTo(State.IN_NO_ORDER);
    }

    @Test
    void whatALateLineHoldsUpIsDownstreamOfItsTasks() throws IOException {
        Study study = Study.of(demo(), LIBRARY);
        for (OrderLine line : study.orders().lines()) {
            assertThat(Collections.disjoint(line.delays(), line.tasks())).isTrue();
            assertThat(Set.copyOf(line.delays()))
                    .isEqualTo(Set.copyOf(study.work().downstream(line.tasks())));
        }
        assertThat(line(study.orders(), "sound.desk-digital-32-stage-a").delays())
                .contains("load-desk-file", "prove-lectern-to-hall", "rehearse-first-sunday");
    }

    @Test
    void cableIsCutFromDrumsAndLeadsAreMadeUp() {
        Orders orders = study("""
                equipment: {a: {model: free}, b: {model: free}}
                venue:
                  places: {p: {}, q: {}}
                  pathways: {w: {from: p, to: q, length: 36 m}}
                cables:
                  C1: {type: wire, via: [w], life: new, terminated: site}
                  C2: {type: wire, via: [w], life: new, terminated: site}
                  C3: {type: wire, length: 3 m, life: new, terminated: bought}
                  C4: {type: wire, length: 3 m, life: new, terminated: bought}
                  C5: {type: wire, length: 130 m, life: new, terminated: site}
                practice:
                  drums: {w: {for: [wire], lengths: [50 m, 100 m], source: the supplier}}
                  spares: {cable: {source: ours}, lead: {least: 1, source: ours}}
                """).orders();
        CutPlan plan = orders.cuts().getFirst();
        assertThat(plan.tooLong()).containsExactly("C5");
        assertThat(plan.wantedM()).isEqualTo(210);
        assertThat(plan.boughtM()).isEqualTo(230); // 2 × 40 m from one of 100 m, 130 m by themselves
        assertThat(plan.best()).isTrue();
        assertThat(plan.drums()).singleElement().satisfies(drum -> {
            assertThat(drum.metres()).isEqualTo(100);
            assertThat(drum.left()).isEqualTo(20);
        });
        OrderLine lead = line(orders, "open.wire-3m");
        assertThat(lead.buy()).isEqualTo(3);
        assertThat(lead.unitPrice()).isEqualByComparingTo("14"); // 3 m at 2 and the ends at 8
        assertThat(lead.sort()).isEqualTo(Sort.LEAD);
    }

    @Test
    void theSumIsGoodsFreightContingencyAndTaxAgainstTheLimit() {
        String sections = """
                equipment: {a: {model: box, life: new}, b: {model: free, life: new}}
                budget: {limit: 130, tax: 20 %}
                practice: {freight: 5 %, contingency: 10 %}
                """;
        Costs costs = study(sections).orders().costs();
        assertThat(costs.goods()).isEqualByComparingTo("100");
        assertThat(costs.freight()).isEqualByComparingTo("5");
        assertThat(costs.contingency()).isEqualByComparingTo("10");
        assertThat(costs.tax()).isEqualByComparingTo("23");
        assertThat(costs.total()).isEqualByComparingTo("138");
        assertThat(costs.left()).isEqualByComparingTo("-8");
        assertThat(costs.unpriced()).containsExactly("open.free");
        Costs untaxed = study(sections.replace("budget: {limit: 130, tax: 20 %}\n", ""))
                .orders()
                .costs();
        assertThat(untaxed.tax()).isNull();
        assertThat(untaxed.left()).isNull();
        assertThat(untaxed.total()).isEqualByComparingTo("115");
        assertThat(untaxed.assumed()).anyMatch(each -> each.startsWith("no tax"));
        Costs stated = study(sections + "orders: {one: {for: [a], freight: 40}}\n")
                .orders()
                .costs();
        assertThat(stated.freight()).isEqualByComparingTo("40");
    }

    /** Every new thing of the demo is on one line and on no other, and the lines add up to the sum. */
    @Test
    void theDemosBillIsWholeAndAddsUp() throws IOException {
        Project demo = demo();
        Orders orders = Study.of(demo, LIBRARY).orders();
        Map<String, Integer> times = new LinkedHashMap<>();
        BigDecimal sum = BigDecimal.ZERO;
        for (OrderLine line : orders.lines()) {
            if (line.sort() == Sort.EQUIPMENT || line.sort() == Sort.LEAD || line.sort() == Sort.CABLE) {
                line.items().forEach(item -> times.merge(item, 1, Integer::sum));
            }
            if (line.sort() != Sort.HIRE && line.price() != null) {
                sum = sum.add(line.price());
            }
        }
        List<String> wanted = new java.util.ArrayList<>();
        demo.equipment().values().stream()
                .filter(each -> each.life() == housewright.model.Life.NEW)
                .forEach(each -> wanted.add(each.id()));
        demo.cables().values().stream()
                .filter(each -> each.life() == housewright.model.Life.NEW)
                .filter(each -> housewright.model.CableType.isBought(each.type()))
                .forEach(each -> wanted.add(each.id()));
        assertThat(times.keySet()).containsExactlyInAnyOrderElementsOf(wanted);
        assertThat(times.values()).containsOnly(1);
        assertThat(orders.costs().goods()).isEqualByComparingTo(sum);
        assertThat(orders.costs().left()).isPositive();
        for (CutPlan plan : orders.cuts()) {
            assertThat(plan.boughtM()).isGreaterThanOrEqualTo(plan.boundM()).isGreaterThanOrEqualTo(plan.wantedM());
            assertThat(plan.drums().stream().mapToDouble(CutDrum::left)).allMatch(left -> left >= 0);
        }
        assertThat(Study.of(demo(), LIBRARY).orders().lines()).isEqualTo(orders.lines());
    }

    private static Project demo() throws IOException {
        return read("demo.yaml", Files.readString(Path.of("src/main/resources/housewright/demo/carrowfenn-hall.yaml")));
    }
}
