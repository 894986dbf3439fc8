package streamwright.solve;

import java.util.Arrays;
import streamwright.yard.Drives;

/**
 * What the variables that cuts weigh are: those of a solution of the relaxation, of a plan, or between them.
 *
 * @param arc trunk from each node (controllers first, then spots) to each spot
 * @param used of each spot
 * @param board of each spot and model: boards
 * @param served of each item and spot: strings of the item served from there
 * @param led of each item and spot: strands there that the item leads
 */
record Point(double[][] arc, double[] used, double[][] board, double[][] served, double[][] led) {
    private static final double DECIDED = 0.02;

    static Point nowhere(Site site, Items items) {
        int spots = site.spots.length;
        return new Point(
                new double[site.controllers.length + spots][spots],
                new double[spots],
                new double[spots][site.offers.length],
                new double[items.size][spots],
                new double[items.size][spots]);
    }

    static Point of(Site site, Items items, Snapshot plan) {
        Point point = nowhere(site, items);
        for (Snapshot.SavedCable cable : plan.cables()) {
            int node = controller(site, cable.cable());
            for (Snapshot.SavedBoard board : cable.boards()) {
                int here = site.controllers.length + board.spot();
                if (node != here) {
                    point.arc[node][board.spot()]++;
                }
                node = here;
                point.used[board.spot()] = 1;
                point.board[board.spot()][board.model()]++;
                for (Chain chain : board.ports()) {
                    if (chain != null) {
                        point.hang(site, items, chain, board.spot());
                    }
                }
            }
        }
        return point;
    }

    /** Cables are numbered jack by jack. */
    static int controller(Site site, int cable) {
        int left = cable;
        int controller = 0;
        for (int jacks = jacks(site, 0); left >= jacks; jacks = jacks(site, controller)) {
            left -= jacks;
            controller++;
        }
        return controller;
    }

    private static int jacks(Site site, int controller) {
        return Math.min(site.controllers[controller].model().jacks(), site.strings.length);
    }

    private void hang(Site site, Items items, Chain chain, int spot) {
        for (int string : chain.strings()) {
            // what hangs in a block of outputs waits for nothing before it
            boolean leads = string == chain.head() || site.sort[string] != Drives.PIXELS;
            led[items.of[string]][spot] += leads ? 1 : 0;
            served[items.of[string]][spot]++;
        }
    }

    /** The point at a share of the way to another. */
    Point towards(Point other, double share) {
        return new Point(
                mixed(arc, other.arc, share),
                mixed(used, other.used, share),
                mixed(board, other.board, share),
                mixed(served, other.served, share),
                mixed(led, other.led, share));
    }

    private static double[][] mixed(double[][] from, double[][] to, double share) {
        double[][] mixed = new double[from.length][];
        for (int i = 0; i < from.length; i++) {
            mixed[i] = mixed(from[i], to[i], share);
        }
        return mixed;
    }

    private static double[] mixed(double[] from, double[] to, double share) {
        double[] mixed = new double[from.length];
        for (int i = 0; i < from.length; i++) {
            mixed[i] = from[i] + share * (to[i] - from[i]);
        }
        return mixed;
    }

    /** Boards at a spot on which a string may hang. */
    double suited(Site site, int string, int spot) {
        double sum = 0;
        for (int m = 0; m < board[spot].length; m++) {
            sum += site.suits(m, string) ? board[spot][m] : 0;
        }
        return sum;
    }

    /** Boards, all together. */
    double boards() {
        return Arrays.stream(board).flatMapToDouble(Arrays::stream).sum();
    }

    /** Boards without address. */
    double lone(Site site) {
        double sum = 0;
        for (double[] here : board) {
            for (int m = 0; m < here.length; m++) {
                sum += site.sockets.addressed[m] ? 0 : here[m];
            }
        }
        return sum;
    }

    /** Cables that leave the first so many nodes, which are the controllers. */
    double cables(int controllers) {
        return Arrays.stream(arc, 0, controllers)
                .flatMapToDouble(Arrays::stream)
                .sum();
    }

    /** Whether a spot is as good as used, or empty. */
    boolean decided(int spot) {
        return Math.min(used[spot], 1 - used[spot]) <= DECIDED;
    }
}
