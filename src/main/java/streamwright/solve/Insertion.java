package streamwright.solve;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;

/** Finds the cheapest place for one more string, and puts it there. One object is used again and again. */
final class Insertion {
    /** With more boards than this, new ones join cables only beside boards that are near. */
    static final int FEW_BOARDS = 40;

    /** One in so many places is passed over (blinks, Christiaens and Vanden Berghe 2020). */
    private static final int BLINK = 20;

    private static final Chain NOTHING = new Chain(new int[0], 0, 0, 0, 0, 0, new long[0]);

    private final Draft draft;
    private final Site site;

    /** What the string would cost more at the best place found; infinite where there is none. */
    double delta;

    private double weighed;
    private @Nullable Hung board;
    private int port;
    private int swapPort;
    private int stream;
    private @Nullable Chain chain;
    private @Nullable Cable cable;
    private int position;
    private int spot;
    private int model;

    // what comes alone onto a socket, of outputs all blocks that could carry it, and the socket found for it
    private Chain alone = NOTHING;
    private List<Chain> blocks = List.of();
    private int freeStream;
    private Chain freeChain = NOTHING;

    /** Scales the price of new boards while places are weighed, so that a search does not always shun them. */
    double boardFactor = 1;

    /** Of each model: whether no new board of it is hung for now. */
    private final boolean[] shunned;

    /** By which places are passed over; null where none are. */
    private @Nullable SplittableRandom blinks;

    /** Where no new board is hung for now; -1 for nowhere. */
    private int closed = -1;

    /** Only boards for which this holds take strings; new boards always may. */
    java.util.function.Predicate<Hung> open = h -> true;

    Insertion(Draft draft) {
        this.draft = draft;
        this.site = draft.site;
        shunned = new boolean[site.offers.length];
    }

    /**
     * Where several models could carry the same, hangs new boards of one of them alone every other time: the cheapest
     * board for one string is seldom the cheapest for its neighbours too. Where streams differ, some places are passed over as
     * well.
     *
     * @param spot at which no new board is hung; -1 for none
     */
    void choose(SplittableRandom random, int spot) {
        Arrays.fill(shunned, false);
        blinks = site.streamsDiffer ? random : null;
        closed = spot;
        if (shunned.length == site.groups || random.nextBoolean()) {
            return;
        }
        for (int group = 0; group < site.groups; group++) {
            int models = 0;
            int chosen = -1;
            for (int m = 0; m < shunned.length; m++) {
                if (site.groupOf[m] == group && random.nextInt(++models) == 0) {
                    chosen = m;
                }
            }
            for (int m = 0; m < shunned.length; m++) {
                shunned[m] |= site.groupOf[m] == group && m != chosen;
            }
        }
    }

    /** Lets every place be looked at again. */
    void chooseAny() {
        blinks = null;
        closed = -1;
        Arrays.fill(shunned, false);
    }

    private boolean blinks() {
        return blinks != null && blinks.nextInt(BLINK) == 0;
    }

    /** Looks for the cheapest place of a string that is not placed. */
    boolean find(int string) {
        delta = Double.POSITIVE_INFINITY;
        weighed = Double.POSITIVE_INFINITY;
        if (site.sort[string] == Drives.OUTPUTS) {
            onBlocks(string);
        }
        behind(string);
        ahead(string);
        onPorts(string);
        onNewBoards(string);
        return delta < Double.POSITIVE_INFINITY;
    }

    /** Puts the string at the place that {@link #find} found. */
    void apply() {
        Hung target = board;
        if (target == null) {
            target = draft.hang(java.util.Objects.requireNonNull(cable), position, spot, model);
        }
        if (swapPort >= 0) {
            Chain moved = target.ports[port];
            int movedStream = target.stream[port];
            int toStream = site.sockets.heard[target.model][swapPort] - 1;
            draft.set(target, port, null, movedStream);
            draft.set(target, swapPort, moved, toStream);
        }
        draft.set(target, port, chain, stream);
    }

    private void take(double cost, double weight, @Nullable Hung onto, int ontoPort, int ontoStream, Chain with) {
        delta = cost;
        weighed = weight;
        board = onto;
        port = ontoPort;
        stream = ontoStream;
        chain = with;
        swapPort = -1;
    }

    private void behind(int string) {
        for (Site.Wire wire : site.before[string]) {
            Hung onto = draft.at[wire.to()];
            if (onto == null || !open.test(onto) || blinks()) {
                continue;
            }
            Chain now = onto.ports[draft.portOf[wire.to()]];
            int at = now.indexOf(wire.to()) + 1;
            double more = wire.cost();
            if (at < now.strings().length) {
                Site.Wire next = site.jumper(string, now.strings()[at]);
                if (next == null) {
                    continue;
                }
                more += next.cost() - site.jumperCost(wire.to(), now.strings()[at]);
            }
            join(string, onto, now, at, more);
        }
    }

    private void ahead(int string) {
        for (Site.Wire wire : site.after[string]) {
            Hung onto = draft.at[wire.to()];
            if (onto == null || !open.test(onto) || blinks()) {
                continue;
            }
            Chain now = onto.ports[draft.portOf[wire.to()]];
            if (now.head() == wire.to()) {
                Site.Wire lead = site.lead(onto.spot, string);
                if (lead != null) {
                    double more = wire.cost() + lead.cost() - site.leadCost(onto.spot, wire.to());
                    join(string, onto, now, 0, more);
                }
            }
        }
    }

    /** The string into a chain; {@code wires} is a lower bound of what that costs more, exact without injections. */
    private void join(int string, Hung onto, Chain now, int at, double wires) {
        if (wires >= weighed) {
            return;
        }
        Chain longer = draft.chains.of(onto.spot, onto.model, now.with(at, string));
        if (longer == null) {
            return;
        }
        double more = longer.cost() - now.cost();
        int heard = onto.stream[draft.portOf[now.head()]];
        if (more < weighed
                && draft.loads.takes(onto.cable, heard, onto.model, now, longer)
                && draft.powerTakes(onto, longer.amps() - now.amps())) {
            take(more, more, onto, draft.portOf[now.head()], heard, longer);
        }
    }

    private void onPorts(int string) {
        for (Site.Wire lead : site.leads[string]) {
            if (lead.cost() >= weighed) {
                return;
            }
            for (Hung onto : draft.boardsAt.get(lead.to())) {
                if (onto.used < onto.ports.length && open.test(onto) && !blinks()) {
                    onPort(string, onto);
                }
            }
        }
    }

    /** Onto a block that hangs already: nothing is cheaper. */
    private void onBlocks(int string) {
        for (Cable onto : draft.cables) {
            for (int i = 0; i < onto.size; i++) {
                Hung hung = onto.boards[i];
                Chain now = hung.ports[0];
                if (now == null || !site.drives(hung.model, Drives.OUTPUTS) || !open.test(hung)) {
                    continue;
                }
                for (Chain longer : Blocks.joined(site, hung.model, now, string)) {
                    if (weighed > 0 && draft.loads.takes(onto, hung.stream[0], hung.model, now, longer)) {
                        take(0, 0, hung, 0, hung.stream[0], longer);
                    }
                }
            }
        }
    }

    private void onPort(int string, Hung onto) {
        if (!alone(string, onto.spot, onto.model) || alone.cost() >= weighed || !draft.powerTakes(onto, alone.amps())) {
            return;
        }
        int free = -1;
        for (int p = 0; p < onto.ports.length; p++) {
            free = onto.ports[p] == null ? p : free;
        }
        if (free < 0) {
            return;
        }
        int best = freePort(onto.cable, onto.model, onto);
        if (best >= 0) {
            take(alone.cost(), alone.cost(), onto, best, freeStream, freeChain);
        } else if (site.sort[string] == Drives.PIXELS) {
            swapIn(onto, alone, free);
        }
    }

    /** The string alone on a socket there; of outputs all blocks that could carry it. */
    private boolean alone(int string, int s, int m) {
        blocks = List.of();
        if (!site.suits(m, string)) {
            return false;
        }
        if (site.sort[string] == Drives.OUTPUTS) {
            blocks = Blocks.all(site, m, new int[] {string});
            if (!blocks.isEmpty()) {
                alone = blocks.get(0);
            }
            return !blocks.isEmpty();
        }
        Chain chain = draft.chains.of(s, m, new int[] {string});
        if (chain != null) {
            alone = chain;
        }
        return chain != null;
    }

    /** Where the free ports hear full streams: a chain of the board moves there, and the string takes its port. */
    private void swapIn(Hung onto, Chain comes, int free) {
        int stream = site.sockets.heard[onto.model][free] - 1;
        if (stream < 0 || stream >= onto.cable.load.length) {
            return;
        }
        for (int p = 0; p < onto.ports.length; p++) {
            Chain there = onto.ports[p];
            if (there == null || onto.stream[p] == stream) {
                continue;
            }
            int heard = onto.stream[p];
            long channels = comes.pixels() * (long) site.kept.width[comes.kind()];
            boolean fits = (site.kept.on || draft.loads.channelsTake(onto.cable.controller, channels))
                    && draft.loads.takes(onto.cable, stream, onto.model, null, there)
                    && draft.loads.takes(onto.cable, heard, onto.model, there, comes);
            if (fits) {
                take(comes.cost(), comes.cost(), onto, p, heard, comes);
                swapPort = free;
                return;
            }
        }
    }

    private void onNewBoards(int string) {
        for (int m = 0; m < site.offers.length; m++) {
            if (shunned[m]) {
                continue;
            }
            double price = draft.boardPrice(m);
            for (Site.Wire lead : site.leads[string]) {
                int s = lead.to();
                double least = lead.cost() + boardFactor * price;
                if (least >= weighed) {
                    break;
                }
                if (s != closed && draft.mayHang(s, m) && !blinks()) {
                    onNewBoard(string, m, s, price + draft.spotPrice(s));
                }
            }
        }
    }

    private void onNewBoard(int string, int m, int s, double price) {
        if (!alone(string, s, m)
                || alone.cost() + boardFactor * price >= weighed
                || !draft.spotTakes(s, alone.amps())
                || alone.amps() > site.model(m).ampsMost()) {
            return;
        }
        freshPrice = price;
        freshModel = m;
        freshSpot = s;
        freshJacks();
        if (draft.boards <= FEW_BOARDS) {
            for (Cable onto : draft.cables) {
                if (onto.size > 0) {
                    at(onto, 0, onto.size);
                }
            }
            return;
        }
        for (int near : site.neighbours[s]) {
            for (Hung beside : draft.boardsAt.get(near)) {
                int at = beside.cable.indexOf(beside);
                at(beside.cable, at, at + 1);
            }
        }
    }

    /** Empty jacks of one controller are alike. */
    private void freshJacks() {
        int emptySeen = -1;
        for (Cable onto : draft.cables) {
            if (onto.size == 0 && emptySeen != onto.controller) {
                emptySeen = onto.controller;
                at(onto, 0, 0);
            }
        }
    }

    /** The new board between two positions of a cable. */
    private void at(Cable onto, int first, int last) {
        double fixed = alone.cost() + (onto.size == 0 ? site.cablePrice : 0);
        double weightedFixed = fixed + boardFactor * freshPrice;
        // what is quickly known to be too dear needs no look at IDs and streams
        double least = weighed;
        double trunk = 0;
        int best = -1;
        for (int at = first; at <= last && weightedFixed < least; at++) {
            double longer = draft.detour(onto, at, freshSpot);
            double wire = longer * site.trunkPrice;
            if (weightedFixed + boardFactor * wire < least && lengthHolds(onto, at, freshSpot, longer)) {
                least = weightedFixed + boardFactor * wire;
                trunk = wire;
                best = at;
            }
        }
        int heard = best < 0 || !hasRoom(onto) ? -1 : freePort(onto, freshModel, null);
        if (heard >= 0) {
            take(fixed + freshPrice + trunk, least, null, heard, freeStream, freeChain);
            cable = onto;
            position = best;
            spot = freshSpot;
            model = freshModel;
        }
    }

    private boolean hasRoom(Cable onto) {
        return onto.size == 0
                || (onto.size < onto.boards.length
                        && site.model(freshModel).addressed()
                        && roomForMore(onto, freshModel));
    }

    // of the new board in hand
    private double freshPrice;
    private int freshModel;
    private int freshSpot;

    /**
     * The free port of a board (null for a new one) on a cable that hears the stream which suits best; -1 where none
     * takes what comes alone.
     */
    private int freePort(Cable onto, int m, @Nullable Hung there) {
        int best = -1;
        long least = Long.MAX_VALUE;
        int[] heard = site.sockets.heard[m];
        for (int p = 0; p < heard.length; p++) {
            if (there != null && there.ports[p] != null) {
                continue;
            }
            int first = heard[p] == BoardModel.ANY ? 0 : heard[p] - 1;
            int last = heard[p] == BoardModel.ANY ? onto.load.length - 1 : heard[p] - 1;
            for (int s = first; s <= last && s < onto.load.length; s++) {
                for (int variant = 0; variant < Math.max(1, blocks.size()); variant++) {
                    Chain chain = blocks.isEmpty() ? alone : blocks.get(variant);
                    long weight = draft.loads.weight(onto, s, m, chain);
                    if (weight < least && draft.loads.takes(onto, s, m, null, chain)) {
                        best = p;
                        freeStream = s;
                        freeChain = chain;
                        least = weight;
                    }
                }
            }
        }
        return best;
    }

    private boolean roomForMore(Cable onto, int m) {
        if (!site.sockets.addressed[onto.boards[0].model]) {
            return false;
        }
        return !site.idsMatter || Ids.enough(site, onto, m);
    }

    private boolean lengthHolds(Cable onto, int at, int s, double longer) {
        if (onto.length + longer > site.cableMost) {
            return false;
        }
        double in = at == 0 ? site.hopFrom(onto.controller, s) : site.hop(onto.boards[at - 1].spot, s);
        return in <= site.hopMost && (at == onto.size || site.hop(s, onto.boards[at].spot) <= site.hopMost);
    }
}
