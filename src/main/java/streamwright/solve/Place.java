package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.solve.Patterns.Room;

/**
 * All of one kind that hangs around a place, and the streams that it could hang on: cables that end there with every
 * board, and those that pass.
 */
final class Place {
    /** What keeps together, and where it hung; {@code pixels} with the nulls that it has there. */
    record Item(int spot, int model, int[] strings, int pixels) {}

    /** A stream of a cable that passes. */
    record Passing(Cable cable, int stream) {}

    private final Draft draft;
    private final Site site;

    final int kind;
    final int group;
    final List<Cable> ending = new ArrayList<>();
    final List<Hung> kept = new ArrayList<>();
    final List<Item> items = new ArrayList<>();

    /** Of each controller: the jacks that may be used anew. */
    final List<List<Cable>> jacks = new ArrayList<>();

    final List<Passing> passing = new ArrayList<>();
    final List<Room> rooms = new ArrayList<>();
    boolean loose;

    /** @param seed a board of pixels that carries something, with all within half a lead of it */
    Place(Draft draft, Hung seed) {
        this.draft = draft;
        this.site = draft.site;
        kind = seed.cable.kind[streamOf(seed)];
        group = site.groupOf[seed.model];
        double reach = site.yard.rules().leadData() / 2;
        boolean[] near = new boolean[site.spots.length];
        for (int s = 0; s < near.length; s++) {
            near[s] = Grid.straight(site.spots[seed.spot].at(), site.spots[s].at()) <= reach;
        }
        for (Cable cable : draft.cables) {
            if (cable.size > 0 && Arrays.stream(cable.boards, 0, cable.size).allMatch(b -> whole(b, near))) {
                ending.add(cable);
            } else if (cable.size > 0) {
                pass(cable, near);
            }
        }
        Stream.concat(ending.stream().flatMap(c -> Arrays.stream(c.boards, 0, c.size)), kept.stream())
                .forEach(this::chains);
        for (int i = 0; i < draft.at.length && draft.placed < draft.at.length; i++) {
            if (draft.at[i] == null && site.kind[i] == kind && site.group[i] == group) {
                loosen(i, near);
            }
        }
    }

    private int streamOf(Hung board) {
        return IntStream.range(0, board.ports.length)
                .filter(p -> board.ports[p] != null)
                .map(p -> board.stream[p])
                .findFirst()
                .orElseThrow();
    }

    private boolean suits(Hung board, boolean[] near) {
        return near[board.spot] && site.groupOf[board.model] == group && site.sockets.addressed[board.model];
    }

    /** Whether nothing on a board is left out when it is packed anew. */
    private boolean whole(Hung board, boolean[] near) {
        return suits(board, near)
                && Arrays.stream(board.ports).allMatch(chain -> chain == null || chain.kind() == kind);
    }

    private void pass(Cable cable, boolean[] near) {
        int[] sockets = new int[cable.load.length];
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            if (!suits(board, near)) {
                continue;
            }
            kept.add(board);
            for (int p = 0; p < board.ports.length; p++) {
                boolean ours = board.ports[p] == null || board.ports[p].kind() == kind;
                for (int s = 0; s < sockets.length && ours; s++) {
                    sockets[s] += site.sockets.hears(board.model, p, s) ? 1 : 0;
                }
            }
        }
        for (int s = 0; s < sockets.length; s++) {
            boolean ours = cable.kind[s] == kind || cable.kind[s] == Draft.FREE;
            if (sockets[s] > 0 && ours) {
                int elsewhere = cable.load[s] - here(cable, s);
                passing.add(new Passing(cable, s));
                rooms.add(new Room(site.limit[cable.controller][kind] - elsewhere, sockets[s], 1, 0));
            }
        }
    }

    private int here(Cable cable, int stream) {
        int pixels = 0;
        for (Hung board : kept) {
            for (int p = 0; p < board.ports.length && board.cable == cable; p++) {
                Chain chain = board.ports[p];
                pixels += chain != null && board.stream[p] == stream ? chain.pixels() : 0;
            }
        }
        return pixels;
    }

    private void chains(Hung board) {
        for (Chain chain : board.ports) {
            if (chain != null && chain.kind() == kind) {
                items.add(new Item(board.spot, board.model, chain.strings(), chain.pixels()));
            }
        }
    }

    private void loosen(int string, boolean[] near) {
        for (Site.Wire lead : site.leads[string]) {
            for (int m = 0; m < site.offers.length && near[lead.to()]; m++) {
                Chain chain = site.groupOf[m] == group ? draft.chains.of(lead.to(), m, new int[] {string}) : null;
                if (chain != null) {
                    items.add(new Item(lead.to(), m, chain.strings(), chain.pixels()));
                    loose = true;
                    return;
                }
            }
        }
    }

    /** Streams that cost something: as many as there are, or as many as without one cable. */
    int goal() {
        int boards = ending.stream().mapToInt(cable -> cable.size).sum();
        int goal = 0;
        int closed = loose
                ? 0
                : ending.stream()
                        .mapToInt(c -> site.streams[c.controller])
                        .min()
                        .orElse(0);
        for (int c = 0; c < site.controllers.length; c++) {
            int controller = c;
            List<Cable> cables = new ArrayList<>(ending.stream()
                    .filter(cable -> cable.controller == controller)
                    .toList());
            for (Cable cable : draft.cables) {
                if (loose && cable.size == 0 && cable.controller == controller) {
                    cables.add(cable);
                }
            }
            jacks.add(cables);
            if (cables.isEmpty()) {
                rooms.add(new Room(0, 0, 0, 1));
                continue;
            }
            int left = Math.max(1, cables.size() - (loose ? 0 : 1));
            int most = (loose ? cables.get(0).boards.length : (boards + left - 1) / left) * sockets(site.streams[c]);
            rooms.add(new Room(site.limit[c][kind], most, cables.size() * site.streams[c], 1));
            goal += cables.size() * site.streams[c];
        }
        return goal - closed;
    }

    /** Ports of one board that hear one and the same stream, at most. */
    private int sockets(int streams) {
        int most = 0;
        for (int m = 0; m < site.offers.length; m++) {
            for (int s = 0; s < streams && site.groupOf[m] == group; s++) {
                int hearing = 0;
                for (int p = 0; p < site.sockets.count(m); p++) {
                    hearing += site.sockets.hears(m, p, s) ? 1 : 0;
                }
                most = Math.max(most, hearing);
            }
        }
        return most;
    }
}
