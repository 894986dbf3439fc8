package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import streamwright.yard.BoardModel;
import streamwright.yard.PixelKind;

/** Boards of the repair model: how many there may be, where, on one cable, with which IDs, and what they power. */
final class RepairBoards {
    private static final double AMPS = 1e6;

    private final RepairModel model;
    private final Site site;
    private final boolean voltsDiffer;

    RepairBoards(RepairModel model) {
        this.model = model;
        site = model.site;
        voltsDiffer = Arrays.stream(site.kinds)
                        .mapToDouble(PixelKind::volts)
                        .distinct()
                        .count()
                > 1;
    }

    void build() {
        counts();
        cables();
        ids();
        power();
        unaddressed();
    }

    private void counts() {
        LinearExprBuilder all = LinearExpr.newBuilder();
        for (RepairModel.Candidate board : model.boards) {
            all.add(board.used());
        }
        long least = site.yard.boardCount().least();
        long most = Math.min(site.yard.boardCount().most(), model.boards.size());
        if (least > model.boards.size() || least > most) {
            model.cp.addBoolOr(new Literal[0]);
            return;
        }
        model.cp.addLinearConstraint(all, least, most);
        for (int m = 0; m < site.offers.length; m++) {
            LinearExprBuilder of = LinearExpr.newBuilder();
            for (RepairModel.Candidate board : model.boards) {
                if (board.model() == m) {
                    of.add(board.used());
                }
            }
            if (site.offers[m].most() < model.boards.size()) {
                model.cp.addLessOrEqual(of, site.offers[m].most());
            }
        }
        for (int s = 0; s < site.spots.length; s++) {
            if (site.spots[s].most() < model.boards.size()) {
                model.cp.addLessOrEqual(here(s), site.spots[s].most());
            }
        }
    }

    private LinearExprBuilder here(int spot) {
        LinearExprBuilder here = LinearExpr.newBuilder();
        for (RepairModel.Candidate board : model.boards) {
            for (int s = 0; s < board.spots().length; s++) {
                if (board.spots()[s] == spot) {
                    here.add(board.at()[s]);
                }
            }
        }
        return here;
    }

    private void cables() {
        for (int j = 0; j < model.jacks; j++) {
            int most = site.controllers[model.jackController[j]].model().boardsPerCable();
            if (most < model.boards.size()) {
                LinearExprBuilder on = LinearExpr.newBuilder();
                for (int b = 0; b < model.boards.size(); b++) {
                    on.add(model.cableOf[b][j]);
                }
                model.cp.addLessOrEqual(on, most);
            }
        }
    }

    /** By Hall's theorem on intervals there are IDs for all; and two boards on one cable keep no same ID. */
    private void ids() {
        TreeSet<Integer> least = new TreeSet<>();
        TreeSet<Integer> most = new TreeSet<>();
        for (int b = 0; b < model.boards.size(); b++) {
            if (model.addressed(b)) {
                least.add(Ids.least(model.modelOf(b)));
                most.add(Ids.most(model.modelOf(b)));
            }
        }
        for (int from : least) {
            for (int to : most) {
                if (to >= from && to - from + 1 < model.boards.size()) {
                    interval(from, to);
                }
            }
        }
        for (int b = 0; b < model.idStays.length; b++) {
            model.idStays[b] = model.bool();
            BoardModel of = model.modelOf(b);
            Integer id = model.installed.boards.get(b).was().boardId();
            if (model.addressed(b) && (id == null || id < Ids.least(of) || id > Ids.most(of))) {
                model.cp.addEquality(model.idStays[b], 0);
            }
            for (int other = 0; other < b && model.addressed(b) && id != null; other++) {
                if (id.equals(model.installed.boards.get(other).was().boardId()) && model.addressed(other)) {
                    for (int j = 0; j < model.jacks; j++) {
                        model.cp.addBoolOr(new Literal[] {
                            model.cableOf[b][j].not(),
                            model.cableOf[other][j].not(),
                            model.idStays[b].not(),
                            model.idStays[other].not()
                        });
                    }
                }
            }
        }
    }

    private void interval(int from, int to) {
        for (int j = 0; j < model.jacks; j++) {
            LinearExprBuilder inside = LinearExpr.newBuilder();
            for (int b = 0; b < model.boards.size(); b++) {
                BoardModel of = model.modelOf(b);
                if (model.addressed(b) && Ids.least(of) >= from && Ids.most(of) <= to) {
                    inside.add(model.cableOf[b][j]);
                }
            }
            model.cp.addLessOrEqual(inside, to - from + 1L);
        }
    }

    private void power() {
        for (int b = 0; b < model.boards.size(); b++) {
            double most = model.modelOf(b).ampsMost();
            LinearExprBuilder amps = LinearExpr.newBuilder();
            BoolVar[] volts = new BoolVar[site.kinds.length];
            for (int i = 0; i < site.strings.length; i++) {
                BoolVar[] on = model.on[i][b];
                for (int p = 0; on != null && p < on.length; p++) {
                    // rounded down, so that nothing allowed is forbidden
                    amps.addTerm(on[p], (long) Math.floor(site.draw[i] * AMPS));
                    if (voltsDiffer && model.pixels(i)) {
                        model.cp.addImplication(on[p], volt(volts, site.kind[i]));
                    }
                }
            }
            if (Double.isFinite(most)) {
                model.cp.addLessOrEqual(amps, (long) Math.ceil((most + Site.AMPS_ROUNDING) * AMPS));
            }
            List<Literal> several = new ArrayList<>();
            for (BoolVar volt : volts) {
                if (volt != null) {
                    several.add(volt);
                }
            }
            model.cp.addAtMostOne(several);
        }
    }

    /** Kinds of one voltage share a variable. */
    private BoolVar volt(BoolVar[] volts, int kind) {
        for (int q = 0; q < volts.length; q++) {
            if (site.kinds[q].volts() == site.kinds[kind].volts()) {
                if (volts[q] == null) {
                    volts[q] = model.bool();
                }
                return volts[q];
            }
        }
        throw new IllegalStateException("a kind has its own volts");
    }

    /** Every port of a board without an address starts at pixel 1, so no two of them hear one stream. */
    private void unaddressed() {
        for (int b = 0; b < model.boards.size(); b++) {
            if (model.addressed(b) || site.copies) {
                continue;
            }
            List<Integer> ports = model.modelOf(b).ports();
            for (int p = 0; p < ports.size(); p++) {
                for (int q = 0; q < p; q++) {
                    apart(b, p, q);
                }
            }
        }
    }

    private void apart(int board, int p, int q) {
        List<Integer> ports = model.modelOf(board).ports();
        int most = site.strings.length;
        for (int i = 0; i < most; i++) {
            for (int o = 0; o < most; o++) {
                BoolVar[] first = model.head[i][board];
                BoolVar[] second = model.head[o][board];
                if (first == null || second == null || i == o) {
                    continue;
                }
                Literal offFirst = first[p].not();
                Literal offSecond = second[q].not();
                BoolVar[] setFirst = model.heard[board][p];
                BoolVar[] setSecond = model.heard[board][q];
                if (setFirst == null && setSecond == null) {
                    if (ports.get(p).equals(ports.get(q))) {
                        model.cp.addBoolOr(new Literal[] {offFirst, offSecond});
                    }
                } else if (setFirst != null && setSecond != null) {
                    for (int k = 0; k < setFirst.length; k++) {
                        model.cp.addBoolOr(new Literal[] {offFirst, offSecond, setFirst[k].not(), setSecond[k].not()});
                    }
                } else {
                    BoolVar[] set = setFirst != null ? setFirst : setSecond;
                    int fixed = ports.get(setFirst != null ? q : p) - 1;
                    if (fixed < set.length) {
                        model.cp.addBoolOr(new Literal[] {offFirst, offSecond, set[fixed].not()});
                    }
                }
            }
        }
    }
}
