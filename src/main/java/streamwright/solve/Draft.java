package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.yard.BoardModel;
import streamwright.yard.Spot;

/**
 * A layout that is being worked on. Every change goes through a few steps that keep loads and cost up to date, and can
 * be taken back: the cables that a change touches are saved when first touched, so that work grows with the
 * neighbourhood and not with the yard.
 */
final class Draft {
    static final int FREE = -1;

    /** Added to the cost for each string not placed and each board fewer than the yard asks for: above all savings. */
    private static final double FINE = 1e5;

    /** A board on its cable; {@code stream[p]} is the 0-based stream that port p is set to hear. */
    static final class Hung {
        int spot;
        int model;
        final Cable cable;
        final @Nullable Chain[] ports;
        final int[] stream;
        int used;

        Hung(Cable cable, int spot, int model, int ports) {
            this.cable = cable;
            this.spot = spot;
            this.model = model;
            this.ports = new Chain[ports];
            stream = new int[ports];
        }

        double amps() {
            double amps = 0;
            for (Chain chain : ports) {
                amps += chain == null ? 0 : chain.amps();
            }
            return amps;
        }
    }

    /** A jack's cable: boards in order, and of each stream its pixels, chains and kind. */
    static final class Cable {
        final int id;
        final int controller;
        final int jack;
        final Hung[] boards;
        int size;
        double length;
        final int[] load;
        final int[] chains;
        final int[] kind;

        /** With kept channels of each stream its first channel, and the one behind its last; else empty. */
        final long[] first;

        final long[] behind;

        Cable(int id, int controller, int jack, int boards, int streams, boolean windows) {
            this.id = id;
            this.controller = controller;
            this.jack = jack;
            this.boards = new Hung[boards];
            load = new int[streams];
            chains = new int[streams];
            kind = new int[streams];
            first = new long[windows ? streams : 0];
            behind = new long[first.length];
            Arrays.fill(kind, FREE);
        }

        int indexOf(Hung board) {
            for (int i = 0; i < size; i++) {
                if (boards[i] == board) {
                    return i;
                }
            }
            throw new IllegalStateException("board is not on this cable");
        }
    }

    private record SavedBoard(
            Hung board, int spot, int model, @Nullable Chain[] ports, int[] stream, int used) {}

    private record SavedCable(
            Cable cable,
            SavedBoard[] boards,
            double length,
            int[] load,
            int[] chains,
            int[] kind,
            long[] first,
            long[] behind) {}

    final Site site;
    final Chains chains;
    final Cable[] cables;

    /** Of each string: its board, or null while it is not placed, and its port. */
    final @Nullable Hung[] at;

    final int[] portOf;

    /** Of each spot: the boards there. */
    final List<List<Hung>> boardsAt = new ArrayList<>();

    final Loads loads;
    final int[] modelCount;
    int boards;
    int placed;
    private double cost;

    private final List<SavedCable> journal = new ArrayList<>();
    private final boolean[] touched;
    private double savedCost;
    private boolean recording;

    Draft(Site site) {
        this.site = site;
        chains = new Chains(site);
        at = new Hung[site.strings.length];
        portOf = new int[site.strings.length];
        loads = new Loads(site);
        modelCount = new int[site.offers.length];
        for (int s = 0; s < site.spots.length; s++) {
            boardsAt.add(new ArrayList<>());
        }
        List<Cable> all = new ArrayList<>();
        for (int c = 0; c < site.controllers.length; c++) {
            var model = site.controllers[c].model();
            int most = Math.min(model.boardsPerCable(), site.strings.length);
            for (int jack = 1; jack <= model.jacks() && jack <= site.strings.length; jack++) {
                all.add(new Cable(all.size(), c, jack, most, model.streams(), site.kept.on));
            }
        }
        cables = all.toArray(Cable[]::new);
        touched = new boolean[cables.length];
        cost = fine();
    }

    private double fine() {
        return FINE * (at.length + (double) site.yard.boardCount().least());
    }

    /** The cost without fines. */
    double money() {
        return cost
                - FINE
                        * (at.length
                                - placed
                                + Math.max(0.0, site.yard.boardCount().least() - boards));
    }

    double cost() {
        return cost;
    }

    /** Whether every string is placed, on as many boards as the yard asks for. */
    boolean complete() {
        return placed == at.length && boards >= site.yard.boardCount().least();
    }

    /** From here on changes can be taken back by {@link #undo}. */
    void record() {
        for (SavedCable saved : journal) {
            touched[saved.cable.id] = false;
        }
        journal.clear();
        savedCost = cost;
        loads.save();
        recording = true;
    }

    /** From here on changes cannot be taken back. */
    void keep() {
        record();
        recording = false;
    }

    /** Takes back everything since {@link #record}. */
    void undo() {
        for (SavedCable saved : journal) {
            clear(saved.cable);
        }
        for (SavedCable saved : journal) {
            restore(saved);
        }
        cost = savedCost;
        loads.restore();
        record();
    }

    /** Takes everything down. */
    void clearAll() {
        for (Cable cable : cables) {
            touch(cable);
            clear(cable);
            cable.length = 0;
            Arrays.fill(cable.load, 0);
            Arrays.fill(cable.chains, 0);
            Arrays.fill(cable.kind, FREE);
        }
        cost = fine();
        loads.clear();
    }

    /** The cables changed since {@link #record}. */
    List<Cable> changed() {
        return journal.stream().map(SavedCable::cable).toList();
    }

    private void touch(Cable cable) {
        if (!recording || touched[cable.id]) {
            return;
        }
        touched[cable.id] = true;
        SavedBoard[] saved = new SavedBoard[cable.size];
        for (int i = 0; i < cable.size; i++) {
            Hung h = cable.boards[i];
            saved[i] = new SavedBoard(h, h.spot, h.model, h.ports.clone(), h.stream.clone(), h.used);
        }
        journal.add(new SavedCable(
                cable,
                saved,
                cable.length,
                cable.load.clone(),
                cable.chains.clone(),
                cable.kind.clone(),
                cable.first.clone(),
                cable.behind.clone()));
    }

    private void clear(Cable cable) {
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            for (Chain chain : board.ports) {
                mark(chain, null, 0);
            }
            boardsAt.get(board.spot).remove(board);
            modelCount[site.stock[board.model]]--;
            boards--;
            cable.boards[i] = null;
        }
        cable.size = 0;
    }

    private void restore(SavedCable saved) {
        Cable cable = saved.cable;
        for (SavedBoard was : saved.boards) {
            Hung board = was.board;
            board.spot = was.spot;
            board.model = was.model;
            board.used = was.used;
            System.arraycopy(was.ports, 0, board.ports, 0, was.ports.length);
            System.arraycopy(was.stream, 0, board.stream, 0, was.stream.length);
            cable.boards[cable.size++] = board;
            boardsAt.get(board.spot).add(board);
            modelCount[site.stock[board.model]]++;
            boards++;
            for (int p = 0; p < board.ports.length; p++) {
                mark(board.ports[p], board, p);
            }
        }
        cable.length = saved.length;
        System.arraycopy(saved.load, 0, cable.load, 0, cable.load.length);
        System.arraycopy(saved.chains, 0, cable.chains, 0, cable.chains.length);
        System.arraycopy(saved.kind, 0, cable.kind, 0, cable.kind.length);
        System.arraycopy(saved.first, 0, cable.first, 0, cable.first.length);
        System.arraycopy(saved.behind, 0, cable.behind, 0, cable.behind.length);
    }

    private void mark(@Nullable Chain chain, @Nullable Hung board, int port) {
        if (chain == null) {
            return;
        }
        for (int string : chain.strings()) {
            int more = (board == null ? 0 : 1) - (at[string] == null ? 0 : 1);
            placed += more;
            cost -= FINE * more;
            at[string] = board;
            portOf[string] = port;
        }
    }

    /** Puts a chain (or nothing) on a port that hears a stream; what was there leaves. */
    void set(Hung board, int port, @Nullable Chain chain, int stream) {
        Cable cable = board.cable;
        touch(cable);
        Chain was = board.ports[port];
        if (was != null) {
            mark(was, null, 0);
            cost -= was.cost();
            board.ports[port] = null;
            loads.drop(cable, board.stream[port], board.model, was);
            board.used--;
        }
        board.stream[port] = stream;
        if (chain != null) {
            mark(chain, board, port);
            cost += chain.cost();
            loads.put(cable, stream, board.model, chain);
            board.ports[port] = chain;
            board.used++;
        }
    }

    /** Hangs a board at a position of a cable. */
    Hung hang(Cable cable, int position, int spot, int model) {
        touch(cable);
        double longer = detour(cable, position, spot);
        cost += boardPrice(model)
                + spotPrice(spot)
                + longer * site.trunkPrice
                + (cable.size == 0 ? site.cablePrice : 0);
        cable.length += longer;
        Hung board = new Hung(cable, spot, model, site.sockets.count(model));
        System.arraycopy(cable.boards, position, cable.boards, position + 1, cable.size - position);
        cable.boards[position] = board;
        cable.size++;
        boardsAt.get(spot).add(board);
        modelCount[site.stock[model]]++;
        boards++;
        return board;
    }

    /** Takes a board down with all that it carries. */
    void takeDownWhole(Hung board) {
        for (int p = 0; p < board.ports.length; p++) {
            if (board.ports[p] != null) {
                set(board, p, null, board.stream[p]);
            }
        }
        takeDown(board);
    }

    /** Takes an empty board down. */
    void takeDown(Hung board) {
        if (board.used != 0) {
            throw new IllegalStateException("a board that carries strings stays");
        }
        Cable cable = board.cable;
        touch(cable);
        int position = cable.indexOf(board);
        double shorter = saving(cable, position);
        System.arraycopy(cable.boards, position + 1, cable.boards, position, cable.size - position - 1);
        cable.boards[--cable.size] = null;
        boardsAt.get(board.spot).remove(board);
        modelCount[site.stock[board.model]]--;
        boards--;
        cable.length -= shorter;
        cost -= boardPrice(board.model)
                + spotPrice(board.spot)
                + shorter * site.trunkPrice
                + (cable.size == 0 ? site.cablePrice : 0);
    }

    /** Lets a cable visit its boards in another order; {@code order} is a permutation of them. */
    void reorder(Cable cable, Hung[] order) {
        touch(cable);
        System.arraycopy(order, 0, cable.boards, 0, cable.size);
        remeasure(cable);
    }

    /** Moves a board with all its chains (already measured from there) to another spot. */
    void move(Hung board, int spot, Chain[] chains) {
        touch(board.cable);
        boardsAt.get(board.spot).remove(board);
        cost -= spotPrice(board.spot);
        board.spot = spot;
        cost += spotPrice(spot);
        boardsAt.get(spot).add(board);
        for (int p = 0; p < board.ports.length; p++) {
            if (board.ports[p] != null) {
                set(board, p, chains[p], board.stream[p]);
            }
        }
        remeasure(board.cable);
    }

    private void remeasure(Cable cable) {
        double length = 0;
        for (int i = 0; i < cable.size; i++) {
            length += hopTo(cable, i, cable.boards[i].spot);
        }
        cost += (length - cable.length) * site.trunkPrice;
        cable.length = length;
    }

    /** Price of one more board of a model, less what it takes off the fine for too few boards. */
    double boardPrice(int model) {
        double price = modelCount[site.stock[model]] < site.offers[model].have() ? 0 : site.offers[model].price();
        return boards < site.yard.boardCount().least() ? price - FINE : price;
    }

    /** Price of a spot for one more board. */
    double spotPrice(int spot) {
        return boardsAt.get(spot).isEmpty() ? site.spots[spot].price() : 0;
    }

    /** Length of the hop into a position, were its board at this spot. */
    private double hopTo(Cable cable, int position, int spot) {
        return position == 0 ? site.hopFrom(cable.controller, spot) : site.hop(cable.boards[position - 1].spot, spot);
    }

    /** How much longer a cable gets by a board at this spot and position; infinite where a length limit forbids it. */
    double detour(Cable cable, int position, int spot) {
        double in = hopTo(cable, position, spot);
        if (position == cable.size) {
            return in;
        }
        int next = cable.boards[position].spot;
        return in + site.hop(spot, next) - hopTo(cable, position, next);
    }

    /** How much shorter a cable gets without the board at this position. */
    double saving(Cable cable, int position) {
        double in = hopTo(cable, position, cable.boards[position].spot);
        if (position == cable.size - 1) {
            return in;
        }
        int next = cable.boards[position + 1].spot;
        return in + site.hop(cable.boards[position].spot, next) - hopTo(cable, position, next);
    }

    /** Whether the lengths of a cable are within the rules. */
    boolean lengthsHold(Cable cable) {
        if (cable.length > site.cableMost) {
            return false;
        }
        for (int i = 0; i < cable.size; i++) {
            if (hopTo(cable, i, cable.boards[i].spot) > site.hopMost) {
                return false;
            }
        }
        return true;
    }

    /** Whether one more board of the model may hang at the spot. */
    boolean mayHang(int spot, int model) {
        return boardsAt.get(spot).size() < site.spots[spot].most()
                && modelCount[site.stock[model]] < site.offers[model].most()
                && boards < site.yard.boardCount().most();
    }

    /** Whether board and spot stand so many more amps. */
    boolean powerTakes(Hung board, double more) {
        BoardModel model = site.model(board.model);
        return (Double.isInfinite(model.ampsMost()) || board.amps() + more <= model.ampsMost() + Site.AMPS_ROUNDING)
                && spotTakes(board.spot, more);
    }

    boolean spotTakes(int spot, double more) {
        Spot place = site.spots[spot];
        if (Double.isInfinite(place.ampsMost())) {
            return true;
        }
        double amps = more;
        for (Hung board : boardsAt.get(spot)) {
            amps += board.amps();
        }
        return amps <= place.ampsMost() + Site.AMPS_ROUNDING;
    }
}
