package streamwright.solve;

import java.util.List;
import java.util.stream.IntStream;

/** Rows that are added where the relaxation breaks them. W is a set of spots; an arc enters it from outside. */
final class Cut {
    /** Weights are sums of shares: what they just allow must not be forbidden by their last bits. */
    private static final double ROUNDING = 1e-9;

    private Cut() {}

    /** Rows that are homogeneous, at least 0, and weigh the arcs that enter a set. */
    private abstract static class Entering implements Row {
        final boolean[] inside;
        private final int[] entered;
        final int controllers;
        final double weight;

        Entering(boolean[] inside, int controllers, double weight) {
            this.inside = inside;
            entered = IntStream.range(0, inside.length).filter(p -> inside[p]).toArray();
            this.controllers = controllers;
            this.weight = weight;
        }

        @Override
        public boolean cut() {
            return true;
        }

        @Override
        public boolean hasArcs() {
            return true;
        }

        @Override
        public void addArcs(double times, double[][] sums) {
            for (int from = 0; from < sums.length; from++) {
                if (from < controllers || !inside[from - controllers]) {
                    for (int to : entered) {
                        sums[from][to] += times * weight;
                    }
                }
            }
        }

        @Override
        public double arc(int from, int to) {
            return inside[to] && (from < controllers || !inside[from - controllers]) ? weight : 0;
        }
    }

    /**
     * A string served from inside W needs an arc into W: a board there is reached by a cable from outside. For an item
     * of n strings the sum of the n rows, which averaging over the equal strings makes as strong.
     */
    static Row connected(boolean[] inside, int controllers, int item, int count) {
        return new Entering(inside, controllers, count) {
            @Override
            public double item(int k, int spot) {
                return k == item && inside[spot] ? -1 : 0;
            }

            @Override
            public int onlyItem() {
                return item;
            }
        };
    }

    /** A used spot inside W needs an arc into W. */
    static Row reached(boolean[] inside, int controllers, int used) {
        return new Entering(inside, controllers, 1) {
            @Override
            public double used(int spot) {
                return spot == used ? -1 : 0;
            }
        };
    }

    /** All pixels served from inside W pass through the cables that enter W, each with so many streams. */
    static Row carried(boolean[] inside, Site site, Items items, double[] share) {
        int most = 0;
        for (int streams : site.streams) {
            most = Math.max(most, streams);
        }
        return new Entering(inside, site.controllers.length, most) {
            @Override
            public double item(int k, int spot) {
                return inside[spot] ? -share[k] : 0;
            }

            @Override
            public int onlyItem() {
                return ALL;
            }
        };
    }

    /**
     * Cables come whole. Let W be a set of spots, and let what is served from inside W need n streams, less the weight s of
     * strings that are not served there ({@link StreamNeeds}). The cables that enter W have at most D streams each, so {@code
     * D x(W) >= n - s}. Mixed-integer rounding of this row divided by D gives {@code x(W) + s / (D f) >= ceil(n/D)} with f the
     * fractional part of n/D, or 1 where there is none.
     *
     * @param each weight of one string of each item
     * @param need n
     * @param streams D
     */
    static Row wholeCables(boolean[] inside, int controllers, double[] each, int[] count, double need, int streams) {
        double sum = IntStream.range(0, each.length)
                .mapToDouble(k -> each[k] * count[k])
                .sum();
        double rest = rest(need, streams);
        double low = rest * Math.ceil(need / streams - ROUNDING) - sum - ROUNDING;
        return new Entering(inside, controllers, rest) {
            @Override
            public double low() {
                return low;
            }

            @Override
            public double item(int k, int spot) {
                return inside[spot] ? -each[k] : 0;
            }

            @Override
            public int onlyItem() {
                return ALL;
            }
        };
    }

    /** What a whole number of cables with so many streams leaves of a need, or a cable's streams if that is nothing. */
    static double rest(double need, int streams) {
        double rest = need - streams * Math.floor(need / streams + ROUNDING);
        return rest < streams * ROUNDING ? streams : rest;
    }

    /** Rows that are at least 0 and weigh what an item has served from one spot. */
    private abstract static class Served implements Row {
        private final int item;
        private final int at;

        Served(int item, int at) {
            this.item = item;
            this.at = at;
        }

        @Override
        public boolean cut() {
            return true;
        }

        @Override
        public double item(int k, int spot) {
            return k == item && spot == at ? -1 : 0;
        }

        @Override
        public int onlyItem() {
            return item;
        }
    }

    /** A string is served only from a used spot. */
    static Row usedSpot(int item, int count, int at) {
        return new Served(item, at) {
            @Override
            public double used(int spot) {
                return spot == at ? count : 0;
            }
        };
    }

    /**
     * A string is served only from a spot with a board that suits its volts and sort. Where all strings suit all boards
     * that follows from {@link #usedSpot}.
     */
    static Row suited(Site site, int item, int sample, int count, int at) {
        return new Served(item, at) {
            @Override
            public double board(int spot, int model) {
                return spot == at && site.suits(model, sample) ? count : 0;
            }
        };
    }

    /** Rows that weigh boards of a place, and are at least so much because boards come whole. */
    private abstract static class Counted implements Row {
        private final double low;

        Counted(double low) {
            this.low = low;
        }

        @Override
        public boolean cut() {
            return true;
        }

        @Override
        public double low() {
            return low;
        }
    }

    /**
     * Boards come whole. Let W be a set of spots and T a set of items of one group with n strings in all. Ports at W are at least
     * the strands there that T's strings lead, so {@code sum P(m) boards(m) >= n - s} with s the strings of T that lead
     * no strand at W. Mixed-integer rounding (Nemhauser and Wolsey 1990) of this row divided by any D, for which the ports
     * of a model do best, gives {@code sum F(P(m)/D) boards(m) + s / (D f) >= ceil(n/D)} with f the fractional part of
     * n/D and {@code F(a) = floor(a) + min(1, frac(a)/f)}.
     *
     * @param by D, of which n is no multiple
     */
    static Row wholeBoards(boolean[] inside, boolean[] leads, int strings, Site site, int group, int by) {
        int rest = strings % by;
        double[] weight = new double[site.offers.length];
        for (int m = 0; m < weight.length; m++) {
            weight[m] = site.groupOf[m] == group ? weight(site.ports(m), rest, by) : 0;
        }
        double low = rest * (strings / by + 1) - strings;
        return new Counted(low) {
            @Override
            public double board(int spot, int m) {
                return inside[spot] ? weight[m] : 0;
            }

            @Override
            public boolean hasHeads() {
                return true;
            }

            @Override
            public double head(int k, int spot) {
                return inside[spot] && leads[k] ? -1 : 0;
            }
        };
    }

    /**
     * Boards come whole, for what is drawn at one spot as well: let A(m) be the amps that a board of a model can give, n those
     * that some strings of its group draw and s those of them that are drawn elsewhere. Then {@code sum A(m) boards(m) >= n -
     * s}, and mixed-integer rounding of this row divided by any D, for which the amps of a model do best, gives {@code sum
     * F(A(m)/D) boards(m) + s / (D f) >= ceil(n/D)} with f and F as in {@link #wholeBoards}.
     *
     * @param drawing the items of these strings
     * @param weight of a board of each model, {@link #weight(double, double, double, double)}
     * @param draw of a string of each item
     * @param by D
     */
    static Row wholeAmps(int at, List<Integer> drawing, double[] weight, Items items, double[] draw, double by) {
        double sum = drawing.stream().mapToDouble(k -> items.count[k] * draw[k]).sum();
        double rest = sum % by;
        double low = rest * Math.ceil(sum / by) - sum - Amps.ROUNDING;
        boolean[] draws = new boolean[items.size];
        drawing.forEach(k -> draws[k] = true);
        return new Counted(low) {
            @Override
            public double board(int spot, int m) {
                return spot == at ? weight[m] : 0;
            }

            @Override
            public double item(int k, int spot) {
                return spot == at && draws[k] ? -draw[k] : 0;
            }

            @Override
            public int onlyItem() {
                return ALL;
            }
        };
    }

    /** What a board that gives so many amps weighs in {@link #wholeAmps}: F, as many times as the division leaves; all is enough. */
    static double weight(double amps, double rest, double by, double sum) {
        double whole = Math.floor(amps / by + ROUNDING);
        double weight = rest * whole + Math.min(rest, Math.max(0, amps - by * whole));
        return Math.min(weight, rest * Math.ceil(sum / by));
    }

    /** What a board of so many ports weighs in {@link #wholeBoards}: F, as many times as the division leaves a rest. */
    static int weight(int ports, int rest, int by) {
        return rest * (ports / by) + Math.min(rest, ports % by);
    }
}
