package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import streamwright.yard.Drives;

/** How make-ups are told apart: cables of whole plans fit the part they belong to. */
class MakeupSplitTest {
    private static final double ROUNDING = 1e-9;
    private static final int SEEDS = 1_500;

    private static Snapshot alone(Snapshot plan, Snapshot.SavedCable cable) {
        return new Snapshot(plan.cost(), List.of(cable));
    }

    /** Streams of each kind that some string of pixels hangs on. */
    private static int[] streams(Site site, Snapshot.SavedCable cable) {
        boolean[][] carried = new boolean[site.kinds.length][8];
        for (Snapshot.SavedBoard board : cable.boards()) {
            for (int p = 0; p < board.ports().length; p++) {
                Chain chain = board.ports()[p];
                if (chain != null && site.sort[chain.head()] == Drives.PIXELS) {
                    carried[chain.kind()][board.stream()[p]] = true;
                }
            }
        }
        int[] streams = new int[carried.length];
        for (int k = 0; k < streams.length; k++) {
            for (boolean each : carried[k]) {
                streams[k] += each ? 1 : 0;
            }
        }
        return streams;
    }

    @Test
    void aCableBreaksNothingOfWhatItMayCarry() {
        int kept = 0;
        int broken = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            Site site = MixedYards.site(seed);
            Draft draft = new Draft(site);
            if (site.kinds.length < 2 || !new FirstFit(draft).run()) {
                continue;
            }
            Snapshot plan = Snapshot.of(draft);
            Items items = new Items(site);
            for (Snapshot.SavedCable cable : plan.cables()) {
                Point point = Point.of(site, items, alone(plan, cable));
                int[] streams = streams(site, cable);
                int all = draft.cables[cable.cable()].load.length;
                var looked = new MakeupSplit.Broken(site, items, point, 1, all);
                Makeup own = new Makeup(streams, streams, Makeup.Lone.SOME);
                for (int k = 0; k < streams.length; k++) {
                    assertThat(looked.by(looked.alone(k), own))
                            .as("mixed yard %d, kind %d", seed, k)
                            .isLessThanOrEqualTo(ROUNDING);
                    kept++;
                    int[] fewer = streams.clone();
                    fewer[k] = 0;
                    broken += looked.by(looked.alone(k), new Makeup(fewer, fewer, Makeup.Lone.SOME)) > ROUNDING ? 1 : 0;
                }
                assertThat(looked.by(looked.all(), own)).isLessThanOrEqualTo(ROUNDING);
            }
        }
        assertThat(kept).isGreaterThan(100);
        assertThat(broken).isGreaterThan(50);
    }

    @Test
    void whatIsKnownIsNotToldApart() {
        Site site = LongStream.range(0, SEEDS)
                .mapToObj(MixedYards::site)
                .filter(each -> each.kinds.length > 1)
                .findFirst()
                .orElseThrow();
        int[] none = new int[site.kinds.length];
        int[] one = none.clone();
        Arrays.fill(one, 1);
        Items items = new Items(site);
        Makeups known = new Makeups(List.of(new Makeup(none, one, Makeup.Lone.SOME)), List.of(1), one.length);
        assertThat(MakeupSplit.of(site, items, known, List.of())).isNull();
        Makeups any = Makeups.any(one.length, one.length + 1, 1);
        MakeupSplit first = Objects.requireNonNull(MakeupSplit.of(site, items, any, List.of()));
        assertThat(first.few().most()[0]).isZero();
        assertThat(first.many().least()[0]).isOne();
    }
}
