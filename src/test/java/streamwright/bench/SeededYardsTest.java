package streamwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.yard.Follow;
import streamwright.yard.PixelString;
import streamwright.yard.Prop;
import streamwright.yard.Yard;

class SeededYardsTest {
    private static void holds(Yard yard, int strings, int feeds, int pixels) {
        assertThat(yard.strings()).as(yard.name()).hasSizeBetween(strings, strings);
        assertThat(yard.places()).as(yard.name()).hasSizeBetween(feeds - 4, feeds);
        assertThat(pixels(yard)).as(yard.name()).isCloseTo(pixels, Offset.offset(pixels / 100));
    }

    private static int pixels(Yard yard) {
        return yard.strings().stream().mapToInt(PixelString::pixels).sum();
    }

    @Test
    void homesHaveTheSizeThatTheyAreSaidToHave() {
        for (Yard yard : LongStream.range(1, 200).mapToObj(SeededYards::home).toList()) {
            assertThat(yard.strings()).as(yard.name()).hasSizeBetween(43, 50);
            assertThat(yard.places()).as(yard.name()).hasSizeBetween(33, 37);
            assertThat(pixels(yard)).as(yard.name()).isBetween(3_050, 3_150);
            assertThat(yard.props().stream().map(Prop::follow)).as(yard.name()).contains(Follow.PROP, Follow.ANY);
        }
    }

    @Test
    void largerYardsHaveTheSizeThatTheyAreSaidToHave() {
        Yard two = SeededYards.twoHouses(1);
        assertThat(two.strings()).hasSizeBetween(80, 98);
        assertThat(pixels(two)).isBetween(7_400, 7_600);
        holds(SeededYards.street(1), 229, 180, 15_600);
        holds(SeededYards.field(1), 1_000, 720, 82_500);
        Yard fair = SeededYards.fair(1);
        assertThat(fair.strings()).hasSize(10_000);
        assertThat(fair.controllers()).hasSize(20);
        assertThat(pixels(fair)).isCloseTo(826_000, Offset.offset(8_000));
    }

    @Test
    void aSeedGivesOneYardAndSeedsDiffer() {
        assertThat(SeededYards.home(7)).isEqualTo(SeededYards.home(7));
        assertThat(LongStream.range(0, 50)
                        .mapToObj(seed -> SeededYards.home(seed).props()))
                .doesNotHaveDuplicates();
    }

    @Test
    void theirFilesSayTheSame(@TempDir Path folder) throws IOException {
        List<Yard> yards =
                new ArrayList<>(List.of(SeededYards.home(1), SeededYards.twoHouses(2), SeededYards.field(3)));
        LongStream.rangeClosed(1, 10).mapToObj(MixedHomes::of).forEach(yards::add);
        for (Yard yard : yards) {
            Path file = folder.resolve("yard.yaml");
            YardText.write(file, yard);
            assertThat(YardFile.read(file)).isEqualTo(new Read.Good<>(yard, List.of()));
        }
    }
}
