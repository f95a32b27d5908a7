package housewright.cli;

import housewright.app.ProjectFile;
import housewright.app.paper.Binder;
import housewright.app.paper.Binding;
import housewright.paper.LabelStock;
import housewright.paper.Labelling;
import housewright.paper.PageSize;
import housewright.paper.Paper;
import housewright.paper.PaperOptions;
import housewright.paper.Papers;
import housewright.study.Study;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What each person holds in the hand. */
@Command(
        name = "papers",
        header = "Writes the papers of a job into a folder: lists, schedules, drawings, to print or to look at.",
        description = {
            "Each paper becomes a web page and a PDF and, where it has tables, CSV and a workbook; index.html and contents.pdf list them; binder.pdf is all of them but the labels, its pages numbered through. A sheet keeps its revision and its date for as long as it says the same, so what is printed of it stays good; rows of tables that changed since the last revision have a bar beside them, and superseded sheets are listed. The same project in the same folder gives the same bytes.",
            "Exit status: 0 written or listed, 2 the file cannot be read or the folder not be written."
        })
final class PapersCommand extends FileCommand {
    @Option(names = "--out", paramLabel = "DIR", description = "The folder to write into; made where it is not there.")
    @Nullable
    String out;

    @Option(
            names = "--only",
            paramLabel = "ID",
            split = ",",
            description =
                    "These papers alone, such as cable-schedule,order-list; others in the folder stay as they are.")
    List<String> only = new ArrayList<>();

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            description = "Paper: a4 or letter; without it, by the project's rules.")
    @Nullable
    String size;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            description = "Date of a new revision, such as 2027-01-11; without it, today.")
    @Nullable
    LocalDate date;

    @Option(
            names = "--labels",
            paramLabel = "STOCK",
            description =
                    "What labels are printed on: a usual grid such as a4-44 or letter-30, a tape such as tape-12, or the measurements of your own in mm: 'a4 4x11 48.5x25.4 at 8x8.8 every 48.5x25.4', 'tape 12x70'.")
    @Nullable
    String labels;

    @Option(
            names = "--first-label",
            paramLabel = "N",
            description = "Where the first label goes on a sheet that is begun, along the rows; without it, 1.")
    int firstLabel = 1;

    @Option(
            names = "--site",
            paramLabel = "URL",
            description =
                    "Address of the project's pages, such as http://192.168.1.20:8080/p/hall: codes on labels open the thing there; without it they say its name.")
    String site = "";

    @Option(names = "--list", description = "List the papers, for whom each is and what it answers; write nothing.")
    boolean list;

    PapersCommand(Desk desk) {
        super(desk);
    }

    @Override
    int run(ProjectFile project) {
        List<Paper> papers = new ArrayList<>();
        for (String id : only) {
            Paper paper = Papers.find(id.strip()).orElse(null);
            if (paper == null) {
                return desk.refuse(unknown(id.strip()));
            }
            papers.add(paper);
        }
        PageSize asked = null;
        for (PageSize each : PageSize.values()) {
            asked = each.word().equals(size) ? each : asked;
        }
        if (size != null && asked == null) {
            return desk.refuse("--size takes a4 or letter, but this is " + size + ".");
        }
        if (!site.isEmpty() && !site.matches("https?://[^\\s/]+(/\\S*)?")) {
            return desk.refuse(
                    "--site takes an address such as http://192.168.1.20:8080/p/hall, but this is " + site + ".");
        }
        if (!list && out == null) {
            return desk.refuse("Name the folder to write into with --out DIR, or list the papers with --list.");
        }
        Study study = desk.study(project, false);
        List<Paper> chosen = papers.isEmpty() ? Papers.all() : papers;
        PageSize paper = asked == null ? PageSize.of(project.project()) : asked;
        Labelling labelling;
        try {
            labelling = new Labelling(
                    labels == null ? LabelStock.usualFor(paper) : LabelStock.parse(labels), firstLabel, site);
        } catch (IllegalArgumentException e) {
            return desk.refuse(e.getMessage() + ".");
        }
        return list ? list(study, chosen, paper) : write(study, chosen, paper, labelling);
    }

    private int list(Study study, List<Paper> papers, PageSize paper) {
        Page page = desk.page();
        PaperOptions options = new PaperOptions(paper, study.project().about().name(), "", "");
        for (Paper each : papers) {
            int sheets = desk.during("Looking what " + each.title() + " has", () -> each.sheets(study, options))
                    .size();
            page.line(each.id() + "  " + each.title() + ": "
                    + (sheets == 0 ? "nothing to put on it yet" : sheets == 1 ? "1 sheet" : sheets + " sheets"));
            page.hanging("    ", "For: " + each.recipient() + ". " + each.question());
        }
        desk.print(page);
        return Status.FINE;
    }

    private int write(Study study, List<Paper> papers, PageSize paper, Labelling labelling) {
        Path folder;
        try {
            folder = Path.of(String.valueOf(out));
        } catch (InvalidPathException e) {
            return desk.refuse("--out takes the name of a folder, but this is " + out + ".");
        }
        ZoneId zone = study.project().about().timeZone();
        LocalDate day = date == null ? LocalDate.now(zone == null ? ZoneId.systemDefault() : zone) : date;
        Binder binder = new Binder(
                folder,
                paper,
                labelling,
                day.toString(),
                (what, step) -> desk.during(what, () -> {
                    step.run();
                    return true;
                }));
        return switch (binder.bind(study, papers)) {
            case Binding.NotBound not -> desk.refuse(not.why());
            case Binding.Bound bound -> {
                desk.print(said(bound, folder));
                yield Status.FINE;
            }
        };
    }

    private Page said(Binding.Bound bound, Path folder) {
        Page page = desk.page();
        long changed = count(bound, Binding.State.CHANGED);
        long fresh = count(bound, Binding.State.NEW);
        String what = String.format(
                Locale.ROOT,
                "%s: revision %s of %s, %d sheets in %d files.",
                folder,
                bound.revision(),
                bound.date(),
                bound.sheets().size(),
                bound.files().size());
        page.wrapped(what);
        if (bound.before().isEmpty()) {
            return page.wrapped("First issue. Open " + folder.resolve("index.html") + ", or print the PDFs.");
        }
        page.wrapped("Against revision " + bound.before() + ": " + changed + " changed, " + fresh + " new, "
                + bound.withdrawn().size() + " withdrawn; the others stay good.");
        for (Binding.IssuedSheet sheet : bound.sheets()) {
            if (sheet.state() != Binding.State.SAME) {
                page.hanging(
                        sheet.state() == Binding.State.NEW ? "  new      " : "  changed  ",
                        sheet.title() + " (" + sheet.paper() + ".pdf)");
            }
        }
        bound.withdrawn().forEach(title -> page.hanging("  gone     ", title));
        return page;
    }

    private static long count(Binding.Bound bound, Binding.State state) {
        return bound.sheets().stream().filter(sheet -> sheet.state() == state).count();
    }

    private static String unknown(String id) {
        List<String> ids = Papers.all().stream().map(Paper::id).toList();
        return "There is no paper " + id + "; " + Desk.instead(id, ids, "they are ", "there are none.");
    }
}
