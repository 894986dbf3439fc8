package streamwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import streamwright.yard.Address;

/**
 * Names and IDs for the boards that have none: names B1, B2 ... in cable order; IDs up from 1 along the cable, 0 (the
 * state in which boards are shipped) last, unique across the yard while there are enough, else on their cable.
 */
final class Labels {
    private Labels() {}

    /** The same layout with a name on every board and an ID on every addressed one; kept ones are left alone. */
    static List<Layout.Run> of(List<Layout.Run> runs) {
        List<Slot> slots = new ArrayList<>();
        for (int c = 0; c < runs.size(); c++) {
            List<Layout.Hung> boards = runs.get(c).boards();
            for (int b = 0; b < boards.size(); b++) {
                slots.add(Slot.of(c, b, boards.get(b)));
            }
        }
        Map<Slot, Integer> ids = ids(slots);
        Set<String> taken = new HashSet<>();
        slots.forEach(slot -> {
            if (slot.board.name() != null) {
                taken.add(slot.board.name());
            }
        });
        List<List<Layout.Hung>> labelled = new ArrayList<>();
        runs.forEach(run -> labelled.add(new ArrayList<>()));
        int number = 1;
        for (Slot slot : slots) {
            String name = slot.board.name();
            while (name == null) {
                String free = "B" + number++;
                name = taken.add(free) ? free : null;
            }
            labelled.get(slot.cable).add(slot.board.named(name, ids.get(slot)));
        }
        List<Layout.Run> all = new ArrayList<>();
        for (int c = 0; c < runs.size(); c++) {
            all.add(new Layout.Run(runs.get(c).controller(), runs.get(c).jack(), labelled.get(c)));
        }
        return all;
    }

    /** A board by its place in the layout, so that equal boards stay apart, with the range of its IDs. */
    private record Slot(int cable, int index, Layout.Hung board, int least, int most) {
        static Slot of(int cable, int index, Layout.Hung board) {
            Address address = board.model().address();
            if (address instanceof Address.Switches binary) {
                return new Slot(cable, index, board, binary.least(), binary.most());
            }
            return address instanceof Address.Rotary rotary
                    ? new Slot(cable, index, board, rotary.least(), rotary.most())
                    : new Slot(cable, index, board, 0, -1);
        }

        boolean addressed() {
            return board.model().addressed();
        }
    }

    private static Map<Slot, Integer> ids(List<Slot> slots) {
        Map<Slot, Integer> ids = new HashMap<>();
        List<Slot> open = new ArrayList<>();
        for (Slot slot : slots) {
            Integer kept = slot.board.boardId();
            if (slot.addressed() && kept != null) {
                ids.put(slot, kept);
            } else if (slot.addressed()) {
                open.add(slot);
            }
        }
        Map<Slot, Integer> unique = unique(open, new HashSet<>(ids.values()));
        if (unique != null) {
            ids.putAll(unique);
            return ids;
        }
        int cables = 1 + slots.stream().mapToInt(Slot::cable).max().orElse(-1);
        for (int c = 0; c < cables; c++) {
            int cable = c;
            Set<Integer> taken = new HashSet<>();
            ids.forEach((slot, id) -> {
                if (slot.cable == cable) {
                    taken.add(id);
                }
            });
            List<Slot> here = open.stream().filter(slot -> slot.cable == cable).toList();
            Map<Slot, Integer> local = unique(here, taken);
            if (local != null) {
                ids.putAll(local);
            } else {
                // more boards than IDs: a broken rule whatever is given, and the audit's to tell
                here.forEach(slot -> ids.put(slot, Math.min(Math.max(1, slot.least()), slot.most())));
            }
        }
        return ids;
    }

    private static @Nullable Map<Slot, Integer> unique(List<Slot> slots, Set<Integer> taken) {
        Map<Slot, Integer> ids = inOrder(slots, taken, false);
        ids = ids != null ? ids : byRange(slots, taken, 1);
        ids = ids != null ? ids : inOrder(slots, taken, true);
        return ids != null ? ids : byRange(slots, taken, 0);
    }

    /** The lowest free ID for each in cable order; null where one finds none. */
    private static @Nullable Map<Slot, Integer> inOrder(List<Slot> slots, Set<Integer> taken, boolean zero) {
        Set<Integer> used = new HashSet<>(taken);
        Map<Slot, Integer> ids = new HashMap<>();
        for (Slot slot : slots) {
            int id = Math.max(1, slot.least());
            while (id <= slot.most() && used.contains(id)) {
                id++;
            }
            if (id > slot.most()) {
                id = 0;
                if (!zero || slot.least() > 0 || used.contains(0)) {
                    return null;
                }
            }
            used.add(id);
            ids.put(slot, id);
        }
        return ids;
    }

    /**
     * The same where models' ranges differ: each ID upwards to the board whose range ends first, which finds an
     * assignment if there is one (earliest deadline first; Jackson 1955).
     */
    private static @Nullable Map<Slot, Integer> byRange(List<Slot> slots, Set<Integer> taken, int from) {
        List<Slot> waiting = new ArrayList<>(slots);
        // stable: among equal ranges cable order stays
        waiting.sort(Comparator.comparingInt(Slot::most));
        Map<Slot, Integer> ids = new HashMap<>();
        for (int id = from; !waiting.isEmpty(); id++) {
            if (waiting.get(0).most() < id) {
                return null;
            }
            if (taken.contains(id)) {
                continue;
            }
            for (Slot slot : waiting) {
                if (slot.least() <= id) {
                    ids.put(slot, id);
                    waiting.remove(slot);
                    break;
                }
            }
        }
        return ids;
    }
}
