package streamwright.solve;

import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.yard.BoardModel;

/** Finds the cheapest place for one more string, and puts it there. One object is used again and again. */
final class Insertion {
    /** With more boards than this, new ones join cables only beside boards that are near. */
    static final int FEW_BOARDS = 40;

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

    /** Scales the price of new boards while places are weighed, so that a search does not always shun them. */
    double boardFactor = 1;

    /** Only boards for which this holds take strings; new boards always may. */
    java.util.function.Predicate<Hung> open = h -> true;

    Insertion(Draft draft) {
        this.draft = draft;
        this.site = draft.site;
    }

    /** Looks for the cheapest place of a string that is not placed. */
    boolean find(int string) {
        delta = Double.POSITIVE_INFINITY;
        weighed = Double.POSITIVE_INFINITY;
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
            int toStream = site.model(target.model).ports().get(swapPort) - 1;
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
            if (onto == null || !open.test(onto)) {
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
            if (onto == null || !open.test(onto)) {
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
                && draft.streamTakes(onto.cable, heard, site.kind[string], longer.pixels() - now.pixels())
                && draft.powerTakes(onto, site.kind[string], longer.amps() - now.amps())) {
            take(more, more, onto, draft.portOf[now.head()], heard, longer);
        }
    }

    private void onPorts(int string) {
        for (Site.Wire lead : site.leads[string]) {
            if (lead.cost() >= weighed) {
                return;
            }
            for (Hung onto : draft.boardsAt.get(lead.to())) {
                if (onto.used < onto.ports.length && open.test(onto)) {
                    onPort(string, onto);
                }
            }
        }
    }

    private void onPort(int string, Hung onto) {
        Chain alone = draft.chains.of(onto.spot, onto.model, new int[] {string});
        if (alone == null || alone.cost() >= weighed || !draft.powerTakes(onto, site.kind[string], alone.amps())) {
            return;
        }
        BoardModel boardModel = site.model(onto.model);
        int bestPort = -1;
        int bestStream = -1;
        int room = Integer.MAX_VALUE;
        int free = -1;
        for (int p = 0; p < onto.ports.length; p++) {
            if (onto.ports[p] != null) {
                continue;
            }
            free = p;
            int hears = boardModel.ports().get(p);
            int first = hears == BoardModel.ANY ? 0 : hears - 1;
            int last = hears == BoardModel.ANY ? onto.cable.load.length - 1 : hears - 1;
            for (int s = first; s <= last && s < onto.cable.load.length; s++) {
                if (onto.cable.load[s] < room
                        && draft.streamBegins(onto.cable, s, onto.model, site.kind[string], alone.pixels())) {
                    bestPort = p;
                    bestStream = s;
                    room = onto.cable.load[s];
                }
            }
        }
        if (bestPort >= 0) {
            take(alone.cost(), alone.cost(), onto, bestPort, bestStream, alone);
        } else if (free >= 0) {
            swapIn(string, onto, alone, free);
        }
    }

    /** Where the free ports hear full streams: a chain of the board moves there, and the string takes its port. */
    private void swapIn(int string, Hung onto, Chain alone, int free) {
        BoardModel boardModel = site.model(onto.model);
        int freeStream = boardModel.ports().get(free) - 1;
        if (freeStream < 0 || freeStream >= onto.cable.load.length) {
            return;
        }
        for (int p = 0; p < onto.ports.length; p++) {
            Chain there = onto.ports[p];
            if (there == null || onto.stream[p] == freeStream) {
                continue;
            }
            int heard = onto.stream[p];
            long channels = alone.pixels() * (long) site.kinds[site.kind[string]].channels();
            boolean fits = draft.channelsTake(onto.cable.controller, channels)
                    && draft.streamBegins(onto.cable, freeStream, onto.model, site.kind[there.head()], there.pixels())
                    && draft.streamTakes(onto.cable, heard, site.kind[string], alone.pixels() - there.pixels());
            if (fits) {
                take(alone.cost(), alone.cost(), onto, p, heard, alone);
                swapPort = free;
                return;
            }
        }
    }

    private void onNewBoards(int string) {
        for (int m = 0; m < site.offers.length; m++) {
            double price = draft.boardPrice(m);
            for (Site.Wire lead : site.leads[string]) {
                int s = lead.to();
                double least = lead.cost() + boardFactor * price;
                if (least >= weighed) {
                    break;
                }
                if (draft.mayHang(s, m)) {
                    onNewBoard(string, m, s, price + draft.spotPrice(s));
                }
            }
        }
    }

    private void onNewBoard(int string, int m, int s, double price) {
        Chain alone = draft.chains.of(s, m, new int[] {string});
        if (alone == null
                || !draft.spotTakes(s, alone.amps())
                || alone.amps() > site.model(m).ampsMost()) {
            return;
        }
        fresh = alone;
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
        boolean room = onto.size == 0
                || (onto.size < onto.boards.length
                        && site.model(freshModel).addressed()
                        && roomForMore(onto, freshModel));
        if (!room) {
            return;
        }
        double fixed = fresh.cost() + (onto.size == 0 ? site.cablePrice : 0);
        double weightedFixed = fixed + boardFactor * freshPrice;
        if (weightedFixed >= weighed) {
            return;
        }
        int heard = freshPort(onto, freshModel, site.kind[fresh.head()], fresh.pixels());
        if (heard < 0) {
            return;
        }
        for (int at = first; at <= last; at++) {
            double longer = draft.detour(onto, at, freshSpot);
            double wire = longer * site.trunkPrice;
            if (weightedFixed + boardFactor * wire < weighed && lengthHolds(onto, at, freshSpot, longer)) {
                take(fixed + freshPrice + wire, weightedFixed + boardFactor * wire, null, heard, freshStream, fresh);
                cable = onto;
                position = at;
                spot = freshSpot;
                model = freshModel;
            }
        }
    }

    // of the new board in hand
    private Chain fresh = new Chain(new int[0], 0, 0, 0);
    private double freshPrice;
    private int freshModel;
    private int freshSpot;
    private int freshStream;

    /** The port of a new board on a cable that hears the emptiest stream with room; -1 where there is none. */
    private int freshPort(Cable onto, int m, int kind, int more) {
        int best = -1;
        int room = Integer.MAX_VALUE;
        BoardModel boardModel = site.model(m);
        for (int p = 0; p < boardModel.ports().size(); p++) {
            int hears = boardModel.ports().get(p);
            int first = hears == BoardModel.ANY ? 0 : hears - 1;
            int last = hears == BoardModel.ANY ? onto.load.length - 1 : hears - 1;
            for (int s = first; s <= last && s < onto.load.length; s++) {
                if (onto.load[s] < room && draft.streamTakes(onto, s, kind, more)) {
                    best = p;
                    freshStream = s;
                    room = onto.load[s];
                }
            }
        }
        return best;
    }

    private boolean roomForMore(Cable onto, int m) {
        if (!site.model(onto.boards[0].model).addressed()) {
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
