package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.solve.Filling.Filled;
import streamwright.solve.Patterns.Room;
import streamwright.yard.Drives;

/**
 * Packs all that hangs around one place anew, so that a cable fewer does, or so that what found no stream finds one.
 * Cables that end there with every board are taken down and begun anew; those that pass keep their boards, and their
 * streams what they carry elsewhere.
 */
final class Repack {
    private static final double WORTH = 1e-7;

    /** Programmes to solve for one question when it is asked first; twice as many each time it is asked again. */
    private static final int PROGRAMMES = 1_000;

    private static final int DOUBLED_MOST = 8;

    private final Draft draft;
    private final Site site;
    private final Polish polish;
    private final Map<Question, Integer> asked = new HashMap<>();

    Repack(Draft draft, Polish polish) {
        this.draft = draft;
        this.site = draft.site;
        this.polish = polish;
    }

    private record Question(List<Integer> sizes, List<Room> rooms, int goal) {}

    /** What keeps together, and where it hung; {@code pixels} with the nulls that it has there. */
    private record Item(int spot, int model, int[] strings, int pixels) {}

    /** A stream of a cable that passes. */
    private record Passing(Cable cable, int stream) {}

    /** All that is packed anew. */
    private final class Place {
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

        Place(Hung seed) {
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
                int most =
                        (loose ? cables.get(0).boards.length : (boards + left - 1) / left) * sockets(site.streams[c]);
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

    /** Packs anew around every board, as far as it helps; tells whether it did. */
    boolean run(BooleanSupplier stop) {
        boolean any = false;
        boolean better = !site.kept.on;
        while (better && !stop.getAsBoolean()) {
            better = false;
            Set<List<Integer>> seen = new HashSet<>();
            for (Cable cable : draft.cables) {
                // what is packed anew changes the cables, so only the first board that promises something is asked
                Hung seed = cable.size == 0 ? null : cable.boards[cable.size - 1];
                if (seed != null && site.drives(seed.model, Drives.PIXELS) && site.sockets.addressed[seed.model]) {
                    better |= around(seed, seen, stop);
                }
            }
            any |= better;
        }
        return any;
    }

    private boolean around(Hung seed, Set<List<Integer>> seen, BooleanSupplier stop) {
        Place place = new Place(seed);
        if (place.ending.size() < 2 && !place.loose) {
            return false;
        }
        List<Integer> group = place.ending.stream().map(cable -> cable.id).toList();
        if (!seen.add(group)) {
            return false;
        }
        int goal = place.goal();
        long room = 0;
        int paid = 0;
        for (Room each : place.rooms) {
            room += each.price() == 0 ? each.pixels() : 0;
            paid = Math.max(paid, each.price() == 0 ? 0 : each.pixels());
        }
        int[] sizes = place.items.stream().mapToInt(Item::pixels).toArray();
        if (IntStream.of(sizes).asLongStream().sum() > room + (long) goal * paid) {
            return false;
        }
        List<Filled> filled = filling(sizes, place.rooms, goal, stop);
        if (filled == null) {
            return false;
        }
        double before = draft.cost();
        draft.record();
        if (realise(place, filled)) {
            polish.changed();
            if (draft.cost() < before - WORTH && draft.changed().stream().allMatch(draft::lengthsHold)) {
                draft.keep();
                return true;
            }
        }
        draft.undo();
        draft.keep();
        return false;
    }

    private @Nullable List<Filled> filling(int[] sizes, List<Room> rooms, int goal, BooleanSupplier stop) {
        Question question = new Question(IntStream.of(sizes).sorted().boxed().toList(), rooms, goal);
        int before = asked.merge(question, 1, Integer::sum) - 1;
        if (before > DOUBLED_MOST) {
            return null;
        }
        Natives.load();
        return Filling.of(sizes, rooms, goal, PROGRAMMES << before, stop);
    }

    private boolean realise(Place place, List<Filled> filled) {
        for (Hung board : place.kept) {
            for (int p = 0; p < board.ports.length; p++) {
                if (board.ports[p] != null && board.ports[p].kind() == place.kind) {
                    draft.set(board, p, null, board.stream[p]);
                }
            }
        }
        for (Cable cable : place.ending) {
            while (cable.size > 0) {
                Hung board = cable.boards[cable.size - 1];
                for (int p = 0; p < board.ports.length; p++) {
                    draft.set(board, p, null, board.stream[p]);
                }
                draft.takeDown(board);
            }
        }
        int passing = place.passing.size();
        for (int r = 0; r < place.rooms.size(); r++) {
            int room = r;
            List<List<Item>> streams = new ArrayList<>(filled.stream()
                    .filter(each -> each.room() == room)
                    .map(each -> (List<Item>) new ArrayList<>(
                            each.strings().stream().map(place.items::get).toList()))
                    .sorted(Comparator.comparingInt((List<Item> items) -> -items.size()))
                    .toList());
            boolean done = r < passing
                    ? streams.isEmpty() || plug(place, place.passing.get(r), streams.get(0))
                    : hang(place.jacks.get(r - passing), streams, r - passing);
            if (!done) {
                return false;
            }
        }
        for (Hung board : place.kept) {
            if (board.used == 0) {
                draft.takeDown(board);
            }
        }
        return true;
    }

    /** Onto the boards that a cable has there. */
    private boolean plug(Place place, Passing passing, List<Item> items) {
        for (Hung board : place.kept) {
            for (int p = 0; p < board.ports.length && board.cable == passing.cable; p++) {
                if (board.ports[p] == null && site.sockets.hears(board.model, p, passing.stream)) {
                    plug(board, p, passing.stream, items);
                }
            }
        }
        return items.isEmpty();
    }

    /** The cheapest of some chains onto a port. */
    private void plug(Hung board, int port, int stream, List<Item> items) {
        Item best = null;
        Chain cheapest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Item item : items) {
            Chain chain = draft.chains.of(board.spot, board.model, item.strings);
            if (chain != null
                    && chain.cost() < least
                    && chain.pixels() <= item.pixels
                    && draft.loads.takes(board.cable, stream, board.model, null, chain)
                    && draft.powerTakes(board, chain.amps())) {
                best = item;
                cheapest = chain;
                least = chain.cost();
            }
        }
        if (best != null) {
            draft.set(board, port, cheapest, stream);
            items.remove(best);
        }
    }

    /** Onto new boards of as many jacks as it takes; streams with as many chains go together. */
    private boolean hang(List<Cable> jacks, List<List<Item>> streams, int controller) {
        int each = site.streams[controller];
        for (int from = 0; from < streams.size(); from += each) {
            Cable cable = jacks.get(from / each);
            List<List<Item>> here = streams.subList(from, Math.min(streams.size(), from + each));
            while (here.stream().anyMatch(items -> !items.isEmpty())) {
                if (cable.size == cable.boards.length || !hang(cable, here)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean hang(Cable cable, List<List<Item>> streams) {
        Item next = streams.stream()
                .flatMap(List::stream)
                .min(Comparator.comparingDouble(item -> draft.detour(cable, cable.size, item.spot)))
                .orElseThrow();
        if (!draft.mayHang(next.spot, next.model)
                || (site.idsMatter && cable.size > 0 && !Ids.enough(site, cable, next.model))) {
            return false;
        }
        Hung board = draft.hang(cable, cable.size, next.spot, next.model);
        for (int p = 0; p < board.ports.length; p++) {
            for (int s = 0; s < streams.size() && board.ports[p] == null; s++) {
                if (site.sockets.hears(board.model, p, s)) {
                    plug(board, p, s, streams.get(s));
                }
            }
        }
        return board.used > 0;
    }
}
