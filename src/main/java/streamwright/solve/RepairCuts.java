package streamwright.solve;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Tells the repair model what it does not know: lengths of hops and cables, and what a port cannot power. */
final class RepairCuts {
    private final RepairModel model;
    private final Site site;
    private final Set<String> injected;
    private final double injection;

    /** Of chains and their places: what was told already. */
    private final Set<String> known = new HashSet<>();

    /** Of each chain that may need an injection: that it hangs where it does. */
    private final Map<String, BoolVar> needing = new HashMap<>();

    /** @param injected strings to which the old plan brings power: to all others an injection is new */
    RepairCuts(RepairModel model, Set<String> injected) {
        this.model = model;
        site = model.site;
        this.injected = injected;
        injection = site.yard.work().injection();
    }

    /** What the model learns from a solution. */
    enum Learned {
        NOTHING,
        /** Chains of it need injections that were not counted: it takes more than it showed. */
        MORE,
        /** It breaks a rule, and is no solution any more. */
        FORBIDDEN
    }

    Learned learn(RepairFound found) {
        Learned learned = Learned.NOTHING;
        for (RepairFound.CableOf cable : found.cables) {
            learned = lengths(found, cable) ? Learned.FORBIDDEN : learned;
        }
        for (RepairFound.ChainOn chain : found.chains) {
            Learned power = power(found, chain);
            learned = power.compareTo(learned) > 0 ? power : learned;
        }
        return learned;
    }

    private int spot(RepairFound found, int board) {
        return model.boards.get(board).spots()[place(found, board)];
    }

    private static int place(RepairFound found, int board) {
        return Objects.requireNonNull(found.place.get(board));
    }

    private BoolVar at(RepairFound found, int board) {
        return model.boards.get(board).at()[place(found, board)];
    }

    private boolean lengths(RepairFound found, RepairFound.CableOf cable) {
        List<Literal> way = new ArrayList<>();
        double length = 0;
        int from = cable.jack();
        for (int b : cable.boards()) {
            int to = model.jacks + b;
            Literal off = Objects.requireNonNull(model.arcs.get(from * model.nodes() + to))
                    .not();
            List<Literal> hop = new ArrayList<>(List.of(off, at(found, b).not()));
            double step;
            if (from < model.jacks) {
                step = site.hopFrom(model.jackController[from], spot(found, b));
            } else {
                hop.add(at(found, from - model.jacks).not());
                step = site.hop(spot(found, from - model.jacks), spot(found, b));
            }
            if (step > site.hopMost) {
                model.cp.addBoolOr(hop);
                return true;
            }
            way.addAll(hop);
            length += step;
            if (length > site.cableMost) {
                model.cp.addBoolOr(way);
                return true;
            }
            from = to;
        }
        return false;
    }

    /** That a chain's wires are there the model knows; what is left is power. */
    private Learned power(RepairFound found, RepairFound.ChainOn chain) {
        int[] strings = chain.strings().stream().mapToInt(Integer::intValue).toArray();
        if (!model.pixels(strings[0])) {
            return Learned.NOTHING;
        }
        double price = price(model.boards.get(chain.board()).model(), spot(found, chain.board()), strings);
        if (price == 0) {
            return Learned.NOTHING;
        }
        boolean never = Double.isInfinite(price);
        boolean fresh = chain.strings().stream()
                .noneMatch(i -> injected.contains(Lying.name(site.strings[i].prop(), site.strings[i].number())));
        if (!never && !fresh) {
            return Learned.NOTHING;
        }
        if (model.scope != RepairModel.Scope.ALL && strings.length > 1) {
            apart(strings);
        }
        if (!everywhere(strings, fresh)) {
            return Learned.NOTHING;
        }
        return never ? Learned.FORBIDDEN : Learned.MORE;
    }

    /** Price of the injections that a chain needs where there is a lead to it; infinite where none would do. */
    private double price(int of, int spot, int[] strings) {
        double lead = Objects.requireNonNull(site.lead(spot, strings[0])).length();
        return site.injections(spot, site.variant(of, strings[0]), strings, lead);
    }

    /**
     * Tells what a chain needs wherever it might be, so that none of its other places has to be found first.
     *
     * @param fresh whether no injection that it may need was there before
     * @return whether any of it was new
     */
    private boolean everywhere(int[] strings, boolean fresh) {
        Map<List<Integer>, Double> prices = new HashMap<>();
        boolean added = false;
        for (int b = 0; b < model.boards.size(); b++) {
            RepairModel.Candidate board = model.boards.get(b);
            for (int s = 0; s < board.spots().length; s++) {
                int spot = board.spots()[s];
                if (site.lead(spot, strings[0]) == null) {
                    continue;
                }
                double price = prices.computeIfAbsent(
                        List.of(board.model(), spot), place -> price(board.model(), spot, strings));
                boolean never = Double.isInfinite(price);
                if (never || (fresh && price > 0)) {
                    added |= chain(b, board.at()[s], strings, never);
                }
            }
        }
        return added;
    }

    /** On any port of the board: not at all, or not without an injection. */
    private boolean chain(int board, BoolVar at, int[] strings, boolean never) {
        BoolVar[] heads = model.head[strings[0]][board];
        String told = Arrays.toString(strings);
        if (heads == null || !known.add(board + " " + at.getIndex() + " " + told)) {
            return false;
        }
        BoolVar needs = never ? null : needs(told);
        for (BoolVar head : heads) {
            List<Literal> clause = new ArrayList<>(List.of(head.not(), at.not()));
            for (int i = 1; i < strings.length; i++) {
                BoolVar follows = model.behind.get(strings[i - 1] * site.strings.length + strings[i]);
                clause.add(Objects.requireNonNull(follows).not());
            }
            clause.add(model.last[strings[strings.length - 1]].not());
            if (needs != null) {
                clause.add(needs);
            }
            model.cp.addBoolOr(clause);
        }
        return true;
    }

    private BoolVar needs(String chain) {
        return needing.computeIfAbsent(chain, key -> {
            BoolVar needs = model.bool();
            model.work.addTerm(needs, model.scaled(injection));
            return needs;
        });
    }

    /** Not all of these on one port, in whatever order: where this is no proof, but spares many tries. */
    private void apart(int[] strings) {
        LinearExprBuilder together = LinearExpr.newBuilder();
        for (int before : strings) {
            for (int next : strings) {
                BoolVar follows = model.behind.get(before * site.strings.length + next);
                if (follows != null) {
                    together.add(follows);
                }
            }
        }
        model.cp.addLessOrEqual(together, strings.length - 2L);
    }

    /** Cuts off this layout alone. */
    void forbidThis(RepairFound found) {
        model.cp.addBoolOr(found.literals.stream().map(Literal::not).toArray(Literal[]::new));
    }
}
