package streamwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import streamwright.yard.Address;

class SwitchesTest {
    /** Positional binary, lowest weight on switch 1. */
    @ParameterizedTest
    @CsvSource({
        "4, 0, 0000",
        "4, 1, 1000",
        "4, 2, 0100",
        // up, up, down, down
        "4, 3, 1100",
        "4, 4, 0010",
        "4, 5, 1010",
        "4, 6, 0110",
        "4, 7, 1110",
        "4, 8, 0001",
        "4, 9, 1001",
        "4, 10, 0101",
        "4, 11, 1101",
        "4, 12, 0011",
        "4, 13, 1011",
        "4, 14, 0111",
        "4, 15, 1111",
        "9, 170, 010101010",
        "9, 341, 101010101",
        "9, 256, 000000001",
        "9, 511, 111111111",
        "10, 512, 0000000001"
    })
    void switchesShowTheId(int switches, int id, String text) {
        assertThat(Switches.text(new Address.Switches(0, (1 << switches) - 1, switches), id))
                .isEqualTo(text);
    }

    @Test
    void weightsOfTheSwitchesThatAreUpAddUpToTheId() {
        Address nine = new Address.Switches(0, 511, 9);
        for (int id = 0; id <= 511; id++) {
            String text = Switches.text(nine, id);
            int sum = 0;
            for (int k = 1; k <= 9; k++) {
                sum += text.charAt(k - 1) == '1' ? 1 << (k - 1) : 0;
            }
            assertThat(sum).isEqualTo(id);
            // a neighbour differs in switch 1 alone
            assertThat(Switches.text(nine, id ^ 1).substring(1)).isEqualTo(text.substring(1));
        }
    }

    @Test
    void moreSwitchesThanBitsStayDown() {
        assertThat(Switches.text(new Address.Switches(0, 1, 40), 1)).isEqualTo("1" + "0".repeat(39));
    }

    @Test
    void rotarySwitchShowsItsPosition() {
        assertThat(Switches.text(new Address.Rotary(0, 9), 7)).isEqualTo("7");
    }

    @Test
    void boardWithoutAnAddressHasNoSwitches() {
        assertThatThrownBy(() -> Switches.text(new Address.None(), 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
