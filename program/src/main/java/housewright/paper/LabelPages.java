package housewright.paper;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays what is to be read and scanned out on labels. The letters are as large as fit, 11 to 6 points; how wide they are
 * is reckoned at somewhat over half their size, on the wide side for this typeface. Where text and code do not both fit
 * the text stays and the code is left out, and where the text alone does not, its last lines are, which the first page
 * says.
 */
final class LabelPages {
    private static final double[] POINTS = {11, 10, 9, 8, 7, 6.5, 6};
    private static final double POINT = 25.4 / 72; // mm (NIST SP 811)
    private static final double LETTER = 0.54; // of the size, of condensed letters on average; bold ones are wider
    private static final double BOLD = 0.6;

    /** The smallest module that the cameras of phones read with ease, in mm (common practice). */
    static final double LEAST_MODULE = 0.33;

    /** One that is read from arm's length, in mm (common practice); larger ones only take room from the text. */
    private static final double GOOD_MODULE = 0.45;

    /** What one label says: its first line is bold. */
    record Said(List<String> lines, String code) {}

    private final Labelling labelling;
    private final LabelStock stock;
    private int withoutCode;
    private int shortened;

    LabelPages(Labelling labelling) {
        this.labelling = labelling;
        this.stock = labelling.stock();
    }

    /** A page to try on plain paper, then the labels. */
    List<Block> pages(List<Said> all) {
        List<Label> labels = new ArrayList<>();
        List<Block> pages = new ArrayList<>();
        int number = labelling.first() - 1;
        for (Said said : all) {
            labels.add(label(number, said));
            number++;
            if (number % stock.perPage() == 0) {
                pages.add(new Block.Labels(stock.pageWidth(), stock.pageHeight(), false, labels));
                labels.clear();
            }
        }
        if (!labels.isEmpty()) {
            pages.add(new Block.Labels(stock.pageWidth(), stock.pageHeight(), false, labels));
        }
        if (!pages.isEmpty() && !stock.isTape()) {
            pages.addFirst(new LabelPages(labelling).trial()); // what is cut short on it is no label
        }
        return pages;
    }

    /** What had to be left out, in words; none where nothing had. */
    List<String> leftOut() {
        List<String> out = new ArrayList<>();
        if (withoutCode > 0) {
            out.add(Say.count(withoutCode, "label") + " without its code: too small for one that a phone reads");
        }
        if (shortened > 0) {
            out.add(Say.count(shortened, "label") + " cut short: the text is longer than the label");
        }
        return out;
    }

    private Block trial() {
        List<Label> outlines = new ArrayList<>();
        for (int i = 0; i < stock.perPage(); i++) {
            List<String> text = i == 0
                    ? List.of(
                            "1 Try this page first",
                            "on plain paper, at 100 %, not fitted to the page.",
                            "Hold it with a label sheet against the light: the edges must meet.")
                    : List.of(Integer.toString(i + 1));
            outlines.add(label(i, new Said(text, "")));
        }
        return new Block.Labels(stock.pageWidth(), stock.pageHeight(), true, outlines);
    }

    private Label label(int number, Said said) {
        double inside = stock.height() - 2 * Label.INSET;
        double wide = stock.width() - 2 * Label.INSET;
        double side = said.code().isEmpty() ? 0 : side(said.code(), Math.min(inside, wide * 0.6));
        Label best = side > 0 ? fitted(number, said, side, wide - side - 1, inside) : null;
        if (best == null) {
            withoutCode += said.code().isEmpty() ? 0 : 1;
            best = fitted(number, said, 0, wide, inside);
        }
        if (best == null) {
            shortened++;
            best = cut(number, said, wide, inside);
        }
        return best;
    }

    /** 0 where it would be too fine to read. */
    private static double side(String code, double most) {
        int modules = Code.of(code).modules();
        double finest = modules * LEAST_MODULE;
        return finest > most ? 0 : Math.min(most, modules * GOOD_MODULE);
    }

    private Label cut(int number, Said said, double wide, double high) {
        double points = POINTS[POINTS.length - 1];
        Wrapped all = wrapped(said.lines(), wide, points);
        int most = Math.max(1, (int) (high / (points * POINT * Label.LINE)));
        List<String> some = all.lines().subList(0, Math.min(most, all.lines().size()));
        return at(number, points, new Wrapped(some, Math.min(all.bold(), some.size())), "", 0);
    }

    private @Nullable Label fitted(int number, Said said, double side, double wide, double high) {
        for (double points : POINTS) {
            Wrapped text = wrapped(said.lines(), wide, points);
            if (text.lines().size() * points * POINT * Label.LINE <= high && text.isWithin(wide, points)) {
                return at(number, points, text, side > 0 ? said.code() : "", side);
            }
        }
        return null;
    }

    private Label at(int number, double points, Wrapped text, String code, double side) {
        return new Label(
                stock.left(number),
                stock.top(number),
                stock.width(),
                stock.height(),
                points,
                text.lines(),
                text.bold(),
                code,
                side);
    }

    /** Lines as they are printed; the first ones are bold. */
    private record Wrapped(List<String> lines, int bold) {
        boolean isWithin(double wide, double points) {
            for (int i = 0; i < lines.size(); i++) {
                if (length(lines.get(i), i < bold, points) > wide) {
                    return false;
                }
            }
            return true;
        }
    }

    private static Wrapped wrapped(List<String> texts, double wide, double points) {
        List<String> lines = new ArrayList<>();
        int bold = 0;
        for (int i = 0; i < texts.size(); i++) {
            StringBuilder now = new StringBuilder();
            for (String word : texts.get(i).split(" ", -1)) {
                String more = now.isEmpty() ? word : now + " " + word;
                if (!now.isEmpty() && length(more, i == 0, points) > wide) {
                    lines.add(now.toString());
                    now = new StringBuilder(word);
                } else {
                    now = new StringBuilder(more);
                }
            }
            lines.add(now.toString());
            bold = i == 0 ? lines.size() : bold;
        }
        return new Wrapped(lines, bold);
    }

    private static double length(String text, boolean bold, double points) {
        return text.codePointCount(0, text.length()) * points * POINT * (bold ? BOLD : LETTER);
    }
}
