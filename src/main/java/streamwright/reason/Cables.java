package streamwright.reason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import streamwright.layout.Layout;
import streamwright.yard.Controller;
import streamwright.yard.Point;

/** One cable in another order, as one with another cable, in two parts, or from another jack. */
final class Cables {
    private static final int OTHERS = 2;

    private final Base base;

    Cables(Base base) {
        this.base = base;
    }

    static String name(Layout.Run run) {
        return name(run.controller(), run.jack());
    }

    private static String name(Controller controller, int jack) {
        return controller.id() + " jack " + jack;
    }

    /** The next shortest order, and the present one from its far end. */
    List<Alternative> orders(int cable) {
        Layout.Run run = base.layout.cables().get(cable);
        int n = run.boards().size();
        if (n < 2) {
            return List.of();
        }
        List<Alternative> alternatives = new ArrayList<>();
        Layout.Run next = Tour.next(base.measures, run);
        int[] backwards = new int[n];
        Arrays.setAll(backwards, i -> n - 1 - i);
        Layout.Run reversed = Tour.ordered(run, backwards);
        alternatives.add(base.alternative("the reversed order", replaced(cable, reversed)));
        if (!next.equals(reversed) && !next.equals(run)) {
            alternatives.add(base.alternative("the order " + order(run, next), replaced(cable, next)));
        }
        return alternatives;
    }

    /** Only what differs, so that the order of a long cable stays readable. */
    private static String order(Layout.Run run, Layout.Run other) {
        int first = 0;
        while (run.boards().get(first).equals(other.boards().get(first))) {
            first++;
        }
        int last = run.boards().size() - 1;
        while (run.boards().get(last).equals(other.boards().get(last))) {
            last--;
        }
        return String.join(
                " then ",
                other.boards().subList(first, last + 1).stream()
                        .map(board -> String.valueOf(board.name()))
                        .toList());
    }

    private Layout replaced(int cable, Layout.Run run) {
        return new Layout(Edits.replaced(base.layout.cables(), cable, run));
    }

    /** Together with each of the cables whose boards are nearest. */
    List<Alternative> merged(int cable) {
        List<Layout.Run> runs = base.layout.cables();
        Layout.Run run = runs.get(cable);
        record Way(int cable, double apart) {}
        List<Way> ways = new ArrayList<>();
        for (int c = 0; c < runs.size(); c++) {
            if (c != cable) {
                ways.add(new Way(c, apart(run, runs.get(c))));
            }
        }
        return ways.stream()
                .sorted(Comparator.comparingDouble(Way::apart))
                .limit(OTHERS)
                .map(way -> {
                    List<Layout.Hung> boards = new ArrayList<>(run.boards());
                    boards.addAll(runs.get(way.cable).boards());
                    Layout both = replaced(cable, new Layout.Run(run.controller(), run.jack(), boards));
                    Layout one = Edits.run(both, way.cable, other -> List.of());
                    return base.alternative("joining it to " + name(runs.get(way.cable)), base.settle.all(one));
                })
                .toList();
    }

    private static double apart(Layout.Run run, Layout.Run other) {
        double least = Double.POSITIVE_INFINITY;
        for (Layout.Hung board : run.boards()) {
            Point at = board.spot().at();
            for (Layout.Hung far : other.boards()) {
                least = Math.min(least, Measures.straight(at, far.spot().at()));
            }
        }
        return least;
    }

    /** Cut where a second cable adds least. Empty where no jack is free or there is one board. */
    List<Alternative> split(int cable) {
        Layout.Run run = base.layout.cables().get(cable);
        OptionalInt jack = NewBoard.jack(base.layout, run.controller());
        if (jack.isEmpty() || run.boards().size() < 2) {
            return List.of();
        }
        int cut = 1;
        for (int at = 2; at < run.boards().size(); at++) {
            cut = added(run, at) < added(run, cut) ? at : cut;
        }
        int behind = cut;
        Layout shortened = Edits.run(base.layout, cable, boards -> boards.subList(0, behind));
        Layout.Run second = new Layout.Run(
                run.controller(),
                jack.getAsInt(),
                run.boards().subList(behind, run.boards().size()));
        String what = "a second cable from " + name(second) + " to "
                + second.boards().get(0).name() + " onwards";
        return List.of(base.alternative(what, Edits.run(shortened, second)));
    }

    private double added(Layout.Run run, int cut) {
        Point to = run.boards().get(cut).spot().at();
        return base.measures.hop(run.controller().at(), to)
                - base.measures.hop(run.boards().get(cut - 1).spot().at(), to);
    }

    /** A free jack of its own controller, and one of each other controller. */
    List<Alternative> jacks(int cable) {
        Layout.Run run = base.layout.cables().get(cable);
        List<Alternative> alternatives = new ArrayList<>();
        for (Controller controller : base.yard.controllers()) {
            OptionalInt jack = NewBoard.jack(base.layout, controller);
            if (jack.isPresent()) {
                Layout.Run moved = new Layout.Run(controller, jack.getAsInt(), run.boards());
                boolean home = controller.equals(run.controller());
                Layout.Run routed = home ? moved : Tour.best(base.measures, moved);
                alternatives.add(base.alternative(name(moved), replaced(cable, routed)));
            }
        }
        return alternatives;
    }
}
