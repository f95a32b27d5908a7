package housewright.check.joining;

import housewright.cable.Plug;
import housewright.model.Words;
import java.util.List;

/** Words for several loudspeakers. */
final class Loudspeakers {
    private Loudspeakers() {}

    /** "main left is", "foyer 1 and 3 more are". */
    static String said(List<Plug> loads) {
        String first = Words.said(loads.getFirst().at().thing());
        return loads.size() == 1 ? first + " is" : first + " and " + (loads.size() - 1) + " more are";
    }

    /** "main left", "foyer 1 and 3 more". */
    static String named(List<Plug> loads) {
        String first = Words.said(loads.getFirst().at().thing());
        return loads.size() == 1 ? first : first + " and " + (loads.size() - 1) + " more";
    }
}
