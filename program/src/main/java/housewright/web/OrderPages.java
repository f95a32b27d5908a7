package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.Outcome;
import housewright.app.StoreException;
import housewright.file.EntityCells;
import housewright.model.Order;
import housewright.model.Remarks;
import housewright.model.change.Change;
import housewright.model.change.Section;
import housewright.order.OrderLine;
import housewright.web.page.OrdersPage;
import housewright.web.view.JteordersGenerated;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is bought, of whom, and by when; ordered and arrived are marked here. */
final class OrderPages {
    private static final String AT = "/p/{project}/orders";

    private OrderPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page(AT, Need.LOOK, OrderPages::show),
                Route.change(AT, Need.LEAD, OrderPages::add),
                Route.change(AT + "/{order}/placed", Need.LEAD, visit -> mark(visit, "placed", "Ordered ")),
                Route.change(AT + "/{order}/arrived", Need.SITE, visit -> mark(visit, "arrived", "Arrived: ")));
    }

    private static String home(OpenProject job) {
        return Visit.home(job) + "/orders";
    }

    private static void show(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        OrdersPage page = OrdersPage.of(now, visit.today());
        visit.show(
                job,
                now,
                Page.ORDERS,
                "Orders",
                (output, frame) -> JteordersGenerated.render(output, null, frame, page));
    }

    private static LocalDate day(Visit visit, String name) {
        String text = visit.field(name);
        try {
            return text.isEmpty() ? visit.today() : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw Refused.wrong("The day must be written like 2027-03-21, and is \"" + text + "\".");
        }
    }

    /** Puts a day into an order, and with the day it was placed when it is promised, where that was said; an empty one takes it away. */
    private static void mark(Visit visit, String what, String says) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        String id = visit.ctx.pathParam("order");
        Order order = now.project().orders().get(id);
        if (order == null) {
            throw Refused.notFound("There is no order " + id + " in this project.");
        }
        boolean back = !visit.field("take-back").isEmpty();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put(what, back ? "" : day(visit, "day").toString());
        if (!back && what.equals("placed") && !visit.field("promised").isEmpty()) {
            cells.put("promised", day(visit, "promised").toString());
        }
        if (!(EntityCells.read(Section.ORDERS, id, order, cells) instanceof EntityCells.Reading.Read read)) {
            throw Refused.wrong("That is no day.");
        }
        String said = back ? "Took back when " + id + " was " + what : says + id;
        Outcome outcome = job.edit(
                visit.author(),
                visit.number("revision"),
                said,
                List.of(new Change.Put(Section.ORDERS, id, read.entity())));
        visit.goBack(home(job) + "#" + id, Said.of(outcome, said));
    }

    /** An order of the lines chosen among those that are in none. */
    private static void add(Visit visit) throws StoreException {
        OpenProject job = visit.job();
        Now now = job.now();
        List<String> chosen = visit.ctx.formParams("line");
        Set<String> items = new LinkedHashSet<>();
        for (OrderLine line : now.study().orders().lines()) {
            if (line.order() == null && chosen.contains(line.id())) {
                items.addAll(line.items().isEmpty() ? List.of(line.type()) : line.items());
            }
        }
        String supplier = visit.field("supplier");
        if (items.isEmpty() || supplier.isEmpty()) {
            visit.goBack(
                    home(job), new Session.Notice("An order wants a supplier, and one line at least.", true, false));
            return;
        }
        String id = freeId(now);
        Order order = new Order(id, List.copyOf(items), supplier, null, null, null, null, null, Remarks.NONE);
        Outcome outcome = job.edit(
                visit.author(),
                visit.number("revision"),
                "Put " + items.size() + " into the order " + id,
                List.of(new Change.Put(Section.ORDERS, id, order)));
        visit.goBack(home(job), Said.of(outcome, "Put " + items.size() + " into the order " + id));
    }

    private static String freeId(Now now) {
        for (int n = now.project().orders().size() + 1; ; n++) {
            if (!now.project().orders().containsKey("o" + n)) {
                return "o" + n;
            }
        }
    }
}
