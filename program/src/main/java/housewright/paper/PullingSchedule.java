package housewright.paper;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.model.Life;
import housewright.model.Pathway;
import housewright.model.TaskKind;
import housewright.model.Words;
import housewright.signal.Moment;
import housewright.study.Study;
import housewright.work.WorkTask;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** What is pulled along each pathway: which cables together, cut how long, from where to where, how high. */
final class PullingSchedule extends Titled {
    PullingSchedule() {
        super(
                "pulling-schedule",
                "Pulling schedule",
                "Whoever pulls cable",
                "Which cables go along which pathway, which of them together, and how long is each cut?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        Study target = study.at(Moment.target());
        Say say = Say.of(study.project());
        List<Lead> pulled = new ArrayList<>();
        for (Lead lead : target.cabling().leads()) {
            if (!lead.pathways().isEmpty() && isPulled(lead)) {
                pulled.add(lead);
            }
        }
        if (pulled.isEmpty()) {
            return List.of();
        }
        Map<String, String> bundles = bundles(pulled);
        Map<String, Set<String>> hires = hires(study);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Cautions.PULLING);
        if (pulled.stream().anyMatch(PullingSchedule::isHigh)) {
            blocks.add(Cautions.LADDERS);
        }
        blocks.add(new Block.Text(
                "Cables of one bundle take the same way from end to end: pull them in one go. Lengths to cut"
                        + " count the whole run with slack at both ends. Label both ends before you pull."));
        blocks.add(bundleTable(pulled, bundles, say));
        for (Pathway pathway : study.project().venue().pathways().values()) {
            List<Row> rows = new ArrayList<>();
            Set<String> hired = new TreeSet<>();
            for (Lead lead : pulled) {
                if (lead.pathways().contains(pathway)) {
                    rows.add(row(lead, pathway, bundles.getOrDefault(lead.id(), ""), say));
                    hired.addAll(hires.getOrDefault(lead.id(), Set.of()));
                }
            }
            if (!rows.isEmpty()) {
                blocks.add(new Block.Heading(heading(pathway)));
                blocks.add(new Block.Text(said(pathway, hired, say)));
                blocks.add(table(rows, say));
            }
        }
        return List.of(Sheet.lying("pulling-schedule", "Cables to pull, pathway by pathway", recipient(), blocks));
    }

    private static boolean isPulled(Lead lead) {
        return lead.cable().life() == Life.NEW
                || (lead.cable().was() != null && !lead.cable().was().via().isEmpty());
    }

    /** Above what is reached from the floor: 2 m, common practice. */
    private static boolean isHigh(Lead lead) {
        return lead.pathways().stream()
                .anyMatch(each -> each.height() == null || each.height().metres() > 2);
    }

    /** A letter for each set of pathways that cables share from end to end. */
    private static Map<String, String> bundles(List<Lead> pulled) {
        Map<List<Pathway>, String> letters = new LinkedHashMap<>();
        Map<String, String> bundles = new LinkedHashMap<>();
        int count = 0;
        for (Lead lead : pulled) {
            List<Pathway> way = lead.pathways();
            String letter = letters.get(way);
            if (letter == null) {
                String reversed = letters.get(way.reversed());
                letter = reversed == null ? letter(count++) : reversed;
                letters.put(way, letter);
            }
            bundles.put(lead.id(), letter);
        }
        return bundles;
    }

    /** A to Z, then AA, AB and so on. */
    private static String letter(int number) {
        String last = String.valueOf((char) ('A' + number % 26));
        return number < 26 ? last : letter(number / 26 - 1) + last;
    }

    /** What pulling each cable takes; for making its ends off something else may be needed. */
    private static Map<String, Set<String>> hires(Study study) {
        Map<String, Set<String>> hires = new LinkedHashMap<>();
        for (WorkTask task : study.work().tasks()) {
            for (String about : task.about()) {
                if (about.startsWith("cables.") && task.does().contains(TaskKind.PULL)) {
                    hires.computeIfAbsent(about.substring("cables.".length()), id -> new LinkedHashSet<>())
                            .addAll(task.hires());
                }
            }
        }
        return hires;
    }

    private static Block.Table bundleTable(List<Lead> pulled, Map<String, String> bundles, Say say) {
        Map<String, List<Lead>> byBundle = new LinkedHashMap<>();
        pulled.forEach(lead -> byBundle.computeIfAbsent(bundles.get(lead.id()), letter -> new ArrayList<>())
                .add(lead));
        List<Row> rows = new ArrayList<>();
        byBundle.forEach((letter, leads) -> {
            Double longest = 0.0;
            for (Lead lead : leads) {
                longest = longest == null || lead.span() == null
                        ? null
                        : Double.valueOf(Math.max(longest, lead.span().metres()));
            }
            rows.add(new Row(
                    letter,
                    List.of(
                            Cell.of(letter),
                            Cell.of(String.join(
                                    ", ", leads.stream().map(Lead::id).toList())),
                            Cell.of(Say.pathways(leads.getFirst().pathways())),
                            Cell.orBlank(longest == null ? null : say.length(longest)),
                            Cell.BOX)));
        });
        return new Block.Table(
                "bundles",
                List.of(
                        Column.id("Bundle", 7),
                        Column.text("Cables", 45),
                        Column.text("Along", 35),
                        Column.number(say.lengthHead("Longest"), 9),
                        Column.text("Pulled", 7)),
                rows);
    }

    private static Block.Table table(List<Row> rows, Say say) {
        return new Block.Table(
                "pulls",
                List.of(
                        Column.id("Pathway", 9),
                        Column.id("Cable", 8),
                        Column.id("Bundle", 7),
                        Column.text("Type", 14),
                        Column.number(say.lengthHead("Cut"), 7),
                        Column.text("One end", 19),
                        Column.text("Other end", 19),
                        Column.text("Whole way", 21),
                        Column.text("Pulled", 6)),
                rows);
    }

    private static Row row(Lead lead, Pathway pathway, String bundle, Say say) {
        return new Row(
                pathway.id() + " " + lead.id(),
                List.of(
                        Cell.of(pathway.id()),
                        Cell.of(lead.id()),
                        Cell.of(bundle),
                        Cell.orBlank(lead.cable().type()),
                        say.length(lead.span()),
                        Say.end(lead, Joint::from),
                        Say.end(lead, Joint::to),
                        Cell.of(Say.pathways(lead.pathways())),
                        Cell.BOX));
    }

    private static String heading(Pathway pathway) {
        String kind = pathway.kind() == null ? "" : ", " + pathway.kind().word().replace('-', ' ');
        return pathway.id() + kind + ": " + said(pathway.from()) + " to " + said(pathway.to());
    }

    private static String said(@Nullable String place) {
        return place == null ? "________" : Words.said(place);
    }

    private static String said(Pathway pathway, Set<String> hired, Say say) {
        List<String> said = new ArrayList<>();
        said.add("Length "
                + (pathway.length() == null
                        ? "________"
                        : say.lengthInWords(pathway.length().metres())));
        said.add("height "
                + (pathway.height() == null
                        ? "________"
                        : say.lengthInWords(pathway.height().metres())));
        if (pathway.bore() != null) {
            said.add("bore " + pathway.bore());
        }
        if (pathway.beside() != null) {
            said.add("beside " + pathway.beside()
                    + (pathway.apart() == null ? ", apart ________" : ", " + pathway.apart() + " apart"));
        }
        if (!hired.isEmpty()) {
            said.add("with " + String.join(", ", hired.stream().map(Words::said).toList()));
        }
        return String.join("; ", said) + ".";
    }
}
