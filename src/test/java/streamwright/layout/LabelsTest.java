package streamwright.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import streamwright.yard.Address;
import streamwright.yard.BoardModel;

class LabelsTest {
    private static final BoardModel FOUR = Lane.FOUR;

    private static List<Integer> ids(Layout.Run run) {
        return run.boards().stream().map(Layout.Hung::boardId).toList();
    }

    private static List<Integer> upTo(int first, int last) {
        return IntStream.rangeClosed(first, last).boxed().toList();
    }

    @Test
    void idsAreUniqueAcrossTheYardWhileThereAreEnough() {
        List<Layout.Run> runs = Labels.of(List.of(Lane.cable(1, FOUR, 8), Lane.cable(2, FOUR, 7)));
        assertThat(ids(runs.get(0))).isEqualTo(upTo(1, 8));
        assertThat(ids(runs.get(1))).isEqualTo(upTo(9, 15));
    }

    @Test
    void zeroIsGivenLast() {
        List<Layout.Run> runs = Labels.of(List.of(Lane.cable(1, FOUR, 8), Lane.cable(2, FOUR, 8)));
        assertThat(ids(runs.get(1))).containsExactly(9, 10, 11, 12, 13, 14, 15, 0);
    }

    @Test
    void withTooFewForTheYardEachCableStartsAtOne() {
        List<Layout.Run> runs = Labels.of(List.of(Lane.cable(1, FOUR, 16), Lane.cable(2, FOUR, 2)));
        assertThat(ids(runs.get(0))).startsWith(1, 2).endsWith(15, 0).doesNotHaveDuplicates();
        assertThat(ids(runs.get(1))).containsExactly(1, 2);
    }

    @Test
    void tooManyBoardsForOneCableRepeatAnIdForTheAuditToFind() {
        List<Layout.Run> runs = Labels.of(List.of(Lane.cable(1, FOUR, 17)));
        assertThat(ids(runs.get(0))).hasSize(17).doesNotContainNull();
    }

    @Test
    void narrowRangesAreServedFirstWhereTheyMustBe() {
        BoardModel three = BoardModel.ofPorts("three", List.of(1), new Address.Rotary(1, 3), 9, 5);
        List<Layout.Hung> mixed = new ArrayList<>(Lane.cable(1, FOUR, 4).boards());
        mixed.addAll(Lane.cable(1, three, 3).boards());
        Layout.Run run = Labels.of(List.of(new Layout.Run(Lane.SHED, 1, mixed))).get(0);
        assertThat(ids(run)).containsExactly(4, 5, 6, 7, 1, 2, 3);
    }

    @Test
    void keptNamesAndIdsStandAndAreNotGivenAgain() {
        Layout.Hung kept = new Layout.Hung(
                "B2", 1, FOUR, Lane.atGate(FOUR).spot(), Lane.atGate(FOUR).ports());
        List<Layout.Hung> boards = List.of(Lane.atWillow(FOUR), kept, Lane.atWillow(FOUR));
        Layout.Run run =
                Labels.of(List.of(new Layout.Run(Lane.SHED, 1, boards))).get(0);
        assertThat(run.boards()).extracting(Layout.Hung::name).containsExactly("B1", "B2", "B3");
        assertThat(ids(run)).containsExactly(2, 1, 3);
    }
}
