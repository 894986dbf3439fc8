package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import streamwright.solve.PostModel.Following;
import streamwright.solve.PostModel.Head;
import streamwright.solve.PostModel.Post;
import streamwright.yard.Drives;

/** What counts over whole chains: pixels of a port, amps of boards and spots; what {@link PostModel} says of them. */
final class ChainLimits {
    /** Amps are counted in parts of a thousandth, rounded so that nothing is forbidden that a plan may do. */
    private static final double PARTS = 1000;

    private final PostModel model;
    private final Site site;

    ChainLimits(PostModel model) {
        this.model = model;
        site = model.site;
    }

    void add() {
        if (!model.followings.isEmpty() && portsMatter()) {
            ports();
        }
        if (ampsMatter()) {
            amps();
        }
    }

    /** Whether some port passes on less than a stream carries. */
    private boolean portsMatter() {
        int most = 0;
        for (int[] limits : site.limit) {
            most = Math.max(most, Arrays.stream(limits).max().orElse(0));
        }
        int stream = most;
        return Arrays.stream(site.offers)
                .anyMatch(offer ->
                        offer.model().drives() == Drives.PIXELS && offer.model().portMost() < stream);
    }

    /** Pixels up to and with each string of a chain stay within what its port passes on. */
    private void ports() {
        int n = site.strings.length;
        IntVar[] upTo = new IntVar[n];
        IntVar[] most = new IntVar[n];
        long all = 0;
        for (int pixels : site.pixels) {
            all += pixels + site.yard.rules().nullsMost();
        }
        for (int i = 0; i < n; i++) {
            upTo[i] = model.cp.newIntVar(0, all, "");
            most[i] = model.cp.newIntVar(0, all, "");
            model.cp.addLessOrEqual(upTo[i], most[i]);
            for (Head head : model.heads.get(i)) {
                long port = Math.min(all, site.model(head.post().model).portMost());
                if (site.sort[i] == Drives.PIXELS) {
                    model.cp.addLessOrEqual(most[i], port).onlyEnforceIf(head.is());
                    model.cp
                            .addGreaterOrEqual(upTo[i], site.pixels[i] + (long) head.nulls())
                            .onlyEnforceIf(head.is());
                }
            }
        }
        for (Following each : model.followings) {
            model.cp.addLessOrEqual(most[each.next()], most[each.string()]).onlyEnforceIf(each.is());
            LinearExprBuilder grown =
                    LinearExpr.newBuilder().add(upTo[each.next()]).addTerm(upTo[each.string()], -1);
            model.cp
                    .addGreaterOrEqual(grown, site.pixels[each.next()] + (long) each.nulls())
                    .onlyEnforceIf(each.is());
        }
    }

    private boolean ampsMatter() {
        return Arrays.stream(site.spots).anyMatch(spot -> spot.ampsMost() < Double.POSITIVE_INFINITY)
                || Arrays.stream(site.offers)
                        .anyMatch(offer -> offer.model().drives() == Drives.PIXELS
                                && offer.model().ampsMost() < Double.POSITIVE_INFINITY);
    }

    private static long down(double amps) {
        return (long) Math.floor(amps * PARTS + 1e-6);
    }

    private static long up(double amps) {
        return (long) Math.ceil(amps * PARTS - 1e-6) + 1;
    }

    /** Whatever follows a string hangs on its board, and draws from it. */
    private void amps() {
        Map<Post, BoolVar[]> at = new HashMap<>();
        for (Post post : model.posts) {
            if (site.drives(post.model, Drives.PIXELS)) {
                BoolVar[] here = new BoolVar[site.strings.length];
                LinearExprBuilder drawn = LinearExpr.newBuilder();
                for (int i = 0; i < here.length; i++) {
                    if (site.suits(post.model, i)) {
                        here[i] = model.cp.newBoolVar("");
                        drawn.addTerm(here[i], down(site.draw[i]));
                    }
                }
                at.put(post, here);
                double most = site.model(post.model).ampsMost();
                if (most < Double.POSITIVE_INFINITY) {
                    model.cp.addLessOrEqual(drawn.addTerm(post.boards, -up(most)), 0);
                }
                for (Head head : post.heads) {
                    model.cp.addImplication(head.is(), here[head.string()]);
                }
            }
        }
        for (Following each : model.followings) {
            at.forEach((post, here) -> {
                if (here[each.string()] != null) {
                    model.cp
                            .addImplication(here[each.string()], here[each.next()])
                            .onlyEnforceIf(each.is());
                }
            });
        }
        for (int s = 0; s < site.spots.length; s++) {
            if (site.spots[s].ampsMost() < Double.POSITIVE_INFINITY) {
                spot(s, at);
            }
        }
    }

    private void spot(int spot, Map<Post, BoolVar[]> at) {
        LinearExprBuilder drawn = LinearExpr.newBuilder();
        at.forEach((post, strings) -> {
            for (int i = 0; i < strings.length && post.spot == spot; i++) {
                if (strings[i] != null) {
                    drawn.addTerm(strings[i], down(site.draw[i]));
                }
            }
        });
        model.cp.addLessOrEqual(drawn, up(site.spots[spot].ampsMost()));
    }
}
