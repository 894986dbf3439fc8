package streamwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import streamwright.plan.PanelUse;
import streamwright.plan.Rule;
import streamwright.plan.Status;
import streamwright.plan.StreamUse;
import streamwright.yard.Point;

/** What a finding tells: its figure, its limit and its words, of the lane with one thing wrong. */
class ToldTest {
    private static final Scene LANE = Lane.scene();
    private static final Scene ANYWHERE = LANE.yard("spots", List.of());
    private static final String PARTS = "boards.5.panels.0.parts";

    static Stream<Arguments> findings() {
        return Stream.of(
                // switch 4 stands for 8
                told(
                        LANE.plan("boards.0.switches", "0001"),
                        Rule.ID_SWITCHES,
                        8,
                        1,
                        "B1: its switches are given as 0001, but the ID 1 is 1000"),
                told(
                        LANE.plan("boards.0.switches", "1100"),
                        Rule.ID_SWITCHES,
                        3,
                        1,
                        "B1: its switches are given as 1100, but the ID 1 is 1000"),
                told(
                        LANE.plan("boards.0.switches", null),
                        Rule.ID_SWITCHES,
                        0,
                        1,
                        "B1: its switches are not given, but the ID 1 is 1000"),
                told(
                        LANE.plan("boards.3.switches", "4"),
                        Rule.ID_SWITCHES,
                        -1,
                        3,
                        "B4: its switches are given as 4, but the ID 3 is 3"),
                told(
                        LANE.plan("boards.0.boardId", 16),
                        Rule.ID_RANGE,
                        16,
                        15,
                        "B1: has the ID 16, but its model can be set to 0 to 15"),
                told(
                        LANE.plan("boards.0.boardId", -1),
                        Rule.ID_RANGE,
                        -1,
                        0,
                        "B1: has the ID -1, but its model can be set to 0 to 15"),
                told(LANE.plan("boards.1.id", "B1"), Rule.ID_UNIQUE, 2, 1, "B1: 2 boards of the plan have this name"),
                told(
                        LANE.plan("boards.0.ports.1.strings.0.nulls", 0),
                        Rule.LEAD_NULLS,
                        0,
                        1,
                        "star: a lead of 9 m needs 1 null pixel, but has 0"),
                told(
                        LANE.yard("rules.nullsMost", 0),
                        Rule.LEAD_NULLS,
                        1,
                        0,
                        "star: a lead of 9 m, but 6 m is the longest with the 0 null pixels allowed"),
                told(
                        LANE.yard("rules.jumperData", 0.5).yard("rules.nullsMost", 6),
                        Rule.LEAD_NULLS,
                        0,
                        1,
                        "arch 2: a jumper of 1 m needs 1 null pixel, but has 0"),
                told(
                        LANE.yard("rules.jumperData", 0.5).yard("rules.nullsMost", 0),
                        Rule.LEAD_NULLS,
                        1,
                        0,
                        "arch 2: a jumper of 1 m, but 0.5 m is the longest with the 0 null pixels allowed"),
                told(LANE.plan("boards.0.spot", null), Rule.SPOT_MOST, 1, 0, "B1: names no spot"),
                told(
                        LANE.plan("boards.0.spot", "cellar"),
                        Rule.SPOT_MOST,
                        1,
                        0,
                        "B1: at cellar, but the yard has no such spot"),
                told(ANYWHERE, Rule.SPOT_MOST, 1, 0, "B1: at the spot porch, but the yard names no spots"),
                told(
                        ANYWHERE.plan("boards.0.spot", null).plan("boards.0.at", new Point(7, 8, 9)),
                        Rule.SPOT_MOST,
                        1,
                        0,
                        "B1: at [7, 8, 9], where no string has its feed"),
                told(
                        LANE.plan("boards.0.at", new Point(11, 0)),
                        Rule.SPOT_MOST,
                        1,
                        0,
                        "B1: said to be at [11, 0, 0], but the spot porch is elsewhere"),
                told(
                        LANE.plan("totals.boards", 5),
                        Rule.TOTALS,
                        5,
                        6,
                        "boards: said to be 5, where it should be 6 in all"),
                told(
                        LANE.plan("totals.lead", 22.0),
                        Rule.TOTALS,
                        22,
                        23,
                        "lead: said to be 22 m, where it should be 23 m in all"),
                told(
                        LANE.planList("cables.0.streams", Scene.with(new StreamUse(1, "rgb", 1, 180, 740, 1, 1))),
                        Rule.PORT_STREAM,
                        2,
                        1,
                        "shed jack 1 stream 1: listed 2 times"),
                told(
                        LANE.planList("cables.0.boards", Scene.without(1)),
                        Rule.JACK_ONCE,
                        0,
                        1,
                        "B2: listed on no cable"),
                told(
                        LANE.planList("cables.1.boards", Scene.with("B1")),
                        Rule.JACK_ONCE,
                        2,
                        1,
                        "B1: listed 2 times on cables"),
                told(
                        LANE.plan("boards.0.jack", 2),
                        Rule.JACK_ONCE,
                        2,
                        1,
                        "B1: said to be on shed jack 2, but listed on shed jack 1"),
                told(
                        LANE.plan("boards.3.ports.0.stream", 9),
                        Rule.PORT_STREAM,
                        9,
                        4,
                        "B4 port 2: hears stream 9, but the cable has streams 1 to 4"),
                // 20 pixels and a null
                told(
                        LANE.yard("boards.0.model.portMost", 20),
                        Rule.PORT_PIXELS,
                        21,
                        20,
                        "B1 port 4: passes on 21 pixels, more than 20 pixels"),
                // the first stream that differs, and what stands there instead
                told(
                        parts(4, 3),
                        Rule.PORT_STREAM,
                        4,
                        3,
                        "sign: cut over streams [4, 3], but a matrix cuts over [3, 4]"),
                told(
                        parts(3, 2),
                        Rule.PORT_STREAM,
                        2,
                        4,
                        "sign: cut over streams [3, 2], but a matrix cuts over [3, 4]"),
                told(parts(3), Rule.PORT_STREAM, 0, 4, "sign: cut over streams [3], but a matrix cuts over [3, 4]"),
                told(
                        parts(3, 4, 1),
                        Rule.PORT_STREAM,
                        1,
                        0,
                        "sign: cut over streams [3, 4, 1], but a matrix cuts over [3, 4]"),
                told(
                        LANE.plan(PARTS + ".0.pixels", 15).plan(PARTS + ".1.pixels", 17),
                        Rule.PORT_STREAM,
                        17,
                        15,
                        "sign: cut into parts of 15 to 17 pixels, not into equal ones"),
                told(
                        LANE.planList(
                                "boards.5.panels",
                                Scene.with(LANE.plan().boards().get(5).panels().get(0))),
                        Rule.PORT_ONCE,
                        2,
                        1,
                        "B6: carries 2 panels, but a board drives one"),
                told(
                        LANE.plan("boards.5.model", "quad"),
                        Rule.PORT_ONCE,
                        1,
                        0,
                        "sign: on B6, but a quad drives no panels"));
    }

    private static Arguments told(Scene scene, Rule rule, double figure, double limit, String text) {
        String about = text.substring(0, text.indexOf(':'));
        return Arguments.of(scene, new Finding(rule, about, figure, limit, text));
    }

    private static Scene parts(int... streams) {
        return LANE.plan(
                PARTS,
                Arrays.stream(streams)
                        .mapToObj(stream -> new PanelUse.Part(stream, 1, 16, 886))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("findings")
    void figureLimitAndWords(Scene scene, Finding finding) {
        assertThat(scene.audit().list()).contains(finding);
        assertThat(scene.audit().clean()).isFalse();
    }

    @Test
    void nothingIsToldOfAPlanThatBreaksNothing() {
        assertThat(LANE.audit().clean()).isTrue();
        // the same to the cent is proof enough
        assertThat(LANE.plan("status", Status.OPTIMAL)
                        .plan("bound", 279.995)
                        .audit()
                        .clean())
                .isTrue();
        // parts that differ by one are as equal as an odd number of pixels can be
        assertThat(LANE.plan(PARTS + ".1.pixels", 17).audit().list())
                .extracting(Finding::text)
                .noneMatch(text -> text.contains("equal ones"));
    }
}
