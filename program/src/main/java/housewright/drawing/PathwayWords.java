package housewright.drawing;

import housewright.model.Pathway;

/** A pathway as it is said. */
final class PathwayWords {
    private PathwayWords() {}

    static String of(Pathway pathway, Measure measure) {
        StringBuilder said = new StringBuilder("Pathway ").append(pathway.id());
        if (pathway.kind() != null) {
            said.append(", ").append(pathway.kind().word().replace('-', ' '));
        }
        said.append(", from ").append(pathway.from()).append(" to ").append(pathway.to());
        if (pathway.height() != null) {
            said.append(", height ").append(measure.said(pathway.height().metres()));
        }
        return said.toString();
    }
}
