package streamwright.solve;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import streamwright.layout.Assembly;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Board;
import streamwright.plan.Cable;
import streamwright.plan.Injection;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.plan.change.Difference;
import streamwright.solve.RepairModel.Scope;
import streamwright.yard.Controller;
import streamwright.yard.Prop;
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

    private static final int REFINEMENTS = 12;

    private static final int IDLE_MOST = 3;

    private static final int CHEAPER_ROUNDS = 40;

    private final Yard yard;
    private final Ground ground;
    private final Plan old;
    private final Site site;
    private final Installed installed;
    private final Set<Keep> keep;
    private final Repaired.Judge judge;
    private final Effort effort;
    private final Work minutes;
    private final double unit;
    private final boolean[] frozen;
    private @Nullable Plan best;
    private double bestWork = Double.POSITIVE_INFINITY;
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
        this.judge = judge;
        this.effort = effort;
        installed = new Installed(site, old);
        minutes = yard.work();
        unit = unit(minutes);
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
        List<String> beyond = beyond(yard);
        if (!beyond.isEmpty()) {
            return new Repaired.Beyond(beyond);
        }
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

    private static List<String> beyond(Yard yard) {
        List<String> beyond = new ArrayList<>();
        for (Prop prop : yard.props()) {
            if (prop.outputs() > 0 || prop.panel() != null) {
                beyond.add(prop.id() + (prop.panel() == null ? ": mains outputs" : ": a panel"));
            }
        }
        return beyond;
    }

    private static double unit(Work work) {
        double[] all = {work.setting(), work.replug(), work.lead(), work.hop(), work.board(), work.injection()};
        for (double unit : new double[] {1, 0.5, 0.1, 0.05, 0.01, 0.001}) {
            boolean whole = true;
            for (double each : all) {
                whole &= Math.abs(each / unit - Math.rint(each / unit)) < 1e-9;
            }
            if (whole) {
                return unit;
            }
        }
        return 0.001;
    }

    private Repaired run(long begin) {
        // whatever is done, these strings are plugged anew and these boards come down
        raise(minutes.lead() * forced() + minutes.board() * installed.lost);
        int news = firstNews();
        boolean tiny = site.strings.length <= TINY;
        if (!tiny && keep.isEmpty()) {
            Layout patched = new Patch(yard, old, site).layout(ground, effort);
            if (patched != null) {
                look(patched);
            }
        }
        if (!tiny) {
            TrunkMoves moves = new TrunkMoves(site, installed, RepairModel.jackControllers(site));
            boolean large = site.strings.length > LARGE;
            if (large) {
                freeze(moves.full());
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
        boolean impossible = ended && best == null && beyond(enough) == Double.POSITIVE_INFINITY;
        return ended(tiny ? enough : news, impossible, begin);
    }

    /**
     * Undoes what the best repair changes without need: among the boards that it touches, and then with a few more,
     * looks for less work on the same cables.
     */
    private void refine(int news) {
        SplittableRandom random = new SplittableRandom(effort.seed());
        int idle = 0;
        for (int round = 0; best != null && round < REFINEMENTS && idle < IDLE_MOST && !effort.stopped(); round++) {
            double before = bestWork;
            boolean[] still = untouched(best);
            for (int more = 0; more < Math.min(idle, still.length); more++) {
                still[random.nextInt(still.length)] = false;
            }
            for (int b = 0; b < still.length; b++) {
                still[b] |= frozen[b];
            }
            search(news, round % 2 == 0 ? Scope.PORTS : Scope.STRINGS, trunk(best), still, 0.07);
            idle = bestWork < before - 1e-9 ? 0 : idle + 1;
        }
    }

    /** Of each installed board whether the plan leaves all its strings on their ports. */
    private boolean[] untouched(Plan plan) {
        Map<String, Map<Integer, List<String>>> now = new HashMap<>();
        plan.boards().forEach(board -> now.put(board.id(), ports(board)));
        boolean[] untouched = new boolean[installed.boards.size()];
        for (int b = 0; b < untouched.length; b++) {
            Board was = installed.boards.get(b).was();
            untouched[b] = ports(was).equals(now.get(was.id()));
        }
        return untouched;
    }

    private static Map<Integer, List<String>> ports(Board board) {
        Map<Integer, List<String>> ports = new HashMap<>();
        board.ports().forEach(port -> ports.put(port.port(), names(port)));
        return ports;
    }

    /** The plan's hops between what was there before. */
    private Set<Installed.Hop> trunk(Plan plan) {
        Set<Installed.Hop> hops = new HashSet<>();
        for (Cable cable : plan.cables()) {
            int from = -1;
            int jack = 0;
            for (Controller controller : site.controllers) {
                if (controller.id().equals(cable.controller())) {
                    from = -jack - cable.jack();
                }
                jack += controller.model().jacks();
            }
            for (String name : cable.boards()) {
                int to = index(name);
                if (to >= 0) {
                    hops.add(new Installed.Hop(from, to));
                    from = to;
                }
            }
        }
        return hops;
    }

    private int index(String name) {
        for (int b = 0; b < installed.boards.size(); b++) {
            if (installed.boards.get(b).was().id().equals(name)) {
                return b;
            }
        }
        return -1;
    }

    private Repaired ended(int news, boolean impossible, long begin) {
        if (best != null && bestFrozen.length == frozen.length) {
            cheapen(news);
        }
        double seconds = (System.nanoTime() - begin) / 1e9;
        Plan found = best;
        if (found == null) {
            return impossible ? new Repaired.Impossible(List.of()) : new Repaired.Stopped();
        }
        double proved = Math.min(bestWork, Math.max(0, bound));
        return new Repaired.Mended(
                found.proved(0, seconds, effort.seed()),
                bestWork,
                proved,
                effort.interrupted().getAsBoolean());
    }

    /** In a large yard only what is near something broken or new may change, so that the model stays small. */
    private void freeze(boolean[] full) {
        Arrays.fill(frozen, true);
        for (int b = 0; b < frozen.length; b++) {
            Installed.Standing standing = installed.boards.get(b);
            boolean wrong = standing.spot() < 0;
            for (int i = 0; i < site.strings.length && !wrong; i++) {
                List<Installed.Seat> seats = installed.seats.get(i);
                boolean loose = seats.isEmpty() || seats.size() > 1;
                boolean here = false;
                for (Installed.Seat seat : seats) {
                    here |= seat.board() == b;
                }
                wrong = (here && (loose || brokenLead(i, b))) || (loose && site.lead(standing.spot(), i) != null);
            }
            frozen[b] = !full[b] && !wrong;
        }
    }

    private boolean brokenLead(int string, int board) {
        for (Installed.Seat seat : installed.seats.get(string)) {
            boolean wired = seat.behind() == Installed.FIRST
                    ? site.lead(installed.boards.get(board).spot(), string) != null
                    : seat.behind() >= 0 && site.jumper(seat.behind(), string) != null;
            if (seat.board() == board && !wired) {
                return true;
            }
        }
        return false;
    }

    /** Strings that need a lead in every repair. */
    private int forced() {
        int forced = 0;
        for (List<Installed.Seat> seats : installed.seats) {
            forced += seats.isEmpty() ? 1 : 0;
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
        while (news < site.strings.length && beyond(news) < bestWork - 1e-9) {
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
        RepairCuts cuts = new RepairCuts(model, injected());
        double seen = Double.POSITIVE_INFINITY;
        double seconds = effort.secondsLeft() * share;
        long from = System.nanoTime();
        new RepairHint(model).add();
        while (!effort.stopped()) {
            double left = seconds - (System.nanoTime() - from) / 1e9;
            if (left <= 0) {
                return false;
            }
            if (bestWork < Double.POSITIVE_INFINITY) {
                model.cp.addLessOrEqual(model.work, Math.round(bestWork / unit) - 1);
            }
            model.cp.minimize(model.work);
            CpSolver solver = solver(left);
            CpSolverStatus status = solve(solver, model);
            if (status == CpSolverStatus.INFEASIBLE) {
                if (moves) {
                    raise(Math.min(seen, Math.min(bestWork, beyond(news))));
                }
                return true;
            }
            if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
                if (moves && status == CpSolverStatus.UNKNOWN) {
                    raise(Math.min(
                            Math.min(seen, bestWork), Math.min(solver.bestObjectiveBound() * unit, beyond(news))));
                }
                return false;
            }
            if (moves) {
                raise(Math.min(Math.min(seen, bestWork), Math.min(solver.bestObjectiveBound() * unit, beyond(news))));
            }
            RepairFound found = new RepairFound(model, solver);
            double shown = solver.objectiveValue() * unit;
            if (cuts.forbid(found)) {
                continue;
            }
            double before = bestWork;
            Look look = look(found.layout());
            if (bestWork < before) {
                bestShown = shown;
                bestScope = scope;
                bestTrunk = trunk;
                bestFrozen = frozen;
            }
            // what was looked at is worth its own work, or what the model says of it if that is not certain
            seen = Math.min(seen, look.least < 0 ? shown : look.least);
            if (look.work <= shown + 1e-9 && status == CpSolverStatus.OPTIMAL) {
                if (moves) {
                    raise(Math.min(Math.min(seen, bestWork), beyond(news)));
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
        RepairCuts cuts = new RepairCuts(model, injected());
        LinearExprBuilder cost = RepairCost.of(model);
        model.cp.addLessOrEqual(model.work, Math.round(bestShown / unit));
        new RepairHint(model).add();
        model.cp.minimize(cost);
        for (int round = 0; round < CHEAPER_ROUNDS && !effort.stopped(); round++) {
            CpSolver solver = solver(effort.secondsLeft());
            CpSolverStatus status = solve(solver, model);
            if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
                return;
            }
            RepairFound found = new RepairFound(model, solver);
            if (cuts.forbid(found)) {
                continue;
            }
            Look look = look(found.layout());
            boolean done = look.work <= bestWork + 1e-9 && status == CpSolverStatus.OPTIMAL;
            if (done) {
                return;
            }
            cuts.forbidThis(found);
        }
    }

    /** Solves; a user who does not want to wait longer is heard while it does. */
    private CpSolverStatus solve(CpSolver solver, RepairModel model) {
        AtomicBoolean ended = new AtomicBoolean();
        Thread watch = new Thread(
                () -> {
                    while (!ended.get()) {
                        if (effort.interrupted().getAsBoolean()) {
                            solver.stopSearch();
                        }
                        LockSupport.parkNanos(50_000_000);
                    }
                },
                "streamwright-watch");
        watch.setDaemon(true);
        watch.start();
        try {
            return solver.solve(model.cp);
        } finally {
            ended.set(true);
        }
    }

    private void raise(double proved) {
        bound = Math.max(bound, proved);
    }

    /**
     * @param work of the best plan of a layout; infinite where it breaks a rule
     * @param least work of any plan of it; infinite where there is none; below zero where nothing is certain
     */
    private record Look(double work, double least) {}

    private Look look(Layout layout) {
        Plan fresh = Assembly.plan(yard, ground, layout);
        boolean channels = keep.contains(Keep.CHANNELS);
        Numbering.Numbered numbered = Numbering.of(yard, fresh, old, channels);
        if (numbered == null) {
            return new Look(
                    Double.POSITIVE_INFINITY, channels || site.copies || site.kept.on ? -1 : Double.POSITIVE_INFINITY);
        }
        Plan plan = judged(oldInjections(numbered.plan()));
        plan = plan != null ? plan : judged(numbered.plan());
        if (plan == null) {
            return new Look(
                    Double.POSITIVE_INFINITY, channels || site.copies || site.kept.on ? -1 : Double.POSITIVE_INFINITY);
        }
        double work = Difference.minutes(yard, old, plan);
        boolean better =
                work < bestWork - 1e-9 || (work < bestWork + 1e-9 && best != null && plan.cost() < best.cost() - 1e-9);
        if (better) {
            best = plan;
            bestWork = work;
        }
        double injections = minutes.injection() * newInjections(plan);
        return new Look(work, numbered.exact() ? work - injections : -1);
    }

    private @Nullable Plan judged(@Nullable Plan plan) {
        if (plan == null) {
            return null;
        }
        Plan restated = judge.judge(plan).restated();
        return judge.judge(restated).broken().isEmpty() ? restated : null;
    }

    private Set<String> injected() {
        Set<String> injected = new HashSet<>();
        for (Board board : old.boards()) {
            board.ports()
                    .forEach(port ->
                            port.injections().forEach(each -> injected.add(each.prop() + "\n" + each.string())));
        }
        return injected;
    }

    private long newInjections(Plan plan) {
        Set<Injection> before = new HashSet<>();
        old.boards().forEach(board -> board.ports().forEach(port -> before.addAll(port.injections())));
        return plan.boards().stream()
                .flatMap(board -> board.ports().stream())
                .flatMap(port -> port.injections().stream())
                .filter(each -> !before.contains(each))
                .count();
    }

    /** The same plan with the old plan's injections on ports that are as they were; null where none differ. */
    private @Nullable Plan oldInjections(Plan plan) {
        Map<String, PortUse> before = new HashMap<>();
        old.boards().forEach(board -> board.ports().forEach(port -> before.put(board.id() + "\n" + port.port(), port)));
        boolean any = false;
        List<Board> boards = new ArrayList<>();
        for (Board board : plan.boards()) {
            List<PortUse> ports = new ArrayList<>();
            for (PortUse port : board.ports()) {
                PortUse was = before.get(board.id() + "\n" + port.port());
                if (was == null
                        || !names(was).equals(names(port))
                        || was.injections().equals(port.injections())) {
                    ports.add(port);
                    continue;
                }
                any = true;
                ports.add(new PortUse(
                        port.port(), port.stream(), port.startPixel(), port.amps(), port.strings(), was.injections()));
            }
            boards.add(RepairPlans.with(board, ports));
        }
        return any ? RepairPlans.with(plan, plan.cables(), boards) : null;
    }

    private static List<String> names(PortUse port) {
        return port.strings().stream().map(Repair::name).toList();
    }

    private static String name(StringUse use) {
        return use.prop() + "\n" + use.string();
    }

    private CpSolver solver(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setNumWorkers(effort.workers() * 2)
                .setRandomSeed((int) effort.seed())
                .setCatchSigintSignal(false);
        return solver;
    }
}
