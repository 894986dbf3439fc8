package streamwright.reason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import streamwright.layout.Layout;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;

/**
 * Gives the chains of a cable other ports of their boards until no stream carries more than it may: single moves and
 * swaps, then pairs of them, from the ports as they are and again from the largest chain to the emptiest stream. A
 * heuristic: what it cannot fit, an exact packing might.
 */
final class Repack {
    /** A chain, the board that it stays on, and whether it keeps its port. */
    private record Item(int board, Layout.Chain chain, PixelKind kind, double share, boolean pinned) {}

    /** Items a and b (or a alone, where b is negative) go to other plugs. */
    private record Step(int a, Plug toA, int b, Plug toB) {}

    private static final double GAIN = 1e-9;

    private final Layout.Run run;
    private final List<Item> items = new ArrayList<>();
    private final List<List<Plug>> plugs = new ArrayList<>();
    private Plug[] at;
    private Load load;

    private Repack(Measures measures, Layout.Run run, Set<PixelString> pinned) {
        this.run = run;
        load = Load.of(measures, run);
        for (int b = 0; b < run.boards().size(); b++) {
            Layout.Hung board = run.boards().get(b);
            plugs.add(Plug.all(board.model(), run.controller().model().streams()));
            for (Layout.Chain chain : board.ports()) {
                items.add(new Item(
                        b,
                        chain,
                        measures.kind(chain.strings().get(0)),
                        measures.share(run, board, chain),
                        chain.strings().stream().anyMatch(pinned::contains)));
            }
        }
        at = items.stream()
                .map(item -> new Plug(item.chain.port(), item.chain.stream()))
                .toArray(Plug[]::new);
    }

    /** The cable with streams that fit, where that can be had; else as it is. Pinned strings stay on their ports. */
    static Layout.Run of(Measures measures, Layout.Run run, Set<PixelString> pinned) {
        Repack repack = new Repack(measures, run, pinned);
        if (repack.load.excess() == 0) {
            return run;
        }
        repack.improve();
        if (repack.load.excess() > 0) {
            repack.largestFirst();
            repack.improve();
        }
        return repack.load.excess() == 0 ? repack.packed() : run;
    }

    private Layout.Run packed() {
        List<List<Layout.Chain>> ports = new ArrayList<>();
        run.boards().forEach(board -> ports.add(new ArrayList<>()));
        for (int i = 0; i < at.length; i++) {
            Item item = items.get(i);
            ports.get(item.board).add(new Layout.Chain(at[i].port(), at[i].stream(), item.chain.strings()));
        }
        List<Layout.Hung> boards = new ArrayList<>();
        for (int b = 0; b < ports.size(); b++) {
            boards.add(Edits.ports(run.boards().get(b), ports.get(b)));
        }
        return new Layout.Run(run.controller(), run.jack(), boards);
    }

    private void improve() {
        boolean better = true;
        while (better && load.excess() > 0) {
            List<Step> steps = steps();
            better = single(steps) || pair(steps);
        }
    }

    private double badness() {
        return 1000 * load.excess() + load.unevenness();
    }

    private boolean single(List<Step> steps) {
        double now = badness();
        Step best = null;
        double least = now - GAIN;
        for (Step step : steps) {
            Step back = take(step);
            if (badness() < least) {
                least = badness();
                best = step;
            }
            take(back);
        }
        if (best != null) {
            take(best);
        }
        return best != null;
    }

    /** Two steps on different boards, neither of which helps alone. */
    private boolean pair(List<Step> steps) {
        double now = load.excess();
        for (Step first : steps) {
            Step back = take(first);
            for (Step second : steps) {
                if (items.get(second.a).board <= items.get(first.a).board) {
                    continue;
                }
                Step backAgain = take(second);
                if (load.excess() < now - GAIN) {
                    return true;
                }
                take(backAgain);
            }
            take(back);
        }
        return false;
    }

    private List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (int a = 0; a < at.length; a++) {
            if (items.get(a).pinned) {
                continue;
            }
            for (Plug plug : plugs.get(items.get(a).board)) {
                if (plug.stream() != at[a].stream() && free(plug, a)) {
                    steps.add(new Step(a, plug, -1, plug));
                }
            }
            for (int b = a + 1; b < at.length && items.get(b).board == items.get(a).board; b++) {
                if (!items.get(b).pinned && at[a].stream() != at[b].stream()) {
                    steps.add(new Step(a, at[b], b, at[a]));
                }
            }
        }
        return steps;
    }

    /** Whether no other chain of its board holds the port. */
    private boolean free(Plug plug, int item) {
        for (int other = 0; other < at.length; other++) {
            boolean here = items.get(other).board == items.get(item).board;
            if (here && other != item && at[other].port() == plug.port()) {
                return false;
            }
        }
        return true;
    }

    /** Takes a step and tells the way back. */
    private Step take(Step step) {
        Step back = new Step(step.a, at[step.a], step.b, step.b < 0 ? step.toB : at[step.b]);
        put(step.a, step.toA);
        if (step.b >= 0) {
            put(step.b, step.toB);
        }
        return back;
    }

    private void put(int i, Plug plug) {
        Item item = items.get(i);
        load.add(at[i].stream(), item.kind, -item.share);
        at[i] = plug;
        load.add(plug.stream(), item.kind, item.share);
    }

    private void largestFirst() {
        Integer[] order = new Integer[at.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> -items.get(i).share));
        Plug[] before = at;
        load = new Load();
        at = new Plug[before.length];
        for (int i = 0; i < at.length; i++) {
            if (items.get(i).pinned) {
                plug(i, before[i]);
            }
        }
        for (int i : order) {
            if (!items.get(i).pinned) {
                List<Plug> open = plugs.get(items.get(i).board).stream()
                        .filter(plug -> open(plug, items.get(i).board))
                        .toList();
                // a board with more chains than ports breaks a rule that no packing mends
                plug(i, open.isEmpty() ? before[i] : load.roomiest(open, items.get(i).kind));
            }
        }
    }

    private boolean open(Plug plug, int board) {
        for (int other = 0; other < at.length; other++) {
            if (at[other] != null && items.get(other).board == board && at[other].port() == plug.port()) {
                return false;
            }
        }
        return true;
    }

    private void plug(int i, Plug plug) {
        at[i] = plug;
        load.add(plug.stream(), items.get(i).kind, items.get(i).share);
    }
}
