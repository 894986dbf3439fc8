package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The relaxation as a linear programme: trunk arcs, boards and used spots by number, and a column for each strand at
 * each spot. Streams have no index; cables are told apart only by where they begin. Every plan is a solution of it that
 * costs no more than the plan, so once nothing prices in its value is a bound.
 */
final class Master {
    private static final double INF = Double.POSITIVE_INFINITY;

    /** A strand on a port at a spot, in the order that costs least there. */
    static final class Column {
        final int strand;
        final int spot;
        final boolean relaxed;
        final MPVariable variable;
        int[] order;
        double cost;
        double value;

        Column(int strand, Pricing.Found found, MPVariable variable) {
            this.strand = strand;
            this.spot = found.spot();
            this.relaxed = found.relaxed();
            this.order = found.order();
            this.cost = found.cost();
            this.variable = variable;
        }

        double coefficient(Row row, Strands strands) {
            return row.strand(strands.get(strand), spot);
        }
    }

    /** A row, and what it is in the programme. */
    record Held(Row row, MPConstraint constraint) {}

    private record Place(int strand, int spot, boolean relaxed) {}

    final Site site;
    final Items items;
    final Strands strands;
    private final boolean whole;
    private final Programme programme;
    final MasterLimits limits;
    private final int controllers;
    private final int spots;
    private final List<Held> rows = new ArrayList<>();
    final List<Column> columns = new ArrayList<>();
    private final Map<Place, Column> byPlace = new HashMap<>();
    final @Nullable MPVariable[][] arc;
    final Standing standing;
    private @Nullable Lengths lengths;
    private Solution solution;

    /**
     * What its numbers are.
     *
     * @param whole whether they must be whole; no string is left out then
     * @param missing else, of each item, the price of leaving one of its strings out
     */
    record Kind(boolean whole, double[] missing) {
        static final Kind WHOLE = new Kind(true, new double[0]);

        static Kind linear(double[] missing) {
            return new Kind(false, missing);
        }
    }

    Master(Site site, Items items, Strands strands, Kind kind) {
        this.site = site;
        this.items = items;
        this.strands = strands;
        controllers = site.controllers.length;
        spots = site.spots.length;
        whole = kind.whole;
        programme = new Programme(whole);
        limits = new MasterLimits(site, items);
        solution = Solution.none(site, items);
        arc = new MPVariable[controllers + spots][spots];
        standing = new Standing(site, items, limits, programme, kind, 1);
    }

    /** Sets other prices for leaving strings out. */
    void missing(double[] prices) {
        for (int k = 0; k < items.size; k++) {
            programme.price(standing.shortage[k], prices[k]);
        }
    }

    /** What one string more of an item would add to the last value. The rows of items are the first. */
    double worth(int item) {
        return rows.get(item).constraint.dualValue();
    }

    /** Strings of an item that the last solution leaves out. */
    double missed(int item) {
        return solution.missed()[item];
    }

    /** Brings an arc in; nothing where it is in already, or no plan may have it. */
    void addArc(int from, int to) {
        if (arc[from][to] != null || !limits.mayJoin(from, to)) {
            return;
        }
        // two boards at both ends may be joined twice, by two cables
        MPVariable variable = programme.counted(limits.arcMost(from, to), limits.arcCost(from, to));
        arc[from][to] = variable;
        for (Held held : rows) {
            double coefficient = held.row.hasArcs() ? held.row.arc(from, to) : 0;
            if (coefficient != 0) {
                held.constraint.setCoefficient(variable, coefficient);
            }
        }
        if (lengths != null) {
            lengths.add(from, to, variable);
        }
        programme.grown();
    }

    /** Keeps cables within their length from now on. */
    void keepLengths() {
        if (lengths == null) {
            MPConstraint[] drawn = IntStream.range(0, spots)
                    .mapToObj(p -> addRow(Lengths.drawn(site, p)))
                    .toArray(MPConstraint[]::new);
            Lengths kept = new Lengths(site, programme.solver, drawn);
            for (int[] in : arcs()) {
                kept.add(in[0], in[1], Objects.requireNonNull(arc[in[0]][in[1]]));
            }
            lengths = kept;
            programme.unscaled();
            programme.grown();
        }
    }

    /** Brings a strand in, or makes it cheaper where a cheaper order of it is found. */
    void addColumn(Pricing.Found found) {
        int strand = strands.index(found.order());
        Place place = new Place(strand, found.spot(), found.relaxed());
        Column known = byPlace.get(place);
        if (known != null) {
            if (known.variable.ub() == 0) {
                known.variable.setUb(INF);
                programme.grown();
            }
            if (found.cost() < known.cost) {
                known.cost = found.cost();
                known.order = found.order();
                programme.price(known.variable, found.cost());
            }
            return;
        }
        double most = whole ? limits.columnMost(strands.get(strand).items()) : INF;
        MPVariable variable = programme.counted(most, found.cost());
        Column column = new Column(strand, found, variable);
        byPlace.put(place, column);
        columns.add(column);
        for (Held held : rows) {
            double coefficient = column.coefficient(held.row, strands);
            if (coefficient != 0) {
                held.constraint.setCoefficient(variable, coefficient);
            }
        }
        programme.grown();
    }

    /**
     * Puts out the strands that may not be real, or cost more than it seems: they came in where real ones were too many to
     * look at, and hold back all that comes later.
     */
    void purge() {
        for (Column column : columns) {
            if (column.relaxed) {
                column.variable.setUb(0);
            }
        }
    }

    Exclusion exclude() {
        return new Exclusion(this, programme.solver);
    }

    MPConstraint addRow(Row row) {
        MPConstraint constraint = programme.solver.makeConstraint(row.low(), row.high());
        rows.add(new Held(row, constraint));
        if (row.hasArcs()) {
            for (int from = 0; from < arc.length; from++) {
                for (int to = 0; to < spots; to++) {
                    MPVariable variable = arc[from][to];
                    double coefficient = variable == null ? 0 : row.arc(from, to);
                    if (coefficient != 0) {
                        constraint.setCoefficient(variable, coefficient);
                    }
                }
            }
        }
        if (row.hasStarts() || row.hasHeads() || row.onlyItem() != -1) {
            for (Column column : columns) {
                double coefficient = column.coefficient(row, strands);
                if (coefficient != 0) {
                    constraint.setCoefficient(column.variable, coefficient);
                }
            }
        }
        standing.join(row, constraint);
        standing.join(0, row, constraint);
        return constraint;
    }

    /** Leaves only solutions in which these spots are empty or used. */
    void choose(Chosen chosen) {
        standing.choose(chosen);
    }

    /** Cuts in force. */
    int cuts() {
        return cutsInForce().size();
    }

    List<Row> cutsInForce() {
        return rows.stream().map(Held::row).filter(Row::cut).toList();
    }

    /** The arcs that are in: pairs of a node and a spot. */
    List<int[]> arcs() {
        List<int[]> in = new ArrayList<>();
        for (int from = 0; from < arc.length; from++) {
            for (int to = 0; to < spots; to++) {
                if (arc[from][to] != null) {
                    in.add(new int[] {from, to});
                }
            }
        }
        return in;
    }

    /** What is in beside the rows of every relaxation. */
    record Known(List<Row> cuts, List<int[]> arcs, List<Pricing.Found> columns) {
        static final Known NOTHING = new Known(List.of(), List.of(), List.of());
    }

    Known known(List<Row> cuts) {
        return new Known(cuts, arcs(), columns());
    }

    private List<Pricing.Found> columns() {
        return columns.stream()
                .filter(column -> column.variable.ub() > 0)
                .map(column -> new Pricing.Found(column.spot, column.order, column.cost, 0, column.relaxed))
                .toList();
    }

    /** The cuts that bind in the last solution. */
    List<Row> bindingCuts() {
        List<Row> binding = new ArrayList<>();
        for (Held held : rows) {
            if (held.row.cut() && Math.abs(held.constraint.dualValue()) > 1e-9) {
                binding.add(held.row);
            }
        }
        return binding;
    }

    /**
     * Solves the linear programme as it stands.
     *
     * <p>Strings may be left out at a price and every arc from a controller is there, so it has no solution only where the
     * numbers of boards and cables contradict each other whatever else comes in.
     *
     * @return its value; infinite where it has no solution; NaN where the solver gave up
     */
    double solve(double seconds) {
        return programme.solve(seconds);
    }

    /** Looks for the cheapest whole solution, see {@link Programme#solveWhole}. */
    Programme.Ending solveWhole(double cutoff, double seconds, long nodes) {
        return programme.solveWhole(cutoff, seconds, nodes);
    }

    /** Of the last solution. */
    double value() {
        return programme.value;
    }

    /** Reads the solution; must come before rows are added. */
    void read() {
        solution = Solution.of(this);
    }

    /** Values of the last solution; zeros before the first. */
    Point point() {
        return solution.point();
    }

    /** By how much the last solution breaks a row; 0 where it keeps it. */
    double broken(Row row) {
        return solution.broken(row, strands);
    }

    Duals duals() {
        return Duals.of(items.size, spots, rows);
    }

    @Nullable
    Lengths lengths() {
        return lengths;
    }
}
