package housewright.order;

import housewright.cable.Cabling;
import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.cable.Plug;
import housewright.model.Adapter;
import housewright.model.Cable;
import housewright.model.CableType;
import housewright.model.Connector;
import housewright.model.Equipment;
import housewright.model.Fitted;
import housewright.model.Hire;
import housewright.model.Kind;
import housewright.model.Life;
import housewright.model.Model;
import housewright.model.Order;
import housewright.model.Practice;
import housewright.model.Project;
import housewright.model.SpareRule;
import housewright.model.Termination;
import housewright.model.Types;
import housewright.model.Words;
import housewright.order.OrderLine.Sort;
import housewright.order.OrderLine.State;
import housewright.unit.TimeSpan;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Gathers the lines of the bill, order by order. */
final class Bill {
    /** Margin where nobody says: common practice, as in the built-in practice. */
    private static final int MARGIN_DAYS = 3;

    private final Types types;
    private final Project project;
    private final Practice practice;
    private final Cabling target;
    private final Map<String, Need> needs;
    private final @Nullable LocalDate firstDay;
    private final Map<String, Order> orderOf = new LinkedHashMap<>();
    private final Map<String, Wanted> wanted = new LinkedHashMap<>();
    private final Map<String, CutPlan> cuts = new LinkedHashMap<>();

    /** A line in the making. */
    private static final class Wanted {
        final String id;
        final Sort sort;
        final @Nullable Order order;
        final String type;
        final String name;
        final Set<String> items = new LinkedHashSet<>();
        double needed;
        double spares;
        double fromStruck;
        double buy;
        String unit = "pieces";

        @Nullable
        BigDecimal unitPrice;

        @Nullable
        TimeSpan lead;

        final Set<String> assumed = new LinkedHashSet<>();

        Wanted(String id, Sort sort, @Nullable Order order, String type, String name) {
            this.id = id;
            this.sort = sort;
            this.order = order;
            this.type = type;
            this.name = name;
        }
    }

    Bill(Types types, Cabling target, Map<String, Need> needs, @Nullable LocalDate firstDay) {
        this.types = types;
        this.project = types.project();
        this.practice = types.practice();
        this.target = target;
        this.needs = needs;
        this.firstDay = firstDay;
        for (Order order : project.orders().values()) {
            order.items().forEach(item -> orderOf.putIfAbsent(item, order));
        }
    }

    List<OrderLine> lines() {
        project.equipment().values().stream()
                .filter(each -> each.life() == Life.NEW)
                .forEach(this::equipment);
        Map<String, List<Lead>> cut = new LinkedHashMap<>();
        for (Cable cable : project.cables().values()) {
            Lead lead = target.findLead(cable.id()).orElse(null);
            if (cable.life() == Life.NEW && lead != null && CableType.isBought(cable.type())) {
                if (isCut(cable)) {
                    cut.computeIfAbsent(String.valueOf(cable.type()), each -> new ArrayList<>())
                            .add(lead);
                } else {
                    lead(cable, lead);
                }
            }
            if (cable.life() == Life.NEW) {
                cable.adapters().forEach(each -> adapter(each, cable.id()));
            }
        }
        cut.forEach(this::cable);
        connectors();
        fittings();
        labels();
        project.hires().values().forEach(this::hire);
        spares();
        List<String> orders = new ArrayList<>(project.orders().keySet());
        return wanted.values().stream()
                .map(this::line)
                .sorted(Comparator.comparingInt(
                                (OrderLine line) -> line.order() == null ? orders.size() : orders.indexOf(line.order()))
                        .thenComparing(OrderLine::sort))
                .toList();
    }

    /** By type, for those of {@link #lines} that are cut. */
    Map<String, CutPlan> cuts() {
        return cuts;
    }

    private static boolean isCut(Cable cable) {
        return cable.terminated() == Termination.SITE
                || (cable.terminated() == null && !cable.via().isEmpty());
    }

    private Wanted want(Sort sort, String item, String type, String suffix, String name) {
        Order order = orderOf.get(item);
        if (order == null) {
            order = orderOf.get(type);
        }
        Order in = order;
        String id = (in == null ? "open" : in.id()) + "." + type + suffix;
        return wanted.computeIfAbsent(id, each -> new Wanted(each, sort, in, type, name));
    }

    private void equipment(Equipment thing) {
        Model model = types.findModel(thing.model()).orElse(null);
        String type = thing.model() == null ? thing.id() : thing.model();
        Wanted line = want(
                Sort.EQUIPMENT,
                thing.id(),
                type,
                "",
                model == null || model.name() == null ? Words.said(type) : model.name());
        line.items.add(thing.id());
        line.needed++;
        line.unitPrice = model == null ? null : model.price();
        line.lead = model == null ? null : model.lead();
        if (model == null) {
            line.assumed.add("one piece of a type that is not yet chosen");
        }
    }

    private void lead(Cable cable, Lead lead) {
        CableType type = lead.type();
        String id = cable.type() == null ? "cable" : cable.type();
        boolean known = lead.span() != null && lead.span().metres() > 0;
        String length = lead.span() == null || !known
                ? "of unknown length"
                : Figures.metres(lead.span().metres());
        Set<String> connectors = new LinkedHashSet<>();
        cable.ends().forEach(end -> connectors.add(end.word()));
        String ends = connectors.isEmpty() ? "" : " (" + String.join(" to ", connectors) + ")";
        Wanted line = want(
                Sort.LEAD,
                cable.id(),
                id,
                "-" + length.replace(" ", "") + (connectors.isEmpty() ? "" : "-" + String.join("-", connectors)),
                (type == null || type.name() == null ? Words.said(id) : type.name()) + ", " + length + ends);
        line.items.add(cable.id());
        line.needed++;
        line.lead = type == null ? null : type.lead();
        if (lead.span() == null || !known) {
            line.assumed.add("nobody has said how long it is: measure before it is ordered");
        } else if (type != null && (type.perMetre() != null || type.perPair() != null)) {
            BigDecimal cut = type.perMetre() == null
                    ? BigDecimal.ZERO
                    : type.perMetre().multiply(BigDecimal.valueOf(lead.span().metres()));
            line.unitPrice = cut.add(Objects.requireNonNullElse(type.perPair(), BigDecimal.ZERO));
        }
    }

    private void cable(String id, List<Lead> leads) {
        CableType type = leads.getFirst().type();
        Wanted line = want(
                Sort.CABLE,
                leads.getFirst().id(),
                id,
                "-drum",
                (type == null || type.name() == null ? Words.said(id) : type.name()) + ", off the drum");
        line.unit = "m";
        line.unitPrice = type == null ? null : type.perMetre();
        line.lead = type == null ? null : type.lead();
        List<CutDrum.CutPiece> pieces = new ArrayList<>();
        for (Lead lead : leads) {
            line.items.add(lead.id());
            if (lead.span() == null || lead.span().metres() <= 0) {
                line.assumed.add("nothing for " + lead.id() + ", whose length nobody knows");
            } else {
                double metres = upToDecimetre(lead.span().metres());
                pieces.add(new CutDrum.CutPiece(lead.id(), metres));
                line.needed += metres;
            }
        }
        line.needed = upToDecimetre(line.needed);
        SpareRule rule = practice.spares().get("cable");
        if (rule != null && rule.share() != null && line.needed > 0) {
            double spare = Math.ceil(line.needed * rule.share().fraction() - 1e-9);
            if (spare > 0) {
                line.spares = spare;
                pieces.add(new CutDrum.CutPiece("spare", spare));
            }
        }
        if (pieces.isEmpty()) {
            return;
        }
        CutPlan plan = Cutting.plan(id, pieces, practice.findDrum(id).orElse(null));
        cuts.put(id, plan);
        line.buy = plan.boughtM();
        if (plan.drums().isEmpty()) {
            line.assumed.add("sold by the metre: nobody has said what lengths it is sold in");
        }
        if (!plan.tooLong().isEmpty()) {
            line.assumed.add("a length of its own for " + String.join(", ", plan.tooLong())
                    + ", for which no drum is long enough");
        }
    }

    private static double upToDecimetre(double metres) {
        return Math.ceil(metres * 10 - 1e-6) / 10;
    }

    private void adapter(String id, String cable) {
        Adapter adapter = types.findAdapter(id).orElse(null);
        Wanted line = want(
                Sort.ADAPTER, id, id, "", adapter == null || adapter.name() == null ? Words.said(id) : adapter.name());
        line.items.add(cable);
        line.needed++;
        line.unitPrice = adapter == null ? null : adapter.price();
    }

    /** Plugs for the ends that are put on here: of what is cut, and of what stays and ends elsewhere. */
    private void connectors() {
        for (Cable cable : project.cables().values()) {
            Lead lead = target.findLead(cable.id()).orElse(null);
            boolean shortened = cable.life().today()
                    && cable.life().target()
                    && cable.terminated() == Termination.SITE
                    && !cable.today().via().equals(cable.via());
            if (lead == null
                    || !CableType.isBought(cable.type())
                    || !(shortened || (cable.life() == Life.NEW && isCut(cable)))) {
                continue;
            }
            Set<String> before = new LinkedHashSet<>();
            if (shortened) {
                for (var way : cable.today().ways()) {
                    way.pairs()
                            .forEach(pair -> before.addAll(
                                    List.of(pair.from().thing(), pair.to().thing())));
                }
            }
            Set<String> shared = new LinkedHashSet<>();
            for (Joint joint : lead.joints()) {
                for (Plug plug : joint.plugs()) {
                    boolean onceOnly = plug.connector() == Connector.DB25
                            && !shared.add(plug.at().thing());
                    if (!before.contains(plug.at().thing()) && !onceOnly) {
                        connector(plug, cable, lead.type());
                    }
                }
            }
        }
    }

    private void connector(Plug plug, Cable cable, @Nullable CableType type) {
        Connector connector = plug.connector();
        boolean back = plug.isPassive() && plug.at().spot().name().contains("rear");
        if (connector == null
                || connector == Connector.TERMINALS
                || connector == Connector.NONE
                || (back && connector == Connector.RJ45)) { // punched into the panel's own socket
            return;
        }
        boolean ofItsCable =
                connector == Connector.BNC || connector == Connector.RJ45; // they fit one cable and no other
        String name = connector.word() + " to put on"
                + (ofItsCable ? ", for " + (type == null || type.name() == null ? "its cable" : type.name()) : "");
        String id = connector.word() + (ofItsCable ? "-" + cable.type() : "");
        Order order = orderOf.getOrDefault(cable.id(), orderOf.get(String.valueOf(cable.type())));
        Wanted line = wanted.computeIfAbsent(
                (order == null ? "open" : order.id()) + "." + id,
                each -> new Wanted(each, Sort.CONNECTOR, order, id, name));
        line.items.add(cable.id());
        line.needed++;
        if (type != null && type.perPair() != null) {
            int ways = type.ways() == null || connector == Connector.DB25 ? 1 : type.ways();
            BigDecimal price = type.perPair().divide(BigDecimal.valueOf(2L * ways), 2, RoundingMode.HALF_UP);
            if (line.unitPrice == null || price.compareTo(line.unitPrice) > 0) {
                line.unitPrice = price;
            }
            line.assumed.add("its share of the price of a cable's ends made up, which has the work in it");
        }
        line.lead = line.lead != null ? line.lead : type == null ? null : type.lead();
    }

    /** Terminators and safety attachments, which are nobody's own entry in the project. */
    private void fittings() {
        Model terminator = types.findModel("dmx-terminator").orElse(null);
        for (Equipment thing : project.equipment().values()) {
            if (!thing.life().target()) {
                continue;
            }
            boolean comes = thing.life() == Life.NEW;
            if (thing.terminator() == Fitted.FITTED && (comes || thing.today().terminator() != Fitted.FITTED)) {
                Wanted line = want(
                        Sort.TERMINATOR,
                        "dmx-terminator",
                        "dmx-terminator",
                        "",
                        "Terminator for the end of a DMX line");
                line.items.add(thing.id());
                line.needed++;
                line.unitPrice = terminator == null ? null : terminator.price();
            }
            boolean elsewhere = !Objects.equals(thing.today().at(), thing.at());
            if (thing.secondary() == Fitted.FITTED
                    && (comes || elsewhere || thing.today().secondary() != Fitted.FITTED)) {
                Wanted line = want(
                        Sort.SECONDARY,
                        "secondary",
                        "secondary",
                        "",
                        "Safety attachment, rated for what it holds, with its shackle");
                line.items.add(thing.id());
                line.needed++;
                line.assumed.add(
                        "one each, rated for the thing's weight by whoever sells it; those at hand are not counted");
            }
        }
    }

    private void labels() {
        Wanted line = null;
        for (Cable cable : project.cables().values()) {
            boolean replugged = cable.life().today()
                    && cable.life().target()
                    && (!Objects.equals(cable.today().from(), cable.from())
                            || !Objects.equals(cable.today().to(), cable.to())
                            || !cable.today().ways().equals(cable.ways()));
            if (CableType.isBought(cable.type()) && (cable.life() == Life.NEW || replugged)) {
                line = want(Sort.LABEL, "label", "label", "", "Cable label that lasts, printed");
                line.items.add(cable.id());
                line.needed += 2;
            }
        }
    }

    private void hire(Hire hire) {
        Wanted line = want(
                Sort.HIRE,
                hire.id(),
                hire.id(),
                "",
                hire.kind() == null ? Words.said(hire.id()) : Words.said(hire.kind()));
        line.items.add(hire.id());
        boolean used = !needs.getOrDefault(hire.id(), Need.NONE).tasks().isEmpty();
        line.needed = used ? 1 : 0;
        line.unit = "days";
        line.unitPrice = hire.perDay();
        line.assumed.add(used ? "one day: the plan says how many" : "that it is not hired: no task needs it");
    }

    // ---- spares ----

    /** By the rule for its kind, on all pieces of a type together; a struck one of the same type is a spare already. */
    private void spares() {
        Map<String, List<Wanted>> byType = new LinkedHashMap<>();
        for (Wanted line : wanted.values()) {
            if (line.sort != Sort.CABLE && line.sort != Sort.HIRE) {
                String key = line.sort == Sort.CONNECTOR ? line.id : line.sort + " " + line.type;
                byType.computeIfAbsent(key, each -> new ArrayList<>()).add(line);
            }
        }
        byType.values().forEach(lines -> {
            SpareRule rule = practice.spares().get(kind(lines.getFirst()));
            int needed = (int) lines.stream().mapToDouble(line -> line.needed).sum();
            int spares = rule == null ? 0 : rule.spares(needed);
            Wanted with = lines.getLast();
            for (Wanted line : lines) {
                if (line.unitPrice != null
                        && (with.unitPrice == null || line.unitPrice.compareTo(with.unitPrice) > 0)) {
                    with = line; // the longest lead stands in for any
                }
            }
            with.spares = spares;
            with.fromStruck = with.sort == Sort.EQUIPMENT ? Math.min(spares, struck(with.type)) : 0;
            if (with.fromStruck > 0) {
                with.assumed.add("what goes and is of the same type is kept as a spare, where it works");
            }
        });
        for (Wanted line : wanted.values()) {
            if (line.sort != Sort.CABLE) {
                line.buy = line.needed + line.spares - line.fromStruck;
            }
        }
    }

    private int struck(String type) {
        return (int) project.equipment().values().stream()
                .filter(each ->
                        each.life() == Life.STRIKE && type.equals(each.today().model()))
                .count();
    }

    private String kind(Wanted line) {
        return switch (line.sort) {
            case EQUIPMENT -> {
                Kind kind = types.findModel(line.type).map(Model::kind).orElse(Kind.OTHER);
                yield kind.word();
            }
            case LEAD -> "lead";
            case CABLE -> "cable";
            case CONNECTOR -> "connector";
            case ADAPTER -> "adapter";
            case TERMINATOR -> "terminator";
            case SECONDARY -> "secondary";
            case LABEL -> "label";
            case HIRE -> "hire";
        };
    }

    // ---- when ----

    /** The first day on site; nothing hired is wanted before it can be had. Null where nobody knows. */
    private @Nullable LocalDate earliest(Wanted line) {
        Hire hire = line.sort == Sort.HIRE
                ? project.hires().get(line.items.iterator().next())
                : null;
        LocalDate offered =
                hire == null || hire.offered().isEmpty() ? null : hire.offered().getFirst();
        return firstDay != null && offered != null && offered.isAfter(firstDay) ? offered : firstDay;
    }

    private OrderLine line(Wanted line) {
        Order order = line.order;
        LocalDate need = null;
        Set<String> tasks = new LinkedHashSet<>();
        Set<String> delays = new LinkedHashSet<>();
        for (String item : line.items) {
            Need each = needs.getOrDefault(item, Need.NONE);
            tasks.addAll(each.tasks());
            delays.addAll(each.delays());
            LocalDate day = each.day();
            if (day != null && (need == null || day.isBefore(need))) {
                need = day;
            }
        }
        delays.removeAll(tasks);
        boolean planned = need != null;
        need = need == null ? earliest(line) : need;
        TimeSpan lead = order != null && order.lead() != null ? order.lead() : line.lead;
        Integer days = lead == null ? null : (int) Math.ceil(lead.seconds() / 86_400 - 1e-9);
        LocalDate latest = need == null || days == null ? null : need.minusDays(days + margin());
        if (days == null && line.sort != Sort.HIRE) {
            line.assumed.add("no lead: nobody has said how long it takes to come");
        }
        if (need == null) {
            line.assumed.add("no day of need: there is no plan, and nobody is free for a day on site");
        } else if (!planned) {
            line.assumed.add("needed on the first day on site: there is no plan yet");
        }
        return new OrderLine(
                line.id,
                line.sort,
                order == null ? null : order.id(),
                order == null ? null : order.supplier(),
                state(order, need),
                line.type,
                line.name,
                List.copyOf(line.items),
                line.needed,
                line.spares,
                line.fromStruck,
                line.buy,
                line.unit,
                line.unitPrice,
                days,
                need,
                planned,
                latest,
                order == null ? null : order.placed(),
                order == null ? null : order.promised(),
                List.copyOf(tasks),
                List.copyOf(delays),
                List.copyOf(line.assumed));
    }

    private int margin() {
        TimeSpan margin = practice.margin();
        return margin == null ? MARGIN_DAYS : (int) Math.ceil(margin.seconds() / 86_400 - 1e-9);
    }

    private static State state(@Nullable Order order, @Nullable LocalDate need) {
        if (order == null) {
            return State.IN_NO_ORDER;
        }
        if (order.arrived() != null) {
            return State.ARRIVED;
        }
        if (order.promised() != null && need != null && order.promised().isAfter(need)) {
            return State.LATE;
        }
        return order.placed() != null ? State.PLACED : State.TO_ORDER;
    }
}
