package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.MultipleCircuitConstraint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;

/**
 * What hangs where, as a constraint model without an objective: how many boards of each model hang at each spot on each
 * cable (a post), which string begins a chain at which post, which follows which, and on which stream all lie. Every
 * plan is a solution; not every solution is a plan. Boards of one post are not told apart, the ways of the cables, nulls
 * of shared copies and what injections a chain needs are left out.
 */
final class PostModel {
    /** A number of boards of one model at one spot on one cable. */
    static final class Post {
        final int spot;
        final int model;
        final int cable;
        final IntVar boards;

        /** What may begin a chain there. */
        final List<Head> heads = new ArrayList<>();

        Post(int spot, int model, int cable, IntVar boards) {
            this.spot = spot;
            this.model = model;
            this.cable = cable;
            this.boards = boards;
        }

        List<BoolVar> begins() {
            return heads.stream().map(Head::is).toList();
        }
    }

    /** A string that may begin a chain at a post; its lead's nulls; its stream where the port settles that. */
    record Head(int string, Post post, BoolVar is, int nulls, int stream) {}

    /** A string that may follow another, and the nulls of the jumper between them. */
    record Following(int string, int next, int nulls, BoolVar is) {}

    static final int ANY_STREAM = -1;

    final CpModel cp = new CpModel();
    final Site site;

    /** Of each cable: its controller. */
    final int[] cableOf;

    final List<Post> posts = new ArrayList<>();

    /** Of each string: where it may begin a chain. */
    final List<List<Head>> heads = new ArrayList<>();

    final List<Following> followings = new ArrayList<>();
    private final Map<Long, Post> postOf = new HashMap<>();

    /** {@code on[i][q][t]}: whether string i lies on that stream; null where it cannot. */
    private final @Nullable BoolVar[][][] on;

    PostModel(Site site) {
        this.site = site;
        cableOf = IntStream.range(0, site.controllers.length)
                .flatMap(c ->
                        IntStream.range(0, site.controllers[c].model().jacks()).map(j -> c))
                .toArray();
        on = new BoolVar[site.strings.length][cableOf.length][];
        strings();
        chains();
        new PostLimits(this).add();
        new StreamLimits(this).add();
        new ChainLimits(this).add();
    }

    /** How many choices the model has, about. */
    static long choices(Site site) {
        long perLead = 0;
        for (int c = 0; c < site.controllers.length; c++) {
            perLead += (long) site.controllers[c].model().jacks() * site.streams[c];
        }
        long all = 0;
        for (int i = 0; i < site.strings.length; i++) {
            all += perLead * (site.leads[i].length + 1) + site.after[i].length;
        }
        return all;
    }

    boolean atHome(int string, int cable) {
        return site.kept.home[string] == Kept.NONE || site.kept.home[string] == cableOf[cable];
    }

    @Nullable
    BoolVar on(int string, int cable, int stream) {
        BoolVar[] streams = on[string][cable];
        return streams == null ? null : streams[stream];
    }

    int streams(int cable) {
        return site.streams[cableOf[cable]];
    }

    private Post post(int spot, int model, int cable) {
        return postOf.computeIfAbsent(((long) spot * site.offers.length + model) * cableOf.length + cable, key -> {
            int most = Math.min(
                    site.spots[spot].most(),
                    Math.min(
                            site.offers[model].most(),
                            site.controllers[cableOf[cable]].model().boardsPerCable()));
            Post post = new Post(spot, model, cable, cp.newIntVar(0, Math.max(0, most), ""));
            posts.add(post);
            return post;
        });
    }

    private void strings() {
        for (int i = 0; i < site.strings.length; i++) {
            List<Head> mine = new ArrayList<>();
            for (Site.Wire lead : site.leads[i]) {
                for (int m = 0; m < site.offers.length; m++) {
                    if (site.suits(m, i) && powered(lead, m, i)) {
                        for (int q = 0; q < cableOf.length; q++) {
                            heads(mine, lead, m, q, i);
                        }
                    }
                }
            }
            heads.add(mine);
            stream(i, mine);
        }
    }

    /** Whoever can begin a chain could also be alone on its port. */
    private boolean powered(Site.Wire lead, int model, int string) {
        return site.sort[string] != Drives.PIXELS
                || site.injections(lead.to(), model, new int[] {string}, lead.length()) < Double.POSITIVE_INFINITY;
    }

    private void heads(List<Head> mine, Site.Wire lead, int model, int cable, int string) {
        int streams = streams(cable);
        int[] heard = site.sockets.heard[model];
        if (!atHome(string, cable) || Arrays.stream(site.sockets.cut[model]).anyMatch(t -> t > streams)) {
            return;
        }
        if (site.sort[string] != Drives.PANEL && Arrays.stream(heard).anyMatch(t -> t != BoardModel.ANY)) {
            for (int t = 0; t < streams; t++) {
                int stream = t;
                if (IntStream.range(0, heard.length).anyMatch(p -> site.sockets.hears(model, p, stream))) {
                    head(mine, string, lead, post(lead.to(), model, cable), t);
                }
            }
        } else {
            head(mine, string, lead, post(lead.to(), model, cable), ANY_STREAM);
        }
    }

    private void head(List<Head> mine, int string, Site.Wire lead, Post post, int stream) {
        Head head = new Head(string, post, cp.newBoolVar(""), lead.nulls(), stream);
        mine.add(head);
        post.heads.add(head);
    }

    /** Each string is on one stream, and of a cable at whose boards it begins, if it does. A panel is cut otherwise. */
    private void stream(int string, List<Head> mine) {
        if (site.sort[string] == Drives.PANEL) {
            return;
        }
        LinearExprBuilder all = LinearExpr.newBuilder();
        for (int q = 0; q < cableOf.length; q++) {
            if (!atHome(string, q)) {
                continue;
            }
            BoolVar[] streams = new BoolVar[streams(q)];
            Arrays.setAll(streams, t -> cp.newBoolVar(""));
            on[string][q] = streams;
            LinearExprBuilder here = LinearExpr.newBuilder();
            for (BoolVar each : streams) {
                all.add(each);
                here.add(each);
            }
            for (Head head : mine) {
                if (head.post.cable == q) {
                    here.addTerm(head.is, -1);
                    if (head.stream != ANY_STREAM) {
                        cp.addImplication(head.is, streams[head.stream]);
                    }
                }
            }
            cp.addGreaterOrEqual(here, 0);
        }
        cp.addEquality(all, 1);
    }

    /** Every string begins a chain or follows one other, without going round. */
    private void chains() {
        int n = site.strings.length;
        List<List<BoolVar>> ways = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            ways.add(new ArrayList<>(heads.get(i).stream().map(Head::is).toList()));
        }
        for (int i = 0; i < n; i++) {
            for (Site.Wire jumper : site.after[i]) {
                Following follows = new Following(i, jumper.to(), jumper.nulls(), cp.newBoolVar(""));
                followings.add(follows);
                ways.get(jumper.to()).add(follows.is);
                together(follows);
            }
        }
        ways.forEach(each -> cp.addEquality(sum(each), 1));
        if (followings.isEmpty()) {
            return;
        }
        MultipleCircuitConstraint circuit = cp.addMultipleCircuit();
        for (int i = 0; i < n; i++) {
            BoolVar first = cp.newBoolVar("");
            cp.addEquality(sum(heads.get(i).stream().map(Head::is).toList()), first);
            circuit.addArc(0, i + 1, first);
            circuit.addArc(i + 1, 0, cp.newBoolVar(""));
        }
        followings.forEach(each -> circuit.addArc(each.string + 1, each.next + 1, each.is));
    }

    static LinearExpr sum(List<BoolVar> each) {
        return LinearExpr.sum(each.toArray(BoolVar[]::new));
    }

    private void together(Following follows) {
        for (int q = 0; q < cableOf.length; q++) {
            for (int t = 0; t < streams(q); t++) {
                BoolVar a = on(follows.string, q, t);
                BoolVar b = on(follows.next, q, t);
                if (a != null && b != null) {
                    cp.addEquality(a, b).onlyEnforceIf(follows.is);
                }
            }
        }
    }
}
