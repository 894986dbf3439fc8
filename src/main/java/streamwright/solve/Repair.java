package streamwright.solve;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Plan;
import streamwright.solve.RepairModel.Scope;
import streamwright.yard.Drives;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/**
 * Mends every broken rule of an installed plan with the least work, then at the least cost.
 *
 * <p>The bound of the work is a theorem. {@link RepairModel} is a relaxation of all repairs with at most {@code k} new
 * boards of each model; a repair with more takes at least {@code k + 1} times a board and a hop, and a lead for each
 * string that no longer is where it was, of which each new board carries one. What a cut takes away either breaks a rule
 * (lengths, power), or is one layout whose own least work is known and enters the bound. So the bound is the least of
 * three: what the solver proves of all layouts left, the work of the layouts looked at, and that of more boards.
 */
public final class Repair {
    /** So many strings need no search in parts. */
    private static final int TINY = 8;

    /** Ways of the cables that are tried with ports changed, and with strings moved. */
    private static final int WAYS = 6;

    private static final int STRING_WAYS = 2;

    /** Strings of a yard that is not searched as a whole. */
    private static final int LARGE = 130;

    /** New boards of a model beyond those that seem to be needed, at most. */
    private static final int MORE_BOARDS = 3;

    /** First repairs that are tried where there are outputs or panels, and their share of the time. */
    private static final int PATCHES = 200;

    private static final double PATCHES_SHARE = 0.6;

    private static final int REFINEMENTS = 12;

    private static final int IDLE_MOST = 3;

    private static final int CHEAPER_ROUNDS = 40;

    private final Yard yard;
    private final Ground ground;
    private final Plan old;
    private final Site site;
    private final Installed installed;
    private final Set<Keep> keep;
    private final Effort effort;
    private final Work minutes;
    private final double unit;
    private final RepairLook looks;
    private final RepairFrozen freezing;
    private final RepairSolver solving;
    private boolean[] frozen;
    private double bestShown;
    private Scope bestScope = Scope.ALL;
    private Set<Installed.Hop> bestTrunk = Set.of();
    private boolean[] bestFrozen = {};
    private double bound;

    private Repair(Yard yard, Ground ground, Plan old, Site site, Set<Keep> keep, Repaired.Judge judge, Effort effort) {
        this.yard = yard;
        this.ground = ground;
        this.old = old;
        this.site = site;
        this.keep = keep;
        this.effort = effort;
        installed = new Installed(site, old);
        minutes = yard.work();
        unit = RepairSolver.unit(minutes);
        looks = new RepairLook(site, ground, old, keep, judge);
        freezing = new RepairFrozen(site, installed);
        solving = new RepairSolver(effort);
        frozen = new boolean[installed.boards.size()];
    }

    /**
     * Repairs a plan.
     *
     * @param old may be broken, or made by hand
     * @param keep what must not change
     */
    public static Repaired of(Yard yard, Ground ground, Plan old, Set<Keep> keep, Repaired.Judge judge, Budget budget) {
        long begin = System.nanoTime();
        Site site = new Site(yard, ground);
        List<Outcome.Obstruction> obstructions = Obstructions.of(site);
        if (!obstructions.isEmpty()) {
            return new Repaired.Impossible(obstructions);
        }
        Effort effort = new Effort(
                begin + (long) (budget.seconds() * 1e9),
                0,
                Math.max(1, budget.workers()),
                budget.seed(),
                budget.interrupted());
        Natives.load();
        return new Repair(yard, ground, old, site, keep, judge, effort).run(begin);
    }

    private Repaired run(long begin) {
        // whatever is done, these strings are plugged anew and these boards come down
        raise(minutes.lead() * forced() + minutes.board() * installed.lost);
        int news = firstNews();
        if (Arrays.stream(site.sort).anyMatch(sort -> sort != Drives.PIXELS)) {
            // the model knows of no outputs and panels, so what it would prove of the rest is no bound
            patch(PATCHES);
            return ended(news, false, begin);
        }
        boolean tiny = site.strings.length <= TINY;
        if (!tiny && keep.isEmpty()) {
            patch(1);
        }
        if (!tiny) {
            TrunkMoves moves = new TrunkMoves(site, installed, RepairModel.jackControllers(site));
            boolean large = site.strings.length > LARGE;
            if (large) {
                frozen = freezing.far(moves.full());
            }
            List<TrunkMoves.Way> ways = moves.best(WAYS);
            for (TrunkMoves.Way way : ways) {
                search(news, Scope.PORTS, way.hops(), frozen, 0.13);
            }
            refine(news);
            if (!large) {
                search(news, Scope.TRUNK, Set.of(), frozen, 0.25);
            }
            for (TrunkMoves.Way way : ways.subList(0, Math.min(STRING_WAYS, ways.size()))) {
                search(news, Scope.STRINGS, way.hops(), frozen, 0.2);
            }
            refine(news);
            if (large) {
                return ended(news, false, begin);
            }
        }
        int enough = tiny ? site.strings.length : Math.min(enough(news), news + MORE_BOARDS);
        boolean ended = search(enough, Scope.ALL, Set.of(), frozen, 0.75);
        boolean impossible = ended && looks.best() == null && beyond(enough) == Double.POSITIVE_INFINITY;
        return ended(tiny ? enough : news, impossible, begin);
    }

    /** Keeps what can stay and puts the rest to its cheapest places, in several orders. */
    private void patch(int tries) {
        Patch patch = new Patch(yard, old, site);
        double enough = effort.secondsLeft() * (1 - PATCHES_SHARE);
        for (int round = 0; round < tries && (round == 0 || effort.secondsLeft() > enough); round++) {
            Layout patched = patch.filled(effort.seed() + round);
            if (patched != null) {
                looks.look(patched);
            }
        }
        if (looks.best() == null && keep.isEmpty()) {
            Layout planned = patch.planned(ground, effort);
            if (planned != null) {
                looks.look(planned);
            }
        }
    }

    /**
     * Undoes what the best repair changes without need: among the boards that it touches, and then with a few more,
     * looks for less work on the same cables.
     */
    private void refine(int news) {
        SplittableRandom random = new SplittableRandom(effort.seed());
        int idle = 0;
        for (int round = 0;
                looks.best() != null && round < REFINEMENTS && idle < IDLE_MOST && !effort.stopped();
                round++) {
            double before = looks.bestWork();
            Plan best = Objects.requireNonNull(looks.best());
            boolean[] still = freezing.untouched(best);
            for (int more = 0; more < Math.min(idle, still.length); more++) {
                still[random.nextInt(still.length)] = false;
            }
            for (int b = 0; b < still.length; b++) {
                still[b] |= frozen[b];
            }
            search(news, round % 2 == 0 ? Scope.PORTS : Scope.STRINGS, freezing.trunk(best), still, 0.07);
            idle = looks.bestWork() < before - 1e-9 ? 0 : idle + 1;
        }
    }

    private Repaired ended(int news, boolean impossible, long begin) {
        if (looks.best() != null && bestFrozen.length == frozen.length) {
            cheapen(news);
        }
        double seconds = (System.nanoTime() - begin) / 1e9;
        Plan found = looks.best();
        if (found == null) {
            return impossible ? new Repaired.Impossible(List.of()) : new Repaired.Stopped();
        }
        double proved = Math.min(looks.bestWork(), Math.max(0, bound));
        return new Repaired.Mended(
                found.proved(0, seconds, effort.seed()),
                looks.bestWork(),
                proved,
                effort.interrupted().getAsBoolean());
    }

    /** Strings that need a lead in every repair. */
    private int forced() {
        int forced = installed.fixturesForced;
        for (int i = 0; i < site.strings.length; i++) {
            boolean none = installed.seats.get(i).isEmpty() && site.sort[i] == Drives.PIXELS;
            forced += none ? 1 : 0;
        }
        return forced;
    }

    private int firstNews() {
        int ports = 1;
        for (var offer : site.offers) {
            ports = Math.max(ports, offer.model().ports().size());
        }
        int few = 1 + (forced() + ports - 1) / ports;
        return Math.min(site.strings.length, few);
    }

    /** A repair with more than so many new boards of one model takes at least this work. */
    private double beyond(int news) {
        return news >= site.strings.length || keep.contains(Keep.BOARDS)
                ? Double.POSITIVE_INFINITY
                : (news + 1) * (minutes.board() + minutes.hop()) + minutes.lead() * Math.max(forced(), news + 1);
    }

    /** So many new boards of each model that more of them cannot be part of a better repair. */
    private int enough(int least) {
        int news = least;
        while (news < site.strings.length && beyond(news) < looks.bestWork() - 1e-9) {
            news++;
        }
        return news;
    }

    /**
     * Solves, looks, cuts, and solves again.
     *
     * @return whether the model was searched to its end
     */
    private boolean search(int news, Scope scope, Set<Installed.Hop> trunk, boolean[] frozen, double share) {
        boolean moves = scope == Scope.ALL;
        RepairModel model = new RepairModel(site, installed, keep, news, scope, trunk, frozen, unit);
        RepairCuts cuts = new RepairCuts(model, looks.injected());
        double seen = Double.POSITIVE_INFINITY;
        double seconds = effort.secondsLeft() * share;
        long from = System.nanoTime();
        new RepairHint(model).add();
        while (!effort.stopped()) {
            double left = seconds - (System.nanoTime() - from) / 1e9;
            if (left <= 0) {
                return false;
            }
            if (looks.bestWork() < Double.POSITIVE_INFINITY) {
                model.cp.addLessOrEqual(model.work, Math.round(looks.bestWork() / unit) - 1);
            }
            model.cp.minimize(model.work);
            CpSolver solver = solving.solver(left);
            CpSolverStatus status = solving.solve(solver, model);
            if (status == CpSolverStatus.INFEASIBLE) {
                if (moves) {
                    raise(Math.min(seen, Math.min(looks.bestWork(), beyond(news))));
                }
                return true;
            }
            if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
                if (moves && status == CpSolverStatus.UNKNOWN) {
                    raise(Math.min(
                            Math.min(seen, looks.bestWork()),
                            Math.min(solver.bestObjectiveBound() * unit, beyond(news))));
                }
                return false;
            }
            if (moves) {
                raise(Math.min(
                        Math.min(seen, looks.bestWork()), Math.min(solver.bestObjectiveBound() * unit, beyond(news))));
            }
            RepairFound found = new RepairFound(model, solver);
            double shown = solver.objectiveValue() * unit;
            if (cuts.forbid(found)) {
                continue;
            }
            double before = looks.bestWork();
            RepairLook.Seen look = looks.look(found.layout());
            if (looks.bestWork() < before) {
                bestShown = shown;
                bestScope = scope;
                bestTrunk = trunk;
                bestFrozen = frozen;
            }
            // what was looked at is worth its own work, or what the model says of it if that is not certain
            seen = Math.min(seen, look.least() < 0 ? shown : look.least());
            if (look.work() <= shown + 1e-9 && status == CpSolverStatus.OPTIMAL) {
                if (moves) {
                    raise(Math.min(Math.min(seen, looks.bestWork()), beyond(news)));
                }
                return true;
            }
            cuts.forbidThis(found);
        }
        return false;
    }

    /** Looks for a cheaper layout of the same work, among those of the kind in which the best was found. */
    private void cheapen(int news) {
        RepairModel model = new RepairModel(site, installed, keep, news, bestScope, bestTrunk, bestFrozen, unit);
        RepairCuts cuts = new RepairCuts(model, looks.injected());
        LinearExprBuilder cost = RepairCost.of(model);
        model.cp.addLessOrEqual(model.work, Math.round(bestShown / unit));
        new RepairHint(model).add();
        model.cp.minimize(cost);
        for (int round = 0; round < CHEAPER_ROUNDS && !effort.stopped(); round++) {
            CpSolver solver = solving.solver(effort.secondsLeft());
            CpSolverStatus status = solving.solve(solver, model);
            if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
                return;
            }
            RepairFound found = new RepairFound(model, solver);
            if (cuts.forbid(found)) {
                continue;
            }
            RepairLook.Seen look = looks.look(found.layout());
            boolean done = look.work() <= looks.bestWork() + 1e-9 && status == CpSolverStatus.OPTIMAL;
            if (done) {
                return;
            }
            cuts.forbidThis(found);
        }
    }

    private void raise(double proved) {
        bound = Math.max(bound, proved);
    }
}
