package streamwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.solve.Budget;
import streamwright.solve.Outcome;
import streamwright.solve.Planner;
import streamwright.yard.Yard;

/**
 * Seeded homes, planned and, in the same run and for the same time on as many workers, solved as one plain model:
 * {@code -Dhomes=N} (default 12), {@code -Dseconds=N} for each (default 60), {@code -Dworkers=N} (default 2).
 */
@Tag("bench")
class HomesBench {
    private static final long HOMES = Long.getLong("homes", 12);
    private static final double SECONDS = Double.parseDouble(System.getProperty("seconds", "60"));
    private static final int WORKERS = Integer.getInteger("workers", 2);

    private record Run(String yard, double seconds, double cost, double bound, double hand, double plain) {
        double gap() {
            return 1 - bound / cost;
        }
    }

    @Test
    void besideHandPracticeAndAPlainModel() {
        List<Run> runs = new ArrayList<>();
        System.out.println("| yard | seconds | cost | bound | gap | hand | cost / hand | plain | cost / plain |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Yard yard :
                LongStream.rangeClosed(1, HOMES).mapToObj(SeededYards::home).toList()) {
            Run run = run(yard);
            runs.add(run);
            System.out.println(String.format(
                    Locale.ROOT,
                    "| %s | %.1f | %.2f | %.2f | %.2f %% | %.2f | %.3f | %.2f | %.3f |",
                    run.yard,
                    run.seconds,
                    run.cost,
                    run.bound,
                    100 * run.gap(),
                    run.hand,
                    run.cost / run.hand,
                    run.plain,
                    run.cost / run.plain));
        }
        System.out.println(String.format(
                Locale.ROOT,
                "%d proved, mean gap %.2f %%, mean cost / hand %.3f, mean cost / plain %.3f",
                runs.stream().filter(run -> run.cost - run.bound < 0.005).count(),
                100 * runs.stream().mapToDouble(Run::gap).average().orElse(Double.NaN),
                runs.stream()
                        .mapToDouble(run -> run.cost / run.hand)
                        .filter(Double::isFinite)
                        .average()
                        .orElse(Double.NaN),
                runs.stream()
                        .mapToDouble(run -> run.cost / run.plain)
                        .filter(Double::isFinite)
                        .average()
                        .orElse(Double.NaN)));
    }

    private static Run run(Yard yard) {
        Ground ground = GroundPaths.of(yard);
        Budget budget = new Budget(SECONDS, 0, 1, WORKERS, () -> false);
        long from = System.nanoTime();
        Outcome outcome = Planner.plan(yard, ground, budget, Outcome.SILENT);
        double seconds = (System.nanoTime() - from) / 1e9;
        double plain = Audited.cost(yard, ground, Plain.layout(yard, ground, SECONDS, WORKERS));
        double cost = Audited.cost(yard, ground, outcome.layoutOrNull());
        return outcome instanceof Outcome.Found found
                ? new Run(yard.name(), seconds, cost, found.bound(), found.hand(), plain)
                : new Run(yard.name(), seconds, Double.NaN, Double.NaN, Double.NaN, plain);
    }
}
