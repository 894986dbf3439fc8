package streamwright.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleSupplier;
import streamwright.layout.Layout;
import streamwright.physics.Ground;
import streamwright.yard.Yard;

/** Lays a yard out: first by hand practice, then better by search, then proves how good the best is. */
public final class Planner {
    /** Temperatures of annealing, as shares of the cost. */
    private static final double HOT = 0.01;

    /** With more strings than this the bound is that of regions. */
    private static final int LARGE = 300;

    /** Strings to such a region, and in yards with so many strings that time matters more. */
    private static final int REGION = 130;

    private static final int REGION_OF_HUGE = 60;
    private static final int HUGE = 3_000;

    /** The share of the time before the first bound of such yards. */
    private static final double SEARCH_OF_HUGE = 0.15;

    /** That share at least where streams differ: such layouts are more of a puzzle. */
    private static final double SEARCH_OF_MIXED = 0.2;

    private static final double COLD = 0.0002;
    private static final double[] HEATS = {0.002, 0.005, 0.001, 0.01};

    /** Where streams differ, a search is annealing for this share of its time, then shakes. */
    private static final double ANNEALED = 0.6;

    /** So many times from a new start, since each ends somewhere else. */
    private static final int STARTS = 2;

    /** All but one in so many rounds are short ones after a shake there. */
    private static final int ROUNDS = 4;

    private static final double SHORT = 0.2;
    private static final double HEAT_SHAKEN = 0.003;

    private final Site site;
    private final Effort effort;
    private final Incumbent incumbent;
    private final List<Draft> drafts = new ArrayList<>();
    private final List<Search> searches = new ArrayList<>();

    /** Whether what cables carry is the hard part, and few enough hang on them to hang all anew. */
    private final boolean puzzle;

    private double hand = Double.NaN;

    private Planner(Site site, Effort effort, Incumbent incumbent) {
        this.site = site;
        this.effort = effort;
        this.incumbent = incumbent;
        puzzle = site.streamsDiffer && site.strings.length <= LARGE;
        Nearby nearby = new Nearby(site);
        SplittableRandom random = new SplittableRandom(effort.seed());
        for (int w = 0; w < effort.workers(); w++) {
            drafts.add(new Draft(site));
            Search search = new Search(drafts.get(w), nearby, random.split());
            // with equal plans from two workers chance would choose; where only counts limit there is none
            if (effort.level() == 0) {
                search.better = incumbent::offer;
            }
            searches.add(search);
        }
    }

    /**
     * Plans a yard.
     *
     * @param ground of the same yard
     */
    public static Outcome plan(Yard yard, Ground ground, Budget budget, Outcome.Progress progress) {
        return plan(yard, ground, budget, progress, List.of());
    }

    /**
     * Plans a yard, beginning also from layouts of a yard much like it.
     *
     * @param starts best first; what of them this yard does not allow is left away and filled up
     */
    public static Outcome plan(
            Yard yard, Ground ground, Budget budget, Outcome.Progress progress, List<Layout> starts) {
        long begin = System.nanoTime();
        Site site = new Site(yard, ground);
        List<Outcome.Obstruction> obstructions = Obstructions.of(site);
        if (!obstructions.isEmpty()) {
            return new Outcome.Impossible(obstructions);
        }
        long deadline = budget.effort() > 0 ? Long.MAX_VALUE : begin + (long) (budget.seconds() * 1e9);
        Effort effort = new Effort(
                deadline, budget.effort(), Math.max(1, budget.workers()), budget.seed(), budget.interrupted());
        Draft names = new Draft(site);
        Incumbent incumbent = new Incumbent(new Incumbent.Listener() {
            @Override
            public void moved(double cost, double bound) {
                progress.moved((System.nanoTime() - begin) / 1e9, cost, bound);
            }

            @Override
            public void better(Snapshot plan) {
                progress.found(plan.layout(site, names));
            }
        });
        incumbent.raise(LeastCost.of(site));
        Planner planner = new Planner(site, effort, incumbent);
        planner.run(starts, budget.proving());
        Snapshot best = incumbent.best();
        return best == null
                ? new Outcome.Stopped()
                : new Outcome.Found(
                        best.layout(site, names),
                        best.cost(),
                        incumbent.bound(),
                        planner.hand,
                        budget.interrupted().getAsBoolean());
    }

    private void run(List<Layout> starts, boolean proving) {
        ExecutorService workers = Executors.newFixedThreadPool(effort.workers(), task -> {
            Thread thread = new Thread(task, "streamwright-worker");
            thread.setDaemon(true);
            return thread;
        });
        try {
            begin(starts);
            search(workers);
            while (incumbent.best() == null && !effort.stopped() && effort.level() == 0) {
                search(workers);
            }
            if (proving && !effort.stopped()) {
                prove(workers);
            }
            if (!incumbent.proved() && effort.level() == 0) {
                searchOn(workers);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof SolverMissing missing) {
                throw missing;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    /** Hand practice and plain insertion: some plan at once. What a walk leaves out is hung where it costs least. */
    private void begin(List<Layout> starts) {
        Draft draft = drafts.get(0);
        if (!new FirstFit(draft).run()) {
            searches.get(0).fill();
        }
        if (draft.complete()) {
            hand = draft.cost();
            incumbent.offer(Snapshot.of(draft));
        }
        for (int w = 0; w < drafts.size(); w++) {
            restart(w);
        }
        for (int s = 0; s < starts.size() && !effort.stopped(); s++) {
            int w = s % drafts.size();
            new WarmStart(drafts.get(w)).take(starts.get(s));
            searches.get(w).fill();
            offer(drafts.get(w));
        }
        Snapshot best = incumbent.best();
        if (!starts.isEmpty() && best != null) {
            // one begins where others ended, the rest anew
            best.into(drafts.get(0));
        }
    }

    /** Builds anew by insertion, a few times if some string finds no place; then whatever plan there is. */
    private void restart(int w) {
        for (int attempt = 0; attempt < 5 && !effort.stopped(); attempt++) {
            drafts.get(w).clearAll();
            searches.get(w).fill();
            if (drafts.get(w).complete()) {
                offer(drafts.get(w));
                return;
            }
        }
        Snapshot best = incumbent.best();
        if (best != null) {
            best.into(drafts.get(w));
        }
    }

    private void search(ExecutorService workers) throws InterruptedException, ExecutionException {
        int strings = site.strings.length;
        double usual = strings > HUGE ? SEARCH_OF_HUGE : Math.min(0.3, 0.05 + strings / 1500.0);
        double share = site.streamsDiffer ? Math.max(usual, SEARCH_OF_MIXED) : usual;
        List<Callable<Draft>> work = new ArrayList<>();
        for (int w = 0; w < drafts.size(); w++) {
            int worker = w;
            work.add(() -> searched(worker, share));
        }
        for (Future<Draft> result : workers.invokeAll(work)) {
            offer(result.get());
        }
    }

    private Draft searched(int w, double share) {
        Search search = searches.get(w);
        int level = effort.level();
        if (level > 0) {
            long steps = 900L * site.strings.length * level;
            search.repack(effort::stopped);
            search.anneal(step -> step / (double) steps, HOT, COLD, effort::stopped);
        } else {
            double seconds = effort.secondsLeft() * share;
            long from = System.nanoTime();
            DoubleSupplier done = () -> (System.nanoTime() - from) / 1e9 / seconds;
            search.repack(() -> effort.stopped() || done.getAsDouble() >= 1);
            if (puzzle) {
                for (int start = 0; start < STARTS && !effort.stopped(); start++) {
                    if (start > 0) {
                        restart(w);
                    }
                    double before = ANNEALED * start / STARTS;
                    double each = ANNEALED / STARTS;
                    search.anneal(step -> (done.getAsDouble() - before) / each, HOT, COLD, effort::stopped);
                    offer(drafts.get(w));
                }
                searchOn(w, 1, () -> done.getAsDouble() >= 1);
            } else {
                search.anneal(step -> done.getAsDouble(), HOT, COLD, effort::stopped);
            }
        }
        return drafts.get(w);
    }

    /** Raises the incumbent's bound; tells when all workers will be needed from then on. */
    private interface Bounding {
        void run(Runnable wide) throws InterruptedException, ExecutionException;
    }

    private void prove(ExecutorService workers) throws InterruptedException, ExecutionException {
        Natives.load();
        Items items = new Items(site);
        boolean large = site.strings.length > LARGE;
        Bounding proof = large
                ? wide -> {
                    wide.run();
                    int most = site.strings.length > HUGE ? REGION_OF_HUGE : REGION;
                    new Regions(site, items, most, effort, incumbent).run(workers);
                }
                : new Proof(site, new Strands(), items, effort, incumbent, workers)::run;
        if (effort.level() > 0) {
            proof.run(() -> {});
            return;
        }
        AtomicBoolean needed = new AtomicBoolean();
        FutureTask<Void> beside = new FutureTask<>(() -> searchOn(drafts.size() - 1, 0, needed::get), null);
        Thread thread = new Thread(beside, "streamwright-search");
        thread.setDaemon(true);
        thread.start();
        try {
            proof.run(() -> needed.set(true));
        } finally {
            needed.set(true);
            thread.join();
        }
        beside.get();
    }

    /** All workers, while time remains. */
    private void searchOn(ExecutorService workers) throws InterruptedException, ExecutionException {
        List<Callable<Void>> work = new ArrayList<>();
        for (int w = 0; w < drafts.size(); w++) {
            int worker = w;
            work.add(() -> {
                searchOn(worker, 0, () -> false);
                return null;
            });
        }
        for (Future<Void> result : workers.invokeAll(work)) {
            result.get();
        }
    }

    /**
     * Anneals again and again from the best plan, now cooler and now hotter, or shaken, while time remains.
     *
     * @param first round of the series to begin with: that of 0 is without a shake
     */
    private void searchOn(int w, int first, BooleanSupplier needed) {
        BooleanSupplier stop = () -> needed.getAsBoolean() || effort.stopped();
        double seconds = Math.max(1, site.strings.length / 60.0);
        for (int round = first; !stop.getAsBoolean(); round++) {
            Snapshot best = incumbent.best();
            if (best == null) {
                return;
            }
            best.into(drafts.get(w));
            Search search = searches.get(w);
            boolean shaken = puzzle && round % ROUNDS != 0;
            long from = System.nanoTime();
            double span = Math.min(shaken ? SHORT * seconds : seconds, effort.secondsLeft());
            DoubleSupplier done = () -> (System.nanoTime() - from) / 1e9 / span;
            double heat = HEATS[(puzzle ? round / ROUNDS : round) % HEATS.length];
            if (shaken) {
                heat = HEAT_SHAKEN;
                search.shake();
            } else {
                search.repack(() -> stop.getAsBoolean() || done.getAsDouble() >= 0.5);
            }
            search.anneal(step -> done.getAsDouble(), heat, COLD, stop);
            offer(drafts.get(w));
        }
    }

    private void offer(Draft draft) {
        if (draft.complete()) {
            incumbent.offer(Snapshot.of(draft));
        }
    }
}
