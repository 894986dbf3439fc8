package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
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
    private static final double PRICED = 1e-6;

    /** A value that is nothing but rounding. */
    private static final double NOTHING = 1e-9;

    private static final double DECIDED = 0.02;

    /** Chains looked at for each spot: at first, before chains may repeat items, and where all must be known. */
    private static final long LABELS_QUICK = 500;

    /** The same, where the first look found nothing. */
    private static final long LABELS_MORE = 20_000;

    /** The same, for all spots together. */
    private static final long LABELS_LONG = 6_000_000;

    /** The same, with many items: what is not seen then is bounded by what may be no real chain. */
    private static final long LABELS_MORE_OF_MANY = 1_000;

    private static final long LABELS_LONG_OF_MANY = 30_000;

    private static final long LABELS_MOST = 200_000;
    private static final int COLUMNS_MOST = 40_000;

    /** Ways to solve from nothing where the last basis leads to numbers too imprecise, the most reliable first. */
    private static final String[] ANEW = {
        "use_preprocessing:true use_dual_simplex:true",
        "use_preprocessing:true use_dual_simplex:true perturb_costs_in_dual_simplex:true",
        "use_preprocessing:true use_dual_simplex:false",
        "use_preprocessing:false use_dual_simplex:true",
        "use_preprocessing:false use_dual_simplex:false",
    };

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
    }

    private record Held(Row row, MPConstraint constraint) {}

    private record Place(int strand, int spot, boolean relaxed) {}

    final Site site;
    final Items items;
    final Strands strands;
    private final boolean whole;
    private final MPSolver solver;
    private final MPObjective objective;
    private final int controllers;
    private final int spots;
    private final List<Held> rows = new ArrayList<>();
    final List<Column> columns = new ArrayList<>();
    private final Map<Place, Column> byPlace = new HashMap<>();
    private final List<Pricing> pricings;
    final @Nullable MPVariable[][] arc;
    final MPVariable[] used;
    final MPVariable[][] board;
    private final MPVariable[] paid;

    /** Strings of an item left out, at a price above that of serving any: so that a solution always exists. */
    private final MPVariable[] shortage;

    private @Nullable MPConstraint costRow;
    private @Nullable Lengths lengths;
    private boolean grown = true;

    /** Values of the last solution; zeros before the first. */
    Point point;

    private double[] missedValue = new double[0];

    /** What of the last solution is not 0. */
    private List<Column> carrying = List.of();

    private List<int[]> travelled = List.of();
    double value;

    /**
     * What its numbers are.
     *
     * @param whole whether they must be whole; no string is left out then
     * @param missing else, of each item, the price of leaving one of its strings out
     * @param pricings else what prices, each by itself at the same time
     */
    record Kind(boolean whole, double[] missing, List<Pricing> pricings) {
        static final Kind WHOLE = new Kind(true, new double[0], List.of());

        static Kind linear(double[] missing, List<Pricing> pricings) {
            return new Kind(false, missing, pricings);
        }
    }

    Master(Site site, Items items, Strands strands, Kind kind) {
        this.site = site;
        this.items = items;
        this.strands = strands;
        controllers = site.controllers.length;
        spots = site.spots.length;
        whole = kind.whole;
        solver = MPSolver.createSolver(whole ? "SCIP" : "GLOP");
        objective = solver.objective();
        objective.setMinimization();
        pricings = kind.pricings;
        arc = new MPVariable[controllers + spots][spots];
        used = new MPVariable[spots];
        board = new MPVariable[spots][site.offers.length];
        point = Point.nowhere(site, items);
        paid = new MPVariable[site.offers.length];
        double loops = site.loops() * site.trunkPrice;
        for (int m = 0; m < paid.length; m++) {
            boolean owned = site.offers[m].have() > 0;
            paid[m] = solver.makeNumVar(0, owned ? INF : 0, "");
            objective.setCoefficient(paid[m], site.offers[m].price());
        }
        shortage = new MPVariable[items.size];
        for (int k = 0; k < items.size; k++) {
            shortage[k] = solver.makeNumVar(0, whole ? 0 : INF, "");
            objective.setCoefficient(shortage[k], whole ? 0 : kind.missing[k]);
        }
        for (int p = 0; p < spots; p++) {
            used[p] = solver.makeVar(0, 1, whole, "");
            objective.setCoefficient(used[p], site.spots[p].price());
            for (int m = 0; m < paid.length; m++) {
                board[p][m] = solver.makeVar(0, boardsMost(p, m), whole, "");
                boolean owned = site.offers[m].have() > 0;
                objective.setCoefficient(board[p][m], loops + (owned ? 0 : site.offers[m].price()));
            }
        }
    }

    /** Prices for leaving strings out that are above those of serving any, where any can be. */
    static double[] missingPrices(Site site, Items items) {
        double board = 0;
        for (var offer : site.offers) {
            board = Math.max(board, offer.price());
        }
        var rules = site.yard.rules();
        double[] prices = new double[items.size];
        Arrays.fill(
                prices,
                10
                        + 2 * board
                        + 2 * site.cablePrice
                        + 2 * Math.min(rules.hopMost(), 1e6) * site.trunkPrice
                        + 4
                                * Math.min(rules.leadData() + 3 * rules.jumperData(), 1e6)
                                * site.yard.costs().lead());
        return prices;
    }

    /** Sets other prices for leaving strings out. */
    void missing(double[] prices) {
        for (int k = 0; k < items.size; k++) {
            objective.setCoefficient(shortage[k], prices[k]);
        }
        grown = true;
    }

    /** What one string more of an item would add to the last value. The rows of items are the first. */
    double worth(int item) {
        return rows.get(item).constraint.dualValue();
    }

    /** Strings of an item that the last solution leaves out. */
    double missed(int item) {
        return missedValue[item];
    }

    /** Every board carries at least one string, which must be in its reach. */
    int boardsMost(int spot, int model) {
        int most = Math.min(site.spots[spot].most(), site.offers[model].most());
        int inReach = 0;
        for (Site.Wire lead : site.reach[spot]) {
            inReach += site.suits(model, lead.to()) ? 1 : 0;
        }
        return Math.min(most, inReach);
    }

    double arcCost(int from, int to) {
        return (site.arcLength(from, to) - site.loops()) * site.trunkPrice + (from < controllers ? site.cablePrice : 0);
    }

    /** Brings an arc in; nothing where it is in already, or no plan may have it. */
    void addArc(int from, int to) {
        if (arc[from][to] != null || from == controllers + to || site.arcLength(from, to) > site.hopMost) {
            return;
        }
        // two boards at both ends may be joined twice, by two cables
        MPVariable variable = solver.makeVar(0, arcMost(from, to), whole, "");
        arc[from][to] = variable;
        objective.setCoefficient(variable, arcCost(from, to));
        for (Held held : rows) {
            double coefficient = held.row.hasArcs() ? held.row.arc(from, to) : 0;
            if (coefficient != 0) {
                held.constraint.setCoefficient(variable, coefficient);
            }
        }
        if (lengths != null) {
            lengths.add(from, to, variable).hold();
        }
        grown = true;
    }

    /** Keeps cables within their length, from now on in whole numbers, or else where {@link #hold} finds it broken. */
    void keepLengths() {
        if (lengths == null) {
            MPConstraint[] drawn = IntStream.range(0, spots)
                    .mapToObj(p -> addRow(Lengths.drawn(site, p)))
                    .toArray(MPConstraint[]::new);
            Lengths kept = new Lengths(site, solver, drawn);
            for (int[] in : arcs()) {
                kept.add(in[0], in[1], Objects.requireNonNull(arc[in[0]][in[1]]));
            }
            if (whole) {
                kept.holdAll();
            }
            lengths = kept;
        }
    }

    /** Whether the last solution has too long a cable, which the next will not have. */
    boolean hold() {
        return lengths != null && lengths.hold();
    }

    int arcMost(int from, int to) {
        int boards = Math.min(site.spots[to].most(), site.reach[to].length);
        return from < controllers
                ? Math.min(boards, site.controllers[from].model().jacks())
                : Math.min(
                        boards, Math.min(site.spots[from - controllers].most(), site.reach[from - controllers].length));
    }

    /** Brings a strand in, or makes it cheaper where a cheaper order of it is found. */
    void addColumn(Pricing.Found found) {
        int strand = strands.index(found.order());
        Place place = new Place(strand, found.spot(), found.relaxed());
        Column known = byPlace.get(place);
        if (known != null) {
            if (known.variable.ub() == 0) {
                known.variable.setUb(INF);
                grown = true;
            }
            if (found.cost() < known.cost) {
                known.cost = found.cost();
                known.order = found.order();
                objective.setCoefficient(known.variable, found.cost());
                grown = true;
            }
            return;
        }
        MPVariable variable = solver.makeVar(0, whole ? columnMost(strand) : INF, whole, "");
        objective.setCoefficient(variable, found.cost());
        Column column = new Column(strand, found, variable);
        byPlace.put(place, column);
        columns.add(column);
        for (Held held : rows) {
            double coefficient = coefficient(held.row, column);
            if (coefficient != 0) {
                held.constraint.setCoefficient(variable, coefficient);
            }
        }
        grown = true;
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

    /** How often a strand can hang: its items have only so many strings. */
    private int columnMost(int strand) {
        int[] list = strands.get(strand).items();
        int most = Integer.MAX_VALUE;
        for (int item : list) {
            int uses = 0;
            for (int other : list) {
                uses += other == item ? 1 : 0;
            }
            most = Math.min(most, items.count[item] / uses);
        }
        return most;
    }

    private double coefficient(Row row, Column column) {
        int only = row.onlyItem();
        double sum = row.hasStarts() ? row.start(column.spot) : 0;
        if (row.hasHeads()) {
            sum += row.head(strands.get(column.strand).head(), column.spot);
        }
        if (only != -1) {
            for (int item : strands.get(column.strand).items()) {
                if (only == Row.ALL || only == item) {
                    sum += row.item(item, column.spot);
                }
            }
        }
        return sum;
    }

    Exclusion exclude() {
        return new Exclusion(this, solver);
    }

    MPConstraint addRow(Row row) {
        MPConstraint constraint = solver.makeConstraint(row.low(), row.high());
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
                double coefficient = coefficient(row, column);
                if (coefficient != 0) {
                    constraint.setCoefficient(column.variable, coefficient);
                }
            }
        }
        for (int k = 0; k < items.size; k++) {
            set(constraint, shortage[k], row.missing(k));
        }
        for (int p = 0; p < spots; p++) {
            set(constraint, used[p], row.used(p));
            for (int m = 0; m < paid.length; m++) {
                set(constraint, board[p][m], row.board(p, m));
            }
        }
        for (int m = 0; m < paid.length; m++) {
            set(constraint, paid[m], row.paid(m));
        }
        return constraint;
    }

    /** Leaves only solutions in which these spots are empty or used. */
    void choose(Chosen chosen) {
        for (int p = 0; p < spots; p++) {
            boolean empty = chosen.empty().get(p);
            used[p].setBounds(chosen.used().get(p) ? 1 : 0, empty ? 0 : 1);
            for (int m = 0; m < paid.length; m++) {
                board[p][m].setUb(empty ? 0 : boardsMost(p, m));
            }
        }
    }

    /** Whether a spot is as good as used, or empty, in the last solution. */
    boolean decided(int spot) {
        return Math.min(point.used()[spot], 1 - point.used()[spot]) <= DECIDED;
    }

    /** Of the spots of which nothing is supposed: the least decided in the last solution; -1 where there is none. */
    int leastDecided(Chosen chosen) {
        int least = -1;
        for (int p = 0; p < spots; p++) {
            boolean free = !chosen.empty().get(p) && !chosen.used().get(p);
            if (free && (least < 0 || Math.abs(point.used()[p] - 0.5) < Math.abs(point.used()[least] - 0.5))) {
                least = p;
            }
        }
        return least;
    }

    private static void set(MPConstraint constraint, MPVariable variable, double coefficient) {
        if (coefficient != 0) {
            constraint.setCoefficient(variable, coefficient);
        }
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

    /** By how much the last solution breaks a row; 0 where it keeps it. */
    double broken(Row row) {
        double sum = 0;
        boolean strands = row.hasStarts() || row.hasHeads() || row.onlyItem() != -1;
        for (int c = 0; c < carrying.size() && strands; c++) {
            sum += coefficient(row, carrying.get(c)) * carrying.get(c).value;
        }
        for (int a = 0; a < travelled.size() && row.hasArcs(); a++) {
            int[] between = travelled.get(a);
            sum += row.arc(between[0], between[1]) * point.arc()[between[0]][between[1]];
        }
        for (int p = 0; p < spots; p++) {
            sum += row.used(p) * point.used()[p];
            for (int m = 0; m < paid.length; m++) {
                sum += row.board(p, m) * point.board()[p][m];
            }
        }
        for (int m = 0; m < paid.length; m++) {
            sum += row.paid(m) * paid[m].solutionValue();
        }
        for (int k = 0; k < items.size; k++) {
            sum += row.missing(k) * missedValue[k];
        }
        return Math.max(0, Math.max(row.low() - sum, sum - row.high()));
    }

    /** Boards in the last solution. */
    double boards() {
        double sum = 0;
        for (double[] atSpot : point.board()) {
            for (double boards : atSpot) {
                sum += boards;
            }
        }
        return sum;
    }

    /** Cables in the last solution. */
    double cables() {
        double sum = 0;
        for (int c = 0; c < controllers; c++) {
            for (double leaving : point.arc()[c]) {
                sum += leaving;
            }
        }
        return sum;
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
        // new columns leave the basis primal feasible, new rows and bounds leave it dual feasible
        MPSolver.ResultStatus status = solve("use_preprocessing:false use_dual_simplex:" + !grown, seconds);
        grown = false;
        for (int way = 0; way < ANEW.length && status == MPSolver.ResultStatus.ABNORMAL; way++) {
            solver.reset();
            status = solve(ANEW[way], seconds);
        }
        value = status == MPSolver.ResultStatus.OPTIMAL
                ? objective.value()
                : status == MPSolver.ResultStatus.INFEASIBLE ? INF : Double.NaN;
        return value;
    }

    private MPSolver.ResultStatus solve(String way, double seconds) {
        solver.setSolverSpecificParametersAsString(way);
        solver.setTimeLimit(Math.max(1, (long) (1000 * seconds)));
        return solver.solve();
    }

    /** How a search for a whole solution ended. */
    enum Ending {
        /** The best whole solution can be read. */
        SOLVED,
        /** There is none. */
        NONE,
        /** Given up; the bound holds. */
        GIVEN_UP
    }

    /**
     * Looks for the cheapest whole solution.
     *
     * @param cutoff only solutions that cost less matter
     * @param seconds after which the solver gives up
     * @param nodes of its tree after which it gives up
     */
    Ending solveWhole(double cutoff, double seconds, long nodes) {
        if (costRow == null) {
            costRow = solver.makeConstraint(-INF, cutoff);
            for (MPVariable variable : solver.variables()) {
                costRow.setCoefficient(variable, objective.getCoefficient(variable));
            }
        }
        costRow.setUb(cutoff);
        MPSolverParameters exact = new MPSolverParameters();
        exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        solver.setSolverSpecificParametersAsString("misc/catchctrlc = FALSE\nlimits/nodes = " + nodes + "\n");
        solver.setTimeLimit(Math.max(1, (long) (1000 * seconds)));
        MPSolver.ResultStatus status = solver.solve(exact);
        if (status == MPSolver.ResultStatus.INFEASIBLE) {
            value = INF;
            return Ending.NONE;
        }
        if (status == MPSolver.ResultStatus.OPTIMAL) {
            value = objective.bestBound();
            return Ending.SOLVED;
        }
        boolean bounded = status == MPSolver.ResultStatus.FEASIBLE || status == MPSolver.ResultStatus.NOT_SOLVED;
        value = bounded ? objective.bestBound() : -INF;
        return Ending.GIVEN_UP;
    }

    /** Reads the solution; must come before rows are added. */
    void read() {
        point = Point.nowhere(site, items);
        if (lengths != null && !whole) {
            lengths.read();
        }
        missedValue =
                Arrays.stream(shortage).mapToDouble(MPVariable::solutionValue).toArray();
        carrying = new ArrayList<>();
        travelled = new ArrayList<>();
        for (int from = 0; from < arc.length; from++) {
            for (int to = 0; to < spots; to++) {
                MPVariable variable = arc[from][to];
                point.arc()[from][to] = variable == null ? 0 : variable.solutionValue();
                if (point.arc()[from][to] > NOTHING) {
                    travelled.add(new int[] {from, to});
                }
            }
        }
        for (int p = 0; p < spots; p++) {
            point.used()[p] = used[p].solutionValue();
            for (int m = 0; m < paid.length; m++) {
                point.board()[p][m] = board[p][m].solutionValue();
            }
        }
        for (Column column : columns) {
            column.value = column.variable.solutionValue();
            if (column.value > NOTHING) {
                carrying.add(column);
                point.led()[strands.get(column.strand).head()][column.spot] += column.value;
                for (int item : strands.get(column.strand).items()) {
                    point.served()[item][column.spot] += column.value;
                }
            }
        }
    }

    private record Duals(double[][] item, double[][] head, double[] start, List<Held> arcs) {
        Pricing.Worth at(int spot) {
            return new Pricing.Worth(at(item, spot), at(head, spot), start[spot]);
        }

        /** Of each item: what it is worth at the spot where it is worth the most. */
        double[] most() {
            return Arrays.stream(item)
                    .mapToDouble(row -> Arrays.stream(row).max().orElse(0))
                    .toArray();
        }

        private static double[] at(double[][] ofItem, int spot) {
            return Arrays.stream(ofItem).mapToDouble(row -> row[spot]).toArray();
        }
    }

    private Duals duals() {
        double[][] item = new double[items.size][spots];
        double[][] head = new double[items.size][spots];
        double[] start = new double[spots];
        List<Held> arcs = new ArrayList<>();
        for (Held held : rows) {
            double dual = held.constraint.dualValue();
            if (dual == 0) {
                continue;
            }
            if (held.row.hasArcs()) {
                arcs.add(held);
            }
            int only = held.row.onlyItem();
            for (int k = 0; k < items.size && only != -1; k++) {
                if (only == Row.ALL || only == k) {
                    for (int p = 0; p < spots; p++) {
                        item[k][p] += dual * held.row.item(k, p);
                    }
                }
            }
            for (int p = 0; p < spots && held.row.hasStarts(); p++) {
                start[p] += dual * held.row.start(p);
            }
            for (int k = 0; k < items.size && held.row.hasHeads(); k++) {
                for (int p = 0; p < spots; p++) {
                    head[k][p] += dual * held.row.head(k, p);
                }
            }
        }
        return new Duals(item, head, start, arcs);
    }

    /** How pricing ended. */
    enum Priced {
        /** Something came in. */
        MORE,
        /** Nothing is too cheap to stay out: the value is a bound. */
        NONE,
        /** There is too much to look at. */
        UNKNOWN
    }

    /**
     * Brings in what the last solution's duals find too cheap to stay out.
     *
     * @param most strands that come in, and arcs
     * @param thorough whether to look on where a quick look finds nothing and has not seen all
     */
    Priced price(int most, boolean thorough) {
        Duals duals = duals();
        List<Pricing.Found> found = new ArrayList<>();
        BitSet open = everySpot();
        lookAhead(duals);
        columnsBelow(duals, -PRICED, LABELS_QUICK, Look.SHARED, open, found);
        if (thorough && found.isEmpty() && !open.isEmpty()) {
            long labels = Growth.isMany(items) ? LABELS_MORE_OF_MANY : LABELS_MORE;
            columnsBelow(duals, -PRICED, labels, Look.ALONE, open, found);
        }
        if (thorough && found.isEmpty() && !open.isEmpty()) {
            long labels = Growth.isMany(items) ? LABELS_LONG_OF_MANY : LABELS_LONG;
            columnsBelow(duals, -PRICED, labels / spots, Look.RELAXED, open, found);
        }
        boolean complete = open.isEmpty() && found.size() <= COLUMNS_MOST;
        double[][] reducedArcs = reducedArcs(duals, true);
        found.subList(0, Math.min(most, found.size())).forEach(this::addColumn);
        boolean more = !found.isEmpty();
        List<int[]> cheap = below(reducedArcs, -PRICED);
        cheap.subList(0, Math.min(most, cheap.size())).forEach(between -> addArc(between[0], between[1]));
        more |= !cheap.isEmpty();
        return more ? Priced.MORE : complete ? Priced.NONE : Priced.UNKNOWN;
    }

    /** How far ahead to look at a spot. */
    private enum Look {
        /** Once for all spots. */
        SHARED,
        /** For each spot. */
        ALONE,
        /** For each spot, and let in chains with items that repeat where all others are too many to look at. */
        RELAXED
    }

    private BitSet everySpot() {
        BitSet all = new BitSet();
        all.set(0, spots);
        return all;
    }

    /** Before any look. */
    private void lookAhead(Duals duals) {
        double[] most = duals.most();
        pricings.stream().parallel().forEach(pricing -> pricing.lookAhead(most));
    }

    /**
     * Looks at some spots, shared out evenly; what is found comes in a fixed order.
     *
     * @param open the spots; those at which nothing is missing leave
     */
    private void columnsBelow(Duals duals, double bar, long labels, Look look, BitSet open, List<Pricing.Found> found) {
        int[] at = open.stream().toArray();
        List<Pricing.Result> results = IntStream.range(0, pricings.size())
                .parallel()
                .mapToObj(w -> at(w, at, duals, bar, labels, look))
                .flatMap(List::stream)
                .toList();
        for (Pricing.Result result : results) {
            found.addAll(result.found());
            if (result.complete()) {
                open.clear(result.spot());
            }
        }
        found.sort(Comparator.comparingDouble(Pricing.Found::reduced)
                .thenComparingInt(Pricing.Found::spot)
                .thenComparing(Pricing.Found::order, Arrays::compare));
    }

    private List<Pricing.Result> at(int first, int[] at, Duals duals, double bar, long labels, Look look) {
        Pricing pricing = pricings.get(first);
        List<Pricing.Result> results = new ArrayList<>();
        for (int i = first; i < at.length; i += pricings.size()) {
            Pricing.Result result = pricing.below(at[i], duals.at(at[i]), bar, labels, look != Look.SHARED);
            boolean enough =
                    result.complete() || look != Look.RELAXED || !result.found().isEmpty();
            results.add(enough ? result : new Pricing.Result(at[i], pricing.relaxed(), true));
        }
        return results;
    }

    /** The arcs below a bar, least first. */
    private static List<int[]> below(double[][] reduced, double bar) {
        List<int[]> found = new ArrayList<>();
        for (int from = 0; from < reduced.length; from++) {
            for (int to = 0; to < reduced[from].length; to++) {
                if (reduced[from][to] < bar) {
                    found.add(new int[] {from, to});
                }
            }
        }
        found.sort(Comparator.comparingDouble(between -> reduced[between[0]][between[1]]));
        return found;
    }

    private double[][] reducedArcs(Duals duals, boolean onlyOut) {
        double[][] reduced = new double[arc.length][spots];
        double[][] worth = new double[arc.length][spots];
        for (Held held : duals.arcs) {
            held.row.addArcs(held.constraint.dualValue(), worth);
        }
        double[] drawn = lengths == null ? new double[0] : lengths.duals();
        for (int from = 0; from < arc.length; from++) {
            for (int to = 0; to < spots; to++) {
                boolean skip = from == controllers + to
                        || (onlyOut && arc[from][to] != null)
                        || site.arcLength(from, to) > site.hopMost;
                if (!skip) {
                    double room = lengths == null ? 0 : lengths.room(drawn, from, to);
                    reduced[from][to] = arcCost(from, to) - worth[from][to] + room;
                } else {
                    reduced[from][to] = INF;
                }
            }
        }
        return reduced;
    }

    /** What may be in a plan that costs less than the bar: all whose reduced cost does not lift the value above it. */
    record Survivors(List<int[]> arcs, List<Pricing.Found> columns) {}

    /** Null where they are too many to list. */
    @Nullable
    Survivors survivors(double bar) {
        Duals duals = duals();
        double room = bar - value + PRICED;
        List<int[]> arcs = new ArrayList<>();
        double[][] reduced = reducedArcs(duals, false);
        for (int from = 0; from < arc.length; from++) {
            for (int to = 0; to < spots; to++) {
                if (reduced[from][to] <= room) {
                    arcs.add(new int[] {from, to});
                }
            }
        }
        List<Pricing.Found> found = new ArrayList<>();
        BitSet open = everySpot();
        lookAhead(duals);
        columnsBelow(duals, room, LABELS_MOST, Look.ALONE, open, found);
        return open.isEmpty() && found.size() <= COLUMNS_MOST ? new Survivors(arcs, found) : null;
    }
}
