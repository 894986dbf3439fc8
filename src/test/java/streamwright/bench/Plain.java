package streamwright.bench;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.sat.MultipleCircuitConstraint;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.PixelString;
import streamwright.yard.Yard;

/**
 * A yard with one controller and one board model whose port k hears stream k as one constraint model, as one would write it down at
 * first: a circuit of cables over boards, a circuit of ports over strings, both open by arcs home that cost nothing, and
 * clauses that say which string uses which stream of which cable. Injections are left to the completion of the plan, at
 * a guess of one wherever two strings in a row are too many pixels for the fuse. What a plain model is worth, to put
 * beside the planner.
 */
final class Plain {
    private static final double MICRO = 1e4;
    private static final int BOARDS_A_SPOT = 2;

    private final Measures yard;
    private final Controller controller;
    private final int ports;
    private final int strings;
    private final int boards;
    private final int jacks;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();

    /** {@code on[i][b][k]}: string i is on port k of board b; {@code head}: and the first there. Null: out of reach. */
    private final @Nullable BoolVar[][][] on;

    private final @Nullable BoolVar[][][] head;
    private final @Nullable BoolVar[][] jumper;
    private final BoolVar[] used;

    /** {@code hung[b][j]}: board b hangs on jack j. */
    private final BoolVar[][] hung;

    private final BoolVar[][] first;
    private final @Nullable BoolVar[][] hop;

    private Plain(Yard site, Ground ground) {
        yard = new Measures(site, ground);
        controller = site.controllers().get(0);
        ports = site.boards().get(0).model().ports().size();
        strings = yard.strings.size();
        boards = yard.spots.size() * BOARDS_A_SPOT;
        jacks = controller.model().jacks();
        on = new BoolVar[strings][boards][ports];
        head = new BoolVar[strings][boards][ports];
        jumper = new BoolVar[strings][strings];
        used = new BoolVar[boards];
        hung = new BoolVar[boards][jacks];
        first = new BoolVar[boards][jacks];
        hop = new BoolVar[boards][boards];
    }

    /** The best layout within a time, from nothing; null where none was found. */
    static @Nullable Layout layout(Yard yard, Ground ground, double seconds, int workers) {
        BoardModel board = yard.boards().get(0).model();
        if (yard.controllers().size() != 1
                || yard.boards().size() != 1
                || !board.ports()
                        .equals(IntStream.rangeClosed(1, board.ports().size())
                                .boxed()
                                .toList())) {
            throw new IllegalArgumentException("the plain model is for one controller and boards of one port a stream");
        }
        Loader.loadNativeLibraries();
        Plain plain = new Plain(yard, ground);
        plain.cables();
        plain.ports();
        plain.streams();
        plain.model.minimize(plain.cost);
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setNumWorkers(workers)
                .setRandomSeed(1)
                .setCatchSigintSignal(false);
        CpSolverStatus status = solver.solve(plain.model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return found ? plain.read(solver) : null;
    }

    private int spot(int board) {
        return board / BOARDS_A_SPOT;
    }

    private void pay(Literal is, double money) {
        cost.addTerm(is, Math.round(money * MICRO));
    }

    private void cables() {
        MultipleCircuitConstraint circuit = model.addMultipleCircuit();
        IntVar[] length = new IntVar[boards];
        for (int b = 0; b < boards; b++) {
            length[b] = model.newIntVar(0, Math.round(yard.rules.cableMost() * MICRO), "");
        }
        for (int b = 0; b < boards; b++) {
            used[b] = model.newBoolVar("");
            circuit.addArc(b + 1, b + 1, used[b].not());
            circuit.addArc(b + 1, 0, model.newBoolVar(""));
            pay(used[b], yard.yard.boards().get(0).price());
            if (b % BOARDS_A_SPOT > 0) {
                model.addImplication(used[b], used[b - 1]);
            }
            for (int j = 0; j < jacks; j++) {
                hung[b][j] = model.newBoolVar("");
                first[b][j] = model.newBoolVar("");
                model.addImplication(first[b][j], hung[b][j]);
            }
            model.addEquality(LinearExpr.sum(hung[b]), used[b]);
            double start = yard.hop(controller.at(), yard.spots.get(spot(b)).at());
            BoolVar begins = model.newBoolVar("");
            circuit.addArc(0, b + 1, begins);
            model.addEquality(LinearExpr.sum(first[b]), begins);
            pay(begins, yard.costs.cable() + start * yard.costs.trunk());
            model.addGreaterOrEqual(length[b], Math.round(start * MICRO)).onlyEnforceIf(begins);
            if (start > yard.rules.hopMost()) {
                model.addEquality(begins, 0);
            }
        }
        for (int b = 0; b < boards; b++) {
            for (int to = 0; to < boards; to++) {
                double far = yard.hop(
                        yard.spots.get(spot(b)).at(), yard.spots.get(spot(to)).at());
                if (b == to || far > yard.rules.hopMost()) {
                    continue;
                }
                BoolVar is = model.newBoolVar("");
                hop[b][to] = is;
                circuit.addArc(b + 1, to + 1, is);
                pay(is, far * yard.costs.trunk());
                model.addGreaterOrEqual(
                                LinearExpr.newBuilder().add(length[to]).addTerm(length[b], -1), Math.round(far * MICRO))
                        .onlyEnforceIf(is);
                for (int j = 0; j < jacks; j++) {
                    model.addBoolOr(new Literal[] {is.not(), hung[b][j].not(), hung[to][j]});
                }
            }
        }
        for (int j = 0; j < jacks; j++) {
            LinearExprBuilder begun = LinearExpr.newBuilder();
            LinearExprBuilder all = LinearExpr.newBuilder();
            for (int b = 0; b < boards; b++) {
                begun.add(first[b][j]);
                all.add(hung[b][j]);
            }
            model.addLessOrEqual(begun, 1);
            model.addLessOrEqual(all, controller.model().boardsPerCable());
        }
    }

    private void ports() {
        MultipleCircuitConstraint circuit = model.addMultipleCircuit();
        for (int i = 0; i < strings; i++) {
            LinearExprBuilder once = LinearExpr.newBuilder();
            LinearExprBuilder leads = LinearExpr.newBuilder();
            for (int b = 0; b < boards; b++) {
                double far = yard.lead(spot(b), i);
                boolean reached = yard.leadNulls(far) <= yard.rules.nullsMost();
                for (int k = 0; k < ports; k++) {
                    BoolVar here = model.newBoolVar("");
                    on[i][b][k] = here;
                    once.add(here);
                    model.addImplication(here, used[b]);
                    if (reached) {
                        BoolVar is = model.newBoolVar("");
                        head[i][b][k] = is;
                        leads.add(is);
                        model.addImplication(is, here);
                        pay(is, far * yard.costs.lead());
                    }
                }
            }
            model.addEquality(once, 1);
            BoolVar leader = model.newBoolVar("");
            model.addEquality(leads, leader);
            circuit.addArc(0, i + 1, leader);
            circuit.addArc(i + 1, 0, model.newBoolVar(""));
        }
        for (int b = 0; b < boards; b++) {
            LinearExprBuilder something = LinearExpr.newBuilder();
            for (int k = 0; k < ports; k++) {
                LinearExprBuilder one = LinearExpr.newBuilder();
                for (int i = 0; i < strings; i++) {
                    if (head[i][b][k] != null) {
                        one.add(head[i][b][k]);
                        something.add(head[i][b][k]);
                    }
                }
                model.addLessOrEqual(one, 1);
            }
            model.addGreaterOrEqual(something, used[b]);
        }
        jumpers(circuit);
    }

    private void jumpers(MultipleCircuitConstraint circuit) {
        for (int i = 0; i < strings; i++) {
            for (int to = 0; to < strings; to++) {
                double far = yard.jumper(i, to);
                if (i == to || !yard.mayFollow(i, to) || yard.jumperNulls(far) > yard.rules.nullsMost()) {
                    continue;
                }
                BoolVar is = model.newBoolVar("");
                jumper[i][to] = is;
                circuit.addArc(i + 1, to + 1, is);
                double power = yard.amps(i) + yard.amps(to) > yard.ampsMost() ? yard.costs.injection() : 0;
                pay(is, far * yard.costs.jumper() + power);
                for (int b = 0; b < boards; b++) {
                    for (int k = 0; k < ports; k++) {
                        model.addBoolOr(new Literal[] {is.not(), here(i, b, k).not(), here(to, b, k)});
                    }
                }
            }
        }
    }

    private BoolVar here(int string, int board, int port) {
        return Objects.requireNonNull(on[string][board][port]);
    }

    /** On a board of four ports port k hears stream k. */
    private void streams() {
        LinearExprBuilder[][] load = new LinearExprBuilder[jacks][ports];
        for (int j = 0; j < jacks; j++) {
            for (int k = 0; k < ports; k++) {
                load[j][k] = LinearExpr.newBuilder();
            }
        }
        for (int i = 0; i < strings; i++) {
            BoolVar[][] uses = new BoolVar[jacks][ports];
            for (int j = 0; j < jacks; j++) {
                for (int k = 0; k < ports; k++) {
                    uses[j][k] = model.newBoolVar("");
                    load[j][k].addTerm(uses[j][k], yard.strings.get(i).pixels());
                    for (int b = 0; b < boards; b++) {
                        model.addBoolOr(new Literal[] {here(i, b, k).not(), hung[b][j].not(), uses[j][k]});
                    }
                }
            }
            nulls(i, uses, load);
        }
        for (int j = 0; j < jacks; j++) {
            for (int k = 0; k < ports; k++) {
                model.addLessOrEqual(load[j][k], yard.limit(controller));
            }
        }
    }

    /** Null pixels count on the stream that their string uses. */
    private void nulls(int i, BoolVar[][] uses, LinearExprBuilder[][] load) {
        for (int n = 1; n <= yard.rules.nullsMost(); n++) {
            BoolVar needs = model.newBoolVar("");
            for (int b = 0; b < boards; b++) {
                for (int k = 0; k < ports; k++) {
                    BoolVar is = head[i][b][k];
                    if (is != null && yard.leadNulls(yard.lead(spot(b), i)) >= n) {
                        model.addImplication(is, needs);
                    }
                }
            }
            for (int from = 0; from < strings; from++) {
                BoolVar is = jumper[from][i];
                if (is != null && yard.jumperNulls(yard.jumper(from, i)) >= n) {
                    model.addImplication(is, needs);
                }
            }
            for (int j = 0; j < jacks; j++) {
                for (int k = 0; k < ports; k++) {
                    BoolVar more = model.newBoolVar("");
                    model.addBoolOr(new Literal[] {uses[j][k].not(), needs.not(), more});
                    load[j][k].add(more);
                }
            }
        }
    }

    private Layout read(CpSolver solver) {
        List<Layout.Run> cables = new ArrayList<>();
        for (int j = 0; j < jacks; j++) {
            List<Layout.Hung> chain = new ArrayList<>();
            int at = -1;
            for (int b = 0; b < boards; b++) {
                at = solver.booleanValue(first[b][j]) ? b : at;
            }
            while (at >= 0) {
                chain.add(board(solver, at));
                at = next(solver, hop[at]);
            }
            if (!chain.isEmpty()) {
                cables.add(new Layout.Run(controller, j + 1, chain));
            }
        }
        return new Layout(cables);
    }

    private Layout.Hung board(CpSolver solver, int b) {
        List<Layout.Chain> chains = new ArrayList<>();
        for (int k = 0; k < ports; k++) {
            for (int i = 0; i < strings; i++) {
                BoolVar leads = head[i][b][k];
                if (leads != null && solver.booleanValue(leads)) {
                    List<PixelString> chain = new ArrayList<>();
                    for (int at = i; at >= 0; at = next(solver, jumper[at])) {
                        chain.add(yard.strings.get(at));
                    }
                    chains.add(new Layout.Chain(k + 1, k + 1, chain));
                }
            }
        }
        return new Layout.Hung(yard.yard.boards().get(0).model(), yard.spots.get(spot(b)), chains);
    }

    private static int next(CpSolver solver, @Nullable BoolVar[] out) {
        for (int to = 0; to < out.length; to++) {
            BoolVar is = out[to];
            if (is != null && solver.booleanValue(is)) {
                return to;
            }
        }
        return -1;
    }
}
