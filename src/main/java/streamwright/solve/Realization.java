package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import streamwright.solve.Draft.Cable;
import streamwright.solve.Draft.Hung;

/** Makes a plan of a whole solution of the relaxation: cables from arcs, ports and streams for the strands. */
final class Realization {
    /** What came of it. */
    sealed interface Result {
        record Plan(Snapshot plan) implements Result {}

        /** A cable is longer than the rules allow. */
        record TooLong() implements Result {}

        /** The chains of one cable do not go into its streams. */
        record Unpackable(Contents contents) implements Result {}

        /** Some other rule is broken, or nothing was found in time. */
        record Unknown() implements Result {}
    }

    /** A cable in the relaxation's terms: its arcs, its spots, and the columns that hang there. */
    record Contents(List<int[]> arcs, List<Integer> spots, List<Master.Column> columns) {}

    private final Site site;
    private final Items items;
    private final Master master;
    private final Draft draft;

    Realization(Master master) {
        this.master = master;
        site = master.site;
        items = master.items;
        draft = new Draft(site);
    }

    Result result() {
        if (!trunks()) {
            return new Result.Unknown();
        }
        int[] given = new int[items.size];
        for (Cable cable : draft.cables) {
            if (cable.size == 0) {
                continue;
            }
            if (!draft.lengthsHold(cable)) {
                return new Result.TooLong();
            }
            Contents contents = contents(cable);
            Packing.Ending ending = pack(cable, contents, given);
            if (ending == Packing.Ending.IMPOSSIBLE) {
                return new Result.Unpackable(contents);
            }
            if (ending == Packing.Ending.UNKNOWN) {
                return new Result.Unknown();
            }
        }
        return draft.complete() && draft.loads.channelsHold()
                ? new Result.Plan(Snapshot.of(draft))
                : new Result.Unknown();
    }

    private boolean trunks() {
        int controllers = site.controllers.length;
        int[] count = new int[site.controllers.length];
        boolean[] visited = new boolean[site.spots.length];
        for (int c = 0; c < controllers; c++) {
            for (int first = 0; first < site.spots.length; first++) {
                if (Math.rint(master.point().arc()[c][first]) >= 1) {
                    Cable cable = jack(c, count[c]++);
                    int spot = first;
                    while (spot >= 0) {
                        if (visited[spot] || cable == null) {
                            return false;
                        }
                        visited[spot] = true;
                        if (!hang(cable, spot)) {
                            return false;
                        }
                        spot = next(controllers + spot);
                    }
                }
            }
        }
        return true;
    }

    private boolean hang(Cable cable, int spot) {
        for (int m = 0; m < site.offers.length; m++) {
            for (int i = 0; i < Math.rint(master.point().board()[spot][m]); i++) {
                boolean told = cable.size == 0
                        || (site.model(m).addressed()
                                && site.model(cable.boards[0].model).addressed()
                                && (!site.idsMatter || Ids.enough(site, cable, m)));
                if (cable.size == cable.boards.length || !told) {
                    return false;
                }
                draft.hang(cable, cable.size, spot, m);
            }
        }
        return true;
    }

    private @Nullable Cable jack(int controller, int index) {
        int seen = 0;
        for (Cable cable : draft.cables) {
            if (cable.controller == controller && seen++ == index) {
                return cable;
            }
        }
        return null;
    }

    private int next(int node) {
        for (int to = 0; to < site.spots.length; to++) {
            if (Math.rint(master.point().arc()[node][to]) >= 1) {
                return to;
            }
        }
        return -1;
    }

    private Contents contents(Cable cable) {
        List<int[]> arcs = new ArrayList<>();
        List<Integer> spots = new ArrayList<>();
        int node = cable.controller;
        for (int i = 0; i < cable.size; i++) {
            int spot = cable.boards[i].spot;
            if (!spots.contains(spot)) {
                arcs.add(new int[] {node, spot});
                spots.add(spot);
                node = site.controllers.length + spot;
            }
        }
        List<Master.Column> columns = master.columns.stream()
                .filter(column -> Math.rint(column.value) >= 1 && spots.contains(column.spot))
                .toList();
        return new Contents(arcs, spots, columns);
    }

    /** Shares the strands of a cable's spots out over its boards' ports. */
    private Packing.Ending pack(Cable cable, Contents contents, int[] given) {
        Packing packing = new Packing(draft, cable);
        contents.columns.stream()
                .sorted((a, b) -> Integer.compare(lit(b), lit(a)))
                .forEach(column -> {
                    for (int copy = 0; copy < Math.rint(column.value); copy++) {
                        packing.add(
                                column.spot,
                                Arrays.stream(column.order)
                                        .map(item -> items.members[item][given[item]++])
                                        .toArray());
                    }
                });
        return packing.solve();
    }

    private int lit(Master.Column column) {
        int lit = 0;
        for (int item : column.order) {
            lit += site.pixels[items.sample[item]];
        }
        return lit;
    }

    /** A board with nothing on it would be taken down; a plan has none. */
    static boolean allUsed(Cable cable) {
        for (int i = 0; i < cable.size; i++) {
            Hung board = cable.boards[i];
            if (board.used == 0) {
                return false;
            }
        }
        return true;
    }
}
