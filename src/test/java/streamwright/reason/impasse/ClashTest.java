package streamwright.reason.impasse;

import static org.assertj.core.api.Assertions.assertThat;
import static streamwright.reason.impasse.YardText.board;
import static streamwright.reason.impasse.YardText.narrow;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.solve.Impossibility;
import streamwright.solve.Obstructions;
import streamwright.yard.Yard;

/**
 * Yards that are built to clash in one rule or in several, among props and rules that have nothing to do with it: the
 * clash found is the one that was built in. A hop is 1.1 times its path plus 2 m, a lead 1.1 times plus 0.3 m; a stream
 * of ws2811 holds 823 pixels at 40 frames a second, 740 with a tenth kept spare.
 */
class ClashTest {
    private static final double SECONDS = 60;

    @TempDir
    private Path folder;

    /** A clash built in: its limits and its things. */
    record Planted(String name, String yard, List<String> models, List<String> limits, List<String> things) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static String at(String controller) {
        return "controllers: [{id: booth, model: " + controller + ", at: [0, 0]}]\n";
    }

    private static final String DIM = at("source-4") + "brightness: 0.01\n";
    private static final String NARROW = at("narrow") + "brightness: 0.01\n";
    private static final String MINE = "boards: [{model: mine}]\n";

    private static String prop(String id, int pixels, double x) {
        return "  - {id: " + id + ", pixel: ws2811, pixels: " + pixels + ", feed: [" + x + ", 0]}\n";
    }

    /** A prop that clashes with nothing. */
    private static final String BYSTANDER = prop("bystander", 10, 5);

    private static String props(String... props) {
        return "props:\n" + BYSTANDER + String.join("", props);
    }

    static List<Planted> planted() {
        return Stream.of(streams(), lengths(), counts(), hardware(), others(), power(), pairs(), obstacles())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Planted> streams() {
        return List.of(
                // 780 pixels refresh in time, but not with a tenth kept spare
                new Planted(
                        "a string too long for a stream",
                        DIM + props(prop("gable", 780, 10)),
                        List.of(),
                        List.of("frameRate 40", "spare 0.1"),
                        List.of("prop gable")),
                new Planted(
                        "frame rate alone",
                        DIM + "frameRate: 60\nspare: 0\n" + props(prop("gable", 780, 10)),
                        List.of(),
                        List.of("frameRate 60"),
                        List.of("prop gable")),
                new Planted(
                        "the controller's pixels",
                        NARROW + "spare: 0\n" + props(prop("gable", 130, 10)),
                        List.of(narrow("streamMost: 120")),
                        List.of("controller narrow, streamMost 120"),
                        List.of("prop gable")),
                new Planted(
                        "a full stream",
                        NARROW + "spare: 0\n" + "props:\n" + prop("gable", 500, 10) + prop("arch", 500, 12),
                        List.of(narrow()),
                        List.of("frameRate 40", "controller narrow, jacks 1"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "channels",
                        NARROW + "props:\n" + prop("gable", 60, 10) + prop("arch", 60, 12),
                        List.of(narrow("channelMost: 300")),
                        List.of("controller narrow, channelMost 300"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "channels kept too far apart",
                        NARROW + "channels: keep\nspare: 0\nprops:\n"
                                + prop("gable", 60, 10).replace("pixels:", "channel: 1, pixels:")
                                + prop("middle", 60, 11).replace("pixels:", "channel: 1201, pixels:")
                                + prop("arch", 60, 12).replace("pixels:", "channel: 2401, pixels:"),
                        List.of(narrow()),
                        List.of("frameRate 40", "channels: keep", "controller narrow, jacks 1"),
                        List.of("prop gable", "prop arch")));
    }

    /** A board might hang elsewhere, were leads longer. */
    private static final List<String> LEADS =
            List.of("rules.leadData 6 m", "rules.jumperData 3 m", "rules.nullsMost 2");

    private static List<Planted> lengths() {
        return List.of(
                new Planted(
                        "a lead too long",
                        DIM + "spots: [{id: pole, at: [5, 0]}]\n" + props(prop("gable", 50, 20)),
                        List.of(),
                        with(LEADS, "boards hang at the named spots only"),
                        List.of("prop gable")),
                new Planted(
                        "a hop too long",
                        DIM + "rules: {hopMost: 20}\n" + props(prop("gable", 50, 50)),
                        List.of(),
                        with(LEADS, "rules.hopMost 20 m"),
                        List.of("prop gable")),
                new Planted(
                        "a cable too long",
                        DIM + "rules: {cableMost: 50}\n" + props(prop("gable", 50, 50)),
                        List.of(),
                        with(LEADS, "rules.cableMost 50 m"),
                        List.of("prop gable")),
                // one cable has to go to both sides
                new Planted(
                        "a cable to both sides",
                        NARROW + "rules: {cableMost: 80}\n" + props(prop("gable", 50, 30), prop("arch", 50, -30)),
                        List.of(narrow()),
                        with(LEADS, "rules.cableMost 80 m", "controller narrow, jacks 1"),
                        List.of("prop gable", "prop arch")),
                // 1.1 times 50 m are a hop of 57 m, three times 50 m one of 152 m
                new Planted(
                        "slack",
                        DIM + "rules: {slack: 3, cableMost: 300}\n" + props(prop("gable", 50, 50)),
                        List.of(),
                        with(LEADS, "rules.hopMost 60 m", "rules.slack 3"),
                        List.of("prop gable")),
                new Planted(
                        "loops",
                        DIM + "rules: {trunkLoop: 31}\nprops:\n" + prop("gable", 50, 5),
                        List.of(),
                        List.of("rules.hopMost 60 m", "rules.trunkLoop 31 m"),
                        List.of("prop gable")),
                new Planted(
                        "a pond",
                        DIM + "obstacles: [{id: pond, ring: [[20, -5], [40, -5], [40, 5], [20, 5]]}]\n"
                                + props(prop("gable", 50, 30)),
                        List.of(),
                        List.of("obstacle pond"),
                        List.of("prop gable")));
    }

    private static List<Planted> counts() {
        String two = props(prop("gable", 50, 30), prop("arch", 50, 60));
        return List.of(
                new Planted(
                        "too few boards",
                        DIM + "boardCount: {most: 1}\nprops:\n" + prop("gable", 50, 30) + prop("arch", 50, 60),
                        List.of(),
                        List.of("rules.leadData 6 m", "rules.jumperData 3 m", "rules.nullsMost 2", "boardCount.most 1"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "too many boards asked for",
                        DIM + "boardCount: {least: 4}\n" + two,
                        List.of(),
                        List.of("boardCount.least 4"),
                        List.of()),
                new Planted(
                        "more boards asked for than may be used",
                        DIM + "boards: [{model: mine, most: 2}]\nboardCount: {least: 3}\n" + two,
                        List.of(board()),
                        List.of("boardCount.least 3", "boards: mine, most 2"),
                        List.of()),
                new Planted(
                        "too few of a model",
                        DIM + "boards: [{model: mine, most: 1}]\n"
                                + "props: [{id: tree, pixel: ws2811, strings: {count: 4, pixels: 50, feed: [10, 0]}, follow: none}]\n",
                        List.of(board()),
                        List.of("follow (which strings may share a port)", "boards: mine, most 1"),
                        List.of("3 of the 4 strings of prop tree (")),
                new Planted(
                        "a spot's boards",
                        DIM + MINE + "spots: [{id: pole, at: [10, 0], most: 1}]\n"
                                + "props: [{id: tree, pixel: ws2811, strings: {count: 3, pixels: 50, feed: [10, 0]}, follow: none}]\n",
                        List.of(board()),
                        List.of("follow (which strings may share a port)", "spots: pole, most 1"),
                        List.of("prop tree (3 strings)")));
    }

    private static List<Planted> hardware() {
        String apart = "props:\n" + prop("gable", 50, 40) + prop("arch", 50, 80);
        String loose = "rules: {hopMost: 200, cableMost: 300}\n";
        return List.of(
                new Planted(
                        "a port's pixels",
                        DIM + MINE + props(prop("gable", 100, 10)),
                        List.of(board("portMost: 80")),
                        List.of("board mine, portMost 80"),
                        List.of("prop gable")),
                new Planted(
                        "boards on a cable",
                        NARROW + loose + apart,
                        List.of(narrow("boardsPerCable: 1")),
                        with(LEADS, "controller narrow, jacks 1", "controller narrow, boardsPerCable 1"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "IDs",
                        NARROW + MINE + loose + apart,
                        List.of(narrow(), board("address: {least: 3, most: 3, style: rotary}")),
                        with(LEADS, "board mine, IDs 3 to 3", "controller narrow, jacks 1"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "no address",
                        NARROW + MINE + loose + apart,
                        List.of(narrow(), board("address: none")),
                        List.of(
                                "follow (which strings may share a port)",
                                "board mine has no address",
                                "controller narrow, jacks 1"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "no board for outputs",
                        DIM + MINE + "props:\n" + BYSTANDER + "  - {id: flood, outputs: 2, at: [10, 0]}\n",
                        List.of(board()),
                        List.of(),
                        List.of("prop flood")));
    }

    private static List<Planted> others() {
        return List.of(
                new Planted(
                        "streams that no port hears",
                        NARROW + MINE + "spare: 0\nprops:\n" + prop("gable", 500, 10) + prop("arch", 500, 12),
                        List.of(narrow("streams: 4"), board("ports: [1, 1, 1]")),
                        List.of("frameRate 40", "controller narrow, jacks 1"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "two kinds of pixels",
                        NARROW + "props:\n" + prop("gable", 50, 10)
                                + prop("arch", 50, 12).replace("ws2811", "ws2816"),
                        List.of(narrow()),
                        List.of("controller narrow, jacks 1"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "two voltages",
                        DIM + "boardCount: {most: 1}\nprops:\n" + prop("gable", 50, 10)
                                + prop("arch", 50, 12).replace("ws2811", "ws2812b"),
                        List.of(),
                        List.of("boardCount.most 1"),
                        List.of("prop gable", "prop arch")),
                // 510 slots are 170 pixels
                new Planted(
                        "universes",
                        DIM.replace("0]}", "0], firstUniverse: 63999}")
                                + props(prop("gable", 180, 10)).replace(BYSTANDER, ""),
                        List.of(),
                        List.of("controller booth, firstUniverse 63999"),
                        List.of("prop gable")),
                new Planted(
                        "channels kept beyond the last",
                        DIM + "channels: keep\nprops:\n"
                                + prop("gable", 60, 10).replace("pixels:", "channel: 65500, pixels:")
                                + prop("arch", 60, 11).replace("pixels:", "channel: 1, pixels:"),
                        List.of(),
                        List.of("channels: keep", "controller source-4, channelMost 65535"),
                        List.of("prop gable")),
                new Planted(
                        "a panel too far",
                        DIM + "boards: [{model: matrix-64}, {model: quad}]\nspots: [{id: pole, at: [5, 0]}]\nprops:\n"
                                + BYSTANDER
                                + "  - {id: wall, pixel: ws2811, panel: {columns: 8, rows: 8}, at: [15, 0]}\n",
                        List.of(),
                        List.of("rules.leadData 6 m", "boards hang at the named spots only"),
                        List.of("prop wall")),
                new Planted(
                        "outputs",
                        DIM + "boards: [{model: mains-sixteen, most: 1}, {model: quad}]\nprops:\n" + BYSTANDER
                                + "  - {id: floods, outputs: 9, at: [10, 0]}\n  - {id: pumps, outputs: 8, at: [11, 0]}\n",
                        List.of(),
                        List.of("boards: mains-sixteen, most 1"),
                        List.of("prop floods", "prop pumps")));
    }

    private static List<Planted> obstacles() {
        String wall = "obstacles: [{id: wall, ring: [[7, -20], [8, -20], [8, 20], [7, 20]]}]\n";
        return List.of(
                new Planted(
                        "a wall before a spot",
                        DIM + wall + "spots: [{id: pole, at: [5, 0]}]\n" + props(prop("gable", 50, 10)),
                        List.of(),
                        with(LEADS, "boards hang at the named spots only", "obstacle wall"),
                        List.of("prop gable")),
                new Planted(
                        "a wall before the cable",
                        DIM + wall + "rules: {hopMost: 30}\n" + props(prop("gable", 50, 10)),
                        List.of(),
                        with(LEADS, "rules.hopMost 30 m", "obstacle wall"),
                        List.of("prop gable")));
    }

    private static List<String> with(List<String> some, String... more) {
        return Stream.concat(some.stream(), Stream.of(more)).toList();
    }

    private static List<Planted> power() {
        return List.of(
                new Planted(
                        "a fuse",
                        at("source-4") + MINE + "brightness: 1\n"
                                + props(prop("gable", 50, 10)).replace(BYSTANDER, ""),
                        List.of(board("fuse: 0.05")),
                        List.of("brightness 1", "board mine, fuse 0.05 A"),
                        List.of("prop gable")),
                new Planted(
                        "volts",
                        at("source-4") + MINE + "rules: {connector: 100}\nprops:\n" + prop("gable", 50, 10),
                        List.of(board()),
                        List.of("brightness 1", "rules.connector 100 ohm", "pixel ws2811, voltsLow 10 V"),
                        List.of("prop gable")),
                // 0.055 A, and 1 % of a fuse of 5 A
                new Planted(
                        "a share of a fuse",
                        at("source-4") + MINE + "rules: {fuseLoad: 0.01}\nprops:\n" + prop("gable", 50, 10),
                        List.of(board("fuse: 5")),
                        List.of("brightness 1", "rules.fuseLoad 0.01", "board mine, fuse 5 A"),
                        List.of("prop gable")),
                new Planted(
                        "a board's amps",
                        at("source-4") + MINE + props(prop("gable", 100, 10)),
                        List.of(board("ampsMost: 5")),
                        List.of("brightness 1", "board mine, ampsMost 5 A"),
                        List.of("prop gable")),
                // 2.75 A each
                new Planted(
                        "a spot's amps",
                        at("source-4") + MINE + "spots: [{id: pole, at: [10, 0], ampsMost: 5}]\n" + "props:\n"
                                + prop("gable", 50, 10) + prop("arch", 50, 11) + prop("dot", 1, 12),
                        List.of(board()),
                        List.of("brightness 1", "spots: pole, ampsMost 5 A", "boards hang at the named spots only"),
                        List.of("prop gable", "prop arch")));
    }

    private static List<Planted> pairs() {
        return List.of(
                // 400 and 400 pixels need two streams: two cables, but the second does not reach
                new Planted(
                        "boards and streams",
                        NARROW + MINE + "boardCount: {most: 1}\nspare: 0\nprops:\n" + prop("gable", 500, 10)
                                + prop("arch", 500, 11),
                        List.of(narrow("jacks: 2"), board()),
                        List.of("frameRate 40", "boardCount.most 1"),
                        List.of("prop gable", "prop arch")),
                new Planted(
                        "boards and a spot's boards",
                        DIM + MINE
                                + "boardCount: {most: 2}\nspots: [{id: pole, at: [10, 0], most: 1}, {id: post, at: [50, 0]}]\n"
                                + "props:\n  - {id: tree, pixel: ws2811, strings: {count: 3, pixels: 50, feed: [10, 0]}, follow: none}\n"
                                + prop("arch", 50, 50),
                        List.of(board("ports: [any, any]")),
                        with(LEADS, "follow (which strings may share a port)", "spots: pole, most 1"),
                        List.of("prop tree (3 strings)")),
                new Planted(
                        "hop and lead",
                        DIM
                                + "spots: [{id: far, at: [100, 0]}, {id: near, at: [20, 0]}]\nrules: {hopMost: 50, cableMost: 300}\n"
                                + props(prop("gable", 50, 100)).replace(BYSTANDER, ""),
                        List.of(),
                        with(LEADS, "rules.hopMost 50 m"),
                        List.of("prop gable")));
    }

    @ParameterizedTest
    @MethodSource("planted")
    void theClashFoundIsTheOneBuiltIn(Planted planted) {
        Yard yard = YardText.read(folder, planted.yard, planted.models);
        Ground ground = GroundPaths.of(yard);
        assertThat(Impossibility.proved(yard, ground, SECONDS, () -> false)).isTrue();
        Oracle oracle = new Oracle(System.nanoTime() + (long) (SECONDS * 1e9), () -> false);
        Clash clash = Clash.of(yard, Obstructions.of(yard, ground), oracle).clash();
        assertThat(clash.limits()).containsExactlyInAnyOrderElementsOf(planted.limits);
        assertThat(clash.things()).hasSameSizeAs(planted.things);
        planted.things.forEach(thing -> assertThat(clash.things()).anyMatch(found -> found.startsWith(thing)));
        assertThat(clash.smallest()).as(clash.text()).isTrue();
    }

    /** No time at all: nothing is let go, and nothing is said to be proved. */
    @Test
    void whatIsNotFoundOutInTheTimeIsSaid() {
        Yard yard = YardText.read(folder, DIM + props(prop("gable", 780, 10)), List.of());
        Oracle late = new Oracle(System.nanoTime(), () -> false);
        Clash clash = Clash.of(yard, List.of(), late).clash();
        assertThat(clash.smallest()).isFalse();
        assertThat(clash.limits()).contains("frameRate 40", "rules.hopMost 60 m");
        assertThat(clash.things()).containsExactly("prop bystander", "prop gable");
        assertThat(clash.open()).containsAll(clash.limits()).containsAll(clash.things());
        assertThat(clash.text()).contains("was not found out in the time");
    }
}
