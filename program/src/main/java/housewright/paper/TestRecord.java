package housewright.paper;

import housewright.cable.Joint;
import housewright.cable.Lead;
import housewright.model.Cable;
import housewright.model.Carries;
import housewright.model.Feed;
import housewright.model.Life;
import housewright.model.Person;
import housewright.model.Ref.Address;
import housewright.model.Words;
import housewright.signal.FeedProof;
import housewright.signal.LevelAt;
import housewright.signal.PairProof;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is tried before the hall is handed over, with what must come out, and who signs for it. */
final class TestRecord extends Titled {
    TestRecord() {
        super(
                "test-record",
                "Test and sign-off record",
                "Whoever tests, and whoever takes the hall over",
                "What is tried, what must come out, and what did?");
    }

    @Override
    public List<Sheet> sheets(Study study, PaperOptions options) {
        List<Sheet> sheets = new ArrayList<>();
        List<Lead> changed = study.cabling().leads().stream()
                .filter(lead -> isChanged(lead.cable()) && !lead.isInside())
                .toList();
        if (!changed.isEmpty()) {
            sheets.add(cables(study, changed));
        }
        if (!study.proofs().isEmpty()) {
            sheets.add(feeds(study));
        }
        if (!sheets.isEmpty()) {
            sheets.add(signOff(study));
        }
        return sheets;
    }

    private static boolean isChanged(Cable cable) {
        return cable.life() != Life.KEEP || cable.was() != null;
    }

    private Sheet cables(Study study, List<Lead> changed) {
        Say say = Say.of(study.project());
        List<Row> rows = new ArrayList<>();
        for (Lead lead : changed) {
            CableTest test = CableTest.of(study, lead, say);
            String label = lead.cable().label();
            String tested = lead.cable().tested();
            rows.add(new Row(
                    lead.id(),
                    List.of(
                            Cell.of(lead.id()),
                            Cell.of(
                                    lead.cable().type() == null
                                            ? ""
                                            : lead.cable().type() + (label == null ? "" : ", " + label)),
                            Say.end(lead, Joint::from),
                            Say.end(lead, Joint::to),
                            Cell.of(test.how()),
                            Cell.orBlank(test.expect()),
                            Cell.orBlank(tested),
                            Cell.BOX,
                            Cell.BLANK)));
        }
        int others = study.cabling().leads().size() - changed.size();
        return Sheet.lying(
                "test-cables",
                "Tests: cables",
                recipient(),
                List.of(
                        Cautions.MAINS,
                        Cautions.HEARING,
                        new Block.Text("Before anything is plugged in for good. "
                                + (others == 0
                                        ? ""
                                        : Say.count(others, "cable")
                                                + " that nobody changes or that lie within a thing are tried with the feeds. ")
                                + "Lengths and losses are worked out from the drawing; a measured one that is far off is a wrong cable or a wrong"
                                + " drawing."),
                        new Block.Table(
                                "test-cables",
                                List.of(
                                        Column.id("Cable", 8),
                                        Column.text("What", 15),
                                        Column.text("From", 16),
                                        Column.text("To", 16),
                                        Column.text("How", 23),
                                        Column.text("Expect", 28),
                                        Column.text("Measured", 13),
                                        Column.text("Right", 5),
                                        Column.text("By, date", 12)),
                                rows)));
    }

    private Sheet feeds(Study study) {
        List<Row> rows = new ArrayList<>();
        for (FeedProof proof : study.proofs()) {
            Map<Address, List<PairProof>> byEnd = new LinkedHashMap<>();
            proof.pairs()
                    .forEach(pair -> byEnd.computeIfAbsent(pair.to(), key -> new ArrayList<>())
                            .add(pair));
            byEnd.forEach((end, pairs) -> rows.add(row(study, proof, end, pairs)));
        }
        List<Block> blocks = new ArrayList<>(List.of(Cautions.HEARING));
        if (study.proofs().stream().anyMatch(proof -> proof.feed().carries() == Carries.LIGHT)) {
            blocks.add(Cautions.LAMPS);
        }
        Collections.addAll(
                blocks,
                new Block.Text(
                        "Faders down, then up slowly. Delays and levels are those of the drawing, electrical, with faders open at 0 dB;"
                                + " a level stands where the types of things say enough to reckon one."),
                new Block.Table(
                        "test-feeds",
                        List.of(
                                Column.text("Feed", 17),
                                Column.text("Do", 32),
                                Column.text("Where", 17),
                                Column.text("Expect", 40),
                                Column.text("Measured", 13),
                                Column.text("Right", 5),
                                Column.text("By, date", 12)),
                        rows));
        return Sheet.lying("test-feeds", "Tests: feeds", recipient(), blocks);
    }

    private static Row row(Study study, FeedProof proof, Address end, List<PairProof> pairs) {
        Feed feed = proof.feed();
        Set<String> from = new LinkedHashSet<>();
        pairs.forEach(pair -> from.add(pair.from().said()));
        String doing = feed.test() != null
                ? feed.test()
                : act(feed) + String.join("; ", from) + (from.size() == 1 ? "." : ", one after the other.");
        return new Row(
                feed.id() + " " + end,
                List.of(
                        Cell.of(Words.said(feed.id())),
                        Cell.of(doing),
                        Cell.of(end.said()),
                        Cell.of(expect(study, proof, pairs)),
                        Cell.BLANK,
                        Cell.BOX,
                        Cell.BLANK));
    }

    private static String act(Feed feed) {
        Carries carries = feed.carries();
        return switch (carries) {
            case AUDIO -> "Speak or play at ";
            case PICTURE -> "Show something at ";
            case LIGHT, CONTROL -> "Press or move ";
            case DATA -> "Send from ";
            case null -> "Send something from ";
        };
    }

    private static String expect(Study study, FeedProof proof, List<PairProof> pairs) {
        Feed feed = proof.feed();
        if (feed.never()) {
            return "Nothing of it, however loud or bright it is at the source";
        }
        List<String> expect = new ArrayList<>();
        expect.add(
                switch (feed.carries()) {
                    case AUDIO -> "Heard clean: no hum, no crackle, the right one";
                    case PICTURE ->
                        "Seen steady, the right one"
                                + (study.project().about().picture() == null
                                        ? ""
                                        : "; house format "
                                                + study.project().about().picture());
                    case LIGHT, CONTROL -> "It answers, each time";
                    case DATA -> "It arrives whole";
                    case null -> "It arrives";
                });
        long least = pairs.stream().mapToLong(PairProof::delayNanos).min().orElse(0);
        long most = pairs.stream().mapToLong(PairProof::delayNanos).max().orElse(0);
        boolean all = pairs.stream().noneMatch(pair -> pair.hops().isEmpty());
        boolean known = pairs.stream().allMatch(pair -> pair.lacking().isEmpty());
        if (all && most > 0) {
            String range = least == most ? ms(most) : ms(least) + " to " + ms(most);
            expect.add("delay " + (known ? "" : "at least ") + range + " ms"
                    + (feed.within() == null ? "" : ", allowed " + feed.within()));
        }
        if (!all) {
            expect.add("the drawing does not prove it: mend that first");
        }
        Set<String> levels = new LinkedHashSet<>();
        if (feed.carries() == Carries.AUDIO) {
            for (PairProof pair : pairs) {
                LevelAt last = null;
                for (LevelAt each : study.signals().levels(pair)) {
                    last = each.level() == null ? last : each;
                }
                if (last != null && last.level() != null) {
                    levels.add(last.level() + " at " + last.at().saidPort());
                }
            }
        }
        levels.stream().limit(2).forEach(level -> expect.add("nominal level " + level));
        if (levels.size() > 2) {
            expect.add("from other sources " + (levels.size() - 2) + " other levels");
        }
        return String.join("; ", expect);
    }

    private static String ms(long nanos) {
        return Say.number(nanos / 1e6, 1);
    }

    private Sheet signOff(Study study) {
        List<String> lines = List.of(
                "Every cable on the record is tried and right",
                "Every feed arrives; every never-feed stays out",
                "Snags are closed, or each has a name and a day",
                "Fixed wiring: the licensed electrician's certificate is here",
                "Overhead: a competent person has looked at points, fixings and safety attachments",
                "Looks and settings are saved, with their date",
                "Volunteers have done start up, run and shut down by their cards",
                "Passwords, licences and manuals are handed over; where they are kept is written down",
                "The as-built set is corrected by hand and handed over");
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            rows.add(new Row("line-" + (i + 1), List.of(Cell.of(lines.get(i)), Cell.BOX, Cell.BLANK)));
        }
        List<Row> people = new ArrayList<>();
        for (Person person : study.project().people().values()) {
            people.add(new Row(
                    person.id(),
                    List.of(
                            Cell.of(Words.said(person.id()) + (person.role() == null ? "" : ", " + person.role())),
                            Cell.BLANK,
                            Cell.BLANK)));
        }
        people.add(new Row("another", List.of(Cell.BLANK, Cell.BLANK, Cell.BLANK)));
        return Sheet.upright(
                "sign-off",
                "Sign-off",
                recipient(),
                List.of(
                        new Block.Text(
                                "Signed when it has been seen, not when it has been promised. Nothing here takes the place of the certificates"
                                        + " and inspections that local code asks for."),
                        new Block.Table(
                                "sign-off",
                                List.of(Column.text("What", 60), Column.text("Seen", 6), Column.text("By, date", 24)),
                                rows),
                        new Block.Heading("Who signs"),
                        new Block.Table(
                                "signatures",
                                List.of(Column.text("Who", 40), Column.text("Signature", 34), Column.text("Date", 16)),
                                people)));
    }
}
