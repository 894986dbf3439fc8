package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import streamwright.yard.Work;

/** The work of the repair model, and what of it is forbidden. */
final class RepairWork {
    private final RepairModel model;
    private final Site site;
    private final Installed installed;
    private final Work minutes;

    RepairWork(RepairModel model) {
        this.model = model;
        site = model.site;
        installed = model.installed;
        minutes = site.yard.work();
    }

    void build() {
        for (int i = 0; i < site.strings.length; i++) {
            string(i);
        }
        boards();
        hops();
        double most = Math.min(model.part.most(), Integer.MAX_VALUE);
        model.cp.addLinearConstraint(model.trunkWork, model.scaled(model.part.least()), model.scaled(most));
        if (model.scope != RepairModel.Scope.ALL) {
            chains();
        }
    }

    /**
     * Strings that follow another although no port powers the two together: rather not. One injection may serve more
     * than two, so that this is no part of a bound.
     */
    private void chains() {
        int n = site.strings.length;
        double shortest = site.yard.rules().leadLoop();
        model.behind.forEach((key, follows) -> {
            boolean old = installed.seats.get(key % n).stream().anyMatch(seat -> seat.behind() == key / n);
            if (!old && !site.needsNoInjection(new int[] {key / n, key % n}, shortest)) {
                model.work.addTerm(follows, model.scaled(minutes.injection()));
            }
        });
    }

    /**
     * A string that is alike but for its port costs a replug, and nothing if its port is the same; else a lead. Which
     * of a lead and a replug is dearer is the yard's to say.
     */
    private void string(int i) {
        int n = site.strings.length;
        LinearExprBuilder kinds = LinearExpr.newBuilder();
        List<Literal> kept = new ArrayList<>();
        BoolVar lead = model.bool();
        BoolVar replug = model.bool();
        List<Literal> one = new ArrayList<>(List.of(lead, replug));
        for (Installed.Seat seat : installed.seats.get(i)) {
            BoolVar[] now = model.on[i][seat.board()];
            List<Literal> alike = new ArrayList<>();
            if (now == null || seat.behind() == Installed.UNKNOWN) {
                continue;
            }
            if (seat.behind() == Installed.FIRST) {
                BoolVar[] heads = model.head[i][seat.board()];
                for (int p = 0; heads != null && p < heads.length; p++) {
                    alike.add(heads[p]);
                }
            } else {
                BoolVar follows = model.behind.get(seat.behind() * n + i);
                if (follows != null) {
                    alike.add(follows);
                }
            }
            if (alike.isEmpty()) {
                continue;
            }
            // each of these says that the string is alike at this seat, on this port or on another
            BoolVar same = model.bool();
            BoolVar other = model.bool();
            for (BoolVar is : new BoolVar[] {same, other}) {
                List<Literal> clause = new ArrayList<>(alike);
                clause.add(is.not());
                model.cp.addBoolOr(clause);
                List<Literal> board = new ArrayList<>(List.of(now));
                board.add(is.not());
                model.cp.addBoolOr(board);
            }
            if (seat.port() < now.length) {
                model.cp.addImplication(same, now[seat.port()]);
                model.cp.addImplication(other, now[seat.port()].not());
            } else {
                model.cp.addEquality(same, 0);
            }
            kept.add(same);
            one.add(same);
            model.cp.addImplication(other, replug);
            // a replug has a seat that it is a replug from
            kinds.add(other);
        }
        model.cp.addExactlyOne(one);
        model.cp.addLessOrEqual(replug, kinds);
        model.work.addTerm(lead, model.scaled(minutes.lead()));
        model.work.addTerm(replug, model.scaled(minutes.replug()));
        honest(i, lead, kept);
        if (model.keep.contains(Keep.PORTS) && !installed.seats.get(i).isEmpty()) {
            model.cp.addBoolOr(kept);
        }
    }

    /** Where a lead costs no more than a replug, a string that is alike must not pass for one that is not. */
    private void honest(int i, BoolVar lead, List<Literal> kept) {
        if (minutes.lead() >= minutes.replug() || kept.isEmpty()) {
            return;
        }
        int n = site.strings.length;
        for (Installed.Seat seat : installed.seats.get(i)) {
            BoolVar[] now = model.on[i][seat.board()];
            BoolVar[] heads = model.head[i][seat.board()];
            if (seat.behind() == Installed.FIRST && heads != null) {
                for (BoolVar head : heads) {
                    model.cp.addImplication(head, lead.not());
                }
            } else if (seat.behind() >= 0 && now != null) {
                BoolVar follows = model.behind.get(seat.behind() * n + i);
                for (BoolVar on : now) {
                    if (follows != null) {
                        model.cp.addBoolOr(new Literal[] {follows.not(), on.not(), lead.not()});
                    }
                }
            }
        }
    }

    /** Work on boards and cables. */
    private void trunk(Literal when, long work) {
        model.work.addTerm(when, work);
        model.trunkWork.addTerm(when, work);
    }

    private void trunk(long work) {
        model.work.add(work);
        model.trunkWork.add(work);
    }

    private void boards() {
        long each = model.scaled(minutes.board());
        trunk(each * installed.lost);
        for (int b = 0; b < model.boards.size(); b++) {
            RepairModel.Candidate board = model.boards.get(b);
            if (board.installed() < 0) {
                trunk(board.used(), each);
                continue;
            }
            BoolVar stays = model.stays(b);
            trunk(each);
            if (stays != null) {
                if (!installed.dead(b)) {
                    trunk(stays, -each);
                }
                BoolVar set = model.bool();
                model.cp.addBoolOr(new Literal[] {stays.not(), model.idStays[b], set});
                model.work.addTerm(set, model.scaled(minutes.setting()));
            }
            if (model.keep.contains(Keep.BOARDS)) {
                if (stays == null) {
                    model.cp.addBoolOr(new Literal[0]);
                } else {
                    model.cp.addEquality(stays, 1);
                }
            }
        }
        if (model.keep.contains(Keep.BOARDS) && installed.lost > 0) {
            model.cp.addBoolOr(new Literal[0]);
        }
    }

    private void hops() {
        int nodes = model.nodes();
        model.arcs.forEach((key, arc) -> {
            int from = key / nodes;
            int to = key % nodes;
            if (to < model.jacks) {
                return;
            }
            if (!installed.laid(id(from), id(to))) {
                trunk(arc, model.scaled(minutes.hop()));
                if (model.keep.contains(Keep.CABLES)) {
                    model.cp.addEquality(arc, 0);
                }
            }
        });
        for (Installed.Hop hop : installed.hops) {
            LinearExprBuilder gone = LinearExpr.newBuilder();
            gone.add(model.boards.get(hop.to()).used());
            if (hop.from() >= 0) {
                gone.add(model.boards.get(hop.from()).used()).add(-1);
            }
            for (int[] way : new int[][] {{node(hop.from()), node(hop.to())}, {node(hop.to()), node(hop.from())}}) {
                BoolVar arc = model.arcs.get(way[0] * nodes + way[1]);
                // from a board back into a jack is where a cable ends, not a hop
                if (arc != null && way[1] >= model.jacks) {
                    gone.addTerm(arc, -1);
                }
            }
            BoolVar off = model.bool();
            model.cp.addGreaterOrEqual(off, gone);
            trunk(off, model.scaled(minutes.hop()));
            if (model.keep.contains(Keep.CABLES)) {
                model.cp.addEquality(off, 0);
            }
        }
    }

    /** Nodes in the words of {@link Installed.Hop}; new boards are no installed ones. */
    private int id(int node) {
        if (node < model.jacks) {
            return -1 - node;
        }
        int index = model.boards.get(node - model.jacks).installed();
        return index < 0 ? Integer.MAX_VALUE : index;
    }

    private int node(int id) {
        return id < 0 ? -1 - id : model.jacks + id;
    }
}
