package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import streamwright.physics.Runs;
import streamwright.yard.BoardCount;
import streamwright.yard.BoardOffer;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Drives;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/**
 * Some spots of a site as a site of their own. Its strings are all that a chain from these spots can carry. Its one
 * controller stands for all that is outside: a hop from it into a spot costs what the cheapest hop from any controller
 * or other spot costs, cables cost nothing else, and there are jacks enough.
 */
final class Region {
    final Site site;
    final Items items;

    /** Of each of its items: the item of the whole site. */
    final int[] whole;

    private Region(Site site, Items items, int[] whole) {
        this.site = site;
        this.items = items;
        this.whole = whole;
    }

    /** Real strands of this region as strands of the whole site; their spots are numbered as here. */
    List<Pricing.Found> outward(List<Pricing.Found> own) {
        return own.stream()
                .filter(strand -> !strand.relaxed())
                .map(strand -> renamed(strand, whole))
                .toList();
    }

    /** The other way; their items must be here. */
    List<Pricing.Found> inward(List<Pricing.Found> ofSite) {
        int[] own = new int[Arrays.stream(whole).max().orElse(-1) + 1];
        for (int k = 0; k < whole.length; k++) {
            own[whole[k]] = k;
        }
        return ofSite.stream().map(strand -> renamed(strand, own)).toList();
    }

    private static Pricing.Found renamed(Pricing.Found strand, int[] names) {
        int[] order = Arrays.stream(strand.order()).map(item -> names[item]).toArray();
        return new Pricing.Found(strand.spot(), order, strand.cost(), strand.reduced());
    }

    /** @param items of the site */
    static Region of(Site site, Items items, int[] spots) {
        return of(site, items, spots, carried(site, items, spots));
    }

    /** Only with some of its items. */
    static Region of(Site site, Items items, int[] spots, BitSet carried) {
        int[] strings = IntStream.range(0, site.strings.length)
                .filter(i -> carried.get(items.of[i]) && site.sort[i] == Drives.PIXELS)
                .toArray();
        Site part = new Site(yard(site, spots, strings), site.ground, entries(site, spots));
        Items own = new Items(part);
        int[] whole = Arrays.stream(own.sample).map(i -> items.of[strings[i]]).toArray();
        return new Region(part, own, whole);
    }

    /** Items on chains that begin at these spots and are no longer than a stream or a port takes. */
    private static BitSet carried(Site site, Items items, int[] spots) {
        int port = Arrays.stream(site.offers)
                .mapToInt(offer -> offer.model().portMost())
                .max()
                .orElse(0);
        int[] taken = new int[items.size];
        Arrays.fill(taken, Integer.MAX_VALUE);
        PriorityQueue<long[]> queue = new PriorityQueue<>((a, b) -> Long.compare(a[0], b[0]));
        for (int spot : spots) {
            for (Site.Wire lead : site.reach[spot]) {
                join(items.of[lead.to()], lead.nulls() + site.pixels[lead.to()], taken, queue);
            }
        }
        BitSet carried = new BitSet();
        while (!queue.isEmpty()) {
            long[] next = queue.poll();
            int item = (int) next[1];
            int most = Math.min(port, site.limitMost(site.kind[items.sample[item]]));
            if (next[0] > most || carried.get(item)) {
                continue;
            }
            carried.set(item);
            for (Site.Wire jumper : site.after[items.sample[item]]) {
                join(items.of[jumper.to()], (int) next[0] + jumper.nulls() + site.pixels[jumper.to()], taken, queue);
            }
        }
        return carried;
    }

    private static void join(int item, int pixels, int[] taken, PriorityQueue<long[]> queue) {
        if (pixels < taken[item]) {
            taken[item] = pixels;
            queue.add(new long[] {pixels, item});
        }
    }

    private static Yard yard(Site site, int[] spots, int[] strings) {
        Yard yard = site.yard;
        List<Prop> props = new ArrayList<>();
        for (int from = 0; from < strings.length; ) {
            int prop = site.prop[strings[from]];
            List<PixelString> own = new ArrayList<>();
            int to = from;
            while (to < strings.length && site.prop[strings[to]] == prop) {
                own.add(site.strings[strings[to++]]);
            }
            Prop was = yard.props().get(prop);
            props.add(new Prop(
                    was.id(),
                    was.pixel(),
                    was.follow(),
                    was.tailGiven(),
                    // what matters of a copy is that it may count for nothing; its original may be elsewhere
                    was.copyOf() == null ? null : was.id(),
                    was.channel(),
                    was.controller(),
                    own,
                    0,
                    null,
                    null));
            from = to;
        }
        List<Spot> places = Arrays.stream(spots).mapToObj(p -> site.spots[p]).toList();
        List<BoardOffer> unowned = yard.boards().stream()
                .map(offer -> new BoardOffer(offer.model(), offer.most(), 0, offer.price()))
                .toList();
        return new Yard(
                yard.name(),
                yard.units(),
                yard.frameRate(),
                yard.spare(),
                yard.brightness(),
                // kept channels only forbid
                false,
                List.of(outside(site)),
                unowned,
                new BoardCount(0, yard.boardCount().most()),
                places,
                props,
                yard.obstacles(),
                yard.rules(),
                yard.costs(),
                yard.work());
    }

    /** A controller that forbids no more than any of the yard's does. */
    private static Controller outside(Site site) {
        int streams = 1;
        int boards = 1;
        int pixels = 1;
        for (Controller controller : site.controllers) {
            streams = Math.max(streams, controller.model().streams());
            boards = Math.max(boards, controller.model().boardsPerCable());
            pixels = Math.max(pixels, controller.model().streamMost());
        }
        ControllerModel model =
                new ControllerModel("outside", site.strings.length, streams, boards, pixels, Integer.MAX_VALUE, 512);
        return new Controller("outside", model, new Point(0, 0, 0), 1, 1);
    }

    /** Of each spot: a length that no hop from outside is shorter than. */
    private static double[] entries(Site site, int[] spots) {
        boolean[] inside = new boolean[site.spots.length];
        for (int spot : spots) {
            inside[spot] = true;
        }
        return Arrays.stream(spots).mapToDouble(p -> entry(site, inside, p)).toArray();
    }

    private static double entry(Site site, boolean[] inside, int spot) {
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < site.controllers.length; c++) {
            least = Math.min(least, site.hopFrom(c, spot));
        }
        int[] near = site.neighbours[spot];
        for (int from : near) {
            if (!inside[from]) {
                least = Math.min(least, site.hop(from, spot));
            }
        }
        if (near.length < site.spots.length) {
            // all others are at least as far as the last of these, and no way is shorter than the straight one
            Point last = site.spots[near[near.length - 1]].at();
            double straight = Grid.straight(site.spots[spot].at(), last);
            least = Math.min(least, Runs.hop(site.yard.rules(), straight));
        }
        return least;
    }
}
