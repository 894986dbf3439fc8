package streamwright.report.locate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import streamwright.plan.Board;
import streamwright.plan.PortUse;
import streamwright.plan.StringUse;
import streamwright.report.Demo;
import streamwright.report.Invented;
import streamwright.report.Invented.Planned;
import streamwright.report.walk.Walk;

class LocatorTest {
    /** From each address of the first and last pixel of each string to all the others, straight from the plan file. */
    @ParameterizedTest
    @ValueSource(strings = {"home", "trail"})
    void everyAddressLeadsToAllOthers(String demo) {
        Locator locator = new Locator(Demo.walk(demo));
        int tried = 0;
        for (Board board : Demo.plan(demo).boards()) {
            for (PortUse port : board.ports()) {
                for (StringUse string : port.strings()) {
                    for (int pixel : new int[] {1, string.pixels()}) {
                        int position = string.firstPixel() + pixel - 1;
                        Spot spot = only(locator.string(string.prop(), string.string(), pixel));
                        assertThat(spot.controller()).isEqualTo(board.controller());
                        assertThat(spot.jack()).isEqualTo(board.jack());
                        assertThat(spot.stream()).isEqualTo(port.stream());
                        assertThat(spot.pixel()).isEqualTo(position);
                        assertThat(spot.channel()).isEqualTo(string.channel() + 3L * (pixel - 1));
                        assertThat(spot.lastChannel()).isEqualTo(spot.channel() + 2);
                        Shown shown = only(spot.shown());
                        assertThat(shown.board()).isEqualTo(board.id());
                        assertThat(shown.port()).isEqualTo(port.port());
                        assertThat(shown.portPixel()).isEqualTo(position - port.startPixel() + 1);
                        assertThat(shown.prop()).isEqualTo(string.prop());
                        assertThat(shown.string()).isEqualTo(string.string());
                        assertThat(shown.pixel()).isEqualTo(pixel);
                        assertThat(locator.channel(spot.controller(), spot.channel()))
                                .containsExactly(spot);
                        assertThat(locator.channel(spot.controller(), spot.lastChannel()))
                                .containsExactly(spot);
                        assertThat(locator.slot(spot.controller(), spot.universe(), spot.slot()))
                                .containsExactly(spot);
                        assertThat(locator.port(board.id(), port.port(), shown.portPixel()))
                                .containsExactly(spot);
                        assertThat(locator.stream(spot.controller(), spot.jack(), spot.stream(), position))
                                .containsExactly(spot);
                        tried++;
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(100);
    }

    private static <T> T only(List<T> list) {
        assertThat(list).hasSize(1);
        return list.get(0);
    }

    /** Universes of the trail's east hut begin at 201, so that one says whose channel is meant; a channel alone does not. */
    @Test
    void aChannelOfTwoControllersIsInBoth() {
        Locator locator = new Locator(Demo.walk("trail"));
        assertThat(locator.channel(null, 1)).extracting(Spot::controller).containsExactly("west hut", "east hut");
        assertThat(locator.slot(null, 201, 1)).extracting(Spot::controller).containsExactly("east hut");
        assertThat(locator.slot(null, 201, 511)).isEmpty();
        assertThat(locator.channel(null, 60_000)).isEmpty();
    }

    /** Boards B1 to B3 with four strings of 50 pixels each, one a stream: port k of the n-th board starts at 50 (n - 1) + 1. */
    @Test
    void anIdOfAnotherBoardShowsThatBoardsPictureTwice() {
        Locator locator = locator(12);
        Shown shown = only(only(locator.string("p4", 1, 7)).shown());
        assertThat(shown.board()).isEqualTo("B2");
        assertThat(shown.ifSetTo()).hasSize(3);
        Symptom asFirst = shown.ifSetTo().get(0);
        assertThat(asFirst.ids()).containsExactly(1);
        assertThat(asFirst.switches()).isEqualTo("1000");
        assertThat(asFirst.sees()).isEqualTo(Symptom.TWICE);
        assertThat(asFirst.pixel()).isEqualTo(7);
        assertThat(asFirst.text()).contains("p0 on B1-1");
        Symptom asThird = shown.ifSetTo().get(1);
        assertThat(asThird.ids()).containsExactly(3);
        assertThat(asThird.pixel()).isEqualTo(107);
        assertThat(asThird.text()).contains("p8 on B3-1");
        Symptom asNobody = shown.ifSetTo().get(2);
        assertThat(asNobody.sees()).isEqualTo(Symptom.DARK);
        assertThat(asNobody.ids()).containsExactly(0, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15);
    }

    /** The last board has two strings only, on ports 1 and 2. */
    @Test
    void aPortThatTheOtherIdDoesNotUseIsDark() {
        Shown shown = only(only(locator(10).string("p7", 1, 1)).shown());
        assertThat(shown.port()).isEqualTo(4);
        assertThat(shown.ifSetTo().get(1).ids()).containsExactly(3);
        assertThat(shown.ifSetTo().get(1).sees()).isEqualTo(Symptom.DARK);
        assertThat(shown.ifSetTo().get(1).pixel()).isNull();
    }

    private static Locator locator(int strings) {
        Planned planned = Invented.rows(strings, s -> "p" + s);
        return new Locator(Walk.of(planned.yard(), planned.plan()));
    }

    /** A string with a null pixel before it, on a board set to one whose port has none, shows one pixel later ones. */
    @Test
    void aNullPixelTooManyShiftsThePicture() {
        var walk = Demo.walk("home");
        var string = walk.strings().stream()
                .filter(each -> each.use().nulls() == 1 && each.byLead())
                .findFirst()
                .orElseThrow();
        var cable = walk.cables().stream()
                .filter(each ->
                        each.boards().stream().anyMatch(board -> board.id().equals(string.board())))
                .findFirst()
                .orElseThrow();
        Shown shown = only(
                only(new Locator(walk).string(string.use().prop(), string.use().string(), 1))
                        .shown());
        int shifted = 0;
        for (var other : cable.boards()) {
            var port = other.ports().stream()
                    .filter(each ->
                            each.use().port() == string.port() && !other.id().equals(string.board()))
                    .findFirst();
            if (port.isPresent()
                    && port.get().first().use().nulls() == 0
                    && port.get().lit() > 1) {
                Symptom symptom = shown.ifSetTo().stream()
                        .filter(each -> each.ids().contains(other.board().boardId()))
                        .findFirst()
                        .orElseThrow();
                assertThat(symptom.sees()).isEqualTo(Symptom.SHIFTED);
                assertThat(symptom.pixel()).isEqualTo(port.get().use().startPixel() + 1);
                assertThat(symptom.text()).contains(port.get().first().label(), "from its pixel 2 on");
                shifted++;
            }
        }
        assertThat(shifted).isPositive();
    }

    @Test
    void aNullPixelIsFoundAsOne() {
        var string = Demo.walk("home").strings().stream()
                .filter(each -> each.use().nulls() == 1)
                .findFirst()
                .orElseThrow();
        Locator locator = new Locator(Demo.walk("home"));
        Spot spot = only(locator.stream(
                string.controller().id(),
                string.jack(),
                string.stream(),
                string.use().firstPixel() - 1));
        Shown shown = only(spot.shown());
        assertThat(shown.as()).isEqualTo("null");
        assertThat(shown.prop()).isEqualTo(string.use().prop());
        assertThat(shown.pixel()).isEqualTo(1);
    }

    /** Output 2 has channel 152, the second of the pixel 51; the panel's second part begins its stream 2. */
    @Test
    void outputsAndPanelsAreFoundToo() {
        Planned planned = Invented.mainsAndPanel();
        Locator locator = new Locator(Walk.of(planned.yard(), planned.plan()));
        assertThat(only(locator.channel("hut", 152)).shown())
                .extracting(Shown::as, Shown::prop, Shown::string)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("output", "flood", 1),
                        org.assertj.core.groups.Tuple.tuple("output", "flood", 2),
                        org.assertj.core.groups.Tuple.tuple("output", "flood", 3));
        Shown panel = only(only(locator.stream("hut", 1, 2, 40)).shown());
        assertThat(panel.as()).isEqualTo("panel");
        assertThat(panel.pixel()).isEqualTo(80);
    }
}
