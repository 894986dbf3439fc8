package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import streamwright.solve.PostModel.Head;
import streamwright.solve.PostModel.Post;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;

/** How many boards there may be, and how much each can take: what {@link PostModel} says of ports, IDs and numbers. */
final class PostLimits {
    private final PostModel model;
    private final Site site;

    PostLimits(PostModel model) {
        this.model = model;
        site = model.site;
    }

    void add() {
        for (Post post : model.posts) {
            List<Head> heads = post.heads;
            // every board carries something
            model.cp.addLessOrEqual(post.boards, PostModel.sum(post.begins()));
            if (!addressed(post)) {
                fromPixelOne(post);
            }
            switch (site.model(post.model).drives()) {
                case PIXELS -> ports(post, heads);
                case PANEL -> model.cp.addLessOrEqual(PostModel.sum(post.begins()), post.boards);
                case OUTPUTS -> outputs(post, heads);
            }
        }
        for (int s = 0; s < site.spots.length; s++) {
            int spot = s;
            atMost(post -> post.spot == spot, site.spots[s].most());
        }
        for (int m = 0; m < site.offers.length; m++) {
            int stock = m;
            if (site.stock[m] == m) {
                atMost(post -> site.stock[post.model] == stock, site.offers[m].most());
            }
        }
        atMost(post -> true, site.yard.boardCount().most());
        model.cp.addGreaterOrEqual(boards(post -> true), site.yard.boardCount().least());
        for (int q = 0; q < model.cableOf.length; q++) {
            cable(q);
        }
    }

    LinearExprBuilder boards(Predicate<Post> which) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        model.posts.stream().filter(which).forEach(post -> sum.add(post.boards));
        return sum;
    }

    private void atMost(Predicate<Post> which, int most) {
        if (most < Integer.MAX_VALUE) {
            model.cp.addLessOrEqual(boards(which), most);
        }
    }

    /**
     * What begins on a stream is on ports that hear it, or on ports that can be set to it; by Hall's theorem it is
     * enough that what the first cannot hold has room on the second.
     */
    private void ports(Post post, List<Head> heads) {
        int[] heard = site.sockets.heard[post.model];
        long free = Arrays.stream(heard).filter(t -> t == BoardModel.ANY).count();
        model.cp.addLessOrEqual(PostModel.sum(post.begins()), LinearExpr.term(post.boards, heard.length));
        if (free == heard.length) {
            return;
        }
        LinearExprBuilder over = LinearExpr.newBuilder();
        for (int t = 0; t < model.streams(post.cable); t++) {
            int stream = t;
            long fixed = Arrays.stream(heard).filter(h -> h == stream + 1).count();
            LinearExprBuilder begun = LinearExpr.newBuilder();
            heads.stream().filter(head -> head.stream() == stream).forEach(head -> begun.add(head.is()));
            begun.addTerm(post.boards, -fixed);
            if (free == 0) {
                model.cp.addLessOrEqual(begun, 0);
            } else {
                IntVar rest = model.cp.newIntVar(0, heads.size(), "");
                model.cp.addLessOrEqual(begun.addTerm(rest, -1), 0);
                over.add(rest);
            }
        }
        if (free > 0) {
            model.cp.addLessOrEqual(over.addTerm(post.boards, -free), 0);
        }
    }

    /** All ports of a board without address begin at pixel 1: on one stream they show the same picture. */
    private void fromPixelOne(Post post) {
        for (Head one : post.heads) {
            for (Head other : post.heads) {
                if (other.string() >= one.string()
                        || site.picture[one.string()] == site.picture[other.string()]
                        || site.sort[one.string()] != Drives.PIXELS) {
                    continue;
                }
                for (int t = 0; t < model.streams(post.cable); t++) {
                    BoolVar a = model.on(one.string(), post.cable, t);
                    BoolVar b = model.on(other.string(), post.cable, t);
                    if (a != null && b != null) {
                        model.cp.addBoolOr(
                                new Literal[] {one.is().not(), other.is().not(), a.not(), b.not()});
                    }
                }
            }
        }
    }

    private void outputs(Post post, List<Head> heads) {
        LinearExprBuilder lines = LinearExpr.newBuilder();
        heads.forEach(head -> lines.addTerm(head.is(), site.outputs[head.string()]));
        lines.addTerm(post.boards, -site.model(post.model).outputs());
        model.cp.addLessOrEqual(lines, 0);
    }

    private void cable(int cable) {
        int most = site.controllers[model.cableOf[cable]].model().boardsPerCable();
        atMost(post -> post.cable == cable, most);
        boolean twin = cable > 0 && model.cableOf[cable] == model.cableOf[cable - 1];
        if (twin) {
            // jacks of a controller are alike
            LinearExprBuilder fewer = boards(post -> post.cable == cable - 1);
            model.posts.stream().filter(post -> post.cable == cable).forEach(post -> fewer.addTerm(post.boards, -1));
            model.cp.addGreaterOrEqual(fewer, 0);
        }
        ids(cable, most);
        if (Arrays.stream(site.offers).anyMatch(offer -> !offer.model().addressed())) {
            BoolVar alone = model.cp.newBoolVar("");
            Predicate<Post> here = post -> post.cable == cable;
            model.cp.addLessOrEqual(boards(here.and(post -> !addressed(post))), alone);
            model.cp.addLessOrEqual(boards(here).addTerm(alone, Math.max(0, most - 1)), Math.max(1, most));
        }
    }

    private boolean addressed(Post post) {
        return site.model(post.model).addressed();
    }

    /** No interval of IDs holds the whole ranges of more boards than it has IDs. */
    private void ids(int cable, int boardsMost) {
        int[] least = Arrays.stream(site.offers)
                .filter(offer -> offer.model().addressed())
                .mapToInt(offer -> Ids.least(offer.model()))
                .distinct()
                .toArray();
        int[] most = Arrays.stream(site.offers)
                .filter(offer -> offer.model().addressed())
                .mapToInt(offer -> Ids.most(offer.model()))
                .distinct()
                .toArray();
        for (int from : least) {
            for (int to : most) {
                if (to >= from && to - from + 1 < boardsMost) {
                    atMost(
                            post -> post.cable == cable
                                    && addressed(post)
                                    && Ids.least(site.model(post.model)) >= from
                                    && Ids.most(site.model(post.model)) <= to,
                            to - from + 1);
                }
            }
        }
    }
}
