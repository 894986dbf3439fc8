package streamwright.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import streamwright.yard.Drives;

/** The rows of yards in which not all strings may share a board, or some boards share no cable. */
final class Groups {
    private Groups() {}

    /** Room of a board for things of its sort: ports for strands, outputs, or one panel. */
    private static int room(Site site, int model) {
        return switch (site.model(model).drives()) {
            case PIXELS -> site.ports(model);
            case OUTPUTS -> site.model(model).outputs();
            case PANEL -> 1;
        };
    }

    /** What a thing takes of that room where it leads a strand. */
    private static int size(Site site, int string) {
        return Math.max(1, site.outputs[string]);
    }

    static boolean someAlone(Site site) {
        for (boolean addressed : site.sockets.addressed) {
            if (!addressed) {
                return true;
            }
        }
        return false;
    }

    /** Each board without address is the first of a cable. */
    static Row alone(Site site, int at) {
        return new Row() {

            @Override
            public double arc(int from, int to) {
                return to == at && from < site.controllers.length ? 1 : 0;
            }

            @Override
            public boolean hasArcs() {
                return true;
            }

            @Override
            public double board(int spot, int model) {
                return spot == at && !site.sockets.addressed[model] ? -1 : 0;
            }
        };
    }

    /** A spot's boards of a group have room for all of that group that hangs there. */
    static Row sockets(Site site, Items items, int at, int group) {
        return new Row() {

            @Override
            public double head(int item, int spot) {
                int string = items.sample[item];
                return spot == at && site.group[string] == group ? -size(site, string) : 0;
            }

            @Override
            public boolean hasHeads() {
                return true;
            }

            @Override
            public double board(int spot, int model) {
                return spot == at && site.groupOf[model] == group ? room(site, model) : 0;
            }
        };
    }

    /** Boards come whole: props of outputs, each whole on one board, need so many of them, and each panel one. */
    static List<Row> boards(Site site) {
        List<Row> rows = new ArrayList<>();
        for (Drives sort : List.of(Drives.OUTPUTS, Drives.PANEL)) {
            int[] sizes = IntStream.range(0, site.strings.length)
                    .filter(i -> site.sort[i] == sort)
                    .map(i -> size(site, i))
                    .toArray();
            int room = IntStream.range(0, site.offers.length)
                    .filter(m -> site.drives(m, sort))
                    .map(m -> room(site, m))
                    .max()
                    .orElse(0);
            if (sizes.length > 0 && room > 0) {
                rows.add(atLeast(site, sort, bins(sizes, room)));
            }
        }
        return rows;
    }

    private static Row atLeast(Site site, Drives sort, int boards) {
        return new Row() {
            @Override
            public double low() {
                return boards;
            }

            @Override
            public double board(int spot, int model) {
                return site.drives(model, sort) ? 1 : 0;
            }
        };
    }

    /** Fewest bins at least: the bound L2 of Martello and Toth (Discrete Applied Mathematics 28, 1990). */
    static int bins(int[] sizes, int room) {
        int most = 0;
        for (int least = 0; 2 * least <= room; least++) {
            int small = least;
            long large = Arrays.stream(sizes).filter(s -> s > room - small).count();
            long middle = Arrays.stream(sizes)
                    .filter(s -> 2 * s > room && s <= room - small)
                    .count();
            long middleSum = Arrays.stream(sizes)
                    .filter(s -> 2 * s > room && s <= room - small)
                    .sum();
            long smallSum = Arrays.stream(sizes)
                    .filter(s -> s >= small && 2 * s <= room)
                    .sum();
            long over = smallSum - (middle * room - middleSum);
            most = (int) Math.max(most, large + middle + Math.max(0, (over + room - 1) / room));
        }
        return most;
    }
}
