package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import streamwright.solve.PostModel.Post;

/**
 * The ways of the cables, added to a {@link PostModel}: each is a walk from its controller over the spots of its boards,
 * in hops that are short enough, and not too long in all. A spot may be visited as often as the cable has boards there.
 */
final class TrunkModel {
    /** Lengths are counted in parts of a unit of length, rounded so that no plan is forbidden. */
    private static final double PARTS = 1000;

    private record Arc(int from, int to, IntVar times, IntVar flow) {}

    private static final int CONTROLLER = -1;

    private final PostModel model;
    private final Site site;

    TrunkModel(PostModel model) {
        this.model = model;
        site = model.site;
    }

    /** How many choices it has, about. */
    static long choices(Site site) {
        return 2L * site.jacks() * site.spots.length * site.spots.length;
    }

    void add() {
        for (int q = 0; q < model.cableOf.length; q++) {
            int cable = q;
            List<Post> posts =
                    model.posts.stream().filter(post -> post.cable == cable).toList();
            walk(q, posts);
        }
    }

    private void walk(int cable, List<Post> posts) {
        int n = site.spots.length;
        int controller = model.cableOf[cable];
        int most = site.controllers[controller].model().boardsPerCable();
        LinearExprBuilder[] boards = new LinearExprBuilder[n];
        for (Post post : posts) {
            if (boards[post.spot] == null) {
                boards[post.spot] = LinearExpr.newBuilder();
            }
            boards[post.spot].add(post.boards);
        }
        int[] here = IntStream.range(0, n).filter(s -> boards[s] != null).toArray();
        List<Arc> arcs = new ArrayList<>();
        for (int to : here) {
            arc(arcs, CONTROLLER, to, site.hopFrom(controller, to), 1, here.length);
            for (int from : here) {
                if (from != to) {
                    int times = Math.min(most, Math.min(site.spots[from].most(), site.spots[to].most()));
                    arc(arcs, from, to, site.hop(from, to), times, here.length);
                }
            }
        }
        BoolVar used = model.cp.newBoolVar("");
        model.cp.addEquality(sum(arcs, CONTROLLER, true), used);
        LinearExprBuilder length = LinearExpr.newBuilder();
        long loops = down(site.loops());
        for (int s : here) {
            BoolVar present = model.cp.newBoolVar("");
            LinearExprBuilder in = sum(arcs, s, false);
            model.cp.addGreaterOrEqual(in, present);
            model.cp.addGreaterOrEqual(boards[s], sum(arcs, s, false));
            model.cp.addLessOrEqual(boards[s], LinearExpr.term(present, most));
            model.cp.addLessOrEqual(sum(arcs, s, true), sum(arcs, s, false));
            LinearExprBuilder arriving = LinearExpr.newBuilder();
            for (Arc arc : arcs) {
                if (arc.to == s) {
                    arriving.add(arc.flow);
                    // boards beyond the first of each visit hang by loops alone
                    length.addTerm(arc.times, down(length(arc, controller)) - loops);
                } else if (arc.from == s) {
                    arriving.addTerm(arc.flow, -1);
                }
            }
            model.cp.addEquality(arriving, present);
            for (Post post : posts) {
                if (post.spot == s) {
                    length.addTerm(post.boards, loops);
                }
            }
        }
        if (site.cableMost < limitless()) {
            model.cp.addLessOrEqual(length, up(site.cableMost));
        }
    }

    private static double limitless() {
        return 1e9;
    }

    private double length(Arc arc, int controller) {
        return arc.from == CONTROLLER ? site.hopFrom(controller, arc.to) : site.hop(arc.from, arc.to);
    }

    private void arc(List<Arc> arcs, int from, int to, double length, int times, int spots) {
        if (length <= site.hopMost && length <= site.cableMost && times > 0) {
            Arc arc = new Arc(from, to, model.cp.newIntVar(0, times, ""), model.cp.newIntVar(0, spots, ""));
            model.cp.addLessOrEqual(arc.flow, LinearExpr.term(arc.times, spots));
            arcs.add(arc);
        }
    }

    private static LinearExprBuilder sum(List<Arc> arcs, int spot, boolean from) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (Arc arc : arcs) {
            if ((from ? arc.from : arc.to) == spot) {
                sum.add(arc.times);
            }
        }
        return sum;
    }

    private static long down(double length) {
        return (long) Math.floor(length * PARTS);
    }

    private static long up(double length) {
        return (long) Math.ceil(length * PARTS) + 1;
    }
}
