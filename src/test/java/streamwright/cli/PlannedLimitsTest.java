package streamwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import streamwright.check.Audit;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.layout.Assembly;
import streamwright.physics.Ground;
import streamwright.physics.GroundPaths;
import streamwright.plan.Plan;
import streamwright.solve.Budget;
import streamwright.solve.Outcome;
import streamwright.solve.Planner;
import streamwright.yard.Yard;

/**
 * The planner at each limit of yard and hardware: just inside it and at it one and the same plan, just outside a dearer
 * one or none. A hop is 1.1 times its path plus 2 m, a lead 1.1 times plus 0.3 m; a stream of ws2811 holds 823 pixels at
 * 40 frames a second, 740 with a tenth kept spare.
 */
class PlannedLimitsTest {
    @TempDir
    private Path folder;

    /**
     * @param text of the yard, with {@code LIMIT} where the values go
     * @param models more models, each a file of its own, with {@code LIMIT} likewise
     * @param none whether no plan keeps the outside value; else a dearer one does
     */
    record Limit(
            String name, String text, List<String> models, Object inside, Object at, Object outside, boolean none) {
        @Override
        public String toString() {
            return name + " at " + at;
        }
    }

    private static final String BOOTH = "controllers: [{id: booth, model: source-4, at: [0, 0]}]\nbrightness: 0.001\n";
    private static final String ONE_STREAM =
            "controllers: [{id: booth, model: narrow, at: [0, 0]}]\nbrightness: 0.001\n";
    private static final String NARROW = """
            controller: narrow
            jacks: 1
            streams: 1
            boardsPerCable: 8
            streamMost: 1024
            channelMost: 65535
            universeSlots: 510
            """;

    /** Two strings, too far apart for one board. */
    private static final String APART = """
            props:
              - {id: near, pixel: ws2811, pixels: 100, feed: [10, 0], tail: [11, 0]}
              - {id: far, pixel: ws2811, pixels: 100, feed: [40, 0], tail: [41, 0]}
            """;

    private static String board(String fields) {
        return "board: mine\ndrives: pixels\nprice: 20\n" + fields;
    }

    private static final String MILD = """
            pixel: mild
            channels: 3
            bits: 24
            bitTime: 1.25
            reset: 300
            volts: 12
            voltsLow: 5
            amps: 0.055
            pitch: 0.01
            wire: {mm2: 2}
            source: invented
            """;

    private static final String SWITCHES = "address: {least: 0, most: 15, switches: 4}\n";

    static Stream<Limit> limits() {
        return Stream.of(yardLimits(), modelLimits(), otherHardware(), keptAndShared())
                .flatMap(List::stream);
    }

    private static List<Limit> yardLimits() {
        return List.of(
                new Limit(
                        "spare",
                        BOOTH + "spare: LIMIT\nprops: [{id: a, pixel: ws2811, pixels: 740, feed: [5, 0]}]\n",
                        List.of(),
                        0.09,
                        0.10,
                        0.11,
                        true),
                new Limit("hopMost", BOOTH + "rules: {hopMost: LIMIT}\n" + APART, List.of(), 35.1, 35, 34.9, true),
                // one cable is 13 + 35 m long, two are 13 and 46
                new Limit("cableMost", BOOTH + "rules: {cableMost: LIMIT}\n" + APART, List.of(), 48.1, 48, 47.9, false),
                new Limit("most", BOOTH + "boards: [{model: quad, most: LIMIT}]\n" + APART, List.of(), 3, 2, 1, true),
                new Limit("boardCount.most", BOOTH + "boardCount: {most: LIMIT}\n" + APART, List.of(), 3, 2, 1, true),
                new Limit("boardCount.least", BOOTH + "boardCount: {least: LIMIT}\n" + APART, List.of(), 1, 2, 3, true),
                new Limit("a spot's most", BOOTH + """
                                boards: [{model: mine}]
                                spots: [{id: pole, at: [10, 0], most: LIMIT}]
                                props: [{id: a, pixel: ws2811, strings: {count: 2, pixels: 50, feed: [10, 0]}, follow: none}]
                                """, List.of(board("ports: [1]\n" + SWITCHES)), 3, 2, 1, true),
                // 100 pixels of 55 mA draw 5.5 A
                new Limit(
                        "a spot's ampsMost",
                        """
                        controllers: [{id: booth, model: source-4, at: [0, 0]}]
                        boards: [{model: mine}]
                        spots: [{id: pole, at: [10, 0], ampsMost: LIMIT}]
                        props: [{id: a, pixel: ws2811, pixels: 100, feed: [10, 0]}]
                        """,
                        List.of(board("ports: [1]\nfuse: 20\n" + SWITCHES)),
                        5.6,
                        5.5,
                        5.4,
                        true));
    }

    private static List<Limit> modelLimits() {
        return List.of(
                new Limit(
                        "portMost",
                        BOOTH + "boards: [{model: mine}]\n" + APART,
                        List.of(board("ports: [1]\nportMost: LIMIT\n" + SWITCHES)),
                        101,
                        100,
                        99,
                        true),
                new Limit(
                        "a board's ampsMost",
                        """
                        controllers: [{id: booth, model: source-4, at: [0, 0]}]
                        boards: [{model: mine}]
                        props: [{id: a, pixel: ws2811, pixels: 100, feed: [10, 0]}]
                        """,
                        List.of(board("ports: [1]\nfuse: 20\nampsMost: LIMIT\n" + SWITCHES)),
                        5.6,
                        5.5,
                        5.4,
                        true),
                // 5.5 A are 80 % of 6.875 A: with less the string needs an injection
                new Limit(
                        "fuse",
                        """
                        controllers: [{id: booth, model: source-4, at: [0, 0]}]
                        boards: [{model: mine}]
                        rules: {connector: 0}
                        props: [{id: a, pixel: mild, pixels: 100, feed: [10, 0]}]
                        """,
                        List.of(board("ports: [1]\nfuse: LIMIT\n" + SWITCHES), MILD),
                        6.9,
                        6.875,
                        6.85,
                        false),
                new Limit(
                        "boardsPerCable",
                        ONE_STREAM + APART,
                        List.of(NARROW.replace("boardsPerCable: 8", "boardsPerCable: LIMIT")),
                        3,
                        2,
                        1,
                        true),
                // a rotary switch of positions 0 to 1 tells two boards apart
                new Limit(
                        "IDs of a rotary switch",
                        ONE_STREAM + "boards: [{model: mine}]\n" + APART,
                        List.of(NARROW, board("ports: [any]\naddress: {least: 0, most: LIMIT, style: rotary}\n")),
                        2,
                        1,
                        0,
                        true),
                // boards without address are alone on their cables
                new Limit(
                        "jacks for boards without address",
                        BOOTH.replace("source-4", "narrow") + "boards: [{model: solo}]\n" + APART,
                        List.of(NARROW.replace("jacks: 1", "jacks: LIMIT")),
                        3,
                        2,
                        1,
                        true));
    }

    private static List<Limit> otherHardware() {
        String lamps = BOOTH + "boards: [{model: quad}, {model: mains-sixteen}, {model: matrix-64}]\n";
        String string = "  - {id: a, pixel: ws2811, pixels: 50, feed: [10, 0]}\n";
        return List.of(
                new Limit(
                        "outputs of a board",
                        lamps + "props:\n" + string + "  - {id: floods, outputs: LIMIT, at: [12, 0]}\n",
                        List.of(),
                        15,
                        16,
                        17,
                        true),
                // props that do not fit one board's outputs together need two boards
                new Limit(
                        "outputs of two props",
                        lamps + "props:\n" + string
                                + "  - {id: floods, outputs: 8, at: [12, 0]}\n  - {id: pumps, outputs: LIMIT, at: [13, 0]}\n",
                        List.of(),
                        7,
                        8,
                        9,
                        false),
                // sixteen outputs of one channel take six pixels of three
                new Limit(
                        "a block's pixels",
                        ONE_STREAM + "boards: [{model: quad}, {model: mains-sixteen}]\nprops:\n"
                                + "  - {id: a, pixel: ws2811, pixels: LIMIT, feed: [10, 0]}\n"
                                + "  - {id: floods, outputs: 1, at: [12, 0]}\n",
                        List.of(NARROW),
                        733,
                        734,
                        735,
                        true),
                new Limit(
                        "a panel's lead",
                        lamps + "rules: {leadData: LIMIT}\nprops:\n" + string
                                + "  - {id: wall, pixel: ws2811, panel: {columns: 8, rows: 8}, at: [15, 0]}\n",
                        List.of(),
                        5.9,
                        5.8,
                        5.7,
                        true),
                new Limit(
                        "a panel's part of a stream",
                        lamps + "props:\n" + string
                                + "  - {id: wall, pixel: ws2811, panel: {columns: 4, rows: LIMIT}, at: [11, 0]}\n",
                        List.of(),
                        689,
                        690,
                        741,
                        true));
    }

    private static List<Limit> keptAndShared() {
        return List.of(
                new Limit("copies on one stream", ONE_STREAM + """
                                props:
                                  - {id: a, pixel: ws2811, pixels: LIMIT, feed: [10, 0]}
                                  - {id: b, copyOf: a, pixels: LIMIT, feed: [11, 0]}
                                """, List.of(NARROW), 739, 740, 741, true),
                // the window of the one stream reaches from the first channel of a to the last of b, 740 pixels at most
                new Limit("a window with a gap", ONE_STREAM + """
                                channels: keep
                                props:
                                  - {id: a, channel: 1, pixel: ws2811, pixels: 10, feed: [10, 0]}
                                  - {id: b, channel: LIMIT, pixel: ws2811, pixels: 10, feed: [11, 0]}
                                """, List.of(NARROW), 2188, 2191, 2194, true),
                // streams of one kind go on in whole pixels: a channel out of step needs another stream
                new Limit("channels in step", ONE_STREAM + """
                                channels: keep
                                props:
                                  - {id: a, channel: 1, pixel: ws2811, pixels: 10, feed: [10, 0]}
                                  - {id: b, channel: LIMIT, pixel: ws2811, pixels: 10, feed: [11, 0]}
                                """, List.of(NARROW), 31, 34, 35, true));
    }

    @ParameterizedTest
    @MethodSource("limits")
    void aPlanIsFoundUpToTheLimitAndNotBeyond(Limit limit) throws IOException {
        OptionalDouble inside = cost(limit, limit.inside);
        OptionalDouble at = cost(limit, limit.at);
        OptionalDouble outside = cost(limit, limit.outside);
        assertThat(inside).isPresent();
        assertThat(at).isPresent();
        assertThat(at.getAsDouble()).isCloseTo(inside.getAsDouble(), Offset.offset(1e-6));
        if (limit.none) {
            assertThat(outside).isEmpty();
        } else {
            assertThat(outside).isPresent();
            assertThat(outside.getAsDouble()).isGreaterThan(at.getAsDouble() + 0.01);
        }
    }

    /** Of the best plan found, which the audit must find clean; empty where there is none. */
    private OptionalDouble cost(Limit limit, Object value) throws IOException {
        Path here = Files.createDirectories(folder.resolve(value.toString()));
        Path models = Files.createDirectories(here.resolve("models"));
        for (int m = 0; m < limit.models.size(); m++) {
            Files.writeString(models.resolve(m + ".yaml"), limit.models.get(m).replace("LIMIT", value.toString()));
        }
        Path file = here.resolve("yard.yaml");
        Files.writeString(file, "models: models\n" + limit.text.replace("LIMIT", value.toString()));
        Read<Yard> read = YardFile.read(file);
        if (!(read instanceof Read.Good<Yard> good)) {
            throw new AssertionError(((Read.Bad<Yard>) read).problems().toString());
        }
        Yard yard = good.value();
        Ground ground = GroundPaths.of(yard);
        Outcome outcome = Planner.plan(yard, ground, Budget.effort(1), Outcome.SILENT);
        if (!(outcome instanceof Outcome.Found found)) {
            return OptionalDouble.empty();
        }
        Plan plan = Assembly.plan(yard, ground, found.layout());
        assertThat(Audit.of(yard, plan).list()).isEmpty();
        return OptionalDouble.of(plan.cost());
    }
}
