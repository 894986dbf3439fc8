package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import streamwright.physics.GroundPaths;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.Drives;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** The rows of amps: their coefficients by their theorem, and beside every plan of tiny yards. */
class AmpsTest {
    private static final double ROUNDING = 1e-6;

    private static Yard yard(double ampsMost, int portMost, double spotAmps) {
        BoardModel model = new BoardModel(
                "four",
                Drives.PIXELS,
                List.of(1, 2, 3, 4),
                new Address.Switches(0, 15, 4),
                20,
                50,
                ampsMost,
                portMost,
                0,
                BoardModel.ANY,
                List.of());
        Yard garden = Changed.with(
                TinyGarden.of(2), "boards", List.of(new BoardOffer(model, Integer.MAX_VALUE, 0, model.price())));
        List<Spot> spots = List.of(
                new Spot("a", garden.controllers().get(0).at(), 4, 0, Double.POSITIVE_INFINITY),
                new Spot("b", garden.strings().get(0).feed(), 4, 0, spotAmps));
        return Changed.with(garden, "spots", spots);
    }

    private static Site site(Yard yard) {
        return new Site(yard, GroundPaths.of(yard));
    }

    private static double total() {
        return Arrays.stream(site(yard(1, 1, 1)).draw).sum();
    }

    private static List<Row> rows(Site site) {
        return Amps.of(site, new Items(site));
    }

    private static void isRow(Site site, Row row, int spot, double ofBoard, double ofSpot) {
        Items items = new Items(site);
        assertThat(row.low()).isEqualTo(-ROUNDING);
        assertThat(row.high()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(row.onlyItem()).isEqualTo(Row.ALL);
        for (int p = 0; p < site.spots.length; p++) {
            assertThat(row.board(p, 0)).isEqualTo(p == spot ? ofBoard : 0);
            assertThat(row.used(p)).isEqualTo(p == spot ? ofSpot : 0);
            for (int k = 0; k < items.size; k++) {
                double draw = site.pixels[items.sample[k]] * 0.05 * 0.05;
                assertThat(row.item(k, p))
                        .isEqualTo(p == spot ? -draw : 0, org.assertj.core.api.Assertions.within(1e-12));
            }
        }
    }

    @Test
    void aBoardThatCannotGiveAllThatItCouldCarry() {
        double most = 0.6 * total();
        Site site = site(yard(most, 1_000, Double.POSITIVE_INFINITY));
        List<Row> rows = rows(site);
        assertThat(rows).hasSize(2);
        isRow(site, rows.get(0), 0, most, 0);
        isRow(site, rows.get(1), 1, most, 0);
    }

    @Test
    void aBoardThatGivesAllHasNoRow() {
        assertThat(rows(site(yard(total(), 1_000, Double.POSITIVE_INFINITY)))).isEmpty();
        // four ports of 60 pixels of 2.5 mA draw 0.6 A
        assertThat(rows(site(yard(0.6, 60, Double.POSITIVE_INFINITY)))).isEmpty();
        assertThat(total()).isGreaterThan(0.1);
    }

    /** Four ports of 10 pixels of 2.5 mA draw 0.1 A, and no more counts for a board that could give more. */
    @Test
    void fullPortsAreAllThatABoardCarries() {
        Site site = site(yard(0.099, 10, Double.POSITIVE_INFINITY));
        assertThat(rows(site)).hasSize(2);
        isRow(site, rows(site).get(0), 0, 0.099, 0);
    }

    @Test
    void aSpotGivesWhatItsSupplyGives() {
        Site site = site(yard(1_000, 1_000, 0.2));
        List<Row> rows = rows(site);
        assertThat(rows).hasSize(1);
        isRow(site, rows.get(0), 1, 0, 0.2);
    }

    /** Kept by every plan, and by many with nothing to spare for one string more. */
    @Test
    void noPlanBreaksARow() {
        int kept = 0;
        int tight = 0;
        for (long seed = 0; seed < 200; seed++) {
            Yard yard = AnyYard.of(seed, 2, 4);
            Site site = site(yard);
            Items items = new Items(site);
            List<Row> rows = Amps.of(site, items);
            if (rows.isEmpty()) {
                continue;
            }
            List<Weights> plans = new ArrayList<>();
            EveryPlan.all(yard, GroundPaths.of(yard), plan -> {
                if (plans.size() < 1_000) {
                    plans.add(Weights.of(site, items, plan));
                }
            });
            double least = IntStream.range(0, site.strings.length)
                    .mapToDouble(i -> site.draw[i])
                    .max()
                    .orElse(0);
            for (Weights plan : plans) {
                for (Row row : rows) {
                    assertThat(plan.broken(row)).as("any %d", seed).isLessThan(1e-9);
                    kept++;
                    boolean hangs = plan.sum(row) != 0;
                    tight += hangs && plan.sum(row) < least ? 1 : 0;
                }
            }
        }
        assertThat(kept).isGreaterThan(1_000);
        assertThat(tight).isGreaterThan(100);
    }
}
