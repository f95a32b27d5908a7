package housewright.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Pieces packed into stock of given lengths, with least length of stock: bin packing where the bins come in sizes and cost
 * their length. Exact up to {@value #EXACT} pieces, by going through all subsets; beyond that the best of first fit,
 * best fit and fullest-bin-first, all with the longest pieces first, and of the last in other orders, improved by exact repacking of a few bins at a time.
 * Lengths are whole numbers, such as centimetres.
 */
final class Packing {
    static final int EXACT = 13;

    /** Steps of the search for the fullest bin: counted, not timed, so that the same pieces always give the same bins. */
    private static final int MOST_STEPS = 20_000;

    private static final int FEW_STEPS = 3_000;

    /** Other orders of the pieces that are tried. */
    private static final int MOST_TRIES = 60;

    /** Subsets looked at in repacking, for the same reason. */
    private static final long MOST_SUBSETS = 60_000_000;

    /** @param pieces indices into the lengths that were given */
    record Bin(int size, List<Integer> pieces) {}

    /** @param best no packing is shorter */
    record Packed(List<Bin> bins, long total, long bound, boolean best) {}

    /** Of many bins only the emptiest are repacked. */
    private static final int MOST_BINS = 60;

    private final int[] lengths;
    private final int[] sizes;
    private int steps;
    private long subsets;

    private Packing(int[] lengths, int[] sizes) {
        this.lengths = lengths;
        this.sizes = sizes;
    }

    /**
     * @param lengths of the pieces, each more than 0 and no longer than the longest size
     * @param sizes of the stock
     */
    static Packed pack(int[] lengths, int[] sizes) {
        int[] ordered = Arrays.stream(sizes).sorted().distinct().toArray();
        if (ordered.length == 0 || ordered[0] <= 0) {
            throw new IllegalArgumentException("Stock of no length: " + Arrays.toString(sizes));
        }
        for (int length : lengths) {
            if (length <= 0 || length > ordered[ordered.length - 1]) {
                throw new IllegalArgumentException(
                        "A piece of " + length + " fits no stock of " + Arrays.toString(sizes));
            }
        }
        return new Packing(lengths, ordered).packed();
    }

    private Packed packed() {
        long bound = bound(lengths, sizes);
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            all.add(i);
        }
        all.sort(Comparator.comparingInt((Integer i) -> -lengths[i]).thenComparing(i -> i));
        if (lengths.length <= EXACT) {
            List<Bin> bins = exact(all);
            return new Packed(bins, total(bins), Math.max(bound, total(bins)), true);
        }
        List<Bin> best = null;
        for (int size : sizes) {
            if (size < lengths[all.getFirst()]) {
                continue;
            }
            for (List<Bin> bins :
                    List.of(fit(all, size, false), fit(all, size, true), fullest(all, size, MOST_STEPS))) {
                List<Bin> trimmed = trimmed(bins);
                if (best == null || better(trimmed, best)) {
                    best = trimmed;
                }
            }
        }
        best = best == null ? List.of() : best;
        Random random = new Random(17); // always the same, so that the same pieces give the same bins
        for (int i = 0; i < MOST_TRIES && total(best) > bound; i++) {
            List<Bin> other = trimmed(fullest(shaken(all, random), sizes[sizes.length - 1], FEW_STEPS));
            best = better(other, best) ? other : best;
        }
        List<Bin> found = improved(best, bound);
        return new Packed(found, total(found), bound, total(found) == bound);
    }

    /** Longest first, more or less. */
    private List<Integer> shaken(List<Integer> all, Random random) {
        Map<Integer, Double> weight = new HashMap<>();
        all.forEach(piece -> weight.put(piece, lengths[piece] * (1 - 0.2 * random.nextDouble())));
        List<Integer> shaken = new ArrayList<>(all);
        shaken.sort(Comparator.comparingDouble((Integer piece) -> -weight.getOrDefault(piece, 0.0)));
        return shaken;
    }

    private static boolean better(List<Bin> one, List<Bin> other) {
        long first = total(one);
        long second = total(other);
        return first != second ? first < second : one.size() < other.size();
    }

    static long total(List<Bin> bins) {
        return bins.stream().mapToLong(Bin::size).sum();
    }

    /** Every bin in the shortest stock that holds what is in it. */
    private List<Bin> trimmed(List<Bin> bins) {
        List<Bin> trimmed = new ArrayList<>();
        for (Bin bin : bins) {
            trimmed.add(new Bin(shortest(filled(bin.pieces())), bin.pieces()));
        }
        return trimmed;
    }

    private long filled(List<Integer> pieces) {
        long sum = 0;
        for (int piece : pieces) {
            sum += lengths[piece];
        }
        return sum;
    }

    /** Of the stock, the shortest that is so long; one more than any where none is. */
    private int shortest(long length) {
        for (int size : sizes) {
            if (size >= length) {
                return size;
            }
        }
        return Integer.MAX_VALUE;
    }

    /** Longest first, each into the first bin with room, or into that with the least. */
    private List<Bin> fit(List<Integer> order, int size, boolean least) {
        List<List<Integer>> bins = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int piece : order) {
            int into = -1;
            for (int i = 0; i < bins.size() && (into < 0 || least); i++) {
                if (left.get(i) >= lengths[piece] && (into < 0 || left.get(i) < left.get(into))) {
                    into = i;
                }
            }
            if (into < 0) {
                into = bins.size();
                bins.add(new ArrayList<>());
                left.add(size);
            }
            bins.get(into).add(piece);
            left.set(into, left.get(into) - lengths[piece]);
        }
        return bins.stream().map(each -> new Bin(size, List.copyOf(each))).toList();
    }

    /** Bin by bin: the longest piece that is left, with those others that fill its bin best. */
    private List<Bin> fullest(List<Integer> order, int size, int most) {
        List<Integer> left = new ArrayList<>(order);
        List<Bin> bins = new ArrayList<>();
        while (!left.isEmpty()) {
            int first = left.removeFirst();
            steps = most;
            Fill fill = new Fill();
            search(left, 0, size - lengths[first], new ArrayList<>(), fill);
            List<Integer> pieces = new ArrayList<>(List.of(first));
            pieces.addAll(fill.pieces);
            left.removeAll(fill.pieces);
            bins.add(new Bin(size, List.copyOf(pieces)));
        }
        return bins;
    }

    /** The fullest found so far. */
    private static final class Fill {
        int room = Integer.MAX_VALUE;
        List<Integer> pieces = List.of();
    }

    private void search(List<Integer> left, int from, int room, List<Integer> taken, Fill fill) {
        if (room < fill.room) {
            fill.room = room;
            fill.pieces = List.copyOf(taken);
        }
        int before = -1;
        for (int i = from; i < left.size() && fill.room > 0 && steps > 0; i++) {
            int length = lengths[left.get(i)];
            if (length <= room && length != before) { // an equal one next to it would give the same
                before = length;
                steps--;
                taken.add(left.get(i));
                search(left, i + 1, room - length, taken, fill);
                taken.removeLast();
            }
        }
    }

    /** Takes the emptiest bins together with others, as many as can be packed exactly, until that helps no more. */
    private List<Bin> improved(List<Bin> start, long bound) {
        List<Bin> bins = start;
        while (total(bins) > bound) {
            List<Bin> better = repacked(bins);
            if (better == null) {
                break;
            }
            bins = better;
        }
        return bins;
    }

    private @Nullable List<Bin> repacked(List<Bin> bins) {
        List<Bin> byRoom = new ArrayList<>(bins);
        byRoom.sort(Comparator.comparingLong((Bin bin) -> filled(bin.pieces()) - bin.size()));
        if (byRoom.size() > MOST_BINS) {
            byRoom.subList(MOST_BINS, byRoom.size()).clear();
        }
        int least = 0; // no saving is less
        for (int size : sizes) {
            least = gcd(least, size);
        }
        for (int i = 0; i < byRoom.size(); i++) {
            for (int j = i + 1; j < byRoom.size(); j++) {
                for (int k = j; k < byRoom.size(); k++) { // k = j: these two alone
                    List<Bin> some = new ArrayList<>(List.of(byRoom.get(i), byRoom.get(j)));
                    if (k > j) {
                        some.add(byRoom.get(k));
                    }
                    List<Integer> pieces = new ArrayList<>();
                    some.forEach(bin -> pieces.addAll(bin.pieces()));
                    if (pieces.size() > EXACT || least > total(some) - filled(pieces) || subsets > MOST_SUBSETS) {
                        continue;
                    }
                    subsets += (long) Math.pow(3, pieces.size() - 1.0);
                    List<Bin> again = exact(pieces);
                    if (total(again) < total(some)) {
                        List<Bin> better = new ArrayList<>(bins);
                        some.forEach(better::remove);
                        better.addAll(again);
                        return better;
                    }
                }
            }
        }
        return null;
    }

    /** Least stock for these few: over all subsets, the one with the first piece that is left is cut from one bin. */
    private List<Bin> exact(List<Integer> pieces) {
        int n = pieces.size();
        int all = (1 << n) - 1;
        int[] size = new int[all + 1];
        for (int set = 1; set <= all; set++) {
            long sum = 0;
            for (int i = 0; i < n; i++) {
                sum += (set >> i & 1) == 1 ? lengths[pieces.get(i)] : 0;
            }
            size[set] = shortest(sum);
        }
        long[] cost = new long[all + 1]; // length times 2^20, and the number of bins
        int[] first = new int[all + 1];
        for (int set = 1; set <= all; set++) {
            cost[set] = Long.MAX_VALUE;
            int lowest = set & -set;
            int rest = set ^ lowest;
            for (int with = rest; ; with = (with - 1) & rest) {
                int bin = with | lowest;
                if (size[bin] != Integer.MAX_VALUE) {
                    long sum = ((long) size[bin] << 20) + 1 + cost[set ^ bin];
                    if (sum < cost[set]) {
                        cost[set] = sum;
                        first[set] = bin;
                    }
                }
                if (with == 0) {
                    break;
                }
            }
        }
        List<Bin> bins = new ArrayList<>();
        for (int set = all; set != 0; set ^= first[set]) {
            List<Integer> in = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                if ((first[set] >> i & 1) == 1) {
                    in.add(pieces.get(i));
                }
            }
            bins.add(new Bin(size[first[set]], in));
        }
        return bins;
    }

    // ---- bounds ----

    /** No packing is shorter: the best of what the sum needs, what the number of bins needs, and what the long pieces need. */
    static long bound(int[] lengths, int[] sizes) {
        if (lengths.length == 0) {
            return 0;
        }
        int largest = sizes[sizes.length - 1];
        long sum = Arrays.stream(lengths).asLongStream().sum();
        long apart = 0;
        for (int length : lengths) {
            if (2L * length > largest) { // no two of these go into one bin
                for (int size : sizes) {
                    if (size >= length) {
                        apart += size;
                        break;
                    }
                }
            }
        }
        return Math.max(apart, stock(sum, binsAtLeast(lengths, largest), sizes));
    }

    /** Shortest stock of so many bins or more that is as long as the sum. */
    private static long stock(long sum, int bins, int[] sizes) {
        if (sizes.length == 1) {
            return sizes[0] * Math.max(bins, (sum + sizes[0] - 1) / sizes[0]);
        }
        int unit = 0;
        for (int size : sizes) {
            unit = gcd(unit, size);
        }
        int largest = sizes[sizes.length - 1];
        long most = Math.max(sum, (long) bins * largest) + largest;
        int steps = (int) Math.min(most / unit + 1, 1_000_000);
        int[] count = new int[steps + 1]; // most bins with which that length can be made up
        Arrays.fill(count, -1);
        count[0] = 0;
        for (int at = 1; at <= steps; at++) {
            for (int size : sizes) {
                int before = at - size / unit;
                if (before >= 0 && count[before] >= 0) {
                    count[at] = Math.max(count[at], count[before] + 1);
                }
            }
            if ((long) at * unit >= sum && count[at] >= bins) {
                return (long) at * unit;
            }
        }
        return sum;
    }

    private static int gcd(int one, int other) {
        return other == 0 ? one : gcd(other, one % other);
    }

    /**
     * The bound L2 of Martello and Toth on the number of bins of one size: for each k up to half the size, pieces longer
     * than the size less k have a bin each, so have those longer than half, and what is left of the middling ones must go
     * beside the latter.
     */
    static int binsAtLeast(int[] lengths, int size) {
        int best = (int) ((Arrays.stream(lengths).asLongStream().sum() + size - 1) / size);
        int[] tried = Arrays.stream(lengths)
                .filter(each -> 2L * each <= size)
                .distinct()
                .toArray();
        tried = Arrays.copyOf(tried, tried.length + 1); // and k = 0
        for (int k : tried) {
            int alone = 0;
            int longer = 0;
            long room = 0;
            long middling = 0;
            for (int length : lengths) {
                if (length > size - k) {
                    alone++;
                } else if (2L * length > size) {
                    longer++;
                    room += size - length;
                } else if (length >= k) {
                    middling += length;
                }
            }
            long more = middling - room;
            int needed = alone + longer + (more > 0 ? (int) ((more + size - 1) / size) : 0);
            best = Math.max(best, needed);
        }
        return best;
    }
}
