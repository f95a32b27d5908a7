package housewright.app.paper;

import housewright.app.paper.Binding.IssuedSheet;
import housewright.app.paper.Binding.State;
import housewright.file.ProjectWriter;
import housewright.paper.Labelling;
import housewright.paper.PageSize;
import housewright.paper.Paper;
import housewright.paper.PaperOptions;
import housewright.paper.Papers;
import housewright.paper.Sheet;
import housewright.paper.Spreadsheet;
import housewright.paper.csv.Csv;
import housewright.paper.html.HtmlPage;
import housewright.paper.html.Issued;
import housewright.paper.pdf.Pdf;
import housewright.paper.pdf.PdfBook;
import housewright.paper.xlsx.Xlsx;
import housewright.study.Study;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** Writes papers into a folder: each as page, PDF and, where it has tables, CSV and workbook, with a contents page. */
public final class Binder {
    /** All papers in one PDF. */
    static final String BOOK = "binder.pdf";

    private static final int MOST_THREADS = 4; // each holds a whole paper in memory

    private final Path folder;
    private final PageSize size;
    private final Labelling labels;
    private final String date;
    private final BiConsumer<String, Runnable> watch;
    private final Earlier earlier;

    /**
     * @param folder made where it is not there
     * @param labels how labels are printed
     * @param date of a revision that the folder does not have yet, as it is printed
     * @param watch does each step, given what it is in words
     */
    public Binder(Path folder, PageSize size, Labelling labels, String date, BiConsumer<String, Runnable> watch) {
        this(folder, size, labels, date, watch, Earlier.NONE);
    }

    /** @param earlier what was printed elsewhere than from this folder */
    Binder(
            Path folder,
            PageSize size,
            Labelling labels,
            String date,
            BiConsumer<String, Runnable> watch,
            Earlier earlier) {
        this.folder = folder;
        this.size = size;
        this.labels = labels;
        this.date = date;
        this.watch = watch;
        this.earlier = earlier;
    }

    /** The revision of a project: a short name of its content. */
    public static String revision(Study study) {
        return Hash.revision(ProjectWriter.json(study.project()));
    }

    /** @param papers to write; what the folder has of others stays as it is */
    public Binding bind(Study study, List<Paper> papers) {
        return bind(study, papers, revision(study));
    }

    /** @param revision as it is printed; another name for each state of the project */
    Binding bind(Study study, List<Paper> papers, String revision) {
        try {
            Manifest old = read();
            return bind(study, papers, revision, old);
        } catch (IllegalArgumentException e) {
            return new Binding.NotBound(folder.resolve(Manifest.FILE) + " cannot be read: " + e.getMessage()
                    + ". Nothing was written. Name another folder, or move that file away to begin a binder anew.");
        } catch (UncheckedIOException e) {
            return notWritten(e.getCause());
        } catch (IOException e) {
            return notWritten(e);
        }
    }

    private Binding notWritten(@Nullable IOException e) {
        return new Binding.NotBound(folder + " cannot be written: " + (e == null ? "" : e.getMessage())
                + ". Papers in it may be of two revisions; run it again.");
    }

    private Binding bind(Study study, List<Paper> papers, String revision, @Nullable Manifest old) throws IOException {
        String hall = study.project().about().name();
        Manifest same = old != null && old.revision().equals(revision) ? old : null;
        String day = same == null ? date : same.date();
        String before = same != null ? same.before() : old == null ? null : old.revision();
        PaperOptions options = new PaperOptions(size, hall, revision, day, labels);
        Files.createDirectories(folder);

        List<Manifest.Entry> entries = new ArrayList<>();
        List<Manifest.Entry> withdrawn = new ArrayList<>(same == null ? List.of() : same.withdrawn());
        Map<String, State> states = new LinkedHashMap<>();
        Map<String, List<String>> files = new LinkedHashMap<>();
        List<Step> steps = new ArrayList<>();
        for (Paper paper : papers) {
            steps.add(new Step(study, paper, options, old, revision));
        }
        work(steps);
        for (Paper paper : Papers.all()) {
            Step step = steps.stream()
                    .filter(each -> each.paper.equals(paper))
                    .findFirst()
                    .orElse(null);
            if (step == null) {
                keep(paper, old, revision, entries, states, files);
                continue;
            }
            entries.addAll(step.entries);
            step.entries.forEach(each -> states.put(each.id(), state(each, revision)));
            files.put(paper.id(), step.files);
            withdrawn.removeIf(each -> each.paper().equals(paper.id()) && step.has(each.id()));
            if (old != null) {
                old.sheets().stream()
                        .filter(each -> each.paper().equals(paper.id()) && !step.has(each.id()))
                        .forEach(withdrawn::add);
            }
            tidy(paper, step.files);
        }
        Manifest manifest = new Manifest(Manifest.VERSION, revision, day, before, entries, withdrawn);
        Contents contents = new Contents(manifest, states, hall, earlier.said());
        put("contents.pdf", contents(contents.sheet(), manifest, hall));
        put(BOOK, book(contents, manifest, hall, files));
        put("index.html", bytes(contents.page(files)));
        put(Manifest.FILE, bytes(manifest.json()));

        List<String> all = new ArrayList<>(List.of("index.html", "contents.pdf", BOOK));
        files.values().forEach(all::addAll);
        return new Binding.Bound(
                revision,
                day,
                before == null ? "" : before,
                entries.stream()
                        .map(each -> new IssuedSheet(
                                each.id(), each.paper(), each.title(), states.getOrDefault(each.id(), State.SAME)))
                        .toList(),
                withdrawn.stream().map(Manifest.Entry::title).toList(),
                all);
    }

    private byte[] contents(Sheet sheet, Manifest manifest, String hall) {
        List<Issued> printed = List.of(new Issued(sheet, manifest.revision(), manifest.date()));
        return Pdf.of(hall, Contents.TITLE, Contents.QUESTION, size, printed);
    }

    /** All papers that go on paper in one PDF, also those that only lie in the folder. */
    private byte[] book(Contents contents, Manifest manifest, String hall, Map<String, List<String>> files)
            throws IOException {
        List<PdfBook.Part> parts = new ArrayList<>();
        for (Paper paper : Papers.all()) {
            String name = paper.id() + ".pdf";
            if (!paper.isOnLabels() && files.getOrDefault(paper.id(), List.of()).contains(name)) {
                parts.add(new PdfBook.Part(paper.id(), paper.title(), Files.readAllBytes(folder.resolve(name))));
            }
        }
        AtomicReference<byte[]> made = new AtomicReference<>(new byte[0]);
        watch.accept(
                "All in one PDF",
                () -> made.set(PdfBook.of(
                        hall + ": papers", parts, pages -> contents(contents.numbered(pages), manifest, hall))));
        return made.get();
    }

    /** All at once, as far as there are processors; watched in their order. */
    private void work(List<Step> steps) throws IOException {
        int threads = Math.clamp(Runtime.getRuntime().availableProcessors(), 1, MOST_THREADS);
        try (ExecutorService pool = Executors.newFixedThreadPool(threads)) {
            List<Future<?>> running = new ArrayList<>();
            steps.forEach(step -> running.add(pool.submit(step)));
            for (int i = 0; i < steps.size(); i++) {
                Future<?> each = running.get(i);
                String what = steps.get(i).paper.title() + ", " + (i + 1) + " of " + steps.size();
                watch.accept(what, () -> await(each));
            }
        }
        for (Step step : steps) {
            step.finish();
        }
    }

    private static void await(Future<?> step) {
        try {
            step.get();
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException fault ? fault : new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** What is in the folder of a paper that is not asked for now. */
    private void keep(
            Paper paper,
            @Nullable Manifest old,
            String revision,
            List<Manifest.Entry> entries,
            Map<String, State> states,
            Map<String, List<String>> files)
            throws IOException {
        if (old == null) {
            return;
        }
        for (Manifest.Entry each : old.sheets()) {
            if (each.paper().equals(paper.id())) {
                entries.add(each);
                states.put(each.id(), state(each, revision));
            }
        }
        files.put(paper.id(), filesOf(paper));
    }

    private static State state(Manifest.Entry entry, String revision) {
        return !entry.revision().equals(revision) ? State.SAME : entry.before() == null ? State.NEW : State.CHANGED;
    }

    /** Makes the files of one paper. */
    private final class Step implements Runnable {
        private final Study study;
        private final Paper paper;
        private final PaperOptions options;
        private final @Nullable Manifest old;
        private final String revision;
        private final List<Manifest.Entry> entries = new ArrayList<>();
        private final List<String> files = new ArrayList<>();
        private @Nullable IOException trouble;

        Step(Study study, Paper paper, PaperOptions options, @Nullable Manifest old, String revision) {
            this.study = study;
            this.paper = paper;
            this.options = options;
            this.old = old;
            this.revision = revision;
        }

        @Override
        public void run() {
            List<Issued> issued = new ArrayList<>();
            for (Sheet sheet : earlier.marked(paper, paper.sheets(study, options), options)) {
                Manifest.Entry entry = entry(sheet);
                entries.add(entry);
                Sheet marked = entry.before() == null
                        ? sheet
                        : Bars.marked(sheet, entry.before().rows());
                issued.add(new Issued(marked, entry.revision(), entry.date()));
            }
            if (issued.isEmpty()) {
                return;
            }
            try {
                write(issued);
            } catch (IOException e) {
                trouble = e;
            }
        }

        void finish() throws IOException {
            if (trouble != null) {
                throw trouble;
            }
        }

        boolean has(String sheet) {
            return entries.stream().anyMatch(each -> each.id().equals(sheet));
        }

        private Manifest.Entry entry(Sheet sheet) {
            String content = Hash.of(sheet);
            Manifest.Entry last = old == null ? null : old.find(sheet.id());
            if (last != null && last.content().equals(content)) {
                return last;
            }
            Manifest.Before before = last == null
                    ? null
                    : last.revision().equals(revision)
                            ? last.before() // the same revision, printed otherwise by another version of the program
                            : new Manifest.Before(last.revision(), last.date(), last.rows());
            return new Manifest.Entry(
                    sheet.id(), paper.id(), sheet.title(), content, revision, options.date(), Hash.rows(sheet), before);
        }

        private void write(List<Issued> issued) throws IOException {
            String hall = options.hall();
            file(".html", bytes(HtmlPage.of(hall, paper.title(), paper.question(), issued, "index.html")));
            file(".pdf", Pdf.of(hall, paper.title(), paper.question(), size, issued));
            List<Spreadsheet> tables =
                    Spreadsheet.of(issued.stream().map(Issued::sheet).toList());
            if (!tables.isEmpty()) {
                file(".xlsx", Xlsx.of(tables));
                for (int i = 0; i < tables.size(); i++) {
                    file((i == 0 ? "" : "." + tables.get(i).name()) + ".csv", bytes(Csv.of(tables.get(i))));
                }
            }
        }

        private void file(String ending, byte[] content) throws IOException {
            String name = paper.id() + ending;
            put(name, content);
            files.add(name);
        }
    }

    private @Nullable Manifest read() throws IOException {
        try {
            return Manifest.read(Files.readString(folder.resolve(Manifest.FILE)));
        } catch (NoSuchFileException e) {
            return null;
        }
    }

    /** Puts a file there in one step, and leaves one alone that is the same already. */
    private void put(String name, byte[] content) throws IOException {
        Path file = folder.resolve(name);
        if (Files.exists(file) && Arrays.equals(Files.readAllBytes(file), content)) {
            return;
        }
        Path temporary = folder.resolve(".housewright-" + name);
        try {
            Files.write(temporary, content);
            Files.move(temporary, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    /** Takes away what an earlier revision left of a paper, so that nobody prints it. */
    private void tidy(Paper paper, List<String> files) throws IOException {
        for (String name : filesOf(paper)) {
            if (!files.contains(name)) {
                Files.delete(folder.resolve(name));
            }
        }
    }

    private static final Set<String> ENDINGS = Set.of("html", "pdf", "csv", "xlsx");

    /** The files of a paper that are in the folder: its id and an ending that a binder writes. */
    private List<String> filesOf(Paper paper) throws IOException {
        try (var listed = Files.list(folder)) {
            return listed.map(path -> path.getFileName().toString())
                    .filter(name -> name.startsWith(paper.id() + ".")
                            && ENDINGS.contains(name.substring(name.lastIndexOf('.') + 1)))
                    .sorted()
                    .toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
