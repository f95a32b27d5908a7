package housewright.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Cutting stock: against instances of others, and against trying everything. */
class PackingTest {

    /**
     * The paper machine with rolls of 5600 mm: 13 widths, 407 160 mm together, 73 rolls in the best way. Read in the concept
     * "Cutting stock problem" at graphsearch.epfl.ch; the 73 from memory of the encyclopedia article it quotes.
     */
    @Test
    void thePaperMachineNeedsSeventyThreeRolls() {
        int[] widths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
        int[] wanted = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
        int[] pieces = repeated(widths, wanted);
        assertThat(Arrays.stream(pieces).sum()).isEqualTo(407_160);
        Packing.Packed packed = Packing.pack(pieces, new int[] {5600});
        isLegal(pieces, packed);
        assertThat(packed.bound()).isEqualTo(73L * 5600);
        assertThat(packed.bins()).hasSizeBetween(73, 74); // 74 so far: not the best, and it says so
        assertThat(packed.best()).isEqualTo(packed.bins().size() == 73);
    }

    /**
     * Widths 14, 31, 36 and 45 from 100: the data as in the cutting stock example of the gallery at miro.gams.com; that the
     * best is 453 rolls is from memory of Chvatal, Linear Programming (1983), chapter 13.
     */
    @Test
    void aThousandPieces() {
        int[] pieces = repeated(new int[] {14, 31, 36, 45}, new int[] {211, 395, 610, 97});
        Packing.Packed packed = Packing.pack(pieces, new int[] {100});
        isLegal(pieces, packed);
        assertThat(packed.bound()).isLessThanOrEqualTo(453 * 100);
        assertThat(packed.bins()).hasSize(453);
    }

    /** Falkenauer 1996, class u120 of OR-Library, binpack1: bins of 150, the best known as the file has it. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
                u120_00 | 48 | 42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69 33 42 28 46 30 64 29 74 41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45 41 58 98 91 96 73 84 37 93 91 43 73 85 81 79 71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62 36 44 94 69 32 96 70 84 58 78 25 80 58 66 83 24 98 60 42 43 43 39
                u120_01 | 49 | 97 57 81 62 75 81 23 43 50 38 60 58 70 88 36 90 37 45 45 39 44 53 70 24 82 81 47 97 35 65 74 68 49 55 52 94 95 29 99 20 22 25 49 46 98 59 98 60 23 72 33 98 80 95 78 57 67 53 47 53 36 38 92 30 80 32 97 39 80 72 55 41 60 67 53 65 95 20 66 78 98 47 100 85 53 53 67 27 22 61 43 52 76 64 61 29 30 46 79 66 27 79 98 90 22 75 57 67 36 70 99 48 43 45 71 100 88 48 27 39
                u120_02 | 46 | 38 100 60 42 20 69 24 23 92 32 84 36 65 84 34 68 64 33 69 27 47 21 85 88 59 61 50 53 37 75 64 84 74 57 83 28 31 97 61 36 46 37 96 80 53 51 68 90 64 81 66 67 80 37 92 67 64 31 94 45 80 28 76 29 64 38 48 40 29 44 81 35 51 48 67 24 46 38 76 22 30 67 45 41 29 41 79 21 25 90 62 34 73 50 79 66 59 42 90 79 70 66 80 35 62 98 97 37 32 75 91 91 48 26 23 32 100 46 29 26
                u120_05 | 48 | 26 25 67 77 67 79 47 84 50 21 87 83 44 88 78 53 78 37 47 52 32 88 85 82 55 41 60 66 78 72 34 64 20 60 100 62 80 34 68 38 32 32 37 82 98 90 58 97 56 34 70 39 56 69 36 20 99 84 53 27 88 53 42 45 42 31 54 60 55 27 36 31 39 91 45 97 26 80 41 56 70 97 48 87 23 32 75 100 97 51 78 78 21 72 72 79 46 30 48 27 95 48 67 58 46 92 21 82 91 40 56 24 94 44 91 92 81 24 84 44
                """)
    void falkenauersPieces(String name, int best, String list) {
        int[] pieces =
                Arrays.stream(list.split(" ")).mapToInt(Integer::parseInt).toArray();
        assertThat(pieces).hasSize(120);
        Packing.Packed packed = Packing.pack(pieces, new int[] {150});
        isLegal(pieces, packed);
        assertThat(packed.bound()).isLessThanOrEqualTo(best * 150L);
        assertThat(packed.bins()).hasSize(best);
        assertThat(packed.best()).isEqualTo(packed.total() == packed.bound());
    }

    /** Worked by hand: with k = 4, three pieces stand alone or beside nothing else that is left, where the sum needs two bins. */
    @Test
    void theSecondBoundIsTheBetterOne() {
        assertThat(Packing.binsAtLeast(new int[] {6, 6, 6}, 10)).isEqualTo(3); // 18 of 10: the sum says two
        assertThat(Packing.binsAtLeast(new int[] {7, 7, 4, 4, 4}, 10))
                .isEqualTo(4); // no 4 goes beside a 7, two go together
        assertThat(Packing.binsAtLeast(new int[] {5, 5, 5, 5}, 10)).isEqualTo(2);
    }

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void fewPiecesAreCutInTheBestWay(int seed) {
        Random random = new Random(seed);
        int[] sizes = sizes(random);
        int[] pieces = pieces(random, 1 + random.nextInt(7), sizes);
        Packing.Packed packed = Packing.pack(pieces, sizes);
        isLegal(pieces, packed);
        long least = tryAll(pieces, sizes, 0, new ArrayList<>());
        assertThat(packed.total()).isEqualTo(least);
        assertThat(packed.best()).isTrue();
        assertThat(Packing.bound(
                        pieces, Arrays.stream(sizes).sorted().distinct().toArray()))
                .isLessThanOrEqualTo(least);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void manyPiecesAreAllCutAndNotBelowTheBound(int seed) {
        Random random = new Random(1000 + seed);
        int[] sizes = sizes(random);
        int[] pieces = pieces(random, Packing.EXACT + 1 + random.nextInt(20), sizes);
        Packing.Packed packed = Packing.pack(pieces, sizes);
        isLegal(pieces, packed);
        assertThat(packed.total()).isGreaterThanOrEqualTo(packed.bound());
        assertThat(packed).isEqualTo(Packing.pack(pieces, sizes));
    }

    @Test
    void whatFitsNowhereIsRefused() {
        assertThatThrownBy(() -> Packing.pack(new int[] {11}, new int[] {10})).hasMessageContaining("11");
        assertThatThrownBy(() -> Packing.pack(new int[] {1}, new int[] {})).hasMessageContaining("no length");
        assertThat(Packing.pack(new int[0], new int[] {10}).bins()).isEmpty();
    }

    private static int[] repeated(int[] values, int[] counts) {
        return IntStream.range(0, values.length)
                .flatMap(i -> IntStream.generate(() -> values[i]).limit(counts[i]))
                .toArray();
    }

    private static int[] sizes(Random random) {
        return random.ints(1 + random.nextInt(3), 10, 40).toArray();
    }

    private static int[] pieces(Random random, int count, int[] sizes) {
        int longest = Arrays.stream(sizes).max().orElseThrow();
        return random.ints(count, 1, longest + 1).toArray();
    }

    private static void isLegal(int[] pieces, Packing.Packed packed) {
        List<Integer> all = new ArrayList<>();
        for (Packing.Bin bin : packed.bins()) {
            all.addAll(bin.pieces());
            assertThat(bin.pieces().stream().mapToInt(i -> pieces[i]).sum()).isLessThanOrEqualTo(bin.size());
        }
        assertThat(all.stream().sorted().toList())
                .isEqualTo(IntStream.range(0, pieces.length).boxed().toList());
        assertThat(packed.total())
                .isEqualTo(packed.bins().stream().mapToLong(Packing.Bin::size).sum());
    }

    /** Every way of sharing the pieces out among bins, each bin in the shortest stock that holds it. */
    private static long tryAll(int[] pieces, int[] sizes, int next, List<Integer> bins) {
        if (next == pieces.length) {
            long sum = 0;
            for (int filled : bins) {
                int size = Arrays.stream(sizes)
                        .filter(each -> each >= filled)
                        .min()
                        .orElse(-1);
                if (size < 0) {
                    return Long.MAX_VALUE;
                }
                sum += size;
            }
            return sum;
        }
        long least = Long.MAX_VALUE;
        for (int i = 0; i < bins.size(); i++) {
            bins.set(i, bins.get(i) + pieces[next]);
            least = Math.min(least, tryAll(pieces, sizes, next + 1, bins));
            bins.set(i, bins.get(i) - pieces[next]);
        }
        bins.add(pieces[next]);
        least = Math.min(least, tryAll(pieces, sizes, next + 1, bins));
        bins.removeLast();
        return least;
    }
}
