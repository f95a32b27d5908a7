package housewright.order;

import housewright.model.Drum;
import housewright.order.CutDrum.CutPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Cuts the cable of one type from the drums it is sold in. */
final class Cutting {
    private Cutting() {}

    /** @param drum null where nobody has said how it is sold; then it is bought by the metre */
    static CutPlan plan(String type, List<CutPiece> pieces, @Nullable Drum drum) {
        double wanted = round(pieces.stream().mapToDouble(CutPiece::metres).sum());
        if (drum == null || drum.lengths().isEmpty()) {
            double metres = Math.ceil(wanted - 1e-9);
            return new CutPlan(type, List.of(), wanted, metres, metres, true, List.of());
        }
        int[] sizes = drum.lengths().stream()
                .mapToInt(length -> centimetres(length.metres()))
                .sorted()
                .toArray();
        int longest = sizes[sizes.length - 1];
        List<CutPiece> packed = new ArrayList<>();
        List<String> tooLong = new ArrayList<>();
        double apart = 0;
        for (CutPiece piece : pieces) {
            if (centimetres(piece.metres()) > longest) {
                tooLong.add(piece.cable());
                apart += Math.ceil(piece.metres());
            } else {
                packed.add(piece);
            }
        }
        Packing.Packed result = Packing.pack(
                packed.stream().mapToInt(piece -> centimetres(piece.metres())).toArray(), sizes);
        double together = packed.stream().mapToDouble(CutPiece::metres).sum();
        if (drum.byMetre() && together < result.total() / 100.0) {
            double metres = Math.ceil(together - 1e-9) + apart;
            return new CutPlan(type, List.of(), wanted, metres, metres, true, tooLong);
        }
        List<CutDrum> drums = new ArrayList<>();
        for (Packing.Bin bin : result.bins()) {
            List<CutPiece> cut = bin.pieces().stream()
                    .map(packed::get)
                    .sorted(Comparator.comparingDouble((CutPiece piece) -> -piece.metres())
                            .thenComparing(CutPiece::cable))
                    .toList();
            drums.add(new CutDrum(bin.size() / 100.0, cut));
        }
        drums.sort(Comparator.comparingDouble((CutDrum each) -> -each.metres())
                .thenComparing(each -> each.pieces().getFirst().cable()));
        return new CutPlan(
                type,
                drums,
                wanted,
                round(result.total() / 100.0 + apart),
                round(result.bound() / 100.0 + apart),
                result.best(),
                tooLong);
    }

    private static int centimetres(double metres) {
        return (int) Math.ceil(metres * 100 - 1e-6);
    }

    private static double round(double metres) {
        return Math.round(metres * 100) / 100.0;
    }
}
