package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import streamwright.yard.Drives;
import streamwright.yard.Work;

/**
 * Other ways for the cables to visit the installed boards: a tail cut off and put behind another cable or on a free jack,
 * two tails exchanged, and again from the most promising of these. Strings stay where they are; what is still too much
 * for a stream then is weighed by the work that moving strings would take, roughly.
 */
final class TrunkMoves {
    private static final int BEAM = 60;
    private static final int ROUNDS = 3;

    /** With more boards fewer ways are followed. */
    private static final int MANY = 20;

    /** Cables by jack: indexes of installed boards in order. */
    record Way(int[][] cables, double weight) {
        Set<Installed.Hop> hops() {
            Set<Installed.Hop> hops = new HashSet<>();
            for (int j = 0; j < cables.length; j++) {
                int from = -1 - j;
                for (int board : cables[j]) {
                    hops.add(new Installed.Hop(from, board));
                    from = board;
                }
            }
            return hops;
        }
    }

    private final Site site;
    private final Installed installed;
    private final Work minutes;
    private final int[] controllerOf;
    private final double[][][] share;
    private final double string;
    private final Set<Installed.Hop> old = new HashSet<>();

    TrunkMoves(Site site, Installed installed, int[] controllerOf) {
        this.site = site;
        this.installed = installed;
        this.controllerOf = controllerOf;
        minutes = site.yard.work();
        share = new double[site.controllers.length][installed.boards.size()][];
        double all = 0;
        int count = 0;
        for (int c = 0; c < site.controllers.length; c++) {
            for (int b = 0; b < installed.boards.size(); b++) {
                share[c][b] = new double[64];
            }
            for (int i = 0; i < site.strings.length; i++) {
                // where outputs and panels lie is left to the model
                List<Installed.Seat> seats = site.sort[i] == Drives.PIXELS ? installed.seats.get(i) : List.of();
                for (Installed.Seat seat : seats) {
                    int stream = stream(seat);
                    double part = site.pixels[i] / (double) Math.max(1, site.limit[c][site.kind[i]]);
                    all += part;
                    count++;
                    if (stream < share[c][seat.board()].length) {
                        share[c][seat.board()][stream] += part;
                    }
                }
            }
        }
        string = count == 0 ? 1 : Math.max(1e-3, all / count);
        installed.hops.forEach(hop -> {
            old.add(hop);
            old.add(new Installed.Hop(hop.to(), hop.from()));
        });
    }

    /** Of each installed board: whether its cable carries too much for some stream of it. */
    boolean[] full() {
        boolean[] full = new boolean[installed.boards.size()];
        int[][] cables = start().cables;
        for (int j = 0; j < cables.length; j++) {
            boolean over = streams(cables[j], controllerOf[j]) > 0;
            for (int board : cables[j]) {
                full[board] = over;
            }
        }
        return full;
    }

    /** 0-based, as the old plan has it. */
    private int stream(Installed.Seat seat) {
        return installed.boards.get(seat.board()).was().ports().stream()
                        .filter(port -> port.port() == seat.port() + 1)
                        .findFirst()
                        .orElseThrow()
                        .stream()
                - 1;
    }

    /** The most promising ways, best first; the old one is always among them. */
    List<Way> best(int most) {
        Way start = start();
        List<Way> beam = List.of(start);
        List<Way> all = new ArrayList<>(beam);
        Set<String> seen = new HashSet<>(Set.of(Arrays.deepToString(start.cables)));
        for (int round = 0; round < ROUNDS; round++) {
            List<Way> next = new ArrayList<>();
            for (Way way : beam) {
                for (Way other : others(way)) {
                    if (seen.add(Arrays.deepToString(other.cables))) {
                        next.add(other);
                    }
                }
            }
            next.sort(Comparator.comparingDouble(Way::weight));
            beam = next.subList(0, Math.min(installed.boards.size() > MANY ? BEAM / 6 : BEAM, next.size()));
            all.addAll(beam);
        }
        all.sort(Comparator.comparingDouble(Way::weight));
        List<Way> best = new ArrayList<>(all.subList(0, Math.min(most, all.size())));
        if (!best.contains(start)) {
            best.add(start);
        }
        return best;
    }

    private Way start() {
        List<List<Integer>> cables = new ArrayList<>();
        Set<Integer> on = new HashSet<>();
        for (int j = 0; j < controllerOf.length; j++) {
            List<Integer> cable = new ArrayList<>();
            int at = -1 - j;
            for (boolean more = true; more; ) {
                more = false;
                for (Installed.Hop hop : installed.hops) {
                    if (hop.from() == at && on.add(hop.to())) {
                        cable.add(hop.to());
                        at = hop.to();
                        more = true;
                        break;
                    }
                }
            }
            cables.add(cable);
        }
        // what hangs on no cable goes to the end of the first that is in use
        for (int b = 0; b < installed.boards.size(); b++) {
            if (!on.contains(b)) {
                cables.stream()
                        .filter(cable -> !cable.isEmpty())
                        .findFirst()
                        .orElse(cables.get(0))
                        .add(b);
            }
        }
        return way(cables.stream()
                .map(cable -> cable.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new));
    }

    private List<Way> others(Way way) {
        List<Way> others = new ArrayList<>();
        int[][] cables = way.cables;
        for (int c = 0; c < cables.length; c++) {
            // only what is too full is worth cutting
            boolean full = streams(cables[c], controllerOf[c]) > 0;
            for (int cut = 0; full && cut < cables[c].length; cut++) {
                for (int d = 0; d < cables.length; d++) {
                    if (d == c) {
                        continue;
                    }
                    int[] tail = Arrays.copyOfRange(cables[c], cut, cables[c].length);
                    for (int[] put : new int[][] {tail, reversed(tail)}) {
                        int[][] moved = cables.clone();
                        moved[c] = Arrays.copyOf(cables[c], cut);
                        moved[d] = joined(cables[d], put);
                        add(others, moved);
                    }
                    for (int other = 0; other < cables[d].length; other++) {
                        int[][] swapped = cables.clone();
                        int[] theirs = Arrays.copyOfRange(cables[d], other, cables[d].length);
                        swapped[c] = joined(Arrays.copyOf(cables[c], cut), theirs);
                        swapped[d] = joined(Arrays.copyOf(cables[d], other), tail);
                        add(others, swapped);
                    }
                }
            }
        }
        return others;
    }

    private void add(List<Way> others, int[][] cables) {
        Way way = way(cables);
        if (way.weight < Double.POSITIVE_INFINITY) {
            others.add(way);
        }
    }

    private static int[] joined(int[] head, int[] tail) {
        int[] joined = Arrays.copyOf(head, head.length + tail.length);
        System.arraycopy(tail, 0, joined, head.length, tail.length);
        return joined;
    }

    private static int[] reversed(int[] tail) {
        int[] reversed = new int[tail.length];
        for (int i = 0; i < tail.length; i++) {
            reversed[i] = tail[tail.length - 1 - i];
        }
        return reversed;
    }

    private Way way(int[][] cables) {
        Way way = new Way(cables, 0);
        Set<Installed.Hop> hops = way.hops();
        double weight = 0;
        for (Installed.Hop hop : hops) {
            weight += old.contains(hop) ? 0 : minutes.hop();
        }
        for (Installed.Hop hop : installed.hops) {
            boolean still = hops.contains(hop) || hops.contains(new Installed.Hop(hop.to(), hop.from()));
            weight += still ? 0 : minutes.hop();
        }
        for (int j = 0; j < cables.length; j++) {
            weight += streams(cables[j], controllerOf[j]);
            weight += lengths(cables[j], controllerOf[j]);
        }
        return new Way(cables, weight);
    }

    /** Roughly the work of moving strings until all streams hold. */
    private double streams(int[] cable, int controller) {
        int streams = site.controllers[controller].model().streams();
        double all = 0;
        double over = 0;
        for (int k = 0; k < streams; k++) {
            double load = 0;
            for (int board : cable) {
                load += share[controller][board][k];
            }
            all += load;
            over += Math.max(0, load - 1);
        }
        double leave = Math.max(0, all - streams);
        return Math.ceil(leave / string - 1e-9) * minutes.lead()
                + Math.ceil((over - leave) / string - 1e-9) * 2 * minutes.replug();
    }

    private double lengths(int[] cable, int controller) {
        if (cable.length > site.controllers[controller].model().boardsPerCable()) {
            return Double.POSITIVE_INFINITY;
        }
        double length = 0;
        for (int i = 0; i < cable.length; i++) {
            int to = installed.boards.get(cable[i]).spot();
            int from = i == 0 ? -1 : installed.boards.get(cable[i - 1]).spot();
            if (to < 0 || (i > 0 && from < 0)) {
                continue;
            }
            double hop = i == 0 ? site.hopFrom(controller, to) : site.hop(from, to);
            length += hop;
            if (hop > site.hopMost) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return length > site.cableMost ? Double.POSITIVE_INFINITY : 0;
    }
}
