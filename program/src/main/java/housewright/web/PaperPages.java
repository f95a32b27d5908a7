package housewright.web;

import housewright.app.Now;
import housewright.app.OpenProject;
import housewright.app.ProjectStore.Printed;
import housewright.app.ProjectStore.Stationery;
import housewright.app.StoreException;
import housewright.app.paper.Earlier;
import housewright.app.paper.Inventory;
import housewright.app.paper.Issue;
import housewright.paper.LabelStock;
import housewright.paper.PageSize;
import housewright.paper.Paper;
import housewright.paper.Papers;
import housewright.study.Study;
import housewright.web.page.PapersPage;
import housewright.web.view.JtepaperlistGenerated;
import housewright.web.view.JtepapersGenerated;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The papers: opened, downloaded, printed; which of the printed ones are out of date. */
final class PaperPages {
    private static final String AT = "/p/{project}/papers";
    private static final String ONE = AT + "/{paper}";

    /** A paper needs no script and nothing from elsewhere; widths of columns and places of labels are styles. */
    private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'; form-action 'none';"
            + " frame-ancestors 'none'; base-uri 'none'";

    private static final String WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private PaperPages() {}

    static List<Route> routes() {
        return List.of(
                Route.page(AT, Need.LOOK, PaperPages::show),
                Route.page("/p/{project}/paper-list", Need.LOOK, PaperPages::list),
                Route.page("/p/{project}/binder", Need.LOOK, PaperPages::binder),
                Route.page("/p/{project}/binder/pdf", Need.LOOK, PaperPages::book),
                Route.page(ONE, Need.LOOK, PaperPages::open),
                Route.page(ONE + "/pdf", Need.LOOK, PaperPages::download),
                Route.page(ONE + "/xlsx", Need.LOOK, PaperPages::workbook),
                Route.page(ONE + "/csv/{table}", Need.LOOK, PaperPages::table),
                Route.change(ONE + "/print", Need.LEAD, PaperPages::print),
                Route.change(ONE + "/forget", Need.LEAD, PaperPages::forget),
                Route.change(AT + "/printed", Need.LEAD, PaperPages::allPrinted));
    }

    private static String home(OpenProject job) {
        return Visit.home(job) + "/papers";
    }

    /** The project, what is printed on, and the paper that the address names. */
    private record Asked(Visit visit, OpenProject job, Now now) {
        static Asked of(Visit visit) throws StoreException {
            OpenProject job = visit.job();
            return new Asked(visit, job, job.now());
        }

        Press press() {
            return visit.common.press();
        }

        Inventory inventory() {
            return press().inventory(job.id(), now.revision(), now.study());
        }

        private Inventory.Part part(Paper paper) {
            return press().part(job.id(), now.revision(), now.study(), paper);
        }

        Paper paper() {
            String id = visit.ctx.pathParam("paper");
            return Papers.find(id).orElseThrow(() -> Refused.notFound("There is no paper " + id + "."));
        }

        /** A paper that the project has something for. */
        Inventory.Part part() {
            Inventory.Part part = part(paper());
            if (part.sheets().isEmpty()) {
                throw Refused.notFound(
                        "There is nothing for the paper \"" + part.paper().title() + "\" yet.");
            }
            return part;
        }

        /** What was chosen here before, or what is usual. */
        PaperChoice choice() throws StoreException {
            PaperChoice chosen = visit.session.paper(job.id());
            return chosen == null ? before().orElse(PaperChoice.usual(PageSize.of(now.project()), site())) : chosen;
        }

        /** What this person chose before the server was started again. */
        private Optional<PaperChoice> before() throws StoreException {
            try {
                return visit.common
                        .projects()
                        .store()
                        .findStationery(job.id(), visit.session.person)
                        .map(kept -> PaperChoice.of(kept.size(), kept.labels(), "1", site()));
            } catch (IllegalArgumentException e) {
                return Optional.empty(); // kept by a Housewright that knew other labels
            }
        }

        /** Keeps the paper and the labels; where a sheet is begun, and the address, are of this time only. */
        void choose(PaperChoice choice) throws StoreException {
            visit.session.choose(job.id(), choice);
            if (!visit.common.projects().store().isReadOnly()) {
                visit.common
                        .projects()
                        .store()
                        .keepStationery(
                                job.id(),
                                visit.session.person,
                                new Stationery(choice.size().word(), choice.labels()));
            }
        }

        /** Where a phone finds the project; empty where none can come in. */
        private String site() {
            List<String> shared =
                    visit.common.serving().share() ? visit.common.addresses().shared() : List.of();
            return shared.isEmpty() ? "" : shared.getFirst() + Visit.home(job);
        }

        ZoneId zone() {
            ZoneId zone = now.project().about().timeZone();
            return zone == null ? visit.common.zone() : zone;
        }

        Issue issue() throws StoreException {
            PaperChoice choice = choice();
            Instant at = job.history(now.revision() + 1, 1).getFirst().what().at();
            return new Issue(
                    now.study(),
                    choice.size(),
                    choice.labelling(),
                    Long.toString(now.revision()),
                    LocalDate.ofInstant(at, zone()),
                    earlier());
        }

        /**
         * The revisions from which sheets were last printed that say something else by now, by sheet: those of the paper that
         * is asked for, else all.
         */
        private Map<String, Long> outOfDate() throws StoreException {
            String only = visit.ctx.pathParamMap().get("paper");
            Map<String, Long> revisions = new TreeMap<>();
            for (Printed each : printed()) {
                Optional<Paper> paper =
                        only == null || only.equals(each.paper()) ? Papers.find(each.paper()) : Optional.empty();
                paper.stream()
                        .flatMap(known -> part(known).sheets().stream())
                        .filter(mark -> mark.id().equals(each.sheet())
                                && !mark.content().equals(each.content()))
                        .forEach(mark -> revisions.put(mark.id(), each.revision()));
            }
            return revisions;
        }

        private Earlier earlier() throws StoreException {
            Kept<Optional<Study>> studies = new Kept<>(Integer.MAX_VALUE);
            Map<String, Supplier<@Nullable Study>> bySheet = new HashMap<>();
            outOfDate()
                    .forEach((sheet, revision) -> bySheet.put(
                            sheet,
                            () -> studies.get(revision.toString(), () -> studyAt(revision))
                                    .orElse(null)));
            return Earlier.of(bySheet);
        }

        private Optional<Study> studyAt(long revision) {
            try {
                return job.findAt(revision).map(Now::study);
            } catch (StoreException e) {
                throw new IllegalStateException(e);
            }
        }

        List<Printed> printed() throws StoreException {
            return visit.common.projects().store().listPrinted(job.id());
        }

        byte[] make(String what, Supplier<byte[]> work) throws StoreException {
            return press().make(job.id(), now.revision() + " " + choice() + " " + outOfDate() + " " + what, work);
        }

        void send(byte[] content, String name, String type) {
            visit.ctx
                    .contentType(type)
                    .header("Content-Disposition", "attachment; filename=\"" + job.id() + "-" + name + "\"")
                    .result(content);
        }

        PapersPage page(@Nullable Inventory inventory, String wrong) throws StoreException {
            PaperChoice choice = choice();
            return PapersPage.of(
                    inventory,
                    printed(),
                    Visit.home(job),
                    visit.common.projects().clock().instant(),
                    zone(),
                    new PapersPage.Chosen(choice.size(), choice.labels(), choice.first(), choice.site(), wrong));
        }
    }

    private static void show(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        String wrong = choose(asked);
        Inventory known = asked.press().known(asked.job.id(), asked.now.revision(), asked.now.study());
        PapersPage page = asked.page(known, wrong);
        visit.show(
                asked.job,
                asked.now,
                Page.PAPERS,
                "Papers",
                (output, frame) -> JtepapersGenerated.render(output, null, frame, page));
    }

    /** Keeps what the address chooses to print on; what is wrong with it, in words. */
    private static String choose(Asked asked) throws StoreException {
        Function<String, String> said = name -> {
            String text = asked.visit.ctx.queryParam(name);
            return text == null ? "" : text.strip();
        };
        if (said.apply("size").isEmpty()) {
            return "";
        }
        try {
            PaperChoice before = asked.choice();
            String labels = said.apply("labels");
            boolean usual = labels.equals(LabelStock.usualFor(before.size()).name())
                    && !said.apply("size").equals(before.size().word());
            if (usual || labels.isEmpty()) { // what is usual for one paper does not go with the other
                labels = PaperChoice.usualLabels(said.apply("size"));
            }
            asked.choose(PaperChoice.of(
                    said.apply("size"),
                    labels,
                    said.apply("first").isEmpty() ? "1" : said.apply("first"),
                    said.apply("site")));
            return "";
        } catch (IllegalArgumentException e) {
            return e.getMessage() + ".";
        }
    }

    /** The table, for a page that was shown before it was known. */
    private static void list(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        PapersPage page = asked.page(asked.inventory(), "");
        boolean lead = visit.session.role.mayDoAll();
        Visit.write(
                visit.ctx,
                output -> JtepaperlistGenerated.render(
                        output, null, page, Visit.home(asked.job), visit.session.token, lead, asked.now.revision()));
    }

    private static void open(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        Inventory.Part part = asked.part();
        Issue issue = asked.issue();
        byte[] page = asked.make(
                part.paper().id() + ".html",
                () -> issue.page(part.paper(), home(asked.job)).getBytes(StandardCharsets.UTF_8));
        visit.ctx
                .header("Content-Security-Policy", POLICY)
                .contentType("text/html; charset=utf-8")
                .result(page);
    }

    private static void download(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        Inventory.Part part = asked.part();
        pdf(asked, part, sheet -> true, "");
    }

    private static void pdf(Asked asked, Inventory.Part part, Predicate<String> chosen, String which)
            throws StoreException {
        Issue issue = asked.issue();
        String name = part.paper().id() + which + ".pdf";
        byte[] made = asked.make(
                name
                        + part.sheets().stream()
                                .map(Inventory.Mark::id)
                                .filter(chosen)
                                .toList(),
                () -> issue.pdf(part.paper(), chosen));
        asked.send(made, name, "application/pdf");
    }

    private static void workbook(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        Inventory.Part part = asked.part();
        if (part.tables().isEmpty()) {
            throw Refused.notFound(part.paper().title() + " has no table.");
        }
        Issue issue = asked.issue();
        String name = part.paper().id() + ".xlsx";
        asked.send(asked.make(name, () -> issue.workbook(part.paper()).orElseThrow()), name, WORKBOOK);
    }

    private static void table(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        Inventory.Part part = asked.part();
        String table = visit.ctx.pathParam("table");
        if (!part.tables().contains(table)) {
            throw Refused.notFound(part.paper().title() + " has no such table.");
        }
        Issue issue = asked.issue();
        String name = part.paper().id() + (part.tables().size() > 1 ? "-" + table : "") + ".csv";
        asked.send(
                asked.make(name, () -> issue.csv(part.paper(), table).orElseThrow()),
                name.replaceAll("[^A-Za-z0-9.-]", "-"),
                "text/csv; charset=utf-8");
    }

    private static void binder(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        asked.send(binder(asked), "revision-" + asked.now.revision() + ".zip", "application/zip");
    }

    private static byte[] binder(Asked asked) throws StoreException {
        Issue issue = asked.issue();
        return asked.make("binder", issue::binder);
    }

    /** Out of the ZIP, so that whoever wants both waits once. */
    private static void book(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        asked.send(Issue.book(binder(asked)), "revision-" + asked.now.revision() + ".pdf", "application/pdf");
    }

    /** The PDF, and that it is printed is written down: all of it, or what is out of date. */
    private static void print(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        Inventory.Part part = asked.part();
        Map<String, Printed> before = asked.printed().stream()
                .filter(each -> each.paper().equals(part.paper().id()))
                .collect(Collectors.toMap(Printed::sheet, each -> each));
        Set<String> stale = part.sheets().stream()
                .filter(mark -> !before.containsKey(mark.id())
                        || !before.get(mark.id()).content().equals(mark.content()))
                .map(Inventory.Mark::id)
                .collect(Collectors.toSet());
        boolean some = visit.field("which").equals("changed") && !stale.isEmpty();
        pdf(asked, part, sheet -> !some || stale.contains(sheet), some ? "-changed" : "");
        List<Printed> now = new ArrayList<>();
        for (Inventory.Mark mark : part.sheets()) {
            Printed last = before.get(mark.id());
            now.add(some && last != null && !stale.contains(mark.id()) ? last : asPrinted(asked, part, mark));
        }
        keep(asked, part, now);
    }

    private static Printed asPrinted(Asked asked, Inventory.Part part, Inventory.Mark mark) {
        return new Printed(
                part.paper().id(),
                mark.id(),
                mark.title(),
                mark.content(),
                asked.now.revision(),
                asked.visit.session.person,
                asked.visit.common.projects().clock().instant());
    }

    private static void keep(Asked asked, Inventory.Part part, List<Printed> sheets) throws StoreException {
        asked.visit
                .common
                .projects()
                .store()
                .keepPrinted(asked.job.id(), part.paper().id(), sheets);
        asked.visit.common.live().printed(asked.job.id());
    }

    private static void forget(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        Paper paper = asked.paper();
        visit.common.projects().store().keepPrinted(asked.job.id(), paper.id(), List.of());
        visit.common.live().printed(asked.job.id());
        visit.goBack(
                home(asked.job),
                new Session.Notice(
                        "It is no longer written down that " + paper.title() + " was printed.", false, false));
    }

    private static void allPrinted(Visit visit) throws StoreException {
        Asked asked = Asked.of(visit);
        if (visit.number("revision") != asked.now.revision()) {
            visit.goBack(
                    home(asked.job),
                    new Session.Notice(
                            "The project has changed since this page was shown, so nothing was written down. Look again.",
                            true,
                            false));
            return;
        }
        int count = 0;
        for (Inventory.Part part : asked.inventory().parts()) {
            if (!part.sheets().isEmpty()) {
                count += part.sheets().size();
                keep(
                        asked,
                        part,
                        part.sheets().stream()
                                .map(mark -> asPrinted(asked, part, mark))
                                .toList());
            }
        }
        visit.goBack(
                home(asked.job),
                new Session.Notice(
                        "Written down: all " + count + " sheets are printed at revision " + asked.now.revision() + ".",
                        false,
                        false));
    }
}
