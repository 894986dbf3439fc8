package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import streamwright.solve.Patterns.Room;
import streamwright.yard.Drives;

/**
 * Streams without which the strings of one kind do not fit: strings are never split, so this is bin packing. First the
 * bound L2 (Martello and Toth 1990); where first fit decreasing needs more, that of patterns (Gilmore and Gomory 1961),
 * and where strings are few, the truth.
 */
final class StreamsAtLeast {
    private static final int FEW = 60;

    /** Programmes of patterns to solve: enough for some hundred strings, a weaker bound where they are not. */
    private static final int PROGRAMMES = 1_000;

    private StreamsAtLeast() {}

    /**
     * @param sizes pixels of each string, each at most {@code limit}
     * @param limit pixels of a stream
     */
    static int of(int[] sizes, int limit) {
        int[] falling = falling(sizes);
        int least = l2(falling, limit);
        int enough = firstFit(falling, limit);
        if (least < enough) {
            least = Math.max(least, patterns(falling, limit, PROGRAMMES));
        }
        while (least < enough && falling.length <= FEW && impossible(falling, limit, least)) {
            least++;
        }
        return least;
    }

    /** For all strings of a kind; copies may share their originals'. */
    static int of(Site site, int kind) {
        int limit = site.limitMost(kind);
        int[] sizes = IntStream.range(0, site.strings.length)
                .filter(i -> site.kind[i] == kind && site.sort[i] == Drives.PIXELS)
                .map(i -> Math.min(limit, site.pixelsAtLeast[i]))
                .toArray();
        return of(sizes, limit);
    }

    /** The bound L2 alone: at most as much, and at once. */
    static int quickly(int[] sizes, int limit) {
        return l2(falling(sizes), limit);
    }

    /** The bound of patterns; it holds however few programmes are solved. */
    static int patterns(int[] falling, int limit, int programmes) {
        Room streams = new Room(limit, Integer.MAX_VALUE, falling.length, 1);
        Patterns patterns = new Patterns(falling, List.of(streams), programmes, () -> false);
        try {
            patterns.solve();
            return patterns.streamsAtLeast(limit);
        } finally {
            patterns.close();
        }
    }

    private static int[] falling(int[] sizes) {
        return Arrays.stream(sizes)
                .filter(size -> size > 0)
                .map(size -> -size)
                .sorted()
                .map(size -> -size)
                .toArray();
    }

    private static int l2(int[] sizes, int limit) {
        int best = 0;
        for (int small : Arrays.stream(sizes)
                .filter(size -> 2L * size <= limit)
                .distinct()
                .toArray()) {
            best = Math.max(best, l2(sizes, limit, small));
        }
        return Math.max(best, l2(sizes, limit, 0));
    }

    /** Those above half a stream have one each; those from {@code small} on must fill what these leave. */
    private static int l2(int[] sizes, int limit, int small) {
        int large = 0;
        long room = 0;
        long rest = 0;
        for (int size : sizes) {
            if (2L * size > limit) {
                large++;
                room += size <= limit - small ? limit - size : 0;
            } else if (size >= small) {
                rest += size;
            }
        }
        return large + (int) Math.max(0, Math.floorDiv(rest - room + limit - 1, (long) limit));
    }

    private static int firstFit(int[] falling, int limit) {
        long[] load = new long[falling.length];
        int bins = 0;
        for (int size : falling) {
            int bin = 0;
            while (load[bin] + size > limit) {
                bin++;
            }
            load[bin] += size;
            bins = Math.max(bins, bin + 1);
        }
        return bins;
    }

    private static boolean impossible(int[] falling, int limit, int bins) {
        CpModel model = new CpModel();
        LinearExprBuilder[] load = new LinearExprBuilder[bins];
        Arrays.setAll(load, bin -> LinearExpr.newBuilder());
        for (int i = 0; i < falling.length; i++) {
            // bins are alike: the i-th string goes into one of the first i
            BoolVar[] in = new BoolVar[Math.min(i + 1, bins)];
            for (int bin = 0; bin < in.length; bin++) {
                in[bin] = model.newBoolVar("");
                load[bin].addTerm(in[bin], falling[i]);
            }
            model.addExactlyOne(in);
        }
        for (LinearExprBuilder sum : load) {
            model.addLessOrEqual(sum, limit);
        }
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setMaxDeterministicTime(2)
                .setCatchSigintSignal(false);
        return solver.solve(model) == CpSolverStatus.INFEASIBLE;
    }
}
