package streamwright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import streamwright.check.Audit;
import streamwright.layout.Assembly;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.solve.Budget;
import streamwright.solve.Outcome;
import streamwright.solve.Planner;

/**
 * Open vehicle routing and bin packing beside the best values known: {@code -Dinstances=DIR} names a folder with the
 * folders {@code ovrp} and {@code binpacking}, {@code -Dseconds=N} the time for each (default 60), {@code -Donly=REGEX}
 * some of them.
 */
@Tag("bench")
class InstancesBench {
    private static final double SECONDS = Double.parseDouble(System.getProperty("seconds", "60"));

    @Test
    void aboveTheBestKnown() throws IOException {
        String folder = System.getProperty("instances");
        Assumptions.assumeTrue(folder != null, "-Dinstances=DIR names no folder");
        List<Instances.Instance> all = new ArrayList<>(Instances.openRouting(Path.of(folder, "ovrp")));
        all.addAll(Instances.binPacking(Path.of(folder, "binpacking")));
        all.removeIf(instance -> !instance.name().matches(System.getProperty("only", ".*")));
        System.out.println("| instance | strings | seconds | best known | cost | above | bound | gap |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Instances.Instance instance : all) {
            System.out.println(row(instance));
        }
    }

    private static String row(Instances.Instance instance) {
        Ground ground = GroundPaths.of(instance.yard());
        long from = System.nanoTime();
        Outcome outcome = Planner.plan(instance.yard(), ground, Budget.seconds(SECONDS), Outcome.SILENT);
        double seconds = (System.nanoTime() - from) / 1e9;
        int strings = instance.yard().strings().size();
        if (!(outcome instanceof Outcome.Found found)) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %d | %.1f | %.2f | %s | - | - | - |",
                    instance.name(),
                    strings,
                    seconds,
                    instance.known(),
                    outcome.getClass().getSimpleName());
        }
        Plan plan = Assembly.plan(instance.yard(), ground, found.layout());
        if (!Audit.of(instance.yard(), plan).clean()) {
            throw new AssertionError(
                    instance.name() + ": " + Audit.of(instance.yard(), plan).list());
        }
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.1f | %.2f | %.2f | %.2f %% | %.2f | %.2f %% |",
                instance.name(),
                strings,
                seconds,
                instance.known(),
                plan.cost(),
                100 * (plan.cost() / instance.known() - 1),
                found.bound(),
                100 * (1 - found.bound() / plan.cost()));
    }
}
