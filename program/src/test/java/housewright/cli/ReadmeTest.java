package housewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import housewright.demo.Mistake;
import housewright.finding.Finding;
import housewright.library.BuiltInLibrary;
import housewright.study.Study;
import housewright.testing.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The findings in the README are what the program prints, on halls with one mistake each. */
class ReadmeTest {
    private static final Path README = Path.of("../README.md");
    private static final String HEADING = "## Ten findings";
    private static final String FENCE = "```\n";

    /** Mistakes by name, in the order of the page; see {@code mistakes/}. */
    private static final List<String> TOLD = List.of(
            "the lectern's lead is pulled",
            "the click's channel is in the main mix",
            "the interpretation goes on into a box that nobody has opened",
            "nobody delays the stream's sound",
            "an amplifier's output goes into the powered subwoofer",
            "a ribbon microphone stands on the table and phantom power is on",
            "thin coax from the side camera",
            "the left fill waits for nothing",
            "the visitor's laptop protects what it sends",
            "the second receiver has the first one's address");

    @Test
    void theTenFindingsAreWhatIsPrinted() throws IOException {
        List<String> told = new ArrayList<>();
        for (String name : TOLD) {
            Mistake mistake = Mistake.all().stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("There is no mistake \"" + name + "\""));
            told.add("# " + name + "\n" + printed(mistake));
        }
        assertThat(told).hasSize(10);
        String page = Files.readString(README);
        int heading = page.indexOf(HEADING + "\n");
        assertThat(heading).as(HEADING).isNotNegative();
        int start = page.indexOf(FENCE, heading) + FENCE.length();
        int end = page.indexOf(FENCE, start);
        Golden.hold(README, page.substring(0, start) + String.join("\n", told) + page.substring(end));
    }

    /** What {@code check} prints of a mistake: the finding, or the feed that it breaks. */
    private static String printed(Mistake mistake) {
        Study study = Study.of(mistake.project(), BuiltInLibrary.of(1));
        Finding finding = mistake.in(study).getFirst();
        String out =
                new CheckText(new Page(false), study, "hall.yaml", true).write().toString();
        List<String> said = blocks(out).stream()
                .filter(block -> tells(block, mistake, finding))
                .toList();
        assertThat(said).as("%s in%n%s", mistake, out).hasSize(1);
        return said.getFirst();
    }

    /** Each line with a mark and what is indented below it. */
    private static List<String> blocks(String out) {
        List<String> blocks = new ArrayList<>();
        StringBuilder block = new StringBuilder();
        for (String line : out.split("\n")) {
            boolean begins = !line.isEmpty() && "■▲○".indexOf(line.charAt(0)) >= 0;
            boolean goesOn = !block.isEmpty() && line.startsWith("  ");
            if (!begins && goesOn) {
                block.append(line).append('\n');
                continue;
            }
            if (!block.isEmpty()) {
                blocks.add(block.toString());
                block.setLength(0);
            }
            if (begins) {
                block.append(line).append('\n');
            }
        }
        if (!block.isEmpty()) {
            blocks.add(block.toString());
        }
        return blocks;
    }

    private static boolean tells(String block, Mistake mistake, Finding finding) {
        String words = block.replaceAll("\\s+", " ");
        return words.contains(finding.message().replaceAll("[\\s\u00A0]+", " "))
                || mistake.subject().startsWith("feed ")
                        && !words.contains("[")
                        && words.substring(2).matches(mistake.subject().substring("feed ".length()) + "\\b.*");
    }
}
