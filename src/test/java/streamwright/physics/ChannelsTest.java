package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.Controller;
import streamwright.yard.ControllerModel;
import streamwright.yard.Point;

class ChannelsTest {
    private static Controller controller(int firstChannel, int firstUniverse, int slots) {
        ControllerModel model = new ControllerModel("source", 4, 4, 16, 1024, 65_535, slots);
        return new Controller("shed", model, new Point(0, 0), firstChannel, firstUniverse);
    }

    /**
     * Up to 512 slots follow the START code (ANSI E1.11, DMX512-A). 170 pixels of three channels fill 510 of them and
     * stay whole; with 512 the 171st pixel spans two universes; 128 pixels of four channels fill 512 exactly.
     */
    @ParameterizedTest
    @CsvSource({
        // slots, channels a pixel, pixel from 0; universe and slot
        "510, 3, 0, 1, 1",
        "510, 3, 169, 1, 508",
        "510, 3, 170, 2, 1",
        "510, 3, 340, 3, 1",
        "512, 3, 170, 1, 511",
        "512, 3, 171, 2, 2",
        "512, 3, 341, 2, 512",
        "512, 3, 1000, 6, 441",
        "512, 4, 127, 1, 509",
        "512, 4, 128, 2, 1"
    })
    void pixelsLieInUniverses(int slots, int channels, int pixel, int universe, int slot) {
        Controller source = controller(1, 1, slots);
        long channel = 1 + (long) pixel * channels;
        assertThat(Channels.universe(source, channel)).isEqualTo(universe);
        assertThat(Channels.slot(source, channel)).isEqualTo(slot);
        assertThat(Channels.channel(source, universe, slot)).isEqualTo(channel);
    }

    @Test
    void countingStartsAtTheControllersFirstChannelAndUniverse() {
        Controller second = controller(4001, 21, 510);
        assertThat(Channels.universe(second, 4001)).isEqualTo(21);
        assertThat(Channels.slot(second, 4001)).isEqualTo(1);
        assertThat(Channels.universe(second, 4510)).isEqualTo(21);
        assertThat(Channels.slot(second, 4510)).isEqualTo(510);
        assertThat(Channels.universe(second, 4511)).isEqualTo(22);
        for (long channel = 4001; channel < 9000; channel++) {
            int universe = Channels.universe(second, channel);
            assertThat(Channels.channel(second, universe, Channels.slot(second, channel)))
                    .isEqualTo(channel);
        }
    }

    /** Universes run from 1 to 63999: ANSI E1.31-2018, 9.1.1. */
    @Test
    void universesEndAt63999() {
        assertThat(Channels.exists(0)).isFalse();
        assertThat(Channels.exists(1)).isTrue();
        assertThat(Channels.exists(63_999)).isTrue();
        assertThat(Channels.exists(64_000)).isFalse();
        Controller last = controller(1, 63_999, 510);
        assertThat(Channels.exists(Channels.universe(last, 510))).isTrue();
        assertThat(Channels.exists(Channels.universe(last, 511))).isFalse();
    }

    @Test
    void channelsBeyondAllUniversesAreNotWrappedAround() {
        assertThat(Channels.universe(controller(1, 1, 1), Long.MAX_VALUE / 2)).isEqualTo(Integer.MAX_VALUE);
    }
}
