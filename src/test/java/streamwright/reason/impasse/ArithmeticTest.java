package streamwright.reason.impasse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static streamwright.reason.impasse.YardText.board;
import static streamwright.reason.impasse.YardText.narrow;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import streamwright.physics.GroundPaths;
import streamwright.plan.Rule;
import streamwright.solve.Obstructions;
import streamwright.solve.Outcome;
import streamwright.yard.Yard;

/**
 * Conditions that every plan meets: told with figure and limit just outside, and not told at the limit. A hop is 1.1
 * times its path plus 2 m, a lead 1.1 times plus 0.3 m; a stream of ws2811 holds 823 pixels at 40 frames a second, 740
 * with a tenth kept spare. That the conditions are true of every yard is tried beside brute force on tiny yards.
 */
class ArithmeticTest {
    @TempDir
    private Path folder;

    /** @param text with {@code LIMIT} where the values go; models likewise */
    record Condition(
            String text,
            List<String> models,
            Object at,
            Object outside,
            Rule rule,
            String about,
            double figure,
            double limit) {
        @Override
        public String toString() {
            return rule.label() + ", " + about + " " + outside;
        }
    }

    private static final String BOOTH = "controllers: [{id: booth, model: source-4, at: [0, 0]}]\nbrightness: 0.001\n";
    private static final String NARROW = BOOTH.replace("source-4", "narrow");
    private static final String MINE = "boards: [{model: mine}]\n";
    private static final String LAMP = "props: [{id: lamp, pixel: ws2811, pixels: 100, feed: [10, 0]}]\n";
    private static final String BRIGHT = "controllers: [{id: booth, model: source-4, at: [0, 0]}]\n" + MINE;

    private static final String FIVE =
            "props: [{id: tree, pixel: ws2811, strings: {count: 5, pixels: 50, feed: [10, 0]}, follow: none}]\n";

    static List<Condition> conditions() {
        return Stream.of(ofOne(), ofStreams(), ofReach(), ofAll(), ofCables(), ofMore())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Condition> ofOne() {
        return List.of(
                new Condition(
                        BOOTH + LAMP.replace("100", "LIMIT"), List.of(), 740, 741, Rule.STREAM_LIMIT, "lamp", 741, 740),
                new Condition(
                        BOOTH + MINE + LAMP,
                        List.of(board("portMost: LIMIT")),
                        100,
                        99,
                        Rule.PORT_PIXELS,
                        "lamp",
                        100,
                        99),
                new Condition(
                        NARROW + MINE + LAMP,
                        List.of(narrow("streams: 2"), board("ports: [4, LIMIT]")),
                        2,
                        3,
                        Rule.PORT_STREAM,
                        "lamp",
                        3,
                        2),
                // one pixel of 55 mA, 80 % of the fuse
                new Condition(
                        BRIGHT + LAMP, List.of(board("fuse: LIMIT")), 0.06875, 0.06, Rule.FUSE, "lamp", 0.055, 0.048),
                new Condition(
                        BRIGHT + LAMP, List.of(board("ampsMost: LIMIT")), 5.5, 5.4, Rule.BOARD_AMPS, "lamp", 5.5, 5.4),
                new Condition(
                        BRIGHT + "spots: [{id: pole, at: [10, 0], ampsMost: LIMIT}]\n" + LAMP,
                        List.of(board()),
                        5.5,
                        5.4,
                        Rule.SPOT_AMPS,
                        "lamp",
                        5.5,
                        5.4),
                // 55 mA over a connector of 100 ohms leave 12 - 5.5 V, and a little less by the lead of 0.3 m
                new Condition(
                        BRIGHT + "rules: {connector: LIMIT}\n" + LAMP,
                        List.of(board()),
                        30,
                        100,
                        Rule.VOLTS,
                        "lamp",
                        6.49,
                        10),
                new Condition(
                        BOOTH
                                + "channels: keep\nprops: [{id: lamp, channel: LIMIT, pixel: ws2811, pixels: 100, feed: [1, 0]}]\n",
                        List.of(),
                        65_236,
                        65_237,
                        Rule.CHANNEL_RANGE,
                        "lamp",
                        65_536,
                        65_535));
    }

    private static List<Condition> ofStreams() {
        String cable = NARROW + MINE + "spots: [{id: pole, at: [10, 0]}]\nprops: [{id: lamp, ";
        String outputs = "outputs: 2, at: [10, 0]}]\n";
        String panel = "pixel: ws2811, panel: {columns: 8, rows: 8}, at: [10, 0]}]\n";
        String none = "address: none\nprice: 1\n";
        return List.of(
                new Condition(
                        cable + outputs,
                        List.of(
                                narrow("streams: 2"),
                                "board: mine\ndrives: outputs\noutputs: 2\nhears: LIMIT\nampsMost: 2\n" + none),
                        2,
                        3,
                        Rule.PORT_STREAM,
                        "lamp",
                        3,
                        2),
                // a panel's board needs all of its streams
                new Condition(
                        cable + panel,
                        List.of(narrow("streams: 2"), "board: mine\ndrives: panel\nstreams: [1, LIMIT]\n" + none),
                        2,
                        3,
                        Rule.PORT_STREAM,
                        "lamp",
                        3,
                        2));
    }

    private static List<Condition> ofReach() {
        String pole = BOOTH + "spots: [{id: pole, at: [LIMIT, 0]}]\n" + LAMP;
        String wall = BOOTH + "obstacles: [{id: pond, ring: [[3, -9], [LIMIT, -9], [LIMIT, 9], [3, 9]]}]\n";
        return List.of(
                // 1.1 * 10 + 0.3 m; 6 m and two nulls of 3 m each reach 12 m
                new Condition(pole, List.of(), 20, 21, Rule.LEAD_NULLS, "lamp", 12.4, 12),
                new Condition(
                        BOOTH + "rules: {hopMost: LIMIT}\n" + LAMP,
                        List.of(),
                        13,
                        12.9,
                        Rule.HOP_LENGTH,
                        "lamp",
                        13,
                        12.9),
                new Condition(
                        BOOTH + "rules: {cableMost: LIMIT}\n" + LAMP,
                        List.of(),
                        13,
                        12.9,
                        Rule.CABLE_LENGTH,
                        "lamp",
                        13,
                        12.9),
                new Condition(wall + LAMP, List.of(), 10, 11, Rule.OBSTACLE, "lamp", 0, 1));
    }

    private static List<Condition> ofAll() {
        return List.of(
                new Condition(
                        NARROW + FIVE.replace("50", "LIMIT"),
                        List.of(narrow()),
                        148,
                        149,
                        Rule.STREAM_LIMIT,
                        "yard",
                        2,
                        1),
                // strings are whole: three of 400 fill three streams, though their pixels would fit two
                new Condition(
                        NARROW + FIVE.replace("50", "400").replace("5,", "LIMIT,"),
                        List.of(narrow("streams: 2")),
                        2,
                        3,
                        Rule.STREAM_LIMIT,
                        "yard",
                        3,
                        2),
                new Condition(
                        BOOTH + LAMP,
                        List.of(controller("channelMost: LIMIT")),
                        300,
                        299,
                        Rule.CHANNEL_RANGE,
                        "yard",
                        300,
                        299),
                new Condition(
                        BOOTH + MINE + "boardCount: {most: LIMIT}\n" + FIVE,
                        List.of(board()),
                        3,
                        2,
                        Rule.BOARD_COUNT,
                        "yard",
                        5,
                        4),
                new Condition(
                        BOOTH + "boardCount: {least: LIMIT}\n" + FIVE, List.of(), 5, 6, Rule.BOARD_COUNT, "yard", 5, 6),
                new Condition(
                        BOOTH + "boards: [{model: mine, most: LIMIT}]\n" + FIVE,
                        List.of(board()),
                        3,
                        2,
                        Rule.BOARD_MOST,
                        "yard",
                        5,
                        4),
                new Condition(
                        BOOTH + MINE + "spots: [{id: pole, at: [10, 0], most: LIMIT}]\n" + FIVE,
                        List.of(board()),
                        3,
                        2,
                        Rule.SPOT_MOST,
                        "yard",
                        5,
                        4));
    }

    private static String controller(String line) {
        return narrow(line, "controller: source-4");
    }

    private static List<Condition> ofCables() {
        return List.of(
                new Condition(
                        NARROW + MINE + FIVE,
                        List.of(narrow("boardsPerCable: LIMIT"), board()),
                        3,
                        2,
                        Rule.BOARDS_PER_CABLE,
                        "yard",
                        5,
                        4),
                new Condition(
                        NARROW + MINE + FIVE,
                        List.of(narrow(), board("address: {least: 0, most: LIMIT, style: rotary}")),
                        2,
                        1,
                        Rule.ID_UNIQUE,
                        "yard",
                        5,
                        4),
                new Condition(
                        NARROW + MINE + FIVE,
                        List.of(narrow("jacks: LIMIT"), board("address: none")),
                        3,
                        2,
                        Rule.UNADDRESSED_ALONE,
                        "yard",
                        5,
                        4));
    }

    private static List<Condition> ofMore() {
        String asked = "boardCount: {least: 4}\n";
        String kept = "  - {id: LAMP, channel: AT, pixel: ws2811, pixels: 10, feed: [10, 0]}\n";
        return List.of(
                new Condition(
                        BOOTH + asked + "boards: [{model: mine, most: LIMIT}]\n" + FIVE,
                        List.of(board()),
                        4,
                        3,
                        Rule.BOARD_COUNT,
                        "yard",
                        3,
                        4),
                new Condition(
                        BOOTH + asked + MINE + "spots: [{id: pole, at: [10, 0], most: LIMIT}]\n" + FIVE,
                        List.of(board()),
                        4,
                        3,
                        Rule.BOARD_COUNT,
                        "yard",
                        3,
                        4),
                new Condition(
                        NARROW + asked + MINE + FIVE,
                        List.of(narrow("boardsPerCable: LIMIT"), board()),
                        4,
                        3,
                        Rule.BOARD_COUNT,
                        "yard",
                        3,
                        4),
                // five strings of 2.75 A
                new Condition(
                        BRIGHT + "spots: [{id: pole, at: [10, 0], ampsMost: LIMIT}]\n" + FIVE,
                        List.of(board()),
                        13.75,
                        13.7,
                        Rule.SPOT_AMPS,
                        "yard",
                        13.75,
                        13.7),
                // 740 pixels of three channels: 1 to 2220, of which a string of ten ends with the last or behind it
                new Condition(
                        NARROW + "channels: keep\nprops:\n"
                                + kept.replace("LAMP", "first").replace("AT", "1")
                                + kept.replace("LAMP", "last").replace("AT", "LIMIT"),
                        List.of(narrow()),
                        2191,
                        2194,
                        Rule.CHANNEL_KEEP,
                        "yard",
                        2,
                        1));
    }

    @ParameterizedTest
    @MethodSource("conditions")
    void isToldOutsideTheLimitOnly(Condition condition) {
        assertThat(told(condition, condition.at)).isEmpty();
        assertThat(told(condition, condition.outside)).anySatisfy(each -> {
            assertThat(each.rule()).isEqualTo(condition.rule);
            assertThat(each.about()).isEqualTo(condition.about);
            assertThat(each.figure()).isCloseTo(condition.figure, within(0.02));
            assertThat(each.limit()).isCloseTo(condition.limit, within(1e-6));
        });
    }

    private List<Outcome.Obstruction> told(Condition condition, Object value) {
        Path here = folder.resolve(value.toString());
        here.toFile().mkdirs();
        assertThat(Files.isDirectory(here)).isTrue();
        Yard yard = YardText.read(
                here,
                condition.text.replace("LIMIT", value.toString()),
                condition.models.stream()
                        .map(model -> model.replace("LIMIT", value.toString()))
                        .toList());
        return Obstructions.of(yard, GroundPaths.of(yard));
    }
}
