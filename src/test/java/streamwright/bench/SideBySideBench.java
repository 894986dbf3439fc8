package streamwright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.solve.Budget;
import streamwright.solve.Outcome;
import streamwright.solve.Planner;
import streamwright.yard.Yard;

/**
 * Yards and open vehicle routing by hand practice, as one plain model, by an independent solver and by the planner, one
 * after the other for the same time on as many workers: {@code -Dinstances=DIR} names a folder with the folder
 * {@code ovrp}, {@code -Dseconds=N} the time for each (default 60), {@code -Donly=REGEX} some of them. The independent
 * solver knows vehicles and customers, but no boards, ports and leads, so that yards are beyond it.
 */
@Tag("bench")
class SideBySideBench {
    private static final double SECONDS = Double.parseDouble(System.getProperty("seconds", "60"));
    private static final int WORKERS = 2;

    private record Row(String name, int strings, double known, double hand, double plain, double other, double own) {
        List<Double> aboveKnown() {
            return List.of(hand / known, plain / known, other / known, own / known);
        }

        List<Double> ownOverOthers() {
            return List.of(own / hand, own / plain, own / other);
        }
    }

    @Test
    void openRouting() throws IOException {
        String folder = System.getProperty("instances");
        Assumptions.assumeTrue(folder != null, "-Dinstances=DIR names no folder");
        System.out.println("| instance | strings | best known | hand / known | plain / known | jsprit / known"
                + " | planner / known | planner / hand | planner / plain | planner / jsprit |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        List<Row> rows = new ArrayList<>();
        for (Instances.Instance instance : Instances.openRouting(Path.of(folder, "ovrp"))) {
            if (instance.name().matches(System.getProperty("only", ".*"))) {
                Row row = row(instance);
                rows.add(row);
                StringBuilder text = new StringBuilder(
                        String.format(Locale.ROOT, "| %s | %d | %.2f", row.name, row.strings, row.known));
                row.aboveKnown().forEach(ratio -> text.append(String.format(Locale.ROOT, " | %.3f", ratio)));
                row.ownOverOthers().forEach(ratio -> text.append(String.format(Locale.ROOT, " | %.3f", ratio)));
                System.out.println(text.append(" |"));
            }
        }
        System.out.println(String.format(
                Locale.ROOT,
                "mean of planner / known %.4f, of jsprit / known %.4f",
                rows.stream().mapToDouble(row -> row.own / row.known).average().orElse(Double.NaN),
                rows.stream()
                        .mapToDouble(row -> row.other / row.known)
                        .average()
                        .orElse(Double.NaN)));
    }

    @Test
    void yards() {
        List<Yard> all = List.of(
                SeededYards.home(1),
                SeededYards.home(2),
                SeededYards.home(3),
                SeededYards.twoHouses(1),
                SeededYards.street(1));
        System.out.println(
                "| yard | strings | hand | plain | planner | bound | gap | planner / hand | planner / plain |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Yard yard : all) {
            if (!yard.name().matches(System.getProperty("only", ".*"))) {
                continue;
            }
            Ground ground = GroundPaths.of(yard);
            Outcome outcome = planned(yard, ground);
            double own = Audited.cost(yard, ground, outcome.layoutOrNull());
            double hand = outcome instanceof Outcome.Found found ? found.hand() : Double.NaN;
            double bound = outcome instanceof Outcome.Found found ? found.bound() : Double.NaN;
            double plain = Audited.cost(yard, ground, Plain.layout(yard, ground, SECONDS, WORKERS));
            System.out.println(String.format(
                    Locale.ROOT,
                    "| %s | %d | %.2f | %.2f | %.2f | %.2f | %.2f %% | %.3f | %.3f |",
                    yard.name(),
                    yard.strings().size(),
                    hand,
                    plain,
                    own,
                    bound,
                    100 * (1 - bound / own),
                    own / hand,
                    own / plain));
        }
    }

    private static Outcome planned(Yard yard, Ground ground) {
        return Planner.plan(yard, ground, new Budget(SECONDS, 0, 1, WORKERS, () -> false), Outcome.SILENT);
    }

    private static Row row(Instances.Instance instance) {
        Yard yard = instance.yard();
        Ground ground = GroundPaths.of(yard);
        Outcome outcome = planned(yard, ground);
        double own = Audited.cost(yard, ground, outcome.layoutOrNull());
        double hand = outcome instanceof Outcome.Found found ? found.hand() : Double.NaN;
        double plain = Audited.cost(yard, ground, Plain.layout(yard, ground, SECONDS, WORKERS));
        double other = Independent.cost(yard, SECONDS, WORKERS);
        return new Row(instance.name(), yard.strings().size(), instance.known(), hand, plain, other, own);
    }
}
