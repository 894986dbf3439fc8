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
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.BoardModel;

/** Shares chains out over the ports of one cable's boards so that no stream overflows: first greedily, then exactly. */
final class Packing {
    private record Load(int spot, int[] strings) {}

    private final Draft draft;
    private final Site site;
    private final Cable cable;
    private final List<Load> loads = new ArrayList<>();

    Packing(Draft draft, Cable cable) {
        this.draft = draft;
        this.site = draft.site;
        this.cable = cable;
    }

    /** A chain that some board at the spot must carry; the largest should come first. */
    void add(int spot, int[] strings) {
        loads.add(new Load(spot, strings));
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
        int done = 0;
        while (done < loads.size() && greedy(loads.get(done))) {
            done++;
        }
        if (done == loads.size()) {
            return held(Realization.allUsed(cable));
        }
        for (int i = 0; i < cable.size; i++) {
            for (int p = 0; p < cable.boards[i].ports.length; p++) {
                draft.set(cable.boards[i], p, null, cable.boards[i].stream[p]);
            }
        }
        return exact();
    }

    private boolean greedy(Load load) {
        Hung best = null;
        int bestPort = -1;
        int bestStream = -1;
        int room = Integer.MAX_VALUE;
        Chain bestChain = null;
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            if (board.spot != load.spot || board.used == board.ports.length) {
                continue;
            }
            Chain chain = Chain.of(site, board.spot, board.model, load.strings);
            if (chain == null || !draft.powerTakes(board, site.kind[chain.head()], chain.amps())) {
                continue;
            }
            for (int s = 0; s < cable.load.length; s++) {
                int port = freePort(board, s);
                // an empty board first: every board must carry something
                int full = cable.load[s] + (board.used == 0 ? 0 : 1 << 24);
                if (port >= 0
                        && full < room
                        && draft.streamBegins(cable, s, board.model, site.kind[chain.head()], chain.pixels())) {
                    best = board;
                    bestPort = port;
                    bestStream = s;
                    room = full;
                    bestChain = chain;
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
        List<Integer> ports = site.model(board.model).ports();
        int any = -1;
        for (int p = 0; p < ports.size(); p++) {
            if (board.ports[p] == null && ports.get(p) == stream + 1) {
                return p;
            }
            any = board.ports[p] == null && ports.get(p) == BoardModel.ANY ? p : any;
        }
        return any;
    }

    private record Put(int load, Hung board, int stream, Chain chain, BoolVar is) {}

    private static Ending held(boolean holds) {
        return holds ? Ending.DONE : Ending.UNKNOWN;
    }

    private Ending exact() {
        CpModel model = new CpModel();
        // copies may share pixels, which this does not try: then nothing is proved
        boolean whole = !site.copies;
        List<Put> puts = new ArrayList<>();
        BoolVar[][] kindOf = new BoolVar[cable.load.length][site.kinds.length];
        for (int s = 0; s < kindOf.length; s++) {
            for (int k = 0; k < site.kinds.length; k++) {
                kindOf[s][k] = model.newBoolVar("");
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
                model.addLessOrEqual(sum, site.limit[cable.controller][k]);
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
                if (!site.model(board.model).addressed()) {
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
                if (chain != null && !draft.powerTakes(board, site.kind[chain.head()], 0)) {
                    return false;
                }
            }
        }
        return true;
    }
}
