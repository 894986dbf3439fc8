package streamwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import streamwright.yard.PixelKind;
import streamwright.yard.Prop;
import streamwright.yard.Rules;
import streamwright.yard.Units;
import streamwright.yard.Yard;

class MixedHomesTest {
    private static final List<Yard> TEN =
            LongStream.rangeClosed(1, 10).mapToObj(MixedHomes::of).toList();

    private static void some(String what, int least, Predicate<Yard> has) {
        assertThat(TEN.stream().filter(has)).as(what).hasSizeBetween(least, 9);
    }

    private static boolean ofProps(Yard yard, Predicate<Prop> has) {
        return yard.props().stream().anyMatch(has);
    }

    private static boolean ofKind(Yard yard, Predicate<PixelKind> has) {
        return ofProps(yard, prop -> prop.pixel() != null && has.test(prop.pixel()));
    }

    @Test
    void theyAreAsLargeAsOtherHomes() {
        for (Yard yard : TEN) {
            assertThat(yard.strings()).as(yard.name()).hasSizeBetween(43, 50);
            assertThat(yard.strings().stream().map(string -> string.feed()).distinct())
                    .as(yard.name())
                    .hasSizeBetween(33, 37);
        }
    }

    @Test
    void eachMixesKindsAndBoards() {
        for (Yard yard : TEN) {
            assertThat(yard.streamKinds()).as(yard.name()).hasSizeBetween(2, 3);
            assertThat(yard.boards()).as(yard.name()).hasSizeBetween(2, 5);
            assertThat(yard.obstacles()).as(yard.name()).hasSizeGreaterThan(1);
        }
    }

    @Test
    void overTenOfThemEverythingComesUp() {
        some("kept channels", 2, Yard::keepChannels);
        some("feet", 1, yard -> yard.units() == Units.FT);
        some("named spots", 2, Yard::spotsNamed);
        some("outputs", 2, yard -> ofProps(yard, prop -> prop.outputs() > 0));
        some("panels", 2, yard -> ofProps(yard, prop -> prop.panel() != null));
        some("copies", 2, yard -> ofProps(yard, prop -> prop.copyOf() != null));
        some("32 bits", 2, yard -> ofKind(yard, kind -> kind.bits() == 32));
        some("48 bits", 2, yard -> ofKind(yard, kind -> kind.bits() == 48));
        some("400 kbit/s", 2, yard -> ofKind(yard, kind -> kind.bitTime() == 2.5));
        some("5 volts beside 12", 2, yard -> ofKind(yard, k -> k.volts() == 5) && ofKind(yard, k -> k.volts() == 12));
        some(
                "short cables",
                2,
                yard -> yard.rules().cableMost() < Rules.defaults(yard.units()).cableMost());
        some("few boards a cable", 2, yard -> yard.controllers().get(0).model().boardsPerCable() < 16);
        some("owned boards", 2, yard -> yard.boards().stream().anyMatch(offer -> offer.have() > 0));
        some("limits of boards", 2, yard -> yard.boards().stream().anyMatch(offer -> offer.most() < 100));
        for (String model : List.of("sixteen", "flex-eight", "quad-weak", "solo")) {
            some(
                    model,
                    2,
                    yard -> yard.boards().stream()
                            .anyMatch(offer -> offer.model().name().equals(model)));
        }
    }

    @Test
    void aSeedGivesOneYard() {
        assertThat(MixedHomes.of(7)).isEqualTo(TEN.get(6));
    }
}
