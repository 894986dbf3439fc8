package streamwright.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;
import streamwright.solve.Filling.Filled;
import streamwright.solve.Patterns.Room;
import streamwright.solve.Place.Item;
import streamwright.solve.Place.Passing;
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
        Place place = new Place(draft, seed);
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
                draft.takeDownWhole(cable.boards[cable.size - 1]);
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
            for (int p = 0; p < board.ports.length && board.cable == passing.cable(); p++) {
                if (board.ports[p] == null && site.sockets.hears(board.model, p, passing.stream())) {
                    plug(board, p, passing.stream(), items);
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
            Chain chain = draft.chains.of(board.spot, board.model, item.strings());
            if (chain != null
                    && chain.cost() < least
                    && chain.pixels() <= item.pixels()
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
                .min(Comparator.comparingDouble(item -> draft.detour(cable, cable.size, item.spot())))
                .orElseThrow();
        if (!draft.mayHang(next.spot(), next.model())
                || (site.idsMatter && cable.size > 0 && !Ids.enough(site, cable, next.model()))) {
            return false;
        }
        Hung board = draft.hang(cable, cable.size, next.spot(), next.model());
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
