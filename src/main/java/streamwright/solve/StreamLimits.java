package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.HashMap;
import java.util.Map;
import streamwright.solve.PostModel.Following;
import streamwright.solve.PostModel.Head;
import streamwright.solve.PostModel.Post;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;

/** How much streams carry, of which kind, and within which channels: what {@link PostModel} says of them. */
final class StreamLimits {
    private final PostModel model;
    private final Site site;

    /** {@code load[q][t]}: pixels at least on that stream. */
    private final LinearExprBuilder[][] load;

    /** Channels at least of each controller, where they are numbered anew. */
    private final LinearExprBuilder[] channels;

    StreamLimits(PostModel model) {
        this.model = model;
        site = model.site;
        load = new LinearExprBuilder[model.cableOf.length][];
        channels = new LinearExprBuilder[site.controllers.length];
    }

    void add() {
        for (int c = 0; c < channels.length; c++) {
            channels[c] = LinearExpr.newBuilder();
        }
        for (int q = 0; q < load.length; q++) {
            load[q] = new LinearExprBuilder[model.streams(q)];
            for (int t = 0; t < load[q].length; t++) {
                load[q][t] = LinearExpr.newBuilder();
                pixels(q, t);
            }
        }
        nulls();
        fixtures();
        for (int q = 0; q < load.length; q++) {
            for (int t = 0; t < load[q].length; t++) {
                limit(q, t);
                if (site.kept.on) {
                    windows(q, t);
                }
            }
        }
        for (int c = 0; c < channels.length && !site.kept.on; c++) {
            model.cp.addLessOrEqual(channels[c], Math.max(0, site.channelsMost[c]));
        }
    }

    private boolean copied(int string) {
        for (int i = 0; i < site.picture.length && site.copies; i++) {
            if (i != string && site.picture[i] == site.picture[string]) {
                return true;
            }
        }
        return false;
    }

    /** A string and its copies count once on a stream, as if they always began at the same pixel. */
    private void pixels(int cable, int stream) {
        Map<Integer, BoolVar> shown = new HashMap<>();
        for (int i = 0; i < site.strings.length; i++) {
            BoolVar here = model.on(i, cable, stream);
            if (here == null || site.sort[i] != Drives.PIXELS) {
                continue;
            }
            if (copied(i)) {
                BoolVar first = shown.get(site.picture[i]);
                BoolVar picture = first == null ? model.cp.newBoolVar("") : first;
                model.cp.addImplication(here, picture);
                if (first == null) {
                    shown.put(site.picture[i], picture);
                    count(i, cable, stream, picture);
                }
            } else {
                count(i, cable, stream, here);
            }
        }
    }

    private void count(int string, int cable, int stream, BoolVar is) {
        load[cable][stream].addTerm(is, site.pixels[string]);
        channels[model.cableOf[cable]].addTerm(is, site.kept.length(string));
    }

    /** Those of strings that are no copies and have none. */
    private void nulls() {
        for (var heads : model.heads) {
            for (Head head : heads) {
                if (head.nulls() > 0 && !copied(head.string()) && site.sort[head.string()] == Drives.PIXELS) {
                    if (head.stream() == PostModel.ANY_STREAM) {
                        spread(head.is(), head.string(), head.post().cable, head.nulls());
                    } else {
                        load[head.post().cable][head.stream()].addTerm(head.is(), head.nulls());
                    }
                }
            }
        }
        for (Following each : model.followings) {
            if (each.nulls() > 0 && !copied(each.next())) {
                for (int q = 0; q < load.length; q++) {
                    spread(each.is(), each.next(), q, each.nulls());
                }
            }
        }
    }

    /** So many nulls more on the stream of a string if something holds. */
    private void spread(BoolVar is, int string, int cable, int nulls) {
        for (int t = 0; t < load[cable].length; t++) {
            BoolVar here = model.on(string, cable, t);
            if (here != null) {
                BoolVar both = model.cp.newBoolVar("");
                model.cp.addBoolOr(new BoolVar[] {both}).onlyEnforceIf(new BoolVar[] {is, here});
                load[cable][t].addTerm(both, nulls);
            }
        }
    }

    /** Panels in equal parts, and of outputs a block for each board. */
    private void fixtures() {
        int widest = 1;
        for (int width : site.kept.width) {
            widest = Math.max(widest, width);
        }
        for (Post post : model.posts) {
            int m = post.model;
            LinearExprBuilder[] here = load[post.cable];
            if (site.drives(m, Drives.PANEL)) {
                for (Head head : post.heads) {
                    int[] cut = site.sockets.cut[m];
                    for (int t : cut) {
                        if (!copied(head.string())) {
                            here[t - 1].addTerm(head.is(), site.pixels[head.string()] / cut.length);
                        }
                    }
                }
            } else if (site.drives(m, Drives.OUTPUTS) && !site.copies && !site.kept.on) {
                int hears = site.sockets.heard[m][0];
                int block = (site.model(m).outputs() + widest - 1) / widest;
                if (hears != BoardModel.ANY && hears <= here.length) {
                    here[hears - 1].addTerm(post.boards, block);
                }
            }
        }
    }

    /** Each stream is of one kind, and holds as much of it as refreshes in time. */
    private void limit(int cable, int stream) {
        int[] most = site.limit[model.cableOf[cable]];
        if (most.length == 1) {
            model.cp.addLessOrEqual(load[cable][stream], most[0]);
            return;
        }
        LinearExprBuilder kinds = LinearExpr.newBuilder();
        for (int k = 0; k < most.length; k++) {
            BoolVar kind = model.cp.newBoolVar("");
            kinds.add(kind);
            load[cable][stream].addTerm(kind, -most[k]);
            for (int i = 0; i < site.strings.length; i++) {
                BoolVar here = model.on(i, cable, stream);
                if (here != null && site.kind[i] == k && site.sort[i] == Drives.PIXELS) {
                    model.cp.addImplication(here, kind);
                }
            }
        }
        model.cp.addLessOrEqual(kinds, 1);
        model.cp.addLessOrEqual(load[cable][stream], 0);
    }

    /** Channels kept: a stream is a window of them, in whole pixels of one kind. */
    private void windows(int cable, int stream) {
        for (int i = 0; i < site.strings.length; i++) {
            for (int k = 0; k < i; k++) {
                BoolVar a = model.on(i, cable, stream);
                BoolVar b = model.on(k, cable, stream);
                boolean pixels = site.sort[i] == Drives.PIXELS && site.sort[k] == Drives.PIXELS;
                if (a != null && b != null && pixels && site.kind[i] == site.kind[k] && apart(i, k, cable)) {
                    model.cp.addBoolOr(new Literal[] {a.not(), b.not()});
                }
            }
        }
    }

    private boolean apart(int one, int other, int cable) {
        int width = site.kept.width[site.kind[one]];
        long first = Math.min(site.kept.channel[one], site.kept.channel[other]);
        long last = Math.max(
                site.kept.channel[one] + site.kept.length(one), site.kept.channel[other] + site.kept.length(other));
        boolean step = (site.kept.channel[one] - site.kept.channel[other]) % width != 0;
        return step || last - first > site.limit[model.cableOf[cable]][site.kind[one]] * (long) width;
    }
}
