package streamwright.solve;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import streamwright.yard.BoardModel;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Follow;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Prop;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/**
 * A {@link TinyGarden} as a constraint model for a solver that is not the planner's: a string comes after a port or
 * after another string, a board after a jack or after another board; places, lengths, null pixels and money follow by
 * tables. The model knows yard files alone, and is solved for each number of boards that the yard allows.
 */
final class ChocoPlan {
    /** Money is counted in whole numbers of this part; each length is rounded to it once. */
    static final int PARTS = 10_000;

    private final Model model = new Model();
    private final Yard yard;
    private final Controller controller;
    private final ControllerModel source;
    private final BoardModel board;
    private final PixelString[] strings;
    private final Spot[] places;
    private final int boards;
    private final int ports;
    private final IntVar[] place;
    private final IntVar[] jack;

    private ChocoPlan(Yard yard, int boards) {
        this.yard = yard;
        this.boards = boards;
        controller = yard.controllers().get(0);
        source = controller.model();
        board = yard.boards().get(0).model();
        strings = yard.strings().toArray(PixelString[]::new);
        places = yard.places().toArray(Spot[]::new);
        ports = boards * board.ports().size();
        place = model.intVarArray(boards, 0, places.length - 1);
        jack = model.intVarArray(boards, 0, source.jacks() - 1);
    }

    /** Money of the cheapest plan, empty where there is none. */
    static OptionalDouble optimum(Yard yard) {
        int best = Integer.MAX_VALUE / 4;
        boolean found = false;
        for (int n = 1; n <= Math.min(yard.strings().size(), yard.boardCount().most()); n++) {
            int cost = new ChocoPlan(yard, n).cheapest(best);
            found |= cost < best;
            best = Math.min(best, cost);
        }
        return found ? OptionalDouble.of((double) best / PARTS) : OptionalDouble.empty();
    }

    /** The least cost below a limit, or the limit. */
    private int cheapest(int limit) {
        IntVar cost = model.intVar(0, limit - 1);
        IntVar[] comesAfter = model.intVarArray(strings.length, 0, ports + strings.length - 1);
        IntVar[] hangsAfter = model.intVarArray(boards, 0, source.jacks() + boards - 1);
        model.sum(joined(wires(comesAfter), trunk(hangsAfter), boxes()), "=", cost)
                .post();
        model.getSolver().setSearch(Search.domOverWDegSearch(joined(place, hangsAfter, comesAfter)));
        model.setObjective(Model.MINIMIZE, cost);
        int least = limit;
        while (model.getSolver().solve()) {
            least = cost.getValue();
        }
        return least;
    }

    /** Money of each lead or jumper; ports, chains, null pixels and streams are stated on the way. */
    private IntVar[] wires(IntVar[] comesAfter) {
        int n = strings.length;
        model.allDifferent(comesAfter).post();
        IntVar[] port = model.intVarArray(n, 0, ports - 1);
        IntVar[] turn = model.intVarArray(n, 1, n);
        IntVar[] begin = joined(of(ports, p -> place[p / board.ports().size()]), of(n, s -> at(places.length + s)));
        IntVar[] nulls = model.intVarArray(n, 0, yard.rules().nullsMost());
        IntVar[] money = new IntVar[n];
        for (int s = 0; s < n; s++) {
            int to = s;
            model.element(port[s], joined(of(ports, this::at), port), comesAfter[s], 0)
                    .post();
            model.element(model.intView(1, turn[s], -1), joined(of(ports, p -> at(0)), turn), comesAfter[s], 0)
                    .post();
            for (int t = 0; t < n; t++) {
                if (!mayFollow(t, s)) {
                    model.arithm(comesAfter[s], "!=", ports + t).post();
                }
            }
            IntVar from = model.intVar(0, places.length + n - 1);
            model.element(from, begin, comesAfter[s], 0).post();
            model.element(nulls[s], table(places.length + n, f -> nulls(f, to)), from)
                    .post();
            money[s] = looked(from, places.length + n, f -> parts(price(f) * lead(f, to)));
        }
        for (int b = 0; b < boards; b++) {
            int first = b * board.ports().size();
            model.among(
                            model.intVar(1, n),
                            port,
                            IntStream.range(first, first + board.ports().size()).toArray())
                    .post();
        }
        streams(port, nulls);
        return money;
    }

    /** What each string takes of the stream that its port hears, on the cable of its board. */
    private void streams(IntVar[] port, IntVar[] nulls) {
        int limit = Math.min(source.streamMost(), (int) pixelsInTime());
        BoolVar[][] on = new BoolVar[strings.length][source.jacks() * source.streams()];
        for (int s = 0; s < strings.length; s++) {
            IntVar hears = looked(
                    port[s], ports, p -> board.ports().get(p % board.ports().size()) - 1);
            model.arithm(hears, "<", source.streams()).post();
            IntVar cable = model.intVar(0, source.jacks() - 1);
            model.element(cable, of(ports, p -> jack[p / board.ports().size()]), port[s], 0)
                    .post();
            for (int at = 0; at < on[s].length; at++) {
                on[s][at] = model.and(
                                model.arithm(cable, "=", at / source.streams()),
                                model.arithm(hears, "=", at % source.streams()))
                        .reify();
            }
        }
        for (int at = 0; at < on[0].length; at++) {
            IntVar[] taken = new IntVar[strings.length];
            for (int s = 0; s < strings.length; s++) {
                taken[s] = model.intVar(0, limit);
                model.times(model.intView(1, nulls[s], strings[s].pixels()), on[s][at], taken[s])
                        .post();
            }
            model.sum(taken, "<=", limit).post();
        }
    }

    /** Money of each hop, with that of its cable where the hop is the first. */
    private IntVar[] trunk(IntVar[] hangsAfter) {
        int jacks = source.jacks();
        model.allDifferent(hangsAfter).post();
        IntVar[] turn = model.intVarArray(boards, 1, source.boardsPerCable());
        IntVar[] begin = joined(of(jacks, j -> at(places.length)), place);
        IntVar[] money = new IntVar[boards];
        for (int b = 0; b < boards; b++) {
            model.element(jack[b], joined(of(jacks, this::at), jack), hangsAfter[b], 0)
                    .post();
            model.element(model.intView(1, turn[b], -1), joined(of(jacks, j -> at(0)), turn), hangsAfter[b], 0)
                    .post();
            IntVar from = model.intVar(0, places.length);
            model.element(from, begin, hangsAfter[b], 0).post();
            IntVar ends = model.intVar(0, places.length * (places.length + 1) - 1);
            model.scalar(new IntVar[] {from, place[b]}, new int[] {places.length, 1}, "=", ends)
                    .post();
            money[b] =
                    looked(ends, places.length * (places.length + 1), e -> hop(e / places.length, e % places.length));
        }
        return money;
    }

    /** Money of the boards, and of each spot's box; boards are alike, so they go by place. */
    private IntVar[] boxes() {
        for (int b = 1; b < boards; b++) {
            model.arithm(place[b - 1], "<=", place[b]).post();
        }
        IntVar[] money = new IntVar[places.length];
        for (int p = 0; p < places.length; p++) {
            IntVar hung = model.intVar(0, Math.min(boards, places[p].most()));
            model.count(p, place, hung).post();
            int box = parts(places[p].price());
            money[p] = looked(hung, boards + 1, count -> count > 0 ? box : 0);
        }
        return joined(money, new IntVar[] {
            at(boards * parts(yard.boards().get(0).price()))
        });
    }

    private int hop(int from, int to) {
        boolean first = from == places.length;
        Point start = first ? controller.at() : places[from].at();
        double length = yard.rules().slack() * distance(start, places[to].at())
                + 2 * yard.rules().trunkLoop();
        return parts(length * yard.costs().trunk())
                + (first ? parts(yard.costs().cable()) : 0);
    }

    private double lead(int from, int string) {
        Point start = from < places.length ? places[from].at() : strings[from - places.length].tail();
        return yard.rules().slack() * distance(start, strings[string].feed())
                + yard.rules().leadLoop();
    }

    private double price(int from) {
        return from < places.length ? yard.costs().lead() : yard.costs().jumper();
    }

    private int nulls(int from, int string) {
        double length = lead(from, string);
        double far = yard.rules().jumperData();
        double clean = from < places.length ? yard.rules().leadData() : far;
        return (int) Math.max(0, Math.ceil((length - clean) / far - 1e-9));
    }

    private boolean mayFollow(int before, int string) {
        Prop one = prop(before);
        Prop other = prop(string);
        boolean same = one.equals(other) && one.follow() != Follow.NONE;
        return before != string && (same || (one.follow() == Follow.ANY && other.follow() == Follow.ANY));
    }

    private Prop prop(int string) {
        return yard.props().stream()
                .filter(prop -> prop.id().equals(strings[string].prop()))
                .findFirst()
                .orElseThrow();
    }

    private double pixelsInTime() {
        var kind = yard.streamKinds().get(0);
        return Math.floor((1e6 / yard.frameRate() - kind.reset()) / (kind.bits() * kind.bitTime()));
    }

    private static double distance(Point a, Point b) {
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    private static int parts(double money) {
        return (int) Math.round(money * PARTS);
    }

    private IntVar at(int value) {
        return model.intVar(value);
    }

    /** A variable that a table gives for another; money has wide, sparse domains. */
    private IntVar looked(IntVar index, int size, IntUnaryOperator value) {
        int[] table = table(size, value);
        IntVar found = model.intVar(0, Arrays.stream(table).max().orElse(0), true);
        model.element(found, table, index).post();
        return found;
    }

    private static int[] table(int size, IntUnaryOperator value) {
        return IntStream.range(0, size).map(value).toArray();
    }

    private static IntVar[] of(int size, IntFunction<IntVar> each) {
        return IntStream.range(0, size).mapToObj(each).toArray(IntVar[]::new);
    }

    private static IntVar[] joined(IntVar[]... parts) {
        return Arrays.stream(parts).flatMap(Arrays::stream).toArray(IntVar[]::new);
    }
}
