package streamwright.reason.impasse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static streamwright.reason.impasse.YardText.board;
import static streamwright.reason.impasse.YardText.narrow;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.physics.GroundPaths;
import streamwright.solve.Budget;
import streamwright.solve.Obstructions;
import streamwright.solve.Outcome;
import streamwright.solve.Planner;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.Drives;
import streamwright.yard.Yard;

/**
 * Changes that help, with the figures that follow from the arithmetic of the rules. A hop is 1.1 times its path plus
 * 2 m, a lead 1.1 times plus 0.3 m.
 */
class WaysOutTest {
    private static final double SECONDS = 60;
    private static final String DIM = "controllers: [{id: booth, model: source-4, at: [0, 0]}]\nbrightness: 0.01\n";

    @TempDir
    private Path folder;

    private List<WayOut> ways(String text, String... models) {
        return ways(List.of(), text, models);
    }

    private List<WayOut> ways(Collection<BoardModel> toBuy, String text, String... models) {
        Yard yard = YardText.read(folder, text, List.of(models));
        return Explaining.ofImpossible(
                        yard,
                        Obstructions.of(yard, GroundPaths.of(yard)),
                        toBuy,
                        SECONDS,
                        () -> false,
                        Explaining.Listener.NONE)
                .waysOut();
    }

    private static List<String> texts(List<WayOut> ways) {
        return ways.stream().map(WayOut::text).toList();
    }

    /**
     * 780 pixels with a tenth spare need room for 867, which take 26.31 ms with the reset: 38 frames a second. Of the
     * 823 that 40 frames hold, 95 % are 781.
     */
    @Test
    void aStringTooLongForAStream() {
        List<WayOut> ways = ways(DIM + """
                props:
                  - {id: porch, pixel: ws2811, pixels: 10, feed: [5, 0]}
                  - {id: gable, pixel: ws2811, pixels: 780, feed: [10, 0]}
                """);
        assertThat(texts(ways))
                .containsExactlyInAnyOrder(
                        "frameRate 38 instead of 40", "spare 0.05 instead of 0.1", "without prop gable");
        assertThat(ways).isSortedAccordingTo((a, b) -> Double.compare(a.cost(), b.cost()));
    }

    /** The lead of 16.8 m is to be 6 m long and two times 3 m. Nearer by 4.5 m it is 11.85 m. */
    @Test
    void aFeedOutOfReach() {
        List<WayOut> ways = ways(DIM + """
                spots: [{id: pole, at: [5, 0]}]
                props:
                  - {id: porch, pixel: ws2811, pixels: 10, feed: [5, 0]}
                  - {id: gable, pixel: ws2811, pixels: 50, feed: [20, 0]}
                """);
        assertThat(texts(ways))
                .containsExactlyInAnyOrder(
                        "rules.leadData 10.8 m instead of 6; longer leads: gable 16.80 m",
                        "rules.jumperData 5.4 m instead of 3; longer leads: gable 16.80 m",
                        "rules.nullsMost 4 instead of 2; longer leads: gable 16.80 m",
                        "a spot more, at gable (20, 0)",
                        "prop gable moved towards the nearest spot by 4.5 m",
                        "without prop gable");
    }

    @Test
    void aBoardMoreAndWhere() {
        List<WayOut> ways = ways(DIM + """
                boardCount: {most: 2}
                spots: [{id: porch, at: [10, 0]}, {id: fence, at: [40, 0]}, {id: shed, at: [70, 0]}]
                rules: {cableMost: 200}
                props:
                  - {id: a, pixel: ws2811, pixels: 10, feed: [10, 0]}
                  - {id: b, pixel: ws2811, pixels: 10, feed: [40, 0]}
                  - {id: c, pixel: ws2811, pixels: 10, feed: [70, 0]}
                """);
        assertThat(texts(ways)).contains("boardCount.most 3 instead of 2; boards at porch, fence, shed");
        WayOut more = ways.stream()
                .filter(way -> way.text().startsWith("boardCount"))
                .findFirst()
                .orElseThrow();
        assertThat(more.changes()).containsExactly(new WayOut.Change("boardCount.most", 2.0, 3.0));
        // a cable of 13, 35 and 35 m at 0.60, three leads of 0.3 m at 1.90, a jack of 12.00 and three boards
        Yard yard = YardText.read(folder, DIM + """
                boardCount: {most: 3}
                spots: [{id: porch, at: [10, 0]}, {id: fence, at: [40, 0]}, {id: shed, at: [70, 0]}]
                rules: {cableMost: 200}
                props:
                  - {id: a, pixel: ws2811, pixels: 10, feed: [10, 0]}
                  - {id: b, pixel: ws2811, pixels: 10, feed: [40, 0]}
                  - {id: c, pixel: ws2811, pixels: 10, feed: [70, 0]}
                """, List.of());
        Outcome best = Planner.plan(yard, GroundPaths.of(yard), Budget.effort(1), Outcome.SILENT);
        assertThat(more.cost()).isCloseTo(((Outcome.Found) best).cost(), within(1e-6));
    }

    @Test
    void aSecondControllerAndFewerStrings() {
        List<WayOut> ways = ways("""
                controllers: [{id: booth, model: narrow, at: [0, 0]}]
                brightness: 0.01
                spare: 0
                props: [{id: tree, pixel: ws2811, strings: {count: 9, pixels: 100, feed: [10, 0]}}]
                """, narrow());
        assertThat(texts(ways))
                .containsExactlyInAnyOrder(
                        "controllers like booth 2 instead of 1",
                        // 900 pixels take 27.3 ms
                        "frameRate 36 instead of 40",
                        "strings of prop tree 8 instead of 9");
    }

    @Test
    void aPondMayBeCrossedOrLeft() {
        List<WayOut> ways = ways(DIM + """
                obstacles: [{id: pond, ring: [[20, -5], [40, -5], [40, 5], [20, 5]]}]
                props:
                  - {id: porch, pixel: ws2811, pixels: 10, feed: [5, 0]}
                  - {id: gable, pixel: ws2811, pixels: 50, feed: [30, 0]}
                """);
        assertThat(texts(ways))
                .containsExactlyInAnyOrder(
                        "wires may cross obstacle pond",
                        "prop gable moved towards the controller by 10 m",
                        "without prop gable");
    }

    @Test
    void channelsNumberedAnew() {
        List<WayOut> ways = ways("""
                controllers: [{id: booth, model: narrow, at: [0, 0]}]
                channels: keep
                brightness: 0.01
                props:
                  - {id: a, channel: 1, pixel: ws2811, pixels: 10, feed: [10, 0]}
                  - {id: b, channel: 36, pixel: ws2811, pixels: 10, feed: [11, 0]}
                """, narrow());
        assertThat(texts(ways)).contains("channels: renumber");
    }

    /** Neither change alone does: one string is too long for a stream, another too far from any spot. */
    @Test
    void twoChangesTogether() {
        List<WayOut> ways = ways(DIM + """
                spare: 0
                spots: [{id: pole, at: [5, 0]}]
                boards: [{model: mine}]
                props:
                  - {id: gable, pixel: ws2811, pixels: 850, feed: [5, 0], follow: none}
                  - {id: arch, pixel: ws2811, pixels: 50, feed: [20, 0], follow: none}
                """, board());
        assertThat(ways).hasSize(1);
        assertThat(ways.get(0).changes()).hasSize(2);
        // 850 pixels take 25.8 ms
        assertThat(ways.get(0).text()).contains("frameRate 38 instead of 40", ", and ", "arch 16.80 m");
    }

    /** That a prop might be left out is no reason to look for nothing else. */
    @Test
    void changesTogetherEvenWhereAPropCouldBeLeftOut() {
        List<WayOut> ways = ways(DIM + """
                frameRate: 100
                boards: [{model: matrix-64}, {model: quad}]
                props:
                  - {id: porch, pixel: ws2811, pixels: 10, feed: [5, 0]}
                  - {id: wall, pixel: ws2811, panel: {columns: 64, rows: 64}, at: [5, 0]}
                """);
        // four parts of 1024 pixels, which take 31.02 ms; a controller's stream holds no more
        assertThat(texts(ways))
                .containsExactlyInAnyOrder(
                        "without prop wall", "frameRate 32 instead of 100, and spare 0 instead of 0.1");
    }

    @Test
    void aBoardOfAnotherModel() {
        List<BoardModel> models = List.of(
                BoardModel.ofPorts("pair", List.of(1, 2), new Address.None(), 10, 5),
                new BoardModel(
                        "lines",
                        Drives.OUTPUTS,
                        List.of(),
                        new Address.Switches(0, 15, 4),
                        50,
                        0,
                        2,
                        0,
                        8,
                        1,
                        List.of()));
        List<WayOut> ways = ways(models, DIM + """
                boards: [{model: quad}]
                props:
                  - {id: porch, pixel: ws2811, pixels: 10, feed: [5, 0]}
                  - {id: flood, outputs: 2, at: [5, 0]}
                """);
        assertThat(texts(ways)).containsExactlyInAnyOrder("boards: lines as well", "without prop flood");
    }

    /** The board has one port that hears the cable's only stream, and the dot takes it: no string of the arch can stay. */
    @Test
    void noStringOfAPropIsTheYardWithoutIt() {
        List<WayOut> ways = ways(DIM.replace("source-4", "narrow") + """
                boards: [{model: mine, most: 1}]
                props:
                  - {id: arch, pixel: ws2811, strings: {count: 2, pixels: 50, feed: [5, 0], tail: [5, 1]}}
                  - {id: dot, pixel: ws2811, pixels: 10, feed: [6, 0]}
                """, narrow(), board("ports: [1, 2]"));
        assertThat(texts(ways)).contains("without prop arch", "without prop dot");
        assertThat(ways.stream().flatMap(way -> way.changes().stream()))
                .contains(new WayOut.Change("without prop arch", null, null));
    }

    /** A larger fuse or supply is nothing to be advised. */
    @Test
    void noLargerFuseIsOffered() {
        List<WayOut> ways = ways("""
                controllers: [{id: booth, model: source-4, at: [0, 0]}]
                boards: [{model: mine}]
                props:
                  - {id: porch, pixel: ws2811, pixels: 10, feed: [5, 0]}
                  - {id: gable, pixel: ws2811, pixels: 100, feed: [10, 0]}
                """, board("ampsMost: 5"));
        // 5 of 5.5 A
        assertThat(texts(ways)).containsExactlyInAnyOrder("brightness 0.9 instead of 1", "without prop gable");
    }

    /** What is known is told as it comes, and the end tells all of it. */
    @Test
    void whatIsKnownIsToldAsItComes() {
        Yard yard = YardText.read(
                folder, DIM + "props: [{id: gable, pixel: ws2811, pixels: 780, feed: [10, 0]}]\n", List.of());
        List<Impasse> known = new ArrayList<>();
        List<String> begun = new ArrayList<>();
        Impasse last = Explaining.ofImpossible(
                yard,
                Obstructions.of(yard, GroundPaths.of(yard)),
                List.of(),
                SECONDS,
                () -> false,
                new Explaining.Listener() {
                    @Override
                    public void begins(String what) {
                        begun.add(what);
                    }

                    @Override
                    public void known(Impasse impasse) {
                        known.add(impasse);
                    }
                });
        assertThat(known).hasSize(3);
        assertThat(known.get(0).arithmetic()).hasSize(1);
        assertThat(known.get(0).clash()).isNull();
        assertThat(known.get(1).clash()).isNotNull();
        assertThat(known.get(1).waysOut()).isEmpty();
        assertThat(known.get(2)).isEqualTo(last);
        assertThat(begun).hasSize(2);
    }

    /** Nothing is claimed of a yard of which nothing is proved, but what would help is found all the same. */
    @Test
    void whatStandsInTheWayWhereNothingIsProved() {
        Yard yard = YardText.read(
                folder, DIM + "props: [{id: gable, pixel: ws2811, pixels: 780, feed: [10, 0]}]\n", List.of());
        Impasse impasse = Explaining.ofUnknown(yard, List.of(), SECONDS, () -> false, Explaining.Listener.NONE);
        assertThat(impasse.proved()).isFalse();
        assertThat(impasse.clash()).isNull();
        assertThat(texts(impasse.waysOut())).contains("frameRate 38 instead of 40", "spare 0.05 instead of 0.1");
    }
}
