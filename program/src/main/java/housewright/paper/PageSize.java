package housewright.paper;

import housewright.model.Project;
import housewright.model.RuleSet;
import housewright.model.Rules;

/** The paper that tables and texts are printed on (ISO 216 and ANSI/ASME Y14.1, from memory). */
public enum PageSize {
    A4("a4", 210, 297),
    LETTER("letter", 215.9, 279.4);

    private final String word;
    private final double width;
    private final double height;

    PageSize(String word, double width, double height) {
        this.word = word;
        this.width = width;
        this.height = height;
    }

    /** What a project's printers hold, by the rules it goes by. */
    public static PageSize of(Project project) {
        Rules rules = project.about().rules();
        return rules != null && rules.set() == RuleSet.US ? LETTER : A4;
    }

    /** As it stands in a command. */
    public String word() {
        return word;
    }

    /** Of an upright page, in mm. */
    public double width() {
        return width;
    }

    /** Of an upright page, in mm. */
    public double height() {
        return height;
    }
}
