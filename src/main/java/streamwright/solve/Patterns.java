package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Strings that share a stream, as a linear programme of patterns (Gilmore and Gomory 1961): each pattern says how many
 * strings of each size one stream carries, and new ones come in by a knapsack while they promise anything. What is
 * asked for and what there is shrink while a packing is put together.
 */
final class Patterns {
    private static final double INF = Double.POSITIVE_INFINITY;

    /** Values of the programme become whole numbers so fine; even those of strings left out stay as small as the knapsack asks. */
    private static final double FINE = 1 << 26;

    /** Loads that are kept while a quick look still finds patterns. */
    private static final int QUICK = 200;

    private static final double PRICED = 1e-6;
    private static final double NOTHING = 1e-9;

    /** The price of a string that no pattern carries: well above that of a stream for it alone. */
    private static final double LEFT_OUT = 30;

    /**
     * Streams that are alike.
     *
     * @param pixels they take, each
     * @param most strings on each
     * @param count of them
     * @param price of each that is used: 1, or 0 where it costs nothing
     */
    record Room(int pixels, int most, int count, int price) {}

    /** One way to fill a stream of a room: {@code pieces[k]} strings of the size of that number. */
    static final class Pattern {
        final int room;
        final int[] pieces;
        final MPVariable variable;

        /** How often the last solution takes it. */
        double value;

        /** Whether nothing in it is wanted more often than asked for, and it was not ruled out. */
        boolean open = true;

        int ruledOut;

        Pattern(int room, int[] pieces, MPVariable variable) {
            this.room = room;
            this.pieces = pieces;
            this.variable = variable;
        }
    }

    private record Filling(int room, List<Integer> pieces) {}

    /** Different sizes, falling. */
    final int[] size;

    final List<Room> rooms;

    /** Of each size: strings that still want a place; of each room: streams that are still free. */
    final int[] wanted;

    final int[] left;

    final List<Pattern> patterns = new ArrayList<>();
    private final Map<Filling, Pattern> known = new HashMap<>();
    private final MPSolver solver = MPSolver.createSolver("GLOP");
    private final MPObjective objective = solver.objective();
    private final MPConstraint[] serve;
    private final MPConstraint[] have;
    private final MPVariable[] leftOut;
    private final MPSolverParameters warm = new MPSolverParameters();
    private final BooleanSupplier stop;

    /** Programmes that may still be solved. */
    private int programmes;

    /** Of each size: what a string of it is worth by the last solution, in whole numbers; nothing before the first. */
    private final long[] worth;

    Patterns(int[] sizes, List<Room> rooms, int programmes, BooleanSupplier stop) {
        this.rooms = rooms;
        this.programmes = programmes;
        this.stop = stop;
        size = Arrays.stream(sizes)
                .distinct()
                .map(each -> -each)
                .sorted()
                .map(each -> -each)
                .toArray();
        worth = new long[size.length];
        wanted = new int[size.length];
        for (int each : sizes) {
            wanted[indexOf(each)]++;
        }
        left = rooms.stream().mapToInt(Room::count).toArray();
        warm.setIntegerParam(
                MPSolverParameters.IntegerParam.PRESOLVE, MPSolverParameters.PresolveValues.PRESOLVE_OFF.swigValue());
        warm.setIntegerParam(
                MPSolverParameters.IntegerParam.INCREMENTALITY,
                MPSolverParameters.IncrementalityValues.INCREMENTALITY_ON.swigValue());
        objective.setMinimization();
        serve = new MPConstraint[size.length];
        leftOut = new MPVariable[size.length];
        for (int k = 0; k < size.length; k++) {
            serve[k] = solver.makeConstraint(wanted[k], INF);
            leftOut[k] = solver.makeNumVar(0, INF, "");
            objective.setCoefficient(leftOut[k], LEFT_OUT);
            serve[k].setCoefficient(leftOut[k], 1);
        }
        have = new MPConstraint[rooms.size()];
        for (int r = 0; r < have.length; r++) {
            have[r] = solver.makeConstraint(-INF, left[r]);
        }
    }

    int indexOf(int pixels) {
        return IntStream.range(0, size.length)
                .filter(k -> size[k] == pixels)
                .findFirst()
                .orElseThrow();
    }

    /** So many streams filled after a pattern; a negative number takes that back. */
    void take(Pattern pattern, int times) {
        left[pattern.room] -= times;
        have[pattern.room].setUb(left[pattern.room]);
        for (int k = 0; k < size.length; k++) {
            if (pattern.pieces[k] > 0) {
                wanted[k] -= times * pattern.pieces[k];
                serve[k].setLb(wanted[k]);
            }
        }
    }

    /** Whether so many more streams can be filled after it. */
    boolean fits(Pattern pattern, int times) {
        return left[pattern.room] >= times
                && IntStream.range(0, size.length).allMatch(k -> times * pattern.pieces[k] <= wanted[k]);
    }

    /**
     * Streams that cost something which are needed at least for what is wanted, as far as parts of streams go; infinite
     * where there are too few, not a number where it was stopped. Every pattern tells then how often it is taken.
     */
    double solve() {
        for (Pattern pattern : patterns) {
            boolean open = pattern.ruledOut == 0 && fits(pattern, 1);
            if (open != pattern.open) {
                pattern.open = open;
                pattern.variable.setUb(open ? INF : 0);
            }
        }
        while (true) {
            programmes--;
            if (stopped() || solver.solve(warm) != MPSolver.ResultStatus.OPTIMAL) {
                return Double.NaN;
            }
            double value = objective.value();
            appraise();
            double[] scarce = new double[have.length];
            double missing = 0;
            for (int r = 0; r < scarce.length; r++) {
                scarce[r] = Math.max(0, -have[r].dualValue());
            }
            for (MPVariable each : leftOut) {
                missing += each.solutionValue();
            }
            for (Pattern pattern : patterns) {
                pattern.value = pattern.open ? pattern.variable.solutionValue() : 0;
            }
            if (!price(scarce, QUICK) && !price(scarce, Knapsack.EXACT)) {
                return stopped() ? Double.NaN : missing > 1e-7 ? INF : value;
            }
        }
    }

    private boolean price(double[] scarce, int width) {
        boolean more = false;
        for (int r = 0; r < scarce.length; r++) {
            more |= left[r] > 0 && !stopped() && price(r, scarce[r], width);
        }
        return more;
    }

    boolean stopped() {
        return programmes < 0 || stop.getAsBoolean();
    }

    private void appraise() {
        for (int k = 0; k < worth.length; k++) {
            worth[k] = Math.round(Math.max(0, serve[k].dualValue()) * FINE);
        }
    }

    private boolean price(int r, double scarce, int width) {
        Room room = rooms.get(r);
        long above = (long) Math.ceil((room.price + scarce + PRICED) * FINE);
        boolean more = false;
        for (int[] pieces : Knapsack.best(size, wanted, worth, room.pixels, room.most, above, width)) {
            more |= add(r, pieces);
        }
        return more;
    }

    /** Adds a pattern; false where it is known. */
    boolean add(int r, int[] pieces) {
        Filling filling = new Filling(r, Arrays.stream(pieces).boxed().toList());
        if (known.containsKey(filling)) {
            return false;
        }
        MPVariable variable = solver.makeNumVar(0, INF, "");
        objective.setCoefficient(variable, rooms.get(r).price);
        have[r].setCoefficient(variable, 1);
        for (int k = 0; k < pieces.length; k++) {
            if (pieces[k] > 0) {
                serve[k].setCoefficient(variable, pieces[k]);
            }
        }
        Pattern pattern = new Pattern(r, pieces, variable);
        known.put(filling, pattern);
        patterns.add(pattern);
        return true;
    }

    /**
     * Streams of so many pixels that the sizes wanted need, proved without rounding: whatever the strings are worth,
     * all together are worth at most as many times the most that one stream carries.
     *
     * @return 0 where there is no solution yet
     */
    int streamsAtLeast(int pixels) {
        long all = 0;
        for (int k = 0; k < size.length; k++) {
            all += worth[k] * wanted[k];
        }
        List<int[]> fullest = Knapsack.best(size, wanted, worth, pixels, Integer.MAX_VALUE, 0, Knapsack.EXACT);
        if (fullest.isEmpty()) {
            return 0;
        }
        long most = 0;
        for (int k = 0; k < size.length; k++) {
            most += worth[k] * fullest.get(fullest.size() - 1)[k];
        }
        return (int) ((all + most - 1) / most);
    }

    /** The share of a value that is more than a whole number. */
    static double part(double value) {
        return value - Math.floor(value + NOTHING);
    }

    /** Frees the native programme. */
    void close() {
        solver.delete();
    }
}
