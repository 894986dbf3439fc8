package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;

/** Shares chains out over the ports of one cable's boards so that no stream overflows: first greedily, then exactly. */
final class Packing {
    private record Load(int spot, int[] strings) {}

    private final Draft draft;
    private final Site site;
    private final Cable cable;
    private final List<Load> loads = new ArrayList<>();
    private final List<Load> fixtures = new ArrayList<>();

    Packing(Draft draft, Cable cable) {
        this.draft = draft;
        this.site = draft.site;
        this.cable = cable;
    }

    /** A chain that some board at the spot must carry; the largest should come first. Outputs come one prop at a time. */
    void add(int spot, int[] strings) {
        if (site.sort[strings[0]] == Drives.PIXELS) {
            loads.add(new Load(spot, strings));
        } else {
            fixtures.add(new Load(spot, strings));
        }
    }

    /** How sharing out ended. */
    enum Ending {
        DONE,
        /** Proved impossible: the cable's streams, its boards' ports and its chains do not go together. */
        IMPOSSIBLE,
        UNKNOWN
    }

    /** Sets the chains on ports. */
    Ending solve() {
        // outputs and panels go where they first find room: what this cannot place is not proved to have none
        fixtures.sort(Comparator.comparingInt(load -> -site.outputs[load.strings[0]]));
        for (Load load : fixtures) {
            if (!joined(load) && !greedy(load)) {
                return Ending.UNKNOWN;
            }
        }
        int done = 0;
        while (done < loads.size() && greedy(loads.get(done))) {
            done++;
        }
        if (done == loads.size()) {
            return held(Realization.allUsed(cable));
        }
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            for (int p = 0; site.drives(board.model, Drives.PIXELS) && p < board.ports.length; p++) {
                draft.set(board, p, null, board.stream[p]);
            }
        }
        return site.kept.on ? Ending.UNKNOWN : exact();
    }

    /** Outputs onto a block that hangs already. */
    private boolean joined(Load load) {
        if (site.sort[load.strings[0]] != Drives.OUTPUTS) {
            return false;
        }
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            Chain block = board.ports[0];
            if (board.spot != load.spot || block == null || !site.drives(board.model, Drives.OUTPUTS)) {
                continue;
            }
            for (Chain more : Blocks.joined(site, board.model, block, load.strings[0])) {
                if (draft.loads.takes(cable, board.stream[0], board.model, block, more)) {
                    draft.set(board, 0, more, board.stream[0]);
                    return true;
                }
            }
        }
        return false;
    }

    private List<Chain> chains(Hung board, Load load) {
        if (site.sort[load.strings[0]] == Drives.OUTPUTS) {
            return Blocks.all(site, board.model, load.strings);
        }
        Chain chain = Chain.of(site, board.spot, board.model, load.strings);
        return chain == null ? List.of() : List.of(chain);
    }

    private boolean greedy(Load load) {
        Hung best = null;
        int bestPort = -1;
        int bestStream = -1;
        long room = Long.MAX_VALUE;
        Chain bestChain = null;
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            if (board.spot != load.spot || board.used == board.ports.length) {
                continue;
            }
            for (Chain chain : chains(board, load)) {
                if (!draft.powerTakes(board, chain.amps())) {
                    continue;
                }
                for (int s = 0; s < cable.load.length; s++) {
                    int port = freePort(board, s);
                    // an empty board first: every board must carry something
                    long full = draft.loads.weight(cable, s, board.model, chain) + (board.used == 0 ? 0 : 1L << 50);
                    if (port >= 0 && full < room && draft.loads.takes(cable, s, board.model, null, chain)) {
                        best = board;
                        bestPort = port;
                        bestStream = s;
                        room = full;
                        bestChain = chain;
                    }
                }
            }
        }
        if (best == null) {
            return false;
        }
        draft.set(best, bestPort, bestChain, bestStream);
        return true;
    }

    /** A port that hears the stream; one that can be set to any only where no other does. */
    private int freePort(Hung board, int stream) {
        int[] heard = site.sockets.heard[board.model];
        int any = -1;
        for (int p = 0; p < heard.length; p++) {
            if (board.ports[p] == null && heard[p] == stream + 1) {
                return p;
            }
            any = board.ports[p] == null && heard[p] == BoardModel.ANY ? p : any;
        }
        return any;
    }

    private record Put(int load, Hung board, int stream, Chain chain, BoolVar is) {}

    private static Ending held(boolean holds) {
        return holds ? Ending.DONE : Ending.UNKNOWN;
    }

    private Ending exact() {
        CpModel model = new CpModel();
        // copies may share pixels, and outputs and panels hang elsewhere, which this does not try: nothing is proved
        // then
        boolean whole = site.plain;
        List<Put> puts = new ArrayList<>();
        BoolVar[][] kindOf = new BoolVar[cable.load.length][site.kinds.length];
        for (int s = 0; s < kindOf.length; s++) {
            for (int k = 0; k < site.kinds.length; k++) {
                kindOf[s][k] = model.newBoolVar("");
                if (cable.kind[s] != Draft.FREE && cable.kind[s] != k) {
                    model.addEquality(kindOf[s][k], 0);
                }
            }
            model.addAtMostOne(kindOf[s]);
        }
        for (int l = 0; l < loads.size(); l++) {
            Load load = loads.get(l);
            // another order of the same strings might need fewer nulls, and then fit
            whole &= jumperNulls(load) == 0;
            List<BoolVar> here = new ArrayList<>();
            for (int i = 0; i < cable.size; i++) {
                Hung board = cable.boards[i];
                Chain chain = board.spot == load.spot ? Chain.of(site, load.spot, board.model, load.strings) : null;
                // and another order might find power on a board that this one does not
                whole &= board.spot != load.spot || chain != null;
                for (int s = 0; chain != null && s < cable.load.length; s++) {
                    if (freePort(board, s) >= 0) {
                        BoolVar is = model.newBoolVar("");
                        puts.add(new Put(l, board, s, chain, is));
                        here.add(is);
                        model.addImplication(is, kindOf[s][site.kind[chain.head()]]);
                    }
                }
            }
            model.addExactlyOne(here.toArray(BoolVar[]::new));
        }
        limits(model, puts);
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setMaxDeterministicTime(2)
                .setCatchSigintSignal(false);
        CpSolverStatus status = solver.solve(model);
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return status == CpSolverStatus.INFEASIBLE && whole ? Ending.IMPOSSIBLE : Ending.UNKNOWN;
        }
        for (Put put : puts) {
            if (solver.booleanValue(put.is)) {
                draft.set(put.board, freePort(put.board, put.stream), put.chain, put.stream);
            }
        }
        return held(powerHolds() && Realization.allUsed(cable));
    }

    private int jumperNulls(Load load) {
        int nulls = 0;
        for (int i = 1; i < load.strings.length; i++) {
            nulls += Objects.requireNonNull(site.jumper(load.strings[i - 1], load.strings[i]))
                    .nulls();
        }
        return nulls;
    }

    private void limits(CpModel model, List<Put> puts) {
        for (int s = 0; s < cable.load.length; s++) {
            // one sum for each kind: only the kind of the stream has any pixels on it
            for (int k = 0; k < site.kinds.length; k++) {
                LinearExprBuilder sum = LinearExpr.newBuilder();
                for (Put put : puts) {
                    if (put.stream == s && site.kind[put.chain.head()] == k) {
                        sum.addTerm(put.is, put.chain.pixels());
                    }
                }
                model.addLessOrEqual(sum, Math.max(0, site.limit[cable.controller][k] - cable.load[s]));
            }
        }
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            List<Integer> ports = site.model(board.model).ports();
            int any = Collections.frequency(ports, BoardModel.ANY);
            LinearExprBuilder onAny = LinearExpr.newBuilder();
            for (int s = 0; s < cable.load.length; s++) {
                List<BoolVar> onStream = new ArrayList<>();
                for (Put put : puts) {
                    if (put.board == board && put.stream == s) {
                        onStream.add(put.is);
                    }
                }
                // what the ports wired to the stream do not take, those that can be set to any share out
                LinearExprBuilder onFixed = LinearExpr.newBuilder();
                onStream.forEach(onFixed::add);
                IntVar over = model.newIntVar(0, any, "");
                model.addLessOrEqual(onFixed.addTerm(over, -1), Collections.frequency(ports, s + 1));
                onAny.add(over);
                if (!site.sockets.addressed[board.model]) {
                    model.addAtMostOne(onStream.toArray(BoolVar[]::new));
                }
            }
            model.addLessOrEqual(onAny, any);
        }
    }

    private boolean powerHolds() {
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            for (@Nullable Chain chain : board.ports) {
                if (chain != null && !draft.powerTakes(board, 0)) {
                    return false;
                }
            }
        }
        return true;
    }
}
