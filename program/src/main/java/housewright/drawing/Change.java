package housewright.drawing;

/** What becomes of a thing on a drawing of what changes; on one of a single state everything is there. */
enum Change {
    THERE("there", "", Svg.NORMAL),
    STAYS("stays", "", Svg.HAIR),
    COMES("comes", " (new)", Svg.NORMAL),
    GOES("goes", " (struck)", Svg.NORMAL);

    /** Class in the drawing. */
    final String word;

    /** After a name, for those who cannot see the line. */
    final String said;

    final double weight;

    Change(String word, String said, double weight) {
        this.word = word;
        this.said = said;
        this.weight = weight;
    }
}
