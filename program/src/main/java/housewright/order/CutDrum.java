package housewright.order;

import java.util.List;

/**
 * A drum or box, and what is cut from it.
 *
 * @param metres as it is sold
 */
public record CutDrum(double metres, List<CutPiece> pieces) {
    public CutDrum {
        pieces = List.copyOf(pieces);
    }

    public double left() {
        double cut = pieces.stream().mapToDouble(CutPiece::metres).sum();
        return Math.round((metres - cut) * 100) / 100.0;
    }

    /**
     * One piece.
     *
     * @param cable id of the cable; {@code spare} for the spare length
     */
    public record CutPiece(String cable, double metres) {}
}
