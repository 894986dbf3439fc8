package streamwright.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import streamwright.plan.Supply;
import streamwright.yard.Spot;

/** The power supplies: one a place with boards, and one a voltage where boards of several meet at one place. */
final class Supplies {
    /** A sum that makes whole watts must not be rounded up by its last bits. */
    private static final double ROUNDING = 1e-9;

    private record Where(Spot spot, double volts) {}

    private static final class Load {
        private double amps;
        private final List<String> boards = new ArrayList<>();
    }

    private final Map<Where, Load> loads = new LinkedHashMap<>();

    void add(Spot spot, double volts, String board, double amps) {
        Load load = loads.computeIfAbsent(new Where(spot, volts), where -> new Load());
        load.amps += amps;
        load.boards.add(board);
    }

    /** Watts at this share of a supply's full load. */
    List<Supply> list(double fuseLoad) {
        return loads.entrySet().stream()
                .map(entry -> supply(entry.getKey(), entry.getValue(), fuseLoad))
                .toList();
    }

    private static Supply supply(Where where, Load load, double fuseLoad) {
        double watts = load.amps == 0 ? 0 : load.amps * where.volts / fuseLoad;
        Spot spot = where.spot;
        return new Supply(
                spot.at(),
                spot.id(),
                where.volts,
                load.amps,
                Whole.of((long) Math.ceil(watts - ROUNDING)),
                load.boards);
    }
}
