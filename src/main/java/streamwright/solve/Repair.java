package streamwright.solve;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.plan.Plan;
import streamwright.solve.RepairLevels.Level;
import streamwright.solve.RepairModel.Part;
import streamwright.solve.RepairModel.Scope;
import streamwright.yard.Work;
import streamwright.yard.Yard;

/**
 * Mends every broken rule of an installed plan with the least work, then at the least cost.
 *
 * <p>The bound of the work is a theorem: the least of what {@link RepairSearch} proves of each of the {@link
 * RepairLevels}. Where {@link RepairModel} has room for {@code k} new boards of each model and a repair might have more, that
 * one takes at least {@code k + 1} times a board and a hop, and a lead for each string that no longer is where it was, of
 * which each new board carries one.
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

    /** Of all the time: what parts of the yard leave to the search of the whole; and of what is left then, its share. */
    private static final double RESERVED = 0.4;

    private static final double WHOLE_SHARE = 0.9;

    private static final int REFINEMENTS = 12;

    private static final int IDLE_MOST = 3;

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
    private final RepairSearch searching;
    private boolean[] frozen;
    private double bound;
    private double reserved;

    private Repair(
            Yard yard,
            Ground ground,
            Plan old,
            Site site,
            Set<String> dead,
            Set<Keep> keep,
            Repaired.Judge judge,
            Effort effort) {
        this.yard = yard;
        this.ground = ground;
        this.old = old;
        this.site = site;
        this.keep = keep;
        this.effort = effort;
        installed = new Installed(site, old, dead);
        minutes = yard.work();
        unit = RepairSolver.unit(minutes);
        looks = new RepairLook(site, ground, old, dead, keep, judge);
        freezing = new RepairFrozen(site, installed);
        searching = new RepairSearch(site, installed, keep, looks, effort);
        frozen = new boolean[installed.boards.size()];
    }

    /**
     * Repairs a plan.
     *
     * @param old may be broken, or made by hand
     * @param dead boards of it that no longer work
     * @param keep what must not change
     */
    public static Repaired of(
            Yard yard, Ground ground, Plan old, Set<String> dead, Set<Keep> keep, Repaired.Judge judge, Budget budget) {
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
        return new Repair(yard, ground, old, site, dead, keep, judge, effort).run(begin);
    }

    private Repaired run(long begin) {
        raise(RepairLeast.work(site, installed, forced()));
        int news = firstNews();
        if (keep.isEmpty() || !installed.dead.isEmpty()) {
            // some repair at once; of a dead board it is often all that is needed
            patch();
        }
        if (looks.bestWork() <= bound + unit / 2) {
            return ended(news, false, begin);
        }
        if (site.strings.length > TINY) {
            TrunkMoves moves = new TrunkMoves(site, installed, RepairModel.jackControllers(site));
            boolean large = site.strings.length > LARGE;
            if (large) {
                frozen = freezing.far(moves.full());
            } else {
                reserved = RESERVED * effort.secondsLeft();
            }
            List<TrunkMoves.Way> ways = moves.best(keep.contains(Keep.CABLES) ? 0 : WAYS);
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
        return ended(news, prove(news), begin);
    }

    /** Keeps what can stay and puts the rest to its cheapest places. */
    private void patch() {
        Patch patch = new Patch(yard, old, site);
        Layout patched = patch.filled(effort.seed());
        if (patched != null) {
            looks.look(patched);
        }
        // a tiny yard is searched as a whole, which also ends where there is nothing to find
        if (looks.best() == null && keep.isEmpty() && site.strings.length > TINY) {
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
        if (looks.best() != null && looks.bestWork() > minutes.board() * installed.down()) {
            searching.cheapen(Part.of(news, Scope.ALL, Set.of(), frozen));
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
        return (int) installed.seats.stream().filter(List::isEmpty).count();
    }

    private int firstNews() {
        int ports = 1;
        for (var offer : site.offers) {
            ports = Math.max(ports, offer.model().ports().size());
        }
        int few = 1 + (forced() + ports - 1) / ports + installed.missing(site.yard.boardCount());
        return Math.min(site.strings.length, few);
    }

    /** A repair with more than so many new boards of one model takes at least this work. */
    private double beyond(int news) {
        return news >= site.strings.length || keep.contains(Keep.BOARDS)
                ? Double.POSITIVE_INFINITY
                : (news + 1) * (minutes.board() + minutes.hop()) + minutes.lead() * Math.max(forced(), news + 1);
    }

    /**
     * Searches all repairs, part by part, for as long as there is time.
     *
     * @return whether there is none at all
     */
    private boolean prove(int news) {
        boolean tiny = site.strings.length <= TINY;
        if (looks.best() == null) {
            int enough = tiny ? site.strings.length : news + MORE_BOARDS;
            double least =
                    searching.search(Part.of(enough, Scope.ALL, Set.of(), frozen), WHOLE_SHARE * effort.secondsLeft());
            raise(Math.min(least, beyond(enough)));
            if (looks.best() == null) {
                return Math.min(least, beyond(enough)) == Double.POSITIVE_INFINITY;
            }
        }
        double strings = minutes.lead() * forced();
        double gone = minutes.board() * installed.down();
        List<Level> levels = RepairLevels.of(minutes, gone, unit, looks.bestWork() - strings);
        double least = Double.POSITIVE_INFINITY;
        for (int l = 0; l < levels.size(); l++) {
            Level level = levels.get(l);
            double known = level.least() + strings;
            if (known < looks.bestWork() - unit / 2) {
                int most = newsWithin(level.most() - gone);
                int places = tiny ? most : Math.min(most, news + MORE_BOARDS);
                Part part = new Part(places, Scope.ALL, Set.of(), frozen, level.least(), level.most());
                double share = WHOLE_SHARE / (levels.size() - l);
                double found = searching.search(part, share * effort.secondsLeft());
                known = Math.max(known, places < most ? Math.min(found, beyond(places)) : found);
            }
            least = Math.min(least, known);
        }
        raise(Math.min(least, looks.bestWork()));
        return false;
    }

    /** So many new boards, each with a hop to it, are no more than this work. */
    private int newsWithin(double work) {
        double each = minutes.board() + minutes.hop();
        return each * site.strings.length <= work ? site.strings.length : (int) Math.floor(work / each + 1e-9);
    }

    private void search(int news, Scope scope, Set<Installed.Hop> trunk, boolean[] still, double share) {
        searching.search(Part.of(news, scope, trunk, still), share * Math.max(0, effort.secondsLeft() - reserved));
    }

    private void raise(double proved) {
        bound = Math.max(bound, proved);
    }
}
