package streamwright.solve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import streamwright.file.Read;
import streamwright.file.YardFile;
import streamwright.physics.GroundPaths;
import streamwright.yard.Yard;

class RepackTest {
    private static final int STREAM = 740;

    @TempDir
    Path folder;

    @BeforeAll
    static void load() {
        Loader.loadNativeLibraries();
    }

    /** A tree whose strings of many sizes fill so many streams of 740 pixels to the last pixel, three on each. */
    private Draft tree(int streams) throws IOException {
        SplittableRandom random = new SplittableRandom(5);
        String strings = IntStream.range(0, streams)
                .boxed()
                .flatMap(stream -> {
                    int first = 280 + random.nextInt(83);
                    int second = 185 + random.nextInt((STREAM - first) / 2 - 184);
                    return IntStream.of(first, second, STREAM - first - second).boxed();
                })
                .map(pixels -> "{pixels: " + pixels + ", feed: [20, 0]}")
                .collect(Collectors.joining(", "));
        Path file = Files.writeString(
                folder.resolve("yard.yaml"),
                "name: tree\nbrightness: 0.1\ncontrollers: [{id: shed, model: source-4, at: [0, 0]}]\n"
                        + "boards: [{model: quad}]\nprops:\n  - {id: tree, pixel: ws2811, follow: none, strings: ["
                        + strings + "]}\n");
        Yard yard = ((Read.Good<Yard>) YardFile.read(file)).value();
        return new Draft(new Site(yard, GroundPaths.of(yard)));
    }

    private static long cables(Draft draft) {
        return Arrays.stream(draft.cables).filter(cable -> cable.size > 0).count();
    }

    private static void repack(Draft draft) {
        new Repack(draft, new Polish(draft)).run(() -> false);
        for (Draft.Cable cable : draft.cables) {
            assertThat(draft.loads.holds(cable) && draft.lengthsHold(cable)).isTrue();
            assertThat(Arrays.stream(cable.load).max().orElse(0)).isLessThanOrEqualTo(STREAM);
        }
    }

    @Test
    void cableFewerWhereOneIsEnough() throws IOException {
        Draft draft = tree(8);
        assertThat(new FirstFit(draft).run()).isTrue();
        assertThat(cables(draft)).isEqualTo(3);
        double before = draft.cost();
        repack(draft);
        assertThat(draft.complete()).isTrue();
        assertThat(cables(draft)).isEqualTo(2);
        assertThat(draft.cost()).isLessThan(before);
    }

    /** All four jacks are needed to the last pixel; hand practice leaves strings over. */
    @Test
    void whatFoundNoStreamFindsOne() throws IOException {
        Draft draft = tree(16);
        assertThat(new FirstFit(draft).run()).isFalse();
        repack(draft);
        assertThat(draft.complete()).isTrue();
        assertThat(cables(draft)).isEqualTo(4);
    }
}
