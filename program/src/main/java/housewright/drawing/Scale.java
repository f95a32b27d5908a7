package housewright.drawing;

import java.util.List;

/**
 * A scale of drawings to scale: those recommended by ISO 5455 (from memory), 1:25 as is common
 * practice on stages, and, under US rules, the usual architectural ones (a
 * fraction of an inch to the foot).
 *
 * @param name as printed
 * @param ratio metres of the building to one of paper
 */
record Scale(String name, double ratio) {
    private static final double INCH = 0.0254;
    private static final List<Scale> METRIC = List.of(
            new Scale("1:5", 5),
            new Scale("1:10", 10),
            new Scale("1:20", 20),
            new Scale("1:25", 25),
            new Scale("1:50", 50),
            new Scale("1:100", 100),
            new Scale("1:200", 200),
            new Scale("1:500", 500),
            new Scale("1:1000", 1000));
    private static final List<Scale> US = List.of(
            new Scale("3\" = 1'-0\"", 4),
            new Scale("1\" = 1'-0\"", 12),
            new Scale("1/2\" = 1'-0\"", 24),
            new Scale("3/8\" = 1'-0\"", 32),
            new Scale("1/4\" = 1'-0\"", 48),
            new Scale("3/16\" = 1'-0\"", 64),
            new Scale("1/8\" = 1'-0\"", 96),
            new Scale("1/16\" = 1'-0\"", 192),
            new Scale("1/32\" = 1'-0\"", 384),
            new Scale("1/64\" = 1'-0\"", 768));

    double unitsPerMetre() {
        return 96 / INCH / ratio;
    }

    /**
     * The largest scale at which something of this size and the room around it fit on A2, or size C.
     *
     * @param around units of the sheet beside the drawing to scale, both ways
     */
    static Scale fit(boolean us, double wideM, double highM, double around) {
        Paper paper = Paper.sizes(us).stream()
                .filter(each -> each.name().equals(us ? "C" : "A2"))
                .findFirst()
                .orElseThrow();
        List<Scale> scales = us ? US : METRIC;
        for (Scale scale : scales) {
            if (scale.fits(paper, wideM, highM, around)) {
                return scale;
            }
        }
        double ratio = scales.getLast().ratio();
        Scale scale = scales.getLast();
        while (!scale.fits(paper, wideM, highM, around)) {
            ratio *= 10;
            scale = new Scale("1:" + Svg.num(ratio), ratio);
        }
        return scale;
    }

    private boolean fits(Paper paper, double wideM, double highM, double around) {
        return wideM * unitsPerMetre() + around <= Page.room(paper.width())
                && highM * unitsPerMetre() + around <= Page.roomDown(paper.height());
    }
}
