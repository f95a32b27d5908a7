package housewright.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.file.ProjectReader;
import housewright.file.ReadResult;
import housewright.library.BuiltInLibrary;
import housewright.model.Library;
import housewright.paper.Labelling;
import housewright.paper.PageSize;
import housewright.paper.Paper;
import housewright.paper.Papers;
import housewright.study.Study;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A binder from revision to revision. */
class BinderTest {
    private static final Library LIBRARY = BuiltInLibrary.of(1);
    private static final String REFIT = text();

    @TempDir
    Path folder;

    private static String text() {
        try {
            return Files.readString(Path.of("..", "examples", "refit.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Study study(String yaml) {
        return switch (ProjectReader.read("hall.yaml", yaml.getBytes(StandardCharsets.UTF_8), LIBRARY)) {
            case ReadResult.Loaded loaded -> Study.of(loaded.project(), LIBRARY);
            case ReadResult.Refused refused ->
                throw new AssertionError(refused.errors().toString());
        };
    }

    private Binding bind(String yaml, String date, String... papers) {
        List<Paper> chosen = papers.length == 0
                ? Papers.all()
                : List.of(papers).stream()
                        .map(id -> Papers.find(id).orElseThrow())
                        .toList();
        return new Binder(folder, PageSize.A4, Labelling.usual(PageSize.A4), date, (what, step) -> step.run())
                .bind(study(yaml), chosen);
    }

    private Binding.Bound bound(String yaml, String date, String... papers) {
        return (Binding.Bound) bind(yaml, date, papers);
    }

    private Map<String, String> bytes() throws IOException {
        Map<String, String> bytes = new TreeMap<>();
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                bytes.put(file.getFileName().toString(), Hash.of(Files.readString(file, StandardCharsets.ISO_8859_1)));
            }
        }
        return bytes;
    }

    @Test
    void theSameRevisionGivesTheSameBytesAndKeepsItsDate() throws IOException {
        Binding.Bound first = bound(REFIT, "2027-01-11");
        Map<String, String> files = bytes();
        assertThat(files).containsKeys("index.html", "contents.pdf", "cable-schedule.pdf", "cable-schedule.xlsx");
        for (String name : files.keySet()) {
            Files.delete(folder.resolve(name));
        }
        bound(REFIT, "2027-01-11");
        assertThat(bytes()).as("made anew").isEqualTo(files);
        Binding.Bound again = bound(REFIT, "2027-02-28");
        assertThat(bytes()).as("made over it on another day").isEqualTo(files);
        assertThat(again).isEqualTo(first);
        assertThat(again.date()).isEqualTo("2027-01-11");
        assertThat(again.files())
                .containsExactlyInAnyOrderElementsOf(files.keySet().stream()
                        .filter(name -> !name.equals(Manifest.FILE))
                        .toList());
    }

    @Test
    void onlyWhatChangedIsMarkedAndSuperseded() throws IOException {
        String before = REFIT.replace("length: 2 m", "length: 3 m");
        assertThat(before).isNotEqualTo(REFIT);
        String[] some = {"input-list", "cable-schedule", "power-schedule"};
        Binding.Bound first = bound(before, "2027-01-11", some);
        Map<String, String> old = bytes();
        Binding.Bound second = bound(REFIT, "2027-01-18", some);
        assertThat(second.before()).isEqualTo(first.revision());
        assertThat(second.date()).isEqualTo("2027-01-18");
        assertThat(second.sheets())
                .filteredOn(sheet -> sheet.state() == Binding.State.CHANGED)
                .extracting(Binding.IssuedSheet::id)
                .contains("cable-schedule")
                .doesNotContain("input-list-desk", "power-schedule");
        assertThat(bytes().get("input-list.pdf")).as("stays good").isEqualTo(old.get("input-list.pdf"));
        assertThat(bytes().get("cable-schedule.pdf")).isNotEqualTo(old.get("cable-schedule.pdf"));
        String page = Files.readString(folder.resolve("cable-schedule.html"));
        assertThat(page.split("<tr class=\"changed\">", -1))
                .as("marked rows are those whose length changed")
                .hasSize(1 + (before.split("length: 3 m", -1).length - REFIT.split("length: 3 m", -1).length));
        assertThat(page).contains("revision " + second.revision() + " · 2027-01-18");
        String index = Files.readString(folder.resolve("index.html"));
        assertThat(index).contains("Superseded: throw these away", first.revision(), "2027-01-11");
        assertThat(index)
                .as("no more than the bars tell")
                .contains("A row of a table that changed since has a bar", "what is gone, and what is drawn, has none");
        Map<String, String> now = bytes();
        bound(REFIT, "2027-01-20", some);
        assertThat(bytes()).as("marks stay for as long as the revision does").isEqualTo(now);
    }

    /** Read back with PDFBox. */
    @Test
    void allInOnePdfIsNumberedThroughAndTheContentsNameTheRightPages() throws IOException {
        Binding.Bound bound = bound(REFIT, "2027-01-11");
        int pages = pages("contents");
        Set<String> papers =
                bound.sheets().stream().map(Binding.IssuedSheet::paper).collect(Collectors.toSet());
        for (String paper : papers) {
            pages += Papers.find(paper).orElseThrow().isOnLabels() ? 0 : pages(paper);
        }
        assertThat(papers).contains("cable-labels", "cable-schedule", "stage-plan");
        try (PDDocument book = Loader.loadPDF(folder.resolve("binder.pdf").toFile())) {
            assertThat(book.getNumberOfPages()).isEqualTo(pages);
            List<String> texts = new ArrayList<>();
            for (int i = 1; i <= pages; i++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(i);
                stripper.setEndPage(i);
                texts.add(stripper.getText(book));
                assertThat(texts.getLast()).contains("Page " + i + " of " + pages);
            }
            String contents = String.join("", texts.subList(0, pages("contents")));
            int named = 0;
            for (Binding.IssuedSheet sheet : bound.sheets()) {
                Paper paper = Papers.find(sheet.paper()).orElseThrow();
                Matcher row = Pattern.compile("(?m)^" + Pattern.quote(paper.title()) + " "
                                + Pattern.quote(sheet.title()) + " " + bound.revision() + " 2027-01-11 (\\d+)\\s*$")
                        .matcher(contents);
                if (row.find()) {
                    named++;
                    assertThat(texts.get(Integer.parseInt(row.group(1)) - 1)).contains(sheet.title());
                    assertThat(paper.isOnLabels()).isFalse();
                }
            }
            assertThat(named).as("rows that fit on one line").isGreaterThan(5);
            assertThat(book.getDocumentCatalog().getDocumentOutline().children())
                    .extracting(PDOutlineItem::getTitle)
                    .startsWith("Contents", "Input list")
                    .doesNotContain("Cable labels");
        }
    }

    private int pages(String paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(paper + ".pdf").toFile())) {
            return document.getNumberOfPages();
        }
    }

    @Test
    void aSheetThatIsNoMoreIsWithdrawnAndItsFilesAreGone() {
        bound(REFIT, "2027-01-11", "cable-schedule", "input-list");
        String bare = "housewright: 1\nproject: {name: Bare, stage: survey, library: 1}\n";
        Binding.Bound second = bound(bare, "2027-01-18");
        assertThat(second.sheets()).isEmpty();
        assertThat(second.withdrawn()).contains("Cables after the work", "Inputs of desk");
        assertThat(folder.resolve("cable-schedule.pdf")).doesNotExist();
        assertThat(folder.resolve("index.html")).content().contains("nothing: withdrawn");
    }

    @Test
    void papersThatAreNotAskedForStayAsTheyAre() throws IOException {
        bound(REFIT, "2027-01-11", "input-list", "cable-schedule");
        String before = bytes().get("input-list.html");
        Files.writeString(folder.resolve("notes.txt"), "mine");
        Binding.Bound second = bound(REFIT.replace("length: 2 m", "length: 3 m"), "2027-01-18", "cable-schedule");
        assertThat(bytes().get("input-list.html")).isEqualTo(before);
        assertThat(second.files()).contains("input-list.html", "cable-schedule.html");
        assertThat(second.sheets()).extracting(Binding.IssuedSheet::id).contains("input-list-desk");
        assertThat(folder.resolve("notes.txt")).hasContent("mine");
    }

    @Test
    void aDamagedManifestIsRefusedAndNothingIsWritten() throws IOException {
        Files.writeString(folder.resolve(Manifest.FILE), "{\"version\": 9}");
        Binding binding = bind(REFIT, "2027-01-11");
        assertThat(binding)
                .isInstanceOfSatisfying(
                        Binding.NotBound.class,
                        not -> assertThat(not.why()).contains(Manifest.FILE, "cannot be read", "Nothing was written"));
        assertThat(bytes()).containsOnlyKeys(Manifest.FILE);
    }

    @Test
    void aFolderThatCannotBeIsSaidToBeSo() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "a file");
        Binding binding = new Binder(
                        file, PageSize.A4, Labelling.usual(PageSize.A4), "2027-01-11", (what, step) -> step.run())
                .bind(study(REFIT), List.of(Papers.find("budget").orElseThrow()));
        assertThat(binding)
                .isInstanceOfSatisfying(
                        Binding.NotBound.class, not -> assertThat(not.why()).contains("cannot be written"));
    }
}
