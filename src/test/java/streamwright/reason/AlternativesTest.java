package streamwright.reason;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import streamwright.check.Audit;
import streamwright.layout.Layout;
import streamwright.plan.Plan;
import streamwright.plan.Reason;
import streamwright.plan.Rule;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.Follow;
import streamwright.yard.PixelString;
import streamwright.yard.Yard;

/** Single questions on yards whose figures are worked out by hand. */
class AlternativesTest {
    private static final BoardModel FOUR = RandomYard.FOUR;

    /** Two ports that hear one stream. */
    private static final BoardModel TWIN =
            BoardModel.ofPorts("twin", List.of(1, 1), new Address.Switches(0, 15, 4), 25, 5);

    private static final PixelString A = Row.ball("a", 100, 10);
    private static final PixelString B = Row.ball("b", 100, 12);
    private static final PixelString C = Row.ball("c", 100, 20);

    private static void costs(Reason.Instead instead, double extra) {
        assertThat(instead.breaks()).as(instead.what()).isNull();
        assertThat(instead.extraCost()).as(instead.what()).isNotNull().isCloseTo(extra, within(1e-9));
    }

    private static void breaks(Reason.Instead instead, String rule, double figure, double limit) {
        assertThat(instead.breaks()).as(instead.what()).isEqualTo(new Reason.Broken(rule, figure, limit));
    }

    @Test
    void aStringOnAnotherBoardCostsTheDifferenceOfItsLeads() {
        Yard yard = Row.yard(List.of(FOUR), Follow.ANY, A, B, C);
        Plan plan = Row.plan(
                yard,
                Row.cable(
                        1,
                        Row.board(FOUR, 10, Row.chain(1, A), Row.chain(2, B)),
                        Row.board(FOUR, 20, Row.chain(3, C))));
        Reason reason = Row.reason(yard, plan, Reason.About.string("b", 1));
        // behind a by 2 m of jumper at 3, where it has 2 m of lead at 2
        costs(Row.instead(reason, "a place behind a"), 2);
        // a free port of the same board, on the stream with most room, and as far
        costs(Row.instead(reason, "port 4 of the same board"), 0);
        // string c alone keeps board 2: moved to b's end it leaves that board empty, 25 and 10 m of trunk less
        costs(Row.instead(Row.reason(yard, plan, Reason.About.string("c", 1)), "a place behind b"), 8 * 3 - 25 - 10);
    }

    @Test
    void aBoardOfItsOwnCostsABoardAndItsHopLessTheLead() {
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, A, B);
        Plan plan = Row.plan(yard, Row.cable(1, Row.board(FOUR, 10, Row.chain(1, A), Row.chain(2, B))));
        Reason reason = Row.reason(yard, plan, Reason.About.string("b", 1));
        costs(Row.instead(reason, "a four board of its own at its feed"), 25 + 2 - 2 * 2);
        Reason whole = Row.reason(yard, plan, Reason.About.wholeYard());
        costs(Row.instead(whole, "one board more, a four board of its own at its feed"), 25 + 2 - 2 * 2);
        assertThat(reason.text())
                .isEqualTo("b hangs on port 2 of board B1 by a lead of 2.00 m, and its stream carries 100 of 740"
                        + " pixels: port 3 of the same board would cost the same; a four board of its own at its"
                        + " feed would cost 23.00 more; a place behind a is not allowed by the props"
                        + " (follow-allowed).");
    }

    @Test
    void aStringThatHasABoardOfItsOwnIsOfferedNone() {
        // the board that it left would carry nothing, so there would be two boards as before, not one more
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, A, C);
        Plan plan = Row.plan(
                yard, Row.cable(1, Row.board(FOUR, 10, Row.chain(1, A)), Row.board(FOUR, 20, Row.chain(3, C))));
        assertThat(Row.reason(yard, plan, Reason.About.string("a", 1)).instead())
                .extracting(Reason.Instead::what)
                .containsExactlyInAnyOrder("port 2 of the same board", "board B2");
        assertThat(Row.reason(yard, plan, Reason.About.wholeYard()).instead())
                .extracting(Reason.Instead::what)
                .noneMatch(what -> what.startsWith("one board more"));
    }

    @Test
    void movingAStringOntoAFullStreamBreaksItsLimit() {
        PixelString full = Row.ball("full", 700, 10);
        PixelString other = Row.ball("other", 52, 11);
        Yard yard = Row.yard(List.of(TWIN), Follow.ANY, full, other);
        Plan plan = Row.plan(
                yard,
                Row.cable(1, Row.board(TWIN, 10, Row.chain(1, full))),
                Row.cable(2, Row.board(TWIN, 11, Row.chain(1, other))));
        assertThat(Audit.of(yard, plan).list()).isEmpty();
        Reason reason = Row.reason(yard, plan, Reason.About.string("other", 1));
        breaks(Row.instead(reason, "board B1"), "stream-limit", 752, 740);
        assertThat(reason.text()).contains("board B1 would put 752 pixels on a stream that holds 740 (stream-limit)");
        // the same pixels again when the cables are one
        Reason cable = Row.reason(yard, plan, Reason.About.cable("shed", 2));
        breaks(Row.instead(cable, "joining it to shed jack 1"), "stream-limit", 752, 740);
        Reason whole = Row.reason(yard, plan, Reason.About.wholeYard());
        breaks(Row.instead(whole, "one cable fewer, joining shed jack 1 to shed jack 2"), "stream-limit", 752, 740);
    }

    @Test
    void streamsAreRepackedBeforeOneIsCalledFull() {
        // on port 1 of the second board there is no room for it beside 700, but its board has other streams
        PixelString large = Row.ball("large", 700, 10);
        PixelString small = Row.ball("small", 100, 20);
        PixelString mate = Row.ball("mate", 100, 21);
        Yard yard = Row.yard(List.of(FOUR), Follow.ANY, large, small, mate);
        Plan plan = Row.plan(
                yard,
                Row.cable(1, Row.board(FOUR, 10, Row.chain(1, large))),
                Row.cable(2, Row.board(FOUR, 20, Row.chain(1, small), Row.chain(2, mate))));
        Reason cable = Row.reason(yard, plan, Reason.About.cable("shed", 2));
        // one cable of 20 m, where there were 10 and 20, and one jack less
        costs(Row.instead(cable, "joining it to shed jack 1"), -10 - 10);
    }

    @Test
    void aLeadTooLongBreaksLeadNulls() {
        // the only other board is 14 m off: 8 beyond the 6 that need no null, so 3 of them, where 2 may be
        PixelString far = Row.ball("far", 100, 26);
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, B, far);
        Plan plan = Row.plan(
                yard, Row.cable(1, Row.board(FOUR, 12, Row.chain(1, B)), Row.board(FOUR, 26, Row.chain(2, far))));
        Reason reason = Row.reason(yard, plan, Reason.About.string("far", 1));
        breaks(Row.instead(reason, "board B1"), "lead-nulls", 3, 2);
        Reason board = Row.reason(yard, plan, Reason.About.board("B2"));
        breaks(Row.instead(board, "taking it down"), "lead-nulls", 3, 2);
        assertThat(board.text()).contains("would need 3 null pixels in a wire that may have 2 (lead-nulls)");
        Reason whole = Row.reason(yard, plan, Reason.About.wholeYard());
        assertThat(whole.instead()).anySatisfy(instead -> {
            assertThat(instead.what()).startsWith("one board fewer, without B");
            breaks(instead, "lead-nulls", 3, 2);
        });
    }

    @Test
    void anIdThatIsTakenBreaksIdUnique() {
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, A, C);
        Plan plan = Row.plan(
                yard, Row.cable(1, Row.board(FOUR, 10, Row.chain(1, A)), Row.board(FOUR, 20, Row.chain(2, C))));
        Reason reason = Row.reason(yard, plan, Reason.About.board("B1"));
        breaks(Row.instead(reason, "ID 2, which is that of B2"), "id-unique", 2, 1);
        Yard single = Row.yard(List.of(FOUR), Follow.NONE, A);
        Plan alone = Row.plan(single, Row.cable(1, Row.board(FOUR, 10, Row.chain(1, A))));
        costs(Row.instead(Row.reason(single, alone, Reason.About.board("B1")), "ID 0, at which boards are shipped"), 0);
    }

    @Test
    void aBoardTakenDownOrMovedCostsWhatItsWiresCost() {
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, A, B, C);
        Plan plan = Row.plan(
                yard,
                Row.cable(
                        1,
                        Row.board(FOUR, 10, Row.chain(1, A), Row.chain(2, B)),
                        Row.board(FOUR, 20, Row.chain(3, C))));
        Reason second = Row.reason(yard, plan, Reason.About.board("B2"));
        // c by 10 m of lead from board 1, without the board and its 10 m of trunk
        costs(Row.instead(second, "taking it down"), 10 * 2 - 25 - 10);
        // at b: 8 m less of trunk, 8 m of lead more
        costs(Row.instead(second, "the feed of b"), 8 * 2 - 8);
        // before board 1: to 20 and back to 10
        costs(Row.instead(second, "place 1 on its cable"), 20 + 10 - 20);
        // 20 m and a jack of its own, 10 m less on the old cable
        costs(Row.instead(second, "a cable of its own from shed jack 2"), 10 + 20 - 10);
    }

    @Test
    void anotherModelCostsTheDifferenceOfPricesOrSharesNoCable() {
        Yard yard = Row.yard(List.of(FOUR, RandomYard.DIAL), Follow.NONE, A, C);
        Plan plan = Row.plan(
                yard, Row.cable(1, Row.board(FOUR, 10, Row.chain(1, A)), Row.board(FOUR, 20, Row.chain(2, C))));
        costs(Row.instead(Row.reason(yard, plan, Reason.About.board("B1")), "a dial board"), 49 - 25);
        Yard bare = Row.yard(List.of(FOUR, RandomYard.PLAIN), Follow.NONE, A, C);
        breaks(
                Row.instead(Row.reason(bare, plan, Reason.About.board("B1")), "a plain board"),
                "unaddressed-alone",
                2,
                1);
    }

    @Test
    void aFullBoardIsOfferedInExchange() {
        BoardModel single = BoardModel.ofPorts("single", List.of(1), new Address.Switches(0, 15, 4), 25, 5);
        Yard yard = Row.yard(List.of(single), Follow.NONE, A, B);
        Plan plan = Row.plan(
                yard, Row.cable(1, Row.board(single, 10, Row.chain(1, A)), Row.board(single, 12, Row.chain(1, B))));
        Reason reason = Row.reason(yard, plan, Reason.About.string("a", 1));
        costs(Row.instead(reason, "board B2 in exchange for b"), 2 * 2 * 2);
    }

    @Test
    void cablesTellTheirOrdersAndTheOnlyOneItsJack() {
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, A, B, C);
        Plan plan = Row.plan(
                yard,
                Row.cable(
                        1,
                        Row.board(FOUR, 10, Row.chain(1, A)),
                        Row.board(FOUR, 12, Row.chain(2, B)),
                        Row.board(FOUR, 20, Row.chain(3, C))));
        Reason reason = Row.reason(yard, plan, Reason.About.cable("shed", 1));
        // 20, 8 and 2 m where it has 20 in all
        costs(Row.instead(reason, "the reversed order"), 10);
        // 12, 2 and 10 m
        costs(Row.instead(reason, "the order B2 then B1"), 4);
        costs(Row.instead(reason, "shed jack 2"), 0);
        assertThat(reason.because())
                .contains(Reason.Because.rule(Rule.CABLE_LENGTH, 20, 90))
                .contains(Reason.Because.cost(20 + 10));
    }

    @Test
    void manyBoardsOnOneCableBreakAllItsRulesAtOnce() {
        PixelString[] near = new PixelString[6];
        Layout.Hung[] boards = new Layout.Hung[6];
        for (int i = 0; i < 6; i++) {
            near[i] = Row.ball("p" + i, 500, 10 + i);
            boards[i] = Row.board(TWIN, 10 + i, Row.chain(1, near[i]));
        }
        Yard yard = Row.yard(List.of(TWIN), Follow.NONE, near);
        // one string of 500 a cable fits, so these are overfull from the start: what they break alike is not news
        Plan plan = Row.plan(
                yard, Row.cable(1, boards[0], boards[1], boards[2]), Row.cable(2, boards[3], boards[4], boards[5]));
        assertThat(Audit.of(yard, plan).list()).hasSize(2);
        Reason reason = Row.reason(yard, plan, Reason.About.cable("shed", 1));
        assertThat(reason.instead())
                .contains(new Reason.Instead(
                        "joining it to shed jack 2", null, new Reason.Broken("stream-limit", 3000, 740)))
                .contains(new Reason.Instead(
                        "joining it to shed jack 2", null, new Reason.Broken("boards-per-cable", 6, 4)));
        costs(Row.instead(reason, "the reversed order"), 2);
        assertThat(reason.text())
                .contains("joining it to shed jack 2 would put 3,000 pixels on a stream that holds 740 (stream-limit),"
                        + " and would hang 6 boards on a cable for 4 (boards-per-cable)");
    }

    @Test
    void frameRatesTellWhatAStreamThenHolds() {
        PixelString full = Row.ball("full", 700, 10);
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, full);
        Plan plan = Row.plan(yard, Row.cable(1, Row.board(FOUR, 10, Row.chain(1, full))));
        Reason reason = Row.reason(yard, plan, Reason.About.wholeYard());
        // (1/45 s - 300 us) / 30 us = 730, less a tenth; (1/35 s - 300 us) / 30 us = 942, less a tenth
        breaks(Row.instead(reason, "45 frames a second (657 pixels a stream)"), "stream-limit", 700, 657);
        costs(Row.instead(reason, "35 frames a second (847 pixels a stream)"), 0);
        // 823 less a fifth
        breaks(Row.instead(reason, "a spare share of 0.20 (658 pixels a stream)"), "stream-limit", 700, 658);
    }

    @Test
    void aProofAndAMissingOneAreToldApart() {
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, A);
        Plan plan = Row.plan(yard, Row.cable(1, Row.board(FOUR, 10, Row.chain(1, A))));
        // a board, 10 m of trunk, a cable
        assertThat(Row.reason(yard, plan, Reason.About.wholeYard()).text())
                .startsWith(
                        "The plan hangs 1 board on 1 cable for 45.00; its fullest stream carries 100 of 740 pixels");
        assertThat(Row.reason(yard, plan.proved(40, 1, 1), Reason.About.wholeYard())
                        .text())
                .startsWith("The plan hangs 1 board on 1 cable for 45.00, and no plan can cost less than 40.00;");
        assertThat(Row.reason(yard, plan.proved(45, 1, 1), Reason.About.wholeYard())
                        .text())
                .startsWith("The plan hangs 1 board on 1 cable for 45.00, and no plan can cost less;");
    }

    @Test
    void aCheaperNeighbourOfABadPlanIsToldAsSaving() {
        Yard yard = Row.yard(List.of(FOUR), Follow.NONE, A, C);
        Plan plan = Row.plan(
                yard, Row.cable(1, Row.board(FOUR, 20, Row.chain(2, C)), Row.board(FOUR, 10, Row.chain(1, A))));
        Reason reason = Row.reason(yard, plan, Reason.About.cable("shed", 1));
        costs(Row.instead(reason, "the reversed order"), -10);
        assertThat(reason.text()).contains("the reversed order would cost 10.00 less");
    }
}
