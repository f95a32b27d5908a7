package housewright.web.page;

import housewright.app.ProjectStore.Printed;
import housewright.app.paper.Inventory;
import housewright.app.paper.Inventory.Mark;
import housewright.paper.LabelStock;
import housewright.paper.PageSize;
import housewright.paper.Paper;
import housewright.paper.Papers;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All papers, and which of the printed ones are out of date.
 *
 * @param known whether it is known what is on them; otherwise the rows say only what was printed
 * @param rows in the order of the binder, those that the project has nothing for left out
 * @param none papers that the project has nothing for
 * @param printable sheets there are
 */
public record PapersPage(boolean known, String answer, List<Row> rows, List<None> none, int printable, Chosen chosen) {
    public PapersPage {
        rows = List.copyOf(rows);
        none = List.copyOf(none);
    }

    /**
     * One paper.
     *
     * @param href where it is opened
     * @param printed when, and at which revision; empty where it never was
     * @param mark shape before the state
     * @param state whether what is printed is still right
     * @param details which sheets are not
     * @param some only some of its sheets are out of date
     */
    public record Row(
            String id,
            String title,
            String recipient,
            String question,
            String href,
            String sheets,
            String printed,
            String mark,
            String state,
            List<String> details,
            boolean some,
            List<File> files) {
        public Row {
            details = List.copyOf(details);
            files = List.copyOf(files);
        }
    }

    /** @param what such as "PDF" */
    public record File(String what, String href) {}

    /** @param from what it is made from, which the project does not have */
    public record None(String title, String question, String from, String page, String href, String printed) {}

    /**
     * What is printed on.
     *
     * @param labels name or measurements of the stock
     * @param first where the first label goes on a sheet that is begun
     * @param site address in the codes on labels
     * @param wrong what was chosen and cannot be, in words; empty where all can
     */
    public record Chosen(PageSize size, String labels, int first, String site, String wrong) {
        public boolean isLetter() {
            return size == PageSize.LETTER;
        }

        public List<String> usual() {
            return LabelStock.usual().stream().map(LabelStock::name).toList();
        }

        public String stock() {
            return LabelStock.parse(labels).said();
        }
    }

    /** What a paper is made from, and the page where that is put in. */
    private record From(String what, String page, String path) {}

    private static final From GEAR =
            new From("things that have a place or a setting of this kind", "Equipment", "/equipment");

    private static final Map<String, From> FROM = Map.ofEntries(
            Map.entry("input-list", new From("feeds of sound", "Feeds", "/table/feeds")),
            Map.entry("stage-plan", new From("things that have a place", "Venue", "/venue")),
            Map.entry("patch-sheets", new From("what is patched and set", "Patch", "/patch")),
            Map.entry("cable-schedule", new From("cables", "Cables", "/cables")),
            Map.entry("pulling-schedule", new From("cables that go along pathways", "Cables", "/cables")),
            Map.entry("rack-elevations", new From("things in racks", "Power and racks", "/racks")),
            Map.entry("signal-drawings", new From("things that are joined", "Cables", "/cables")),
            Map.entry("power-schedule", new From("circuits and what is on them", "Power and racks", "/racks")),
            Map.entry("network-addresses", new From("things with a network address", "Equipment", "/equipment")),
            Map.entry("dmx-and-focus", new From("fixtures with a DMX address", "Equipment", "/equipment")),
            Map.entry("look-sheet", new From("looks of the light", "Equipment", "/equipment")),
            Map.entry("radio-frequencies", new From("radio links", "Equipment", "/equipment")),
            Map.entry("order-list", new From("what is bought", "Orders", "/orders")),
            Map.entry("budget", new From("what is bought, and prices", "Orders", "/orders")),
            Map.entry("daily-calls", new From("an accepted plan", "Plan", "/plan")),
            Map.entry("lift-days", new From("an accepted plan with work on a lift", "Plan", "/plan")),
            Map.entry("as-built", new From("what is in the hall", "Equipment", "/equipment")),
            Map.entry("cable-labels", new From("cables", "Cables", "/cables")),
            Map.entry("equipment-labels", new From("things", "Equipment", "/equipment")),
            Map.entry("volunteer-cards", new From("feeds, and what is switched on for them", "Feeds", "/feeds")));

    /** @param job where the project's pages begin */
    public static PapersPage of(
            @Nullable Inventory inventory, List<Printed> printed, String job, Instant now, ZoneId zone, Chosen chosen) {
        Map<String, List<Printed>> byPaper = new LinkedHashMap<>();
        printed.forEach(each ->
                byPaper.computeIfAbsent(each.paper(), id -> new ArrayList<>()).add(each));
        List<Row> rows = new ArrayList<>();
        List<None> none = new ArrayList<>();
        int stale = 0;
        int never = 0;
        int printable = 0;
        for (Paper paper : Papers.all()) {
            Inventory.Part part = inventory == null ? null : inventory.get(paper);
            List<Printed> before = byPaper.getOrDefault(paper.id(), List.of());
            String when = when(before, now, zone);
            if (part != null && part.sheets().isEmpty()) {
                From from = FROM.getOrDefault(paper.id(), GEAR);
                none.add(new None(
                        paper.title(),
                        paper.question(),
                        from.what(),
                        from.page(),
                        job + from.path(),
                        when.isEmpty() ? "" : "Printed " + when + "; throw it away."));
                continue;
            }
            Compared compared = part == null ? null : Compared.of(part.sheets(), before);
            if (part != null && compared != null) {
                printable += part.sheets().size();
                stale += before.isEmpty() || compared.asPrinted() ? 0 : 1;
                never += before.isEmpty() ? 1 : 0;
            }
            String href = job + "/papers/" + paper.id();
            rows.add(new Row(
                    paper.id(),
                    paper.title(),
                    paper.recipient(),
                    paper.question(),
                    href,
                    part == null ? "" : Integer.toString(part.sheets().size()),
                    when,
                    compared == null ? "" : before.isEmpty() ? "note" : compared.asPrinted() ? "proven" : "fix",
                    compared == null ? "" : before.isEmpty() ? "never printed" : compared.said(),
                    compared == null || before.isEmpty() ? List.of() : compared.titles(),
                    compared != null && !before.isEmpty() && compared.some(),
                    part == null ? List.of(new File("PDF", href + "/pdf")) : files(part, href)));
        }
        return new PapersPage(
                inventory != null,
                inventory == null ? "Papers" : answer(rows.size(), printable, stale, never),
                rows,
                none,
                printable,
                chosen);
    }

    private static String answer(int papers, int sheets, int stale, int never) {
        if (papers == 0) {
            return "There is nothing to print yet.";
        }
        String all = count(papers, "paper") + ", " + count(sheets, "sheet") + ": ";
        if (never == papers) {
            return all + "none is printed yet.";
        }
        String since = stale == 0
                ? "what is printed is as it should be"
                : count(stale, "paper") + (stale == 1 ? " has" : " have") + " changed since "
                        + (stale == 1 ? "it was printed" : "they were printed");
        return all + since + (never == 0 ? "." : "; " + never + " never printed.");
    }

    private static String count(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String when(List<Printed> before, Instant now, ZoneId zone) {
        return before.stream()
                .max(java.util.Comparator.comparing(Printed::at))
                .map(last ->
                        Dates.ago(last.at(), now, zone) + ", revision " + last.revision() + ", by " + last.person())
                .orElse("");
    }

    private static List<File> files(Inventory.Part part, String href) {
        List<File> files = new ArrayList<>(List.of(new File("PDF", href + "/pdf")));
        if (!part.tables().isEmpty()) {
            files.add(new File("XLSX", href + "/xlsx"));
        }
        for (String table : part.tables()) {
            files.add(new File(part.tables().size() == 1 ? "CSV" : "CSV: " + table, href + "/csv/" + table));
        }
        return files;
    }

    /**
     * The sheets there are against those that were printed.
     *
     * @param since the earliest revision at which one that is out of date was printed
     */
    private record Compared(List<Mark> changed, List<Mark> fresh, List<Printed> gone, int same, long since) {
        static Compared of(List<Mark> now, List<Printed> before) {
            Map<String, Printed> was = new LinkedHashMap<>();
            before.forEach(each -> was.put(each.sheet(), each));
            List<Mark> changed = new ArrayList<>();
            List<Mark> fresh = new ArrayList<>();
            int same = 0;
            long since = Long.MAX_VALUE;
            for (Mark mark : now) {
                Printed last = was.remove(mark.id());
                if (last == null) {
                    fresh.add(mark);
                } else if (last.content().equals(mark.content())) {
                    same++;
                } else {
                    changed.add(mark);
                    since = Math.min(since, last.revision());
                }
            }
            for (Printed each : was.values()) {
                since = Math.min(since, each.revision());
            }
            if (since == Long.MAX_VALUE) {
                since = before.stream().mapToLong(Printed::revision).max().orElse(0);
            }
            return new Compared(changed, fresh, List.copyOf(was.values()), same, since);
        }

        boolean asPrinted() {
            return changed.isEmpty() && fresh.isEmpty() && gone.isEmpty();
        }

        /** Whether it is enough to print a part anew. */
        boolean some() {
            return same > 0 && changed.size() + fresh.size() > 0;
        }

        String said() {
            if (asPrinted()) {
                return "as printed";
            }
            List<String> parts = new ArrayList<>();
            if (!changed.isEmpty()) {
                parts.add(count(changed.size(), "sheet") + " changed");
            }
            if (!fresh.isEmpty()) {
                parts.add((parts.isEmpty() ? count(fresh.size(), "sheet") : fresh.size()) + " new");
            }
            if (!gone.isEmpty()) {
                parts.add((parts.isEmpty() ? count(gone.size(), "sheet") : gone.size()) + " no more");
            }
            return String.join(", ", parts) + " since revision " + since;
        }

        List<String> titles() {
            List<String> titles = new ArrayList<>();
            changed.forEach(each -> titles.add(each.title() + ": changed"));
            fresh.forEach(each -> titles.add(each.title() + ": new"));
            gone.forEach(each -> titles.add(each.title() + ": no more, throw it away"));
            return titles;
        }
    }
}
