package streamwright.reason;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import streamwright.layout.Layout;
import streamwright.yard.BoardModel;
import streamwright.yard.Follow;
import streamwright.yard.PixelString;
import streamwright.yard.Yard;

/** On open ground at the boards' own places, so that no nulls come in; a stream holds 740 pixels. */
class RepackTest {
    private static final BoardModel FOUR = RandomYard.FOUR;

    private record Case(Yard yard, Layout.Run run) {
        Layout.Run packed(Set<PixelString> pinned) {
            return Repack.of(new Measures(yard, Row.OPEN), run, pinned);
        }
    }

    /** Boards in a row, the k-th string of each on its port k. */
    private static Case of(BoardModel model, int[][] pixels) {
        List<PixelString> strings = new ArrayList<>();
        List<Layout.Hung> boards = new ArrayList<>();
        for (int b = 0; b < pixels.length; b++) {
            Layout.Chain[] chains = new Layout.Chain[pixels[b].length];
            for (int p = 0; p < chains.length; p++) {
                PixelString string = Row.ball("s" + b + "-" + p, pixels[b][p], b);
                strings.add(string);
                chains[p] = new Layout.Chain(p + 1, model.ports().get(p), List.of(string));
            }
            boards.add(Row.board(model, b, chains));
        }
        Yard yard = Row.yard(List.of(model), Follow.NONE, strings.toArray(PixelString[]::new));
        return new Case(yard, Row.cable(1, boards.toArray(Layout.Hung[]::new)));
    }

    private static int fullest(Layout.Run run) {
        TreeMap<Integer, Integer> load = new TreeMap<>();
        run.boards()
                .forEach(board -> board.ports()
                        .forEach(chain -> load.merge(
                                chain.stream(), chain.strings().get(0).pixels(), Integer::sum)));
        return load.values().stream().max(Integer::compare).orElseThrow();
    }

    /** Whether some ports for all strings keep every stream within its limit. */
    private static boolean fits(int[][] pixels, int board, int place, int[] load, int used) {
        if (board == pixels.length) {
            return true;
        }
        if (place == pixels[board].length) {
            return fits(pixels, board + 1, 0, load, 0);
        }
        return IntStream.range(0, 4).anyMatch(port -> {
            if ((used & 1 << port) != 0 || load[port] + pixels[board][place] > 740) {
                return false;
            }
            load[port] += pixels[board][place];
            boolean rest = fits(pixels, board, place + 1, load, used | 1 << port);
            load[port] -= pixels[board][place];
            return rest;
        });
    }

    @Test
    void whatFitsStaysAsItIs() {
        Case fit = of(FOUR, new int[][] {{400, 10}, {340, 10}});
        assertThat(fit.packed(Set.of())).isSameAs(fit.run);
    }

    @Test
    void aFreePortTakesWhatIsTooMuch() {
        assertThat(fullest(of(FOUR, new int[][] {{400}, {400}}).packed(Set.of())))
                .isEqualTo(400);
    }

    @Test
    void fullBoardsExchangePorts() {
        Layout.Run packed =
                of(FOUR, new int[][] {{700, 30, 30, 30}, {700, 30, 30, 30}}).packed(Set.of());
        assertThat(fullest(packed)).isLessThanOrEqualTo(740);
    }

    @Test
    void pinnedStringsKeepTheirPort() {
        Case both = of(FOUR, new int[][] {{400}, {400}});
        PixelString second = both.run.boards().get(1).ports().get(0).strings().get(0);
        Layout.Run packed = both.packed(Set.of(second));
        assertThat(packed.boards().get(1).ports().get(0).port()).isEqualTo(1);
        assertThat(fullest(packed)).isEqualTo(400);
    }

    @Test
    void settablePortsChangeTheirStream() {
        Layout.Run packed = of(
                        BoardModel.ofPorts("dial", List.of(0, 0), RandomYard.DIAL.address(), 49, 5),
                        new int[][] {{700, 700}})
                .packed(Set.of());
        assertThat(fullest(packed)).isEqualTo(700);
    }

    @Test
    void nearlyEveryCableThatCanBePackedIsPackedAndNeverWrongly() {
        Random random = new Random(11);
        int possible = 0;
        int found = 0;
        for (int round = 0; round < 400; round++) {
            int[][] pixels = new int[2 + random.nextInt(3)][];
            int left = 2900;
            for (int b = 0; b < pixels.length; b++) {
                pixels[b] = new int[1 + random.nextInt(4)];
                for (int p = 0; p < pixels[b].length; p++) {
                    pixels[b][p] = Math.max(1, Math.min(left, 50 + random.nextInt(400)));
                    left -= pixels[b][p];
                }
            }
            Case one = of(FOUR, pixels);
            Layout.Run packed = one.packed(Set.of());
            for (int b = 0; b < pixels.length; b++) {
                Set<Integer> ports = new HashSet<>();
                packed.boards().get(b).ports().forEach(chain -> {
                    assertThat(ports.add(chain.port())).isTrue();
                    assertThat(chain.stream()).isEqualTo(FOUR.ports().get(chain.port() - 1));
                });
                assertThat(packed.boards().get(b).ports().stream().flatMap(chain -> chain.strings().stream()))
                        .containsExactlyInAnyOrderElementsOf(one.run.boards().get(b).ports().stream()
                                .flatMap(chain -> chain.strings().stream())
                                .toList());
            }
            boolean can = fits(pixels, 0, 0, new int[4], 0);
            possible += can ? 1 : 0;
            found += fullest(packed) <= 740 ? 1 : 0;
            assertThat(can || fullest(packed) > 740).isTrue();
        }
        assertThat(possible).isGreaterThan(200);
        assertThat(found).isGreaterThanOrEqualTo(possible * 98 / 100);
    }
}
