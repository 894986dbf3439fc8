package streamwright.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The relaxation with cables told apart by make-up: arcs, boards and strands of each sort of cables by themselves. What may
 * come in is listed, so that pricing is a look at the list.
 */
final class MakeupMaster {
    private static final double INF = Double.POSITIVE_INFINITY;
    private static final double PRICED = 1e-6;
    private static final double NOTHING = 1e-9;

    /** Strands or arcs that come in at once. */
    private static final int AT_ONCE = 800;

    /** Row of all sorts. */
    private static final int ALL = -1;

    /** What may come in, and for each sort its variable where it has. */
    private static final class Listed {
        final int[] arc;
        final Pricing.@Nullable Found found;
        final @Nullable Strand strand;
        final double cost;
        final @Nullable MPVariable[] variable;

        Listed(int[] arc, Pricing.@Nullable Found found, @Nullable Strand strand, double cost, int sorts) {
            this.arc = arc;
            this.strand = strand;
            this.found = found;
            this.cost = cost;
            variable = new MPVariable[sorts];
        }

        boolean isOut() {
            return Arrays.stream(variable).allMatch(Objects::isNull);
        }
    }

    private record Entrant(Listed listed, int sort, double reduced) {}

    /** A row of one sort, by its index. */
    record Of(int sort, Row row) {}

    private record Kept(Of cut, MPConstraint constraint) {}

    private final Site site;
    private final Items items;
    private final Strands strands;
    private final int sorts;
    private final MasterLimits limits;
    private final Programme programme = new Programme(false);
    private final Standing standing;

    /** Of each sort, the rows it is in. */
    private final List<List<Master.Held>> rows = new ArrayList<>();

    private final List<Kept> cuts = new ArrayList<>();
    private final List<MakeupRows> kinds;

    /** Of each sort, how to find rows that come in where they are broken. */
    private final List<MakeupCuts> cutsOf = new ArrayList<>();

    /** Of each sort, streams in each window of kept channels. */
    private final MPVariable[][] window;

    private final List<Listed> arcs = new ArrayList<>();
    private final List<Listed> columns = new ArrayList<>();

    MakeupMaster(Site site, Items items, Strands strands, Makeups makeups, double[] missing, Windows windows) {
        this.site = site;
        this.items = items;
        this.strands = strands;
        sorts = makeups.sorts().size();
        limits = new MasterLimits(site, items);
        kinds = makeups.sorts().stream()
                .map(makeup -> new MakeupRows(site, items, makeup, makeups.streams()))
                .toList();
        standing = new Standing(site, items, limits, programme, Master.Kind.linear(missing), sorts);
        programme.afresh();
        // rows come in all along, and scaled anew it would know nothing of its last basis
        programme.unscaled();
        WindowRows windowRows = new WindowRows(site, items, windows);
        window = new MPVariable[sorts][windows.all.size()];
        for (MPVariable[] ofSort : window) {
            Arrays.setAll(ofSort, w -> programme.free(INF, 0));
        }
        for (int s = 0; s < sorts; s++) {
            rows.add(new ArrayList<>());
        }
        for (int s = 0; s < sorts; s++) {
            int sort = s;
            int cables = makeups.cables().get(s);
            add(s, Rows.cables(site, cables, cables));
            Rows.ofSomeCables(site, items).forEach(row -> add(sort, row));
            for (int m = 0; m < site.offers.length; m++) {
                if (!makeups.sorts().get(s).has(site.sockets.addressed[m])) {
                    standing.without(s, m);
                }
            }
            kinds.get(s).pixels(cables).forEach(row -> add(sort, row));
            if (site.cableMost < INF) {
                add(s, Lengths.together(site, cables));
            }
            if (window[s].length > 0) {
                kinds.get(s).windows(cables, windowRows).forEach(row -> add(sort, row));
            }
            cutsOf.add(new MakeupCuts(
                    site, items, makeups.sorts().get(s), kinds.get(s).ports(), windowRows));
        }
    }

    /** Rows of all cables together. */
    void addRows(List<Row> all) {
        all.forEach(row -> add(ALL, row));
    }

    /** Leaves only plans in which these spots are empty or used. */
    void choose(Chosen chosen) {
        standing.choose(chosen);
    }

    /** How far spots are used in the last solution. */
    double[] used() {
        return Standing.values(standing.used);
    }

    /** Cuts of one sort. */
    void addCuts(List<Of> found) {
        found.forEach(cut -> cuts.add(new Kept(cut, add(cut.sort, cut.row))));
    }

    /** Rows of one sort that need not bind to stay. */
    void addTold(List<Of> told) {
        told.forEach(row -> add(row.sort, row.row));
    }

    /** What it is worth with one more row: infinite where there is no solution, and no bound, since what is out stays out. */
    double tried(Of of, double seconds) {
        MPConstraint constraint = add(of.sort, of.row);
        double value = solve(seconds);
        constraint.setBounds(-INF, INF);
        rows.get(of.sort).removeIf(held -> held.constraint() == constraint);
        return value;
    }

    /** Those of them that bind in the last solution. */
    List<Of> bindingCuts() {
        return cuts.stream()
                .filter(kept -> Math.abs(kept.constraint.dualValue()) > NOTHING)
                .map(Kept::cut)
                .toList();
    }

    private MPConstraint add(int sort, Row row) {
        MPConstraint constraint = programme.solver.makeConstraint(row.low(), row.high());
        for (int s = 0; s < sorts; s++) {
            if (sort == ALL || sort == s) {
                add(s, row, constraint);
            }
        }
        standing.join(row, constraint);
        return constraint;
    }

    private void add(int s, Row row, MPConstraint constraint) {
        rows.get(s).add(new Master.Held(row, constraint));
        Stream.concat(arcs.stream(), columns.stream()).forEach(listed -> {
            MPVariable variable = listed.variable[s];
            if (variable != null) {
                Standing.set(constraint, variable, coefficient(row, listed));
            }
        });
        standing.join(s, row, constraint);
        for (int w = 0; w < window[s].length; w++) {
            Standing.set(constraint, window[s][w], row.window(w));
        }
    }

    private static double coefficient(Row row, Listed listed) {
        if (listed.found != null && listed.strand != null) {
            return row.strand(listed.strand, listed.found.spot());
        }
        return row.hasArcs() ? row.arc(listed.arc[0], listed.arc[1]) : 0;
    }

    /** Another list of what may come in; what is in already stays. */
    void list(Entering.Survivors survivors) {
        arcs.removeIf(Listed::isOut);
        columns.removeIf(Listed::isOut);
        for (int[] arc : survivors.arcs()) {
            arcs.add(listed(arc, null));
        }
        for (Pricing.Found found : survivors.columns()) {
            columns.add(listed(new int[0], found));
        }
    }

    private Listed listed(int[] arc, Pricing.@Nullable Found found) {
        return found == null
                ? new Listed(arc, null, null, limits.arcCost(arc[0], arc[1]), sorts)
                : new Listed(arc, found, strands.get(strands.index(found.order())), found.cost(), sorts);
    }

    private void enter(Listed listed, int sort) {
        MPVariable variable = programme.counted(INF, listed.cost);
        listed.variable[sort] = variable;
        for (Master.Held held : rows.get(sort)) {
            Standing.set(held.constraint(), variable, coefficient(held.row(), listed));
        }
        programme.grown();
    }

    /** Solves it as it stands: its value; infinite where there is no solution; NaN where the solver gave up. */
    double solve(double seconds) {
        return programme.solve(seconds);
    }

    /** Brings in what is listed and too cheap to stay out; false where nothing is. */
    boolean price() {
        List<Entrant> cheap = new ArrayList<>();
        for (int s = 0; s < sorts; s++) {
            Duals duals = Duals.of(items.size, site.spots.length, rows.get(s));
            double[][] worth = new double[site.controllers.length + site.spots.length][site.spots.length];
            for (Master.Held held : duals.arcs()) {
                held.row().addArcs(held.constraint().dualValue(), worth);
            }
            for (Listed arc : arcs) {
                if (carries(s, arc)) {
                    consider(arc, s, arc.cost - worth[arc.arc[0]][arc.arc[1]], cheap);
                }
            }
            for (Listed column : columns) {
                Pricing.Found found = column.found;
                if (found != null && carries(s, column)) {
                    double gain = duals.start()[found.spot()] + duals.head()[found.order()[0]][found.spot()];
                    for (int item : found.order()) {
                        gain += duals.item()[item][found.spot()];
                    }
                    consider(column, s, column.cost - gain, cheap);
                }
            }
        }
        enter(cheap, true);
        enter(cheap, false);
        return !cheap.isEmpty();
    }

    private static void consider(Listed listed, int sort, double reduced, List<Entrant> cheap) {
        if (reduced < -PRICED && listed.variable[sort] == null) {
            cheap.add(new Entrant(listed, sort, reduced));
        }
    }

    private void enter(List<Entrant> cheap, boolean strand) {
        cheap.stream()
                .filter(entrant -> (entrant.listed.found != null) == strand)
                .sorted(Comparator.comparingDouble(Entrant::reduced))
                .limit(AT_ONCE)
                .forEach(entrant -> enter(entrant.listed, entrant.sort));
    }

    /** Something that is in, with what sort of cables. */
    record Entered(int sort, int[] arc, Pricing.@Nullable Found found) {}

    /** What the last solution has, or nearly has; must be read before anything comes in. */
    List<Entered> nearly(double reduced) {
        List<Entered> near = new ArrayList<>();
        for (Listed listed : Stream.concat(arcs.stream(), columns.stream()).toList()) {
            for (int s = 0; s < sorts; s++) {
                MPVariable variable = listed.variable[s];
                if (variable != null && (variable.solutionValue() > NOTHING || variable.reducedCost() < reduced)) {
                    near.add(new Entered(s, listed.arc, listed.found));
                }
            }
        }
        return near;
    }

    /** Begins with what was in elsewhere. */
    void begin(List<Entered> all) {
        for (Entered each : all) {
            Pricing.Found found = each.found;
            Listed listed = listed(each.arc, found);
            if (carries(each.sort, listed)) {
                (found == null ? arcs : columns).add(listed);
                enter(listed, each.sort);
            }
        }
    }

    private boolean carries(int sort, Listed listed) {
        Pricing.Found found = listed.found;
        return found == null
                ? kinds.get(sort).goes(listed.arc[0])
                : kinds.get(sort).carries(items.sample[found.order()[0]]);
    }

    /** Rows that the point of a sort breaks. */
    List<Of> broken(int sort, Point point) {
        return of(sort, cutsOf.get(sort).broken(point, Standing.values(window[sort])));
    }

    /** Rows that it breaks when boards are counted whole. */
    List<Of> rounded(int sort, Point point) {
        return of(sort, cutsOf.get(sort).rounded(point));
    }

    private static List<Of> of(int sort, List<Row> rows) {
        return rows.stream().map(row -> new Of(sort, row)).toList();
    }

    /** Brings in all that is listed. */
    void enterAll() {
        for (int s = 0; s < sorts; s++) {
            for (Listed listed : Stream.concat(arcs.stream(), columns.stream()).toList()) {
                if (listed.variable[s] == null && carries(s, listed)) {
                    enter(listed, s);
                }
            }
        }
    }

    /** What one sort of cables does in the last solution; must be read before anything comes in. */
    Point point(int sort) {
        Point point = Point.nowhere(site, items);
        for (Listed arc : arcs) {
            MPVariable variable = arc.variable[sort];
            if (variable != null) {
                point.arc()[arc.arc[0]][arc.arc[1]] += variable.solutionValue();
            }
        }
        for (Listed column : columns) {
            MPVariable variable = column.variable[sort];
            Pricing.Found found = column.found;
            if (variable != null && found != null && variable.solutionValue() > NOTHING) {
                point.led()[found.order()[0]][found.spot()] += variable.solutionValue();
                for (int item : found.order()) {
                    point.served()[item][found.spot()] += variable.solutionValue();
                }
            }
        }
        for (int p = 0; p < site.spots.length; p++) {
            point.board()[p] = Standing.values(standing.board[sort][p]);
        }
        return point;
    }
}
