package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.MultipleCircuitConstraint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;

/**
 * The repairs of an installed plan as a constraint model: which boards stay, move or are new, which way the cables run,
 * and which port every string is on. It knows every rule but lengths of hops and cables, injections and where things
 * lie on streams and in channels, and counts all work but injections, start pixels and windows. So it is a relaxation:
 * each repair is a solution of it that costs at most the repair's work, and a bound of it is a bound of the work. What
 * it does not know is told to it by cuts, each of which only takes away what breaks a rule or has been looked at.
 */
final class RepairModel {
    /** How much of the installed plan may change; each but the last is there to find good repairs soon. */
    enum Scope {
        /** Cables run a given way, but for new boards; installed strings stay on their boards. */
        PORTS,
        /** Installed strings stay on their boards; cables may run anew. */
        TRUNK,
        /** Cables run a given way, but for new boards; strings may go anywhere. */
        STRINGS,
        /** Everything, and boards may move. */
        ALL
    }

    /** A board of the model: an installed one, or a place for a new one. */
    record Candidate(int model, int installed, int[] spots, BoolVar[] at, BoolVar used) {}

    /** Spots with boards to which a string may go before everything is allowed. */
    private static final int NEAR = 5;

    final CpModel cp = new CpModel();
    final Site site;
    final Installed installed;
    final Set<Keep> keep;
    final List<Candidate> boards = new ArrayList<>();

    /** {@code arcs.get(from * nodes + to)}; nodes are jacks first, then boards; into a jack the cable before it ends. */
    final Map<Integer, BoolVar> arcs = new LinkedHashMap<>();

    final int jacks;
    final int[] jackController;
    final BoolVar[][] cableOf;

    /** Of each board and jack: whether the board may hang on its cable. */
    final boolean[][] mayHang;

    final @Nullable BoolVar[][][] head;
    final @Nullable BoolVar[][][] on;
    final Map<Integer, BoolVar> behind = new LinkedHashMap<>();
    final BoolVar[] last;

    /** Of each string, jack and stream; null where the string cannot be on the jack's cable. */
    final @Nullable BoolVar[][][] stream;

    /** Of each board, port and stream, for ports that can be set to any. */
    final @Nullable BoolVar[][][] heard;

    /** Of each installed board: whether its ID stays. */
    final BoolVar[] idStays;

    final LinearExprBuilder work = LinearExpr.newBuilder();
    private final double unit;
    final Scope scope;
    private final Set<Installed.Hop> trunk;
    private final boolean[] frozen;

    /**
     * @param news places for new boards of each model
     * @param scope what may change
     * @param trunk where the scope gives it: the hops between things that stay
     * @param frozen installed boards whose strings stay on their ports; none with {@link Scope#ALL}
     * @param unit minutes to one of the objective
     */
    RepairModel(
            Site site,
            Installed installed,
            Set<Keep> keep,
            int news,
            Scope scope,
            Set<Installed.Hop> trunk,
            boolean[] frozen,
            double unit) {
        this.site = site;
        this.installed = installed;
        this.keep = keep;
        this.unit = unit;
        this.scope = scope;
        this.trunk = trunk;
        this.frozen = scope == Scope.ALL ? new boolean[frozen.length] : frozen;
        jacks = site.jacks();
        jackController = jackControllers(site);
        boolean fixed = keep.contains(Keep.BOARDS);
        candidates(fixed ? 0 : news, scope == Scope.ALL && !fixed);
        cableOf = new BoolVar[boards.size()][jacks];
        mayHang = new boolean[boards.size()][jacks];
        for (boolean[] of : mayHang) {
            Arrays.fill(of, true);
        }
        idStays = new BoolVar[installed.boards.size()];
        int n = site.strings.length;
        head = new BoolVar[n][boards.size()][];
        on = new BoolVar[n][boards.size()][];
        heard = new BoolVar[boards.size()][][];
        last = new BoolVar[n];
        stream = new BoolVar[n][jacks][];
        cables();
        if (trunkGiven()) {
            stayOnCables();
        }
        strings();
        new RepairStreams(this).build();
        new RepairBoards(this).build();
        new RepairWork(this).build();
    }

    static int[] jackControllers(Site site) {
        int[] controllers = new int[site.jacks()];
        int jack = 0;
        for (int c = 0; c < site.controllers.length; c++) {
            for (int j = 0; j < site.controllers[c].model().jacks(); j++) {
                controllers[jack++] = c;
            }
        }
        return controllers;
    }

    int nodes() {
        return jacks + boards.size();
    }

    long scaled(double minutes) {
        return Math.round(minutes / unit);
    }

    int streams(int jack) {
        return site.controllers[jackController[jack]].model().streams();
    }

    BoolVar bool() {
        return cp.newBoolVar("");
    }

    private void candidates(int news, boolean moves) {
        for (int b = 0; b < installed.boards.size(); b++) {
            Installed.Standing standing = installed.boards.get(b);
            List<Integer> spots = new ArrayList<>();
            if (standing.spot() >= 0) {
                spots.add(standing.spot());
            }
            for (int s = 0; s < site.spots.length && moves; s++) {
                if (s != standing.spot() && site.reach[s].length > 0) {
                    spots.add(s);
                }
            }
            candidate(standing.model(), b, spots);
        }
        for (int m = 0; m < site.offers.length; m++) {
            Candidate before = null;
            // an offer stands once for each voltage; here a board takes what hangs on it
            boolean pixels = site.model(m).drives() == Drives.PIXELS && site.stock[m] == m;
            for (int k = 0; k < news && pixels; k++) {
                List<Integer> spots = new ArrayList<>();
                for (int s = 0; s < site.spots.length; s++) {
                    if (site.reach[s].length > 0) {
                        spots.add(s);
                    }
                }
                Candidate next = candidate(m, -1, spots);
                if (before != null) {
                    cp.addImplication(next.used, before.used);
                }
                before = next;
            }
        }
    }

    private Candidate candidate(int model, int index, List<Integer> spots) {
        BoolVar[] at = new BoolVar[spots.size()];
        for (int s = 0; s < at.length; s++) {
            at[s] = bool();
        }
        BoolVar used = bool();
        cp.addEquality(LinearExpr.sum(at), used);
        Candidate made = new Candidate(
                model, index, spots.stream().mapToInt(Integer::intValue).toArray(), at, used);
        boards.add(made);
        return made;
    }

    /** Whether the board hangs where it hung; null where it cannot. */
    @Nullable
    BoolVar stays(int board) {
        Candidate candidate = boards.get(board);
        return candidate.installed >= 0
                        && installed.boards.get(candidate.installed).spot() >= 0
                ? candidate.at[0]
                : null;
    }

    private void arc(CircuitConstraint circuit, int from, int to) {
        BoolVar arc = bool();
        circuit.addArc(from, to, arc);
        arcs.put(from * nodes() + to, arc);
    }

    /** One circuit through all jacks: each jack's cable, and then on to the next jack. */
    private void cables() {
        CircuitConstraint circuit = cp.addCircuit();
        for (int j = 0; j < jacks; j++) {
            if (jacks > 1) {
                arc(circuit, j, (j + 1) % jacks);
            } else {
                BoolVar empty = bool();
                circuit.addArc(j, j, empty);
                arcs.put(j * nodes() + j, empty);
            }
        }
        for (int b = 0; b < boards.size(); b++) {
            Candidate board = boards.get(b);
            int node = jacks + b;
            circuit.addArc(node, node, board.used.not());
            for (int j = 0; j < jacks; j++) {
                if (board.installed < 0 || !trunkGiven() || mayBegin(j, b)) {
                    arc(circuit, j, node);
                }
                arc(circuit, node, j);
                cableOf[b][j] = bool();
            }
            cp.addEquality(LinearExpr.sum(cableOf[b]), board.used);
            for (int other = 0; other < boards.size(); other++) {
                if (other != b && addressed(b) && addressed(other) && mayFollow(b, other)) {
                    arc(circuit, node, jacks + other);
                }
            }
        }
        for (Map.Entry<Integer, BoolVar> arc : arcs.entrySet()) {
            int from = arc.getKey() / nodes();
            int to = arc.getKey() % nodes();
            if (from < jacks && to >= jacks) {
                cp.addImplication(arc.getValue(), cableOf[to - jacks][from]);
            } else if (from >= jacks && to < jacks) {
                cp.addImplication(arc.getValue(), cableOf[from - jacks][(to + jacks - 1) % jacks]);
            } else if (from >= jacks) {
                for (int j = 0; j < jacks; j++) {
                    Literal is = arc.getValue().not();
                    cp.addBoolOr(new Literal[] {is, cableOf[from - jacks][j].not(), cableOf[to - jacks][j]});
                    cp.addBoolOr(new Literal[] {is, cableOf[to - jacks][j].not(), cableOf[from - jacks][j]});
                }
            }
        }
    }

    private boolean trunkGiven() {
        return scope == Scope.STRINGS || scope == Scope.PORTS;
    }

    private boolean mayFollow(int board, int next) {
        boolean old = boards.get(board).installed >= 0 && boards.get(next).installed >= 0;
        return !trunkGiven() || !old || trunk.contains(new Installed.Hop(board, next));
    }

    /** Whether a cable may begin with an installed board: as it does, or where the one before it is gone. */
    private boolean mayBegin(int jack, int board) {
        return trunk.contains(new Installed.Hop(-1 - jack, board));
    }

    /** Whether a string may be plugged into a board. */
    private boolean mayPlug(int string, int board) {
        List<Installed.Seat> seats = installed.seats.get(string);
        boolean still = !seats.isEmpty() && seats.stream().allMatch(seat -> frozen[seat.board()]);
        if (board < frozen.length && frozen[board] && !seats.isEmpty() && !still) {
            return false;
        }
        boolean own = seats.isEmpty() || seats.stream().anyMatch(seat -> seat.board() == board);
        return scope == Scope.ALL || own || (scope == Scope.STRINGS && !still && near(string, board));
    }

    private boolean mayPlug(int string, int board, int port) {
        return board >= frozen.length
                || !frozen[board]
                || installed.seats.get(string).isEmpty()
                || installed.seats.get(string).stream().anyMatch(seat -> seat.board() == board && seat.port() == port);
    }

    /** Whether a board may be, or is, at one of the spots with the shortest leads that have boards. */
    private boolean near(int string, int board) {
        int rank = 0;
        for (Site.Wire lead : site.leads[string]) {
            boolean any = false;
            for (int b = 0; b < installed.boards.size(); b++) {
                any |= installed.boards.get(b).spot() == lead.to();
            }
            for (int spot : boards.get(board).spots) {
                if (spot == lead.to() && (any || rank == 0)) {
                    return true;
                }
            }
            rank += any ? 1 : 0;
            if (rank == NEAR) {
                return false;
            }
        }
        return false;
    }

    /** Whether one string may follow another. */
    private boolean mayFollowString(int before, int next) {
        return scope == Scope.ALL
                || installed.seats.get(before).isEmpty()
                || installed.seats.get(next).isEmpty()
                || installed.seats.get(next).stream().anyMatch(seat -> seat.behind() == before);
    }

    /** Where the trunk is given, so is each installed board's cable. */
    private void stayOnCables() {
        Map<Integer, Integer> next = new HashMap<>();
        trunk.forEach(hop -> next.put(hop.from(), hop.to()));
        for (int j = 0; j < jacks; j++) {
            Set<Integer> passed = new HashSet<>();
            for (Integer b = next.get(-1 - j); b != null && passed.add(b); b = next.get(b)) {
                for (int other = 0; other < jacks; other++) {
                    if (other != j) {
                        cp.addEquality(cableOf[b][other], 0);
                        mayHang[b][other] = false;
                    }
                }
            }
        }
    }

    boolean addressed(int board) {
        return site.model(boards.get(board).model).addressed();
    }

    private int ports(int board) {
        return modelOf(board).ports().size();
    }

    private boolean[][] reached() {
        int n = site.strings.length;
        boolean[][] reached = new boolean[n][boards.size()];
        for (int b = 0; b < boards.size(); b++) {
            for (int s : boards.get(b).spots) {
                for (Site.Wire wire : site.reach[s]) {
                    reached[wire.to()][b] = mayPlug(wire.to(), b);
                }
            }
        }
        return reached;
    }

    private void strings() {
        int n = site.strings.length;
        boolean[][] lead = reached();
        boolean[][] some = new boolean[n][];
        for (int i = 0; i < n; i++) {
            some[i] = lead[i].clone();
        }
        for (boolean more = true; more; ) {
            more = false;
            for (int i = 0; i < n; i++) {
                for (Site.Wire before : site.before[i]) {
                    if (!mayFollowString(before.to(), i)) {
                        continue;
                    }
                    for (int b = 0; b < boards.size(); b++) {
                        if (some[before.to()][b] && !some[i][b] && mayPlug(i, b)) {
                            some[i][b] = true;
                            more = true;
                        }
                    }
                }
            }
        }
        MultipleCircuitConstraint chains = cp.addMultipleCircuit();
        for (int i = 0; i < n; i++) {
            BoolVar first = bool();
            last[i] = bool();
            chains.addArc(0, i + 1, first);
            chains.addArc(i + 1, 0, last[i]);
            List<Literal> heads = new ArrayList<>();
            List<Literal> all = new ArrayList<>();
            for (int b = 0; b < boards.size(); b++) {
                int ports = ports(b);
                if (lead[i][b]) {
                    head[i][b] = new BoolVar[ports];
                }
                if (some[i][b]) {
                    on[i][b] = new BoolVar[ports];
                    for (int p = 0; p < ports; p++) {
                        on[i][b][p] = bool();
                        if (!mayPlug(i, b, p)) {
                            cp.addEquality(on[i][b][p], 0);
                        }
                        all.add(on[i][b][p]);
                        cp.addImplication(on[i][b][p], boards.get(b).used);
                        if (lead[i][b]) {
                            head[i][b][p] = bool();
                            heads.add(head[i][b][p]);
                            cp.addImplication(head[i][b][p], on[i][b][p]);
                        }
                    }
                }
            }
            cp.addExactlyOne(all);
            cp.addEquality(LinearExpr.sum(heads.toArray(new Literal[0])), first);
        }
        for (int i = 0; i < n; i++) {
            for (Site.Wire wire : site.after[i]) {
                int j = wire.to();
                if (!mayFollowString(i, j)) {
                    continue;
                }
                BoolVar follows = bool();
                behind.put(i * n + j, follows);
                chains.addArc(i + 1, j + 1, follows);
                for (int b = 0; b < boards.size(); b++) {
                    for (int p = 0; p < ports(b); p++) {
                        if (on[i][b] != null && on[j][b] != null) {
                            cp.addBoolOr(new Literal[] {follows.not(), on[i][b][p].not(), on[j][b][p]});
                            cp.addBoolOr(new Literal[] {follows.not(), on[j][b][p].not(), on[i][b][p]});
                        }
                    }
                }
            }
        }
        for (int b = 0; b < boards.size(); b++) {
            List<Literal> any = new ArrayList<>();
            for (int p = 0; p < ports(b); p++) {
                List<Literal> heads = new ArrayList<>();
                for (int i = 0; i < n; i++) {
                    if (head[i][b] != null) {
                        heads.add(head[i][b][p]);
                    }
                }
                cp.addAtMostOne(heads);
                any.addAll(heads);
            }
            any.add(boards.get(b).used.not());
            cp.addBoolOr(any);
        }
    }

    /** The model of a board. */
    BoardModel modelOf(int board) {
        return site.model(boards.get(board).model);
    }
}
