package housewright.web.page;

import housewright.app.Now;
import housewright.drawing.Contents;
import housewright.drawing.Drawings;
import housewright.drawing.Sheet;
import housewright.drawing.State;
import housewright.drawing.Trade;
import housewright.finding.Subject;
import housewright.signal.FeedProof;
import housewright.signal.Moment;
import housewright.study.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A signal drawing, and the feed that is lit in it.
 *
 * @param systems the systems there are, and the chosen feed alone
 * @param sheets of the system, where it has several
 * @param feeds to choose from, the failing ones first
 * @param feed the chosen one, step by step; null where none is
 * @param unlit says that the chosen feed does not run through what is drawn; null where it does
 * @param keep what the form for a feed sends along
 * @param thing chosen in the drawing; null where none is
 */
public record SignalPage(
        String answer,
        List<Choice> systems,
        List<Choice> states,
        List<Choice> sheets,
        List<Offer> feeds,
        @Nullable FeedPage feed,
        @Nullable String unlit,
        Query keep,
        Query here,
        DrawnPart drawn,
        @Nullable ThingPart thing) {
    public SignalPage {
        systems = List.copyOf(systems);
        states = List.copyOf(states);
        sheets = List.copyOf(sheets);
        feeds = List.copyOf(feeds);
    }

    /** A feed that can be chosen. */
    public record Offer(String id, String words, boolean chosen) {}

    /**
     * What is asked for.
     *
     * @param trade null for the feed alone
     * @param sheet 0 where none is named
     * @param feed to be lit; null for none
     * @param thing chosen in the drawing; null for none
     */
    public record Asked(
            @Nullable Trade trade,
            State state,
            int sheet,
            @Nullable String feed,
            @Nullable String thing) {

        /** The number of the sheet to show: the one named, else the first that has the feed. */
        public int number(List<Contents> contents, Set<Subject> passed) {
            if (sheet > 0) {
                return Math.min(sheet, Math.max(1, contents.size()));
            }
            return contents.stream()
                    .filter(each -> each.subjects().stream().anyMatch(passed::contains))
                    .map(Contents::number)
                    .findFirst()
                    .orElse(1);
        }
    }

    /**
     * @param contents of the system's sheets; empty for the feed alone
     * @param passed by the feed; empty where none is chosen
     */
    public static SignalPage of(
            Now now,
            Drawings drawings,
            Asked asked,
            List<Contents> contents,
            Set<Subject> passed,
            Sheet sheet,
            Links links,
            String job) {
        Trade trade = asked.trade();
        Study study = asked.state() == State.TODAY ? now.study().at(Moment.today()) : now.study();
        Optional<FeedProof> proof = Optional.ofNullable(asked.feed()).flatMap(study::findProof);
        Query here = Query.of(job + "/signal")
                .with("system", trade == null ? "" : trade.word())
                .with("state", asked.state().word())
                .with("sheet", trade == null || asked.sheet() == 0 ? "" : Integer.toString(sheet.number()))
                .with("feed", asked.feed());
        List<Choice> systems = new ArrayList<>();
        Query whole = here.with("sheet", "");
        if (asked.feed() != null) {
            systems.add(
                    new Choice(asked.feed() + " alone", whole.with("system", "").href(), trade == null));
        }
        List<Trade> trades = new ArrayList<>(drawings.trades(asked.state()));
        if (trade != null && !trades.contains(trade)) {
            trades.add(trade);
        }
        for (Trade each : trades) {
            systems.add(
                    new Choice(each.title(), whole.with("system", each.word()).href(), each == trade));
        }
        List<Choice> states = new ArrayList<>();
        for (State each : State.values()) {
            String label = each.title().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                    + each.title().substring(1);
            states.add(new Choice(label, whole.with("state", each.word()).href(), each == asked.state()));
        }
        List<Choice> sheets = new ArrayList<>();
        if (contents.size() > 1) {
            for (Contents each : contents) {
                boolean has = each.subjects().stream().anyMatch(passed::contains);
                sheets.add(new Choice(
                        each.number() + " " + each.title() + (has ? ", passed by " + asked.feed() : ""),
                        here.with("sheet", Integer.toString(each.number())).href(),
                        each.number() == sheet.number()));
            }
        }
        boolean lit = trade == null || sheet.subjects().stream().anyMatch(passed::contains);
        FeedPage feed = proof.map(each -> FeedPage.of(study, each, links)).orElse(null);
        return new SignalPage(
                feed != null ? feed.answer() : answer(now.study(), trade, asked.state(), contents),
                systems,
                states,
                sheets,
                offers(study, asked.feed()),
                feed,
                asked.feed() == null || lit ? null : unlit(asked.feed(), contents, passed),
                Query.of(job + "/signal")
                        .with("system", trade == null ? "" : trade.word())
                        .with("state", asked.state().word()),
                here,
                DrawnPart.of(sheet, here, "signal", asked.thing()),
                asked.thing() == null
                        ? null
                        : ThingPart.of(now, links, job, asked.thing(), false).orElse(null));
    }

    private static String unlit(String feed, List<Contents> contents, Set<Subject> passed) {
        boolean elsewhere =
                contents.stream().anyMatch(each -> each.subjects().stream().anyMatch(passed::contains));
        return feed
                + (elsewhere
                        ? " does not pass this sheet."
                        : " is on no sheet of this system, as far as it comes; choose it alone to see its way.");
    }

    private static String answer(Study study, @Nullable Trade trade, State state, List<Contents> contents) {
        long things = contents.stream()
                .flatMap(each -> each.subjects().stream())
                .filter(each -> each.kind().equals("equipment"))
                .distinct()
                .count();
        String title = (trade == null ? "Signal" : trade.title()) + ", " + state.title();
        String extent = contents.isEmpty()
                ? ": nothing of it is in the project yet"
                : ": " + things + (things == 1 ? " piece" : " pieces") + " of equipment"
                        + (contents.size() > 1 ? " on " + contents.size() + " sheets" : "");
        return title + extent + ". " + study.verdict().sentence() + ".";
    }

    private static List<Offer> offers(Study study, @Nullable String chosen) {
        List<Offer> failing = new ArrayList<>();
        List<Offer> proven = new ArrayList<>();
        for (FeedProof proof : study.proofs()) {
            String id = proof.feed().id();
            Offer offer = new Offer(id, id + ": " + FeedsPage.word(study, proof), id.equals(chosen));
            (proof.proven() ? proven : failing).add(offer);
        }
        failing.addAll(proven);
        return failing;
    }
}
