package housewright.card;

import housewright.card.Card.Lookup;
import housewright.card.Card.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Deals what is too long for one page out to several cards: first the steps, then the tables. How long a page is, is
 * reckoned from how many letters go into a line of the large type that cards are set in; a test prints them.
 */
final class Dealing {
    /** What stands between head and foot of the shorter of the two usual papers, in mm. */
    private static final double PAGE = 247;

    private static final double HEAD = 17;
    private static final String GO_ON = "First do the card before this one.";

    private Dealing() {}

    /** @param drafts what may be on one card, if it fits; all of one title */
    static List<Card> cards(List<Card> drafts) {
        List<Card> pages = new ArrayList<>();
        drafts.forEach(draft -> pages.addAll(pages(draft)));
        List<Card> cards = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            Card page = pages.get(i);
            boolean one = pages.size() == 1;
            List<String> first = new ArrayList<>(page.first());
            if (i > 0) {
                first.addFirst(page.steps().isEmpty() ? "This goes with card 1." : GO_ON);
            }
            cards.add(new Card(
                    one ? page.id() : page.id() + "-" + (i + 1),
                    page.title(),
                    one ? null : "card " + (i + 1) + " of " + pages.size(),
                    first,
                    page.steps(),
                    page.tables(),
                    page.cautions(),
                    page.calls(),
                    Stream.concat(page.toFillIn().stream(), Names.unknown(page.calls()).stream())
                            .toList()));
        }
        return cards;
    }

    private static List<Card> pages(Card draft) {
        if (height(draft) <= PAGE) {
            return List.of(draft);
        }
        List<Card> pages = new ArrayList<>();
        if (!draft.steps().isEmpty()) {
            for (int count = 1; pages.isEmpty(); count++) {
                List<Card> tried = new ArrayList<>();
                for (List<Step> some : parted(draft.steps(), count)) {
                    tried.add(with(draft, tried.isEmpty() ? draft.first() : List.of(), some, List.of()));
                }
                if (count == draft.steps().size() || tried.stream().allMatch(page -> height(page) <= PAGE)) {
                    pages.addAll(tried);
                }
            }
        }
        for (Lookup table : draft.tables()) {
            for (int count = 1; ; count++) {
                List<Card> tried = new ArrayList<>();
                for (List<List<String>> rows : parted(table.rows(), count)) {
                    Lookup part = new Lookup(table.title(), table.heads(), table.widths(), rows);
                    tried.add(new Card(
                            draft.id(),
                            draft.title(),
                            null,
                            List.of(),
                            List.of(),
                            List.of(part),
                            List.of(),
                            List.of(),
                            List.of()));
                }
                if (count >= table.rows().size() || tried.stream().allMatch(page -> height(page) <= PAGE)) {
                    pages.addAll(tried);
                    break;
                }
            }
        }
        return pages;
    }

    /** With what of its blanks is on these steps. */
    private static Card with(Card draft, List<String> first, List<Step> steps, List<Lookup> tables) {
        boolean blanks = steps.stream().anyMatch(step -> step.blank() != null);
        return new Card(
                draft.id(),
                draft.title(),
                null,
                first,
                steps,
                tables,
                draft.cautions(),
                draft.calls(),
                blanks ? draft.toFillIn() : List.of());
    }

    static <T> List<List<T>> parted(List<T> all, int count) {
        List<List<T>> parted = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            parted.add(all.subList(i * all.size() / count, (i + 1) * all.size() / count));
        }
        return parted;
    }

    /** In mm on paper. */
    static double height(Card card) {
        double height = HEAD;
        for (String text : card.first()) {
            height += lines(text, 88) * 5.8 + 1;
        }
        String last = "";
        for (Step step : card.steps()) {
            String where = Objects.requireNonNullElse(step.where(), "");
            int left = (where.isEmpty() || where.equals(last) ? 0 : lines(where, 40)) + lines(step.act(), 44);
            int right = (step.see() == null ? 0 : lines(step.see(), 23)) + (step.blank() == null ? 0 : 1);
            height += Math.max(left, right) * 5.95 + 1.7;
            last = where;
        }
        for (Lookup table : card.tables()) {
            height += 9 + 6 + height(table);
        }
        if (!card.cautions().isEmpty()) {
            height += lines(String.join(" ", card.cautions()), 94) * 4.7 + 6;
        }
        height += card.calls().size() * 6.8;
        return height
                + (card.toFillIn().isEmpty() && Names.unknown(card.calls()).isEmpty() ? 0 : 12.6);
    }

    private static double height(Lookup table) {
        double sum = table.widths().stream().mapToInt(Integer::intValue).sum();
        double height = 0;
        for (List<String> row : table.rows()) {
            int most = 1;
            for (int i = 0; i < row.size(); i++) {
                double letters = (182 * table.widths().get(i) / sum - 2.5) / 2.2;
                most = Math.max(most, lines(row.get(i), (int) letters));
            }
            height += most * 5.1 + 1.6;
        }
        return height;
    }

    /** As many as words make that are not broken. */
    private static int lines(String text, int letters) {
        int lines = 1;
        int used = 0;
        for (String word : text.split(" ", -1)) {
            if (used > 0 && used + 1 + word.length() > letters) {
                lines++;
                used = 0;
            }
            used += (used == 0 ? 0 : 1) + word.length();
        }
        return lines;
    }
}
