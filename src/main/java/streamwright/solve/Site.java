package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import streamwright.physics.Channels;
import streamwright.physics.Feed;
import streamwright.physics.Ground;
import streamwright.physics.Power;
import streamwright.physics.Refresh;
import streamwright.physics.Runs;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.Drives;
import streamwright.yard.Follow;
import streamwright.yard.PixelKind;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/**
 * A yard compiled to numbers: strings, spots, models and jacks as indexes, and the price, length and nulls of every
 * lead, jumper and hop that the rules allow. Arrays are read-only by convention.
 */
final class Site {
    /** One end of a possible wire: the other thing, the wire's length, its null pixels and its price. */
    record Wire(int to, double length, int nulls, double cost) {}

    final Yard yard;
    final Ground ground;

    /** The pixel strings, and behind them what is placed like one string: each prop of outputs and each panel. */
    final PixelString[] strings;

    /** Of each string: what its board must drive. */
    final Drives[] sort;

    /** Of each string: the mains outputs that it takes of its board; 0 for pixels. */
    final int[] outputs;

    final Kept kept;
    final Sockets sockets;

    /** Whether streams do no more than add up the pixels of strings: no outputs, panels, copies or kept channels. */
    final boolean plain;

    /** Whether a stream cannot carry whatever another can: kinds of pixels, or windows of kept channels. */
    final boolean streamsDiffer;

    final Spot[] spots;
    /** The boards on offer; one that may be supplied with several voltages stands here once for each. */
    final BoardOffer[] offers;

    /** Of each offer: the first of those that are one and the same in the yard, with one price and one number. */
    final int[] stock;

    /** Of each offer and of each string: what may share a board. */
    final int[] groupOf;

    final int[] group;

    final int groups;

    final Controller[] controllers;
    final PixelKind[] kinds;

    /** Of each string: its kind, pixels, prop, and draw in amps at the show's brightness. */
    final int[] kind;

    final int[] pixels;
    final int[] prop;
    final double[] draw;

    /** Of each string: its pixels, but none for a copy, which may share those of its original. */
    final int[] pixelsAtLeast;

    /** Whether some prop copies another. */
    final boolean copies;

    /** Of each string: the string whose picture it shows, itself or the one it copies. */
    final int[] picture;

    /** Of each string: whether another shows the same picture. */
    final boolean[] copied;

    /** Of each string: the leads that may reach it, by spot and cheapest first. */
    final Wire[][] leads;

    /** Of each string: the strings that may follow it, cheapest first; and those that it may follow. */
    final Wire[][] after;

    final Wire[][] before;

    /** Of each spot: the strings in reach of a lead, cheapest first. */
    final Wire[][] reach;

    /** {@code limit[c][k]}: pixels that a stream of controller c may carry of kind k. */
    final int[][] limit;

    /** Lengths come from square roots: one that is exactly at its limit must not fall over it by the last bits. */
    static final double LENGTH_ROUNDING = 1e-9;

    /** Amps are sums of many products: one that is exactly at its limit must not fall over it by the last bits. */
    static final double AMPS_ROUNDING = 1e-9;

    private static final int STRETCH_MOST = 1 << 22;

    final double trunkPrice;
    final double cablePrice;
    final double hopMost;
    final double cableMost;

    /** Of each controller: the streams of a cable that any board on offer can hear. */
    final int[] streams;

    /** Of each kind: lit pixels in one stretch of power at most, whatever port, lead and order; a bound, not a rule. */
    final int[] stretchMost;

    /** Of each controller: the channels that it has to give, within its own range and that of E1.31 universes. */
    final long[] channelsMost;

    /** Whether a full cable may run out of IDs before it runs out of boards. */
    final boolean idsMatter;

    /** IDs that any model can be set to. */
    final int idsAtLeast;

    /** Of each spot: the spots that are nearest to it, itself first. */
    final int[][] neighbours;

    private static final int NEIGHBOURS = 20;

    private final Power[][] powers;
    private final WireTable leadOf;
    private final WireTable jumperOf;
    private final double[][] between;
    private final double[][] fromController;

    Site(Yard yard, Ground ground) {
        this(yard, ground, null);
    }

    /** @param entries lengths of the hops from the yard's only controller to each spot, if not those of the way */
    Site(Yard yard, Ground ground, double @Nullable [] entries) {
        this.yard = yard;
        this.ground = ground;
        strings = Fixtures.strings(yard);
        trunkPrice = yard.costs().trunk();
        cablePrice = entries != null ? 0 : yard.costs().cable();
        hopMost = yard.rules().hopMost() + LENGTH_ROUNDING;
        cableMost = yard.rules().cableMost() + LENGTH_ROUNDING;
        spots = yard.places().toArray(Spot[]::new);
        List<Fixtures.Group> all = Fixtures.groups(yard);
        groups = all.size();
        BoardOffer[] base = Fixtures.offers(yard);
        List<BoardOffer> expanded = new ArrayList<>();
        List<Integer> groupIds = new ArrayList<>();
        for (BoardOffer offer : base) {
            for (int g = 0; g < groups; g++) {
                if (all.get(g).sort() == offer.model().drives()) {
                    expanded.add(offer);
                    groupIds.add(g);
                }
            }
        }
        offers = expanded.toArray(BoardOffer[]::new);
        groupOf = groupIds.stream().mapToInt(Integer::intValue).toArray();
        stock = expanded.stream().mapToInt(expanded::indexOf).toArray();
        controllers = yard.controllers().toArray(Controller[]::new);
        prop = Fixtures.props(yard);
        List<Prop> props = yard.props();
        sort = new Drives[strings.length];
        outputs = new int[strings.length];
        group = new int[strings.length];
        kinds = Fixtures.kinds(yard);
        kind = new int[strings.length];
        List<PixelKind> kindIds = List.of(kinds);
        for (int i = 0; i < strings.length; i++) {
            sort[i] = Fixtures.sort(props.get(prop[i]));
            group[i] = all.indexOf(Fixtures.Group.of(props.get(prop[i])));
            outputs[i] = props.get(prop[i]).outputs();
            PixelKind pixel = props.get(prop[i]).pixel();
            kind[i] = pixel == null ? 0 : kindIds.indexOf(pixel);
        }
        sockets = new Sockets(offers);
        pixels = Arrays.stream(strings).mapToInt(PixelString::pixels).toArray();
        copies = yard.props().stream().anyMatch(p -> p.copyOf() != null);
        pixelsAtLeast = IntStream.range(0, pixels.length)
                .map(i -> props.get(prop[i]).copyOf() == null ? pixels[i] : 0)
                .toArray();
        picture = Fixtures.pictures(yard, prop);
        int[] shown = new int[picture.length];
        for (int original : picture) {
            shown[original]++;
        }
        copied = new boolean[picture.length];
        for (int i = 0; i < copied.length; i++) {
            copied[i] = shown[picture[i]] > 1;
        }
        draw = new double[strings.length];
        for (int i = 0; i < strings.length; i++) {
            draw[i] = sort[i] == Drives.PIXELS ? pixels[i] * kinds[kind[i]].amps() * yard.brightness() : 0;
        }
        kept = new Kept(this);
        plain = !copies && !yard.keepChannels() && Arrays.stream(sort).allMatch(each -> each == Drives.PIXELS);
        streamsDiffer = yard.keepChannels() || kinds.length > 1;
        int boardsMost = Arrays.stream(controllers)
                .mapToInt(c -> c.model().boardsPerCable())
                .max()
                .orElse(0);
        idsAtLeast = Arrays.stream(offers)
                .mapToInt(o -> Ids.most(o.model()) - Ids.least(o.model()) + 1)
                .min()
                .orElse(0);
        idsMatter = idsAtLeast < boardsMost;
        streams = Arrays.stream(controllers)
                .mapToInt(c -> Math.min(c.model().streams(), sockets.streamsHeard))
                .toArray();
        channelsMost = Arrays.stream(controllers)
                .mapToLong(c -> Math.min(
                        c.model().channelMost() - (long) c.firstChannel() + 1,
                        (Channels.UNIVERSE_MOST - c.firstUniverse() + 1L)
                                * c.model().universeSlots()))
                .toArray();
        powers = new Power[offers.length][kinds.length];
        for (int m = 0; m < offers.length; m++) {
            for (int k = 0; k < kinds.length; k++) {
                powers[m][k] = Power.of(yard, kinds[k], offers[m].model().fuse());
            }
        }
        stretchMost = stretches();
        limit = new int[controllers.length][kinds.length];
        for (int c = 0; c < controllers.length; c++) {
            for (int k = 0; k < kinds.length; k++) {
                limit[c][k] = Refresh.limit(
                        kinds[k], yard.frameRate(), controllers[c].model().streamMost(), yard.spare());
            }
        }
        leadOf = new WireTable(spots.length, strings.length);
        jumperOf = new WireTable(strings.length, strings.length);
        leads = new Wire[strings.length][];
        reach = new Wire[spots.length][];
        findLeads();
        after = new Wire[strings.length][];
        before = new Wire[strings.length][];
        findJumpers();
        fromController = new double[controllers.length][spots.length];
        for (int c = 0; c < controllers.length; c++) {
            for (int s = 0; s < spots.length; s++) {
                fromController[c][s] = entries != null
                        ? entries[s]
                        : Runs.hop(yard.rules(), ground.path(controllers[c].at(), spots[s].at()));
            }
        }
        Point[] places = Arrays.stream(spots).map(Spot::at).toArray(Point[]::new);
        Grid grid = new Grid(places);
        neighbours = Arrays.stream(places)
                .map(place -> grid.nearest(place, NEIGHBOURS))
                .toArray(int[][]::new);
        between = spots.length <= 3000 ? hops() : new double[0][];
    }

    /**
     * Fuse and voltage both fall short with more pixels. The least ohms that can feed a stretch are a connector's, and
     * from pixel to pixel those of the pitch or of the shortest jumper.
     */
    private int[] stretches() {
        int[] most = new int[kinds.length];
        for (int k = 0; k < kinds.length; k++) {
            double jumper = streamwright.physics.Wire.ohms(
                            yard.rules(),
                            yard.rules().leadWireMm2(),
                            yard.rules().leadLoop() * yard.units().metres())
                    + yard.rules().connector();
            boolean evenAcrossJumpers =
                    jumper >= streamwright.physics.Wire.ohms(yard.rules(), kinds[k].wireMm2(), kinds[k].pitch());
            for (int m = 0; m < offers.length; m++) {
                if (!drives(m, Drives.PIXELS)) {
                    continue;
                }
                int low = 0;
                int high = STRETCH_MOST;
                while (low < high) {
                    int middle = (low + high + 1) >>> 1;
                    boolean holds = evenAcrossJumpers
                            ? powers[m][k].fits(0, middle)
                            : powers[m][k].amps(middle) <= powers[m][k].ampsMost() + AMPS_ROUNDING;
                    if (holds) {
                        low = middle;
                    } else {
                        high = middle - 1;
                    }
                }
                most[k] = Math.max(most[k], low);
            }
        }
        return most;
    }

    /** Pixels of a kind that a stream of any controller takes at most. */
    int limitMost(int ofKind) {
        return Arrays.stream(limit).mapToInt(each -> each[ofKind]).max().orElse(0);
    }

    /** All jacks of all controllers. */
    int jacks() {
        return Arrays.stream(controllers).mapToInt(c -> c.model().jacks()).sum();
    }

    /** Ports of a model for pixel strings. */
    int ports(int model) {
        return offers[model].model().ports().size();
    }

    /** Whether a string may hang on boards of a model, as far as sort and volts go. */
    boolean suits(int model, int string) {
        return groupOf[model] == group[string];
    }

    /** The offer of the same boards with the voltage of a string; the offer itself where none has. */
    int variant(int model, int string) {
        return IntStream.range(0, offers.length)
                .filter(m -> stock[m] == stock[model] && suits(m, string))
                .findFirst()
                .orElse(model);
    }

    boolean drives(int model, Drives what) {
        return offers[model].model().drives() == what;
    }

    BoardModel model(int model) {
        return offers[model].model();
    }

    /** The lead from a spot to a string, or null where it would be too long. */
    @Nullable
    Wire lead(int spot, int string) {
        return leadOf.get(spot, string);
    }

    /** The jumper from one string to the next, or null where one may not follow the other. */
    @Nullable
    Wire jumper(int from, int to) {
        return jumperOf.get(from, to);
    }

    /** The price of a lead that is known to be allowed. */
    double leadCost(int spot, int string) {
        return Objects.requireNonNull(lead(spot, string)).cost();
    }

    /** The price of a jumper that is known to be allowed. */
    double jumperCost(int from, int to) {
        return Objects.requireNonNull(jumper(from, to)).cost();
    }

    /** Length of a hop between two spots. */
    double hop(int from, int to) {
        return between.length > 0
                ? between[from][to]
                : Runs.hop(yard.rules(), ground.path(spots[from].at(), spots[to].at()));
    }

    double hopFrom(int controller, int to) {
        return fromController[controller][to];
    }

    /** Price of an injection so many pixels behind the first of a string whose feed is a wire of this length away. */
    double injectionPrice(double wire, int behind, int kind) {
        var costs = yard.costs();
        double pitch = kinds[kind].pitch() / yard.units().metres();
        return costs.injection() + costs.injectionWire() * (wire + behind * pitch);
    }

    /** Whether some model's port powers a chain without any injection. */
    boolean needsNoInjection(int[] chain, double leadLength) {
        if (sort[chain[0]] != Drives.PIXELS) {
            return true;
        }
        for (int m = 0; m < offers.length; m++) {
            if (!suits(m, chain[0])) {
                continue;
            }
            Power power = powers[m][kind[chain[0]]];
            boolean fits = chain.length == 1
                    ? power.fits(leadLength, pixels[chain[0]])
                    : power.fits(leadLength, lit(chain), jumperLengths(chain), chain.length);
            if (fits) {
                return true;
            }
        }
        return false;
    }

    private int[] lit(int[] chain) {
        int[] lit = new int[chain.length];
        for (int i = 0; i < lit.length; i++) {
            lit[i] = pixels[chain[i]];
        }
        return lit;
    }

    /** Length of the jumper before each string of a chain; 0 for the first. */
    private double[] jumperLengths(int[] chain) {
        double[] lengths = new double[chain.length];
        for (int i = 1; i < lengths.length; i++) {
            lengths[i] = Objects.requireNonNull(jumper(chain[i - 1], chain[i])).length();
        }
        return lengths;
    }

    /** Price of the injections that a chain needs on a port; infinite where none would do. */
    double injections(int spot, int model, int[] chain, double leadLength) {
        if (!suits(model, chain[0])) {
            return Double.POSITIVE_INFINITY;
        }
        Power power = powers[model][kind[chain[0]]];
        if (chain.length == 1 && power.fits(leadLength, pixels[chain[0]])) {
            return 0;
        }
        int count = chain.length;
        int[] lit = lit(chain);
        double[] jumpers = jumperLengths(chain);
        if (power.fits(leadLength, lit, jumpers, count)) {
            return 0;
        }
        double[] wires = new double[count];
        for (int i = 0; i < count; i++) {
            wires[i] = Runs.lead(yard.rules(), ground.path(spots[spot].at(), strings[chain[i]].feed()));
        }
        return power.feed(leadLength, lit, jumpers, wires, count)
                .map(Feed::cost)
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Length of a hop between two boards at one spot: its loops. */
    double loops() {
        return Runs.hop(yard.rules(), 0);
    }

    /** Length of a hop from a node (controllers first, then spots) to a spot. */
    double arcLength(int node, int to) {
        return node < controllers.length ? hopFrom(node, to) : hop(node - controllers.length, to);
    }

    private void findLeads() {
        var rules = yard.rules();
        List<List<Wire>> bySpot = new ArrayList<>();
        for (int s = 0; s < spots.length; s++) {
            bySpot.add(new ArrayList<>());
        }
        double most = Runs.leadMost(rules) + 1e-6;
        Grid places = new Grid(Arrays.stream(spots).map(Spot::at).toArray(Point[]::new));
        for (int i = 0; i < strings.length; i++) {
            List<Wire> found = new ArrayList<>();
            int string = i;
            Point feed = strings[i].feed();
            // outputs are wired on site, from wherever their board hangs
            places.near(feed, sort[i] == Drives.OUTPUTS ? Double.POSITIVE_INFINITY : most, s -> {
                // the straight way is never longer than the path, and spares the search around obstacles
                if (sort[string] != Drives.OUTPUTS && Runs.lead(rules, Grid.straight(spots[s].at(), feed)) > most) {
                    return;
                }
                double length = Runs.lead(rules, ground.path(spots[s].at(), feed));
                Wire wire = lead(s, string, length);
                if (wire != null) {
                    found.add(wire);
                    leadOf.put(s, string, wire);
                    bySpot.get(s).add(new Wire(string, wire.length, wire.nulls, wire.cost));
                }
            });
            leads[i] = cheapestFirst(found);
        }
        for (int s = 0; s < spots.length; s++) {
            reach[s] = cheapestFirst(bySpot.get(s));
        }
    }

    /** Leads to outputs and panels are wired on site and cost nothing here; only a panel's has a limit. */
    private @Nullable Wire lead(int spot, int string, double length) {
        int nulls = sort[string] == Drives.OUTPUTS ? 0 : Runs.leadNulls(yard.rules(), length);
        if (sort[string] != Drives.PIXELS) {
            return nulls == 0 ? new Wire(spot, length, 0, 0) : null;
        }
        return nulls <= yard.rules().nullsMost() && kept.room(string, nulls)
                ? new Wire(spot, length, nulls, length * yard.costs().lead())
                : null;
    }

    private void findJumpers() {
        var rules = yard.rules();
        double most = Runs.jumperMost(rules) + 1e-6;
        List<List<Wire>> into = new ArrayList<>();
        for (int i = 0; i < strings.length; i++) {
            into.add(new ArrayList<>());
        }
        Grid feeds = new Grid(Arrays.stream(strings).map(PixelString::feed).toArray(Point[]::new));
        for (int i = 0; i < strings.length; i++) {
            List<Wire> found = new ArrayList<>();
            int string = i;
            Point tail = strings[i].tail();
            feeds.near(tail, most, j -> {
                Point feed = strings[j].feed();
                if (string == j || kind[string] != kind[j] || !mayShare(string, j)) {
                    return;
                }
                if (Runs.lead(rules, Grid.straight(tail, feed)) > most) {
                    return;
                }
                double length = Runs.lead(rules, ground.path(tail, feed));
                int nulls = Runs.jumperNulls(rules, length);
                if (nulls <= rules.nullsMost() && kept.mayFollow(string, j, nulls)) {
                    double cost = length * yard.costs().jumper();
                    Wire wire = new Wire(j, length, nulls, cost);
                    found.add(wire);
                    jumperOf.put(string, j, wire);
                    into.get(j).add(new Wire(string, length, nulls, cost));
                }
            });
            after[i] = cheapestFirst(found);
        }
        for (int i = 0; i < strings.length; i++) {
            before[i] = cheapestFirst(into.get(i));
        }
    }

    private boolean mayShare(int i, int j) {
        if (sort[i] != Drives.PIXELS || sort[j] != Drives.PIXELS) {
            return false;
        }
        Follow first = yard.props().get(prop[i]).follow();
        return prop[i] == prop[j]
                ? first != Follow.NONE
                : first == Follow.ANY && yard.props().get(prop[j]).follow() == Follow.ANY;
    }

    private double[][] hops() {
        double[][] all = new double[spots.length][spots.length];
        for (int a = 0; a < spots.length; a++) {
            for (int b = 0; b < a; b++) {
                all[a][b] = all[b][a] = Runs.hop(yard.rules(), ground.path(spots[a].at(), spots[b].at()));
            }
            all[a][a] = Runs.hop(yard.rules(), 0);
        }
        return all;
    }

    private static Wire[] cheapestFirst(List<Wire> wires) {
        return wires.stream()
                .sorted(Comparator.comparingDouble(Wire::cost)
                        .thenComparingDouble(Wire::length)
                        .thenComparingInt(Wire::to))
                .toArray(Wire[]::new);
    }
}
