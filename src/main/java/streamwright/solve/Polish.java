package streamwright.solve;

import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;

/** Local improvements that change no port: the order of a cable, the cable of a board, the spot of a board. */
final class Polish {
    private static final double WORTH = 1e-7;

    private final Draft draft;
    private final Site site;

    Polish(Draft draft) {
        this.draft = draft;
        this.site = draft.site;
    }

    /** Improves the cables changed since the draft's last record until nothing helps. */
    void changed() {
        boolean better = true;
        for (int round = 0; better && round < 5; round++) {
            better = false;
            for (Cable cable : draft.changed()) {
                better |= order(cable);
                for (int i = 0; i < cable.size; i++) {
                    better |= shift(cable.boards[i]);
                }
                for (int i = 0; i < cable.size; i++) {
                    better |= rehang(cable.boards[i]);
                }
            }
        }
    }

    /** Turns and moves stretches of one cable: 2-opt, and or-opt of up to three boards, also turned. */
    private boolean order(Cable cable) {
        boolean any = false;
        boolean better = true;
        while (better) {
            better = false;
            for (int from = 0; from < cable.size && !better; from++) {
                for (int to = from; to < cable.size && !better; to++) {
                    better = to > from && turn(cable, from, to);
                    for (int at = 0; at <= cable.size && !better && to - from < 3; at++) {
                        if (at < from || at > to + 1) {
                            better = carry(cable, from, to, at, false)
                                    || (to > from && carry(cable, from, to, at, true));
                        }
                    }
                }
            }
            any |= better;
        }
        return any;
    }

    private double hop(Cable cable, int before, int spot) {
        return before < 0 ? site.hopFrom(cable.controller, spot) : site.hop(cable.boards[before].spot, spot);
    }

    private boolean turn(Cable cable, int from, int to) {
        double was = hop(cable, from - 1, cable.boards[from].spot);
        double is = hop(cable, from - 1, cable.boards[to].spot);
        if (to + 1 < cable.size) {
            int next = cable.boards[to + 1].spot;
            was += site.hop(cable.boards[to].spot, next);
            is += site.hop(cable.boards[from].spot, next);
        }
        if (is >= was - WORTH) {
            return false;
        }
        Hung[] order = java.util.Arrays.copyOf(cable.boards, cable.size);
        for (int a = from, b = to; a <= to; a++, b--) {
            order[a] = cable.boards[b];
        }
        return adopt(cable, order);
    }

    private boolean carry(Cable cable, int from, int to, int at, boolean turned) {
        int first = cable.boards[turned ? to : from].spot;
        int last = cable.boards[turned ? from : to].spot;
        double gain = hop(cable, from - 1, cable.boards[from].spot);
        if (to + 1 < cable.size) {
            int next = cable.boards[to + 1].spot;
            gain += site.hop(cable.boards[to].spot, next) - hop(cable, from - 1, next);
        }
        double cost = hop(cable, at - 1, first);
        if (at < cable.size) {
            int next = cable.boards[at].spot;
            cost += site.hop(last, next) - hop(cable, at - 1, next);
        }
        if (cost >= gain - WORTH) {
            return false;
        }
        Hung[] order = new Hung[cable.size];
        int n = 0;
        for (int i = 0; i <= cable.size; i++) {
            if (i == at) {
                for (int k = from; k <= to; k++) {
                    order[n++] = cable.boards[turned ? from + to - k : k];
                }
            }
            if (i < cable.size && (i < from || i > to)) {
                order[n++] = cable.boards[i];
            }
        }
        return adopt(cable, order);
    }

    private boolean adopt(Cable cable, Hung[] order) {
        Hung[] was = java.util.Arrays.copyOf(cable.boards, cable.size);
        double before = draft.cost();
        boolean held = draft.lengthsHold(cable);
        draft.reorder(cable, order);
        if (draft.cost() < before - WORTH && (!held || draft.lengthsHold(cable))) {
            return true;
        }
        draft.reorder(cable, was);
        return false;
    }

    /** Moves a board, with all that hangs on it, to the spot where it costs least. */
    private boolean shift(Hung board) {
        Cable cable = board.cable;
        int position = cable.indexOf(board);
        double saving = draft.saving(cable, position) * site.trunkPrice;
        int head = -1;
        double now = 0;
        for (Chain chain : board.ports) {
            if (chain != null) {
                now += chain.cost();
                if (head < 0 || site.leads[chain.head()].length < site.leads[head].length) {
                    head = chain.head();
                }
            }
        }
        if (head < 0) {
            return false;
        }
        int best = -1;
        double bestGain = WORTH;
        for (Site.Wire lead : site.leads[head]) {
            int spot = lead.to();
            if (spot == board.spot || draft.boardsAt.get(spot).size() >= site.spots[spot].most()) {
                continue;
            }
            double gain = now + saving - newSpotCost(board, position, spot);
            if (gain > bestGain) {
                bestGain = gain;
                best = spot;
            }
        }
        return best >= 0 && tryMove(board, best);
    }

    private double newSpotCost(Hung board, int position, int spot) {
        Cable cable = board.cable;
        double cost = hop(cable, position - 1, spot);
        if (position + 1 < cable.size) {
            int next = cable.boards[position + 1].spot;
            cost += site.hop(spot, next) - hop(cable, position - 1, next);
        }
        cost *= site.trunkPrice;
        for (Chain chain : board.ports) {
            if (chain != null) {
                Site.Wire lead = site.lead(spot, chain.head());
                if (lead == null) {
                    return Double.POSITIVE_INFINITY;
                }
                cost += chain.cost() + lead.cost() - site.leadCost(board.spot, chain.head());
            }
        }
        return cost;
    }

    private boolean tryMove(Hung board, int spot) {
        Chain[] moved = new Chain[board.ports.length];
        Chain[] was = board.ports.clone();
        Cable cable = board.cable;
        int[] more = new int[cable.load.length];
        for (int p = 0; p < moved.length; p++) {
            Chain chain = board.ports[p];
            if (chain != null) {
                moved[p] = chain.again(draft.chains, spot, board.model, chain.strings());
                if (moved[p] == null) {
                    return false;
                }
                more[board.stream[p]] += moved[p].pixels() - chain.pixels();
            }
        }
        if (site.plain && !sumsHold(board, more)) {
            return false;
        }
        int from = board.spot;
        double before = draft.cost();
        draft.move(board, spot, moved);
        if (draft.cost() < before - WORTH
                && draft.lengthsHold(cable)
                && draft.powerTakes(board, 0)
                && (site.plain || draft.loads.holds(cable))) {
            return true;
        }
        draft.move(board, from, was);
        return false;
    }

    /** Whether the streams of a board's chains take so many pixels more. */
    private boolean sumsHold(Hung board, int[] more) {
        Cable cable = board.cable;
        for (int p = 0; p < board.ports.length; p++) {
            Chain chain = board.ports[p];
            int s = board.stream[p];
            if (chain != null && cable.load[s] + more[s] > site.limit[cable.controller][chain.kind()]) {
                return false;
            }
        }
        long channels = 0;
        for (int s = 0; s < more.length; s++) {
            channels += more[s] == 0 ? 0 : more[s] * (long) site.kept.width[cable.kind[s]];
        }
        return draft.loads.channelsTake(cable.controller, channels);
    }

    /** Moves a board to the cable and position where its trunk costs least. */
    private boolean rehang(Hung board) {
        Cable from = board.cable;
        int position = from.indexOf(board);
        double gain = draft.saving(from, position) * site.trunkPrice + (from.size == 1 ? site.cablePrice : 0);
        Place place = new Place(gain - WORTH);
        if (draft.boards <= Insertion.FEW_BOARDS) {
            for (Cable to : draft.cables) {
                place.look(board, to, 0, to.size);
            }
        } else {
            for (int near : site.neighbours[board.spot]) {
                for (Hung beside : draft.boardsAt.get(near)) {
                    int at = beside.cable.indexOf(beside);
                    place.look(board, beside.cable, at, at + 1);
                }
            }
        }
        Cable best = place.cable;
        if (best == null) {
            return false;
        }
        Hung moved = transfer(board, best, place.at);
        if (moved == null) {
            return false;
        }
        if (draft.lengthsHold(best) && draft.lengthsHold(from)) {
            return true;
        }
        transfer(moved, from, position);
        return false;
    }

    /** The cheapest place on another cable. */
    private final class Place {
        double least;

        @Nullable
        Cable cable;

        int at;

        Place(double least) {
            this.least = least;
        }

        void look(Hung board, Cable to, int first, int last) {
            if (to == board.cable || to.size == 0 || to.size == to.boards.length || !fits(board, to)) {
                return;
            }
            for (int position = first; position <= last; position++) {
                double longer = draft.detour(to, position, board.spot);
                if (longer * site.trunkPrice < least && to.length + longer <= site.cableMost) {
                    least = longer * site.trunkPrice;
                    cable = to;
                    at = position;
                }
            }
        }
    }

    private boolean fits(Hung board, Cable to) {
        if (to.load.length < board.cable.load.length
                || !site.sockets.addressed[board.model]
                || !site.sockets.addressed[to.boards[0].model]
                || (site.idsMatter && !Ids.enough(site, to, board.model))) {
            return false;
        }
        if (!site.plain) {
            return eachFits(board, to);
        }
        long channels = 0;
        int[] more = new int[to.load.length];
        int[] kinds = to.kind.clone();
        for (int p = 0; p < board.ports.length; p++) {
            Chain chain = board.ports[p];
            if (chain != null) {
                int s = board.stream[p];
                int kind = site.kind[chain.head()];
                more[s] += chain.pixels();
                channels += chain.pixels() * (long) site.kinds[kind].channels();
                if ((kinds[s] != Draft.FREE && kinds[s] != kind)
                        || to.load[s] + more[s] > site.limit[to.controller][kind]) {
                    return false;
                }
                kinds[s] = kind;
            }
        }
        return to.controller == board.cable.controller || draft.loads.channelsTake(to.controller, channels);
    }

    private boolean eachFits(Hung board, Cable to) {
        for (int p = 0; p < board.ports.length; p++) {
            Chain chain = board.ports[p];
            if (chain != null && !draft.loads.takes(to, board.stream[p], board.model, null, chain)) {
                return false;
            }
        }
        return true;
    }

    /** Null, and nothing is changed, where the streams of the other cable do not take all together. */
    private @Nullable Hung transfer(Hung board, Cable to, int at) {
        Hung moved = draft.hang(to, at, board.spot, board.model);
        for (int p = 0; p < board.ports.length; p++) {
            if (!replug(board, moved, p)) {
                while (--p >= 0) {
                    replug(moved, board, p);
                }
                draft.takeDown(moved);
                return null;
            }
        }
        draft.takeDown(board);
        return moved;
    }

    private boolean replug(Hung from, Hung to, int port) {
        Chain chain = from.ports[port];
        int stream = from.stream[port];
        if (chain == null) {
            return true;
        }
        draft.set(from, port, null, stream);
        if (!site.plain && !draft.loads.takes(to.cable, stream, to.model, null, chain)) {
            draft.set(from, port, chain, stream);
            return false;
        }
        draft.set(to, port, chain, stream);
        return true;
    }
}
