package streamwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import streamwright.plan.Board;
import streamwright.plan.Injection;
import streamwright.plan.Plan;
import streamwright.plan.PortUse;
import streamwright.plan.StreamUse;
import streamwright.plan.StringUse;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;
import streamwright.yard.BoardOffer;
import streamwright.yard.PixelString;
import streamwright.yard.Point;
import streamwright.yard.Spot;
import streamwright.yard.Yard;

/** Expected values are worked out by hand from the rules of lengths, streams, channels and prices. */
class AssemblyTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private final Plan plan = Assembly.plan(Lane.yard(), Lane.OPEN, Lane.layout());

    @Test
    void hopsAreSlackTimesPathAndALoopAtBothEnds() {
        // (0,0,1) to (4,2): 1.1 * (sqrt 20 + 1) + 2; (4,2) to (12,5): 1.1 * sqrt 73 + 2
        assertThat(plan.cables().get(0).hops().get(0)).isEqualTo(1.1 * (Math.sqrt(20) + 1) + 2, EXACT);
        assertThat(plan.cables().get(0).hops().get(1)).isEqualTo(1.1 * Math.sqrt(73) + 2, EXACT);
        assertThat(plan.cables().get(0).length()).isEqualTo(19.417753670348823, EXACT);
    }

    @Test
    void streamsFillInCableOrderAndPortOrder() {
        assertThat(string("gate", 2).firstPixel()).isEqualTo(61);
        assertThat(string("stair", 1).firstPixel()).isEqualTo(121);
        assertThat(string("willow", 3).firstPixel()).isEqualTo(81);
        assertThat(string("willow", 1).firstPixel()).isEqualTo(1);
    }

    @Test
    void streamsFollowOneAnotherInChannels() {
        assertThat(plan.cables().get(0).streams())
                .containsExactly(
                        new StreamUse(1, "rgb", 1, 190, 740, 1, 1),
                        new StreamUse(2, "rgb", 571, 160, 740, 2, 61),
                        new StreamUse(3, "rgb", 1051, 80, 740, 3, 31),
                        new StreamUse(4, "rgb", 1291, 80, 740, 3, 271));
        assertThat(string("willow", 3).channel()).isEqualTo(571 + 80 * 3);
        assertThat(string("stair", 1).channel()).isEqualTo(1 + 120 * 3);
    }

    @Test
    void boardsGetNamesIdsSwitchesAndTheLastItsTerminator() {
        assertThat(plan.boards()).extracting(Board::id).containsExactly("B1", "B2");
        assertThat(plan.boards()).extracting(Board::boardId).containsExactly(1, 2);
        assertThat(plan.boards()).extracting(Board::switches).containsExactly("1000", "0100");
        assertThat(plan.boards()).extracting(Board::terminator).containsExactly(false, true);
    }

    @Test
    void suppliesCarryTheWholeBoardAtTheFuseLoad() {
        // 120 and 80 pixels of 0.04 A at half brightness: 4.0 A, 48 W, 60 W at 80 %; 310 pixels: 6.2 A, 93 W
        assertThat(plan.supplies().get(0).amps()).isEqualTo(4.0, EXACT);
        assertThat(plan.supplies().get(1).amps()).isEqualTo(6.2, EXACT);
        assertThat(plan.supplies()).extracting("watts").containsExactly(60, 93);
    }

    @Test
    void costAddsWireBoardsBeyondTheOwnedAndTheCable() {
        double trunk = 1.1 * (Math.sqrt(20) + 1 + Math.sqrt(73)) + 4;
        // lantern 1 from its board: sqrt 17; stair: sqrt 20; four leads of no way at all
        double lead = 1.1 * (Math.sqrt(17) + Math.sqrt(20)) + 6 * 0.3;
        double jumper = 1.1 * (0.5 + 2) + 2 * 0.3;
        assertThat(plan.cost()).isEqualTo(trunk * 0.6 + (lead + jumper) * 1.9 + 25 + 12, EXACT);
        assertThat(plan.totals().lead()).isEqualTo(lead, EXACT);
        assertThat(plan.totals().pixels()).isEqualTo(510);
        assertThat(plan.totals().strings()).isEqualTo(8);
    }

    @Test
    void longWiresGetNullPixelsThatTakePlacesOnTheStream() {
        // lead 1.1 * 9 + 0.3 = 10.2: 4.2 beyond 6, so ceil(4.2 / 3) = 2 nulls;
        // jumper from (6,2) to the lantern: 1.1 * sqrt 17 + 0.3 = 4.835: ceil(4.835 / 3) - 1 = 1 null
        Layout layout = one(Spot.unnamed(new Point(-5, 2)), Lane.FOUR, Lane.GATE_1, Lane.LANTERN_1);
        PortUse port = Assembly.plan(Lane.yard(), Lane.OPEN, layout)
                .boards()
                .get(0)
                .ports()
                .get(0);
        assertThat(port.startPixel()).isEqualTo(1);
        assertThat(port.strings()).extracting(StringUse::nulls).containsExactly(2, 1);
        assertThat(port.strings()).extracting(StringUse::firstPixel).containsExactly(3, 64);
        assertThat(port.strings()).extracting(StringUse::channel).containsExactly(7L, 190L);
    }

    @Test
    void fullBrightnessNeedsAnInjectionAndPaysForIt() {
        Yard bright = Lane.yard(1, List.of(new BoardOffer(Lane.FOUR, 9, 0, 25)), List.of());
        Spot spot = Spot.unnamed(Lane.GATE_1.feed());
        Plan whole = Assembly.plan(bright, Lane.OPEN, one(spot, Lane.FOUR, Lane.GATE_1, Lane.GATE_2));
        PortUse port = whole.boards().get(0).ports().get(0);
        // 120 pixels draw 4.8 A, the port may give 4: at most 100 pixels, and injecting sooner is cheaper by wire:
        // pixel 21 of the first string leaves 100 for the injection, and its wire is 0.3 + 20 * 0.05 = 1.3
        assertThat(port.injections()).containsExactly(new Injection("gate", 1, 21));
        assertThat(port.amps()).isEqualTo(20 * 0.04, EXACT);
        assertThat(whole.supplies().get(0).amps()).isEqualTo(4.8, EXACT);
        Plan dim = Assembly.plan(Lane.yard(), Lane.OPEN, one(spot, Lane.FOUR, Lane.GATE_1, Lane.GATE_2));
        // the dim yard owns its one board
        assertThat(whole.cost() - dim.cost()).isEqualTo(25 + 6 + 1.3 * 1.9, EXACT);
    }

    @Test
    void aPortBeyondHelpIsPlannedWithoutInjections() {
        BoardModel weak = BoardModel.ofPorts("weak", List.of(1), new Address.None(), 9, 0.01);
        Plan broken = Assembly.plan(Lane.yard(), Lane.OPEN, one(Spot.unnamed(Lane.STAIR.feed()), weak, Lane.STAIR));
        PortUse port = broken.boards().get(0).ports().get(0);
        assertThat(port.injections()).isEmpty();
        assertThat(port.amps()).isEqualTo(70 * 0.02, EXACT);
        assertThat(broken.boards().get(0).boardId()).isNull();
        assertThat(broken.boards().get(0).switches()).isNull();
        assertThat(broken.boards().get(0).terminator()).isTrue();
    }

    @Test
    void aPlaceWithoutAWayGivesAnEndlessLengthButNoException() {
        Plan broken = Assembly.plan(Lane.yard(), (a, b) -> Double.POSITIVE_INFINITY, Lane.layout());
        assertThat(broken.cost()).isInfinite();
        assertThat(string(broken, "stair", 1).firstPixel()).isEqualTo(Integer.MAX_VALUE);
    }

    @Test
    void aSpotIsPaidOnceAndItsIdStands() {
        Spot porch = new Spot("porch", new Point(4, 2), 2, 15, 25);
        Yard yard = Lane.yard(0.5, List.of(new BoardOffer(Lane.FOUR, 9, 0, 25)), List.of(porch));
        Layout.Hung gate =
                new Layout.Hung(Lane.FOUR, porch, Lane.atGate(Lane.FOUR).ports().subList(0, 1));
        Layout.Hung lanterns =
                new Layout.Hung(Lane.FOUR, porch, Lane.atGate(Lane.FOUR).ports().subList(1, 2));
        Plan two = Assembly.plan(
                yard, Lane.OPEN, new Layout(List.of(new Layout.Run(Lane.SHED, 1, List.of(gate, lanterns)))));
        Plan single = Assembly.plan(yard, Lane.OPEN, new Layout(List.of(new Layout.Run(Lane.SHED, 1, List.of(gate)))));
        double lead = 1.1 * Math.sqrt(17) + 0.3;
        double jumper = 1.1 * 2 + 0.3;
        // the second board adds itself, a hop of loops, its lead and its jumper, but no second box
        assertThat(two.cost() - single.cost()).isEqualTo(25 + 2 * 0.6 + (lead + jumper) * 1.9, EXACT);
        assertThat(two.boards()).extracting(Board::spot).containsExactly("porch", "porch");
        assertThat(two.supplies()).hasSize(1);
        assertThat(two.supplies().get(0).boards()).containsExactly("B1", "B2");
    }

    @Test
    void aControllersChannelsRunOnFromJackToJack() {
        Layout.Run first = new Layout.Run(Lane.SHED, 1, List.of(Lane.atGate(Lane.FOUR)));
        Layout.Run second = new Layout.Run(Lane.SHED, 2, List.of(Lane.atWillow(Lane.FOUR)));
        Plan two = Assembly.plan(Lane.yard(), Lane.OPEN, new Layout(List.of(second, first)));
        assertThat(two.cables().get(0).jack()).isEqualTo(1);
        // 120 + 80 pixels on jack 1
        assertThat(two.cables().get(1).streams())
                .extracting(StreamUse::startChannel)
                .containsExactly(601L, 811L, 1051L, 1291L);
        assertThat(two.boards()).extracting(Board::boardId).containsExactly(1, 2);
        assertThat(two.boards()).extracting(Board::terminator).containsOnly(true);
    }

    private static Layout one(Spot spot, BoardModel model, PixelString... strings) {
        Layout.Hung hung = new Layout.Hung(model, spot, List.of(new Layout.Chain(1, 1, List.of(strings))));
        return new Layout(List.of(new Layout.Run(Lane.SHED, 1, List.of(hung))));
    }

    private StringUse string(String prop, int number) {
        return string(plan, prop, number);
    }

    private static StringUse string(Plan of, String prop, int number) {
        return of.boards().stream()
                .flatMap(board -> board.ports().stream())
                .flatMap(port -> port.strings().stream())
                .filter(use -> use.prop().equals(prop) && use.string() == number)
                .findFirst()
                .orElseThrow();
    }
}
