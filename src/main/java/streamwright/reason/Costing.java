package streamwright.reason;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Plan;
import streamwright.yard.BoardModel;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/**
 * What alternatives cost, so that they can be audited from the cheapest on. Where the same boards hang at the same spots
 * as before, only the cables that differ are completed: what owned boards and shared spots save is then the same on both
 * sides, and all else adds up cable by cable.
 */
final class Costing {
    private record Kind(BoardModel model, Spot spot) {}

    private final Yard yard;
    private final Ground ground;
    private final Layout before;
    private final double cost;
    private final Map<List<Integer>, Double> parts = new HashMap<>();

    Costing(Yard yard, Ground ground, Layout before, double cost) {
        this.yard = yard;
        this.ground = ground;
        this.before = before;
        this.cost = cost;
    }

    Alternative alternative(String what, Layout changed) {
        Set<Layout.Run> now = Collections.newSetFromMap(new IdentityHashMap<>());
        now.addAll(changed.cables());
        Set<Layout.Run> was = Collections.newSetFromMap(new IdentityHashMap<>());
        was.addAll(before.cables());
        List<Layout.Run> gone =
                before.cables().stream().filter(run -> !now.contains(run)).toList();
        List<Layout.Run> come =
                changed.cables().stream().filter(run -> !was.contains(run)).toList();
        boolean alike = kinds(gone).equals(kinds(come));
        Plan plan = Assembly.plan(yard, ground, alike ? new Layout(come) : changed);
        double whole = alike ? cost + plan.cost() - part(gone) : plan.cost();
        return new Alternative(what, yard, changed, whole, suspect(plan));
    }

    private static Map<Kind, Long> kinds(List<Layout.Run> runs) {
        return runs.stream()
                .flatMap(run -> run.boards().stream())
                .collect(Collectors.groupingBy(board -> new Kind(board.model(), board.spot()), Collectors.counting()));
    }

    private double part(List<Layout.Run> runs) {
        List<Integer> key = runs.stream().map(before.cables()::indexOf).toList();
        return parts.computeIfAbsent(
                key, k -> Assembly.plan(yard, ground, new Layout(runs)).cost());
    }

    private boolean suspect(Plan plan) {
        return plan.cables().stream()
                        .flatMap(cable -> cable.streams().stream())
                        .anyMatch(stream -> stream.pixels() > stream.limit())
                || plan.boards().stream()
                        .flatMap(board -> board.ports().stream())
                        .flatMap(port -> port.strings().stream())
                        .anyMatch(string -> string.nulls() > yard.rules().nullsMost());
    }
}
