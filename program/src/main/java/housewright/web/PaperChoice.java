package housewright.web;

import housewright.paper.LabelStock;
import housewright.paper.Labelling;
import housewright.paper.PageSize;
import java.util.stream.Stream;

/**
 * What somebody prints on.
 *
 * @param labels name or measurements of the stock
 * @param first where the first label goes on a sheet that is begun
 * @param site address of the project in the codes on labels; empty for none
 */
record PaperChoice(PageSize size, String labels, int first, String site) {
    private static final int MOST_LABELS = 10_000;

    /** What nobody has chosen otherwise. */
    static PaperChoice usual(PageSize size, String site) {
        return new PaperChoice(size, LabelStock.usualFor(size).name(), 1, site);
    }

    /**
     * As it was typed.
     *
     * @throws IllegalArgumentException where something cannot be printed on, in words
     */
    static PaperChoice of(String size, String labels, String first, String site) {
        PageSize page = size(size);
        if (!first.matches("\\d{1,4}")) {
            throw new IllegalArgumentException("The first label is a number from 1, and not " + first);
        }
        if (!site.isEmpty() && !site.matches("https?://[^\\s/]+(/\\S*)?")) {
            throw new IllegalArgumentException(
                    "The address in the codes is one such as http://192.168.1.20:8080/p/hall, and not " + site);
        }
        LabelStock stock = LabelStock.parse(labels);
        if (stock.perPage() > MOST_LABELS) {
            throw new IllegalArgumentException("No sheet has more than " + MOST_LABELS + " labels");
        }
        PaperChoice choice = new PaperChoice(page, stock.name(), Integer.parseInt(first), site);
        choice.labelling();
        return choice;
    }

    private static PageSize size(String word) {
        return Stream.of(PageSize.values())
                .filter(each -> each.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The paper is a4 or letter, and not " + word));
    }

    /** @throws IllegalArgumentException where there is no such size, in words */
    static String usualLabels(String size) {
        return LabelStock.usualFor(size(size)).name();
    }

    Labelling labelling() {
        return new Labelling(LabelStock.parse(labels), first, site);
    }
}
