package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
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
 * lie on streams, in channels and among a board's outputs, and counts all work but injections, start pixels, windows and
 * outputs that move on their board. So it is a relaxation:
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

    /**
     * A part of all repairs.
     *
     * @param news places for new boards of each model
     * @param trunk where the scope gives it: the hops between things that stay
     * @param frozen installed boards whose strings stay on their ports; without meaning for {@link Scope#ALL}
     * @param least minutes of work on boards and cables, at least
     * @param most likewise, at most; infinite where there is no limit
     */
    record Part(int news, Scope scope, Set<Installed.Hop> trunk, boolean[] frozen, double least, double most) {
        /** Whatever the work on boards and cables. */
        static Part of(int news, Scope scope, Set<Installed.Hop> trunk, boolean[] frozen) {
            return new Part(news, scope, trunk, frozen, 0, Double.POSITIVE_INFINITY);
        }

        boolean whole() {
            return scope == Scope.ALL;
        }
    }

    /** A board of the model: an installed one, or a place for a new one. */
    record Candidate(int model, int installed, int[] spots, BoolVar[] at, BoolVar used) {}

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

    /** Of each jack and stream what outputs and panels put there. */
    final List<List<List<RepairFixtures.Part>>> parts = new ArrayList<>();

    /** Of each jack and stream the kind of its pixels; null where the yard has but one. */
    final @Nullable BoolVar[][][] kind;

    /** Of each installed board: whether its ID stays. */
    final BoolVar[] idStays;

    final LinearExprBuilder work = LinearExpr.newBuilder();

    /** The part of the work that is done on boards and cables. */
    final LinearExprBuilder trunkWork = LinearExpr.newBuilder();

    private final double unit;
    final Part part;
    final Scope scope;
    final Set<Installed.Hop> trunk;
    final boolean[] frozen;

    /** @param unit minutes to one of the objective */
    RepairModel(Site site, Installed installed, Set<Keep> keep, Part part, double unit) {
        this.site = site;
        this.installed = installed;
        this.keep = keep;
        this.unit = unit;
        this.part = part;
        scope = part.scope;
        trunk = part.trunk;
        frozen = part.whole() ? new boolean[part.frozen.length] : part.frozen;
        jacks = site.jacks();
        jackController = jackControllers(site);
        boolean fixed = keep.contains(Keep.BOARDS);
        candidates(fixed ? 0 : part.news, fixed, part.whole());
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
        kind = new BoolVar[jacks][][];
        for (int j = 0; j < jacks; j++) {
            List<List<RepairFixtures.Part>> streams = new ArrayList<>();
            for (int k = 0; k < streams(j); k++) {
                streams.add(new ArrayList<>());
            }
            parts.add(streams);
        }
        new RepairTrunk(this).build();
        new RepairStrings(this).build();
        new RepairStreams(this).build();
        if (part.whole()) {
            new RepairTight(this).build();
        }
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

    /** Of two things that are the same wherever a condition holds: both, or neither. */
    void same(Literal when, BoolVar one, BoolVar other) {
        cp.addBoolOr(new Literal[] {when.not(), one.not(), other});
        cp.addBoolOr(new Literal[] {when.not(), other.not(), one});
    }

    /**
     * @param fixed whether no board may move
     * @param moves whether any may; else only one that hangs where none may, to where it reaches a string of its own
     */
    private void candidates(int news, boolean fixed, boolean moves) {
        for (int b = 0; b < installed.boards.size(); b++) {
            Installed.Standing standing = installed.boards.get(b);
            List<Integer> spots = new ArrayList<>();
            if (standing.spot() >= 0) {
                spots.add(standing.spot());
            }
            for (int s = 0; s < site.spots.length; s++) {
                boolean may = moves ? reaches(s, standing.model()) : standing.spot() < 0 && reachesOwn(b, s);
                if (s != standing.spot() && may && !fixed) {
                    spots.add(s);
                }
            }
            candidate(standing.model(), b, spots);
        }
        for (int m = 0; m < site.offers.length; m++) {
            Candidate before = null;
            // an offer stands once for each voltage; here a board takes what hangs on it
            for (int k = 0; k < news && site.stock[m] == m; k++) {
                List<Integer> spots = new ArrayList<>();
                for (int s = 0; s < site.spots.length; s++) {
                    if (reaches(s, m)) {
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

    /** Whether a board of the model could carry something from a spot. */
    private boolean reaches(int spot, int of) {
        for (Site.Wire wire : site.reach[spot]) {
            if (site.drives(of, site.sort[wire.to()])) {
                return true;
            }
        }
        return false;
    }

    private boolean reachesOwn(int board, int spot) {
        for (Site.Wire wire : site.reach[spot]) {
            if (installed.seats.get(wire.to()).stream().anyMatch(seat -> seat.board() == board)) {
                return true;
            }
        }
        return false;
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

    boolean trunkGiven() {
        return scope == Scope.STRINGS || scope == Scope.PORTS;
    }

    boolean addressed(int board) {
        return site.model(boards.get(board).model).addressed();
    }

    /** Ports; for outputs and panels one, where the block or the panel is. */
    int ports(int board) {
        return sockets(board).length;
    }

    /** Of each port the stream that it hears, 1-based, or {@link BoardModel#ANY}. */
    int[] sockets(int board) {
        return site.sockets.heard[boards.get(board).model];
    }

    boolean pixels(int string) {
        return site.sort[string] == Drives.PIXELS;
    }

    /** The model of a board. */
    BoardModel modelOf(int board) {
        return site.model(boards.get(board).model);
    }
}
